/** Balance sheets: numbers rounded for people that still add up to their rounded sum. */

/**
 * Values rounded to tenths such that they sum exactly to the rounded total (largest remainder). Sums are kept in
 * whole tenths, so that adding the printed figures by hand gives the printed sum.
 */
export function tenthsThatSum(values: readonly number[]): {
  readonly parts: readonly number[];
  readonly total: number;
} {
  const exact = values.map((value) => value * 10);
  const total = Math.round(exact.reduce((sum, value) => sum + value, 0));
  const parts = exact.map(Math.floor);
  const missing = total - parts.reduce((sum, value) => sum + value, 0);
  const byRemainder = exact
    .map((value, i) => ({ i, rest: value - Math.floor(value) }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of byRemainder.slice(0, missing)) parts[i] = (parts[i] ?? 0) + 1;
  return { parts: parts.map((part) => part / 10 + 0), total: total / 10 + 0 };
}
