/** Putting an answer into the book: what no longer applies is set aside, what applies again comes back. */
import { type Answer, withAnswer } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { auditSync } from '../reasoning/audit.js';
import { makesSense } from '../reasoning/hypotheses.js';
import { bookOf, type State, say, withBook } from './state.js';

/** Probability that must move before it is worth asking how a number was obtained (judgement: one word's worth). */
const HOW_MATTERS_FROM = 0.1;

export function give(state: State, id: FactId, answer: Answer): State {
  const before = bookOf(state);
  let book = withAnswer(before, id, answer);
  const parked = new Map(state.parked);
  parked.delete(id);
  const lines: string[] = [];
  for (let changed = true; changed; ) {
    changed = false;
    for (const [fact, kept] of book.answers) {
      if (fact === id || makesSense(book, fact) || !makesSense(before, fact)) continue;
      book = withAnswer(book, fact, undefined);
      parked.set(fact, kept);
      lines.push(`No longer applies, set aside: ${factSpec(fact).label}.`);
      changed = true;
    }
    for (const [fact, kept] of parked) {
      if (!makesSense(book, fact)) continue;
      book = withAnswer(book, fact, kept);
      parked.delete(fact);
      lines.push(`Applies again, kept from before: ${factSpec(fact).label}.`);
      changed = true;
    }
  }
  const history = state.history.filter((topic) => !parked.has(topic as FactId));
  return say({ ...withBook(state, book), parked, history }, ...lines);
}

/** The answer given before: in the book, set aside, or of before a change that stands. */
export function earlier(state: State, id: FactId): Answer | undefined {
  return bookOf(state).answers.get(id) ?? state.parked.get(id) ?? bookOf(state).before.get(id);
}

/** True where it would move a conclusion whether this number was taped or guessed. */
export function howMatters(state: State, id: FactId): boolean {
  const answer = bookOf(state).answers.get(id);
  const spec = factSpec(id);
  if (!answer || !('value' in answer) || answer.how !== 'measured' || spec.kind !== 'number') return false;
  const guessed = auditSync(withAnswer(bookOf(state), id, { ...answer, how: 'guessed' }), state.audit);
  if (guessed.ranking.leader !== state.audit.ranking.leader) return true;
  const now = new Map(state.audit.ranking.causes.map((cause) => [cause.cause, cause.probability]));
  return guessed.ranking.causes.some(
    (cause) => Math.abs(cause.probability - (now.get(cause.cause) ?? 0)) >= HOW_MATTERS_FROM,
  );
}
