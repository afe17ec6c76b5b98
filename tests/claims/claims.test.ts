/** The claims of the trade, one table a family of causes. */
import { describe, expect, it } from 'vitest';
import { faultsOf } from './claim.js';
import { TABLES } from './tables.js';

/** A table shorter than this would not hold the weights. */
const LEAST_ROWS = 120;

describe('claims of the trade', () => {
  it('has enough of them, each with a name of its own and something that can fail', () => {
    const rows = TABLES.flatMap((table) => Object.values(table).flat());
    expect(rows.length).toBeGreaterThanOrEqual(LEAST_ROWS);
    expect(new Set(rows.map(([name]) => name)).size).toBe(rows.length);
    expect(rows.filter((row) => row.length < 3).map(([name]) => name)).toEqual([]);
  });

  describe.each(TABLES.flatMap((table) => Object.entries(table)))('%s', (_, rows) => {
    it.each(rows.map((row) => [row[0], row] as const))('%s', (_name, row) => {
      expect(faultsOf(row)).toEqual([]);
    });
  });
});
