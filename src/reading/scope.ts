/** What stands around a phrase and changes what it says: denial, doubt, time, other people, wishes, questions. */
import { MARKERS, type MarkerKind, RETURNS, WITNESSES } from '../facts/words/markers.js';
import { compiledAll, lexicon } from './lexicon.js';
import { type Index, indexed, matchesAt } from './pattern.js';
import type { Word } from './sentences.js';

/** A phrase found: the words it covers, and those of them that it names. */
export interface Span {
  readonly first: number;
  readonly last: number;
  readonly used: readonly number[];
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

export interface Context {
  /** Said of another room, another system, or by somebody who was not there. */
  readonly other: boolean;
  /** What it is like: no thing that is there. */
  readonly likened: boolean;
  /** A guess of the owner. */
  readonly hedged: boolean;
  /** He does not know, he wonders. */
  readonly unknown: boolean;
  /** A plan, a wish, advice: nothing that is. */
  readonly planned: boolean;
  readonly asked: boolean;
  /** As it was before. */
  readonly past: boolean;
  /** Tried for a while only. */
  readonly brief: boolean;
  readonly measured: boolean;
  readonly readOff: boolean;
}

/** The whole text is a guess. */
export const isHedged = (words: readonly Word[]): boolean =>
  words.some(({ raw }) => ABOUT.has(raw)) || [...othersIn(words).hedged].some((opener) => opener > 0);

const ABOUT = set('about around roughly approximately approx circa ca');
const MEASURED = set(
  'measured measure taped tape laser ruler meter spl counted mic microphone sweep sweeps app string rew analyser analyzer',
);
const READ_OFF = set(
  'menu says display shows reads manual sheet datasheet spec label setup readout entered typed set setting trim settings page info',
);

/** For every word the marker (its first word, counted from 1) in whose reach it stands; 0 where there is none. */
export type Others = Readonly<Record<MarkerKind | 'asked', Int32Array>>;

export function contextOf(words: readonly Word[], { first, last, used }: Span, others: Others): Context {
  const planned = others.planned.subarray(first, last + 1);
  return {
    other: others.other[first] !== 0,
    likened: others.likened[first] !== 0,
    past: others.past[first] !== 0,
    brief: others.brief[first] !== 0,
    asked: others.asked[first] !== 0,
    hedged: others.hedged[first] !== 0,
    unknown: others.unknown[first] !== 0,
    planned: planned.some((opener) => opener !== 0 && !used.includes(opener - 1)),
    measured: isSaidBeside(words, first - REACH, last + BEYOND, first, MEASURED),
    readOff: isSaidBeside(words, first - REACH, last, first, READ_OFF),
  };
}

/** Words looked back over for what says how a phrase is known, and looked ahead. */
const REACH = 14;
const BEYOND = 6;

function isSaidBeside(
  words: readonly Word[],
  from: number,
  to: number,
  first: number,
  sayings: ReadonlySet<string>,
): boolean {
  const { sentence } = words[first] as Word;
  for (let at = Math.max(0, from); at <= to && at < words.length; at++) {
    const word = words[at] as Word;
    if (word.sentence === sentence && sayings.has(word.raw)) return true;
  }
  return false;
}

interface Marker {
  readonly kind: MarkerKind;
  readonly role: 'ahead' | 'back' | 'return';
}
let markers: Index<Marker> | undefined;
const KINDS = Object.keys(MARKERS) as MarkerKind[];

const markerIndex = (): Index<Marker> =>
  indexed(
    KINDS.flatMap((kind) => [
      ...compiledAll<Marker>(MARKERS[kind].ahead, { kind, role: 'ahead' }, lexicon().classes),
      ...compiledAll<Marker>(MARKERS[kind].back, { kind, role: 'back' }, lexicon().classes),
      ...compiledAll<Marker>(RETURNS[kind], { kind, role: 'return' }, lexicon().classes),
    ]),
  );

/** Everything that governs the words of a text, found in one pass. */
export function othersIn(words: readonly Word[]): Others {
  markers ??= markerIndex();
  const empty = (): Int32Array => new Int32Array(words.length);
  const out = {
    other: empty(),
    likened: empty(),
    planned: empty(),
    past: empty(),
    brief: empty(),
    hedged: empty(),
    unknown: empty(),
    asked: empty(),
  };
  const open = new Map<MarkerKind, number>();
  for (let at = 0; at < words.length; at++) {
    const word = words[at] as Word;
    const before = words[at - 1];
    const isNew = before !== undefined && before.sentence !== word.sentence;
    for (const [kind, opener] of open) if (isNew || isOver(kind, words, at, opener)) open.delete(kind);
    for (const { meaning, first, last } of matchesAt(words, at, markers)) {
      const { kind, role } = meaning;
      if (role === 'return' && (startsClause(words, at) || (kind === 'past' && NOW.has(word.raw))))
        open.delete(kind);
      else if (role === 'ahead' && isMeant(words, at, kind)) open.set(kind, open.get(kind) ?? first);
      // "… what they say" is no "…, they say".
      else if (
        role === 'back' &&
        (kind !== 'other' || before?.kind === 'mark' || word.raw === 'in' || word.raw === 'at') &&
        !(kind === 'unknown' && ASIDE.has(words[last + 1]?.raw ?? ''))
      )
        for (const place of clauseBefore(words, first)) out[kind][place] = last + 1;
    }
    if (word.raw === 'if' && isSupposed(words, at)) open.set('planned', at);
    if (isBefore(words, at)) open.set('past', at);
    if (word.text === '>' && (before === undefined || before.text === '\n')) open.set('other', at);
    for (const [kind, opener] of open) out[kind][at] = opener + 1;
    if (word.text === '?') markAsked(words, at, out.asked);
  }
  return out;
}

/** "No idea who put it there": the value is known. */
const ASIDE = set('who why how when whose');
const NOW = set('now today nowadays currently');
/** How far a guess and a "don't know" reach beyond their clause, in words. */
const DOUBT_REACH = 6;
/** A reason or a place told for what is planned is no plan. */
const REASONS = set('because since as so where who');
const SUBJECTS = set('i we it he she there this that');

/** What a marker opened ends before this word. */
function isOver(kind: MarkerKind, words: readonly Word[], at: number, opener: number): boolean {
  const word = words[at] as Word;
  const one = words[opener] as Word;
  if (words[at - 1]?.text === ';') return true;
  if (kind === 'likened') return word.clause > (words[opener + 1] as Word).clause;
  if (word.hard && word.kind === 'word') return kind !== 'past' || !isPastClause(words, at);
  // "Went from a flat set to a projector": only what stands between is no more.
  if (kind === 'past' && word.raw === 'to' && words[opener + 1]?.raw === 'from') return true;
  if (word.clause === one.clause) return false;
  if (kind === 'hedged' || kind === 'unknown') return at - opener > DOUBT_REACH;
  // "I blamed age, ran the setup again": a theory of his own goes no farther than its clause.
  if (kind === 'other') return (SUBJECTS.has(one.raw) || one.raw === 'blamed') && words[at - 1]?.text === ',';
  if (kind !== 'planned') return false;
  if (one.raw === 'if') return false;
  const next = words[at + 1]?.raw ?? '';
  if (REASONS.has(word.raw)) return true;
  if (word.raw === 'and' || word.raw === 'or') return SUBJECTS.has(next);
  const isComma = words[at - 1]?.kind === 'mark' && words[at - 1]?.soft === false;
  return isComma && !['and', 'or', 'then', 'to', 'maybe'].includes(word.raw);
}

const PAST_VERBS = set('was were had did used');

/** "… but it rattled": still of then. */
const isPastClause = (words: readonly Word[], at: number): boolean =>
  words
    .slice(at + 1, at + 5)
    .some(
      ({ raw, sentence }) => sentence === words[at]?.sentence && (PAST_VERBS.has(raw) || /[^e]ed$/.test(raw)),
    );

/** The clause that ends before this place; where the place begins a clause, the one before. */
function clauseBefore(words: readonly Word[], first: number): number[] {
  const { sentence } = words[first] as Word;
  const out: number[] = [];
  let clause: number | undefined;
  for (let at = first - 1; at >= Math.max(0, first - 2 * REACH); at--) {
    const word = words[at] as Word;
    if (word.sentence !== sentence || (word.hard && out.length > 0)) break;
    if (word.kind === 'mark' && out.length === 0) continue;
    clause ??= word.clause;
    if (word.clause !== clause) break;
    out.push(at);
  }
  return out;
}

const JOINING = set('and so then or but');

function startsClause(words: readonly Word[], at: number): boolean {
  const before = words[at - 1];
  if (before === undefined) return true;
  const word = words[at] as Word;
  if (JOINING.has(word.raw)) return false;
  return before.clause !== word.clause || before.kind === 'mark' || JOINING.has(before.raw);
}

/** "Seems like if": words that open nothing where they stand. */
function isMeant(words: readonly Word[], at: number, kind: MarkerKind): boolean {
  const before = words[at - 1]?.raw ?? '';
  const { raw } = words[at] as Word;
  // "As in the cinema", "like in a shop": a likeness.
  if (kind === 'other' && (raw === 'in' || raw === 'at')) return before !== 'as' && before !== 'like';
  if (kind === 'other' && SAYING.has(raw)) return words[at + 1]?.raw !== 'so' && isOutsider(words, at);
  // "Cust thinks": the owner, as his call is noted.
  if (kind === 'other' && CALLERS.has(before)) return false;
  if (raw === 'would') return !['not', 'always'].includes(words[at + 1]?.raw ?? '');
  return true;
}

const CALLERS = set('cust customer caller client owner');
const SAYING = set('says said told tells');
const FAMILY = set(WITNESSES);
const HERS = set('my our the a his her who just even also always still and keep keeps once never');

/** "The tailor says": nobody of the home and no device. */
function isOutsider(words: readonly Word[], at: number): boolean {
  const { clause } = words[at] as Word;
  for (let place = at - 1; place >= Math.max(0, at - 5); place--) {
    const word = words[place] as Word;
    if (word.clause !== clause && word.kind !== 'mark') return false;
    if (word.kind !== 'word' || HERS.has(word.raw)) continue;
    return !FAMILY.has(word.raw) && !FAMILY.has(word.text) && !FAMILY.has(words[place - 1]?.raw ?? '');
  }
  return false;
}

/** "If I sat closer, it would …": nothing that is. "As if", "even if", "see if" suppose nothing. */
function isSupposed(words: readonly Word[], at: number): boolean {
  const { sentence } = words[at] as Word;
  if (['as', 'like', 'even'].includes(words[at - 1]?.raw ?? '')) return false;
  const near = (place: number): boolean => words[place]?.sentence === sentence;
  for (let place = Math.max(0, at - REACH); place <= at + 2 * REACH; place++)
    if (near(place) && MODALS.has((words[place] as Word).raw)) return true;
  return false;
}
const MODALS = set('would could might should id itd youd wed hed theyd');

/** "Before, it was …", "before we moved": but not "two feet before the center". */
function isBefore(words: readonly Word[], at: number): boolean {
  const word = words[at] as Word;
  if (word.raw !== 'before' || ['since', 'from', 'as'].includes(words[at - 1]?.raw ?? '')) return false;
  const next = words[at + 1]?.raw ?? '';
  const first = words[at - 1];
  if (next === 'and') return false;
  if (next === 'it' || next === 'them') return PAST_VERBS.has(words[at + 2]?.raw ?? '');
  if (first === undefined || first.sentence !== word.sentence || BEFORE_WHAT.has(next)) return true;
  return first.kind === 'mark' && !first.soft;
}
const BEFORE_WHAT = set('i we that he she they this then');

const ASKING = set(
  'is are do does did should could can would will am was were has have might may shall what which who isnt anyone anybody arent any',
);
const OPENING = set('so or and but then if also hi guys ok');

/** From the first clause that asks yes or no to the question mark; what stands before it was told. */
function markAsked(words: readonly Word[], end: number, asked: Int32Array): void {
  const { sentence } = words[end] as Word;
  let from: number | undefined;
  for (let at = end - 1; at >= Math.max(0, end - MOST_ASKED) && words[at]?.sentence === sentence; at--) {
    let start = at;
    if (at > 0 && words[at - 1]?.sentence === sentence && words[at - 1]?.clause === words[at]?.clause)
      continue;
    while (start < end && ((words[start] as Word).kind !== 'word' || OPENING.has((words[start] as Word).raw)))
      start++;
    if (ASKING.has(words[start]?.raw ?? '')) from = at;
  }
  if (from !== undefined) asked.fill(end + 1, from, end);
}

const MOST_ASKED = 40;
