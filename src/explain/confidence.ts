/** How sure, how telling, and how decided: the words for it, defined once. */

import type { FactBook } from '../facts/book.js';
import { factSpec } from '../facts/catalog.js';
import {
  probabilityOf,
  probabilityText,
  probabilityWord,
  statedProbability,
  weightWord,
} from '../reasoning/decibans.js';
import { DECIDED_FROM, type Doubt, type Ranking, type Verdict } from '../reasoning/rank.js';
import type { Score } from '../reasoning/score.js';
import type { Cause } from '../rules/cause.js';
import type { ReportEvidence, ReportGroup } from './report-types.js';
import { listText, named } from './words.js';

/** `likely, about 85%`; a verdict that is no matter of degree stands in its own words. */
export function confidenceText(probability: number, verdict?: Verdict): string {
  if (verdict === 'not-applicable') return 'does not apply';
  // The word goes with the figure that is printed beside it, not with digits that are not.
  const likely = `${probabilityWord(Math.round(20 * probability) / 20)}, ${probabilityText(probability)}`;
  if (verdict === 'ruled-out') return `ruled out, ${probabilityText(probability)}`;
  return verdict === 'cannot-tell' ? `cannot tell yet, ${probabilityText(probability)} so far` : likely;
}

/** `strong, for it`; `a hint, against it`. */
export function weightText(decibans: number): string {
  if (decibans === 0) return 'says nothing';
  return `${weightWord(decibans)}, ${decibans > 0 ? 'for it' : 'against it'}`;
}

/** A line of the balance weighs enough to be named from here on, decibans. */
const CARRIES_FROM_DB = 2;
const CARRIERS_NAMED = 2;
/** The complaint is what carries a figure that would be lower by this much without it. */
const LEANS_FROM = 0.1;

/** The one or two lines that carry a figure, and what would be left of it without what is heard. */
export function carriedText(
  { decibans, sharedDb }: Pick<Score, 'decibans' | 'sharedDb'>,
  groups: readonly ReportGroup[],
  evidence: readonly ReportEvidence[],
): string {
  const carriers = [
    ...groups.map((group) => ({ weight: group.decibans, name: carrierName(group, evidence) })),
    { weight: sharedDb, name: 'the complaint itself' },
  ]
    .filter(({ weight }) => weight >= CARRIES_FROM_DB)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, CARRIERS_NAMED)
    .map(({ name }) => name);
  if (carriers.length === 0) return 'Nothing that was told carries it; it is only how common it is.';
  const without = statedProbability(decibans - sharedDb);
  const leans = statedProbability(decibans) - without >= LEANS_FROM;
  return `It rests mostly on ${listText(carriers)}.${leans ? ` Without the complaint it would be ${probabilityText(without)}.` : ''}`;
}

/** A line of the balance by its most telling finding: a computed number, or what was answered. */
function carrierName({ rules, title }: ReportGroup, evidence: readonly ReportEvidence[]): string {
  const best = evidence.find(({ rule, speaks }) => speaks === 'for' && rules.includes(rule));
  if (best?.valueLabel) return `the ${best.valueLabel}`;
  const [fact] = best?.facts ?? [];
  return fact === undefined ? title : `the answer on “${factSpec(fact).label}”`;
}

/** `+7.8`, `−2.0`, `0.0`: decibans with their sign, a minus as long as the plus. */
export function signed(decibans: number): string {
  const text = decibans.toFixed(1);
  if (Number(text) === 0) return '0.0';
  return decibans > 0 ? `+${text}` : text.replace('-', '−');
}

export function priorText(priorDb: number): string {
  const p = probabilityOf(priorDb);
  return `before anything was told: ${probabilityWord(p)}, ${probabilityText(p)}`;
}

export function sharedText(sharedDb: number, complaints: number): string {
  if (complaints === 0) return 'no complaint was told';
  const what = complaints === 1 ? 'the complaint' : 'the complaints';
  if (Math.abs(sharedDb) < 0.05) return `${what}, shared among all causes: says nothing here`;
  const fits = sharedDb > 0 ? 'fits it' : 'is explained better by others or would sound different';
  return `${what}, shared among all causes: ${complaints === 1 ? fits : fits.replace('fits', 'fit').replace('is ', 'are ')}`;
}

type Titles = (id: Cause['id']) => string;

/** What is wrong, without advice, in a few words. */
export function headlineText(book: FactBook, ranking: Ranking, title: Titles): string {
  if (book.answers.size === 0 && book.complaints.length === 0) return 'Nothing was told yet';
  if (!ranking.undecided) return title(ranking.leader);
  // Probable by the complaint alone: nothing that was told points at it.
  if (ranking.doubts.every((doubt) => doubt === 'no-own-evidence')) return 'Likely, but not proven yet';
  if (!allProbable(ranking)) return 'Not enough is known yet';
  return ranking.contenders.length === 2
    ? 'Two causes fit; one or both may be true'
    : 'Three causes fit; one or more may be true';
}

/** Causes do not exclude each other: when every contender is probable, none is told as the alternative of another. */
function allProbable({ contenders, causes }: Ranking): boolean {
  const probable = (id: Cause['id']): boolean =>
    (causes.find(({ cause }) => cause === id)?.probability ?? 0) >= DECIDED_FROM;
  return contenders.length > 1 && contenders.every(probable);
}

const DOUBT_WORDS: Readonly<Record<Doubt, string>> = {
  'nothing-probable': 'no cause reaches an even chance',
  'too-close': 'the next cause is too close behind',
  'no-own-evidence': 'no answer or number of weight stands behind the first cause',
};

/** Why nothing is decided; once it is, which cause comes next. */
export function becauseText({ undecided, doubts, causes, leader }: Ranking, title: Titles): string {
  if (undecided) return `It stays open because ${DOUBT_WORDS[doubts[0] ?? 'nothing-probable']}.`;
  const next = causes.find(({ cause, applies }) => cause !== leader && applies);
  return next ? `The next cause, ${named(title(next.cause))}, is ${confidenceText(next.probability)}.` : '';
}
