/** Measures of a ranking on examples small enough for a head. */
import { describe, expect, it } from 'vitest';
import {
  brier,
  calibrationBins,
  calibrationError,
  logLoss,
  mean,
  meanExcessPercent,
  median,
  recallAt,
  reciprocalRank,
  topIsTrue,
} from '../../eval/metrics.js';

describe('a ranking', () => {
  it('is right at the top when its first is among the true ones', () => {
    expect(topIsTrue(['a', 'b'], ['a'])).toBe(true);
    expect(topIsTrue(['a', 'b'], ['b'])).toBe(false);
    expect(topIsTrue([], ['a'])).toBe(false);
    expect(topIsTrue([undefined], [undefined])).toBe(false);
  });
  it('recalls hits over what could be hit among the first few', () => {
    expect(recallAt(['a', 'b', 'c'], ['b', 'd'], 2)).toBe(0.5);
    expect(recallAt(['a', 'b', 'c'], ['c'], 2)).toBe(0);
    expect(recallAt(['a', 'b', 'c'], ['a', 'b', 'c'], 2)).toBe(1);
  });
  it('has the reciprocal rank of its first hit', () => {
    expect(reciprocalRank(['a', 'b', 'c'], ['b', 'c'])).toBe(1 / 2);
    expect(reciprocalRank(['a'], ['a'])).toBe(1);
    expect(reciprocalRank(['a'], ['z'])).toBe(0);
  });
});

describe('a stated probability', () => {
  it('costs its squared distance from what was true', () => {
    expect(
      brier([
        { p: 0.8, hit: true },
        { p: 0.3, hit: false },
      ]),
    ).toBeCloseTo(0.04 + 0.09, 12);
  });
  it('costs its logarithm, and nothing is infinitely wrong', () => {
    expect(logLoss(1)).toBeCloseTo(0, 12);
    expect(logLoss(Math.exp(-2))).toBeCloseTo(2, 12);
    expect(logLoss(0)).toBeCloseTo(-Math.log(1e-15), 9);
  });
});

describe('averages', () => {
  it('are means and medians', () => {
    expect(mean([1, 2, 6])).toBe(3);
    expect(median([6, 1, 2])).toBe(2);
    expect(median([6, 1, 2, 4])).toBe(3);
    expect(median([10, 9])).toBe(9.5);
    expect(median([])).toBeNaN();
  });
  it('say by how many percent values exceed their best', () => {
    expect(meanExcessPercent([11, 30], [10, 20])).toBeCloseTo((10 + 50) / 2, 9);
  });
});

describe('calibration', () => {
  const told = [
    { p: 0.9, hit: true },
    { p: 0.1, hit: false },
    { p: 0.95, hit: false },
    { p: 0.2, hit: false },
  ];
  it('bins by count: the lower and the upper half of the statements', () => {
    const [low, high] = calibrationBins(told, 2, 'equal-count');
    expect(low).toMatchObject({ count: 2, right: 0 });
    expect(low?.stated).toBeCloseTo(0.15, 12);
    expect(high).toMatchObject({ count: 2, right: 0.5 });
    expect(high?.stated).toBeCloseTo(0.925, 12);
  });
  it('bins by count where by width they would be uneven, unless told otherwise', () => {
    const low = [0.1, 0.2, 0.3, 0.9].map((p) => ({ p, hit: p > 0.25 }));
    expect(calibrationBins(low, 2, 'equal-count').map(({ count }) => count)).toEqual([2, 2]);
    expect(calibrationBins(low, 2, 'equal-width').map(({ count }) => count)).toEqual([3, 1]);
    expect(calibrationError(low, 2)).toBeCloseTo(0.5 * 0.15 + 0.5 * 0.4, 12);
  });
  it('bins by width, leaves out empty bins, and puts certainty into the last', () => {
    const bins = calibrationBins([...told, { p: 1, hit: true }], 4, 'equal-width');
    expect(bins.map(({ count }) => count)).toEqual([2, 3]);
    expect(bins[1]?.right).toBeCloseTo(2 / 3, 12);
  });
  it('errs by the gap between said and right, weighted by how often', () => {
    expect(calibrationError(told, 2)).toBeCloseTo(0.5 * 0.15 + 0.5 * 0.425, 12);
    const uneven = [
      { p: 0.4, hit: true },
      { p: 0.9, hit: true },
      { p: 0.9, hit: true },
    ];
    expect(calibrationError(uneven, 2, 'equal-width')).toBeCloseTo((1 / 3) * 0.6 + (2 / 3) * 0.1, 12);
  });
});
