import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../src/explain/calculators/index.js';
import { documentMarkdown } from '../../src/explain/document-markdown.js';
import { documentText } from '../../src/explain/document-text.js';
import { handbook } from '../../src/explain/pages/handbook.js';
import { allPages, pageBlocks, pagesOf, renderPagesText } from '../../src/explain/pages/index.js';
import { PLAIN_TEXT } from '../../src/explain/terminal.js';
import { FACT_IDS } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { CAUSE_IDS } from '../../src/rules/cause-ids.js';
import { CAUSES } from '../../src/rules/index.js';
import { LIMITS } from '../../src/rules/limits.js';
import { SOURCES } from '../../src/rules/sources.js';

const pages = await allPages();
const text = renderPagesText(await pagesOf('driver-layout'));

describe('reference pages', () => {
  it('exist for every cause, complaint, fact, test, rule, threshold, calculator and source, once a kind', () => {
    const ids = new Set(pages.map((page) => page.id));
    const wanted = [
      ...CAUSE_IDS,
      ...COMPLAINT_IDS,
      ...FACT_IDS,
      ...CAUSES.flatMap((cause) => cause.rules.map((rule) => `${cause.id}/${rule.id}`)),
      ...Object.keys(LIMITS),
      ...CALCULATORS.map((calculator) => calculator.name),
      ...Object.keys(SOURCES),
    ];
    expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
    expect(new Set(pages.map((page) => `${page.kind}/${page.id}`)).size).toBe(pages.length);
  });
  it.each(pages.map((page) => [`${page.kind}/${page.id}`, page] as const))(
    'say something whole: %s',
    (_, page) => {
      for (const written of [
        documentText(pageBlocks(page), PLAIN_TEXT),
        documentMarkdown(pageBlocks(page)),
      ]) {
        expect(written.length).toBeGreaterThan(60);
        expect(written).not.toMatch(/undefined|NaN|\[object/);
        if (page.kind !== 'calculator') expect(written).not.toMatch(/[{}]/);
      }
    },
  );
  it('name every remedy as a case file does, and the share of systems of a cause that cannot be everywhere', () => {
    for (const { id, remedies, applies, appliesIn } of CAUSES) {
      const found = pages.filter((page) => page.kind === 'cause' && page.id === id);
      const page = renderPagesText(found).replace(/\s+/g, ' ');
      for (const remedy of remedies) expect(page).toContain(`Name: ${id}/${remedy.id}`);
      if (applies && appliesIn !== undefined)
        expect(page).toContain(`it counts as in ${Math.round(appliesIn * 100)}% of systems`);
    }
  });
  it('tell of a cause when it is wrongly blamed, what speaks for it, tests, remedies with cautions, and sources', () => {
    for (const part of [
      'Not when',
      'WHAT SPEAKS FOR AND AGAINST IT',
      'TESTS THAT CONFIRM IT',
      'WHAT TO DO',
      'Caution:',
      'SOURCES',
    ])
      expect(text).toContain(part);
  });
  it('give a rule its page with formula, reason and source with its mark', async () => {
    const rule = renderPagesText(await pagesOf('driver-layout/dip-at-worst-seat'));
    expect(rule).toContain('20 log10(value / limit)');
    expect(rule).toMatch(
      /\[(read in the source|computed here|common practice, no source|from memory, not checked)\]/,
    );
  });
  it('say of each outcome of a home test for which causes it speaks', async () => {
    const page = renderPagesText(await pagesOf('testSitMiddle'));
    expect(page).toMatch(/clear-in-middle[\s\S]*for it[\s\S]*same-everywhere[\s\S]*against it/);
  });
});

describe('handbook', () => {
  it.each(['markdown', 'html'] as const)('links only to files it holds: %s', async (format) => {
    const files = await handbook(format);
    expect(files.size).toBe(pages.length + 1);
    const link = format === 'markdown' ? /\]\(([^)]+)\)/g : /href="([^"]+)"/g;
    const targets = new Set(
      [...files.values()].flatMap((content) => [...content.matchAll(link)].map((m) => m[1] ?? '')),
    );
    expect(targets.size).toBeGreaterThan(300);
    expect([...targets].filter((target) => !target.startsWith('#') && !files.has(target))).toEqual([]);
  });
  it('has no script, no style attribute and a policy that allows none, in HTML', async () => {
    for (const [, content] of await handbook('html')) {
      expect(content).toContain("default-src 'none'");
      expect(content).not.toMatch(/<script|\sstyle=|\son\w+=/);
    }
  });
});
