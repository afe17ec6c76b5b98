/**
 * Solved cases teach how common each cause is: each was cured n_i times, where the built-in priors had let expect it e_i
 * times in those very cases. Where it is as common as believed, n_i is near e_i; so the rate by which it is commoner has a
 * Gamma prior of mean 1, as sure as m cases that came as the built-in shares q_i say, and its mean after the cases is
 *
 *   (m q_i + n_i) / (m q_i + e_i)
 *
 * (Poisson counts with an exposure: Gelman et al., Bayesian Data Analysis, section 2.6; the same as the smoothed relative
 * risk of Clayton & Kaldor 1987; both from memory). A count over all cases would not do: a built-in prior holds where its
 * cause can exist at all and some complaint speaks for it, and a cause of few systems would seem rarer than it is there.
 */
import type { FactBook } from '../facts/book.js';
import { COMPLAINTS } from '../facts/complaints.js';
import type { Cause } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { CAUSES } from '../rules/index.js';
import { auditSync, complaintsOf } from './audit.js';
import { oddsOf, probabilityOf } from './decibans.js';
import { scores } from './score.js';
import { remedyId } from './trials.js';

/** The built-in priors count as so many solved cases (judgement: ten cases that all were one cause move it 4 dB). */
export const BUILT_IN_COUNTS_AS = 200;

interface Counted {
  /** Cases that it was; a case that cured two causes counts half for each. */
  readonly solved: number;
  /** Cases that it would have been by the built-in priors. */
  readonly expected: number;
}

export interface Solved {
  readonly cases: number;
  readonly byCause: Readonly<Partial<Record<CauseId, Counted>>>;
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
export function withSolved(
  solved: Solved,
  book: FactBook,
  cured: readonly CauseId[] = curedIn(book),
): Solved {
  if (cured.length === 0) return solved;
  const expected = expectedShares(book);
  const counted = CAUSES.map(({ id }, i): [CauseId, Counted] => {
    const before = solved.byCause[id] ?? { solved: 0, expected: 0 };
    const now = cured.includes(id) ? 1 / cured.length : 0;
    return [id, { solved: before.solved + now, expected: before.expected + (expected[i] ?? 0) }];
  });
  return { cases: solved.cases + 1, byCause: Object.fromEntries(counted) };
}

/**
 * The chance that each cause is the one, in the order of the causes, before anything told one from another: by the
 * built-in priors, by what can exist in this system, and by the complaints. One of them it was, as something cured it.
 */
function expectedShares(book: FactBook): number[] {
  const { own, causes } = auditSync(book);
  const untold = own.map((score) => ({ ...score, groups: [], ownDb: score.priorDb }));
  return shares(
    scores(causes, untold, complaintsOf(book), COMPLAINTS).map(({ applies, decibans }) =>
      applies ? oddsOf(decibans) : 0,
    ),
  );
}

function shares(values: readonly number[]): number[] {
  const sum = values.reduce((a, b) => a + b, 0);
  return values.map((value) => (sum > 0 ? value / sum : 0));
}

/** Decibans by which the prior of each cause moves, in the order of the causes. */
export function priorShiftsDb({ byCause }: Solved, causes: readonly Cause[] = CAUSES): number[] {
  const built = shares(causes.map(({ priorDb }) => probabilityOf(priorDb)));
  return causes.map(({ id }, i) => {
    const { solved, expected } = byCause[id] ?? { solved: 0, expected: 0 };
    const known = BUILT_IN_COUNTS_AS * (built[i] ?? 0);
    return 10 * Math.log10((known + solved) / (known + expected));
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
