/** The rows of the reasoning reference file by id, and a comparison within a row's tolerance. */
import { expect } from 'vitest';
import rows from './data/reasoning-checks.json' with { type: 'json' };

// biome-ignore lint/suspicious/noExplicitAny: the shape differs from row to row
type Open = any;
export interface Check {
  readonly id: string;
  readonly input: Open;
  readonly expected: Open;
  readonly tolerance: number;
}

export const CHECKS = rows as readonly Check[];

export function check(id: string): Check {
  const row = CHECKS.find((r) => r.id === id);
  if (!row) throw new RangeError(`no reference check ${id}`);
  return row;
}

/** Numbers, or lists of numbers, within an absolute tolerance. */
export function near(
  actual: number | undefined | readonly (number | undefined)[],
  expected: number | readonly number[],
  tolerance: number,
): void {
  const [a, e] = [[actual].flat(), [expected].flat()];
  expect(a).toHaveLength(e.length);
  e.forEach((value, i) => {
    expect(
      Math.abs((a[i] ?? Number.NaN) - (value as number)),
      `${a[i]} against ${value}`,
    ).toBeLessThanOrEqual(tolerance + 1e-12);
  });
}
