/**
 * The conversation as a pure machine: a state and a typed line give the next state. No terminal, no clock and
 * no file in here; whoever drives it shows `said` and the prompt, saves the book, and hands in what is typed.
 */
import { listText } from '../explain/words.js';
import type { Answer, FactBook } from '../facts/book.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import { auditSync } from '../reasoning/audit.js';
import { refuse } from './complete.js';
import { advance, MOST_QUESTIONS } from './flow.js';
import { askedBack } from './help.js';
import { markOf, markWord } from './marks.js';
import { act, enter } from './marks-done.js';
import type { Earlier } from './port.js';
import { acceptedHere, type Entry, entriesOf, groupsHere } from './screens.js';
import { isOpening, OPENING, pop, push, type Screen, type Settings, type State, say, top } from './state.js';
import { take } from './take.js';
import { typedNumbers } from './typed.js';

/** The state before the first question, or where an earlier interview on this book stopped. */
export function begin(book: FactBook, settings: Settings, before?: Earlier): State {
  const cap = settings.full ? Number.POSITIVE_INFINITY : MOST_QUESTIONS;
  const isNew = book.answers.size === 0 && book.complaints.length === 0;
  const passed = (before?.order ?? []).filter((topic) => isOpening(topic) || book.answers.has(topic));
  const known = isNew ? [] : OPENING.filter((topic) => topic !== 'complaints' || book.complaints.length > 0);
  const given = new Set(known.filter((topic) => !passed.includes(topic)));
  const state: State = {
    settings,
    startedAtMs: settings.now(),
    audit: auditSync(book, undefined, settings.rules),
    history: passed,
    redo: [],
    parked: new Map(Object.entries(before?.parked ?? {}) as [FactId, Answer][]),
    put: new Set(before?.put ?? []),
    screens: [{ kind: 'result' }],
    said: [],
    draft: '',
    most: cap,
    cap,
    given,
    unitsKnown: given.has('units') || passed.includes('units'),
    eager: false,
    reportDue: false,
  };
  return advance(state);
}

/** The same at Esc. */
export function stepBack(state: State): State {
  return act({ ...state, said: [], draft: '' }, 'back');
}

/** "Why do you ask that?" */
const ASKS_WHY = /^(?:but |and )?why\b/i;

/** One typed line. */
export function reply(state: State, raw: string): State {
  const fresh: State = { ...state, said: [], draft: '' };
  const typed = plainLine(raw.slice(0, CASE_LIMITS.readLetters));
  if (typed === '') return enter(fresh);
  const screen = top(fresh);
  if (screen.kind === 'meant') return resolve(fresh, screen, typed);
  const stepped = spokenStep(fresh, screen, typed);
  if (stepped) return stepped;
  const mark = markOf(typed);
  if (mark) {
    const answers = couldMean(fresh, screen, mark.key);
    if (answers.length === 0) return act(fresh, mark.action);
    return push(fresh, { kind: 'meant', typed: mark.key, mark: mark.action, answers });
  }
  const word = markWord(typed);
  if (!word) {
    const taken = take(fresh, screen, typed, raw);
    if (isFreeText(screen) || taken.draft === '') return taken;
    if (ASKS_WHY.test(typed)) return act(fresh, 'why');
    const back = askedBack(fresh, screen, typed);
    return back === undefined ? taken : say(fresh, ...back);
  }
  if (isFreeText(screen)) {
    const answers = [{ text: typed, label: `the word ${quoted(typed)} itself, as the text` }];
    return push(fresh, { kind: 'meant', typed: word.key, mark: word.action, answers });
  }
  const taken = take(fresh, screen, typed);
  return taken.draft === '' ? taken : act(fresh, word.action);
}

/** The first and the second step of a long list; undefined where the line means something else. */
function spokenStep(state: State, screen: Screen, typed: string): State | undefined {
  if (screen.kind !== 'topic' && screen.kind !== 'among') return undefined;
  const groups = screen.kind === 'topic' ? groupsHere(screen.topic) : undefined;
  const numbers = typedNumbers(typed)?.map(Number);
  if (numbers === undefined || (screen.kind === 'topic' && !groups)) return undefined;
  const entries = entriesOf(state, screen);
  const chosen = numbers.flatMap((number) => entries[number - 1]?.value ?? []);
  const wrong = numbers.find((number) => entries[number - 1] === undefined);
  if (wrong !== undefined) return refuse(state, typed, [`There is no line ${wrong}.`, acceptedHere(state)]);
  if (!groups) return take(pop(state), { kind: 'topic', topic: screen.topic }, chosen.join(', '));
  const values = groups.flatMap((group) => (chosen.includes(group.say) ? group.values : []));
  return push(state, { kind: 'among', topic: screen.topic, say: listText(chosen), values });
}

const isFreeText = (screen: Screen): boolean =>
  screen.kind === 'note' ||
  screen.kind === 'name' ||
  screen.kind === 'place' ||
  (screen.kind === 'topic' && screen.topic === 'words');

/** People shorten no, left and right to a letter; nobody shortens "woven" to w. */
const SHORT_ANSWERS = new Set(['n', 'l', 'r']);

/**
 * Answers that begin with the letter of a mark, where a beginning is enough for an answer. A first word that
 * several lines share ("from the picture", "from behind") stands for none of them.
 */
function couldMean(state: State, screen: Screen, letter: string): { text: string; label: string }[] {
  if (screen.kind === 'review' || screen.kind === 'result' || screen.kind === 'understood') return [];
  if (!SHORT_ANSWERS.has(letter) || (screen.kind === 'topic' && groupsHere(screen.topic))) return [];
  const entries = entriesOf(state, screen);
  const opens = (label: string): string => label.toLowerCase().split(/[^a-z]/, 1)[0] ?? '';
  const isOwn = (label: string): boolean =>
    entries.filter((entry) => opens(entry.label) === opens(label)).length === 1;
  // The short value counts where its word can be seen: nobody means an id that is not on the screen.
  const isSeen = ({ value, label }: Entry): boolean =>
    label.toLowerCase().includes(value.split('-', 1)[0] ?? value);
  const byBeginning = entries
    .filter(
      (entry) =>
        (entry.value.startsWith(letter) && isSeen(entry)) ||
        (opens(entry.label).startsWith(letter) && isOwn(entry.label)),
    )
    .map(({ value, label }) => ({ text: value, label }));
  const spec = screen.kind === 'topic' && !isOpening(screen.topic) ? factSpec(screen.topic) : undefined;
  const sides = spec?.kind === 'number' && spec.sides ? Object.values(spec.sides) : [];
  const bySide = sides
    .filter((side) => side.startsWith(letter))
    .map((side) => ({ text: side, label: `a distance to the ${side}` }));
  return [...byBeginning, ...bySide];
}

/** The answer to "which was meant?"; anything else is taken as an answer to the question itself. */
function resolve(state: State, screen: Screen & { kind: 'meant' }, typed: string): State {
  const below = pop(state);
  if (typed === '<') return below;
  if (typed.toLowerCase() === screen.typed) return act(below, screen.mark);
  const number = /^\d+$/.test(typed) ? Number(typed) : undefined;
  if (number === undefined) return reply(below, typed);
  const answer = screen.answers[number - 1];
  if (answer) return take(below, top(below), answer.text);
  if (number === screen.answers.length + 1) return act(below, screen.mark);
  return refuse(state, typed, [acceptedHere(state)]);
}
