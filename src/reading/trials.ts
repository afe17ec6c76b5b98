/** Acts and home tests with what came of them. */
import { ACT_IDS, type ActId, type EntryOf, type Outcome } from '../facts/acts.js';
import type { TestId } from '../facts/catalog.js';
import { trialWords } from '../facts/words/trials.js';
import type { FoundText } from './find.js';
import type { Lexicon, Meaning, Result } from './lexicon.js';
import {
  type Came,
  type Complaints,
  isDecisive,
  isNamed,
  isOfPersons,
  isUndoing,
  mirrorOf,
  outcomeOf,
} from './outcomes.js';
import type { Match } from './pattern.js';
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
  const told = acts.flatMap((match): ToldTrial[] => {
    const context = contextOf(words, match, others);
    if (isUndoing(words, match.first) && !match.used.some((at) => words[at]?.raw === 'back')) return [];
    if (context.planned || context.asked || isOfOthers(words, match, others)) return [];
    const came = outcomeOf(found, others, match, acts, complaints);
    if (came === undefined || isUndone(words, match, came)) return [];
    if (isBeginning(words, match) && !isRelieved(words, came)) return [];
    if (match.meaning.kind === 'act' && !isDone(words, match) && !isClose(words, match, came)) return [];
    if (isState(words, match) && came.used.some((at) => praised.has(at))) return [];
    if (isOfOutsider(words, match, came)) return [];
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

const OUTSIDERS = set('colleague coworker neighbor neighbour cousin friend buddy mate brother boss dealer');
const THEIRS = set('his her hers their theirs him');

/** "My neighbor changed his to small and was pleased": his system. */
function isOfOutsider(words: readonly Word[], match: Match<Meaning>, came: Came): boolean {
  const { sentence } = words[match.first] as Word;
  const before = words.slice(Math.max(0, match.first - 3), match.first);
  return (
    before.some((word) => word.sentence === sentence && OUTSIDERS.has(word.raw)) &&
    words.slice(Math.max(0, match.first - 3), came.last + 1).some(({ raw }) => THEIRS.has(raw))
  );
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
const SUBJECTS = set('i we it he she they that this');

/** What belongs to one act stands in one clause; "plus and minus" is none of its own, "and it" is. */
function isOneClause(words: readonly Word[], { first, last, used }: Match<Meaning>): boolean {
  for (let at = first + 1; at <= last; at++) {
    if (words[at]?.clause === words[at - 1]?.clause) continue;
    const breaks = words[at]?.kind === 'word' ? at : at - 1;
    const { raw } = words[breaks] as Word;
    if (words[breaks - 1]?.text === ',') return false;
    const joins = AND.has(raw) && used.includes(breaks + 1) && !SUBJECTS.has(words[breaks + 1]?.raw ?? '');
    if (!joins && !used.includes(breaks)) return false;
  }
  return true;
}

const OBJECTS = set('the my our a an his her their level volume');

/** "Off = lovely": a word alone that heads its line with what came of it; "raised the television": something else was. */
function isLoneSwitch(words: readonly Word[], { first, used }: Match<Meaning>): boolean {
  if (used.length > 1) return false;
  const next = words[first + 1]?.raw ?? '';
  if ((words[first] as Word).raw !== 'off') return OBJECTS.has(next);
  return words[first - 1]?.sentence === words[first]?.sentence || (next !== '=' && next !== ':');
}

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

function named(meaning: Meaning, result: Result): Pick<ToldTrial, 'act' | 'test' | 'outcome' | 'answer'> {
  if (meaning.kind === 'act') {
    const { act } = meaning;
    const mirror = mirrorOf(meaning);
    const outcome = 'outcome' in result ? result.outcome : mirror?.outcomes[result.value];
    if (outcome === undefined) return {};
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

const PLACING = set('set put place placed have has sits stands mounted moved');
const GOVERN_REACH = 4;

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

/** "Since I raised it": that is how the trouble began, unless it says that it is better since. */
const isBeginning = (words: readonly Word[], { first }: Match<Meaning>): boolean =>
  words
    .slice(Math.max(0, first - 5), first)
    .some(({ raw, clause }) => raw === 'since' && clause === (words[first] as Word).clause);

const isRelieved = (words: readonly Word[], came: Came): boolean =>
  isDecisive(words, came) && !('outcome' in came.meaning && came.meaning.outcome === 'worse');

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
  'drawn taken took swapped swap tried try got pull push move turn raise lower flip mute unplug plug tilt cut made make went ran reran laid lay stood sat knelt lift with without after when if once by bought hung sent slid stuck lent gave brought told built drew wore let redid did stuffed held threw dropped add spread shut chose had has took listen exchange drag set leant rewire wedge shove shoved',
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
