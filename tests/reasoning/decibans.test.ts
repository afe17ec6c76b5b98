/** Decibans and the words for them: exact at the edges of every band. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  MOST_CERTAIN,
  oddsOf,
  probabilityOf,
  probabilityText,
  probabilityWord,
  statedProbability,
  weightWord,
} from '../../src/reasoning/decibans.js';
import { decibansOf } from '../support/bayesNet.js';

describe('decibans', () => {
  it('of even odds are none, of ten to one ten, and turn their sign with the odds', () => {
    expect([oddsOf(0), oddsOf(10), oddsOf(-10)]).toEqual([1, 10, 0.1]);
    expect(probabilityOf(0)).toBe(0.5);
    expect(probabilityOf(10)).toBeCloseTo(10 / 11, 12);
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (db) => {
        expect(probabilityOf(db) + probabilityOf(-db)).toBeCloseTo(1, 12);
      }),
    );
  });
  it('lead back to the probability they came from, and to neither NaN nor more than one at the ends', () => {
    for (const p of [0.001, 0.2, 0.5, 0.9]) expect(probabilityOf(decibansOf(p))).toBeCloseTo(p, 12);
    expect(probabilityOf(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(probabilityOf(Number.POSITIVE_INFINITY)).toBe(1);
  });
  it('are never told as certainty', () => {
    expect(statedProbability(60)).toBe(MOST_CERTAIN);
    expect(statedProbability(0)).toBe(0.5);
  });
});

describe('words', () => {
  it('for a weight turn at 5, 10 and 20 decibans, whichever way it points', () => {
    const words = [0, 4.99, 5, 9.99, 10, 19.99, 20, 40].map(weightWord);
    expect(words).toEqual([
      'a hint',
      'a hint',
      'substantial',
      'substantial',
      'strong',
      'strong',
      'decisive',
      'decisive',
    ]);
    expect([-4, -12, -30].map(weightWord)).toEqual(['a hint', 'strong', 'decisive']);
  });
  it('for a probability turn at the edges of their bands', () => {
    const at = (p: number): string[] => [probabilityWord(p), probabilityWord(p - 1e-9)];
    expect([0.9, 0.7, 0.45, 0.2, 0.05].map(at)).toEqual([
      ['almost certain', 'likely'],
      ['likely', 'about even'],
      ['about even', 'possible'],
      ['possible', 'unlikely'],
      ['unlikely', 'very unlikely'],
    ]);
  });
  it('for a probability in percent go by fives and never to 0 or 100', () => {
    expect([0, 0.024, 0.026, 0.5, 0.62, 0.63, 0.97, 0.976, 1].map(probabilityText)).toEqual([
      'under 5%',
      'under 5%',
      'about 5%',
      'about 50%',
      'about 60%',
      'about 65%',
      'about 95%',
      'over 95%',
      'over 95%',
    ]);
  });
});
