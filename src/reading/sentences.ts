/** Where sentences and clauses end. */
import type { Part } from './quantities.js';

/** A part of the text with its sentence and its clause, both counted from 0. */
export interface Word extends Part {
  readonly sentence: number;
  readonly clause: number;
  /** A mark that may stand inside a phrase without breaking it: quotes, dashes, a colon. */
  readonly soft: boolean;
  /** Nothing that is said of one thing goes on behind it. */
  readonly hard: boolean;
}

const ENDS = new Set(['.', '!', '?', '…']);
const SOFT = new Set([
  '"',
  "'",
  '-',
  '/',
  '=',
  ':',
  '>',
  '&',
  '@',
  '*',
  '_',
  '~',
  '(',
  '[',
  '<',
  '+',
  '%',
  '#',
  '`',
]);
const CLAUSE = new Set([',', ';', ':', '(', ')', '—', '[', ']', '\n', '>']);
const HARD_WORDS = new Set('but whereas while although though however except unless yet'.split(' '));
/** "Anything but dull", "for a while" part nothing. */
const JOINED = new Set(['anything but', 'nothing but', 'all but', 'a while', 'not yet', 'as yet']);
const CLAUSE_WORDS = new Set(
  'because so then when where which until if since after before as who and or once'.split(' '),
);
/** Short forms whose point ends nothing. */
const SHORT = new Set(
  'approx ca dist ft in no st dr mr mrs cust vs etc eg ie min max resp incl xmas re tel nr'.split(' '),
);

/** A capital behind these begins no sentence. */
const TITLES = new Set('dr st mr mrs vs cust approx ca re'.split(' '));

export function sentencesOf(parts: readonly Part[]): Word[] {
  let sentence = 0;
  let clause = 0;
  return parts.map((part, at) => {
    const isEnd = endsSentence(parts, at);
    const isHard =
      isEnd ||
      part.text === ';' ||
      (HARD_WORDS.has(part.raw) && !JOINED.has(`${parts[at - 1]?.raw} ${part.raw}`));
    const isBreak = isHard || CLAUSE.has(part.text) || (part.kind === 'word' && CLAUSE_WORDS.has(part.raw));
    if (isBreak && part.kind === 'word') clause++;
    const word = {
      ...part,
      sentence,
      clause,
      soft: part.kind === 'mark' && SOFT.has(part.text),
      hard: isHard,
    };
    if (isEnd) sentence++;
    if (isBreak && part.kind !== 'word') clause++;
    return word;
  });
}

/** Lines of prose are as long as the paper; a shorter one is an entry of a list. */
const PROSE_LETTERS = 60;

function isShortLine(parts: readonly Part[], end: number): boolean {
  const last = parts[end] as Part;
  for (let at = end - 1; at >= 0 && last.start - (parts[at] as Part).start < PROSE_LETTERS; at--)
    if ((parts[at] as Part).text === '\n' || at === 0) return true;
  return false;
}

function endsSentence(parts: readonly Part[], at: number): boolean {
  const { text } = parts[at] as Part;
  const next = parts[at + 1];
  if (text === '\n')
    return (
      next === undefined ||
      next.text === '\n' ||
      next.kind === 'number' ||
      next.text === '-' ||
      next.text === '*' ||
      (next.capital === true && isShortLine(parts, at))
    );
  if (!ENDS.has(text) || (next !== undefined && !next.spaced && next.kind !== 'mark')) return false;
  const before = parts[at - 1]?.raw ?? '';
  const isShort = SHORT.has(before) && !(next?.capital && !TITLES.has(before));
  return !(text === '.' && isShort && next?.kind !== 'mark' && next !== undefined);
}
