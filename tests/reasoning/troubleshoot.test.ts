/** Costs of checking one suspect after the other, and of asking first, in numbers for a head. */
import { describe, expect, it } from 'vitest';
import { checkOrder, outlook, repairMinutes, searchMinutes } from '../../src/reasoning/troubleshoot.js';

const suspect = (p: number, confirmMinutes: number) => ({
  p,
  confirmMinutes,
  repairMinutes: 7,
  checkMinutes: 2,
});

describe('checking suspects in turn', () => {
  it('goes by chance for the minute; of equals the one named first', () => {
    expect(checkOrder([suspect(0.2, 4), suspect(0.3, 2), suspect(0.1, 2), suspect(0.15, 1)])).toEqual([
      1, 3, 0, 2,
    ]);
  });
  it('costs each check while nobody is found, and what follows when it was none of them', () => {
    expect(searchMinutes([0.5, 0.3], [10, 20])).toBeCloseTo(10 + 0.5 * 20, 12);
    expect(searchMinutes([0.5, 0.3], [10, 20], 60)).toBeCloseTo(10 + 0.5 * 20 + 0.2 * 60, 12);
    expect(repairMinutes([suspect(0.5, 10), suspect(0.3, 20)], [1, 0], 60)).toBeCloseTo(
      20 + 0.7 * 10 + 0.2 * 60 + 0.8 * 9,
      12,
    );
  });
  it('leaves nobody over when chances add up to more than one by rounding', () => {
    expect(searchMinutes([0.6, 0.4 + 1e-9], [10, 10], 60)).toBeCloseTo(14, 6);
    expect(searchMinutes([0.6, 0.6], [10, 10], 60)).toBe(14);
  });
  it('is refused for a suspect that is not there, or without a time', () => {
    expect(() => searchMinutes([0.5], [10], 0, [0, 1])).toThrow('no suspect 1');
    expect(() => searchMinutes([0.5, 0.5], [10], 0, [1])).toThrow('no suspect 1');
    expect(() => searchMinutes([0.5], [10, 10], 0, [1])).toThrow('no suspect 1');
  });
});

describe('asking first', () => {
  it('gains nothing by an answer that nobody can give', () => {
    const seen = outlook(
      [0.5, 0.5],
      [
        [1, 1],
        [0, 0],
      ],
      (p) => -10 * (1 - Math.max(...p)) - 1,
    );
    expect(seen.answers[1]).toEqual({ p: 0, posterior: [0, 0], value: 0 });
    expect(seen.gain).toBe(0);
  });
  it('gains what acting on the answer is better than acting now, by how often each is given', () => {
    // The better of two bets on two even states, after a hint right three times in four.
    const seen = outlook(
      [0.5, 0.5],
      [
        [0.75, 0.25],
        [0.25, 0.75],
      ],
      (p) => Math.max(...p),
    );
    expect(seen.now).toBe(0.5);
    expect(seen.gain).toBeCloseTo(0.25, 12);
  });
});
