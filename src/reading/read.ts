/**
 * An owner's own words read into facts, complaints and trials. Rules and a lexicon, no model and no network. Precision
 * goes before recall: what is unsure becomes a question, what is said of others, planned or asked stays unread.
 */
import type { UnitSystem } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../facts/complaints.js';
import type { ConstraintId } from '../facts/constraints.js';
import { candidatesIn, type Taken } from './candidates.js';
import { isDenied } from './denial.js';
import { findIn } from './find.js';
import type { Meaning } from './lexicon.js';
import { unitsOf } from './numbers.js';
import type { Match } from './pattern.js';
import { contextOf, type Others, othersIn } from './scope.js';
import type { Word } from './sentences.js';
import { settle } from './settle.js';
import { type ToldTrial, trialsIn } from './trials.js';

interface Unsure {
  readonly phrase: string;
  readonly start: number;
  readonly fact: string;
  readonly question: string;
  /** Told in several ways that cannot all hold. */
  readonly values?: readonly (string | number)[];
}

interface Left {
  readonly phrase: string;
  readonly start: number;
}

export interface Reading {
  readonly text: string;
  readonly units: UnitSystem | undefined;
  readonly taken: readonly Taken[];
  readonly unsure: readonly Unsure[];
  readonly left: readonly Left[];
  readonly trials: readonly ToldTrial[];
  /** What must not be done in this home. */
  readonly constraints: readonly ConstraintId[];
  /** Said to be settled, or said not to be. */
  readonly solved?: boolean;
  /** Where each sentence begins and ends, in UTF-16 units. */
  readonly sentences: readonly { readonly start: number; readonly end: number }[];
}

export function readText(text: string): Reading {
  const found = findIn(text);
  const { words, matches } = found;
  const others = othersIn(words);
  const units = unitsOf(words);
  const trials = trialsIn(found, others);
  const settled = settle(candidatesIn(found, others, units ?? 'metric', trials), trials);
  const phraseOf = ({ first, last }: { first: number; last: number }): { phrase: string; start: number } => {
    const start = (words[first] as Word).start;
    return { phrase: text.slice(start, (words[last] as Word).end), start };
  };
  const taken = settled
    .filter(({ unsure }) => !unsure)
    .map((each): Taken => {
      const { fact, value, range, how, negated } = each;
      return { ...phraseOf(each), fact, value, ...(range ? { range } : {}), how, negated };
    });
  const unsure = settled
    .filter((each) => each.unsure)
    .map(
      (each): Unsure => ({
        ...phraseOf(each),
        fact: each.fact,
        question: questionOf(each.fact),
        ...(each.values ? { values: each.values } : {}),
      }),
    );
  const sentences = spansOf(words);
  return {
    text,
    units,
    taken,
    unsure,
    left: leftOf(
      text,
      sentences,
      settled.map(({ first }) => (words[first] as Word).start),
    ),
    trials,
    ...homeOf(words, matches, others),
    sentences,
  };
}

/** What must not be done, and whether it is settled; the last word on that holds. */
function homeOf(
  words: readonly Word[],
  matches: readonly Match<Meaning>[],
  others: Others,
): Pick<Reading, 'constraints' | 'solved'> {
  const constraints = new Set<ConstraintId>();
  let solved: boolean | undefined;
  for (const match of matches) {
    const { other, asked } = contextOf(words, match, others);
    if (other || asked) continue;
    if (match.meaning.kind === 'constraint') constraints.add(match.meaning.id);
    if (match.meaning.kind === 'solved') solved = !isDenied(words, match);
  }
  return { constraints: [...constraints], ...(solved === undefined ? {} : { solved }) };
}

const questionOf = (fact: string): string =>
  Object.hasOwn(COMPLAINTS, fact)
    ? `Is it so that ${COMPLAINTS[fact as ComplaintId].title}?`
    : factSpec(fact as FactId).ask;

function spansOf(words: readonly Word[]): { start: number; end: number }[] {
  const spans = new Map<number, { start: number; end: number }>();
  for (const word of words) {
    if (word.text === '\n') continue;
    const span = spans.get(word.sentence);
    if (span) span.end = word.end;
    else spans.set(word.sentence, { start: word.start, end: word.end });
  }
  return [...spans.values()].filter(({ start, end }) => end - start > 1);
}

/** Sentences of which nothing was taken. */
function leftOf(text: string, sentences: Reading['sentences'], starts: readonly number[]): Left[] {
  const sorted = starts.toSorted((a, b) => a - b);
  let next = 0;
  return sentences.flatMap(({ start, end }): Left[] => {
    while (next < sorted.length && (sorted[next] as number) < start) next++;
    const isRead = next < sorted.length && (sorted[next] as number) < end;
    return isRead ? [] : [{ phrase: text.slice(start, end), start }];
  });
}
