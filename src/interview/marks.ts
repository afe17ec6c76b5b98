/** The marks that may be typed at every question, and what they stand for. */

export type MarkAction =
  | 'unknown'
  | 'back'
  | 'help'
  | 'why'
  | 'review'
  | 'shortlist'
  | 'note'
  | 'save'
  | 'finish';

interface Mark {
  readonly key: string;
  readonly action: MarkAction;
  /** One or two words for the line under each question. */
  readonly short: string;
  /** What it does, for the full list. */
  readonly long: string;
  /** Whole words that do the same where they are no answer. */
  readonly words: readonly string[];
}

export const MARKS: readonly Mark[] = [
  {
    key: '?',
    action: 'unknown',
    short: "don't know",
    long: 'I don’t know; the question is put on the list of things to find out',
    words: [],
  },
  {
    key: '<',
    action: 'back',
    short: 'back',
    long: 'back to the question before (Esc does the same)',
    words: ['back'],
  },
  { key: 'h', action: 'help', short: 'how', long: 'how to find out', words: ['how', 'help'] },
  { key: 'w', action: 'why', short: 'why', long: 'why this is asked', words: ['why'] },
  {
    key: 'r',
    action: 'review',
    short: 'review',
    long: 'review and change earlier answers',
    words: ['review', 'change'],
  },
  {
    key: 'l',
    action: 'shortlist',
    short: 'list',
    long: 'the shortlist of causes so far',
    words: ['list', 'shortlist'],
  },
  { key: 'n', action: 'note', short: 'note', long: 'add a note', words: ['note'] },
  {
    key: 's',
    action: 'save',
    short: 'save',
    long: 'save and stop; go on another time',
    words: ['save', 'stop', 'quit', 'exit', 'q'],
  },
  {
    key: 'f',
    action: 'finish',
    short: 'finish',
    long: 'finish now with the best diagnosis so far',
    words: ['finish', 'done'],
  },
];

/** The mark that was typed as its single sign. */
export function markOf(typed: string): Mark | undefined {
  const key = typed.toLowerCase();
  return MARKS.find((mark) => mark.key === key);
}

/** The mark that was spelled out. */
export function markWord(typed: string): Mark | undefined {
  const word = typed.toLowerCase();
  return MARKS.find((mark) => mark.words.includes(word));
}
