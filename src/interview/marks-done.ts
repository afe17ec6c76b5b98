/** What each mark does, and Enter alone. */

import { earlier } from './answers.js';
import { accept, after, complete } from './complete.js';
import { closing, named, takeClash, withHow } from './entries.js';
import { advance, atResult } from './flow.js';
import { helpLines, marksLines, shortlistLines } from './help.js';
import type { MarkAction } from './marks.js';
import { acceptedHere } from './screens.js';
import {
  bookOf,
  isOpening,
  pop,
  push,
  type Screen,
  type State,
  say,
  type Topic,
  top,
  topicInHand,
} from './state.js';
import { tried } from './tried.js';
import { keepUnderstood } from './understood.js';
import { whyLines } from './why.js';

export function act(state: State, action: MarkAction): State {
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
    case 'among':
    case 'review':
    case 'note':
    case 'place':
      return after(pop(state));
    case 'understood':
      return after(pop(state));
    case 'name':
      return named(state, screen);
    case 'stays':
      return tried(state, screen);
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
  if (screen.kind === 'result' || screen.kind === 'name') return closing(state);
  return atResult(state, 'The result now, as wished; what was not asked counts as not known.');
}

/** Enter alone keeps what stands there, or says what can be typed. */
export function enter(state: State): State {
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
    case 'understood':
      return keepUnderstood(state, screen);
    case 'result':
      return closing(state);
    case 'name':
      return named(state, screen);
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
