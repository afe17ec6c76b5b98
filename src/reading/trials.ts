/** Acts and home tests with what came of them. */
import { ACTS, type ActId, type EntryOf } from '../facts/acts.js';
import type { TestId } from '../facts/catalog.js';
import type { Outcome } from '../facts/words/lexicon.js';
import { trialWords } from '../facts/words/trials.js';
import type { FoundText } from './find.js';
import type { Lexicon, Meaning, Result } from './lexicon.js';
import { type Match, matchesAt } from './pattern.js';
import { contextOf, isDenied, type Others } from './scope.js';
import type { Word } from './sentences.js';
import { isSizeWord } from './subject.js';

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

/** Words behind an act in which its outcome is looked for, and before it. */
const AHEAD = 22;
const BEHIND = 9;
/** An outcome told in a sentence of its own stands at its beginning. */
const NEXT_REACH = 5;

interface Came extends Match<Result> {
  readonly size: number;
}

export function trialsIn({ words, matches, lexicon }: FoundText, others: Others): ToldTrial[] {
  const acts = longest(matches.filter(({ meaning }) => meaning.kind === 'act' || meaning.kind === 'test'));
  const praised = new Set(
    matches.flatMap(({ meaning, used }) =>
      meaning.kind === 'choice' && meaning.fact === 'fineContent' ? used : [],
    ),
  );
  const starts = acts.map(({ first }) => first);
  const told = acts.flatMap((match): ToldTrial[] => {
    const context = contextOf(words, match, others);
    if (context.planned || context.asked || context.other || isOnlyNamed(words, match)) return [];
    const own = match.meaning.kind === 'test' ? lexicon.after.get(match.meaning.test) : undefined;
    const came = outcomeOf(words, match, starts, lexicon, own);
    if (came === undefined || isUndone(words, match, came)) return [];
    if (match.meaning.kind === 'act' && !isDone(words, match) && !isClose(words, match, came)) return [];
    if (isState(words, match) && came.used.some((at) => praised.has(at))) return [];
    const span = {
      first: Math.min(match.first, came.first),
      last: Math.max(match.last, came.last),
      actFirst: match.first,
      actLast: match.last,
      cameFirst: came.first,
      cameLast: came.last,
      size: match.used.length + came.size,
    };
    const stays = staysAfter(words, span.last);
    return [
      { ...named(match.meaning, came.meaning), ...(stays === undefined ? {} : { stays }), ...span },
    ].filter((each) => each.answer !== undefined || each.act !== undefined);
  });
  return oncePerAct(told);
}

const UNDOING = new Set([
  'put',
  'plugged',
  'moved',
  'turned',
  'swapped',
  'switched',
  'set',
  'went',
  'pushed',
  'changed',
]);
const KEEPING = new Set(['left', 'leaving', 'kept', 'keeping']);
const STAYS_REACH = 12;

/** "… then put it back" undoes an act, "and left it so" keeps it; undefined where neither is said. */
function staysAfter(words: readonly Word[], last: number): boolean | undefined {
  const behind = words.slice(last + 1, last + 1 + STAYS_REACH);
  for (const [at, { raw }] of behind.entries()) {
    if (raw === 'reverted' || raw === 'undid') return false;
    if (raw === 'back' && behind.slice(Math.max(0, at - 3), at).some((word) => UNDOING.has(word.raw)))
      return false;
    if (KEEPING.has(raw) && ['it', 'that', 'so'].includes(behind[at + 1]?.raw ?? '')) return true;
  }
  return undefined;
}

function named(meaning: Meaning, result: Result): Pick<ToldTrial, 'act' | 'test' | 'outcome' | 'answer'> {
  const outcome = 'outcome' in result ? result.outcome : undefined;
  if (meaning.kind === 'act') {
    const { act } = meaning;
    if (outcome === undefined) return {};
    const spec = ACTS[act];
    const mirror = 'mirror' in spec ? spec.mirror : undefined;
    const answer = mirror?.answers[outcome];
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

/** Of acts that share words the one with the longest phrase; a test may be told in the same words as an act. */
function longest(matches: readonly Match<Meaning>[]): Match<Meaning>[] {
  const keyOf = ({ meaning }: Match<Meaning>): string =>
    meaning.kind === 'test' ? meaning.test : meaning.kind;
  const sorted = [...matches].sort((a, b) => b.used.length - a.used.length || a.first - b.first);
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

function outcomeOf(
  words: readonly Word[],
  act: Match<Meaning>,
  starts: readonly number[],
  lexicon: Lexicon,
  own: Lexicon['after'] extends ReadonlyMap<TestId, infer I> ? I | undefined : never,
): Came | undefined {
  const { sentence } = words[act.first] as Word;
  const stop = starts.find((start) => start > act.last + 1) ?? words.length;
  const until = Math.min(words.length, act.last + AHEAD, stop);
  let next = -1;
  for (let at = act.first; at < until; at++) {
    const word = words[at] as Word;
    if (word.sentence > sentence + (isNamed(words, act) ? 0 : 1)) break;
    if (word.sentence > sentence && next < 0) next = at;
    if (next >= 0 && at > next + NEXT_REACH) break;
    const came = cameAt(words, at, lexicon, own, act.used).find(
      ({ used }) => at > act.last || !used.some((each) => act.used.includes(each)),
    );
    if (came && at > act.last) return came;
  }
  for (let at = act.first - 1; at >= Math.max(0, act.first - BEHIND); at--) {
    const word = words[at] as Word;
    if (word.sentence !== sentence || word.hard) break;
    const came = cameAt(words, at, lexicon, own).find(({ last }) => last < act.first);
    if (came) return came;
  }
  return undefined;
}

const NEW = new Set(['new', 'another', 'other', 'different', 'bigger']);
const PLACING = new Set([
  'set',
  'put',
  'place',
  'placed',
  'have',
  'has',
  'sits',
  'stands',
  'mounted',
  'moved',
]);
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

/** A way to listen instead of something done: "in stereo". */
const isState = (words: readonly Word[], { first, meaning }: Match<Meaning>): boolean =>
  meaning.kind === 'act' && meaning.act === 'upmix-off' && STATES.has((words[first] as Word).text);
const STATES = new Set(['in', 'plainStereo', 'stereo']);

/** "I turned", "switching", "tried": done, and no mere state such as "center set to small". */
function isDone(words: readonly Word[], { first, last }: Match<Meaning>): boolean {
  const { clause } = words[first] as Word;
  return words.slice(Math.max(0, first - 4), last + 1).some(({ raw, clause: own }, at, all) => {
    if (own !== clause || STATED.has(raw)) return false;
    if (raw === 'set' || raw === 'put') return PERSONS.has(all[at - 1]?.raw ?? 'i');
    return /(?:ed|ing)$/.test(raw) || DOING.has(raw);
  });
}
const STATED = new Set(
  'unchanged red speed bed need indeed something anything nothing everything evening during'.split(' '),
);
const PERSONS = new Set('i we he she they and then'.split(' '));
const DOING = new Set(
  'took swapped swap tried try got pull push move turn raise lower flip mute unplug plug tilt cut made went ran laid stood sat knelt lift with without after when if once by bought hung sent had redid'.split(
    ' ',
  ),
);

/** What came of it stands in the same sentence, and near. */
const isClose = (words: readonly Word[], act: Match<Meaning>, came: Came): boolean =>
  words[act.first]?.sentence === words[came.first]?.sentence &&
  Math.max(came.first - act.last, act.first - came.last) <= 9;

const UNDONE = new Set(['not', 'never', 'havent', 'hasnt', 'hadnt', 'didnt', 'dont']);

/** "I have not tried another amplifier": the denial is of the act, and no outcome. */
function isUndone(words: readonly Word[], { first }: Match<Meaning>, came: Came): boolean {
  const { clause } = words[first] as Word;
  return words
    .slice(Math.max(0, first - 3), first)
    .some(
      (word, index) =>
        word.clause === clause &&
        UNDONE.has(word.raw) &&
        !(came.used.length > 1 && came.used.includes(Math.max(0, first - 3) + index)),
    );
}

/** Outcomes that begin at this word, those in the test's own words first, then the longest. */
function cameAt(
  words: readonly Word[],
  at: number,
  lexicon: Lexicon,
  own: Parameters<typeof outcomeOf>[4],
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
        : match.meaning === 'gone' && isPartly(words, match)
          ? 'better'
          : match.meaning;
    return { ...match, meaning: { outcome }, size: match.used.length };
  });
  return [...mine, ...common]
    .filter(
      ({ used }) =>
        !used.some((each) => isSizeWord(words, each)) && !(used.length === 1 && isOfNoun(words, at)),
    )
    .sort((a, b) => b.size - a.size);
}

const PARTLY = new Set('almost nearly mostly partly half basically'.split(' '));
const PARTLY_BEHIND = new Set('mostly partly most almost half'.split(' '));

/** "Almost gone", "gone for the most part". */
const isPartly = (words: readonly Word[], { first, last }: Match<unknown>): boolean =>
  words.slice(Math.max(0, first - 2), first).some(({ raw }) => PARTLY.has(raw)) ||
  words.slice(last + 1, last + 5).some(({ raw }) => PARTLY_BEHIND.has(raw));

/** "The same solo": no outcome, it stands with a noun. */
const isOfNoun = (words: readonly Word[], at: number): boolean =>
  words[at]?.raw === 'same' && words[at + 1]?.kind === 'word' && !SAME_ENDS.has((words[at + 1] as Word).raw);
const SAME_ENDS = new Set('as again on here either for in with story thing result there and but'.split(' '));

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
