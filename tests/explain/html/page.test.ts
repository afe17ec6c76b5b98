import { createHash } from 'node:crypto';
import { HtmlValidate } from 'html-validate';
import { beforeAll, describe, expect, it } from 'vitest';
import { handbook } from '../../../src/explain/pages/handbook.js';
import { sentence } from '../../../src/explain/words.js';
import type { FactBook } from '../../../src/facts/book.js';
import { plainLine, plainText } from '../../../src/lib/sanitize.js';
import { pageOf, type ShippedPage, shippedPage, shippedPages } from '../../support/shippedPages.js';
import { LOBING, SPARSE, told } from '../books.js';
import { HOSTILE } from '../hostile.js';

/** Tags with their attributes, as a browser would find them: text has no `<` left. */
function tagsOf(html: string): { tag: string; attributes: string }[] {
  return [...html.matchAll(/<([a-zA-Z][a-zA-Z0-9]*)((?:\s+[^\s=>]+="[^"]*"|\s+[a-z]+)*)\s*\/?>/g)].map(
    (match) => ({
      tag: (match[1] ?? '').toLowerCase(),
      attributes: match[2] ?? '',
    }),
  );
}

/** What people read: markup taken out, entities resolved. */
function wordsOf(html: string): string {
  return html
    .replace(/<style>.*?<\/style>/s, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&')
    .replace(/\s+/g, ' ');
}

/** Ninety audits on a busy machine. */
const LONG_MS = 300_000;
beforeAll(() => {
  shippedPages();
}, LONG_MS);

const validator = new HtmlValidate({ extends: ['html-validate:recommended'] });
async function faults(name: string, html: string): Promise<string[]> {
  const { results } = await validator.validateString(html, name);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${name}:${line} ${ruleId}: ${message}`),
  );
}

describe('pages are valid HTML', () => {
  it(
    'for every shipped case',
    async () => {
      const found = await Promise.all(shippedPages().map(({ name, html }) => faults(`${name}.html`, html)));
      expect(found.flat()).toEqual([]);
    },
    LONG_MS,
  );

  it(
    'for pages of the handbook',
    async () => {
      const pages = [...(await handbook('html'))].filter(
        ([name], i) => i % 40 === 0 || name === 'index.html',
      );
      expect(pages.length).toBeGreaterThan(5);
      const found = await Promise.all(pages.map(([name, html]) => faults(name, html)));
      expect(found.flat()).toEqual([]);
    },
    LONG_MS,
  );
});

/** What is not on the page; a whole page would drown the message. */
const missing = (texts: readonly string[], words: string): string[] =>
  texts.filter((text) => !words.includes(text.replace(/\s+/g, ' ')));

const everyPage = (claim: (page: ShippedPage) => void): void => {
  for (const page of shippedPages()) claim(page);
};

describe('the page is one safe file', () => {
  it('carries a policy whose hash is that of its one style sheet', () => {
    const { html } = shippedPage('demo');
    const [, policy = ''] = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html) ?? [];
    const [, style = ''] = /<style>(.*?)<\/style>/s.exec(html) ?? [];
    const hash = createHash('sha256').update(style).digest('base64');
    expect(policy).toBe(
      `default-src 'none'; style-src 'sha256-${hash}'; img-src data:; base-uri 'none'; form-action 'none'`,
    );
    expect(html.match(/<style/g)).toHaveLength(1);
  });

  it('has no script, no handler, no style attribute and nothing that loads', () => {
    everyPage(({ html }) => {
      for (const { tag, attributes } of tagsOf(html)) {
        expect([
          'script',
          'iframe',
          'object',
          'embed',
          'form',
          'link',
          'img',
          'base',
          'foreignobject',
        ]).not.toContain(tag);
        expect(attributes).not.toMatch(/\s(on\w+|style|src|srcset|xlink:href)=/);
      }
      const addresses = [...html.matchAll(/ href="([^"]*)"/g)].map((match) => match[1] ?? '');
      expect(addresses.filter((address) => !address.startsWith('#'))).toEqual([]);
      expect(html).not.toContain('@import');
      expect(html.replace(/clip-path="url\(#[\w-]+\)"/g, '')).not.toContain('url(');
    });
  });

  it('gives every id once, and every link inside the page leads somewhere', () => {
    everyPage(({ html }) => {
      const ids = [...html.matchAll(/ id="([^"]*)"/g)].map((match) => match[1] ?? '');
      expect(new Set(ids).size).toBe(ids.length);
      for (const [, target = ''] of html.matchAll(/ href="#([^"]*)"/g)) expect(ids).toContain(target);
      for (const [, names = ''] of html.matchAll(/ aria-labelledby="([^"]*)"/g))
        for (const name of names.split(' ')) expect(ids).toContain(name);
    });
  });
});

describe('the first things on the page', () => {
  it('are what is wrong, how sure that is, and what to do first', () => {
    everyPage(({ name, html, report }) => {
      const first = wordsOf(html.slice(html.indexOf('<main'), html.indexOf('<nav')));
      const { headline, confidence } = report.verdict;
      const [step] = report.plan;
      expect(missing([sentence(headline), ...(step ? [step.title] : [])], first), name).toEqual([]);
      if (!report.verdict.undecided) expect(missing([confidence], first.toLowerCase()), name).toEqual([]);
      for (const { title, confidence: sure } of report.verdict.undecided ? report.verdict.contenders : [])
        expect(missing([title, sure], first), name).toEqual([]);
    });
  });

  it('puts the caution of the first step beside it', () => {
    const page = shippedPages().find(({ report }) => (report.plan[0]?.cautions.length ?? 0) > 0);
    const { html, report } = page as ShippedPage;
    const first = wordsOf(html.slice(0, html.indexOf('<nav')));
    expect(missing(report.plan[0]?.cautions ?? [], first)).toEqual([]);
  });

  it('names what tells the contenders apart while nothing is decided', () => {
    const { html, report } = shippedPage('undecidable-mumble');
    expect(report.verdict.undecided).toBe(true);
    const [apart] = report.verdict.separatedBy;
    const first = wordsOf(html.slice(0, html.indexOf('<nav')));
    expect(first).toContain('Not enough is known yet');
    if (apart) expect(first).toContain(apart.title);
    expect(pageOf('sparse', SPARSE).html).toContain('<h1');
  });
});

describe('nothing of the report is lost on the page', () => {
  it('shows evidence, remedies, cautions, assumptions and sources in full', () => {
    everyPage(({ name, html, report }) => {
      const leading = report.causes.filter(({ place }) => place === 'leading');
      const texts = [
        ...leading.flatMap(({ story, evidence, remedies }) => [
          story,
          ...evidence.filter(({ speaks }) => speaks !== 'neither').map(({ text }) => text),
          ...remedies.filter(({ tried }) => !tried).map(({ title }) => title),
        ]),
        ...report.plan.flatMap(({ title, steps, expect: expected, verify }) => [
          title,
          ...steps,
          expected,
          verify,
        ]),
        ...report.cautions,
        ...report.assumed.map(({ note }) => note),
        ...report.contradictions.map(({ text }) => text),
        ...report.seats.map((seat) => seat.name),
        ...report.told.map(({ value }) => value),
      ];
      expect(missing(texts, wordsOf(html)), name).toEqual([]);
      const cites = report.sources.map(({ cite }) => cite.toLowerCase());
      expect(missing(cites, wordsOf(html).toLowerCase()), name).toEqual([]);
    });
  });

  it('draws a range bar with its words for every value near a threshold of a leading cause', () => {
    let bars = 0;
    everyPage(({ html, report }) => {
      const near = report.causes
        .filter(({ place }) => place === 'leading')
        .flatMap(({ evidence }) =>
          evidence.filter(({ speaks, range }) => speaks !== 'neither' && range?.near),
        );
      expect(html.match(/class="range"/g)?.length ?? 0).toBe(near.length);
      bars += near.length;
    });
    expect(bars).toBeGreaterThan(5);
  });
});

describe('text of strangers stays text', () => {
  const withText = (text: string): FactBook => ({
    ...told(LOBING, {}),
    title: plainLine(text) || 'x',
    words: plainText(text),
    notes: [plainText(text)],
    seats: [
      { name: plainLine(text).slice(0, 60) || 'x', xM: 0, yM: 2.2, row: 1, main: true },
      { name: 'end', xM: 0.8, yM: 2.2, row: 1, main: false },
    ],
  });

  const plain = pageOf('plain', withText('harmless')).html;

  it.each(HOSTILE.map((text) => [text]))('%j', (text) => {
    const { html } = pageOf('hostile', withText(text));
    const kinds = (of: string): string[] => [...new Set(tagsOf(of).map(({ tag }) => tag))];
    // Notes may have simple structure; nothing else may differ.
    const simple = [...kinds(plain), 'em', 'strong', 'code', 'pre', 'blockquote', 'br', 'ol', 'ul', 'li'];
    expect(kinds(html).filter((tag) => !simple.includes(tag))).toEqual([]);
    for (const { attributes } of tagsOf(html)) expect(attributes).not.toMatch(/\s(on\w+|style|src)=/);
    expect([...html.matchAll(/ href="(?!#)/g)]).toEqual([]);
    expect(plainText(html) === html.trim(), 'nothing on the page steers a display').toBe(true);
    const [, title = ''] = /<title>([^<]*)<\/title>/.exec(html) ?? [];
    expect(wordsOf(title).length).toBeLessThanOrEqual(70);
  });

  it('keeps what a person typed readable', () => {
    expect(wordsOf(pageOf('hostile', withText('a < b & "c"')).html)).toContain('a < b & "c"');
  });
});
