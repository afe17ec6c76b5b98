/**
 * What was done and what it did: which causes it speaks for, which answers it changed, and whether it ended the
 * trouble. An act that is also a home test counts as that test, so telling one tells the other.
 */
import { actSpec, isActId, type Outcome, type RemedyRef, type Trial } from '../facts/acts.js';
import { type Answer, type FactBook, withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import { actOf, curesOf, outcomeDb } from '../rules/acts-cure.js';
import type { Cause, Remedy } from '../rules/cause.js';
import { capDb } from '../rules/weight.js';
import { groupDb } from './group.js';

const HELPED: ReadonlySet<Outcome> = new Set(['gone', 'better']);

/** `cause/remedy`, the id of a remedy outside its cause. */
export const remedyId = (cause: Cause, remedy: Remedy): RemedyRef => `${cause.id}/${remedy.id}`;

const namedIn = (cause: Cause, act: string): Remedy[] =>
  cause.remedies.filter((remedy) => remedy.act === act || remedyId(cause, remedy) === act);

/** The act of a trial, also where it was told as a remedy that is one. */
function actTold(trial: Trial, causes: readonly Cause[]): string {
  const act = actOf(trial);
  const remedy = causes.flatMap((cause) => cause.remedies.filter((each) => remedyId(cause, each) === act))[0];
  return remedy?.act ?? act;
}

/** Trials that say something, each act once a complaint: order and repetition do not matter. */
function byAct(book: FactBook, causes: readonly Cause[]): Map<string, Trial[]> {
  const found = new Map<string, Trial[]>();
  for (const trial of book.trials) {
    if (trial.outcome === 'cannot-tell') continue;
    const act = actTold(trial, causes);
    found.set(act, [...(found.get(act) ?? []), trial]);
  }
  return found;
}

/** How strongly different acts of one evening repeat each other, and one act told twice. */
const EVENING = 0.3;
const SAME_ACT = 1;

/**
 * Weight of all trials for a cause, decibans; bounded as the outcome of a test is. Acts that are home tests speak by
 * the rules that read the test. A trial for one complaint says nothing of causes that do not make it. An act that only
 * silences or replaces the center says nothing of causes that do not name it.
 */
export function trialsDb(book: FactBook, cause: Cause, causes: readonly Cause[]): number {
  if (book.trials.length === 0) return 0;
  const most = capDb('measured');
  const weights = [...byAct(book, causes)].flatMap(([act, trials]) => {
    const spec = isActId(act) ? actSpec(act) : undefined;
    const cures = curesOf(cause, act);
    if (spec?.passing && cures === undefined) return [];
    const own = trials
      .filter(({ outcome }) => spec?.mirror?.answers[outcome] === undefined)
      .filter(({ complaint }) => complaint === undefined || (cause.links[complaint] ?? 0) > 0)
      .map(({ outcome }) => outcomeDb(outcome, cures ?? 0));
    return [groupDb(own, SAME_ACT)];
  });
  return Math.max(-most, Math.min(most, groupDb(weights, EVENING)));
}

/** The answer of the home test that an act is; undefined where it is none, or the test has no such answer. */
function testAnswer(trials: readonly Trial[], act: string): { fact: FactId; answer: Answer } | undefined {
  const mirror = isActId(act) ? actSpec(act).mirror : undefined;
  const values = new Set(trials.map(({ outcome }) => mirror?.answers[outcome]));
  const [value] = values;
  if (!mirror || values.size !== 1 || value === undefined) return undefined;
  return { fact: mirror.fact, answer: { value, how: 'measured' } };
}

/**
 * The setting that an act which helped had changed: where it is told as the act leaves it, the trouble was heard with
 * what was before, or with nothing that is known.
 */
function settingBefore(trials: readonly Trial[], act: string, book: FactBook): [FactId, Answer][] {
  const turn = isActId(act) ? actSpec(act).turns : undefined;
  const told = turn && book.answers.get(turn.fact);
  const helped = trials.some(({ outcome, stays }) => HELPED.has(outcome) && stays !== false);
  if (!turn || !helped || !told || !('value' in told) || !turn.to.includes(String(told.value))) return [];
  return [[turn.fact, turn.from === undefined ? { how: 'unknown' } : { ...told, value: turn.from }]];
}

const remembered = new WeakMap<FactBook, FactBook>();

/**
 * The book as the trouble was heard: what was before where something was changed since, and tests told as acts. It is
 * what the diagnosis reasons on; the book itself where there is no difference.
 */
export function bookAsHeard(book: FactBook, causes: readonly Cause[]): FactBook {
  if (book.before.size === 0 && book.trials.length === 0) return book;
  const known = remembered.get(book);
  if (known) return known;
  const changed = new Map<FactId, Answer>(book.before);
  for (const [act, trials] of byAct(book, causes)) {
    const found = testAnswer(trials, act);
    if (found && !book.answers.has(found.fact) && !changed.has(found.fact))
      changed.set(found.fact, found.answer);
    for (const [fact, answer] of settingBefore(trials, act, book))
      if (!changed.has(fact)) changed.set(fact, answer);
  }
  const heard =
    changed.size === 0
      ? book
      : { ...book, answers: new Map([...book.answers, ...changed]), before: new Map() };
  remembered.set(book, heard);
  remembered.set(heard, heard);
  return heard;
}

/** It helped and, as far as is told, still stands: it is to stay as it is while the rest is looked for. */
export const isToStay = (trial: Trial): boolean => HELPED.has(trial.outcome) && stands(trial);

/** A change that still stands: said to, or no mere look and not said to be undone. */
function stands({ act, stays }: Trial): boolean {
  return stays ?? !(isActId(act) && actSpec(act).passing);
}

/**
 * What ended the trouble: trials after which it was gone and that stand; none where the owner does not hold it for
 * settled, or where they ended only some of the complaints. Undefined while it is not solved.
 */
export function solvedBy(book: FactBook): { readonly trials: readonly Trial[] } | undefined {
  if (book.solved === false) return undefined;
  const cures = book.trials.filter((trial) => trial.outcome === 'gone' && stands(trial));
  const ends = (id: string): boolean => cures.some(({ complaint }) => (complaint ?? id) === id);
  const ended = cures.length > 0 && (book.complaints.length === 0 || book.complaints.every(ends));
  return ended || book.solved === true ? { trials: cures } : undefined;
}

/** True where carrying it out again would tell nothing new: it was done, and not undone after it helped. */
export function isTried(book: FactBook, cause: Cause, remedy: Remedy): boolean {
  return book.trials.some((trial) => {
    const act = actOf(trial);
    const isIt = act === remedyId(cause, remedy) || (remedy.act !== undefined && act === remedy.act);
    const inVain = trial.outcome === 'same' || trial.outcome === 'worse';
    return isIt && (inVain || isToStay(trial));
  });
}

/** True where something that must not be done in this home stands against the remedy. */
export const isForbidden = ({ constraints }: FactBook, { cost, forbiddenBy = [] }: Remedy): boolean =>
  constraints.some((id) => forbiddenBy.includes(id) || (id === 'no-purchase' && cost !== 'free'));

/** Answers that this remedy may have changed. */
export const changedBy = (book: FactBook, remedy: Remedy): FactId[] =>
  remedy.changes.filter((id) => book.answers.has(id));

/** Answers that trials may have changed and that are not told as they were before. */
export function outdatedAnswers(book: FactBook, causes: readonly Cause[]): FactId[] {
  const changes = book.trials.filter(stands).flatMap((trial) => changesOf(trial, causes));
  return [...new Set(changes)].filter((id) => book.answers.has(id) && !book.before.has(id));
}

/** Facts that an act may change, by the remedies that are this act. */
function changesOf(trial: Trial, causes: readonly Cause[]): FactId[] {
  return causes.flatMap((cause) => namedIn(cause, actOf(trial)).flatMap(({ changes }) => changes));
}

const isSame = (a: Trial, b: Trial): boolean => actOf(a) === actOf(b) && a.complaint === b.complaint;

/**
 * The book with one more trial; the same act told again for the same complaint replaces what was told. Where it is said
 * to stay, the answers that it changed are those of before from now on: the trouble was heard with them.
 */
export function withTrial(book: FactBook, trial: Trial, causes: readonly Cause[]): FactBook {
  const told = { ...book, trials: [...book.trials.filter((each) => !isSame(each, trial)), trial] };
  if (trial.stays !== true) return told;
  const before = new Map(book.before);
  const moved = changesOf(trial, causes).filter((id) => !before.has(id) && book.answers.has(id));
  for (const id of moved) before.set(id, book.answers.get(id) as Answer);
  return moved.reduce<FactBook>((b, id) => withAnswer(b, id, undefined), { ...told, before });
}
