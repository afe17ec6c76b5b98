/**
 * A sentence typed at a question. The question says what is talked about, so a word is enough that would mean
 * nothing in a post; whatever else the sentence tells is left for the reading.
 */
import type { Answer, UnitSystem } from '../facts/book.js';
import { type ChoiceFactId, type FactId, factSpec, type NumberFactId } from '../facts/catalog.js';
import type { ChoiceSpec, NumberSpec } from '../facts/spec.js';
import { ANSWER_WORDS } from '../facts/words/answers.js';
import { OPPOSITES } from '../facts/words/opposites.js';
import { isDenied } from './denial.js';
import { findIn } from './find.js';
import { type Meaning, phrasesOf } from './lexicon.js';
import { type Match, matchesAt } from './pattern.js';
import { readText } from './read.js';
import { isHedged } from './scope.js';
import type { Word } from './sentences.js';
import { valueIn } from './values.js';

const NOT_KNOWN = new Set(
  'dunno|idk|unknown|unsure|no idea|no clue|not sure|dont know|do not know|i dont know|i do not know|cant say|cannot say|cant tell|no idea sorry|who knows|ive no idea|i have no clue|no way to know|how would i know|how should i know|never checked|havent checked|not known|i have no idea|couldnt say|beats me|tbd|not sure tbh|no idea tbh'.split(
    '|',
  ),
);
/** A sentence this long is no bare "don't know". */
const MOST_WORDS_OF_NOT_KNOWN = 6;

/** The answer to this question in the words of people; undefined where the sentence does not tell it. */
export function answerIn(typed: string, id: FactId, units: UnitSystem): Answer | undefined {
  if (isNotKnown(typed)) return { how: 'unknown' };
  const spec = factSpec(id);
  const { taken } = readText(typed);
  const told = taken.find(({ fact, negated }) => fact === id && !negated);
  if (told && typeof told.value !== 'boolean') return { value: told.value, how: told.how };
  // "I have only the one chair" tells no seat with the trouble: it says that nobody can compare seats.
  if (taken.some(({ fact, value }) => spec.pointlessWhen?.[fact]?.includes(String(value)))) return undefined;
  if (spec.kind === 'choice') return choiceIn(typed, id as ChoiceFactId, spec);
  return spec.kind === 'number' ? numberIn(typed, id as NumberFactId, spec, units) : undefined;
}

const wordsOf = (typed: string): string[] =>
  typed
    .toLowerCase()
    .replaceAll(/['’]/g, '')
    .split(/[^a-z]+/)
    .filter((word) => word !== '');

const beginsNotKnown = (words: readonly string[]): boolean =>
  words.some((_, place) => NOT_KNOWN.has(words.slice(0, place + 1).join(' ')));

function isNotKnown(typed: string): boolean {
  const words = wordsOf(typed);
  return words.length <= MOST_WORDS_OF_NOT_KNOWN && beginsNotKnown(words);
}

function numberIn(typed: string, id: NumberFactId, spec: NumberSpec, units: UnitSystem): Answer | undefined {
  const { words } = findIn(typed);
  const values = words.flatMap((_, at) => valueIn(words, at, id, units) ?? []);
  const [only] = values;
  if (only === undefined || values.length > 1) return undefined;
  return { value: only.value, how: only.approximate || isHedged(words) ? 'guessed' : spec.usually };
}

function choiceIn(typed: string, id: ChoiceFactId, spec: ChoiceSpec): Answer | undefined {
  const found = findIn(typed);
  const { words } = found;
  const short = phrasesOf(shortWords(id, spec), id);
  const matches = [
    ...found.matches.filter(({ meaning }) => meaning.kind === 'choice' && meaning.fact === id),
    ...words.flatMap((_, at) => matchesAt(words, at, short)),
  ];
  const values = new Map<string, number>();
  for (const match of matches) {
    const value = meantBy(words, match, id);
    if (value !== undefined) values.set(value, Math.max(values.get(value) ?? 0, match.used.length));
  }
  const most = Math.max(0, ...values.values());
  const best = [...values].filter(([, size]) => size === most).map(([value]) => value);
  // "No idea, how would I hear that" says no to nothing.
  if (best.length === 0 && beginsNotKnown(wordsOf(typed))) return { how: 'unknown' };
  const [value] = best.length === 0 ? byYesOrNo(typed, spec) : best;
  if (value === undefined || best.length > 1) return undefined;
  return { value, how: isHedged(words) ? 'guessed' : spec.usually };
}

/** The words for a bare answer, and each choice in its own: "probably small" names one of the choices. */
function shortWords(id: ChoiceFactId, { choices, alsoCalled }: ChoiceSpec): Record<string, string> {
  const more: Readonly<Record<string, string>> = ANSWER_WORDS[id] ?? {};
  return Object.fromEntries(
    Object.entries(choices).map(([value, label]): [string, string] => {
      const names = [value, label, ...(alsoCalled?.[value] ?? [])].map(plainWords);
      return [value, [...names, more[value] ?? ''].filter((each) => each !== '').join('; ')];
    }),
  );
}

const plainWords = (text: string): string => wordsOf(text).join(' ');

function meantBy(words: readonly Word[], match: Match<Meaning>, id: ChoiceFactId): string | undefined {
  if (match.meaning.kind !== 'choice') return undefined;
  const { value } = match.meaning;
  if (!isDenied(words, match)) return value;
  return (OPPOSITES as Readonly<Record<string, Readonly<Record<string, string>>>>)[id]?.[value];
}

const YES = new Set(['yes', 'yeah', 'yep', 'yup', 'sure', 'ja', 'aye', 'correct', 'y']);
const NO = new Set(['no', 'nope', 'nah', 'nein', 'none', 'not']);
const YES_VALUES = new Set(['yes', 'on', 'present']);
const NO_VALUES = new Set(['no', 'off', 'none']);

/** "Yes" where one choice says yes, by its value or by how its line begins. */
function byYesOrNo(typed: string, { choices }: ChoiceSpec): string[] {
  const [first = ''] = wordsOf(typed);
  const side = YES.has(first) ? 'yes' : NO.has(first) ? 'no' : undefined;
  if (side === undefined) return [];
  const values = side === 'yes' ? YES_VALUES : NO_VALUES;
  const fitting = Object.entries(choices).filter(
    ([value, label]) => values.has(value) || label.toLowerCase().split(/[^a-z]/, 1)[0] === side,
  );
  return fitting.length === 1 ? [(fitting[0] as [string, string])[0]] : [];
}
