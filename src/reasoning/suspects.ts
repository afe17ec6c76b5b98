/** The ranking seen as one fault among several: what troubleshooting costs are computed from. */
import { type FactBook, told } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import type { Cause, Confirm } from '../rules/cause.js';
import type { Audit } from './audit.js';
import { oddsOf } from './decibans.js';
import { canBeAsked } from './hypotheses.js';
import { HANDS_ON_MINUTES, OTHER_MINUTES, WRONG_VERDICT_MINUTES } from './minutes.js';
import { orderByWorth, searchMinutes } from './troubleshoot.js';

/** Nobody goes after a cause less probable than this; what it has left counts as none of them. */
const NEGLIGIBLE = 1e-4;
/** Chance that a home test points at a cause that is not there (judgement: home tests are rough). */
const MISLED = 0.2;
/** Chance that nobody does the test before its remedy (judgement: one in four is in a hurry). */
const SKIPPED = 0.25;
/**
 * What a wrong verdict costs, minutes, where it is a home test that could have spared it: the first cause is tested before
 * its remedy anyway, so getting up before the verdict spares only what that test lets through. Without those in a hurry
 * a true cause of simulated owners was named three to four times less in a hundred, four minutes sooner.
 */
export const UNTESTED_VERDICT_MINUTES = (1 - (1 - MISLED) * (1 - SKIPPED)) * WRONG_VERDICT_MINUTES;

/**
 * One probability for each cause and, last, one for none of them. Causes may be true together; what is looked for is the
 * first one, so they are taken to be the only fault (the single-fault assumption of Heckerman, Breese & Rommelse 1995).
 * Of independent causes with probabilities p_i, exactly i is at work with a chance in proportion to p_i / (1 - p_i), so it
 * is the odds that share what "none of them" leaves. In proportion to p_i itself, a dozen causes that are no more probable
 * than ever would take half of a leader at 0.8, and every one of them would be worth another question.
 */
export function faultProbabilities(audit: Audit): number[] {
  const byId = new Map(audit.ranking.causes.map((r) => [r.cause, r]));
  const odds = audit.causes.map((cause) => {
    const ranked = byId.get(cause.id);
    return ranked?.applies ? oddsOf(ranked.decibans) : 0;
  });
  const none = odds.reduce((q, value) => q / (1 + value), 1);
  const sum = odds.reduce((a, b) => a + b, 0);
  return [...odds.map((value) => (sum > 0 ? (value * (1 - none)) / sum : 0)), none];
}

/** Did a test come out as this cause predicts? Undefined while it is not done. */
export function confirmed(book: FactBook, confirm: Confirm): boolean | undefined {
  const value = told(book, confirm.test as FactId);
  return value === undefined ? undefined : confirm.outcomes.includes(String(value));
}

const showsNothing = (book: FactBook, { unless = {} }: Confirm): boolean =>
  Object.entries(unless).some(([id, values]) => values?.includes(String(told(book, id as FactId))));

/** The cheapest test still to be done that can confirm the cause. */
export function cheapestTest(book: FactBook, cause: Cause): Confirm | undefined {
  return cause.confirm
    .filter((c) => canBeAsked(book, c.test) && !showsNothing(book, c))
    .sort((a, b) => factSpec(a.test).minutes - factSpec(b.test).minutes)[0];
}

/**
 * Minutes to confirm or clear a cause: its cheapest test, and now and then its first remedy in vain because
 * the test misled; with no test left, that remedy as a trial.
 */
export function confirmMinutes(book: FactBook, cause: Cause): number {
  const test = cheapestTest(book, cause);
  const trial = cause.remedies[0].minutes;
  return HANDS_ON_MINUTES + (test ? factSpec(test.test).minutes + MISLED * trial : trial);
}

/**
 * Expected minutes until the fault is found, over `p` as above, and what a wrong verdict costs if one had to be
 * given now: wrong as often as two draws from `p` differ (the Gini index). The chance that the leader is not the one
 * would not do: it sees no worth in an answer that only brings the second closer, though two such answers turn the verdict.
 * Repair times are left out: whoever asks or does not ask pays them all the same, so they cannot decide between questions.
 * @param wrongMinutes what a wrong verdict costs
 */
export function minutesToFind(
  p: readonly number[],
  confirm: readonly number[],
  wrongMinutes = WRONG_VERDICT_MINUTES,
): number {
  const order = orderByWorth(p, confirm, NEGLIGIBLE);
  const certain = p.reduce((sum, q) => sum + q * q, 0);
  return searchMinutes(p, confirm, OTHER_MINUTES, order) + wrongMinutes * (1 - certain);
}
