/** Every shipped case in every format. Six of them are kept whole: `npx vitest run tests/explain/cases.test.ts -u` renews them. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse as parseBbcode } from '@bbob/parser';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { responsesIn } from '../../src/disk/response-files.js';
import type { Report } from '../../src/explain/report-types.js';
import { readCase } from '../../src/facts/case-file.js';
import {
  renderBbcode,
  renderJson,
  renderMarkdown,
  renderText,
  renderTicket,
  reportOn,
} from '../support/formats.js';

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
  return reportOn(book);
}
const golden = (name: string, extension: string): string =>
  fileURLToPath(new URL(`./golden/${name.replace('.json', '')}.${extension}`, import.meta.url));

describe('shipped cases', () => {
  it.each(CASES)('%s reads well in every format', (name) => {
    const report = reportOf(name);
    const text = renderText(report, { caseName: `cases/${name}` });
    for (const line of text.split('\n')) expect(stringWidth(line), line).toBeLessThanOrEqual(80);
    const post = renderBbcode(report);
    expect(post.length).toBeLessThanOrEqual(6000);
    const odd = parseBbcode(post).flatMap((node) =>
      typeof node === 'object' && !['b', 'list', 'quote', 'code'].includes(String(node.tag))
        ? [node.tag]
        : [],
    );
    expect(odd).toEqual([]);
    const ticket = renderTicket(report);
    expect(ticket.trimEnd().split('\n').length, 'half a page').toBeLessThanOrEqual(45);
    const markdown = renderMarkdown(report);
    for (const rendered of [
      text,
      post,
      markdown,
      ticket,
      renderText(report, { accessible: true, width: 40 }),
    ])
      expect(rendered).not.toMatch(/undefined|NaN|Infinity|[{}]|\[object/);
    expect(JSON.parse(renderJson(report))).toEqual(report);
    if (!KEPT.includes(name)) return;
    // Kept whole, so that a change of words or numbers is seen by whoever makes it.
    return Promise.all([
      expect(text).toMatchFileSnapshot(golden(name, 'txt')),
      expect(markdown).toMatchFileSnapshot(golden(name, 'md')),
      expect(post).toMatchFileSnapshot(golden(name, 'bbcode')),
      expect(ticket).toMatchFileSnapshot(golden(name, 'ticket.txt')),
    ]).then(() => undefined);
  });
  it('keeps six of them whole', () => {
    expect(KEPT.filter((name) => CASES.includes(name))).toHaveLength(6);
  });
});
