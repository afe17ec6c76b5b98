/** The search for a safe crossover against plain enumeration, and the closed forms at its edges. */
import { describe, expect, it } from 'vitest';
import {
  alignedHole,
  bassSum,
  bassSumCurve,
  CROSSOVER_CHOICES_HZ,
  lowestCrossoverHz,
} from '../../src/acoustics/bass.js';
import { delayErrorAtCrossoverDb } from '../support/heldModels.js';

/** The same by definition: the lowest choice from which on every choice passes. */
function byEnumeration(passes: (crossoverHz: number) => boolean): number | null {
  const good = CROSSOVER_CHOICES_HZ.filter((_, i) => CROSSOVER_CHOICES_HZ.slice(i).every(passes));
  return good[0] ?? null;
}
const depth = (hole: { readonly dipDb: number | null }): number =>
  hole.dipDb === null ? Number.POSITIVE_INFINITY : -hole.dipDb;

describe('the lowest safe crossover', () => {
  const boxes = (['sealed', 'vented'] as const).flatMap((enclosure) =>
    [50, 80, 110].map((lowLimitHz) => ({ enclosure, lowLimitHz })),
  );
  it.each(boxes)('$enclosure box down to $lowLimitHz Hz, left as it comes', (box) => {
    for (const maxHoleDb of [0.5, 1, 2, 4, 8])
      expect(lowestCrossoverHz({ ...box, maxHoleDb })).toBe(
        byEnumeration((crossoverHz) => depth(bassSum({ ...box, crossoverHz })) <= maxHoleDb),
      );
  });
  it.each(boxes)('$enclosure box down to $lowLimitHz Hz, with the subwoofer set for it', (box) => {
    for (const maxHoleDb of [1, 3]) {
      const found = lowestCrossoverHz({ ...box, maxHoleDb, aligned: true });
      // The search stops at the first setting that does; the best setting does too, and below none may.
      expect(found).toBe(
        byEnumeration((crossoverHz) => depth(alignedHole({ ...box, crossoverHz })) <= maxHoleDb),
      );
    }
  });
});

describe('the best setting of the subwoofer', () => {
  it('is no worse than as it comes, and is a setting of a menu', () => {
    for (const crossoverHz of [60, 80, 120]) {
      const box = { enclosure: 'vented', lowLimitHz: 70, crossoverHz } as const;
      const best = alignedHole(box);
      expect(depth(best)).toBeLessThanOrEqual(depth(bassSum(box)) + 1e-9);
      expect(depth(bassSum({ ...box, ...best }))).toBeCloseTo(depth(best), 9);
      expect(best.subDelayMs % 0.25).toBeCloseTo(0, 12);
      expect(Math.abs(best.subDelayMs)).toBeLessThanOrEqual(15);
    }
  });
});

describe('a hole', () => {
  it('lies where the curve is lowest, between 40 and 300 Hz', () => {
    for (const subInverted of [false, true])
      for (const subDelayMs of [0, 2, 6]) {
        const box = {
          enclosure: 'vented',
          lowLimitHz: 70,
          crossoverHz: 80,
          subDelayMs,
          subInverted,
        } as const;
        const { dipDb, dipHz } = bassSum(box);
        const around = Array.from({ length: 2001 }, (_, i) => 40 * 7.5 ** (i / 2000));
        const lowest = Math.min(...bassSumCurve(box, around).levelDb);
        expect(dipDb ?? -99).toBeLessThanOrEqual(lowest + 1e-6);
        expect(dipDb).toBeCloseTo(Math.min(0, bassSumCurve(box, [dipHz]).levelDb[0] ?? 0), 9);
        expect(dipHz).toBeGreaterThanOrEqual(39.999);
        expect(dipHz).toBeLessThanOrEqual(300.001);
      }
  });
  it('between two equal branches follows the cosine of the lateness, and is complete at half a period', () => {
    expect(delayErrorAtCrossoverDb(100, 0)).toBeCloseTo(0, 12);
    expect(delayErrorAtCrossoverDb(100, 2.5)).toBeCloseTo(-3.0103, 4);
    expect(delayErrorAtCrossoverDb(100, 5)).toBeNull();
  });
  it('names the frequency it was asked for wrongly', () => {
    const box = { enclosure: 'sealed', lowLimitHz: 70, crossoverHz: 80 } as const;
    expect(() => bassSumCurve(box, [0])).toThrow('frequenciesHz is 0; accepted');
  });
  it('is the same for a subwoofer that is not said to be turned round', () => {
    const box = { enclosure: 'sealed', lowLimitHz: 70, crossoverHz: 80 } as const;
    expect(bassSum(box)).toEqual(bassSum({ ...box, subInverted: false, subDelayMs: 0, highPass: 'LR4' }));
    expect(bassSum(box)).not.toEqual(bassSum({ ...box, subInverted: true }));
  });
});

describe('the edges of the search', () => {
  it('moves to the next choice as soon as the hole is too deep by a hundredth of a dB', () => {
    const box = { enclosure: 'vented', lowLimitHz: 70 } as const;
    const holeDb = -(alignedHole({ ...box, crossoverHz: 100 }).dipDb ?? 0);
    expect(holeDb).toBeGreaterThan(0.3);
    expect(lowestCrossoverHz({ ...box, maxHoleDb: holeDb + 0.01, aligned: true })).toBe(100);
    expect(lowestCrossoverHz({ ...box, maxHoleDb: holeDb - 0.01, aligned: true })).toBeGreaterThan(100);
  });

  it('are 10 Hz and 1 kHz, with boxes that reach from 1 Hz', () => {
    const box = { enclosure: 'sealed', crossoverHz: 80, lowLimitHz: 60 } as const;
    expect(() => bassSum({ ...box, crossoverHz: 5 })).toThrow(
      /crossoverHz is 5; accepted: a number from 10 to 1000/,
    );
    expect(() => bassSum({ ...box, lowLimitHz: 0.5 })).toThrow(
      /lowLimitHz is 0.5; accepted: a number from 1 to 1000/,
    );
  });
});
