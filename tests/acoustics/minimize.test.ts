/** Minima that are known from elsewhere: textbook functions, a certified fit, and what bounds must do to them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goldenMinimum, leastSquares } from '../../src/acoustics/minimize.js';

const free = (start: number) => ({ start, min: -100, max: 100 });

describe('least squares', () => {
  it('draws the line 3.00 + 0.500 x through the first of the four famous sets of eleven points', () => {
    // Anscombe 1973, from memory (textbook): slope 0.500, intercept 3.00 for points of very different kinds.
    const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
    const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
    const { values } = leastSquares(
      ([a = 0, b = 0]) => Float64Array.from(x, (at, i) => a + b * at - (y[i] ?? 0)),
      [free(0), free(0)],
    );
    expect(values[0]).toBeCloseTo(3.0001, 3);
    expect(values[1]).toBeCloseTo(0.5001, 4);
  });

  it('meets the certified values of a public nonlinear regression problem', () => {
    // Dental research data y = b1 (1 - exp(-b2 x)) of a national standards institute, certified to eleven digits:
    // b1 238.94212918, b2 5.5015643181e-4, sum of squares 0.12455138894. From memory.
    const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
    const y = [
      10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
    ];
    for (const [b1, b2] of [
      [500, 1e-4],
      [250, 5e-4],
    ] as const) {
      const { values, cost } = leastSquares(
        ([a = 0, b = 0]) => Float64Array.from(x, (at, i) => a * (1 - Math.exp(-b * at)) - (y[i] ?? 0)),
        [
          { start: b1, min: 10, max: 1000 },
          { start: b2, min: 1e-5, max: 1e-2 },
        ],
      );
      expect(values[0]).toBeCloseTo(238.942, 1);
      expect(values[1]).toBeCloseTo(5.5015643e-4, 7);
      expect(cost).toBeCloseTo(0.12455138894, 6);
    }
  });

  /** A curved valley with its floor at (1, 1): the textbook trial of every minimizer. */
  const valley = ([x = 0, y = 0]: readonly number[]) => Float64Array.of(10 * (y - x * x), 1 - x);

  it('follows a curved valley to its lowest point', () => {
    const { values, cost } = leastSquares(valley, [free(-1.2), free(1)]);
    expect(values[0]).toBeCloseTo(1, 6);
    expect(values[1]).toBeCloseTo(1, 6);
    expect(cost).toBeLessThan(1e-12);
  });

  it.each([
    ['above', { start: -1.2, min: -2, max: 0.5 }, [0.5, 0.25], 0.25],
    ['below', { start: 3, min: 1.5, max: 4 }, [1.5, 2.25], 0.25],
  ] as const)('walks along a bound from %s while the other parameter moves on', (_, x, best, least) => {
    const { values, cost } = leastSquares(valley, [x, free(1)]);
    expect(values[0]).toBe(best[0]);
    // A fit ends where a step gains less than a millionth: places are known to its root.
    expect(values[1]).toBeCloseTo(best[1], 5);
    expect(cost).toBeCloseTo(least, 9);
  });

  it('leaves a bound again when the way down leads inside, from either end', () => {
    for (const start of [-100, 100]) {
      const { values } = leastSquares(([x = 0]) => Float64Array.of(x - 7, 2 * (x - 7)), [free(start)]);
      expect(values[0]).toBeCloseTo(7, 6);
    }
  });

  it('never asks for a residual outside the bounds, also from a start outside', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (startX, startY, goal) => {
          const across = { start: startX, min: -1, max: 2 };
          const along = { start: startY, min: -2, max: 1 };
          const { values, cost } = leastSquares(
            ([x = 0, y = 0]) => {
              expect([x >= across.min, x <= across.max, y >= along.min, y <= along.max]).not.toContain(false);
              return Float64Array.of(x + y - goal, x - goal, Math.sin(y));
            },
            [across, along],
          );
          const costAt = (x: number, y: number) => (x + y - goal) ** 2 + (x - goal) ** 2 + Math.sin(y) ** 2;
          const clip = (value: number, min: number, max: number) => Math.min(max, Math.max(min, value));
          expect(cost).toBeLessThanOrEqual(costAt(clip(startX, -1, 2), clip(startY, -2, 1)));
          expect(cost).toBeCloseTo(costAt(values[0] ?? 0, values[1] ?? 0), 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('copes with two parameters that do the same, and with one that does nothing', () => {
    const same = leastSquares(([a = 0, b = 0]) => Float64Array.of(a + b - 3), [free(0), free(1)]);
    expect((same.values[0] ?? 0) + (same.values[1] ?? 0)).toBeCloseTo(3, 6);
    const idle = leastSquares(([, b = 0]) => Float64Array.of(b - 3), [free(2), free(1)]);
    expect(idle.values[0]).toBe(2);
    expect(idle.values[1]).toBeCloseTo(3, 6);
  });

  it('stops at once where nothing is left to better', () => {
    let calls = 0;
    const count = (x: number) => {
      calls += 1;
      return Float64Array.of(x);
    };
    expect(leastSquares(([x = 0]) => count(x), [free(0)])).toEqual({ values: [0], cost: 0 });
    expect(calls).toBe(1);
  });

  it('is done with a straight problem within a dozen looks a parameter', () => {
    // Each look may be a whole response of filters: the cost of a fit is the number of looks.
    let calls = 0;
    leastSquares(
      ([x = 0]) => {
        calls += 1;
        return Float64Array.of(x - 1, x + 1);
      },
      [free(40)],
    );
    expect(calls).toBeLessThanOrEqual(12);
  });
});

describe('golden section', () => {
  it.each([
    ['x - ln x', (x: number) => x - Math.log(x), 0.1, 5, 1],
    ['x ln x', (x: number) => x * Math.log(x), 0.01, 2, 1 / Math.E],
    ['a cosine', Math.cos, 2, 5, Math.PI],
    ['a wedge', (x: number) => Math.abs(x - 1 / 3), -2, 9, 1 / 3],
    ['a slope up', (x: number) => x, 3, 4, 3],
    ['a slope down', (x: number) => -x, 3, 4, 4],
  ] as const)('finds the least of %s', (_, f, from, to, best) => {
    // A minimum is flat: its place is known to half the digits of its value.
    expect(goldenMinimum(f, from, to)).toBeCloseTo(best, 6);
  });

  it('looks once a step, and never outside', () => {
    let calls = 0;
    goldenMinimum(
      (x) => {
        calls += 1;
        expect(x).toBeGreaterThan(2);
        expect(x).toBeLessThan(3);
        return (x - 2.9) ** 2;
      },
      2,
      3,
    );
    expect(calls).toBeLessThan(50);
  });
});
