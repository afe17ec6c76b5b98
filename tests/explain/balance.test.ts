import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tenthsThatSum } from '../../src/explain/balance.js';

const tenths = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + Math.round(value * 10), 0);

describe('printed balance sheets', () => {
  it('add up to their printed sum, and no line is off by a tenth or more', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -60, max: 60, noNaN: true }), { maxLength: 12 }), (values) => {
        const { parts, total } = tenthsThatSum(values);
        expect(tenths(parts)).toBe(Math.round(total * 10));
        expect(Math.abs(total - values.reduce((a, b) => a + b, 0))).toBeLessThanOrEqual(0.0500001);
        for (const [i, part] of parts.entries())
          expect(Math.abs(part - (values[i] ?? 0))).toBeLessThan(0.1 + 1e-9);
      }),
    );
  });
  it('gives the tenth that is over to the line that loses most by rounding, of equals to the first', () => {
    expect(tenthsThatSum([0.02, 0.08])).toEqual({ parts: [0, 0.1], total: 0.1 });
    expect(tenthsThatSum([0.16, 0.15, 0.19])).toEqual({ parts: [0.2, 0.1, 0.2], total: 0.5 });
    expect(tenthsThatSum([1.25, 2.25])).toEqual({ parts: [1.3, 2.2], total: 3.5 });
    expect(tenthsThatSum([-0.02, -0.08])).toEqual({ parts: [0, -0.1], total: -0.1 });
  });
  it('prints nothing as zero, never as minus zero', () => {
    const { parts, total } = tenthsThatSum([-0, -0.001]);
    expect([...parts, total].every((value) => Object.is(value, 0))).toBe(true);
  });
  it('rounds three times one third to tenths that make one', () => {
    expect(tenthsThatSum([1 / 3, 1 / 3, 1 / 3])).toEqual({ parts: [0.4, 0.3, 0.3], total: 1 });
  });
});
