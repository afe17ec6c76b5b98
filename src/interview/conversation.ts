/**
 * The conversation as a pure machine: a state and a typed line give the next state. No terminal, no clock and
 * no file in here; whoever drives it shows `said` and the prompt, saves the book, and hands in what is typed.
 */
import { factText } from '../explain/words.js';
import { parseAnswer } from '../facts/answer.js';
import type { Answer, FactBook } from '../facts/book.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { COMPLAINT_IDS, isComplaintId } from '../facts/complaints.js';
import { plainLine, plainText, quoted } from '../facts/sanitize.js';
import { HOWS } from '../facts/spec.js';
import { problemText } from '../facts/user-error.js';
import { auditSync } from '../reasoning/audit.js';
import { makesSense } from '../reasoning/hypotheses.js';
import { afterRemedy, outdatedAnswers } from '../reasoning/tried.js';
import { earlier, forget, give, howMatters } from './answers.js';
import { advance, atResult, clashing, familyAfter, MORE_QUESTIONS, MOST_QUESTIONS } from './flow.js';
import { helpLines, marksLines, shortlistLines, testLines } from './help.js';
import { type MarkAction, markOf, markWord } from './marks.js';
import { offers } from './offers.js';
import { acceptedHere, type Entry, entriesOf, reviewed } from './screens.js';
import {
  bookOf,
  isOpening,
  OPENING,
  pop,
  push,
  type Screen,
  type Settings,
  type State,
  say,
  type Topic,
  top,
  topicInHand,
  withBook,
} from './state.js';
import { matchEntry, typedNumbers } from './typed.js';
import { whyLines } from './why.js';

/** What a case carries besides its facts when an interview on it is taken up again. */
export interface Earlier {
  readonly order: readonly Topic[];
  readonly put: readonly string[];
}

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
    audit: auditSync(book),
    history: passed,
    redo: [],
    parked: new Map(),
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

/** One typed line. */
export function reply(state: State, raw: string): State {
  const fresh: State = { ...state, said: [], draft: '' };
  const typed = plainLine(raw.slice(0, 2 * CASE_LIMITS.wordsLetters));
  if (typed === '') return enter(fresh);
  const screen = top(fresh);
  if (screen.kind === 'meant') return resolve(fresh, screen, typed);
  const mark = markOf(typed);
  if (mark) {
    const answers = couldMean(fresh, screen, mark.key);
    if (answers.length === 0) return act(fresh, mark.action);
    return push(fresh, { kind: 'meant', typed: mark.key, mark: mark.action, answers });
  }
  const word = markWord(typed);
  if (!word) return take(fresh, screen, typed);
  if (isFreeText(screen)) {
    const answers = [{ text: typed, label: `the word ${quoted(typed)} itself, as the text` }];
    return push(fresh, { kind: 'meant', typed: word.key, mark: word.action, answers });
  }
  const taken = take(fresh, screen, typed);
  return taken.draft === '' ? taken : act(fresh, word.action);
}

const isFreeText = (screen: Screen): boolean =>
  screen.kind === 'note' || screen.kind === 'place' || (screen.kind === 'topic' && screen.topic === 'words');

/**
 * Answers that begin with the letter of a mark, where a beginning is enough for an answer. A first word that
 * several lines share ("from the picture", "from behind") stands for none of them.
 */
function couldMean(state: State, screen: Screen, letter: string): { text: string; label: string }[] {
  if (screen.kind === 'review' || screen.kind === 'result') return [];
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

function refuse(state: State, typed: string, lines: readonly string[]): State {
  return { ...say(state, ...lines), draft: typed };
}

// ---------------------------------------------------------------- answers

function take(state: State, screen: Screen, typed: string): State {
  switch (screen.kind) {
    case 'topic':
      return takeTopic(state, screen.topic, typed);
    case 'note':
      return after(addNote(pop(state), screen.about, typed));
    case 'place':
      return { ...pop(state), moveTo: typed };
    default:
      return takeEntry(state, screen, typed);
  }
}

function takeTopic(state: State, topic: Topic, typed: string): State {
  if (topic === 'words') {
    const words = plainText(typed).slice(0, CASE_LIMITS.wordsLetters);
    return complete(withBook(state, { ...bookOf(state), words }), topic);
  }
  if (topic === 'complaints') return takeComplaints(state, typed);
  if (topic === 'units') return takeEntry(state, { kind: 'topic', topic }, typed);
  return takeFact(state, topic, typed);
}

function takeComplaints(state: State, typed: string): State {
  const parts = typedNumbers(typed) ?? typed.split(/,|;| and /).map((part) => part.trim());
  const entries = COMPLAINT_IDS.map((id) => ({ value: id, label: '' }));
  const found: string[] = [];
  for (const part of parts.filter((each) => each !== '')) {
    const match = matchEntry(part, entries);
    if ('refused' in match) return refuse(state, typed, [match.refused, acceptedHere(state)]);
    found.push(match.value);
  }
  const complaints = COMPLAINT_IDS.filter((id) => isComplaintId(id) && found.includes(id));
  const changed = complaints.join() !== bookOf(state).complaints.join();
  const book = { ...bookOf(state), complaints };
  return complete(
    edited(withBook(state, book), changed && bookOf(state).complaints.length > 0),
    'complaints',
  );
}

function takeFact(state: State, id: FactId, typed: string): State {
  const book = bookOf(state);
  const spec = factSpec(id);
  const result = parseAnswer(id, typed, { units: book.units });
  if ('refused' in result) {
    const { what, accepted, example } = result.refused;
    if (spec.kind === 'choice') return refuse(state, typed, [`${sentence(what)} ${acceptedHere(state)}`]);
    return refuse(state, typed, [problemText({ where: spec.label, what, accepted, example })]);
  }
  if (spec.kind === 'file' && 'value' in result.answer && book.folder === undefined) {
    const what = 'this interview has no case file yet, so there is no folder to look for it in';
    return refuse(state, typed, [problemText({ where: spec.label, what, accepted: '? for not known' })]);
  }
  if (result.remark !== undefined) {
    return push(state, {
      kind: 'sure',
      fact: id,
      answer: result.answer,
      remark: `You said ${result.remark}`,
    });
  }
  const taken =
    result.bareUnit === undefined ? '' : ` (taken in ${UNIT_NAMES[result.bareUnit] ?? result.bareUnit})`;
  return accept(state, id, result.answer, `${result.echo}${taken}`);
}

const UNIT_NAMES: Readonly<Record<string, string>> = { m: 'meters', ft: 'feet', in: 'inches' };

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** Puts an answer into the book, says how it was understood, and asks how it was found where that matters. */
function accept(state: State, id: FactId, answer: Answer, echo?: string): State {
  const before = earlier(state, id);
  const isChange = before !== undefined && !sameAnswer(before, answer);
  const shown = echo ?? ('value' in answer ? factText(id, answer.value, bookOf(state).units) : NOT_KNOWN);
  const given = give(say(state, `= ${shown}`), id, answer);
  const done = complete(edited(given, isChange), id, isChange || before === undefined);
  return done;
}

const NOT_KNOWN = 'not known: noted as something to find out';

function sameAnswer(a: Answer, b: Answer): boolean {
  if (!('value' in a) || !('value' in b)) return !('value' in a) && !('value' in b);
  return a.value === b.value;
}

/** An edited answer may make more questions needed: the bound starts anew. */
const edited = (state: State, isEdit: boolean): State => (isEdit ? { ...state, most: state.cap } : state);

/** The question on top is answered: it enters the history, or what was interrupted goes on. */
function complete(state: State, topic: Topic, isNew = true): State {
  const isBase = state.screens.length === 1;
  const history = state.history.filter((each) => each !== topic);
  const family = isOpening(topic) ? {} : familyAfter(state, topic);
  const answered: State = isBase ? { ...state, history: [...history, topic], ...family } : pop(state);
  const asksHow = isNew && !isOpening(topic) && howMatters(answered, topic);
  if (!asksHow) return after(answered, isBase);
  return push(answered, { kind: 'how', fact: topic });
}

/** Goes on once nothing interrupts: with the question in hand where it still stands, or with the next one. */
function after(state: State, baseAnswered = isAnswered(state)): State {
  if (state.screens.length > 1) return state;
  const [base] = state.screens;
  if (base.kind === 'result') return atResult(state, 'With that, the result is:');
  if (base.kind !== 'topic' || baseAnswered) return advance(state);
  if (!isOpening(base.topic) && !makesSense(bookOf(state), base.topic)) return advance(state);
  return clashing(state);
}

function isAnswered(state: State): boolean {
  const [base] = state.screens;
  return base.kind === 'topic' && state.history.includes(base.topic);
}

function addNote(state: State, about: string, text: string): State {
  const book = bookOf(state);
  if (book.notes.length >= CASE_LIMITS.notes) return say(state, 'No more notes fit into this case.');
  const note = plainText(about === '' ? text : `${about} ${text}`).slice(0, CASE_LIMITS.noteLetters);
  return say(withBook(state, { ...book, notes: [...book.notes, note] }), '= noted');
}

// ---------------------------------------------------------------- numbered screens

function takeEntry(state: State, screen: Screen, typed: string): State {
  const entries = entriesOf(state, screen);
  const byNumberOnly = screen.kind === 'review' || screen.kind === 'result';
  const match = matchEntry(typed, entries, byNumberOnly);
  if ('refused' in match) return refuse(state, typed, [match.refused, acceptedHere(state)]);
  const { value } = match;
  switch (screen.kind) {
    case 'topic': {
      const units = value === 'imperial' ? 'imperial' : 'metric';
      return complete({ ...withBook(state, { ...bookOf(state), units }), unitsKnown: true }, 'units');
    }
    case 'sure':
      return value === 'yes' ? accept(pop(state), screen.fact, screen.answer) : pop(state);
    case 'how': {
      const how = HOWS.find((each) => each === value) ?? 'recalled';
      return after(withHow(pop(state), screen.fact, how));
    }
    case 'clash':
      return takeClash(pop(state), screen, value);
    case 'review': {
      const topic = reviewed(state).find((each) => each === value);
      return topic === undefined ? state : push(pop(state), { kind: 'topic', topic });
    }
    case 'result':
      return takeOffer(state, value);
    case 'cured':
      return takeCured(pop(state), screen, value === 'gone');
    default:
      return state;
  }
}

function withHow(state: State, id: FactId, how: (typeof HOWS)[number]): State {
  const answer = bookOf(state).answers.get(id);
  return answer && 'value' in answer ? give(state, id, { ...answer, how }) : state;
}

const BOTH_STAND = 'How both can be right:';

function takeClash(state: State, screen: Screen & { kind: 'clash' }, value: string): State {
  if (value === 'open') return after(say(state, '= left open'));
  if (value === 'both') return push(state, { kind: 'note', about: BOTH_STAND });
  const topic = screen.topics.find((each) => `again-${each}` === value);
  return topic === undefined ? state : push(state, { kind: 'topic', topic });
}

function takeOffer(state: State, id: string): State {
  const offer = offers(state).find((each) => each.id === id);
  if (!offer) return state;
  switch (offer.kind) {
    case 'test':
      if (!isFactId(offer.test)) return state;
      return push(say(state, ...testLines(offer.test)), { kind: 'topic', topic: offer.test });
    case 'remedy':
      return push(state, { kind: 'cured', cause: offer.cause, remedy: offer.remedy.id });
    case 'more': {
      const cap = state.history.length + MORE_QUESTIONS;
      return advance({ ...state, eager: true, cap, most: cap });
    }
    case 'end':
      return { ...state, ending: 'finished' };
  }
}

/** After a remedy: cured is noted; otherwise it is remembered as tried, and what it changed is asked again. */
function takeCured(state: State, screen: Screen & { kind: 'cured' }, isGone: boolean): State {
  const cause = state.audit.causes.find(({ id }) => id === screen.cause);
  const remedy = cause?.remedies.find(({ id }) => id === screen.remedy);
  if (!cause || !remedy) return state;
  if (isGone) {
    const noted = addNote(state, '', `Carried out, and the trouble is gone: ${remedy.title}.`);
    return say({ ...noted, reportDue: true }, remedy.verify);
  }
  const book = afterRemedy(bookOf(state), cause, remedy);
  const outdated = outdatedAnswers({ ...bookOf(state), tried: book.tried }, [cause]);
  const next = forget(state, book, outdated);
  const asked: State = {
    ...next,
    redo: [...outdated],
    history: next.history.filter((t) => !outdated.includes(t as FactId)),
  };
  if (outdated.length === 0) return atResult(asked, 'Remembered as tried. With that, the result is:');
  const cap = asked.history.length + outdated.length + MORE_QUESTIONS;
  return advance(
    say(
      { ...asked, cap, most: cap },
      'Remembered as tried. It may have changed some answers, so they are asked again.',
    ),
  );
}

// ---------------------------------------------------------------- marks and Enter

function act(state: State, action: MarkAction): State {
  const screen = top(state);
  if (screen.kind === 'meant' && action !== 'back') return act(pop(state), action);
  switch (action) {
    case 'unknown':
      return unknown(state, screen);
    case 'back':
      return back(state);
    case 'help':
      return say(state, ...helpLines(state, screen));
    case 'why':
      return say(state, ...whyHere(state, screen));
    case 'review':
      return screen.kind === 'review' ? state : push(state, { kind: 'review' });
    case 'shortlist':
      return say(state, ...shortlistLines(state));
    case 'note':
      return screen.kind === 'note' ? state : push(state, { kind: 'note', about: '' });
    case 'save':
      return { ...state, ending: 'saved' };
    case 'finish':
      return finish(state, screen);
  }
}

function unknown(state: State, screen: Screen): State {
  switch (screen.kind) {
    case 'topic':
      return isOpening(screen.topic)
        ? complete(state, screen.topic)
        : accept(state, screen.topic, { how: 'unknown' });
    case 'sure':
      return accept(pop(state), screen.fact, { how: 'unknown' });
    case 'how':
      return after(withHow(pop(state), screen.fact, 'recalled'));
    case 'clash':
      return takeClash(pop(state), screen, 'open');
    case 'review':
    case 'note':
    case 'place':
      return after(pop(state));
    case 'cured':
      return say(pop(state), 'Then listen for an evening and say so another time.');
    default:
      return say(state, acceptedHere(state));
  }
}

/** One step back: out of an interruption, or to the question before, whose answer stands until it is changed. */
function back(state: State): State {
  if (state.screens.length > 1) return after(pop(state));
  if (state.screens[0].kind === 'result' && state.screens[0].over !== undefined) return advance(state);
  const last = state.history.at(-1);
  if (last === undefined) return say(state, 'This is the first question.');
  const [base] = state.screens;
  const isKept = base.kind === 'topic' && !isOpening(base.topic) && bookOf(state).answers.has(base.topic);
  const redo = isKept && base.kind === 'topic' ? [base.topic, ...state.redo] : state.redo;
  return { ...state, screens: [{ kind: 'topic', topic: last }], history: state.history.slice(0, -1), redo };
}

function whyHere(state: State, screen: Screen): string[] {
  const topic = topicInHand(state);
  if (screen.kind === 'clash')
    return ['Two answers that cannot both be right would count twice, once for each side.'];
  if (screen.kind === 'result' || topic === undefined)
    return ['The diagnosis stands; a test or a remedy can still move it.'];
  if (topic === 'words')
    return ['What an owner says first is what must be better at the end; it goes into the report.'];
  if (topic === 'complaints')
    return ['Each cause makes some complaints and not others; this is where the search begins.'];
  if (topic === 'units')
    return ['A number without a unit is taken in it, and lengths are written in it first.'];
  return whyLines(state, topic);
}

function finish(state: State, screen: Screen): State {
  if (screen.kind === 'result') return { ...state, ending: 'finished' };
  return atResult(state, 'The result now, as wished; what was not asked counts as not known.');
}

/** Enter alone keeps what stands there, or says what can be typed. */
function enter(state: State): State {
  const screen = top(state);
  switch (screen.kind) {
    case 'topic':
      return enterTopic(state, screen.topic);
    case 'clash':
      return takeClash(pop(state), screen, 'open');
    case 'review':
    case 'note':
    case 'place':
      return after(pop(state));
    case 'result':
      return { ...state, ending: 'finished' };
    default:
      return say(state, acceptedHere(state));
  }
}

function enterTopic(state: State, topic: Topic): State {
  const nothing = say(state, acceptedHere(state), ...marksLines());
  if (topic === 'words') return complete(state, topic);
  if (topic === 'complaints') return bookOf(state).complaints.length > 0 ? complete(state, topic) : nothing;
  if (topic === 'units') return state.unitsKnown ? complete(state, topic) : nothing;
  const kept = earlier(state, topic);
  return kept === undefined ? nothing : accept(state, topic, kept);
}
