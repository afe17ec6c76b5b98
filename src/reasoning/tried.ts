/** Remedies that were carried out: what they say when the trouble stayed, and which answers they outdate. */
import type { RemedyRef } from '../facts/acts.js';
import { type FactBook, withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { Cause, Remedy } from '../rules/cause.js';
import { capDb } from '../rules/weight.js';

/** `cause/remedy`, the id of a remedy outside its cause. */
export const remedyId = (cause: Cause, remedy: Remedy): RemedyRef => `${cause.id}/${remedy.id}`;

export const isTried = (book: FactBook, cause: Cause, remedy: Remedy): boolean =>
  book.trials.some(({ act }) => act === remedyId(cause, remedy));

/**
 * Weight against a cause whose remedy was carried out while the complaint stayed: 10 log10(1 - cures) for
 * the surest remedy tried, bounded as a memory is (it may not have been done right).
 */
export function triedDb(book: FactBook, cause: Cause): number {
  const cures = cause.remedies.filter((r) => isTried(book, cause, r)).map((r) => r.cures);
  if (cures.length === 0) return 0;
  return Math.max(-capDb('recalled'), 10 * Math.log10(1 - Math.max(...cures)));
}

/** Answers that this remedy may have changed. */
export const changedBy = (book: FactBook, remedy: Remedy): FactId[] =>
  remedy.changes.filter((id) => book.answers.has(id));

/** Answers that remedies already tried may have changed, if they were given before. */
export function outdatedAnswers(book: FactBook, causes: readonly Cause[]): FactId[] {
  const changes = causes.flatMap((cause) =>
    cause.remedies.filter((r) => isTried(book, cause, r)).flatMap((r) => r.changes),
  );
  return [...new Set(changes)].filter((id) => book.answers.has(id));
}

/** The book after a remedy was carried out and did not help: remembered as tried, outdated answers forgotten. */
export function afterRemedy(book: FactBook, cause: Cause, remedy: Remedy): FactBook {
  const forgotten = remedy.changes.reduce((b, id) => withAnswer(b, id, undefined), book);
  if (isTried(book, cause, remedy)) return forgotten;
  return { ...forgotten, trials: [...book.trials, { act: remedyId(cause, remedy), outcome: 'same' }] };
}
