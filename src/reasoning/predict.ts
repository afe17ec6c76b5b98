/**
 * How likely each answer to a question is, from what is believed now. The rules say how much more likely
 * an answer is when a cause is true (the change of its own evidence); what is missing is how common the
 * answers are when it is not, the base rates. Rules state those too: fp of an answer rule is the chance of
 * its outcome in other systems.
 */

import { withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { Cause } from '../rules/cause.js';
import { type Audit, type Step, stepFrom } from './audit.js';
import { possibleAnswers } from './hypotheses.js';

export interface Hypothesis {
  readonly value: number | string;
  readonly step: Step;
  /** Decibans that this answer would add to each cause's own evidence, in the order of the causes. */
  readonly movesDb: readonly number[];
}

/** What each possible answer would do; empty where no answer can be made up or seats would change. */
export function hypothesesOf(audit: Audit, id: FactId): Hypothesis[] {
  return possibleAnswers(id).flatMap((answer) => {
    const step = stepFrom(audit, withAnswer(audit.book, id, answer));
    if (!step || !('value' in answer)) return [];
    const movesDb = step.own.map((score, i) => score.ownDb - (audit.own[i]?.ownDb ?? 0));
    return [{ value: answer.value, step, movesDb }];
  });
}

/** Rounds of fitting the base rates; they settle within a few. */
const FITTING_ROUNDS = 6;

/**
 * Base rate of each answer: equal at first, then scaled in turn until each answer rule that the question
 * settles comes out yes as often as its fp says (iterative proportional fitting; rules that contradict
 * each other meet in between). Sums to 1.
 */
export function baseRates(audit: Audit, hypotheses: readonly Hypothesis[]): number[] {
  const targets = hypotheses[0] ? settledRules(audit, hypotheses) : [];
  let rates = hypotheses.map(() => 1 / hypotheses.length);
  for (let round = 0; round < FITTING_ROUNDS; round++)
    for (const { yes, fp } of targets) {
      const share = rates.reduce((sum, rate, a) => (yes[a] ? sum + rate : sum), 0);
      rates = rates.map((rate, a) => rate * (yes[a] ? fp / share : (1 - fp) / (1 - share)));
    }
  return rates;
}

interface Target {
  readonly yes: readonly boolean[];
  readonly fp: number;
}
/** Answer rules that every answer settles, some yes and some no. */
function settledRules(audit: Audit, hypotheses: readonly Hypothesis[]): Target[] {
  const outcomes = (cause: Cause, rule: number) =>
    hypotheses.map((h) => h.step.changedEvidence.get(cause.id)?.[rule]?.outcome);
  return audit.causes.flatMap((cause) => {
    if (!hypotheses[0]?.step.changedEvidence.has(cause.id)) return [];
    return cause.rules.flatMap((rule, place): Target[] => {
      if (rule.weigh.kind !== 'answer') return [];
      const seen = outcomes(cause, place);
      const settled = seen.every((outcome) => outcome === 'yes' || outcome === 'no');
      const yes = seen.map((outcome) => outcome === 'yes');
      return settled && yes.includes(true) && yes.includes(false) ? [{ yes, fp: rule.weigh.fp }] : [];
    });
  });
}

/**
 * P(answer | cause i) for every cause and, last, for none: base rate times likelihood ratio, scaled to sum
 * to 1 over the answers. Rows are answers. By construction today's probabilities are the mean of
 * tomorrow's, so no question can promise to raise a cause on average.
 */
export function answerChances(
  hypotheses: readonly Hypothesis[],
  rates: readonly number[],
  causes: number,
): number[][] {
  const rows = hypotheses.map((h, a) => {
    const rate = rates[a] ?? 0;
    return [...h.movesDb.map((db) => rate * 10 ** (db / 10)), rate];
  });
  const totals = Array.from({ length: causes + 1 }, (_, i) =>
    rows.reduce((sum, row) => sum + (row[i] ?? 0), 0),
  );
  return rows.map((row) => row.map((value, i) => value / (totals[i] ?? 1)));
}
