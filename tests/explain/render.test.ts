import { parse as parseBbcode } from '@bbob/parser';
import * as fc from 'fast-check';
import { marked } from 'marked';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { type Block, heading, pairs, paragraph } from '../../src/explain/document.js';
import { blockBbcode, inert } from '../../src/explain/document-bbcode.js';
import { documentMarkdown } from '../../src/explain/document-markdown.js';
import type { Report } from '../../src/explain/report-types.js';
import type { FactBook } from '../../src/facts/book.js';
import { plainLine } from '../../src/lib/sanitize.js';
import { anyBook } from '../support/books.js';
import {
  renderBbcode,
  renderJson,
  renderMarkdown,
  renderText,
  renderTicket,
  reportOn,
} from '../support/formats.js';
import { LOBING, SPARSE } from './books.js';
import { HOSTILE } from './hostile.js';

const report = reportOn(LOBING);
const open = reportOn(SPARSE);

/** Text with line breaks and wrapping undone. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

/** What a reader of each format sees, without its markup. */
function readings(of: Report): Record<string, string> {
  const html = marked.parse(renderMarkdown(of), { async: false, gfm: true });
  const unmarked = html
    .replace(/<[^>]*>/g, ' ')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');
  return {
    text: flat(renderText(of, { width: 100 })),
    markdown: flat(unmarked.replaceAll('\u200b', '')),
    bbcode: flat(
      renderBbcode(of, { longest: 60_000 })
        .replace(/\[\/?[a-z*=1]+\]/g, '')
        .replaceAll('\u200b', ''),
    ),
    json: flat(renderJson(of)),
  };
}

type Node = { tag: string; content: Node[] | string[] | null } | string;
const tagsIn = (nodes: readonly Node[]): string[] =>
  nodes.flatMap((node) =>
    typeof node === 'string' ? [] : [node.tag, ...tagsIn((node.content ?? []) as readonly Node[])],
  );
const textIn = (nodes: readonly Node[]): string =>
  nodes
    .map((node) => (typeof node === 'string' ? node : textIn((node.content ?? []) as readonly Node[])))
    .join('');
const bbcodeTree = (text: string): Node[] => parseBbcode(text) as unknown as Node[];
const BOARD_TAGS = new Set(['b', 'i', 'url', 'code', 'quote', 'list', '*']);

function expectCleanBbcode(text: string): void {
  const tree = bbcodeTree(text);
  for (const tag of tagsIn(tree)) expect(BOARD_TAGS, text.slice(0, 400)).toContain(tag);
  expect(textIn(tree)).not.toMatch(/[[\]]/);
}

describe('the same finding in every format', () => {
  it.each([
    ['decided', report],
    ['open', open],
  ] as const)('reads the same: %s', (_, of) => {
    const leader = of.causes[0];
    for (const [format, text] of Object.entries(readings(of))) {
      const has = (words: string): void => expect(text, format).toContain(flat(words));
      has(of.verdict.headline.replaceAll('"', '\\"'));
      has(leader?.confidence ?? '?');
      for (const item of leader?.evidence.filter((e) => e.speaks !== 'neither').slice(0, 3) ?? [])
        has(item.text);
      has(of.plan[0]?.title ?? '?');
    }
  });
  it('keeps the order of the causes', () => {
    const titles = report.causes.slice(0, 3).map((cause) => cause.title);
    for (const [format, text] of Object.entries(readings(report))) {
      const ranking = text.slice(format === 'json' ? text.indexOf('"causes"') : text.search(/ranking/i));
      const places = titles.map((title) => ranking.indexOf(title));
      expect(places, format).toEqual([...places].sort((a, b) => a - b));
      expect(
        places.every((place) => place >= 0),
        format,
      ).toBe(true);
    }
  });
  it('shows the sign of the evidence in words, so that a rule that fires against a cause is not read as support', () => {
    const rebuilt = reportOn({ ...LOBING, complaints: ['hollow'] });
    const against = rebuilt.causes
      .flatMap((cause) => cause.evidence)
      .find((e) => e.outcome === 'yes' && e.speaks === 'against');
    if (against) expect(against.weightText).toContain('against it');
    for (const cause of rebuilt.causes)
      for (const item of cause.evidence.filter((e) => e.speaks !== 'neither'))
        expect(item.weightText).toContain(item.decibans > 0 ? 'for it' : 'against it');
  });
});

describe('text', () => {
  it.each([40, 60, 80, 100])('stays within %i columns', (width) => {
    for (const of of [report, open])
      for (const line of renderText(of, { width }).split('\n'))
        expect(stringWidth(line), line).toBeLessThanOrEqual(width);
  });
  it('ends with the verdict, what to do first, and the next command', () => {
    const lines = renderText(report, { caseName: 'my case.json' }).trimEnd().split('\n');
    expect(lines.at(-1)).toMatch(/^ {2}Next +center-audit (why|interview) 'my case\.json'/);
    const end = flat(lines.slice(-12).join('\n'));
    expect(end).toContain('VERDICT');
    expect(end).toContain(report.verdict.headline);
    expect(end).toContain('First');
  });
  it('looks the same without color', () => {
    const color = renderText(report, { color: true });
    expect(color).toContain('\u001b[1m');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: color codes are what is taken out
    expect(color.replace(/\u001b\[\d+m/g, '')).toBe(renderText(report));
  });
  it('keeps to ASCII on request', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the claim is about letters
    expect(renderText(report, { ascii: true })).toMatch(/^[\x00-\x7f]*$/);
  });
  it('draws nothing in the accessible form: no bar, rule, table or glyph', () => {
    const text = renderText(report, { accessible: true });
    expect(text).not.toMatch(/[█░─│┼▲]|\[ \]| {3,}\S+ {3,}/);
    expect(text).toMatch(/middle \(main\)|seat 1 \(main\)|\(main\): angle: /);
  });
  it('draws a labelled bar with words for a value near its threshold', () => {
    const near = report.causes[0]?.evidence.some((item) => item.range?.near);
    const text = renderText(report);
    if (near) expect(text).toMatch(/good [─▲┼]+ poor/);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });
  it('puts each caution beside its step', () => {
    for (const [long, told] of [
      [false, 3],
      [true, 6],
    ] as const)
      cautionsBeside(flat(renderText(report, { long })), told);
  });
  function cautionsBeside(text: string, told: number): void {
    for (const step of report.plan.slice(0, told))
      for (const caution of step.cautions) {
        const place = text.indexOf(step.title, text.indexOf('WHAT TO DO'));
        const next = text.indexOf('[ ]', place + 1);
        expect(text.slice(place, next < 0 ? undefined : next), step.title).toContain(`Caution: ${caution}`);
      }
  }
});

describe('ticket', () => {
  it('fits half a page and quotes the owner', () => {
    const ticket = renderTicket(report);
    expect(ticket.split('\n').length).toBeLessThanOrEqual(45);
    expect(flat(ticket)).toContain(`“${report.words}”`);
    for (const label of ['Complaint', 'Verdict', 'Told', 'Tried', 'Next', 'Open'])
      expect(ticket).toContain(label);
  });
});

describe('BBCode', () => {
  it('uses only the tags boards share, balanced, without nested lists', () => {
    for (const of of [report, open]) {
      const post = renderBbcode(of);
      expectCleanBbcode(post);
      for (const tag of ['b', 'list', 'quote', 'code'])
        expect(post.split(new RegExp(`\\[${tag}(?:=1)?\\]`)).length, tag).toBe(
          post.split(`[/${tag}]`).length,
        );
      expect(post).not.toMatch(/\[list(?:=1)?\](?:(?!\[\/list\])[\s\S])*\[list/);
    }
  });
  it('begins with one short paragraph', () => {
    const [first = ''] = renderBbcode(report).split('\n\n');
    expect(first.length).toBeLessThanOrEqual(400);
    expect(first).toContain(report.verdict.headline);
  });
  it.each([6000, 3000, 1500, 800])(
    'stays within %i characters, never cut inside a tag or without a caution',
    (longest) => {
      for (const of of [report, open]) {
        const post = renderBbcode(of, { longest });
        expect(post.length).toBeLessThanOrEqual(longest);
        expectCleanBbcode(post);
        expect(post).not.toMatch(/\[b\][^[]*\[\/b\]\s*$/);
      }
    },
  );
  it('gives lengths in both systems', () => {
    expect(renderBbcode(report, { longest: 60_000 })).toMatch(/\d ft[^(]*\(\d\.\d\d m\)/);
  });
  it('draws no smiley', () => {
    expect(inert('a share of 0.8) and :) and 8-) and Both: Play')).toBe(
      'a share of 0.8\u200b) and :\u200b) and 8\u200b-) and Both: Play',
    );
  });
});

describe('hostile text', () => {
  const bookOf = (text: string): FactBook => ({
    ...LOBING,
    title: plainLine(text),
    words: text,
    notes: [text],
    seats: [
      { name: text, xM: 0, yM: 2.2, row: 1, main: true },
      { name: `end ${text}`, xM: 0.8, yM: 2.2, row: 1, main: false },
    ],
    trials: [{ act: 'center-tilted', outcome: 'same', note: text }],
  });
  const reports = HOSTILE.map((text) => [text.slice(0, 40), text, reportOn(bookOf(text))] as const);

  it.each(reports)('steers no terminal: %j', (_, __, of) => {
    for (const text of [renderText(of), renderTicket(of)]) {
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what may not be there
      expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
      expect(text).not.toMatch(/[\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/);
      for (const line of text.split('\n')) expect(stringWidth(line), line).toBeLessThanOrEqual(80);
    }
  });
  it.each(reports)('opens no tag in BBCode: %j', (_, __, of) => {
    expectCleanBbcode(renderBbcode(of, { longest: 60_000 }));
    expectCleanBbcode(renderBbcode(of));
  });
  it.each(reports)('becomes no markup in Markdown: %j', (_, text, of) => {
    const html = marked.parse(renderMarkdown(of), { async: false, gfm: true });
    const allowed = /^<\/?(h[1-3]|p|ul|ol|li|strong|blockquote|table|thead|tbody|tr|th|td|code|pre|input)\b/;
    for (const [tag] of html.matchAll(/<[^>]*>/g)) expect(tag).toMatch(allowed);
    expect(html).not.toMatch(/<(input)(?! (?:checked="" )?disabled="" type="checkbox")/);
    const seen = html
      .replace(/<[^>]*>/g, '')
      .replace(/&lt;/g, '<')
      .replace(/&gt;/g, '>')
      .replace(/&quot;/g, '"')
      .replace(/&#39;/g, "'")
      .replace(/&amp;/g, '&')
      .replaceAll('\u200b', '')
      .replaceAll('&#8203;', '');
    expect(flat(seen)).toContain(flat(plainLine(text)));
  });
  it.each(HOSTILE)('is plain text in a post and in Markdown: %j', (text) => {
    const blocks: Block[] = [
      heading(2, text),
      paragraph(text, { strong: text }, { code: text }, { page: `fact/${text}`, text }),
      pairs([[text, text]]),
      { kind: 'table', head: [text], rows: [[text]] },
      { kind: 'quote', text },
      { kind: 'code', text },
    ];
    expectCleanBbcode(`${blocks.map(blockBbcode).join('\n\n')}\n`);
    const fromMarkdown = marked.parse(documentMarkdown(blocks), { async: false, gfm: true });
    for (const [tag] of fromMarkdown.matchAll(/<[^>]*>/g))
      expect(tag).toMatch(/^<\/?(h2|p|strong|code|ul|li|table|thead|tbody|tr|th|td|blockquote|pre)\b/);
  });
});

describe('any system', () => {
  it('renders in every format without gaps, within its limits', () => {
    fc.assert(
      fc.property(anyBook, fc.constantFrom(40, 49, 80, 100), (book, width) => {
        const built = reportOn(book);
        const text = renderText(built, { width });
        for (const line of text.split('\n')) expect(stringWidth(line)).toBeLessThanOrEqual(width);
        const post = renderBbcode(built);
        expect(post.length).toBeLessThanOrEqual(6000);
        expectCleanBbcode(post);
        const own = [book.title ?? '', book.words ?? '', ...book.notes].join('');
        for (const rendered of [
          text,
          post,
          renderMarkdown(built),
          renderTicket(built),
          renderText(built, { accessible: true }),
        ])
          if (!/undefined|NaN|Infinity|\{|\}/.test(own))
            expect(rendered).not.toMatch(/undefined|NaN|Infinity|[{}]/);
      }),
      { numRuns: 12 },
    );
  }, 120_000);
});
