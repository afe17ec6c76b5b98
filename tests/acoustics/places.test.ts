import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soundSpeed } from '../../src/acoustics/air.js';
import { boundedMemo } from '../../src/acoustics/cache.js';
import { azimuthDeg, elevation } from '../../src/acoustics/elevation.js';
import { sharedPolarityChangeDb } from '../../src/acoustics/polarity.js';
import { display16x9 } from '../../src/acoustics/practice.js';

describe('elevation', () => {
  it('of a center on low furniture, ear 1.05 m, at 2, 3 and 4 m', () => {
    // Degrees. Computed, project reference.
    for (const [sourceHeightM, degrees] of [
      [0.3, [-20.6, -14.0, -10.6]],
      [0.45, [-16.7, -11.3, -8.5]],
      [0.7, [-9.9, -6.7, -5.0]],
      [1.5, [12.7, 8.5, 6.4]],
      [1.8, [20.6, 14.0, 10.6]],
    ] as const) {
      [2, 3, 4].forEach((distanceM, i) => {
        const got = elevation({ sourceHeightM, distanceM }).elevationDeg;
        expect(Math.abs(got - (degrees[i] ?? 0))).toBeLessThan(0.06);
      });
    }
  });

  it('a tilt that points at the ear leaves nothing off axis', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2.5, noNaN: true }),
        fc.double({ min: 1, max: 6, noNaN: true }),
        (h, d) => {
          const flat = elevation({ sourceHeightM: h, distanceM: d });
          const aimed = elevation({ sourceHeightM: h, distanceM: d, tiltUpDeg: flat.offAxisDeg });
          expect(aimed.offAxisDeg).toBeCloseTo(0, 9);
          expect(aimed.elevationDeg).toBe(flat.elevationDeg);
        },
      ),
    );
  });

  it('directions to the right are positive', () => {
    expect(azimuthDeg({ offsetM: 0.6, distanceM: 3 })).toBeCloseTo(11.31, 2);
    expect(azimuthDeg({ offsetM: -0.6, distanceM: 3 })).toBeCloseTo(-11.31, 2);
    expect(() => azimuthDeg({ offsetM: 1, distanceM: 0 })).toThrow(/distanceM is 0; accepted/);
  });
});

describe('polarity of shared content', () => {
  it('an inverted center takes out what it shares with the sides', () => {
    // Gain of each side, of the center; correct and inverted level, dB. Computed, project reference.
    for (const [sideGain, centerGain, correctDb, invertedDb] of [
      [Math.SQRT1_2, 1, 7.66, -7.66],
      [0.57735, 0.57735, 4.77, -4.77],
      [10 ** -0.5, 1, 4.26, -8.69],
      [1, 0.5012, 7.96, 3.52],
    ] as const) {
      const got = sharedPolarityChangeDb({ sideGain, centerGain });
      expect(got.correctDb ?? 0).toBeCloseTo(correctDb, 1);
      expect(got.invertedDb ?? 0).toBeCloseTo(invertedDb, 1);
      expect(got.changeDb ?? 0).toBeCloseTo(invertedDb - correctDb, 1);
    }
  });

  it('dialogue in the center alone does not change', () => {
    expect(sharedPolarityChangeDb({ sideGain: 0, centerGain: 1 })).toEqual({
      correctDb: 0,
      invertedDb: 0,
      changeDb: 0,
    });
  });

  it('total cancellation has no level in dB', () => {
    expect(sharedPolarityChangeDb({ sideGain: 0.5, centerGain: 1 })).toMatchObject({
      correctDb: 20 * Math.log10(2),
      invertedDb: null,
      changeDb: null,
    });
    expect(sharedPolarityChangeDb({ sideGain: 0, centerGain: 0 })).toEqual({
      correctDb: null,
      invertedDb: null,
      changeDb: null,
    });
  });
});

describe('the rest of the ground', () => {
  it('sound is faster in a warm room: 340.3 m/s at 15 C, 346.1 at 25 C', () => {
    // From memory (textbook).
    expect(soundSpeed(15)).toBeCloseTo(340.3, 1);
    expect(soundSpeed(25)).toBeCloseTo(346.1, 1);
    expect(() => soundSpeed(-300)).toThrow(/temperatureC is -300; accepted/);
  });

  it('a 16:9 picture is 0.8716 x 0.4903 of its diagonal', () => {
    const { widthM, heightM } = display16x9({ diagonalM: 1 });
    expect(widthM).toBeCloseTo(0.8716, 4);
    expect(heightM).toBeCloseTo(0.4903, 4);
    expect(() => display16x9({ diagonalM: 0 })).toThrow(/diagonalM/);
  });

  it('a memo computes once and forgets its oldest entry first', () => {
    const memo = boundedMemo<number>(2);
    let calls = 0;
    const get = (key: string): number =>
      memo(key, () => {
        calls += 1;
        return calls;
      });
    get('a');
    get('a');
    get('b');
    expect(calls).toBe(2);
    get('c');
    get('b');
    expect(calls).toBe(3);
    get('a');
    expect(calls).toBe(4);
  });
});
