/** What would change the conclusion: the smallest set of answers that makes another cause lead. */
import { type Answer, type FactBook, withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { CauseId } from '../rules/cause-ids.js';
import { type Audit, auditSync } from './audit.js';
import { possibleAnswers } from './hypotheses.js';
import { ruleIndex } from './rule-index.js';

interface Change {
  readonly fact: FactId;
  readonly from: number | string;
  readonly to: number | string;
}
export interface Flip {
  readonly changes: readonly Change[];
  /** The cause that leads then. */
  readonly leader: CauseId;
  /** Decibans by which it is ahead of the present leader then. */
  readonly byDb: number;
}

/** Weights of one group or shared complaints do not simply add: pairs this far from a flip are still tried. */
const SLACK_DB = 6;

interface Trial {
  readonly change: Change;
  readonly answer: Answer;
  /** Lead over each other cause after the change, in the order of the causes. */
  readonly leadsDb: readonly number[];
}

/**
 * All flips of the smallest size, 1 or 2, each verified by auditing again; empty when no set of up to two
 * does. Tried are the other choices of every told answer and the typical values of every told number.
 */
export function flips(audit: Audit): Flip[] {
  const trials = trialsOf(audit);
  const singles = trials.flatMap((trial) => verified(audit, [trial]) ?? []);
  if (singles.length > 0) return strongestFirst(singles);
  const now = leadsOf(audit, audit.ranking.leader);
  const pairs = trials.flatMap((a, i) =>
    trials.slice(i + 1).flatMap((b) => {
      if (a.change.fact === b.change.fact) return [];
      const promising = interact(audit, a.change.fact, b.change.fact) || predicted(now, a, b) <= SLACK_DB;
      return promising ? (verified(audit, [a, b]) ?? []) : [];
    }),
  );
  return strongestFirst(pairs);
}

function strongestFirst(found: readonly Flip[]): Flip[] {
  return [...found].sort((a, b) => b.byDb - a.byDb);
}

function trialsOf(audit: Audit): Trial[] {
  const { book, ranking } = audit;
  return [...book.answers].flatMap(([fact, told]) => {
    if (!('value' in told)) return [];
    return possibleAnswers(fact).flatMap((answer): Trial[] => {
      if (!('value' in answer) || answer.value === told.value) return [];
      const same: Answer = { value: answer.value, how: told.how };
      const after = auditSync(withAnswer(book, fact, same), audit);
      const change = { fact, from: told.value, to: answer.value };
      return [{ change, answer: same, leadsDb: leadsOf(after, ranking.leader) }];
    });
  });
}

/** Decibans of one cause minus those of each other, in the order of the causes; infinity for itself. */
function leadsOf({ causes, ranking }: Audit, leader: CauseId): number[] {
  const byId = new Map(ranking.causes.map((r) => [r.cause, r.decibans]));
  const mine = byId.get(leader) ?? 0;
  return causes.map((cause) =>
    cause.id === leader ? Number.POSITIVE_INFINITY : mine - (byId.get(cause.id) ?? 0),
  );
}

function predicted(now: readonly number[], a: Trial, b: Trial): number {
  return now.reduce((least, lead, i) => {
    const change = (trial: Trial): number => (trial.leadsDb[i] ?? lead) - lead;
    return Number.isFinite(lead) ? Math.min(least, lead + change(a) + change(b)) : least;
  }, Number.POSITIVE_INFINITY);
}

/** True where one rule reads both facts, so that their effects need not add up. */
function interact(audit: Audit, a: FactId, b: FactId): boolean {
  return ruleIndex(audit.causes).neighbors.get(a)?.has(b) ?? false;
}

/** The flip, if auditing again with these answers makes another cause lead. */
function verified(audit: Audit, trials: readonly Trial[]): Flip | undefined {
  const book = trials.reduce((b: FactBook, t) => withAnswer(b, t.change.fact, t.answer), audit.heard);
  const { ranking } = auditSync(book, audit);
  if (ranking.leader === audit.ranking.leader) return undefined;
  const before = ranking.causes.find((r) => r.cause === audit.ranking.leader);
  const byDb = (ranking.causes[0]?.decibans ?? 0) - (before?.decibans ?? 0);
  return { changes: trials.map((t) => t.change), leader: ranking.leader, byDb };
}
