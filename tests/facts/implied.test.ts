import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { impliedAnswer, impliedBy, toldOrImplied } from '../../src/facts/implied.js';
import { openFacts } from '../../src/reasoning/hypotheses.js';
import { viewOf } from '../../src/rules/derived/view.js';

const told = (facts: Partial<Record<FactId, number | string>>): FactBook => ({
  ...EMPTY_BOOK,
  answers: new Map(
    Object.entries(facts).map(([id, value]) => [id as FactId, { value, how: 'measured' as const }]),
  ),
});

describe('a told fact tells the fact that decides whether it is asked', () => {
  it('takes a told shelf setback for a center on a shelf', () => {
    const book = told({ shelfSetback: 0.2 });
    expect(impliedAnswer(book, 'centerPlacement')).toEqual({ value: 'shelf-top', how: 'measured' });
    expect(viewOf(book).read('centerPlacement').value).toBe('shelf-top');
    expect(openFacts(book)).not.toContain('centerPlacement');
    expect(openFacts(book)).toContain('centerAboveShelf');
  });
  it('takes a told bass crossover of the center for a center set to small', () => {
    expect(toldOrImplied(told({ centerBassCrossover: 80 }), 'centerBassSize')).toBe('small');
  });
  it('lets the told answer stand against what another would imply', () => {
    const book = told({ shelfSetback: 0.2, centerPlacement: 'stand' });
    expect(toldOrImplied(book, 'centerPlacement')).toBe('stand');
    expect(viewOf(book).read('shelfSetback').value).toBeUndefined();
  });
  it('implies nothing from facts that disagree, that are unknown, or that fit several values', () => {
    expect(impliedAnswer(told({ shelfSetback: 0.2, bayDepth: 0.4 }), 'centerPlacement')).toBeUndefined();
    expect(impliedAnswer(told({ centerWidth: 0.5 }), 'centerPlacement')).toBeUndefined();
    const unknown: FactBook = { ...EMPTY_BOOK, answers: new Map([['shelfSetback', { how: 'unknown' }]]) };
    expect(impliedAnswer(unknown, 'centerPlacement')).toBeUndefined();
    expect(impliedAnswer(told({}), 'seatDistance')).toBeUndefined();
  });
  it('knows from which facts a place follows', () => {
    expect(impliedBy('centerPlacement')).toEqual(expect.arrayContaining(['shelfSetback', 'bayRecess']));
    expect(impliedBy('seatDistance')).toEqual([]);
  });
});
