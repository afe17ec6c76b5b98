import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
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
import type { CauseId } from '../../src/rules/cause-ids.js';
import { CAUSES } from '../../src/rules/index.js';
import { bookOf } from '../support/causeClaims.js';

const hollow: FactBook = { ...EMPTY_BOOK, complaints: ['hollow'] };
/** A book in which two centers stand, or one. */
const centers = (centerCount: 'one' | 'two'): FactBook => ({
  ...bookOf({ centerCount }),
  complaints: ['hollow'],
});
/** So many cases alike. */
function solvedAs(id: CauseId, cases: number, book = hollow): Solved {
  const { byCause } = withSolved(NOTHING_SOLVED, book, [id]);
  const counted = Object.entries(byCause).map(([each, { solved, expected }]) => [
    each,
    { solved: cases * solved, expected: cases * expected },
  ]);
  return { cases, byCause: Object.fromEntries(counted) };
}
const shiftOf = (solved: Solved, id: string): number =>
  priorShiftsDb(solved)[CAUSES.findIndex((cause) => cause.id === id)] ?? Number.NaN;

describe('priors from solved cases', () => {
  it('are the built-in ones without any', () => {
    for (const shift of priorShiftsDb(NOTHING_SOLVED)) expect(shift).toBeCloseTo(0, 12);
    expect(causesAfter(NOTHING_SOLVED)).toBe(CAUSES);
  });
  it('are the mean of a Gamma distribution after Poisson counts: by hand for one cause', () => {
    const odds = CAUSES.map(({ priorDb }) => 10 ** (priorDb / 10));
    const p = odds.map((o) => o / (1 + o));
    const q = (p[CAUSES.findIndex(({ id }) => id === 'delay')] ?? 0) / p.reduce((a, b) => a + b, 0);
    const known = BUILT_IN_COUNTS_AS * q;
    const solved: Solved = { cases: 30, byCause: { delay: { solved: 10, expected: 4 } } };
    expect(shiftOf(solved, 'delay')).toBeCloseTo(10 * Math.log10((known + 10) / (known + 4)), 9);
    expect(shiftOf(solved, 'level')).toBe(0);
  });
  it('expect each case once, shared as the program stood before anything told one cause from another', () => {
    const three = [1, 2, 3].reduce<Solved>((solved) => withSolved(solved, hollow, ['delay']), NOTHING_SOLVED);
    const { byCause } = three;
    expect(three.cases).toBe(3);
    const expected = Object.values(byCause).map((counted) => counted.expected);
    expect(expected.reduce((a, b) => a + b, 0)).toBeCloseTo(3, 9);
    // A complaint that a cause makes lets expect it more often than one that it does not make.
    const dull = solvedAs('delay', 3, { ...EMPTY_BOOK, complaints: ['dull'] });
    expect(byCause.delay?.expected ?? 0).toBeGreaterThan(dull.byCause.delay?.expected ?? 0);
  });
  it('stay as they are where a cause came as often as it was to be expected, however rare its systems are', () => {
    // Nobody with one center can have two that beat: such cases tell nothing of how common that is where there are two.
    const one = solvedAs('delay', 100, centers('one'));
    expect(one.byCause['twin-centers']).toEqual({ solved: 0, expected: 0 });
    expect(shiftOf(one, 'twin-centers')).toBe(0);
    const two = solvedAs('delay', 100, centers('two'));
    expect(shiftOf(two, 'twin-centers')).toBeLessThan(-1);
  });
  it('move little with ten cases, and far with thousands', () => {
    const ten = solvedAs('delay', 10);
    expect(shiftOf(ten, 'delay')).toBeGreaterThan(1);
    expect(shiftOf(ten, 'delay')).toBeLessThan(6);
    expect(Math.abs(shiftOf(ten, 'level'))).toBeLessThan(0.5);
    expect(shiftOf(solvedAs('delay', 1000), 'delay')).toBeGreaterThan(8);
  });
  it('leave everything else of a cause alone, and are stated where they are in use', () => {
    const causes = causesAfter(solvedAs('delay', 10));
    expect(causes.map(({ priorDb: _, ...rest }) => rest)).toEqual(
      CAUSES.map(({ priorDb: _, ...rest }) => rest),
    );
    const of = (options: Parameters<typeof auditSync>[2]) =>
      auditSync(hollow, undefined, options).ranking.causes.find(({ cause }) => cause === 'delay')
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
    expect(withSolved(NOTHING_SOLVED, hollow, both)).toMatchObject({
      cases: 1,
      byCause: { delay: { solved: 0.5 }, level: { solved: 0.5 }, aim: { solved: 0 } },
    });
    expect(withSolved(NOTHING_SOLVED, EMPTY_BOOK)).toBe(NOTHING_SOLVED);
  });
});
