import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, withAnswer } from '../../src/facts/book.js';
import { FACT_IDS, type FactId } from '../../src/facts/catalog.js';
import { type KnowsCounts, kindOf, knownChance, usualChance } from '../../src/reasoning/knows.js';

const counts = (facts: KnowsCounts['facts']): KnowsCounts => ({
  facts,
  kinds: { measured: [1, 4], seen: [0, 0], read: [3, 4], recalled: [1, 2], guessed: [0, 0], test: [1, 2] },
});

describe('the chance that an owner can answer', () => {
  it('is that of its kind for a fact never counted, and an even one where nothing of its kind was', () => {
    expect(usualChance('enteredCenter', counts({}))).toBe(0.75);
    expect(usualChance('seatDistance', counts({}))).toBe(0.25);
    expect(usualChance('testTape', { ...counts({}), kinds: { ...counts({}).kinds, test: [0, 0] } })).toBe(
      0.5,
    );
  });
  it('is the mean of a Beta distribution: ten owners of its kind, and those asked', () => {
    // (2 + 10 * 0.75) / (20 + 10)
    expect(usualChance('enteredCenter', counts({ enteredCenter: [2, 20] }))).toBeCloseTo(9.5 / 30, 12);
  });
  it('moves with what this owner could answer of the same kind, and with nothing else', () => {
    const id: FactId = 'seatDistance';
    const before = knownChance(EMPTY_BOOK, id);
    const refused = withAnswer(EMPTY_BOOK, 'earHeight', { how: 'unknown' });
    const taped = withAnswer(EMPTY_BOOK, 'earHeight', { value: 1, how: 'measured' });
    expect(knownChance(refused, id)).toBeCloseTo((3 * before) / 4, 12);
    expect(knownChance(taped, id)).toBeCloseTo((3 * before + 1) / 4, 12);
    expect(knownChance(withAnswer(EMPTY_BOOK, 'playedContent', { how: 'unknown' }), id)).toBe(before);
  });
  it('lies between never and always for every fact, and what is heard and seen is known more often than a data sheet', () => {
    for (const id of FACT_IDS) {
      expect(usualChance(id)).toBeGreaterThan(0);
      expect(usualChance(id)).toBeLessThan(1);
    }
    expect(usualChance('playedContent')).toBeGreaterThan(usualChance('centerCrossover'));
    expect(usualChance('centerPlacement')).toBeGreaterThan(usualChance('subDelay'));
    expect(kindOf('testTape')).toBe('test');
  });
});
