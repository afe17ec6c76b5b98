/** A text cut into words, numbers and marks, each with its place. One pass, nothing that could backtrack. */
import { isDigit, readNumber } from '../facts/numerals.js';
import { canonical } from './spelling.js';

export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  /** One spelling for all ways to write it; a mark is itself; a number as it was written. */
  readonly text: string;
  /** As written, in lower case and without apostrophes. */
  readonly raw: string;
  /** UTF-16 units from the start of the text. */
  readonly start: number;
  readonly end: number;
  /** Its value, also of a number spelled out. */
  readonly number?: number;
  /** Written with a capital. */
  readonly capital?: boolean;
  /** White space stands before it. */
  readonly spaced: boolean;
}

/** Keyboards have many apostrophes, quotes and dashes; each is brought to one. Every one of them is one unit long. */
const FOLDED: ReadonlyMap<string, string> = new Map([
  ...Array.from('′’‘`´ʹ').map((mark): [string, string] => [mark, "'"]),
  ...Array.from('″”“„ʺ«»').map((mark): [string, string] => [mark, '"']),
  ...Array.from('−–‒﹣－').map((mark): [string, string] => [mark, '-']),
  ['—', '—'],
  ['…', '…'],
  ['×', 'x'],
  ['≈', '~'],
  ['º', '°'],
]);

const FRACTIONS: ReadonlyMap<string, number> = new Map([
  ['½', 1 / 2],
  ['¼', 1 / 4],
  ['¾', 3 / 4],
  ['⅓', 1 / 3],
  ['⅔', 2 / 3],
  ['⅛', 1 / 8],
]);

const isLetter = (letter: string): boolean =>
  (letter >= 'a' && letter <= 'z') ||
  (letter > '\u00bf' && letter !== '×' && letter.toLowerCase() !== letter.toUpperCase());

export function tokensOf(text: string): Token[] {
  const lower = folded(text);
  const tokens: Token[] = [];
  let at = 0;
  let spaced = true;
  const push = (token: Omit<Token, 'spaced'>): void => {
    tokens.push({ ...token, spaced });
    at = token.end;
    spaced = false;
  };
  while (at < lower.length) {
    const letter = lower[at] as string;
    if (letter === '\n') {
      push({ kind: 'mark', text: '\n', raw: '\n', start: at, end: at + 1 });
      spaced = true;
    } else if (letter <= ' ' || letter === '\u00a0') {
      at++;
      spaced = true;
    } else if (
      isDigit(letter) ||
      FRACTIONS.has(letter) ||
      (letter === '.' && isDigit(lower[at + 1] ?? '') && spaced)
    ) {
      push(numberAt(lower, at));
    } else if (isLetter(letter)) {
      push({ ...wordAt(lower, at), capital: text[at] !== lower[at] });
    } else {
      push({ kind: 'mark', text: letter, raw: letter, start: at, end: at + 1 });
    }
  }
  return tokens;
}

/** Lower case and one mark for its kind, letter by letter, so that every place stays what it was. */
function folded(text: string): string {
  let out = '';
  for (let at = 0; at < text.length; at++) {
    const letter = text[at] as string;
    const small = letter.toLowerCase();
    out += FOLDED.get(letter) ?? (small.length === 1 ? small : letter);
  }
  return out;
}

function wordAt(lower: string, start: number): Omit<Token, 'spaced'> {
  let end = start;
  while (isLetter(lower[end] ?? '') || (lower[end] === "'" && isLetter(lower[end + 1] ?? ''))) end++;
  // "We're" is no "were".
  const written = lower.slice(start, end);
  const raw = written === "we're" ? 'we' : written.replaceAll("'", '');
  return { kind: 'word', text: canonical(raw), raw, start, end };
}

/** The longest numeral there is: 12,345.67 or 10 15/16. */
const LONGEST_NUMERAL = 24;
/** What inches are split into; 9/14 is a date and 400/2800 two numbers. */
const SPLITS = new Set(['2', '3', '4', '8', '16']);

function numberAt(lower: string, start: number): Omit<Token, 'spaced'> {
  const kind = 'number';
  const sign = lower[start] as string;
  const part = FRACTIONS.get(sign);
  if (part !== undefined) return { kind, text: sign, raw: sign, start, end: start + 1, number: part };
  let ahead = lower.slice(start, start + LONGEST_NUMERAL);
  const slash = ahead.indexOf('/');
  if (slash > 0 && !SPLITS.has(digitsAt(ahead, slash + 1))) ahead = ahead.slice(0, slash);
  const read = readNumber(ahead, 0);
  let end = start + (typeof read === 'string' ? dottedLength(ahead) : read.end);
  const raw = lower.slice(start, end);
  if (typeof read === 'string') return { kind, text: raw, raw, start, end };
  let number = read.value;
  const after = FRACTIONS.get(lower[end] ?? '') ?? 0;
  if (after > 0 && read.whole) {
    number += after;
    end++;
  }
  return { kind, text: raw, raw, start, end, number };
}

function digitsAt(text: string, start: number): string {
  let end = start;
  while (isDigit(text[end] ?? '')) end++;
  return text.slice(start, end);
}

/** Digits with points or commas between them that are no numeral: 7.2.4. */
function dottedLength(text: string): number {
  let end = 1;
  while (
    isDigit(text[end] ?? '') ||
    ((text[end] === '.' || text[end] === ',') && isDigit(text[end + 1] ?? ''))
  )
    end++;
  return end;
}
