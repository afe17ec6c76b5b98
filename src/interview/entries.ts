/** Answers to numbered screens that are no facts: contradictions, offers, remedies, how a number was found. */
import type { Outcome } from '../facts/acts.js';
import type { FactId } from '../facts/catalog.js';
import { isComplaintId } from '../facts/complaints.js';
import { HOWS } from '../facts/spec.js';
import { give } from './answers.js';
import { accept, after, complete, refuse } from './complete.js';
import { advance, MORE_QUESTIONS } from './flow.js';
import { testLines } from './help.js';
import { offers } from './offers.js';
import { acceptedHere, entriesOf, reviewed } from './screens.js';
import { bookOf, pop, push, type Screen, type State, say, top, withBook } from './state.js';
import { takeCured, tried } from './tried.js';
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
    case 'cured': {
      const [outcome, complaint = ''] = value.split(' ');
      return takeCured(state, screen, outcome as Outcome, isComplaintId(complaint) ? complaint : undefined);
    }
    case 'stays':
      return tried(state, screen, value === 'yes');
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
      return push(say(state, ...testLines(offer.test)), { kind: 'topic', topic: offer.test });
    case 'remedy':
      return push(state, { kind: 'cured', cause: offer.cause, remedy: offer.remedy.id });
    case 'record':
      return say(state, ...testLines('polarityMeasured'));
    case 'more': {
      const cap = state.history.length + MORE_QUESTIONS;
      return advance({ ...state, eager: true, cap, most: cap });
    }
    case 'write':
      return bookOf(state).title === undefined && !state.nameless
        ? push(state, { kind: 'name', write: offer.written })
        : { ...state, write: offer.written };
    case 'end':
      return closing(state);
  }
}

/** The end; a case without a name is asked for one, once. */
export function closing(state: State): State {
  if (top(state).kind === 'name') return { ...pop(state), ending: 'finished' };
  const isAsked = bookOf(state).title === undefined && !state.nameless;
  return isAsked ? push(state, { kind: 'name' }) : { ...state, ending: 'finished' };
}

/** The name is given or not: what waited for it goes on. */
export function named(state: State, { write }: Screen & { kind: 'name' }, title?: string): State {
  const below = pop(state);
  const book = bookOf(below);
  const filed = title === undefined ? { ...below, nameless: true } : withBook(below, { ...book, title });
  return write === undefined ? { ...filed, ending: 'finished' } : { ...filed, write };
}
