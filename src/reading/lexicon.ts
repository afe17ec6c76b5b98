/** The families of the lexicon compiled into indices of patterns. Done once, when the first text is read. */
import type { ActId, Outcome } from '../facts/acts.js';
import type { ChoiceFactId, NumberFactId, TestId } from '../facts/catalog.js';
import type { ComplaintId } from '../facts/complaints.js';
import type { ConstraintId } from '../facts/constraints.js';
import { changeWords } from '../facts/words/changes.js';
import { complaintWords } from '../facts/words/complaints.js';
import { constraintWords, SOLVED } from '../facts/words/constraints.js';
import { homeTestWords } from '../facts/words/home-tests.js';
import { IDIOMS } from '../facts/words/idioms.js';
import { IMAGES } from '../facts/words/images.js';
import type { Came, FamilyWords } from '../facts/words/lexicon.js';
import { listeningWords } from '../facts/words/listening.js';
import { CLASSES, NOUNS } from '../facts/words/nouns.js';
import { setupWords } from '../facts/words/setup.js';
import { FRAMES, SPREADS, ZEROS } from '../facts/words/slots.js';
import { telltaleWords } from '../facts/words/telltales.js';
import { thingWords } from '../facts/words/things.js';
import { DOING, OUTCOME_WORDS, trialWords } from '../facts/words/trials.js';
import { type Classes, compile, type Index, indexed, matchesAt, nameOf, type Pattern } from './pattern.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

export type Meaning =
  | { readonly kind: 'choice'; readonly fact: ChoiceFactId; readonly value: string }
  | { readonly kind: 'number'; readonly fact: NumberFactId; readonly value?: number }
  | { readonly kind: 'complaint'; readonly id: ComplaintId; readonly absent: boolean }
  | { readonly kind: 'act'; readonly act: ActId }
  | { readonly kind: 'test'; readonly test: TestId }
  | { readonly kind: 'constraint'; readonly id: ConstraintId }
  | { readonly kind: 'solved' }
  | { readonly kind: 'idiom' };

/** The outcome of a test in one of its own words, or one of the four. */
export type Result = { readonly value: string } | { readonly outcome: Outcome };

export interface Lexicon {
  readonly classes: Classes;
  /** Things of several words, by the name that stands for them. */
  readonly compounds: Index<string>;
  readonly meanings: Index<Meaning>;
  readonly outcomes: Index<Came>;
  /** Outcomes that one test has words of its own for. */
  readonly after: ReadonlyMap<TestId, Index<Result>>;
}

const FAMILIES: readonly FamilyWords[] = [
  { complaints: complaintWords },
  listeningWords,
  changeWords,
  setupWords,
  thingWords,
  telltaleWords,
  trialWords,
  homeTestWords,
];

let built: Lexicon | undefined;

export function lexicon(): Lexicon {
  built ??= build();
  return built;
}

const split = (phrases: string | undefined): string[] =>
  (phrases ?? '')
    .split(';')
    .map((each) => each.trim())
    .filter((each) => each !== '');

/** Every phrase of a list. */
export const compiledAll = <M>(phrases: string | undefined, meaning: M, classes: Classes): Pattern<M>[] =>
  split(phrases).map((phrase) => compile(phrase, meaning, classes));

const entries = <T>(record: { readonly [key: string]: T } | undefined): [string, T][] =>
  Object.entries(record ?? {});

/**
 * A phrase as it stands in a text whose things of several words are one word each: "all three .. behind it" is never met,
 * "allChannels .. behind it" is. Undefined where nothing changes, or where only the thing would be left.
 */
function asJoined(phrase: string, compounds: Index<string>): string | undefined {
  const pieces = phrase.split(' ');
  if (pieces.includes('&')) return undefined;
  const words = pieces.map((piece) => {
    const isPlain = /^[a-z0-9|]+$/.test(piece);
    const raw = piece.split('|', 1)[0] as string;
    return { ...NO_WORD, text: isPlain ? canonical(raw) : '', raw, hard: !isPlain };
  });
  const out: string[] = [];
  for (let at = 0; at < pieces.length; at++) {
    const longest = matchesAt(words, at, compounds).sort((a, b) => b.last - a.last)[0];
    out.push(longest?.meaning ?? (pieces[at] as string));
    at = longest?.last ?? at;
  }
  return out.length > 1 && out.length < pieces.length ? out.join(' ') : undefined;
}

const NO_WORD: Word = {
  kind: 'word',
  text: '',
  raw: '',
  start: 0,
  end: 0,
  spaced: true,
  sentence: 0,
  clause: 0,
  soft: false,
  hard: false,
};

function build(): Lexicon {
  const classes = classesOf();
  const compounds = indexed(
    entries(NOUNS).flatMap(([name, members]) =>
      split(members)
        .filter((member) => member.includes(' '))
        .map((member) => compile(member, nameOf(name), classes)),
    ),
  );
  const all = <M>(phrases: string | undefined, meaning: M): Pattern<M>[] =>
    compiledAll(phrases, meaning, classes);
  const choices = (phrases: string, meaning: Meaning): Pattern<Meaning>[] =>
    split(phrases).flatMap((phrase) => {
      const joined = asJoined(phrase, compounds);
      return [phrase, ...(joined === undefined ? [] : [joined])].map((each) =>
        compile(each, meaning, classes),
      );
    });
  const meanings: Pattern<Meaning>[] = all<Meaning>(IDIOMS, { kind: 'idiom' });
  const after = new Map<TestId, Index<Result>>();
  for (const [fact, phrases] of [...entries(ZEROS), ...entries(FRAMES)])
    meanings.push(...all<Meaning>(phrases, { kind: 'number', fact: fact as NumberFactId }));
  for (const [value, phrases] of entries(SPREADS))
    meanings.push(
      ...all<Meaning>(phrases, { kind: 'number', fact: 'centerSpreadAmount', value: Number(value) }),
    );
  for (const [id, phrases] of entries(constraintWords))
    meanings.push(...all<Meaning>(phrases, { kind: 'constraint', id: id as ConstraintId }));
  meanings.push(...all<Meaning>(SOLVED, { kind: 'solved' }));
  for (const family of FAMILIES) {
    for (const [id, heard] of entries(family.complaints)) {
      meanings.push(
        ...all<Meaning>(heard?.heard, { kind: 'complaint', id: id as ComplaintId, absent: false }),
      );
      meanings.push(
        ...all<Meaning>(heard?.absent, { kind: 'complaint', id: id as ComplaintId, absent: true }),
      );
    }
    for (const [fact, values] of entries(family.choices as Record<string, Record<string, string>>)) {
      for (const [value, phrases] of entries(values)) {
        meanings.push(...choices(phrases, { kind: 'choice', fact: fact as ChoiceFactId, value }));
      }
    }
    for (const [act, phrases] of entries(family.acts)) {
      meanings.push(...all<Meaning>(phrases, { kind: 'act', act: act as ActId }));
    }
    for (const [id, words] of entries(family.tests)) {
      const test = id as TestId;
      meanings.push(...all<Meaning>(words?.act, { kind: 'test', test }));
      const own = entries(words?.after as Record<string, string> | undefined).flatMap(([value, phrases]) =>
        all<Result>(phrases, { value }),
      );
      after.set(test, indexed(own));
    }
  }
  const outcomes = entries(OUTCOME_WORDS).flatMap(([outcome, phrases]) => all(phrases, outcome as Came));
  return {
    classes,
    compounds,
    meanings: indexed(meanings),
    outcomes: indexed(outcomes),
    after,
  };
}

const shortPhrases = new Map<string, Index<Meaning>>();

/** The phrases of one question only, by value. */
export function phrasesOf(
  values: Readonly<Record<string, string>> | undefined,
  fact: ChoiceFactId,
): Index<Meaning> {
  const known = shortPhrases.get(fact);
  if (known !== undefined) return known;
  const { classes } = lexicon();
  const made = indexed(
    entries(values).flatMap(([value, phrases]) =>
      split(phrases).map((phrase) => compile<Meaning>(phrase, { kind: 'choice', fact, value }, classes)),
    ),
  );
  shortPhrases.set(fact, made);
  return made;
}

/** Every class with its single words; a noun also has the name that stands for its members of several words. */
function classesOf(): Classes {
  const single = (members: string): string[] =>
    split(members)
      .filter((member) => !member.includes(' '))
      .map((member) => canonical(member.replaceAll("'", '').replaceAll('-', '')));
  return new Map([
    ...entries(NOUNS).map(([name, members]): [string, Set<string>] => [
      name,
      new Set([nameOf(name), ...single(members)]),
    ]),
    ...entries({ ...CLASSES, ...IMAGES, ...DOING }).map(([name, members]): [string, Set<string>] => [
      name,
      new Set(single(members)),
    ]),
  ]);
}
