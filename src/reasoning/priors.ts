/**
 * Solved cases teach how common each cause is. The built-in priors count as so many cases already seen, and the
 * solved ones are added to them: the mean of a Dirichlet distribution (Gelman et al., Bayesian Data Analysis, section
 * 3.4, from memory),
 *
 *   share_i = (m q_i + n_i) / (m + n),   q_i = built-in share of cause i, n_i = cases that it was, n = all cases.
 *
 * The odds of a cause move by share_i / q_i, so that no case leaves everything as it is, and few cases move it little.
 */
import type { FactBook } from '../facts/book.js';
import type { Cause } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { CAUSES } from '../rules/index.js';
import { probabilityOf } from './decibans.js';
import { remedyId } from './trials.js';

/** The built-in priors count as so many solved cases (judgement: ten cases that all were one cause move it 4 dB). */
export const BUILT_IN_COUNTS_AS = 200;

/** Solved cases, by the cause that was cured. A case that cured two causes counts half for each. */
export interface Solved {
  readonly cases: number;
  readonly byCause: Readonly<Partial<Record<CauseId, number>>>;
}

export const NOTHING_SOLVED: Solved = { cases: 0, byCause: {} };

/** The causes that a case shows to have been cured: those whose remedy was carried out and left the trouble gone. */
export function curedIn(book: FactBook, causes: readonly Cause[] = CAUSES): CauseId[] {
  const gone = book.trials.filter(({ outcome }) => outcome === 'gone');
  const cured = causes.filter((cause) =>
    cause.remedies.some((remedy) => gone.some(({ act }) => act === remedyId(cause, remedy))),
  );
  return cured.map(({ id }) => id);
}

/** One more solved case; a case that shows no cure adds nothing. */
export function withSolved(solved: Solved, cured: readonly CauseId[]): Solved {
  if (cured.length === 0) return solved;
  const byCause = { ...solved.byCause };
  for (const id of cured) byCause[id] = (byCause[id] ?? 0) + 1 / cured.length;
  return { cases: solved.cases + 1, byCause };
}

/** Decibans by which the prior of each cause moves, in the order of the causes. */
export function priorShiftsDb({ cases, byCause }: Solved, causes: readonly Cause[] = CAUSES): number[] {
  const built = causes.map(({ priorDb }) => probabilityOf(priorDb));
  const sum = built.reduce((a, b) => a + b, 0);
  return causes.map(({ id }, i) => {
    const share = (built[i] ?? 0) / sum;
    const now = (BUILT_IN_COUNTS_AS * share + (byCause[id] ?? 0)) / (BUILT_IN_COUNTS_AS + cases);
    return 10 * Math.log10(now / share);
  });
}

const made = new WeakMap<Solved, readonly Cause[]>();

/** The causes with the priors that the solved cases give, made once for the same counts: indices hang on the list. */
export function causesAfter(solved: Solved, causes: readonly Cause[] = CAUSES): readonly Cause[] {
  if (solved.cases === 0) return causes;
  const known = made.get(solved);
  if (known) return known;
  const shifts = priorShiftsDb(solved, causes);
  const after = causes.map((cause, i) => ({ ...cause, priorDb: cause.priorDb + (shifts[i] ?? 0) }));
  made.set(solved, after);
  return after;
}
