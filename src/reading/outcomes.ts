/** What came of an act: the words of an outcome in its sentence, in the next one, or before it; a complaint denied behind it. */
import { actSpec } from '../facts/acts.js';
import type { TestId } from '../facts/catalog.js';
import { isDenied } from './denial.js';
import type { FoundText } from './find.js';
import type { Lexicon, Meaning, Result } from './lexicon.js';
import { type Match, matchesAt } from './pattern.js';
import type { Others } from './scope.js';
import type { Word } from './sentences.js';
import { isSizeWord } from './subject.js';

/** Words behind an act in which its outcome is looked for: in its sentence, in the next one, and before the act. */
const AHEAD = 22;
const NEXT_SENTENCE = 12;
const BEHIND = 9;

export interface Came extends Match<Result> {
  readonly size: number;
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** A sentence that begins so tells of something else, or of now. */
const TURNS = set('now tonight today anyway also thinking plan planning question currently meanwhile since');

/** What came of an act; of two told in one breath ("turned it up and pulled it out: all clear") what came of both. */
export function outcomeOf(
  found: FoundText,
  others: Others,
  act: Match<Meaning>,
  acts: readonly Match<Meaning>[],
  complaints: Complaints,
): Came | undefined {
  const { words } = found;
  const starts = acts.filter(({ used }) => used.length > 1);
  const next = starts.find(({ first }) => first > act.last + 1);
  const came = cameBehind(found, others, act, next?.first ?? words.length, complaints);
  if (came) return came;
  if (next && isJoined(words, act.last, next.first)) {
    const after = starts.find(({ first }) => first > next.last + 1)?.first ?? words.length;
    const ofBoth = cameBehind(found, others, next, after, complaints);
    if (ofBoth) return ofBoth;
  }
  return isCondition(words, act) ? cameBefore(found, act) : undefined;
}

const JOINED_REACH = 3;

const isJoined = (words: readonly Word[], last: number, next: number): boolean =>
  next - last <= JOINED_REACH && words.slice(last + 1, next).some(({ raw }) => raw === 'and');

function cameBehind(
  { words, lexicon }: FoundText,
  others: Others,
  act: Match<Meaning>,
  stop: number,
  complaints: Complaints,
): Came | undefined {
  const { sentence } = words[act.first] as Word;
  const own = ownOf(act, lexicon);
  const most = isNamed(words, act) || isOfPersons(act) ? 0 : 1;
  let next = -1;
  let passed = -1;
  for (let at = act.last + 1; at < stop; at++) {
    const word = words[at] as Word;
    const further = word.sentence - sentence;
    if (further > most) break;
    if (further === 0 ? at > act.last + AHEAD : next >= 0 && at > next + NEXT_SENTENCE) break;
    if (further > 0 && next < 0) {
      next = at;
      if (TURNS.has(word.raw)) break;
    }
    if (isUndoing(words, at)) break;
    if (isPurpose(words, at)) passed = words.findLastIndex((each) => each.sentence === word.sentence);
    if (others.planned[at] || others.asked[at] || at <= passed) continue;
    const idle = matchesAt(words, at, lexicon.outcomes).find(({ meaning }) => meaning === 'idle');
    if (idle) passed = idle.last;
    else {
      const came = cameAt(words, at, lexicon, own, act.used)[0];
      if (came) return softened(words, decided(words, came, stop, lexicon), act.last);
      const complaint = isOfPersons(act) ? undefined : ofComplaint(words, complaints, at);
      if (complaint) return decided(words, complaint, stop, lexicon);
    }
  }
  return undefined;
}

const MAY = set('can could would might');
/** "Because she could not follow", "so my mother could follow": why it was done is nothing that came of it. */
function isPurpose(words: readonly Word[], at: number): boolean {
  const { raw, sentence } = words[at] as Word;
  if (raw === 'because') return true;
  const ahead = words.slice(at + 1, at + 5).filter((each) => each.sentence === sentence);
  return raw === 'so' && ahead.some((each) => MAY.has(each.raw));
}

type Own = ReturnType<Lexicon['after']['get']>;

/** The outcomes that the test, or the test which is the same act, has words of its own for. */
function ownOf({ meaning }: Match<Meaning>, lexicon: Lexicon): Own {
  const test = meaning.kind === 'test' ? meaning.test : mirrorOf(meaning)?.fact;
  return lexicon.after.get(test as TestId);
}

function cameBefore({ words, lexicon }: FoundText, act: Match<Meaning>): Came | undefined {
  for (let at = act.first - 1; at >= Math.max(0, act.first - BEHIND); at--) {
    const word = words[at] as Word;
    if (word.sentence !== words[act.first]?.sentence || word.hard) break;
    const came = cameAt(words, at, lexicon, ownOf(act, lexicon)).find(({ last }) => last < act.first);
    if (came) return came;
  }
  return undefined;
}

const DECISIVE = set(
  'better worse gone cured same difference change changed improved improvement helped help unchanged disappeared vanished',
);
export const isDecisive = (words: readonly Word[], { used }: Came): boolean =>
  used.some((at) => DECISIVE.has((words[at] as Word).raw));

/** "Got sharper and worse", "the hollow sound is gone": the word that says it outright counts. */
function decided(words: readonly Word[], came: Came, stop: number, lexicon: Lexicon): Came {
  if (!('outcome' in came.meaning) || isDecisive(words, came)) return came;
  const { sentence } = words[came.first] as Word;
  for (let at = came.first + 1; at < Math.min(stop, came.last + DECIDED_REACH); at++) {
    const word = words[at] as Word;
    if (word.sentence !== sentence || word.hard) break;
    const outright = cameAt(words, at, lexicon, undefined)[0];
    if (outright && isDecisive(words, outright)) return outright;
  }
  return came;
}
const DECIDED_REACH = 7;

const UNDOING = set(
  'put plugged moved turned swapped switched set went pushed changed shoved took hung laid brought slid goes going',
);
/** "Put it back", "shoved it back", "reverted". */
export function isUndoing(words: readonly Word[], at: number): boolean {
  const { raw } = words[at] as Word;
  if (raw === 'reverted' || raw === 'undid') return true;
  return UNDOING.has(raw) && words.slice(at + 1, at + 4).some((word) => word.raw === 'back');
}

/** The home test that is the same act. */
export function mirrorOf(meaning: Meaning): ReturnType<typeof actSpec>['mirror'] {
  return meaning.kind === 'act' ? actSpec(meaning.act).mirror : undefined;
}

/** What follows is told of somebody else. */
export const isOfPersons = ({ meaning }: Match<Meaning>): boolean =>
  meaning.kind === 'act' && (meaning.act === 'seats-exchanged' || meaning.act === 'other-person-listened');

const NEW = set('new another other different bigger');
/** "New center": an exchange told without a verb, which goes no farther than its sentence. */
export const isNamed = (words: readonly Word[], { first }: Match<Meaning>): boolean =>
  NEW.has((words[first] as Word).raw);

/** Complaints by the word they begin at. */
export type Complaints = ReadonlyMap<number, Match<Meaning>>;

/** A complaint denied behind an act was cured by it. */
function ofComplaint(words: readonly Word[], complaints: Complaints, at: number): Came | undefined {
  const match = complaints.get(at);
  if (match?.meaning.kind !== 'complaint') return undefined;
  if (!match.meaning.absent && !isDenied(words, match)) return undefined;
  return { ...match, meaning: { outcome: 'gone' }, size: match.used.length };
}

const MOSTLY = set('most mostly almost nearly partly half halfway basically largely somewhat bit');
const RESTS = set('not still');

/** "Gone for the most part", "mended my seams and not her ladies": better. */
function softened(words: readonly Word[], came: Came, actLast: number): Came {
  if (!('outcome' in came.meaning) || came.meaning.outcome !== 'gone') return came;
  const { sentence } = words[came.first] as Word;
  const isHere = (at: number): boolean => words[at]?.sentence === sentence;
  for (let at = Math.max(came.first - 4, actLast + 1); at <= came.last + 5; at++) {
    const word = words[at];
    if (word === undefined || !isHere(at) || came.used.includes(at)) continue;
    const isRest =
      at > came.last && RESTS.has(word.raw) && ['and', 'but', ','].includes(words[at - 1]?.raw ?? '');
    if (MOSTLY.has(word.raw) || isRest) return { ...came, meaning: { outcome: 'better' } };
  }
  return came;
}

const CONDITIONS = set('with without when after once if in by on via through under using while during');

/** "Much better with the upmix off": what came of it may stand before the act. */
const isCondition = (words: readonly Word[], { first, last }: Match<Meaning>): boolean =>
  words
    .slice(Math.max(0, first - 4), last + 1)
    .some(({ raw }) => CONDITIONS.has(raw) || /(?:ing|ed)$/.test(raw));

/** Outcomes that begin at this word, those in the test's own words first, then the longest. */
function cameAt(
  words: readonly Word[],
  at: number,
  lexicon: Lexicon,
  own: Own,
  ofAct: readonly number[] = [],
): Came[] {
  const mine = own
    ? matchesAt(words, at, own).map((match): Came => ({ ...match, size: match.used.length + 1 }))
    : [];
  const common = matchesAt(words, at, lexicon.outcomes).flatMap(({ meaning, ...match }): Came[] => {
    if (meaning === 'idle') return [];
    const isGood = meaning === 'gone' || meaning === 'better';
    const denied = isGood && isDenied(words, { ...match, used: [...match.used, ...ofAct] });
    return [{ ...match, meaning: { outcome: denied ? 'same' : meaning }, size: match.used.length }];
  });
  return [...mine, ...common]
    .filter(({ used }) => !used.some((each) => isSizeWord(words, each) || isSameOf(words, each)))
    .sort((a, b) => b.size - a.size);
}

const SAME_AS = set(
  'thing story result as either way again in here there at everywhere for with on from to fault problem trouble',
);

/** "The same singer" is nothing that stayed the same. */
function isSameOf(words: readonly Word[], at: number): boolean {
  const next = words[at + 1];
  return (
    words[at]?.raw === 'same' &&
    words[at - 1]?.raw === 'the' &&
    next?.kind === 'word' &&
    next.clause === words[at]?.clause &&
    !SAME_AS.has(next.raw)
  );
}
