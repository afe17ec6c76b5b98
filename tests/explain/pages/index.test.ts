/** Finding the page that was meant, and writing it. */
import { describe, expect, it } from 'vitest';
import {
  allPages,
  pageBlocks,
  pagesOf,
  renderPagesMarkdown,
  renderPagesText,
  suggestions,
} from '../../../src/explain/pages/index.js';
import type { Page } from '../../../src/explain/pages/page.js';
import { UserError } from '../../../src/lib/user-error.js';

const PAGE: Page = {
  kind: 'test',
  id: 'testTape',
  title: 'Tape check',
  blocks: [{ kind: 'paragraph', line: 'Compare.' }],
};

describe('a page', () => {
  it('has its title, kind and id on top', () => {
    expect(pageBlocks(PAGE)).toEqual([
      { kind: 'heading', level: 1, text: 'Tape check' },
      { kind: 'paragraph', line: ['Home test ', { code: 'testTape' }] },
      { kind: 'paragraph', line: 'Compare.' },
    ]);
  });
  it('is written as text and Markdown, one after the other where several are meant', () => {
    const pages = [PAGE, { ...PAGE, id: 'second' }];
    expect(renderPagesText(pages)).toMatch(/Home test testTape[\s\S]+Compare\.\n[\s\S]+Home test second/);
    expect(renderPagesMarkdown(pages).match(/^# Tape check$/gm)).toHaveLength(2);
  });
  it('is as wide as told', () => {
    const long: Page = { ...PAGE, blocks: [{ kind: 'paragraph', line: 'word '.repeat(60) }] };
    const widest = (text: string): number => Math.max(...text.split('\n').map((line) => line.length));
    expect(widest(renderPagesText([long], { width: 40 }))).toBeLessThanOrEqual(40);
    expect(widest(renderPagesText([long]))).toBeGreaterThan(40);
  });
});

describe('all pages', () => {
  it('come in the order of a handbook, none twice', async () => {
    const pages = await allPages();
    const kinds = pages.map(({ kind }) => (kind === 'test' ? 'fact' : kind));
    expect(kinds.filter((kind, i) => kind !== kinds[i - 1])).toEqual([
      ...['cause', 'complaint', 'fact', 'rule', 'threshold', 'computed', 'calculator', 'source'],
    ]);
    expect(new Set(pages.map(({ kind, id }) => `${kind}/${id}`)).size).toBe(pages.length);
  });
});

describe('the page that was meant', () => {
  it('is found by its id, or by kind and id where two share it', async () => {
    const kinds = async (id: string) => (await pagesOf(id)).map(({ kind }) => kind);
    expect(await kinds('driver-layout')).toEqual(['cause']);
    expect((await kinds('comb')).sort()).toEqual(['calculator', 'source']);
    expect(await kinds('source/comb')).toEqual(['source']);
  });
  it('that does not exist is told with the nearest, or without any', async () => {
    const told = (id: string): Promise<unknown> => pagesOf(id).catch((error: unknown) => error);
    const [near, none] = [await told('driver-layuot'), await told('<script>\u001b[31m')];
    expect(near).toBeInstanceOf(UserError);
    expect(String(near)).toMatch(/there is no page for .*driver-layuot.*; did you mean driver-layout.*\?/);
    expect(String(none)).toMatch(/there is no page for "<script>[^"]*"\n/);
    expect(String(none)).not.toContain('\u001b');
  });
});

describe('near ids', () => {
  const IDS = ['delay', 'seatDistance', 'seatCount', 'seatSpacing', 'seating', 'driver-layout'];
  it('begin with the nearest by spelling, then the shortest that hold what was typed, three at most', () => {
    expect(suggestions('dealy', IDS)).toEqual(['delay']);
    expect(suggestions('seat', IDS)).toEqual(['seating', 'seatCount', 'seatSpacing']);
    expect(suggestions('seatcuont', [...IDS, 'seatcuont-x'])).toEqual(['seatCount', 'seatcuont-x']);
    expect(suggestions('delay', ['delay', 'delay-two'])).toEqual(['delay', 'delay-two']);
  });
  it('are found whatever the case, dashes and spaces', () => {
    expect(suggestions('Driver Layout', IDS)).toContain('driver-layout');
    expect(suggestions('DISTANCE', IDS)).toEqual(['seatDistance']);
  });
  it('are none for less than three letters, or for what nothing is like', () => {
    expect(suggestions('se', IDS)).toEqual([]);
    expect(suggestions('ele', ['wheelenter'])).toEqual(['wheelenter']);
    expect(suggestions('zzzzzzzzzz', IDS)).toEqual([]);
    expect(suggestions('--- ---', IDS)).toEqual([]);
  });
});
