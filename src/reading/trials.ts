/** Acts and home tests with what came of them. */
import { ACT_IDS, type ActId, actSpec, type EntryOf } from '../facts/acts.js';
import type { TestId } from '../facts/catalog.js';
import type { Outcome } from '../facts/words/lexicon.js';
import { trialWords } from '../facts/words/trials.js';
import { isDenied } from './denial.js';
import type { FoundText } from './find.js';
import type { Lexicon, Meaning, Result } from './lexicon.js';
import { type Match, matchesAt } from './pattern.js';
import { contextOf, type Others } from './scope.js';
import type { Word } from './sentences.js';
import { isSizeWord } from './subject.js';
import { meantAct } from './trial-things.js';

export interface ToldTrial {
  readonly act?: ActId;
  readonly test?: TestId;
  readonly outcome?: Outcome;
  /** Whose entry was corrected. */
  readonly of?: EntryOf;
  /** It was put back, or it was left so. */
  readonly stays?: boolean;
  /** The answer of the test this stands for. */
  readonly answer?: string;
  readonly first: number;
  readonly last: number;
  readonly actFirst: number;
  readonly actLast: number;
  readonly cameFirst: number;
  readonly cameLast: number;
  readonly size: number;
}

/** Words behind an act in which its outcome is looked for: in its sentence, in the next one, and before the act. */
const AHEAD = 22;
const NEXT_SENTENCE = 12;
const BEHIND = 9;

interface Came extends Match<Result> {
  readonly size: number;
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

export function trialsIn(found: FoundText, others: Others): ToldTrial[] {
  const { words, matches, lexicon } = found;
  // The first that begins at a word counts.
  const complaints: Complaints = new Map(
    matches
      .filter(({ meaning }) => meaning.kind === 'complaint')
      .toReversed()
      .map((match): [number, Match<Meaning>] => [match.first, match]),
  );
  const acts = actsIn(found).filter((match) => !isOnlyNamed(words, match));
  const praised = new Set(
    matches.flatMap(({ meaning, used }) =>
      meaning.kind === 'choice' && meaning.fact === 'fineContent' ? used : [],
    ),
  );
  const starts = acts.filter(({ used }) => used.length > 1).map(({ first }) => first);
  const told = acts.flatMap((match): ToldTrial[] => {
    const context = contextOf(words, match, others);
    if (isUndoing(words, match.first) && !match.used.some((at) => words[at]?.raw === 'back')) return [];
    if (context.planned || context.asked || isOfOthers(words, match, others) || isBeginning(words, match))
      return [];
    const came = outcomeOf(found, others, match, starts, complaints);
    if (came === undefined || isUndone(words, match, came)) return [];
    if (match.meaning.kind === 'act' && !isDone(words, match) && !isClose(words, match, came)) return [];
    if (isState(words, match) && came.used.some((at) => praised.has(at))) return [];
    const first = Math.min(match.first, came.first);
    const last = Math.max(match.last, came.last);
    const stays = staysAfter(words, last);
    return [
      {
        ...named(match.meaning, came.meaning),
        ...ofEntry(match, words, lexicon),
        ...(stays === undefined ? {} : { stays }),
        first,
        last,
        actFirst: match.first,
        actLast: match.last,
        cameFirst: came.first,
        cameLast: came.last,
        size: match.used.length + came.size,
      },
    ].filter((each) => each.answer !== undefined || each.act !== undefined);
  });
  return oncePerAct(told);
}

/** Done by others elsewhere; "I blamed age, ran it again" is his own doing again. */
function isOfOthers(words: readonly Word[], match: Match<Meaning>, others: Others): boolean {
  const { first } = match;
  const at = (others.other[first] as number) - 1;
  const opener = words[at];
  if (opener === undefined || (at >= first && isOfPersons(match))) return false;
  const isOwn = [opener.raw, words[at - 1]?.raw].some((raw) => raw === 'i' || raw === 'we');
  return !isOwn || opener.clause === (words[first] as Word).clause;
}

/** Acts told with the same words are one: the longest phrase, then the first of the table. Tests stand for themselves. */
function actsIn({ words, matches, lexicon }: FoundText): Match<Meaning>[] {
  const wanted = matches.flatMap((match): Match<Meaning>[] => {
    const { meaning } = match;
    if (meaning.kind === 'test') return [match];
    if (meaning.kind !== 'act' || !isOneClause(words, match) || isLoneSwitch(words, match)) return [];
    const act = meantAct(words, match, meaning.act, matches, lexicon.classes);
    return act === undefined ? [] : [{ ...match, meaning: { kind: 'act', act } }];
  });
  const rank = ({ meaning }: Match<Meaning>): number =>
    meaning.kind === 'act' ? ACT_IDS.indexOf(meaning.act) : -1;
  const keyOf = ({ meaning }: Match<Meaning>): string => (meaning.kind === 'test' ? meaning.test : 'act');
  const sorted = wanted.sort(
    (a, b) => b.used.length - a.used.length || rank(a) - rank(b) || a.first - b.first,
  );
  const taken = new Map<string, Set<number>>();
  const kept = sorted.filter((match) => {
    const used = taken.get(keyOf(match)) ?? new Set();
    taken.set(keyOf(match), used);
    if (match.used.some((at) => used.has(at))) return false;
    for (const at of match.used) used.add(at);
    return true;
  });
  return kept.sort((a, b) => a.first - b.first);
}

const AND = set('and or');

/** What belongs to one act stands in one clause; "plus and minus" is none of its own. */
function isOneClause(words: readonly Word[], { first, last, used }: Match<Meaning>): boolean {
  for (let at = first + 1; at <= last; at++) {
    if (words[at]?.clause === words[at - 1]?.clause) continue;
    const breaks = words[at]?.kind === 'word' ? at : at - 1;
    const { raw } = words[breaks] as Word;
    if (words[breaks - 1]?.text === ',') return false;
    if (!(AND.has(raw) && used.includes(breaks + 1)) && !used.includes(breaks)) return false;
  }
  return true;
}

/** "Off = lovely": a word alone that heads its line with what came of it. */
const isLoneSwitch = (words: readonly Word[], { first, used }: Match<Meaning>): boolean =>
  used.length === 1 &&
  (words[first] as Word).raw === 'off' &&
  !(
    words[first - 1]?.sentence !== words[first]?.sentence && ['=', ':'].includes(words[first + 1]?.raw ?? '')
  );

const UNDOING = set(
  'put plugged moved turned swapped switched set went pushed changed shoved took hung laid brought slid goes going',
);
const KEEPING = set('left leaving kept keeping stays');
const STAYS_REACH = 14;

/** "… then put it back" undoes an act, "and left it so" keeps it; undefined where neither is said. */
function staysAfter(words: readonly Word[], last: number): boolean | undefined {
  for (let at = last + 1; at <= last + STAYS_REACH && at < words.length; at++) {
    if (isUndoing(words, at)) return false;
    if (KEEPING.has((words[at] as Word).raw) && ['it', 'that', 'so'].includes(words[at + 1]?.raw ?? ''))
      return true;
  }
  return undefined;
}

/** "Put it back", "shoved it back", "reverted". */
function isUndoing(words: readonly Word[], at: number): boolean {
  const { raw } = words[at] as Word;
  if (raw === 'reverted' || raw === 'undid') return true;
  return UNDOING.has(raw) && words.slice(at + 1, at + 4).some((word) => word.raw === 'back');
}

/** The home test that is the same act. */
function mirrorOf(meaning: Meaning): ReturnType<typeof actSpec>['mirror'] {
  return meaning.kind === 'act' ? actSpec(meaning.act).mirror : undefined;
}

function named(meaning: Meaning, result: Result): Pick<ToldTrial, 'act' | 'test' | 'outcome' | 'answer'> {
  if (meaning.kind === 'act') {
    const { act } = meaning;
    const mirror = mirrorOf(meaning);
    const outcome = 'outcome' in result ? result.outcome : mirror?.outcomes[result.value];
    if (outcome === undefined || outcome === 'cannot-tell') return {};
    const answer = 'value' in result ? result.value : mirror?.answers[outcome];
    return {
      act,
      outcome,
      ...(mirror && answer !== undefined ? { test: mirror.fact as TestId, answer } : {}),
    };
  }
  if (meaning.kind !== 'test') return {};
  const answer = 'value' in result ? result.value : trialWords.tests?.[meaning.test]?.outcome[result.outcome];
  return answer === undefined ? {} : { test: meaning.test, answer };
}

function ofEntry(
  { first, last, meaning }: Match<Meaning>,
  words: readonly Word[],
  { classes }: Lexicon,
): Pick<ToldTrial, 'of'> {
  if (meaning.kind !== 'act' || meaning.act !== 'entry-corrected') return {};
  const of = (['center', 'subwoofer', 'mains'] as const).find((name) =>
    words.slice(first, last + 4).some(({ text }) => classes.get(name)?.has(text)),
  );
  return of === undefined ? {} : { of };
}

/** A sentence that begins so tells of something else, or of now. */
const TURNS = set('now tonight today anyway also thinking plan planning question currently meanwhile since');

function outcomeOf(
  { words, lexicon }: FoundText,
  others: Others,
  act: Match<Meaning>,
  starts: readonly number[],
  complaints: Complaints,
): Came | undefined {
  const { sentence } = words[act.first] as Word;
  const test = act.meaning.kind === 'test' ? act.meaning.test : mirrorOf(act.meaning)?.fact;
  const own = lexicon.after.get(test as TestId);
  const stop = starts.find((start) => start > act.last + 1) ?? words.length;
  let next = -1;
  for (let at = act.first; at < stop; at++) {
    const word = words[at] as Word;
    const further = word.sentence - sentence;
    if (further > (isNamed(words, act) || isOfPersons(act) ? 0 : 1)) break;
    if (further === 0 ? at > act.last + AHEAD : next >= 0 && at > next + NEXT_SENTENCE) break;
    if (further > 0 && next < 0) {
      next = at;
      if (TURNS.has(word.raw)) break;
    }
    if (at <= act.last) {
      if (act.used.includes(at)) continue;
    } else if (isUndoing(words, at)) break;
    if (others.planned[at] || others.asked[at]) continue;
    const came = cameAt(words, at, lexicon, own, act.used).find(
      ({ used }) => !used.some((each) => act.used.includes(each)),
    );
    if (came && at > act.last) return softened(words, came, act.last);
    const complaint = at > act.last && !isOfPersons(act) ? ofComplaint(words, complaints, at) : undefined;
    if (complaint) return complaint;
  }
  if (!isCondition(words, act)) return undefined;
  for (let at = act.first - 1; at >= Math.max(0, act.first - BEHIND); at--) {
    const word = words[at] as Word;
    if (word.sentence !== sentence || word.hard) break;
    const came = cameAt(words, at, lexicon, own).find(({ last }) => last < act.first);
    if (came) return came;
  }
  return undefined;
}

/** What follows is told of somebody else. */
const isOfPersons = ({ meaning }: Match<Meaning>): boolean =>
  meaning.kind === 'act' && (meaning.act === 'seats-exchanged' || meaning.act === 'other-person-listened');

/** Complaints by the word they begin at. */
type Complaints = ReadonlyMap<number, Match<Meaning>>;

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

const NEW = set('new another other different bigger');
const PLACING = set('set put place placed have has sits stands mounted moved');
const GOVERN_REACH = 4;

/** "New center": an exchange told without a verb, which goes no farther than its sentence. */
const isNamed = (words: readonly Word[], { first }: Match<Meaning>): boolean =>
  NEW.has((words[first] as Word).raw);

/** "Set the new center on the shelf" tells of a place; "7 inches high" lifts nothing. */
function isOnlyNamed(words: readonly Word[], match: Match<Meaning>): boolean {
  if (match.used.length === 1 && isSizeWord(words, match.first)) return true;
  if (!isNamed(words, match)) return false;
  const { clause } = words[match.first] as Word;
  return words
    .slice(Math.max(0, match.first - GOVERN_REACH), match.first)
    .some(
      (word, index, before) =>
        word.clause === clause && PLACING.has(word.raw) && before[index + 1]?.raw !== 'in',
    );
}

/** "Since I raised it": that is how the trouble began. */
const isBeginning = (words: readonly Word[], { first }: Match<Meaning>): boolean =>
  words
    .slice(Math.max(0, first - 5), first)
    .some(({ raw, clause }) => raw === 'since' && clause === (words[first] as Word).clause);

/** A way to listen instead of something done: "in stereo". */
const isState = (words: readonly Word[], { first, meaning }: Match<Meaning>): boolean =>
  meaning.kind === 'act' && meaning.act === 'upmix-off' && STATES.has((words[first] as Word).text);
const STATES = set('in plainStereo stereo');

/** "I turned", "switching", "tried": done, and no mere state such as "center set to small". */
function isDone(words: readonly Word[], { first, last }: Match<Meaning>): boolean {
  const { clause } = words[first] as Word;
  return words.slice(Math.max(0, first - 4), last + 1).some(({ raw, clause: own }, at, all) => {
    if (own !== clause || STATED.has(raw)) return false;
    if (raw === 'set' || raw === 'put')
      return PERSONS.has(all[at - 1]?.raw ?? '') || !PLACED.has(all[at + 1]?.raw ?? '');
    return /(?:ed|ing)$/.test(raw) || DONE.has(raw);
  });
}
const STATED = set(
  'unchanged red speed bed need indeed something anything nothing everything evening during',
);
const PERSONS = set('i we he she they and then');
/** "Center set to small", "put at the wall": a state. */
const PLACED = set('to at on in under by as');
const DONE = set(
  'took swapped swap tried try got pull push move turn raise lower flip mute unplug plug tilt cut made make went ran reran laid lay stood sat knelt lift with without after when if once by bought hung sent slid stuck lent gave brought told built drew wore let redid did stuffed held threw dropped add spread shut chose had has takes took sits listen exchange drag set leant rewire wedge shove shoved',
);

/** What came of it stands near in the same sentence, or begins the next one. */
function isClose(words: readonly Word[], act: Match<Meaning>, came: Came): boolean {
  if (words[act.first]?.sentence === words[came.first]?.sentence)
    return Math.max(came.first - act.last, act.first - came.last) <= CLOSE;
  return words[came.first - 1]?.sentence === words[act.first]?.sentence;
}
const CLOSE = 6;

const UNDONE = set('not never havent hasnt hadnt didnt dont wont cannot cant');
const UNDONE_REACH = 6;

/** "I have not tried another amplifier": the denial is of the act, and no outcome. */
function isUndone(words: readonly Word[], { first, last, used }: Match<Meaning>, came: Came): boolean {
  for (let at = first + 1; at < last; at++)
    if (!used.includes(at) && UNDONE.has((words[at] as Word).raw)) return true;
  for (let at = first - 1; at >= Math.max(0, first - UNDONE_REACH); at--) {
    const { raw, kind, hard } = words[at] as Word;
    if (hard || (kind === 'mark' && raw !== '"')) return false;
    if (UNDONE.has(raw)) return !(came.used.length > 1 && came.used.includes(at));
  }
  return false;
}

/** Outcomes that begin at this word, those in the test's own words first, then the longest. */
function cameAt(
  words: readonly Word[],
  at: number,
  lexicon: Lexicon,
  own: Lexicon['after'] extends ReadonlyMap<TestId, infer I> ? I | undefined : never,
  ofAct: readonly number[] = [],
): Came[] {
  const mine = own
    ? matchesAt(words, at, own).map((match): Came => ({ ...match, size: match.used.length + 1 }))
    : [];
  const common = matchesAt(words, at, lexicon.outcomes).map((match): Came => {
    const outcome: Outcome =
      (match.meaning === 'gone' || match.meaning === 'better') &&
      isDenied(words, { ...match, used: [...match.used, ...ofAct] })
        ? 'same'
        : match.meaning;
    return { ...match, meaning: { outcome }, size: match.used.length };
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

/** The same act told in several places is one trial: the fullest telling counts. */
function oncePerAct(told: readonly ToldTrial[]): ToldTrial[] {
  const best = new Map<string, ToldTrial>();
  for (const each of told) {
    const key = each.act ?? (each.test as string);
    const before = best.get(key);
    if (before === undefined || each.size > before.size) best.set(key, each);
  }
  return [...best.values()].sort((a, b) => a.first - b.first);
}
