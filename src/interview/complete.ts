/** What happens once an answer is understood: into the book, into the history, and on. */
import { factText } from '../explain/words.js';
import type { Answer } from '../facts/book.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { plainText } from '../lib/sanitize.js';
import { isPointless, makesSense } from '../reasoning/hypotheses.js';
import { earlier, give, howMatters } from './answers.js';
import { advance, atResult, clashing, familyAfter } from './flow.js';
import { newsLines } from './news.js';
import { bookOf, isOpening, pop, push, type State, say, type Topic, withBook } from './state.js';

/** Puts an answer into the book, says how it was understood, and asks how it was found where that matters. */
export function accept(state: State, id: FactId, answer: Answer, echo?: string): State {
  const before = earlier(state, id);
  const isChange = before !== undefined && !sameAnswer(before, answer);
  const given = withNews(state, give(say(state, echoOf(state, id, answer, echo)), id, answer));
  const done = complete(edited(given, isChange), id, isChange || before === undefined);
  return done;
}

/** What the answer changed is said at once, so that whoever answered hears what it was good for. */
const withNews = (before: State, after: State): State =>
  say(after, ...newsLines(before.audit.ranking, after.audit.ranking, after.audit.causes));

/** How an answer was understood, in words that can be said back on a call. */
function echoOf({ settings, audit }: State, id: FactId, answer: Answer, echo?: string): string {
  if (!('value' in answer))
    return settings.call
      ? 'Say: “Never mind, that stays open.”'
      : '= not known: noted as something to find out';
  const guess = answer.how === 'guessed' ? ', as a guess' : '';
  const shown = `${echo ?? factText(id, answer.value, audit.book.units)}${guess}`;
  return settings.call ? `Say back: “${factSpec(id).label}: ${shown}.”` : `= ${shown}`;
}

function sameAnswer(a: Answer, b: Answer): boolean {
  if (!('value' in a) || !('value' in b)) return !('value' in a) && !('value' in b);
  return a.value === b.value;
}

/** An edited answer may make more questions needed: the bound starts anew. */
export const edited = (state: State, isEdit: boolean): State =>
  isEdit ? { ...state, most: state.cap } : state;

/** The question on top is answered: it enters the history, or what was interrupted goes on. */
export function complete(state: State, topic: Topic, isNew = true): State {
  const isBase = state.screens.length === 1;
  const history = state.history.filter((each) => each !== topic);
  const family = isOpening(topic) ? {} : familyAfter(state, topic);
  // What was done at the result can be taken back as well.
  const isDone = state.screens.length === 2 && state.screens[0].kind === 'result';
  const answered: State = isBase
    ? { ...state, history: [...history, topic], ...family }
    : isDone
      ? { ...pop(state), history: [...history, topic], screens: [{ kind: 'result' }] }
      : pop(state);
  const asksHow = isNew && !isOpening(topic) && howMatters(answered, topic);
  if (!asksHow) return after(answered, isBase);
  return push(answered, { kind: 'how', fact: topic });
}

/** Goes on once nothing interrupts: with the question in hand where it still stands, or with the next one. */
export function after(state: State, baseAnswered = isAnswered(state)): State {
  if (state.screens.length > 1) return state;
  const [base] = state.screens;
  if (base.kind === 'result') return atResult(state, 'With that, the result is:');
  if (base.kind !== 'topic' || baseAnswered) return advance(state);
  const { topic } = base;
  const book = bookOf(state);
  if (!isOpening(topic) && (!makesSense(book, topic) || isPointless(book, topic))) return advance(state);
  return clashing(state);
}

function isAnswered(state: State): boolean {
  const [base] = state.screens;
  return base.kind === 'topic' && state.history.includes(base.topic);
}

export function addNote(state: State, about: string, text: string): State {
  const book = bookOf(state);
  if (book.notes.length >= CASE_LIMITS.notes) return say(state, 'No more notes fit into this case.');
  const note = plainText(about === '' ? text : `${about} ${text}`).slice(0, CASE_LIMITS.noteLetters);
  return say(withBook(state, { ...book, notes: [...book.notes, note] }), '= noted');
}

export function refuse(state: State, typed: string, lines: readonly string[]): State {
  return { ...say(state, ...lines), draft: typed };
}
