/** A remedy was carried out: what it did, whether it stands, and what follows from both. */

import { settledBy } from '../explain/report.js';
import { remedyTitle } from '../explain/report-causes.js';
import { solvedText } from '../explain/report-verdict.js';
import { named, sentence } from '../explain/words.js';
import { OUTCOMES, type Outcome, type Trial } from '../facts/acts.js';
import type { FactBook } from '../facts/book.js';
import { factSpec, isFactId } from '../facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../facts/complaints.js';
import type { Audit } from '../reasoning/audit.js';
import { isTest } from '../reasoning/hypotheses.js';
import { plan } from '../reasoning/plan.js';
import { changedBy, remedyId, withTrial } from '../reasoning/trials.js';
import { advance, atResult } from './flow.js';
import { bookOf, pop, push, type Screen, type State, say, withBook } from './state.js';

/**
 * The outcome is told; whether the change stands is asked where something hangs on it.
 * @param complaint where it did so to one of several complaints only
 */
export function takeCured(
  state: State,
  screen: Screen & { kind: 'cured' },
  outcome: Outcome,
  complaint?: ComplaintId,
): State {
  const cause = state.audit.causes.find(({ id }) => id === screen.cause);
  const remedy = cause?.remedies.find(({ id }) => id === screen.remedy);
  if (!cause || !remedy) return pop(state);
  const trial = { act: remedyId(cause, remedy), outcome, ...(complaint && { complaint }) };
  const asking = { kind: 'stays', remedy, trial } as const;
  const helped = outcome === 'gone' || outcome === 'better';
  const asked = push(state, asking);
  return helped || changedBy(bookOf(state), remedy).length > 0 ? asked : tried(asked, asking);
}

/** The trial goes into the book, and what comes of it is said: that it is solved and by what, or the next step. */
export function tried(state: State, { remedy, trial }: Screen & { kind: 'stays' }, stays?: boolean): State {
  const told: Trial = stays === undefined ? trial : { ...trial, stays };
  const book = withTrial(reopened(bookOf(state), told), told, state.audit.causes);
  const after = withBook(pop(pop(state)), book);
  const solved = settledBy(after.audit);
  if (solved) return atResult(say(after, sentence(solvedText(solved)), `Check: ${remedy.verify}`), LEAVE);
  const changed = [...after.audit.book.before.keys()].filter((id) => !bookOf(state).before.has(id));
  const stale = changed.filter((id) => factSpec(id).usually !== 'recalled' && !isTest(id));
  const which = trial.complaint ? ` (${COMPLAINTS[trial.complaint].title})` : '';
  const counts = `It counts: ${OUTCOMES[trial.outcome]}${which}${stays === false ? ', and it was put back' : ''}.`;
  // The trouble was heard with what stood there before; what stands there now is known to nobody yet.
  if (stale.length > 0)
    return advance({ ...say(after, counts, nextStepText(after.audit), STALE), redo: stale });
  return atResult(say(after, counts), nextStepText(after.audit));
}

const STALE = 'Before that, what stands there now:';

const LEAVE = 'Nothing more has to be asked or done.';

/** Whoever says that it is gone now no longer holds it for open. */
function reopened(book: FactBook, { outcome, stays }: Trial): FactBook {
  if (book.solved !== false || outcome !== 'gone' || stays === false) return book;
  const { solved: _, ...rest } = book;
  return rest;
}

function nextStepText(audit: Audit): string {
  const [step] = plan(audit).steps;
  if (!step) return 'No step is left that was not tried; the result is:';
  const remedy = audit.causes.find(({ id }) => id === step.cause)?.remedies.find(({ id }) => id === step.id);
  const own = remedy && remedyTitle(remedy, audit.view, audit.book.units);
  const title = own ?? (isFactId(step.id) ? factSpec(step.id).label : step.id);
  return `The trouble is still open. Next: ${named(title)}.`;
}
