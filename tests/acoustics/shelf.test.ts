import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { abs } from '../../src/acoustics/complex.js';
import {
  fresnelHalf,
  shelfEffect,
  shelfSpecular,
  shelfStrip,
  tableEffect,
  tableStrip,
} from '../../src/acoustics/shelf.js';

/** Center 0.12 m above the top, ear 0.5 m above it, 3 m away: the geometry of the reference table. */
const TABLE = { heightAboveShelfM: 0.12, earAboveShelfM: 0.5, distanceM: 3 } as const;

describe('an exposed shelf', () => {
  it('reflects little until its depth reaches the mirror point', () => {
    // Depth; reflection at 1, 2, 4, 8 kHz; third-octave dip. Computed, project reference.
    for (const [exposedDepthM, ratios, dipDb] of [
      [0.03, [0.1, 0.15, 0.2, 0.1], -1.3],
      [0.1, [0.28, 0.33, 0.2, 0.19], -3.3],
      [0.2, [0.42, 0.42, 0.13, 0.11], -3.8],
      [0.3, [0.5, 0.47, 0.24, 0.24], -3.2],
      [0.4, [0.56, 0.51, 0.35, 0.36], -3.8],
      [0.6, [0.65, 0.58, 0.52, 0.58], -6.5],
      [1.0, [0.8, 0.74, 0.83, 1.0], -11.1],
    ] as const) {
      // The shallowest strip is printed to 0.05.
      const tolerance = exposedDepthM < 0.05 ? 0.055 : 0.01;
      [1000, 2000, 4000, 8000].forEach((frequencyHz, i) => {
        const got = shelfStrip({ ...TABLE, exposedDepthM, frequencyHz }).reflectionAbs;
        expect(Math.abs(got - (ratios[i] ?? 0))).toBeLessThan(tolerance);
      });
      expect(Math.abs(shelfEffect({ ...TABLE, exposedDepthM }).dipDb - dipDb)).toBeLessThan(0.1);
    }
  });

  it('is within 2 dB of the boundary-element dips for setbacks up to 0.6 m', () => {
    // Two-dimensional boundary elements, 250 Hz to 7 kHz. Computed, project reference; the strip errs to the bad side.
    for (const [exposedDepthM, dipDb] of [
      [0.03, -1.5],
      [0.1, -2.8],
      [0.3, -1.9],
      [0.4, -2.4],
      [0.6, -5.1],
    ] as const) {
      expect(Math.abs(shelfEffect({ ...TABLE, exposedDepthM }).dipDb - dipDb)).toBeLessThan(2);
    }
  });

  it('with no depth left, or an ear below its plane, does nothing', () => {
    expect(shelfEffect({ ...TABLE, exposedDepthM: 0 })).toMatchObject({ riseDb: 0 });
    expect(shelfEffect({ ...TABLE, exposedDepthM: 0 }).dipDb).toBeCloseTo(0, 9);
    const below = { ...TABLE, earAboveShelfM: -0.1, exposedDepthM: 0.3 };
    expect(shelfSpecular(below)).toBeNull();
    expect(shelfEffect(below).dipDb).toBeCloseTo(0, 9);
    expect(shelfEffect(below).riseDb).toBe(0);
  });

  it('adds 3 to 4 dB near 400 Hz at ordinary setbacks, by the boundary-element table', () => {
    expect(shelfEffect({ ...TABLE, exposedDepthM: 0.1 }).riseDb).toBeCloseTo(2.9, 9);
    expect(shelfEffect({ ...TABLE, exposedDepthM: 0.25 }).riseDb).toBeCloseTo(4, 9);
    expect(shelfEffect({ ...TABLE, exposedDepthM: 0.25, reflection: 0.3 }).riseDb).toBeCloseTo(1.2, 9);
  });

  it('covered with an absorber reflects in proportion', () => {
    const depth = fc.double({ min: 0.01, max: 1, noNaN: true });
    const reflections = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        depth,
        reflections,
        fc.double({ min: 200, max: 8000, noNaN: true }),
        (exposedDepthM, reflection, frequencyHz) => {
          const hard = shelfStrip({ ...TABLE, exposedDepthM, frequencyHz }).reflectionAbs;
          const soft = shelfStrip({ ...TABLE, exposedDepthM, frequencyHz, reflection });
          expect(soft.reflectionAbs).toBeCloseTo(hard * reflection, 9);
          expect(Number.isFinite(soft.levelDb)).toBe(true);
        },
      ),
    );
  });

  it('an edge passes all, half or nothing of a wave', () => {
    expect(abs(fresnelHalf(-50))).toBeCloseTo(1, 1);
    expect(abs(fresnelHalf(0))).toBeCloseTo(0.5, 12);
    expect(abs(fresnelHalf(50))).toBeLessThan(0.01);
  });
});

describe('a table in between', () => {
  const FREQUENCIES_HZ = [500, 1000, 2000, 4000, 8000] as const;

  it('reflects where the mirror point lies on it and less where it does not', () => {
    // A table 1 m wide: 0.3 to 0.9 m from a center 0.15 m above it, then 0.9 to 1.5 m from one 0.1 m above it.
    // Computed, project reference.
    const near = {
      heightAboveShelfM: 0.15,
      earAboveShelfM: 0.55,
      distanceM: 3,
      nearEdgeM: 0.3,
      farEdgeM: 0.9,
      widthM: 1,
    };
    const far = {
      heightAboveShelfM: 0.1,
      earAboveShelfM: 0.6,
      distanceM: 3,
      nearEdgeM: 0.9,
      farEdgeM: 1.5,
      widthM: 1,
    };
    expect(shelfSpecular(near)?.specularM).toBeCloseTo(0.64, 2);
    expect(shelfSpecular(far)?.specularM).toBeCloseTo(0.43, 2);
    FREQUENCIES_HZ.forEach((frequencyHz, i) => {
      const onIt = tableStrip({ ...near, frequencyHz }).reflectionAbs;
      const offIt = tableStrip({ ...far, frequencyHz }).reflectionAbs;
      expect(Math.abs(onIt - ([0.34, 0.38, 0.59, 0.76, 0.94][i] ?? 0))).toBeLessThan(0.006);
      expect(Math.abs(offIt - ([0.23, 0.19, 0.34, 0.41, 0.29][i] ?? 0))).toBeLessThan(0.006);
    });
    expect(tableEffect(near).dipDb).toBeLessThan(tableEffect(far).dipDb);
  });

  it('without a width it is a shelf; without an extent it is nothing', () => {
    const strip = { ...TABLE, nearEdgeM: 0, farEdgeM: 0.3 };
    expect(tableEffect(strip).dipDb).toBeCloseTo(shelfEffect({ ...TABLE, exposedDepthM: 0.3 }).dipDb, 9);
    expect(tableEffect({ ...TABLE, nearEdgeM: 0.5, farEdgeM: 0.5 }).dipDb).toBeCloseTo(0, 9);
  });

  it('refuses edges out of order or beyond the seat', () => {
    expect(() => tableEffect({ ...TABLE, nearEdgeM: 0.9, farEdgeM: 0.3 })).toThrow(
      /farEdgeM is 0.3; accepted/,
    );
    expect(() => tableEffect({ ...TABLE, nearEdgeM: 0.9, farEdgeM: 4 })).toThrow(/farEdgeM/);
    expect(() => shelfStrip({ ...TABLE, exposedDepthM: -0.1, frequencyHz: 1000 })).toThrow(/exposedDepthM/);
    expect(() =>
      shelfStrip({ ...TABLE, heightAboveShelfM: 0, exposedDepthM: 0.1, frequencyHz: 1000 }),
    ).toThrow(/heightAboveShelfM/);
  });
});
