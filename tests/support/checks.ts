import { expect } from 'vitest';

/** A row of tests/published/data/acoustics-checks.json: a model, its inputs and the value it must give. */
export type CheckRow = {
  readonly id: string;
  readonly model: string;
  readonly inputs: Record<string, unknown>;
  readonly expected: unknown;
  readonly tolerance: unknown;
  readonly basis: string;
  readonly source: string;
};

/** Allowed difference: a number is absolute, "n%" is of the expected value. */
function allowance(tolerance: unknown, expected: number): number {
  if (typeof tolerance === 'string') return (Math.abs(expected) * Number.parseFloat(tolerance)) / 100;
  return tolerance as number;
}

/** Claims that `got` meets `expected` within a tolerance for all or one for each field. */
export function expectWithin(got: unknown, expected: unknown, tolerance: unknown, where: string): void {
  if (typeof expected === 'object' && expected !== null) {
    for (const [key, value] of Object.entries(expected)) {
      const perField = typeof tolerance === 'object' && tolerance !== null;
      const own = perField ? (tolerance as Record<string, unknown>)[key] : tolerance;
      expectWithin((got as Record<string, unknown>)[key], value, own, `${where} ${key}`);
    }
    return;
  }
  expect(got, `${where} is a number`).toBeTypeOf('number');
  const off = Math.abs((got as number) - (expected as number));
  // One ulp of slack: a tolerance compares decimal literals, not their last bit.
  expect(off, `${where}: got ${String(got)}, expected ${String(expected)}`).toBeLessThanOrEqual(
    allowance(tolerance, expected as number) + Number.EPSILON,
  );
}
