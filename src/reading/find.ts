/** Phrases of the lexicon found in a text: things of several words first, then what is said of them. */
import { type Lexicon, lexicon, type Meaning } from './lexicon.js';
import { type Index, type Match, matchesAt } from './pattern.js';
import { partsOf } from './quantities.js';
import { sentencesOf, type Word } from './sentences.js';
import { tokensOf } from './tokens.js';

export interface FoundText {
  readonly words: readonly Word[];
  readonly matches: readonly Match<Meaning>[];
  readonly lexicon: Lexicon;
}

/** Longest text read; a book is no post. */
export const MOST_LETTERS = 120_000;

export function findIn(text: string): FoundText {
  const known = lexicon();
  const words = joined(sentencesOf(partsOf(tokensOf(text.slice(0, MOST_LETTERS)))), known.compounds);
  const sentences = textsOf(words);
  const all: Match<Meaning>[] = [];
  for (let at = 0; at < words.length; at++) {
    for (const match of matchesAt(words, at, known.meanings, sentences.get(words[at]?.sentence ?? 0)))
      all.push(match);
  }
  return { words, matches: withoutIdioms(all), lexicon: known };
}

/** The words of each sentence; no phrase goes on in the next one. */
function textsOf(words: readonly Word[]): Map<number, Set<string>> {
  const sentences = new Map<number, Set<string>>();
  for (const { sentence, text } of words) {
    const texts = sentences.get(sentence);
    if (texts) texts.add(text);
    else sentences.set(sentence, new Set([text]));
  }
  return sentences;
}

/** Words that name one thing become one word: the longest name first. */
function joined(words: readonly Word[], compounds: Index<string>): Word[] {
  const out: Word[] = [];
  let at = 0;
  /** "Left and right" begins no clause with its "and". */
  let undone = 0;
  while (at < words.length) {
    const first = words[at] as Word;
    const clause = first.clause - undone;
    const longest = matchesAt(words, at, compounds).sort((a, b) => b.last - a.last)[0];
    if (longest === undefined) {
      out.push({ ...first, clause });
      at++;
      continue;
    }
    const last = words[longest.last] as Word;
    undone += last.clause - first.clause;
    out.push({ ...first, clause, kind: 'word', text: longest.meaning, raw: longest.meaning, end: last.end });
    at = longest.last + 1;
  }
  return out;
}

/** Nothing is read from the words of an idiom, unless a longer phrase holds all of them. */
function withoutIdioms(matches: readonly Match<Meaning>[]): Match<Meaning>[] {
  const owner = new Map<number, Match<Meaning>>();
  for (const match of matches) {
    if (match.meaning.kind === 'idiom') for (const at of match.used) owner.set(at, match);
  }
  return matches.filter((match) => {
    if (match.meaning.kind === 'idiom') return false;
    const idioms = new Set(match.used.flatMap((at) => owner.get(at) ?? []));
    return [...idioms].every(
      (idiom) => match.used.length > idiom.used.length && idiom.used.every((at) => match.used.includes(at)),
    );
  });
}
