/** What single phrases tell: facts, complaints and acts, before it is settled which of them hold. */
import type { UnitSystem } from '../facts/book.js';
import { type ChoiceFactId, type FactId, factSpec, isFactId } from '../facts/catalog.js';
import type { How } from '../facts/spec.js';
import { OPPOSITES } from '../facts/words/opposites.js';
import { contentsIn, isPraised } from './contents.js';
import { isDenied } from './denial.js';
import type { FoundText } from './find.js';
import type { Meaning } from './lexicon.js';
import { isRenewed, numbersIn } from './numbers.js';
import type { Classes, Match } from './pattern.js';
import { type Context, contextOf, type Others } from './scope.js';
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
import type { ToldTrial } from './trials.js';

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

export interface Candidate extends Omit<Taken, 'phrase' | 'start'> {
  readonly first: number;
  readonly last: number;
  readonly size: number;
  /** He does not know, or a side is missing: a question instead of a fact. */
  readonly unsure: boolean;
  readonly values?: readonly (string | number)[];
  /** Set so in the text, and not undone: it holds against what was told before. */
  readonly renewed?: boolean;
}

export function candidatesIn(
  found: FoundText,
  others: Others,
  units: UnitSystem,
  trials: readonly ToldTrial[],
): Candidate[] {
  const { words, matches } = found;
  const { classes } = found.lexicon;
  return [
    ...choicesOf(words, matches, others, classes),
    ...contentsOf(words, others, classes),
    ...complaintsOf(words, matches, others, classes),
    ...numbersOf(found, others, units),
    ...trials.map(trialCandidate),
  ];
}

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

/** Families of what stands in the room: "as from a cupboard" puts nothing into one. */
const THERE: ReadonlySet<string> = new Set(['placement', 'speakers', 'geometry', 'display']);

/** Facts that tell of another place or person: they are no other system's facts. */
const OF_ELSEWHERE: ReadonlySet<string> = new Set([
  'elsewhereToo',
  'settingsFromElsewhere',
  'hearingChecked',
]);

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

function isLost({ other, planned, asked, past, brief, likened }: Context, fact: string): boolean {
  if ((other && !OF_ELSEWHERE.has(fact)) || planned || asked) return true;
  if (likened && isFactId(fact) && THERE.has(factSpec(fact).family)) return true;
  if (fact.startsWith('test') || HAPPENED.has(fact)) return false;
  // What was heard while something was tried is what the trial did, and no value of today.
  return past || (brief && isSetting(fact));
}

const isSetting = (fact: string): boolean =>
  isFactId(fact) &&
  (factSpec(fact).kind === 'number' || ['entries', 'bass', 'placement'].includes(factSpec(fact).family));

const placeOf = ({ first, last, used }: Match<Meaning>, { unknown }: Context) => ({
  first,
  last,
  size: used.length,
  unsure: unknown,
});

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
        ...placeOf(match, context),
      },
    ];
  });
}

/** Facts of the box, its setting or the screen that other boxes have as well. */
const OF_BOX: ReadonlySet<string> = new Set([
  'centerPlacement',
  'screenKind',
  'rearPort',
  'centerEnclosure',
  'centerBassSize',
]);
const OTHER_BOXES = ['mains', 'leftMain', 'rightMain', 'subwoofer', 'surround', 'receiver'] as const;

/** A setting of the mains is none of the center, and where a voice is heard is not where a box stands. */
function isOfAnother(
  fact: ChoiceFactId,
  words: readonly Word[],
  match: Match<Meaning>,
  classes: Classes,
): boolean {
  if (fact === 'voiceDirection')
    return isOfStanding(words, match, classes) || !isHeard(words, match, classes);
  if (OF_BOX.has(fact) && isOfOthers(words, match, classes, OTHER_BOXES)) return true;
  if (fact === 'centerPlacement' || fact === 'screenKind')
    return isOfVoice(words, match, classes) || isOfPerson(words, match);
  if (fact === 'obstacle') return isOfMicrophone(words, match);
  if (fact === 'centerBassSize' && isOfRoom(words, match)) return true;
  return OF_CENTER.has(fact) && isOfOthers(words, match, classes);
}

/** Facts of the center itself: "my mains have a port at the back" tells none of them. */
const OF_CENTER: ReadonlySet<string> = new Set<ChoiceFactId>([
  'centerEnclosure',
  'centerPointsAt',
  'conesSeen',
  'rearPort',
]);

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
        ...placeOf(match, context),
      },
    ];
  });
}

function numbersOf(found: FoundText, others: Others, units: UnitSystem): Candidate[] {
  const { words } = found;
  return numbersIn(found, units).flatMap(
    ({ fact, value, range, approximate, match, sideMissing }): Candidate[] => {
      const context = contextOf(words, match, others);
      const { quantity = match.first } = match;
      if (isLost(context, fact) || others.past[quantity] !== 0) return [];
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
