/**
 * The engine without Node: bundled as for a browser and run where nothing but the interfaces of the web is there, it
 * reads, audits, reports and converses as it does on the command line.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadCases } from '../../eval/load-cases.js';
import { buildReport } from '../../src/explain/report.js';
import { audit } from '../../src/reasoning/audit.js';
import type * as entry from './entry.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const CASES = new Map(loadCases().map((each) => [each.name, each]));
let page: typeof entry;

beforeAll(async () => {
  const { outputFiles } = await build({
    entryPoints: [`${root}tests/browser/entry.ts`],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    globalName: 'centerAudit',
  });
  const web = { TextEncoder, TextDecoder, URL, btoa, atob, performance, console, setTimeout, queueMicrotask };
  const context = createContext({ ...web });
  runInContext(`${outputFiles[0]?.text}; globalThis.centerAudit = centerAudit;`, context);
  page = context.centerAudit;
});

const textOf = (file: string): string => readFileSync(`${root}cases/${file}`, 'utf8');

describe('in a browser', () => {
  it.each(['demo', 'correction-mismatch-measured'])(
    'the case %s has the report it has elsewhere',
    async (name) => {
      const written = CASES.get(name);
      if (!written) throw new Error(`no case ${name}`);
      const files = Object.fromEntries(
        [...(written.book.responses?.keys() ?? [])].map((path) => [path, textOf(path)]),
      );
      const made = await page.reports(textOf(`${name}.json`), files);
      expect(JSON.parse(made.json)).toEqual(
        JSON.parse(JSON.stringify(buildReport(await audit(written.book)))),
      );
      expect(made.text).toContain('VERDICT');
      expect(made.html).toMatch(/<svg[\s\S]*<\/html>/);
    },
  );
  it('the conversation asks its questions', () => {
    expect(page.talk([])).not.toBe('');
    expect(page.talk(['the voice is dull', '7', '2'])).toMatch(/\?$/);
  });
});
