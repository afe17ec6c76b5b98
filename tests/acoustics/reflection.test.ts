import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bounceRipple,
  floorBounce,
  floorReflection,
  frontWall,
  smoothedExtremes,
} from '../../src/acoustics/reflection.js';
import { boundaryGainDb } from '../support/heldModels.js';

const heights = fc.double({ min: 0.05, max: 2.5, noNaN: true });
const distances = fc.double({ min: 0.5, max: 8, noNaN: true });

describe('floor bounce', () => {
  it('lowering the center lifts its null into the voice: ear 1.05 m, 3 m away', () => {
    // Path difference (m) and null (Hz) by height of the source. Computed, project reference.
    for (const [sourceHeightM, pathM, nullHz] of [
      [0.35, 0.23, 746],
      [0.5, 0.327, 525],
      [0.6, 0.39, 440],
      [0.8, 0.514, 334],
      [1.0, 0.633, 271],
    ] as const) {
      const got = floorBounce({ sourceHeightM, distanceM: 3 });
      expect(got.pathDifferenceM).toBeCloseTo(pathM, 3);
      expect(Math.abs((got.firstNullHz ?? 0) - nullHz)).toBeLessThan(1);
    }
  });

  it('exchanging source and ear changes nothing but the side of the mirror point', () => {
    fc.assert(
      fc.property(heights, heights, distances, (a, b, distanceM) => {
        const there = floorBounce({ sourceHeightM: a, earHeightM: b, distanceM });
        const back = floorBounce({ sourceHeightM: b, earHeightM: a, distanceM });
        expect(back.pathDifferenceM).toBeCloseTo(there.pathDifferenceM, 12);
        expect(back.nullDepthDb ?? 0).toBeCloseTo(there.nullDepthDb ?? 0, 6);
        expect((back.specularM ?? 0) + (there.specularM ?? 0)).toBeCloseTo(distanceM, 9);
      }),
    );
  });

  it('all lengths doubled halves the null and keeps its depth', () => {
    fc.assert(
      fc.property(heights, heights, distances, (s, e, distanceM) => {
        const small = floorBounce({ sourceHeightM: s, earHeightM: e, distanceM });
        const large = floorBounce({ sourceHeightM: 2 * s, earHeightM: 2 * e, distanceM: 2 * distanceM });
        expect((large.firstNullHz ?? 0) * 2).toBeCloseTo(small.firstNullHz ?? 0, 6);
        expect(large.nullDepthDb ?? 0).toBeCloseTo(small.nullDepthDb ?? 0, 6);
      }),
    );
  });

  it('a weaker floor leaves a shallower null, a perfect absorber none', () => {
    const at = (reflection: number): number =>
      floorBounce({ sourceHeightM: 0.6, distanceM: 3, reflection }).nullDepthDb ?? -99;
    expect(at(0.5)).toBeGreaterThan(at(0.9));
    expect(at(0)).toBeCloseTo(0, 12);
  });

  it('on the floor there is no null, and two equal sounds have no depth in dB', () => {
    expect(floorBounce({ sourceHeightM: 0, distanceM: 3 })).toMatchObject({
      firstNullHz: null,
      nullDepthDb: null,
    });
    expect(floorBounce({ sourceHeightM: 0, earHeightM: 0, distanceM: 3 }).specularM).toBeNull();
  });

  it('a mirror on the floor shows the source: a third of the way from 0.6 m to an ear at 1.2 m', () => {
    expect(floorBounce({ sourceHeightM: 0.6, earHeightM: 1.2, distanceM: 3 }).specularM).toBeCloseTo(1, 12);
  });

  it('a carpet does little for the null of a low center', () => {
    const low = { sourceHeightM: 0.6, distanceM: 3 };
    const bare = bounceRipple({ ...low, cover: 'bare' });
    const carpet = bounceRipple({ ...low, cover: 'carpet' });
    expect(bare.dipHz).toBeGreaterThan(400);
    expect(bare.dipHz).toBeLessThan(480);
    expect(carpet.dipDb).toBeGreaterThan(bare.dipDb);
    expect(carpet.dipDb).toBeLessThan(-5);
    // A bare floor gives back 0.95: the sum of both sounds is the most there can be.
    const { reflectionRatio } = floorBounce(low);
    expect(bare.peakDb).toBeLessThanOrEqual(20 * Math.log10(1 + 0.95 * reflectionRatio));
    expect(bare.peakDb).toBeGreaterThan(4);
    expect(carpet.peakDb).toBeLessThan(bare.peakDb);
    expect(carpet.peakDb).toBeGreaterThan(3);
  });

  it('carpet reflects less the higher the sound', () => {
    for (const [f, ratio] of [
      [100, 0.9],
      [250, 0.9],
      [500, 0.8],
      [1000, 0.6],
      [2000, 0.5],
      [9000, 0.5],
    ] as const) {
      expect(floorReflection('carpet', f)).toBeCloseTo(ratio, 12);
    }
    expect(floorReflection('carpet', 700)).toBeLessThan(0.8);
  });

  it('refuses heights below the floor and reflections above 1', () => {
    expect(() => floorBounce({ sourceHeightM: -0.1, distanceM: 3 })).toThrow(
      /sourceHeightM is -0.1; accepted/,
    );
    expect(() => floorBounce({ sourceHeightM: 0.5, distanceM: 0 })).toThrow(/distanceM/);
    expect(() => floorBounce({ sourceHeightM: 0.5, distanceM: 3, reflection: 1.2 })).toThrow(/reflection/);
    expect(() => floorBounce({ sourceHeightM: Number.NaN, distanceM: 3 })).toThrow(/sourceHeightM/);
  });
});

describe('extremes of a smoothed curve', () => {
  it('of a rising curve lie at the ends of the range, smoothed over a whole band there too', () => {
    // The mean of f^4 over a third octave is sinh(4 h) / (4 h) of its middle, h half a band in nepers (arithmetic).
    const h = 4 * 0.05 * Math.LN10;
    const bandDb = 10 * Math.log10(Math.sinh(h) / h);
    const rising = smoothedExtremes(100, 8000, (hz) => (hz / 1000) ** 4);
    // One step of the curve is 0.7 %.
    expect(rising.dipHz).toBeLessThan(100.8);
    expect(rising.dipHz).toBeGreaterThanOrEqual(100);
    expect(rising.dipDb).toBeCloseTo(40 * Math.log10(rising.dipHz / 1000) + bandDb, 2);
    expect(rising.peakHz).toBeGreaterThan(7930);
    expect(rising.peakHz).toBeLessThanOrEqual(8000);
    expect(rising.peakDb).toBeCloseTo(40 * Math.log10(rising.peakHz / 1000) + bandDb, 2);
  });

  it('of a falling curve are the other way around; a flat one has none', () => {
    const falling = smoothedExtremes(100, 8000, (hz) => (1000 / hz) ** 4);
    expect(falling.dipHz).toBeGreaterThan(7900);
    expect(falling.peakHz).toBeLessThan(102);
    expect(falling.peakDb).toBeGreaterThan(39);
    const flat = smoothedExtremes(100, 8000, () => 1);
    expect(flat.dipDb).toBeCloseTo(0, 9);
    expect(flat.peakDb).toBeCloseTo(0, 9);
  });

  it('a curve below its reference everywhere has no peak, one above it no dip', () => {
    expect(smoothedExtremes(200, 4000, () => 0.5)).toMatchObject({ peakDb: 0 });
    expect(smoothedExtremes(200, 4000, () => 2)).toMatchObject({ dipDb: 0 });
  });

  it('find a hump in the middle of the range, and a hole', () => {
    const hump = (hz: number) => Math.exp(-((Math.log2(hz / 900) / 0.4) ** 2));
    expect(smoothedExtremes(100, 8000, (hz) => 1 + hump(hz)).peakHz / 900).toBeCloseTo(1, 2);
    expect(smoothedExtremes(100, 8000, (hz) => 1 - hump(hz) / 2).dipHz / 900).toBeCloseTo(1, 2);
  });
});

describe('wall behind', () => {
  it('cancels at a quarter wave, less the farther the wall', () => {
    // Null (Hz) and depth (dB) at 3 m for an omnidirectional source. Computed, project reference.
    for (const [wallDistanceM, nullHz, depthDb] of [
      [0.1, 858, -24.1],
      [0.2, 429, -18.6],
      [0.3, 286, -15.6],
      [0.4, 215, -13.5],
      [0.6, 143, -10.9],
      [0.8, 107, -9.2],
      [1.0, 86, -8.0],
    ] as const) {
      const got = frontWall({ wallDistanceM });
      expect(Math.abs((got.firstNullHz ?? 0) - nullHz)).toBeLessThan(0.6);
      expect(Math.abs((got.nullDepthDb ?? 0) - depthDb)).toBeLessThan(0.06);
    }
    expect(frontWall({ wallDistanceM: 0 })).toMatchObject({ firstNullHz: null, nullDepthDb: null });
  });
});

describe('power gained from boundaries', () => {
  it('tends to 3, 6 and 9 dB in the corner and to nothing far away', () => {
    for (const [count, limit] of [
      [1, 3.0103],
      [2, 6.0206],
      [3, 9.0309],
    ] as const) {
      expect(boundaryGainDb({ distancesM: new Array(count).fill(0), frequencyHz: 50 })).toBeCloseTo(limit, 4);
      expect(
        Math.abs(boundaryGainDb({ distancesM: new Array(count).fill(200), frequencyHz: 1000 })),
      ).toBeLessThan(0.02);
    }
  });

  it('of one wall is least at 0.358 wavelengths: -1.06 dB', () => {
    // Computed, project reference.
    const c = 343.2;
    const at = (wavelengths: number): number => boundaryGainDb({ distancesM: [wavelengths], frequencyHz: c });
    expect(at(0.358)).toBeCloseTo(-1.06, 2);
    for (let x = 0.05; x < 2; x += 0.01) expect(at(x)).toBeGreaterThan(at(0.358) - 1e-3);
  });

  it('does not care about the order of the walls', () => {
    const d = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(d, d, d, fc.double({ min: 20, max: 500, noNaN: true }), (x, y, z, frequencyHz) => {
        expect(boundaryGainDb({ distancesM: [x, y, z], frequencyHz })).toBeCloseTo(
          boundaryGainDb({ distancesM: [z, x, y], frequencyHz }),
          9,
        );
      }),
    );
    expect(() => boundaryGainDb({ distancesM: [], frequencyHz: 100 })).toThrow(/distancesM.length/);
  });
});
