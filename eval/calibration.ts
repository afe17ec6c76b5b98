/** Do stated probabilities match how often they are right? On simulated owners who told a part of what they know. */
import type { FactBook } from '../src/facts/book.js';
import type { FactId } from '../src/facts/catalog.js';
import { allEvidence, auditSync, complaintsOf } from '../src/reasoning/audit.js';
import { isTest } from '../src/reasoning/hypotheses.js';
import { type Ranking, rank } from '../src/reasoning/rank.js';
import { calibrationError, logLoss, mean } from './metrics.js';
import { randomFrom } from './random.js';
import { callOf, type Owner, simulateOwner } from './simulate.js';

/** Owners for fitting have seeds of their own, never scored. */
export const SCORED_FROM = 1;
export const FITTED_FROM = 1_000_001;

/** Part of his facts that an owner has told, drawn evenly from this range; home tests at a third of it (judgement). */
const TOLD = { from: 0.1, to: 0.8, testShare: 1 / 3 } as const;

/** The book of an owner in the middle of things: some facts told, some not. */
export function partlyTold(owner: Owner, seed: number): FactBook {
  const random = randomFrom(seed + 77);
  const share = random.between(TOLD.from, TOLD.to);
  const told = [...owner.sheet].filter(([id]: [FactId, unknown]) =>
    random.chance(isTest(id) ? share * TOLD.testShare : share),
  );
  return { ...callOf(owner), answers: new Map(told) };
}

export interface Statement {
  readonly p: number;
  readonly hit: boolean;
}

export const statementsOf = (ranking: Ranking, truths: readonly string[]): Statement[] =>
  ranking.causes.map(({ cause, probability }) => ({ p: probability, hit: truths.includes(cause) }));

export interface Calibration {
  readonly systems: number;
  /** Over every cause of every system, and over the leaders alone. */
  readonly error: number;
  readonly leaderError: number;
  /** Causes stated at 90 % or more: how many, and which share is true. */
  readonly sure: number;
  readonly sureTrue: number;
  readonly top: number;
}

/** Statements at or above this are called sure. */
const SURE = 0.9;
const BINS = 10;

export function calibrate(systems: number, from = SCORED_FROM, temperature?: number): Calibration {
  const options = temperature === undefined ? {} : { temperature };
  const all: Statement[] = [];
  const leaders: Statement[] = [];
  for (let seed = from; seed < from + systems; seed += 1) {
    const owner = simulateOwner(seed);
    const { ranking } = auditSync(partlyTold(owner, seed), undefined, options);
    const statements = statementsOf(ranking, owner.truths);
    all.push(...statements);
    if (statements[0]) leaders.push(statements[0]);
  }
  const sure = all.filter(({ p }) => p >= SURE);
  return {
    systems,
    error: calibrationError(all, BINS),
    leaderError: calibrationError(leaders, BINS),
    sure: sure.length,
    sureTrue: sure.length === 0 ? Number.NaN : mean(sure.map(({ hit }) => (hit ? 1 : 0))),
    top: mean(leaders.map(({ hit }) => (hit ? 1 : 0))),
  };
}

const GRID = Array.from({ length: 31 }, (_, i) => Number((0.5 + i * 0.1).toFixed(1)));

/** The temperature with the least log loss over every statement, on owners that are not scored. */
export function fitTemperature(systems: number): { readonly temperature: number; readonly loss: number }[] {
  const books = Array.from({ length: systems }, (_, i) => {
    const owner = simulateOwner(FITTED_FROM + i);
    const audit = auditSync(partlyTold(owner, FITTED_FROM + i), undefined, { temperature: 1 });
    return { owner, audit, evidence: allEvidence(audit) };
  });
  return GRID.map((temperature) => ({
    temperature,
    loss: mean(
      books.flatMap(({ owner, audit, evidence }) =>
        statementsOf(
          rank(audit.causes, evidence, complaintsOf(audit.book), { temperature }),
          owner.truths,
        ).map(({ p, hit }) => logLoss(hit ? p : 1 - p)),
      ),
    ),
  })).sort((a, b) => a.loss - b.loss);
}
