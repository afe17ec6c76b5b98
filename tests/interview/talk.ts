/** A conversation held by typing lines, without terminal or disk. */
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { type FactId, factSpec } from '../../src/facts/catalog.js';
import { begin, reply, stepBack } from '../../src/interview/conversation.js';
import { promptOf } from '../../src/interview/screens.js';
import { bookOf, type Settings, type State, topicInHand } from '../../src/interview/state.js';

export const SETTINGS: Settings = { full: false, now: () => 0 };
export const ESC = '\u001b';

export const type = (state: State, ...lines: readonly string[]): State =>
  lines.reduce((at, line) => (line === ESC ? stepBack(at) : reply(at, line)), state);

/** After the opening: no words, one complaint in two steps, feet. */
export function opened(settings: Settings = SETTINGS): State {
  return type(begin(EMPTY_BOOK, settings), '', '1', '1', '1');
}

/** The question `id` in hand, after the opening. */
export function asking(id: FactId, book: FactBook = EMPTY_BOOK): State {
  const parents = Object.entries(factSpec(id).askedWhen ?? {});
  const ready = parents.reduce<FactBook>(
    (b, [parent, accepted]) => withAnswer(b, parent as FactId, { value: accepted[0] ?? '', how: 'read' }),
    { ...book, complaints: ['dull'] },
  );
  const start = begin(ready, SETTINGS, { order: ['words', 'complaints', 'units'], put: [] });
  return { ...start, screens: [{ kind: 'topic', topic: id }], said: [], draft: '' };
}

export const inHand = (state: State): string | undefined => topicInHand(state);
export const answer = (state: State, id: FactId): unknown => {
  const given = bookOf(state).answers.get(id);
  return given && ('value' in given ? given.value : 'unknown');
};
export const saidBy = (state: State): string => state.said.join('\n');
export const askOf = (state: State): string => promptOf(state).ask;
