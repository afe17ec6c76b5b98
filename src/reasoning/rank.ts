/** From evidence and complaints to an ordered list of causes with verdicts, and whether it is decided. */

import { COMPLAINTS } from '../facts/complaints.js';
import { largestFirst } from '../lib/ties.js';
import type { Cause } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { Evidence } from '../rules/evidence.js';
import { statedProbability } from './decibans.js';
import { type Complaints, type Leaks, type OwnScore, ownScore, type Score, scores } from './score.js';
import { TEMPERATURE } from './temperature.js';

export type Verdict = 'likely' | 'possible' | 'unlikely' | 'ruled-out' | 'cannot-tell' | 'not-applicable';

/** The cut-offs of the contract. */
const LIKELY_FROM = 0.7;
const POSSIBLE_FROM = 0.2;
const RULED_OUT_BELOW = 0.02;
export const DECIDED_FROM = 0.5;
export const DECIDED_LEAD_DB = 5;
const DECIDED_SUPPORT_DB = 5;
/** At most so many causes are named where nothing is decided. */
const MOST_CONTENDERS = 3;

export interface Ranked extends Score {
  /** Never above 0.99. */
  readonly probability: number;
  readonly verdict: Verdict;
}

/** Why nothing is decided: no cause is probable, two are too close, or the leader has no evidence of its own. */
export type Doubt = 'nothing-probable' | 'too-close' | 'no-own-evidence';

export interface Ranking {
  /** Every cause, most probable first; ties in the order of the causes. */
  readonly causes: readonly Ranked[];
  readonly leader: CauseId;
  /** Decibans by which the leader is ahead of the next cause that needs another remedy. */
  readonly leadDb: number;
  readonly undecided: boolean;
  readonly doubts: readonly Doubt[];
  /** Two or three causes that remain, leader first; the leader alone when it is decided. */
  readonly contenders: readonly CauseId[];
  readonly temperature: number;
}

export interface RankOptions {
  /** Where priors other than the built-in ones come from, in words. */
  readonly priors?: string;
  readonly temperature?: number;
  readonly leaks?: Leaks;
}

export function rank(
  causes: readonly Cause[],
  evidence: readonly Evidence[],
  complaints: Complaints,
  options: RankOptions = {},
): Ranking {
  const temperature = options.temperature ?? TEMPERATURE;
  const byCause = evidenceByCause(causes, evidence);
  const own = causes.map((cause) => ownScore(cause, byCause.get(cause.id) ?? [], temperature));
  return rankOwn(causes, byCause, own, complaints, options);
}

export type EvidenceByCause = ReadonlyMap<CauseId, readonly Evidence[]>;
export function evidenceByCause(causes: readonly Cause[], evidence: readonly Evidence[]): EvidenceByCause {
  const lists = new Map<CauseId, Evidence[]>(causes.map((cause) => [cause.id, []]));
  for (const item of evidence) lists.get(item.cause)?.push(item);
  return lists;
}

/** The same from own scores that are known already, so that an unchanged cause need not be scored again. */
export function rankOwn(
  causes: readonly Cause[],
  evidence: EvidenceByCause,
  own: readonly OwnScore[],
  complaints: Complaints,
  options: RankOptions = {},
): Ranking {
  const temperature = options.temperature ?? TEMPERATURE;
  const order = causes.map((cause, place) => ({ cause, place }));
  const scored = scores(causes, own, complaints, options.leaks ?? COMPLAINTS);
  const ranked = order
    .map(({ cause, place }) => {
      const score = scored[place] as Score;
      const probability = statedProbability(score.decibans);
      const verdict = verdictOf(score, probability, evidence.get(cause.id) ?? []);
      return { cause, place, ranked: { ...score, probability, verdict } };
    })
    .sort((a, b) => largestFirst(a.ranked.decibans, b.ranked.decibans) || a.place - b.place);
  const leader = ranked[0];
  if (!leader) throw new RangeError('a ranking needs at least one cause');
  const rivals = ranked.slice(1).filter((r) => !sharesRemedy(leader.cause, r.cause));
  const behindDb = (r: { ranked: Ranked }): number => leader.ranked.decibans - r.ranked.decibans;
  const leadDb = rivals[0] ? behindDb(rivals[0]) : Number.POSITIVE_INFINITY;
  const doubts = doubtsOf(leader.ranked, leadDb, temperature);
  const close = rivals.filter((r, i) => i === 0 || behindDb(r) < DECIDED_LEAD_DB);
  const contenders = doubts.length === 0 ? [leader] : [leader, ...close].slice(0, MOST_CONTENDERS);
  return {
    causes: ranked.map((r) => r.ranked),
    leader: leader.cause.id,
    leadDb,
    undecided: doubts.length > 0,
    doubts,
    contenders: contenders.map((r) => r.cause.id),
    temperature,
  };
}

/** Two causes need the same remedy when what is tried first for one is among the remedies of the other. */
export function sharesRemedy(a: Cause, b: Cause): boolean {
  const includes = (list: Cause, id: string): boolean => list.remedies.some((remedy) => remedy.id === id);
  return includes(b, a.remedies[0].id) || includes(a, b.remedies[0].id);
}

function verdictOf(score: Score, probability: number, evidence: readonly Evidence[]): Verdict {
  if (!score.applies) return 'not-applicable';
  const bearing = evidence.filter((item) => item.outcome !== 'not-applicable');
  const unsettled = bearing.filter((item) => item.outcome === 'unknown' || item.outcome === 'error');
  if (bearing.length > 0 && unsettled.length === bearing.length) return 'cannot-tell';
  if (probability >= LIKELY_FROM) return 'likely';
  if (probability >= POSSIBLE_FROM) return 'possible';
  return unsettled.length === 0 && probability < RULED_OUT_BELOW ? 'ruled-out' : 'unlikely';
}

function doubtsOf(leader: Ranked, leadDb: number, temperature: number): Doubt[] {
  const items = leader.groups.flatMap((line) => line.evidence);
  const supported = items.some((item) => item.decibans / temperature >= DECIDED_SUPPORT_DB);
  const doubts: Doubt[] = [];
  if (leader.probability < DECIDED_FROM) doubts.push('nothing-probable');
  if (leadDb < DECIDED_LEAD_DB) doubts.push('too-close');
  if (!supported) doubts.push('no-own-evidence');
  return doubts;
}
