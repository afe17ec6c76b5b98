/**
 * Phrases of the lexicon matched against words. A phrase is words in a row: `a|b` either, `a?` optional, `@name` any
 * word of a class, `=was` that very form, `..` up to three words between, `...` up to six, `....` up to twelve, `#` the quantity, `_` another one that is passed over. Every word goes through the same
 * spelling as the text. `a & b` is both in one clause, whatever their order. A match costs a bounded number of steps,
 * whatever the text.
 */

import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

interface Item {
  readonly words: ReadonlySet<string>;
  /** Forms that must be written so, of words that have several. */
  readonly forms?: ReadonlySet<string>;
  readonly optional: boolean;
  /** Most words that may stand before it. */
  readonly gap: number;
  /** A quantity fits: the one that is meant, or one that is passed over. */
  readonly quantity: boolean;
  readonly meant: boolean;
}

export interface Pattern<Meaning> {
  readonly items: readonly Item[];
  readonly meaning: Meaning;
  readonly written: string;
  /** Its items stand in any order, near to one another. */
  readonly free?: boolean;
  /** A word without which it cannot match: looked for in the sentence before anything is tried. */
  readonly need?: string;
}

export interface Match<Meaning> {
  readonly meaning: Meaning;
  /** Indices of the first and the last word. */
  readonly first: number;
  readonly last: number;
  /** Indices of the words that matched an item. */
  readonly used: readonly number[];
  /** Index of the quantity, where the phrase has one. */
  readonly quantity?: number;
}

export type Classes = ReadonlyMap<string, ReadonlySet<string>>;

const GAPS: Readonly<Record<string, number>> = { '..': 3, '...': 6, '....': 12 };
const QUANTITY = '#';
const PASSED = '_';
const FREE = '&';
const FORM = '=';
/** Farthest that words of a clause stand which are told in any order. */
const FREE_REACH = 7;

export function compile<Meaning>(written: string, meaning: Meaning, classes: Classes): Pattern<Meaning> {
  const items: Item[] = [];
  let gap = 0;
  for (const piece of piecesOf(written)) {
    if (piece === FREE) continue;
    if (piece in GAPS) {
      gap = GAPS[piece] as number;
      continue;
    }
    const optional = piece.length > 1 && piece.endsWith('?');
    const alternatives = (optional ? piece.slice(0, -1) : piece).split('|');
    const forms = alternatives.filter((each) => each.startsWith(FORM)).map((each) => each.slice(1));
    const words = wordsOf(
      alternatives.filter((each) => !each.startsWith(FORM)),
      classes,
      written,
    );
    const meant = alternatives.includes(QUANTITY);
    const quantity = meant || piece === PASSED;
    items.push({
      words,
      optional,
      gap,
      meant,
      quantity,
      ...(forms.length > 0 ? { forms: new Set(forms) } : {}),
    });
    gap = 0;
  }
  if (items.length === 0 || items.every(({ optional }) => optional))
    throw new Error(`empty phrase: ${written}`);
  const needed = items
    .slice(1)
    .find(({ words, forms, optional, quantity }) => words.size === 1 && !forms && !optional && !quantity);
  const [need] = needed?.words ?? [];
  const free = written.includes(` ${FREE} `);
  // In any order, so the rarest word leads: it is the one that is looked for.
  if (free) items.sort((a, b) => a.words.size - b.words.size);
  return { items, meaning, written, ...(free ? { free } : {}), ...(need === undefined ? {} : { need }) };
}

/** All words that fit one place of a phrase; a class alone is shared, not copied. */
function wordsOf(alternatives: readonly string[], classes: Classes, written: string): ReadonlySet<string> {
  const [first = ''] = alternatives;
  if (alternatives.length === 1 && first.startsWith('@')) return members(first.slice(1), classes, written);
  const words = new Set<string>();
  for (const each of alternatives) {
    if (each.startsWith('@')) for (const word of members(each.slice(1), classes, written)) words.add(word);
    else words.add(nameOf(each));
  }
  return words;
}

/** The text of a word that stands for a thing of several words; names with a capital are no words of their own. */
export const nameOf = (name: string): string => (/[A-Z]/.test(name) ? name : canonical(name));

/** A hyphen parts words, as it does in a text. */
const piecesOf = (written: string): string[] =>
  written
    .split(/\s+/)
    .flatMap((piece) => (piece.includes('-') && !piece.includes('|') ? piece.split('-') : [piece]))
    .filter((piece) => piece !== '');

function members(name: string, classes: Classes, written: string): ReadonlySet<string> {
  const found = classes.get(name);
  if (found === undefined) throw new Error(`unknown class @${name} in "${written}"`);
  return found;
}

/** Patterns by the words they can begin with. */
export type Index<Meaning> = ReadonlyMap<string, readonly Pattern<Meaning>[]>;

export function indexed<Meaning>(patterns: readonly Pattern<Meaning>[]): Index<Meaning> {
  const index = new Map<string, Pattern<Meaning>[]>();
  for (const pattern of patterns) {
    const starts = new Set<string>();
    for (const item of pattern.items) {
      for (const word of item.words) starts.add(word);
      for (const form of item.forms ?? []) starts.add(nameOf(form));
      if (!item.optional) break;
    }
    for (const word of starts) {
      const list = index.get(word);
      if (list) list.push(pattern);
      else index.set(word, [pattern]);
    }
  }
  return index;
}

/** Every match that begins at this word. */
export function matchesAt<Meaning>(
  words: readonly Word[],
  at: number,
  index: Index<Meaning>,
  inSentence?: ReadonlySet<string>,
): Match<Meaning>[] {
  const word = words[at] as Word;
  const found: Match<Meaning>[] = [];
  const tryAll = (patterns: readonly Pattern<Meaning>[] | undefined): void => {
    for (const pattern of patterns ?? []) {
      if (inSentence && pattern.need !== undefined && !inSentence.has(pattern.need)) continue;
      const used: number[] = [];
      const fitted: Item[] = [];
      if (
        pattern.free
          ? !gather(words, at, pattern.items, used)
          : !follow(words, at, pattern.items, 0, used, fitted, true)
      )
        continue;
      const quantity = used[fitted.findIndex(({ meant }) => meant)];
      found.push({
        meaning: pattern.meaning,
        first: used[0] as number,
        last: used.at(-1) as number,
        used,
        ...(quantity === undefined ? {} : { quantity }),
      });
    }
  };
  tryAll(index.get(word.text));
  if (isQuantity(word)) tryAll(index.get(QUANTITY));
  return found;
}

const isQuantity = (word: Word | undefined): boolean =>
  word?.quantity !== undefined || word?.number !== undefined;

/** Every other item somewhere around the first one, with nothing hard between. */
function gather(words: readonly Word[], at: number, items: readonly Item[], used: number[]): boolean {
  used.push(at);
  for (const item of items.slice(1)) {
    const place = nearestFit(words, at, item, used);
    if (place === undefined) return false;
    used.push(place);
  }
  // "No matter which … not": the denial is the complaint, however often it is said.
  for (let place = Math.min(...used); place < Math.max(...used); place++) {
    if (!used.includes(place) && items.some((item) => fits(words[place] as Word, item))) used.push(place);
  }
  used.sort((a, b) => a - b);
  return true;
}

function nearestFit(
  words: readonly Word[],
  at: number,
  item: Item,
  used: readonly number[],
): number | undefined {
  const { sentence } = words[at] as Word;
  const open = [true, true];
  for (let far = 1; far <= FREE_REACH && (open[0] || open[1]); far++) {
    for (const [side, place] of [at + far, at - far].entries()) {
      if (!open[side]) continue;
      const word = words[place];
      if (word === undefined || word.sentence !== sentence || word.hard || word.text === ',')
        open[side] = false;
      else if (fits(word, item) && !used.includes(place)) return place;
    }
  }
  return undefined;
}

/** Fits the items from `step` on at the words from `at` on; what fitted is left in `used` and `fitted`. */
function follow(
  words: readonly Word[],
  at: number,
  items: readonly Item[],
  step: number,
  used: number[],
  fitted: Item[],
  isFirst = false,
): boolean {
  const item = items[step];
  if (item === undefined) return true;
  let place = at;
  let left = isFirst ? 0 : item.gap;
  while (place < words.length) {
    const word = words[place] as Word;
    if (fits(word, item)) {
      used.push(place);
      fitted.push(item);
      if (follow(words, place + 1, items, step + 1, used, fitted)) return true;
      used.pop();
      fitted.pop();
    }
    if (isFirst && !item.optional) return false;
    if (word.hard) break;
    if (word.soft) {
      place++;
      continue;
    }
    const cost = word.kind === 'mark' ? 2 : 1;
    if (left < cost) break;
    left -= cost;
    place++;
  }
  return item.optional && follow(words, at, items, step + 1, used, fitted, isFirst);
}

function fits(word: Word, item: Item): boolean {
  return (
    item.words.has(word.text) || item.forms?.has(word.raw) === true || (item.quantity && isQuantity(word))
  );
}
