/**
 * The one account of minutes. What a person reads beside a question, a test or a remedy is its own minutes, everywhere
 * the same; what is lost around it (getting up, patience) only decides which step comes first.
 */
import type { FactBook } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { isTest } from './hypotheses.js';
import { knownChance } from './knows.js';

/** Minutes lost around anything done by hand: getting up, finding the piece to play, setting it back (judgement). */
export const HANDS_ON_MINUTES = 5;
/** Minutes that any question costs beyond its own: reading it out, and the patience of whoever is asked (judgement). */
export const PATIENCE_MINUTES = 1.5;
/** Minutes until somebody has said that he does not know (judgement). */
const DONT_KNOW_MINUTES = 0.2;
/** Minutes lost when it is none of the listed causes: the case is handed on (judgement). */
export const OTHER_MINUTES = 60;
/**
 * Minutes lost when the cause named first is not the one: its remedy carried out in vain, perhaps something
 * bought, and the call that follows (judgement; the evaluation hardly changes from 150 to 400).
 */
export const WRONG_VERDICT_MINUTES = 300;
/** Minutes to check after a repair that the trouble is gone: the same minute of speech again (judgement). */
export const CHECK_MINUTES = 2;

/** Minutes that a question or home test takes, as it is written wherever it is named. */
export const shownMinutes = (id: FactId): number => factSpec(id).minutes;

/** Minutes that it takes out of an evening: somebody who tries something has to get up for it. */
export const wholeMinutes = (id: FactId): number => shownMinutes(id) + (isTest(id) ? HANDS_ON_MINUTES : 0);

/** Expected minutes that putting it costs, whether it can be answered or not. A test that fails was begun all the same. */
export function priceMinutes(book: FactBook, id: FactId, known = knownChance(book, id)): number {
  if (isTest(id)) return wholeMinutes(id);
  return known * shownMinutes(id) + (1 - known) * DONT_KNOW_MINUTES + PATIENCE_MINUTES;
}
