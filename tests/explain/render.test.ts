import { parse as parseBbcode } from '@bbob/parser';
import * as fc from 'fast-check';
import { marked } from 'marked';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { type Block, heading, pairs, paragraph } from '../../src/explain/document.js';
import { blockBbcode, inert } from '../../src/explain/document-bbcode.js';
import { documentMarkdown } from '../../src/explain/document-markdown.js';
import { type Markup, renderPost } from '../../src/explain/render/bbcode.js';
import type { Report, ReportCause, ReportSeat, ReportStep } from '../../src/explain/report-types.js';
import type { FactBook } from '../../src/facts/book.js';
import { plainLine } from '../../src/lib/sanitize.js';
import { anyBook } from '../support/books.js';
import { renderJson, renderMarkdown, renderText, renderTicket, reportOn } from '../support/formats.js';
import { LOBING, SPARSE } from './books.js';
import { HOSTILE } from './hostile.js';

const report = reportOn(LOBING);
const open = reportOn(SPARSE);

/** Text with line breaks and wrapping undone. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

/** What a reader of each format sees, without its markup. */
function readings(of: Report): Record<string, string> {
  const html = marked.parse(renderMarkdown(of, { long: true }), { async: false, gfm: true });
  const unmarked = html
    .replace(/<[^>]*>/g, ' ')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');
  return {
    text: flat(renderText(of, { width: 100, long: true })),
    markdown: flat(unmarked.replaceAll('\u200b', '')),
    bbcode: flat(
      renderPost(of, { long: true })
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
      if (format !== 'bbcode' || !of.verdict.undecided) has(of.verdict.headline);
      has(leader?.confidence ?? '?');
      for (const item of leader?.evidence.filter((e) => e.speaks !== 'neither').slice(0, 3) ?? [])
        has(item.text);
      has(of.plan[0]?.title ?? '?');
    }
  });
  it('keeps the order of the causes', () => {
    const titles = report.causes.slice(0, 3).map((cause) => cause.title);
    for (const [format, text] of Object.entries(readings(report))) {
      const ranking = text.slice(
        format === 'json' ? text.indexOf('"causes"') : text.search(/what it could be/i),
      );
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
  it.each([40, 60, 80, 100])('stays within %i columns, but for a command that must not break', (width) => {
    for (const of of [report, open])
      for (const long of [false, true])
        for (const line of renderText(of, { width, long }).split('\n'))
          if (!line.startsWith('  center-audit ')) expect(stringWidth(line), line).toBeLessThanOrEqual(width);
  });
  it('begins with the verdict, and ends with it above the next command', () => {
    const lines = renderText(report, { caseName: '-my case.json' }).trimEnd().split('\n');
    expect(lines.slice(3, 5)).toEqual(['VERDICT', expect.stringContaining(report.verdict.headline)]);
    expect(lines.at(-1)).toMatch(/^ {2}center-audit (why|interview) '\.\/-my case\.json'/);
    expect(flat(lines.slice(-4).join('\n'))).toContain(report.verdict.headline);
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
    const text = renderText(report, { long: true });
    if (near) expect(text).toMatch(/good [─▲┼]+ poor/);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });
  it('puts each caution beside its step, in the short form too', () => {
    for (const long of [false, true]) {
      const text = flat(renderText(report, { long }));
      for (const [i, step] of report.plan.slice(0, long ? undefined : 3).entries())
        for (const caution of step.cautions) {
          const place = text.indexOf(`[ ] ${i + 1}. ${step.title}`);
          const next = text.indexOf('[ ]', place + 1);
          expect(text.slice(place, next < 0 ? undefined : next), step.title).toContain(caution);
        }
    }
  });
});

describe('post', () => {
  it('says each caution once, beside the first step that needs it', () => {
    const post = flat(renderPost(report));
    for (const caution of new Set(report.plan.flatMap(({ cautions }) => cautions)))
      expect(post.split(caution).length).toBeLessThanOrEqual(2);
  });
});

describe('ticket', () => {
  const ticket = renderTicket(report, { reference: 'case-7', date: '2026-11-30' });
  it('is half a page: reference, date, the owner in his own words, verdict, done, next, open', () => {
    expect(ticket.trimEnd().split('\n').length).toBeLessThanOrEqual(32);
    expect(flat(ticket)).toContain(`“${report.words}”`);
    expect(ticket).toMatch(/Reference +case-7, 2026-11-30/);
    for (const label of ['Customer', 'Verdict', 'Done', 'Next', 'Open']) expect(ticket).toContain(label);
  });
  it('has the caution of the next step on a line of its own', () => {
    const [step] = report.plan;
    const dangerous = { ...report, plan: [{ ...(step as ReportStep), cautions: ['Mind the edge.'] }] };
    expect(renderTicket(dangerous)).toMatch(/^ +Caution +Mind the edge\.$/m);
  });
  it('tells what was done and what it did', () => {
    const trials = [{ title: 'a', text: 'Center turned up: no change', keep: false }];
    expect(flat(renderTicket({ ...report, trials }))).toContain('Done Center turned up: no change');
  });
  it('cuts a long story at a word', () => {
    const cut = flat(renderTicket({ ...report, words: 'word '.repeat(200) }));
    expect(cut).toMatch(/word …”/);
    expect(cut).not.toMatch(/wor …/);
  });
});

describe('a post', () => {
  const posts = (of: Report): Record<Markup, string> => ({
    bbcode: renderPost(of),
    markdown: renderPost(of, { markup: 'markdown' }),
    plain: renderPost(of, { markup: 'plain' }),
  });
  it('uses only the tags boards share, balanced, without nested lists', () => {
    for (const of of [report, open])
      for (const post of [renderPost(of), renderPost(of, { long: true })]) {
        expectCleanBbcode(post);
        for (const tag of ['b', 'list', 'quote', 'code'])
          expect(post.split(new RegExp(`\\[${tag}(?:=1)?\\]`)).length, tag).toBe(
            post.split(`[/${tag}]`).length,
          );
        expect(post).not.toMatch(/\[list(?:=1)?\](?:(?!\[\/list\])[\s\S])*\[list/);
      }
  });
  it('is read to the end: at most 1,500 characters in any markup, begun by one thing to try', () => {
    for (const of of [report, open])
      for (const [markup, post] of Object.entries(posts(of))) {
        expect(post.length, markup).toBeLessThanOrEqual(1500);
        expect(flat(post).slice(0, 400), markup).toContain('Thanks for asking');
        expect(flat(post).slice(0, 400).replaceAll('\\', ''), markup).toContain(of.plan[0]?.title ?? '?');
      }
  });
  it('keeps or leaves a section as a whole', () => {
    const wordy = 'Many words stand here. '.repeat(40);
    const leader = report.causes.find(({ id }) => id === report.verdict.leader) as ReportCause;
    const long = { ...report, causes: [{ ...leader, story: wordy }] };
    expect(renderPost(long)).not.toContain('Many words');
    expect(renderPost(long)).toContain(report.verdict.headline);
    const extreme = { ...report, plan: [{ ...(report.plan[0] as ReportStep), steps: [wordy.repeat(3)] }] };
    expect(renderPost(extreme).length).toBeLessThanOrEqual(1500);
    expect(renderPost(extreme)).not.toContain('Many');
  });
  it('speaks to the asker: no quote of his post, no capitals, no exclamation', () => {
    const { plain } = posts(report);
    expect(plain).toContain('you');
    expect(plain).not.toContain(report.words ?? '?');
    expect(plain).not.toMatch(/[A-Z]{4,}|!/);
  });
  it('has the details only on request, below a line', () => {
    expect(renderPost(report)).not.toContain('-----');
    const [top, below = ''] = renderPost(report, { long: true }).split('-----\n');
    expect(top).toContain('----- The details');
    expect(below).toContain('All the evidence');
  });
  it('draws no smiley', () => {
    expect(inert('a share of 0.8) and :) and 8-) and Both: Play')).toBe(
      'a share of 0.8\u200b) and :\u200b) and 8\u200b-) and Both: Play',
    );
  });
});

describe('for programs', () => {
  it('is small, has the keys of the contract, and numbers of twelve digits', () => {
    const text = renderJson(report);
    expect(Object.keys(JSON.parse(text))).toEqual(
      expect.arrayContaining([
        'format',
        'version',
        'verdict',
        'causes',
        'plan',
        'seats',
        'complaints',
        'seamlessSwitch',
        'unknown',
        'assumed',
        'contradictions',
        'cautions',
      ]),
    );
    const [cause] = JSON.parse(text).causes;
    expect(Object.keys(cause)).toEqual([
      'id',
      'title',
      'probability',
      'decibans',
      'verdict',
      'severity',
      'evidence',
      'remedies',
    ]);
    expect(Object.keys(cause.evidence[0])).toEqual(
      expect.arrayContaining([
        'rule',
        'decibans',
        'text',
        'facts',
        'value',
        'threshold',
        'unit',
        'source',
        'assumed',
      ]),
    );
    for (const [number] of text.matchAll(/-?\d+\.\d+(?:e-?\d+)?/g))
      expect(Number(Number(number).toPrecision(12))).toBe(Number(number));
    expect(renderJson(report, { indent: false, caseName: 'a.json' })).toMatch(/^\{"case":"a\.json".*\}\n$/);
    expect(
      JSON.parse(renderJson({ ...report, seats: [{ ...(report.seats[0] as ReportSeat), xM: 0.1 + 0.2 }] }))
        .seats[0].xM,
    ).toBe(0.3);
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
    for (const text of [renderText(of), renderText(of, { long: true }), renderTicket(of)]) {
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what may not be there
      expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
      expect(text).not.toMatch(/[\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/);
      for (const line of text.split('\n')) expect(stringWidth(line), line).toBeLessThanOrEqual(80);
    }
  });
  it.each(reports)('opens no tag in BBCode: %j', (_, __, of) => {
    expectCleanBbcode(renderPost(of, { long: true }));
    expectCleanBbcode(renderPost(of));
  });
  it.each(reports)('becomes no markup in Markdown: %j', (_, text, of) => {
    const html = marked.parse(renderMarkdown(of, { long: true }), { async: false, gfm: true });
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
        for (const line of text.split('\n'))
          if (!line.startsWith('  center-audit ')) expect(stringWidth(line)).toBeLessThanOrEqual(width);
        const post = renderPost(built);
        expect(post.length).toBeLessThanOrEqual(1500);
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
