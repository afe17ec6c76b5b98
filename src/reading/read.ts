/**
 * An owner's own words read into facts, complaints and trials. Rules and a lexicon, no model and no network. Precision
 * goes before recall: what is unsure becomes a question, what is said of others, planned or asked stays unread.
 */
import type { UnitSystem } from '../facts/book.js';
import { type ChoiceFactId, type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../facts/complaints.js';
import type { ConstraintId } from '../facts/constraints.js';
import type { How } from '../facts/spec.js';
import { OPPOSITES } from '../facts/words/opposites.js';
import { contentsIn, isPraised } from './contents.js';
import { isDenied } from './denial.js';
import { type FoundText, findIn } from './find.js';
import type { Meaning } from './lexicon.js';
import { numbersIn, unitsOf } from './numbers.js';
import type { Classes, Match } from './pattern.js';
import { type Context, contextOf, type Others, othersIn } from './scope.js';
import type { Word } from './sentences.js';
import {
  isHeard,
  isOfMicrophone,
  isOfOthers,
  isOfPerson,
  isOfRoom,
  isOfStanding,
  isOfVoice,
  isSomebodySeated,
} from './subject.js';
import { type ToldTrial, trialsIn } from './trials.js';

export interface Taken {
  /** An exact part of the text. */
  readonly phrase: string;
  /** UTF-16 units from the start of the text. */
  readonly start: number;
  /** A fact, a complaint or an act. */
  readonly fact: string;
  readonly value: string | number | boolean;
  readonly how: How;
  readonly negated: boolean;
  readonly range?: readonly [number, number];
}

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

interface Candidate extends Omit<Taken, 'phrase' | 'start'> {
  readonly first: number;
  readonly last: number;
  readonly size: number;
  /** He does not know, or a side is missing: a question instead of a fact. */
  readonly unsure: boolean;
  readonly values?: readonly (string | number)[];
  /** Set so in the text, and not undone: it holds against what was told before. */
  readonly renewed?: boolean;
}

export function readText(text: string): Reading {
  const found = findIn(text);
  const { words, matches } = found;
  const others = othersIn(words);
  const units = unitsOf(words);
  const trials = trialsIn(found, others);
  const candidates = [
    ...choicesOf(words, matches, others, found.lexicon.classes),
    ...contentsOf(words, others, found.lexicon.classes),
    ...complaintsOf(words, matches, others, found.lexicon.classes),
    ...numbersOf(found, others, units ?? 'metric'),
    ...trials.map(trialCandidate),
  ];
  const settled = settle(
    candidates.filter((each) => !isOfTrial(each, trials) && !isPartOf(each, candidates)),
  );
  const phraseOf = ({ first, last }: { first: number; last: number }): { phrase: string; start: number } => {
    const start = (words[first] as Word).start;
    return { phrase: text.slice(start, (words[last] as Word).end), start };
  };
  const taken = settled
    .filter(({ unsure }) => !unsure)
    .map(
      ({
        first,
        last,
        size: _size,
        unsure: _unsure,
        values: _values,
        renewed: _renewed,
        ...rest
      }): Taken => ({
        ...phraseOf({ first, last }),
        ...rest,
      }),
    );
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

/** What an act and its outcome say is no state and no complaint: "pulled its plug: the voice was gone". */
function isOfTrial(candidate: Candidate, trials: readonly ToldTrial[]): boolean {
  const within = (from: number, to: number): boolean => candidate.first >= from && candidate.last <= to;
  return trials.some((trial) => {
    if (candidate.fact === trial.test || candidate.fact === trial.act) return false;
    // "Hollow in the middle seat": where it is heard, and it is heard.
    if (trial.test === 'testSitMiddle' && candidate.fact in COMPLAINTS && !candidate.negated) return false;
    // "Up 4 dB did nothing": a number of the trial; "changed to 80, better": the number of today, unless undone.
    if (typeof candidate.value === 'number' && trial.stays !== true && !candidate.renewed)
      if (candidate.first >= trial.actFirst && candidate.last <= Math.max(trial.actLast, trial.cameLast))
        return true;
    // "Turning the center up did nothing": no center from which nothing comes.
    if (
      candidate.first <= trial.actLast &&
      candidate.last >= trial.cameFirst &&
      trial.actLast < trial.cameFirst
    )
      return candidate.fact in COMPLAINTS;
    const ofOutcome =
      within(trial.cameFirst, trial.cameLast) ||
      (candidate.fact === 'lastChange' && within(trial.cameFirst, trial.cameLast + 1));
    return ofOutcome
      ? (trial.outcome !== 'same' && trial.outcome !== 'worse') || !(candidate.fact in COMPLAINTS)
      : within(trial.actFirst, trial.actLast) &&
          !(candidate.fact in COMPLAINTS) &&
          !KEPT_IN_ACTS.has(candidate.fact);
  });
}

/** What is unclear at some seats is not said to be unclear in general, nor is a voice dull that turns so on its way. */
const WHOLES: Readonly<Record<string, readonly string[]>> = {
  'voice-pulled-aside': ['image-follows-head'],
  'voice-unclear': ['voice-unclear-off-side', 'voice-unclear-back-row', 'voice-unclear-everywhere'],
  ...Object.fromEntries(
    ['dull', 'boxy', 'thin', 'hollow'].map((tone): [string, string[]] => [
      tone,
      ['voice-changes-tone', 'toneAcrossPan'],
    ]),
  ),
};

function isPartOf(part: Candidate, candidates: readonly Candidate[]): boolean {
  // "I hear every word twice": no praise.
  const wholes = part.negated ? (part.fact === 'voice-unclear' ? ['echo'] : undefined) : WHOLES[part.fact];
  if (wholes === undefined) return false;
  return candidates.some(
    ({ fact, negated, first, last }) =>
      !negated && part.first <= last && first <= part.last && wholes.includes(fact),
  );
}

/** Facts that an act tells by the way: "bought the matching center". */
const KEPT_IN_ACTS: ReadonlySet<string> = new Set([
  'lastChange',
  'onset',
  'polarityMarks',
  'driversHeard',
  'alignmentBy',
  'elsewhereToo',
]);

const questionOf = (fact: string): string =>
  Object.hasOwn(COMPLAINTS, fact)
    ? `Is it so that ${COMPLAINTS[fact as ComplaintId].title}?`
    : factSpec(fact as FactId).ask;

function howOf(fact: FactId, context: Context, approximate = false): How {
  if (context.hedged || approximate) return 'guessed';
  if (context.measured && factSpec(fact).kind === 'number') return 'measured';
  if (context.readOff && factSpec(fact).usually === 'read') return 'read';
  return SEEN.has(factSpec(fact).family) &&
    factSpec(fact).kind === 'choice' &&
    factSpec(fact).usually === 'read'
    ? 'seen'
    : 'recalled';
}

/** Families whose facts are plain to see. */
const SEEN: ReadonlySet<string> = new Set(['placement', 'speakers', 'geometry', 'tone', 'bass', 'room']);

/** Facts that tell of another place: it is no other system's fact. */
const OF_ELSEWHERE: ReadonlySet<string> = new Set(['elsewhereToo', 'settingsFromElsewhere']);

/** Facts that tell of what happened: they are of the past. */
const HAPPENED: ReadonlySet<string> = new Set([
  'lastChange',
  'changedExactly',
  'onset',
  'alignmentBy',
  'calibrationSpot',
  'correctionState',
  'settingsFromElsewhere',
]);

function isLost({ other, planned, asked, past, brief }: Context, fact: string): boolean {
  if ((other && !OF_ELSEWHERE.has(fact)) || planned || asked) return true;
  if (fact.startsWith('test') || HAPPENED.has(fact)) return false;
  // What was heard while something was tried is what the trial did, and no value of today.
  return past || (brief && isSetting(fact));
}

const isSetting = (fact: string): boolean =>
  isFactId(fact) &&
  (factSpec(fact).kind === 'number' || ['entries', 'bass', 'placement'].includes(factSpec(fact).family));

function choicesOf(
  words: readonly Word[],
  matches: readonly Match<Meaning>[],
  others: Others,
  classes: Classes,
): Candidate[] {
  return matches.flatMap((match): Candidate[] => {
    if (match.meaning.kind !== 'choice') return [];
    const { fact, value } = match.meaning;
    const context = contextOf(words, match, others);
    if (isLost(context, fact) || isOfAnother(fact, words, match, classes)) return [];
    const denied =
      isDenied(words, match) || (fact === 'playedContent' && isPraised(words, match.last, classes));
    const opposite = denied ? opposed(fact, value) : undefined;
    if (denied && opposite === undefined && !DENIABLE.has(fact)) return [];
    return [
      {
        fact,
        value: opposite ?? value,
        how: howOf(fact, context),
        negated: denied && opposite === undefined,
        first: match.first,
        last: match.last,
        size: match.used.length,
        unsure: context.unknown,
      },
    ];
  });
}

/** A setting of the mains is none of the center, and where a voice is heard is not where a box stands. */
function isOfAnother(
  fact: ChoiceFactId,
  words: readonly Word[],
  match: Match<Meaning>,
  classes: Classes,
): boolean {
  if (fact === 'voiceDirection')
    return isOfStanding(words, match, classes) || !isHeard(words, match, classes);
  if (fact === 'centerPlacement' || fact === 'screenKind')
    return isOfVoice(words, match, classes) || isOfPerson(words, match);
  if (fact === 'obstacle') return isOfMicrophone(words, match);
  return fact === 'centerBassSize' && (isOfOthers(words, match, classes) || isOfRoom(words, match));
}

/** Where it is heard and where it is fine; heard with music and with films is heard with everything. */
function contentsOf(words: readonly Word[], others: Others, classes: Classes): Candidate[] {
  return contentsIn(words, others, classes).map(
    ({ value, fine, first, last }): Candidate => ({
      fact: 'playedContent',
      value,
      how: 'recalled',
      negated: fine,
      first,
      last,
      size: fine ? 2 : 1,
      unsure: false,
    }),
  );
}

/** Facts of which it is worth knowing what they are not. */
const DENIABLE: ReadonlySet<string> = new Set<ChoiceFactId>([
  'playedContent',
  'screenKind',
  'floorCover',
  'driversHeard',
  'displaySpeakers',
  'lastChange',
  'centerPlacement',
]);

const opposed = (fact: ChoiceFactId, value: string): string | undefined =>
  (OPPOSITES as Readonly<Record<string, Readonly<Record<string, string>>>>)[fact]?.[value];

function complaintsOf(
  words: readonly Word[],
  matches: readonly Match<Meaning>[],
  others: Others,
  classes: Classes,
): Candidate[] {
  return matches.flatMap((match): Candidate[] => {
    if (match.meaning.kind !== 'complaint') return [];
    const { id, absent } = match.meaning;
    const context = contextOf(words, match, others);
    if (isLost(context, id) || isSomebodySeated(words, match)) return [];
    if (match.used.length <= 2 && isOfOthers(words, match, classes)) return [];
    const denied = isDenied(words, match);
    if (absent && denied) return [];
    return [
      {
        fact: id,
        value: true,
        how: context.hedged ? 'guessed' : 'recalled',
        negated: absent || denied,
        first: match.first,
        last: match.last,
        size: match.used.length,
        unsure: context.unknown,
      },
    ];
  });
}

function numbersOf(found: FoundText, others: Others, units: UnitSystem): Candidate[] {
  const { words } = found;
  return numbersIn(found, units).flatMap(
    ({ fact, value, range, approximate, match, sideMissing }): Candidate[] => {
      const context = contextOf(words, match, others);
      if (isLost(context, fact)) return [];
      return [
        {
          fact,
          value,
          ...(range ? { range } : {}),
          how: howOf(fact, context, approximate),
          negated: false,
          first: match.first,
          last: match.last,
          size: match.used.length + 1,
          unsure: sideMissing || context.unknown,
          renewed: match.quantity !== undefined && isRenewed(words, match.quantity),
        },
      ];
    },
  );
}

function trialCandidate({ act, test, outcome, answer, first, last, size }: ToldTrial): Candidate {
  const fact = answer === undefined ? (act as string) : (test as string);
  return {
    fact,
    value: answer ?? (outcome as string),
    how: 'recalled',
    negated: false,
    first,
    last,
    size: size + 2,
    unsure: false,
  };
}

const TO = new Set(['to', 'at', 'on']);
const SETTING = new Set(
  'changed change set put moved brought bring raised raise lowered lower dropped turned corrected typed entered dialed switched went nudged pushed'.split(
    ' ',
  ),
);
const STATES = new Set(['is', 'are', 'was', 'were', 'be', 'its', 'it', 'currently', 'still']);
const UNDOING = new Set(['forgot', 'reset', 'reverted', 'undid', 'returned', 'back', 'again', 'test', 'try']);
const SETTING_REACH = 8;
const UNDONE_REACH = 60;

/** "I changed the center to 80": a value set by an act, of which nothing says that it was undone. */
function isRenewed(words: readonly Word[], at: number): boolean {
  const { sentence } = words[at] as Word;
  if (!TO.has(words[at - 1]?.raw ?? '') && !TO.has(words[at - 2]?.raw ?? '')) return false;
  let place = at - 1;
  while (
    place >= at - SETTING_REACH &&
    words[place]?.sentence === sentence &&
    !SETTING.has(words[place]?.raw ?? '')
  )
    place--;
  if (words[place]?.sentence !== sentence || !SETTING.has(words[place]?.raw ?? '')) return false;
  if (STATES.has(words[place - 1]?.raw ?? '')) return false;
  return !words.slice(at, at + UNDONE_REACH).some(({ raw }) => UNDOING.has(raw));
}

/** One value a fact: of overlapping phrases the longest; two that disagree become a question. */
function settle(candidates: readonly Candidate[]): Candidate[] {
  const byFact = new Map<string, Candidate[]>();
  for (const each of candidates) {
    const list = byFact.get(each.fact);
    if (list) list.push(each);
    else byFact.set(each.fact, [each]);
  }
  return [...byFact.values()].flatMap(oneOf).sort((a, b) => a.first - b.first || a.last - b.last);
}

/** The same fact is not told more often in any post; a text made to be slow is not looked through. */
const MOST_TELLINGS = 40;

function oneOf(list: readonly Candidate[]): Candidate[] {
  const sorted = [...list].sort((a, b) => b.size - a.size || a.first - b.first).slice(0, MOST_TELLINGS);
  const kept: Candidate[] = [];
  for (const each of sorted) {
    if (!kept.some((other) => each.first <= other.last && other.first <= each.last)) kept.push(each);
  }
  const sure = kept.filter(({ unsure, negated }) => !unsure && !negated);
  const [best] = sure;
  const denials = kept.filter(({ negated, unsure, value }) => negated && !unsure && value !== best?.value);
  if (best === undefined) return denials.length > 0 ? denials.slice(0, 1) : kept.slice(0, 1);
  const least = YIELDING[best.fact];
  if (best.value === least) {
    const other = sure.find(({ value }) => value !== least);
    if (other) return oneOf(sure.filter(({ value }) => value !== least));
  }
  const rivals = sure.filter(({ value }) => value !== best.value && value !== least);
  if (best.fact === 'playedContent') return [best, ...denials.slice(0, 2)];
  if (rivals.length === 0) return [best, ...denials.slice(0, 2)];
  const renewed = sure.filter((each) => each.renewed);
  if (renewed.length > 0 && renewed.length < sure.length)
    return [renewed.toSorted((a, b) => a.first - b.first).at(-1) as Candidate];
  const ranked = RANKED[best.fact];
  if (ranked)
    return [
      sure.toSorted(
        (a, b) => ranked.indexOf(String(a.value)) - ranked.indexOf(String(b.value)),
      )[0] as Candidate,
    ];
  const strong = rivals.filter(({ size }) => size >= best.size - 1);
  if (strong.length === 0) return [best];
  const values = [...new Set([best, ...strong].map(({ value }) => value))].filter(
    (value) => typeof value !== 'boolean',
  );
  return [{ ...best, unsure: true, values }];
}

/** Where two values may be told together, the one that says more comes first. */
const RANKED: Readonly<Record<string, readonly string[]>> = {
  centerPlacement: ['behind-screen', 'bay', 'wall', 'floor', 'shelf-top', 'stand'],
  troubleSeats: ['back-row', 'one-seat', 'middle-only', 'off-middle', 'everywhere'],
  voiceDirection: ['behind', 'subwoofer', 'low', 'high', 'aside', 'center-box', 'nowhere', 'picture'],
  screenKind: ['perforated', 'woven', 'solid', 'none'],
  troubleTitles: ['one-source', 'some', 'all'],
  fineContent: ['multichannel-film', 'two-channel-music', 'television'],
};

/** Values that say less than any other one told beside them: "nothing else changed", "never ran it, typed them in". */
const YIELDING: Readonly<Record<string, string>> = {
  alignmentBy: 'nobody',
  lastChange: 'nothing',
  driversHeard: 'all',
  centerFamily: 'same-maker',
  changedExactly: 'trim',
};

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
