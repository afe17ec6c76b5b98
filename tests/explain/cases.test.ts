/** Every shipped case in every format. Six of them are kept whole: `npx vitest run tests/explain/cases.test.ts -u` renews them. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse as parseBbcode } from '@bbob/parser';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { responsesIn } from '../../src/disk/response-files.js';
import { renderPost } from '../../src/explain/render/bbcode.js';
import type { Report } from '../../src/explain/report-types.js';
import { readCase } from '../../src/facts/case-file.js';
import { KEPT_CAUSES, renderMarkdown, renderText, renderTicket, reportOn } from '../support/formats.js';

const FOLDER = fileURLToPath(new URL('../../cases/', import.meta.url));
const CASES = readdirSync(FOLDER).filter((name) => name.endsWith('.json'));
/** Sparse and rich, decided and open, both unit systems, one and two causes, and taste. */
const KEPT = [
  'demo.json',
  'delay-feet-as-meters.json',
  'undecidable-dull-voice.json',
  'two-set-back-and-height.json',
  'screen-loss-new-screen.json',
  'preference-two-channels.json',
];

function reportOf(name: string): Report {
  const { book } = readCase(readFileSync(FOLDER + name, 'utf8'), { readResponse: responsesIn(FOLDER) });
  return KEPT.includes(name) ? reportOn(book, KEPT_CAUSES) : reportOn(book);
}
const golden = (name: string, extension: string): string =>
  fileURLToPath(new URL(`./golden/${name.replace('.json', '')}.${extension}`, import.meta.url));

const linesOf = (text: string): number => text.trimEnd().split('\n').length;
/** Lines of the short text of each case, once it was looked at. */
const brief = new Map<string, number>();

describe('shipped cases', () => {
  it.each(CASES)('%s reads well in every format', (name) => {
    const report = reportOf(name);
    const text = renderText(report, { caseName: `cases/${name}` });
    brief.set(name, linesOf(text));
    for (const line of text.split('\n'))
      if (!line.startsWith('  center-audit ')) expect(stringWidth(line), line).toBeLessThanOrEqual(80);
    const post = renderPost(report);
    for (const markup of ['bbcode', 'markdown', 'plain'] as const)
      expect(renderPost(report, { markup }).length, 'read to the end').toBeLessThanOrEqual(1500);
    const odd = parseBbcode(post).flatMap((node) =>
      typeof node === 'object' && !['b', 'list', 'quote', 'code'].includes(String(node.tag))
        ? [node.tag]
        : [],
    );
    expect(odd).toEqual([]);
    const ticket = renderTicket(report, { reference: name, date: '2026-11-30' });
    expect(linesOf(ticket), 'half a page').toBeLessThanOrEqual(32);
    const markdown = renderMarkdown(report);
    const accessible = renderText(report, { accessible: true, width: 40, long: true });
    expect(accessible, 'no line begins with a colon').not.toMatch(/^\s*:/m);
    const all = [text, post, markdown, ticket, accessible, renderText(report, { long: true })];
    for (const rendered of all) expect(rendered).not.toMatch(/undefined|NaN|Infinity|[{}]|\[object/);
    // Words of the bookkeeping belong to the reference pages.
    for (const rendered of all) expect(rendered).not.toMatch(/deciban|a hint, for|\d %/);
    expect(report.verdict.contenders.length).toBeLessThanOrEqual(3);
    if (!KEPT.includes(name)) return;
    // Kept whole, so that a change of words or numbers is seen by whoever makes it.
    return Promise.all([
      expect(text).toMatchFileSnapshot(golden(name, 'txt')),
      expect(markdown).toMatchFileSnapshot(golden(name, 'md')),
      expect(post).toMatchFileSnapshot(golden(name, 'bbcode')),
      expect(ticket).toMatchFileSnapshot(golden(name, 'ticket.txt')),
    ]).then(() => undefined);
  });
  it('are short: half of them fit 45 lines of 80 columns', () => {
    const sorted = [...brief.values()].sort((a, b) => a - b);
    expect(sorted).toHaveLength(CASES.length);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(45);
  });
  it('keeps six of them whole', () => {
    expect(KEPT.filter((name) => CASES.includes(name))).toHaveLength(6);
  });
});
