/**
 * How likely each answer to a question is, from what is believed now. The rules say how much more likely
 * an answer is when a cause is true (the change of its own evidence); what is missing is how common the
 * answers are when it is not, the base rates.
 */

import { type Answer, withAnswer } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import type { Cause } from '../rules/cause.js';
import type { VarId } from '../rules/condition.js';
import { viewOf } from '../rules/derived/view.js';
import type { Evidence } from '../rules/evidence.js';
import { siblingsOf } from '../rules/siblings.js';
import type { Reading, View } from '../rules/view.js';
import { type Brief, briefly } from '../rules/weigh.js';
import { type Audit, type Foreseen, mergedEvidence, rescored } from './audit.js';
import { possibleAnswers } from './hypotheses.js';
import { ruleIndex } from './rule-index.js';

export interface Hypothesis {
  readonly value: number | string;
  /** Decibans that this answer would add to each cause's own evidence, in the order of the causes. */
  readonly movesDb: readonly number[];
}

/** What each possible answer would do; empty where no answer can be made up. */
export function hypothesesOf(audit: Audit, id: FactId): Hypothesis[] {
  return foreseen(audit, id).map(({ value, changes }) => {
    const movesDb = audit.causes.map(() => 0);
    for (const [place, rules] of changes) {
      if (saysTheSame(audit, place, rules)) continue;
      const after = rescored(audit, place, mergedEvidence(audit, place, rules));
      movesDb[place] = after.ownDb - (audit.own[place]?.ownDb ?? 0);
    }
    return { value, movesDb };
  });
}

/** Nothing that counts in the score of the cause differs from what its rules say now. */
function saysTheSame(audit: Audit, place: number, rules: ReadonlyMap<number, Brief>): boolean {
  const now = audit.byCause.get((audit.causes[place] as Cause).id) ?? [];
  for (const [rule, { decibans, outcome, gateOpen }] of rules) {
    const before = now[rule];
    if (before?.decibans !== decibans || before.outcome !== outcome || before.gateOpen !== gateOpen)
      return false;
  }
  return true;
}

function foreseen(audit: Audit, id: FactId): readonly Foreseen[] {
  const known = audit.foreseen.get(id);
  if (known) return known;
  const movable = movableRules(audit, id);
  const siblings = siblingsOf(audit.causes);
  const viewWith = (answer: Answer): View =>
    viewOf(withAnswer(audit.heard, id, answer), { view: audit.view, changed: [id] });
  const answers = possibleAnswers(id);
  const middle = answers[Math.floor(answers.length / 2)];
  const typical = factSpec(id).kind === 'number' && middle ? viewWith(middle) : undefined;
  const found = answers.flatMap((answer): Foreseen[] => {
    if (!('value' in answer)) return [];
    const own = typical && answer === middle ? typical : viewWith(answer);
    const view = typical && own !== typical ? foundedAs(own, typical) : own;
    const changes = movable.map(([place, rules]) => {
      return [place, briefly(audit.causes[place] as Cause, rules, view, siblings)] as const;
    });
    return [{ value: answer.value, changes: new Map(changes) }];
  });
  audit.foreseen.set(id, found);
  return found;
}

/** A settled rule that does not rest on a default of this fact, and whose cause does not wait for it, or an open one that does not. */
function cannotMove({ outcome, open, assumed }: Evidence, id: FactId): boolean {
  if (outcome === 'unknown') return !open.includes(id);
  return (outcome === 'yes' || outcome === 'no') && !assumed.includes(id) && !open.includes(id);
}

/** Rules that an answer can move now: places in the causes, and of the rules in each. */
function movableRules(audit: Audit, id: FactId): [place: number, rules: readonly number[]][] {
  const { rulesOf } = ruleIndex(audit.causes);
  return [...(rulesOf.get(id) ?? [])].flatMap(([place, rules]): [number, number[]][] => {
    const evidence = audit.byCause.get((audit.causes[place] as Cause).id) ?? [];
    const movable = rules.filter((rule) => !cannotMove(evidence[rule] as Evidence, id));
    return movable.length > 0 ? [[place, movable]] : [];
  });
}

/** Places of the causes that have a rule which an answer can move now. */
export const movablePlaces = (audit: Audit, id: FactId): number[] =>
  movableRules(audit, id).map(([place]) => place);

/**
 * The values of one view with the footing (how, spread) of another: how well founded a computed value is
 * hardly depends on which number was told, and finding it out costs many times the value itself.
 */
function foundedAs(view: View, typical: View): View {
  const readings = new Map<VarId, Reading>();
  const read = (id: VarId): Reading => {
    let reading = readings.get(id);
    if (!reading) {
      reading = founded(view.read(id), typical.read(id));
      readings.set(id, reading);
    }
    return reading;
  };
  return { ...view, read };
}

function founded(reading: Reading, footing: Reading): Reading {
  if (reading === footing || typeof reading.value !== 'number' || typeof footing.value !== 'number')
    return reading;
  const { id, unit, value, missing } = reading;
  return {
    id,
    unit,
    value,
    missing,
    get assumed() {
      return reading.assumed;
    },
    get facts() {
      return reading.facts;
    },
    get how() {
      return footing.how;
    },
    get spread() {
      return footing.spread;
    },
  };
}

/** Rounds of fitting the base rates; they settle within a few. */
const FITTING_ROUNDS = 8;

/**
 * How common each answer is in systems without the causes it bears on. Nothing states it, but the rules
 * imply it: over systems without a cause, its likelihood ratio averages 1. So the rates start equal, and
 * for one cause after the other the answers for it and the answers against it are scaled until that holds
 * (as in iterative proportional fitting; causes that contradict each other meet in between). Sums to 1.
 */
export function baseRates(hypotheses: readonly Hypothesis[]): number[] {
  const ratios = likelihoodRatios(hypotheses);
  const rates = hypotheses.map(() => 1 / hypotheses.length);
  for (let round = 0; round < FITTING_ROUNDS; round++) for (const ratio of ratios) balance(rates, ratio);
  return rates;
}

/** Likelihood ratios of each cause that the answers move both ways: one number an answer. */
function likelihoodRatios(hypotheses: readonly Hypothesis[]): number[][] {
  const causes = hypotheses[0]?.movesDb ?? [];
  return causes.flatMap((_, i): number[][] => {
    const moveDb = (h: Hypothesis): number => h.movesDb[i] ?? 0;
    const bothWays = hypotheses.some((h) => moveDb(h) > 0) && hypotheses.some((h) => moveDb(h) < 0);
    return bothWays ? [hypotheses.map((h) => 10 ** (moveDb(h) / 10))] : [];
  });
}

/** Scales rates by one factor where the ratio is above 1 and another elsewhere, so that it averages 1. */
function balance(rates: number[], ratio: readonly number[]): void {
  let [up, upRatio, downRatio] = [0, 0, 0];
  rates.forEach((rate, a) => {
    const r = ratio[a] ?? 1;
    if (r > 1) {
      up += rate;
      upRatio += rate * r;
    } else downRatio += rate * r;
  });
  const down = 1 - up;
  const [high, low] = [upRatio / up, downRatio / down];
  const share = (1 - low) / (high - low);
  rates.forEach((rate, a) => {
    rates[a] = rate * ((ratio[a] ?? 1) > 1 ? share / up : (1 - share) / down);
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
  const totals = new Array<number>(causes + 1).fill(0);
  const rows = hypotheses.map(({ movesDb }, a) =>
    totals.map((total, i) => {
      const [rate, db] = [rates[a] ?? 0, movesDb[i] ?? 0];
      const value = db === 0 ? rate : rate * 10 ** (db / 10);
      totals[i] = total + value;
      return value;
    }),
  );
  for (const row of rows)
    row.forEach((value, i) => {
      row[i] = value / (totals[i] ?? 1);
    });
  return rows;
}
