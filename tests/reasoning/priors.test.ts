import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { auditSync } from '../../src/reasoning/audit.js';
import {
  BUILT_IN_COUNTS_AS,
  causesAfter,
  curedIn,
  NOTHING_SOLVED,
  priorShiftsDb,
  type Solved,
  withSolved,
} from '../../src/reasoning/priors.js';
import { CAUSES } from '../../src/rules/index.js';

const solvedAs = (id: 'delay' | 'level', cases: number): Solved =>
  Array.from({ length: cases }, () => [id] as const).reduce(withSolved, NOTHING_SOLVED);
const shiftOf = (solved: Solved, id: string): number =>
  priorShiftsDb(solved)[CAUSES.findIndex((cause) => cause.id === id)] ?? Number.NaN;

describe('priors from solved cases', () => {
  it('are the built-in ones without any', () => {
    for (const shift of priorShiftsDb(NOTHING_SOLVED)) expect(shift).toBeCloseTo(0, 12);
    expect(causesAfter(NOTHING_SOLVED)).toBe(CAUSES);
  });
  it('are the mean of a Dirichlet distribution: by hand for one cause', () => {
    const odds = CAUSES.map(({ priorDb }) => 10 ** (priorDb / 10));
    const p = odds.map((o) => o / (1 + o));
    const sum = p.reduce((a, b) => a + b, 0);
    const q = (p[CAUSES.findIndex(({ id }) => id === 'delay')] ?? 0) / sum;
    const share = (BUILT_IN_COUNTS_AS * q + 10) / (BUILT_IN_COUNTS_AS + 10);
    expect(shiftOf(solvedAs('delay', 10), 'delay')).toBeCloseTo(10 * Math.log10(share / q), 9);
  });
  it('move little with ten cases, all others only by what the new ones take, and far with thousands', () => {
    const ten = solvedAs('delay', 10);
    expect(shiftOf(ten, 'delay')).toBeGreaterThan(1);
    expect(shiftOf(ten, 'delay')).toBeLessThan(6);
    expect(shiftOf(ten, 'level')).toBeCloseTo(10 * Math.log10(200 / 210), 9);
    expect(shiftOf(solvedAs('delay', 5000), 'delay')).toBeGreaterThan(10);
  });
  it('leave everything else of a cause alone, and are stated where they are in use', () => {
    const causes = causesAfter(solvedAs('delay', 10));
    expect(causes.map(({ priorDb: _, ...rest }) => rest)).toEqual(
      CAUSES.map(({ priorDb: _, ...rest }) => rest),
    );
    const book = { ...EMPTY_BOOK, complaints: ['hollow'] as const };
    const of = (options: Parameters<typeof auditSync>[2]) =>
      auditSync(book, undefined, options).ranking.causes.find(({ cause }) => cause === 'delay')
        ?.probability ?? 0;
    expect(of({ causes })).toBeGreaterThan(of({}));
  });
});

describe('what a solved case teaches', () => {
  const book = (...acts: readonly `${string}/${string}`[]) => ({
    ...EMPTY_BOOK,
    trials: acts.map((act) => ({ act, outcome: 'gone' as const })),
  });
  it('is the cause whose remedy left the trouble gone; a remedy in vain teaches nothing', () => {
    expect(curedIn(book('delay/enter-taped-distances'))).toEqual(['delay']);
    expect(curedIn(EMPTY_BOOK)).toEqual([]);
    expect(
      curedIn({
        ...EMPTY_BOOK,
        trials: [{ act: 'delay/enter-taped-distances' as const, outcome: 'same' as const }],
      }),
    ).toEqual([]);
  });
  it('counts half for each of two causes, and never more than one case', () => {
    const both = curedIn(
      book('delay/enter-taped-distances', `level/${CAUSES.find(({ id }) => id === 'level')?.remedies[0].id}`),
    );
    expect(withSolved(NOTHING_SOLVED, both)).toEqual({ cases: 1, byCause: { delay: 0.5, level: 0.5 } });
    expect(withSolved(NOTHING_SOLVED, [])).toEqual(NOTHING_SOLVED);
  });
});
