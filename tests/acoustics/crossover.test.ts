import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { abs, add, type Complex, levelDb, mul, sub } from '../../src/acoustics/complex.js';
import {
  butterworthHighPass,
  butterworthLowPass,
  CROSSOVER_FILTERS,
  type CrossoverFilter,
  highPass,
  lowPass,
} from '../../src/acoustics/crossover.js';

const FLAT = ['LR2', 'LR4', 'LR8', 'BW3'] as const satisfies readonly CrossoverFilter[];
const frequencies = fc.double({ min: 5, max: 40000, noNaN: true });
const crossovers = fc.double({ min: 40, max: 8000, noNaN: true });

const arg = ({ re, im }: Complex): number => Math.atan2(im, re);

describe('crossover filters', () => {
  it('low and high add to a flat sum for every type a maker would call a crossover', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FLAT), crossovers, frequencies, (filter, fcHz, f) => {
        expect(Math.abs(levelDb(add(lowPass(filter, fcHz, f), highPass(filter, fcHz, f))))).toBeLessThan(
          1e-9,
        );
      }),
    );
  });

  it('Linkwitz-Riley branches are 6.02 dB down at the crossover, Butterworth ones 3.01 dB', () => {
    for (const filter of CROSSOVER_FILTERS) {
      const expected = filter.startsWith('LR') ? -6.0206 : -3.0103;
      expect(levelDb(lowPass(filter, 2500, 2500))).toBeCloseTo(expected, 4);
      expect(levelDb(highPass(filter, 2500, 2500))).toBeCloseTo(expected, 4);
    }
  });

  it('Linkwitz-Riley branches are in phase at every frequency, which keeps their lobe on the axis', () => {
    fc.assert(
      fc.property(fc.constantFrom<CrossoverFilter>('LR2', 'LR4', 'LR8'), frequencies, (filter, f) => {
        const low = lowPass(filter, 1000, f);
        const high = highPass(filter, 1000, f);
        if (abs(low) < 1e-6 || abs(high) < 1e-6) return;
        const difference = Math.abs(arg(low) - arg(high));
        expect(Math.min(difference, 2 * Math.PI - difference)).toBeLessThan(1e-6);
      }),
    );
  });

  it('a second-order Butterworth pair cancels at its crossover unless one half is inverted', () => {
    const low = lowPass('BW2', 1000, 1000);
    const high = highPass('BW2', 1000, 1000);
    expect(abs(add(low, high))).toBeLessThan(1e-12);
    expect(levelDb(sub(low, high))).toBeCloseTo(3.0103, 4);
  });

  it('high-pass mirrors low-pass around the crossover', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CROSSOVER_FILTERS),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        (filter, x) => {
          expect(abs(highPass(filter, 1000, 1000 * x))).toBeCloseTo(abs(lowPass(filter, 1000, 1000 / x)), 9);
        },
      ),
    );
  });

  it('two second-order Butterworths in a row make the fourth-order Linkwitz-Riley', () => {
    const once = butterworthHighPass(2, 80, 63);
    expect(abs(sub(mul(once, once), highPass('LR4', 80, 63)))).toBeLessThan(1e-12);
  });

  it('Butterworth filters of order n follow 1 / sqrt(1 + x^2n)', () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 2, 3, 4), fc.double({ min: 0.01, max: 30, noNaN: true }), (order, x) => {
        expect(abs(butterworthLowPass(order as 1 | 2 | 3 | 4, 1, x))).toBeCloseTo(
          1 / Math.sqrt(1 + x ** (2 * order)),
          9,
        );
      }),
    );
  });

  it('refuses a crossover that is not a frequency', () => {
    for (const bad of [0, -80, Number.NaN]) {
      expect(() => lowPass('LR4', bad, 100)).toThrow(/crossoverHz is .*accepted/);
    }
    expect(() => highPass('LR4', 80, -1)).toThrow(/frequencyHz/);
  });
});
