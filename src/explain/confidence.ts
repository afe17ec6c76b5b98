/** How sure, how telling, and how decided: the words for it, defined once. */

import type { FactBook } from '../facts/book.js';
import { probabilityOf, probabilityText, probabilityWord, weightWord } from '../reasoning/decibans.js';
import { DECIDED_FROM, type Doubt, type Ranked, type Ranking, type Verdict } from '../reasoning/rank.js';
import type { Cause } from '../rules/cause.js';
import { capital, listText, named, plural } from './words.js';

/** `likely, about 85%`; a verdict that is no matter of degree stands in its own words. */
export function confidenceText(probability: number, verdict?: Verdict): string {
  if (verdict === 'not-applicable') return 'does not apply';
  // The word goes with the figure that is printed beside it, not with digits that are not.
  const likely = `${probabilityWord(Math.round(20 * probability) / 20)}, ${probabilityText(probability)}`;
  if (verdict === 'ruled-out') return `ruled out, ${probabilityText(probability)}`;
  return verdict === 'cannot-tell' ? `cannot tell yet, ${probabilityText(probability)} so far` : likely;
}

/** The confidence as a sentence of a verdict: of the cause, or, undecided, of the one named first. */
export function sureSentence({ confidence, undecided }: { confidence: string; undecided: boolean }): string {
  return `${capital(confidence)}${undecided ? ' (the first named)' : ''}.`;
}

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  likely: 'likely',
  possible: 'possible',
  unlikely: 'unlikely',
  'ruled-out': 'ruled out: every rule of this cause is settled and speaks against it',
  'cannot-tell': 'cannot tell yet: nothing of its own is known',
  'not-applicable': 'does not apply to this system',
};
export const verdictText = (verdict: Verdict): string => VERDICT_WORDS[verdict];

/** `strong, for it`; `a hint, against it`. */
export function weightText(decibans: number): string {
  if (decibans === 0) return 'says nothing';
  return `${weightWord(decibans)}, ${decibans > 0 ? 'for it' : 'against it'}`;
}

/** What is said of a cause for which no answer and no number speaks. */
export const nothingOwnText = ({ sharedDb }: { readonly sharedDb: number }): string =>
  sharedDb > 0 ? 'Nothing of its own speaks for it yet; the complaint does.' : 'Nothing speaks for it yet.';

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

/** What is wrong, without advice. */
export function headlineText(book: FactBook, ranking: Ranking, title: Titles): string {
  const names = ranking.contenders.map((id) => named(title(id)));
  if (book.answers.size === 0 && book.complaints.length === 0)
    return 'Nothing was told yet, so no cause can be named';
  if (!ranking.undecided) return title(ranking.leader);
  if (names.length < 2) return `Not decided yet: ${names[0] ?? ''} comes first, on thin evidence`;
  if (allProbable(ranking)) {
    const fit = names.length === 2 ? 'both fit; one or both' : 'all fit; one or more';
    return `Not decided yet: ${listText(names)} ${fit} may be true`;
  }
  if (ranking.doubts.every((doubt) => doubt === 'no-own-evidence'))
    return `Not proven yet: ${names[0]} fits best, ${listText(names.slice(1))} ${names.length > 2 ? 'remain' : 'remains'}`;
  return `Not decided yet: ${names.length === 2 ? 'either ' : ''}${listText(names, 'or')}`;
}

/** Causes do not exclude each other: when every contender is probable, none is told as the alternative of another. */
function allProbable({ contenders, causes }: Ranking): boolean {
  return contenders.every((id) => (causes.find((r) => r.cause === id)?.probability ?? 0) >= DECIDED_FROM);
}

const DOUBT_WORDS: Readonly<Record<Doubt, string>> = {
  'nothing-probable': 'no cause reaches an even chance',
  'too-close': 'the next cause is too close behind',
  'no-own-evidence': 'no answer or number of weight stands behind the first cause',
};

/** Why this sure and no surer. */
export function becauseText(ranking: Ranking, title: Titles): string {
  if (ranking.undecided)
    return `It stays open because ${listText(ranking.doubts.map((d) => DOUBT_WORDS[d]))}.`;
  const leader = ranking.causes[0] as Ranked;
  const next = ranking.causes.find((r) => r.cause !== ranking.leader && r.applies);
  const support = leader.groups.filter((g) => g.decibans > 0).length;
  const lines = `${support === 1 ? 'One line' : plural(support, 'line')} of evidence ${support === 1 ? 'speaks' : 'speak'} for it.`;
  return next
    ? `${lines} The next cause, ${named(title(next.cause))}, is ${confidenceText(next.probability)}.`
    : lines;
}
