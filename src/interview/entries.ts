/** Answers to numbered screens that are no facts: contradictions, offers, remedies, how a number was found. */
import { type FactId, isFactId } from '../facts/catalog.js';
import { HOWS } from '../facts/spec.js';
import { afterRemedy, changedBy } from '../reasoning/trials.js';
import { forget, give } from './answers.js';
import { accept, addNote, after, complete, refuse } from './complete.js';
import { advance, atResult, MORE_QUESTIONS } from './flow.js';
import { testLines } from './help.js';
import { offers } from './offers.js';
import { acceptedHere, entriesOf, reviewed } from './screens.js';
import { bookOf, pop, push, type Screen, type State, say, top, withBook } from './state.js';
import { matchEntry } from './typed.js';

export function takeEntry(state: State, screen: Screen, typed: string): State {
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

export function withHow(state: State, id: FactId, how: (typeof HOWS)[number]): State {
  const answer = bookOf(state).answers.get(id);
  return answer && 'value' in answer ? give(state, id, { ...answer, how }) : state;
}

const BOTH_STAND = 'How both can be right:';

export function takeClash(state: State, screen: Screen & { kind: 'clash' }, value: string): State {
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
    case 'write':
      return { ...state, write: offer.written };
    case 'end':
      return closing(state);
  }
}

/** The end; a case without a name is asked for one, once. */
export function closing(state: State): State {
  if (top(state).kind === 'name') return { ...pop(state), ending: 'finished' };
  return bookOf(state).title === undefined ? push(state, { kind: 'name' }) : { ...state, ending: 'finished' };
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
  const outdated = changedBy(bookOf(state), remedy);
  const next = forget(state, afterRemedy(bookOf(state), cause, remedy), outdated);
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
