/** Special functions and filters against a recorded table of SciPy (version and functions named in the file). */
import { describe, expect, it } from 'vitest';
import { type CrossoverFilter, highPass, lowPass } from '../../src/acoustics/crossover.js';
import { besselJ1OverJ0, fresnel, jincFast, sphericalBessel } from '../../src/acoustics/special.js';
import { besselJ1 } from '../support/heldModels.js';
import table from './data/scipy-special.json' with { type: 'json' };

/** Relative closeness for values that span many decades. */
const near = (got: number, expected: number, relative: number): void =>
  expect(Math.abs(got - expected)).toBeLessThan(relative * Math.max(Math.abs(expected), 1e-12));

describe(`against ${table.source.split(',')[0]}`, () => {
  it('J1, exact and rational', () => {
    for (const { x, value } of table.besselJ1) {
      expect(besselJ1(x)).toBeCloseTo(value, 12);
      expect(Math.abs((x / 2) * jincFast(x) - value)).toBeLessThan(1e-7);
    }
  });

  it('Fresnel integrals', () => {
    for (const { v, c, s } of table.fresnel) {
      expect(fresnel(v).c).toBeCloseTo(c, 11);
      expect(fresnel(v).s).toBeCloseTo(s, 11);
    }
  });

  it('spherical Bessel functions of both kinds', () => {
    for (const { x, n, j, y } of table.spherical) {
      const got = sphericalBessel(14, x);
      near(got.j[n] ?? 0, j, 1e-7);
      near(got.y[n] ?? 0, y, 1e-7);
    }
  });

  it('J1 / J0 of a complex argument', () => {
    for (const { z, ratio } of table.besselRatio) {
      const got = besselJ1OverJ0({ re: z[0] ?? 0, im: z[1] ?? 0 });
      near(got.re, ratio[0] ?? 0, 1e-8);
      expect(got.im).toBeCloseTo(ratio[1] ?? 0, 9);
    }
  });

  it('crossover filters, magnitude and phase', () => {
    for (const row of table.filters) {
      const filter = row.filter as CrossoverFilter;
      row.frequencyHz.forEach((frequencyHz, i) => {
        for (const [branch, expected] of [
          [lowPass, row.lowPass[i]],
          [highPass, row.highPass[i]],
        ] as const) {
          const got = branch(filter, row.crossoverHz, frequencyHz);
          expect(got.re).toBeCloseTo(expected?.[0] ?? Number.NaN, 8);
          expect(got.im).toBeCloseTo(expected?.[1] ?? Number.NaN, 8);
        }
      });
    }
  });
});
