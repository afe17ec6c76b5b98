/** Ways of finding the cause with a simulated owner, and what each costs in questions and minutes. */
import { type Answer, withAnswer } from '../src/facts/book.js';
import { type FactId, factSpec } from '../src/facts/catalog.js';
import { type Audit, auditSync } from '../src/reasoning/audit.js';
import { isTest, openFacts } from '../src/reasoning/hypotheses.js';
import { HANDS_ON_MINUTES, wholeMinutes } from '../src/reasoning/minutes.js';
import { type NextOptions, next } from '../src/reasoning/next.js';
import { confirmed, faultProbabilities } from '../src/reasoning/suspects.js';
import type { Cause } from '../src/rules/cause.js';
import { answerOf, callOf, type Owner, simulatedFacts } from './simulate.js';

export interface Interview {
  readonly audit: Audit;
  /** What was asked and tried, in order. */
  readonly steps: readonly FactId[];
  readonly questions: number;
  readonly tests: number;
  readonly minutes: number;
  readonly reason: string;
}

/** Nobody answers more than this; a run that reaches it has not stopped by itself. */
const MOST_STEPS = 120;

/** The interview as the program holds it with a simulated owner, who is not asked what no simulated owner has. */
export const interview = (owner: Owner, options: NextOptions = {}): Interview =>
  hold(auditSync(callOf(owner)), (id) => answerOf(owner, id), {
    leaveOut: (id) => !simulatedFacts().has(id),
    ...options,
  });

/** The interview as the program holds it: the step worth most, until it stops. */
export function hold(start: Audit, answer: (id: FactId) => Answer, options: NextOptions = {}): Interview {
  let audit = start;
  const steps: FactId[] = [];
  const ended = (reason: string): Interview => ({
    audit,
    steps,
    questions: steps.filter((id) => !isTest(id)).length,
    tests: steps.filter(isTest).length,
    minutes: steps.reduce((sum, id) => sum + wholeMinutes(id), 0),
    reason,
  });
  while (steps.length < MOST_STEPS) {
    const { kind, fact, reason } = next(audit, options);
    if (kind === 'stop' || fact === undefined) return ended(reason ?? '');
    steps.push(fact);
    audit = auditSync(withAnswer(audit.book, fact, answer(fact)), audit);
  }
  return ended('too-many');
}

/** A questionnaire in the order of the catalog, without home tests: the leader after every question. */
export function questionnaire(owner: Owner): { readonly leaders: readonly string[]; readonly audit: Audit } {
  let audit = auditSync(callOf(owner));
  const leaders: string[] = [audit.ranking.leader];
  for (;;) {
    const fact = openFacts(audit.book).find((id) => !isTest(id) && factSpec(id).kind !== 'file');
    if (fact === undefined) return { leaders, audit };
    audit = auditSync(withAnswer(audit.book, fact, answerOf(owner, fact)), audit);
    leaders.push(audit.ranking.leader);
  }
}

export type Order = 'worth' | 'cheapest' | 'prior';

/**
 * Minutes of checking one cause after the other until a true one is confirmed. `worth`: by probability over
 * minutes, re-ranked after every check; `cheapest` and `prior`: fixed orders that know nothing of the case.
 * A check tells the truth about its cause, and the outcome of its test goes into the book. Repair is left out.
 */
export function minutesToConfirm(owner: Owner, start: Audit, order: Order): number {
  let audit = start;
  let minutes = 0;
  const left = new Set(audit.causes);
  const truths: readonly string[] = owner.truths;
  while (left.size > 0) {
    const cause = choose(audit, left, order);
    left.delete(cause);
    minutes += checkMinutes(audit, cause);
    if (truths.includes(cause.id)) return minutes;
    const test = easiestTest(cause);
    if (order === 'worth' && test !== undefined && !audit.book.answers.has(test)) {
      audit = auditSync(withAnswer(audit.book, test, answerOf(owner, test)), audit);
    }
  }
  return minutes;
}

/** Minutes to look once more at a leader that a test has confirmed already (judgement). */
const CONFIRMED_MINUTES = 0.5;

/** The same price for every policy: getting up, and the easiest test or the first remedy as a trial. */
function checkMinutes(audit: Audit, cause: Cause): number {
  const done = cause.confirm.some((confirm) => confirmed(audit.book, confirm) === true);
  if (done && audit.ranking.leader === cause.id) return CONFIRMED_MINUTES;
  const test = easiestTest(cause);
  const trial = cause.remedies[0].minutes;
  return HANDS_ON_MINUTES + Math.min(trial, test === undefined ? trial : factSpec(test).minutes);
}

function easiestTest(cause: Cause): FactId | undefined {
  return cause.confirm
    .map(({ test }) => test as FactId)
    .sort((a, b) => factSpec(a).minutes - factSpec(b).minutes)[0];
}

function choose(audit: Audit, left: ReadonlySet<Cause>, order: Order): Cause {
  const p = order === 'worth' ? faultProbabilities(audit) : [];
  const score = (cause: Cause): number => {
    if (order === 'prior') return cause.priorDb;
    const minutes = checkMinutes(audit, cause);
    return order === 'cheapest' ? -minutes : (p[audit.causes.indexOf(cause)] ?? 0) / minutes;
  };
  const [best] = [...left].sort((a, b) => score(b) - score(a));
  if (best === undefined) throw new RangeError('no cause is left to check');
  return best;
}
