/** What stands around a phrase and changes what it says: denial, doubt, time, other people, wishes, questions. */
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

/** A phrase found: the words it covers, and those of them that it names. */
export interface Span {
  readonly first: number;
  readonly last: number;
  readonly used: readonly number[];
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

const NEGATORS = set(
  'not no never none nothing without neither nor isnt arent wasnt werent dont doesnt didnt wont cant couldnt wouldnt havent hasnt hadnt shouldnt cannot aint nobody hardly zero nope nowhere',
);
/** "Not only muffled", "no doubt", "not sure": no denial of what follows. */
const NO_DENIAL_BEFORE = set('only just doubt wonder sure merely surprise necessarily bad idea');
const LIST = set('or nor and ,');
/** Most words between a denial and what it denies. */
const DENIAL_REACH = 4;

/** The phrase is denied: "not muffled", "doesn't rattle", "no echo or boom", "volume's not the issue". */
export function isDenied(words: readonly Word[], { first, last, used }: Span): boolean {
  for (let at = first + 1; at < last; at++) {
    if (!used.includes(at) && isNegator(words, at) && !isInability(words, at)) return true;
  }
  const { sentence } = words[first] as Word;
  let left = DENIAL_REACH;
  for (let at = first - 1; at >= 0 && left > 0; at--) {
    const word = words[at] as Word;
    if (word.sentence !== sentence || word.hard) break;
    if (isNegator(words, at) && !used.includes(at)) return !isInability(words, at) && !isDoubled(words, at);
    if (word.kind === 'mark' && !word.soft) {
      if (word.text !== ',') break;
      left--;
    } else if (!word.soft && !LIST.has(word.raw)) left--;
    if (word.text === ',' && !LIST.has(words[at + 1]?.raw ?? '')) break;
  }
  return isDeniedBehind(words, last);
}

function isNegator(words: readonly Word[], at: number): boolean {
  const word = words[at] as Word;
  if (word.kind !== 'word' || !NEGATORS.has(word.raw)) return false;
  return !NO_DENIAL_BEFORE.has(words[at + 1]?.raw ?? '');
}

const GRASPS = set('understand make follow catch');
const HEARS = set('hear get');
const HEARD_OF = set('what words half them him her anybody anyone people actors they voices dialogue dialog');

/** "Can't make out what they say": the denial is the complaint, it denies none. */
function isInability(words: readonly Word[], at: number): boolean {
  for (let ahead = at + 1; ahead <= at + 3 && ahead < words.length; ahead++) {
    const { raw, sentence, hard } = words[ahead] as Word;
    if (hard || sentence !== words[at]?.sentence) return false;
    if (raw === 'make') return words[ahead + 1]?.raw === 'out';
    if (GRASPS.has(raw)) return true;
    if (HEARS.has(raw)) return words.slice(ahead + 1, ahead + 3).some((word) => HEARD_OF.has(word.raw));
  }
  return false;
}

/** "Cannot play loud without getting harsh" */
function isDoubled(words: readonly Word[], at: number): boolean {
  if (words[at]?.raw !== 'without') return false;
  for (let back = at - 1; back >= Math.max(0, at - 2 * DENIAL_REACH); back--) {
    if (words[back]?.clause !== words[at]?.clause) return false;
    if (isNegator(words, back)) return true;
  }
  return false;
}

const ISSUE = set('issue problem case thing trouble matter');

/** "Volume isn't the issue", "rattles: no". */
function isDeniedBehind(words: readonly Word[], last: number): boolean {
  const behind = words.slice(last + 1, last + 5);
  const negator = behind.findIndex((word) => word.kind === 'word' && NEGATORS.has(word.raw));
  if (negator < 0 || behind.slice(0, negator).some((word) => word.hard || word.text === ',')) return false;
  return behind.slice(negator + 1).some((word) => ISSUE.has(word.raw));
}

export interface Context {
  /** Said of another room, another system, or by somebody who was not there. */
  readonly other: boolean;
  /** A guess of the owner. */
  readonly hedged: boolean;
  /** He does not know, he wonders. */
  readonly unknown: boolean;
  /** A plan, a wish, advice: nothing that is. */
  readonly planned: boolean;
  readonly asked: boolean;
  /** As it was before. */
  readonly past: boolean;
  readonly measured: boolean;
  readonly readOff: boolean;
}

/** The whole text is a guess. */
export const isHedged = (words: readonly Word[]): boolean =>
  words.some(({ raw }) => HEDGES.has(raw) || ABOUT.has(raw));

const ABOUT = set('about around roughly approximately approx circa ca');
const HEDGES = set(
  'maybe probably perhaps think guess possibly apparently suppose supposedly believe might must seems reckon assume afaik imagine kinda somehow',
);
const UNKNOWN = set('dunno idk unsure wonder wondering forgot unknown clueless tbd whether');
const PLANS = set(
  'should would will ill shall wish plan planning considering ought want wants wanted id recommends recommend advise advises recommended hope hoping propose proposes offered',
);
const MEASURED = set(
  'measured measure taped tape laser ruler meter spl counted mic microphone sweep sweeps app string rew analyser analyzer',
);
const READ_OFF = set(
  'menu says display shows reads manual sheet datasheet spec label setup readout entered typed set setting trim settings page info',
);
const ASKING = set(
  'is are do does did should could can would will am was were has have might may shall what which who or so isnt',
);
const SINCE_WHEN = set('since from');

/** The same words are looked around for many phrases: once is enough. */
export function contextOf(words: readonly Word[], span: Span, others: Others): Context {
  const key = span.first * MOST_SPAN + Math.min(span.last - span.first, MOST_SPAN - 1);
  const before = others.contexts.get(key);
  if (before !== undefined) return before;
  const context = lookAround(words, span, others);
  others.contexts.set(key, context);
  return context;
}

/** No phrase is longer. */
const MOST_SPAN = 128;

function lookAround(words: readonly Word[], span: Span, others: Others): Context {
  const { first, last } = span;
  const { sentence, clause } = words[first] as Word;
  const context = {
    hedged: false,
    unknown: false,
    planned: false,
    past: false,
    measured: false,
    readOff: false,
  };
  for (let at = first - 1; at >= 0 && at > first - REACH; at--) {
    const word = words[at] as Word;
    if (word.sentence !== sentence) break;
    const near = word.clause === clause;
    const { raw } = word;
    if (MEASURED.has(raw)) context.measured = true;
    if (READ_OFF.has(raw)) context.readOff = true;
    if (word.hard) break;
    if (!near && first - at > 6) continue;
    if (HEDGES.has(raw)) context.hedged = true;
    if (isUnknown(words, at)) context.unknown = true;
    if (near && isPlan(words, at)) context.planned = true;
    if (
      near &&
      isPast(words, at) &&
      !(raw === 'from' && words.slice(at, first).some((each) => each.raw === 'to'))
    )
      context.past = true;
  }
  for (let at = first; at <= last + 6 && at < words.length; at++) {
    const word = words[at] as Word;
    if (word.sentence !== sentence) break;
    const { raw } = word;
    if (MEASURED.has(raw)) context.measured = true;
    if (at <= last && READ_OFF.has(raw)) context.readOff = true;
    if (
      at > last &&
      word.clause === clause &&
      (HEDGES.has(raw) || (raw === 'i' && words[at + 1]?.raw === 'think'))
    )
      context.hedged = true;
    if (at > last && isUnknown(words, at)) context.unknown = true;
    if (at <= last && !span.used.includes(at) && isPlan(words, at)) context.planned = true;
    if (at > last && at <= last + 2 && raw === 'before' && words[at + 1]?.kind !== 'word')
      context.past = true;
  }
  return { ...context, other: others.at(first), asked: isAsked(words, first, last) };
}

/** Words looked back over for what governs a phrase. */
const REACH = 14;

function isUnknown(words: readonly Word[], at: number): boolean {
  const { raw } = words[at] as Word;
  const next = words[at + 1]?.raw ?? '';
  if (UNKNOWN.has(raw)) return true;
  if (raw === 'no') return next === 'idea' || next === 'clue';
  if (raw === 'not' || raw === 'isnt') return next === 'sure' || next === 'certain';
  return (raw === 'dont' || raw === 'doesnt' || raw === 'not') && (next === 'know' || next === 'remember');
}

/** "I could move the sofa": nothing was moved. */
const DOABLE = set('move put try sit raise lower bring place go set turn use buy get swap pull push make');

function isPlan(words: readonly Word[], at: number): boolean {
  const { raw } = words[at] as Word;
  const next = words[at + 1]?.raw ?? '';
  if (raw === 'could') return DOABLE.has(next);
  if (PLANS.has(raw)) return !(raw === 'would' && (next === 'not' || next === 'always'));
  if (raw === 'going' || raw === 'tempted' || raw === 'about') return next === 'to';
  if (raw === 'looking' || raw === 'shopping' || raw === 'saving') return next === 'for' || next === 'at';
  if (raw === 'thinking') return next === 'of' || next === 'about';
  if (raw === 'if')
    return (
      ['i', 'we'].includes(next) &&
      (['bought', 'buy', 'get', 'got', 'had', 'were'].includes(words[at + 2]?.raw ?? '') ||
        isSupposed(words, at))
    );
  return raw === 'told' && (next === 'me' || next === 'us' || next === 'to');
}

/** "Went from a flat set to a projector": what stands behind `from` is no more. */
const MOVES = new Set(['go', 'switch', 'chang', 'mov', 'upgrad', 'com', 'com', 'swap'].map(canonical));

/** "If I sat closer, would …": nothing that is. */
const isSupposed = (words: readonly Word[], at: number): boolean =>
  words
    .slice(at, at + 20)
    .some(({ raw, sentence }) => sentence === words[at]?.sentence && (raw === 'would' || raw === 'could'));

function isPast(words: readonly Word[], at: number): boolean {
  const { raw, clause } = words[at] as Word;
  const before = words[at - 1];
  const next = words[at + 1]?.raw ?? '';
  if (raw === 'used') return next === 'to';
  if (raw === 'old')
    return words
      .slice(at, at + 5)
      .some((word) => word.clause === clause && ['was', 'were', 'had'].includes(word.raw));
  if (raw === 'from' && MOVES.has(before?.text ?? '')) return true;
  if (raw === 'before')
    return !(
      before !== undefined &&
      (SINCE_WHEN.has(before.raw) || (before.kind === 'word' && before.clause === clause))
    );
  return (
    ['originally', 'previously', 'formerly', 'earlier'].includes(raw) || (raw === 'back' && next === 'then')
  );
}

function isAsked(words: readonly Word[], first: number, last: number): boolean {
  const { sentence, clause } = words[first] as Word;
  let end = last;
  while (
    end < words.length &&
    words[end]?.sentence === sentence &&
    words[end]?.text !== '?' &&
    end < last + 40
  )
    end++;
  if (words[end]?.text !== '?') return false;
  let start = first;
  while (start > 0 && words[start - 1]?.sentence === sentence && words[start - 1]?.clause === clause) start--;
  while (
    start < first &&
    ((words[start] as Word).kind !== 'word' ||
      ['so', 'or', 'and', 'but', 'then'].includes((words[start] as Word).raw))
  )
    start++;
  return ASKING.has((words[start] as Word).raw) && end - start < 30;
}

/** Who is no witness: outside people and other systems, from where they are named to the end of the sentence. */
export interface Others {
  readonly contexts: Map<number, Context>;
  at(index: number): boolean;
}

const KIN = set(
  'friend friends buddy buddys mate mates neighbor neighbors neighbour neighbours sister sisters brother brothers nephew nephews cousin cousins colleague colleagues guy grandson uncle inlaw dealer dealers shop salesman installer forum internet people someone somebody everyone reviewers reviewer technician support decorator electrician expert experts son soninlaw nephew dad mother-in-law folks website sticky thread',
);
const THINKS = set(
  'says say said thinks think thought told tells reckons reckon claims claim claimed suspects suspect blames blame suggested suggests recommended recommends means believes convinced swears advice advised offered offers wants',
);
const OWNS = set('has owns sits uses runs got watches listens');
const MY_THEORY = set(
  'suspected suspect blame blamed assumed assuming assume convinced figured theory thought feared expected worried wondered believed',
);
/** "My neighbor's center", "at my friend's place". */
const THEIR_THINGS = set(
  'center centre speaker speakers system setup place house room flat home receiver tv tele television living apartment den towers',
);
const OTHER_PLACE = new Set(
  'upstairs|bedroom set|my other|other room|the old flat|the old house|the old place|former flat|second system|in the study|in the den|at work|in the shop|at my sister|at my brother|at my buddy|at a friend|my buddy has|my neighbor with|my neighbour with|my bedroom|his system|my system|in the cinema|at the cinema|at his place|at her place|previous house|previous home|in the kitchen|my office|her former|his former|at the dealer|the former|in the store|at the store|in the showroom|in the demo'.split(
    '|',
  ),
);

export function othersIn(words: readonly Word[]): Others {
  const isOther = new Uint8Array(words.length);
  let until = -1;
  let sentence = -1;
  for (let at = 0; at < words.length; at++) {
    const word = words[at] as Word;
    if (word.sentence !== sentence) {
      sentence = word.sentence;
      until = -1;
    }
    if (until >= 0 && isFirstPerson(words, at)) until = -1;
    if (startsOther(words, at)) until = sentence;
    if (until >= 0) isOther[at] = 1;
  }
  return { contexts: new Map(), at: (index) => isOther[index] === 1 };
}

/** "…, I did it": the owner speaks again. */
function isFirstPerson(words: readonly Word[], at: number): boolean {
  const { raw, clause } = words[at] as Word;
  const before = words[at - 1];
  return (
    (raw === 'i' || raw === 'we' || raw === 'now') &&
    before !== undefined &&
    (before.clause !== clause || before.hard || before.kind === 'mark')
  );
}

const AFRAID = set('convinced afraid worried sure scared');

/** A line that begins so quotes somebody else. */
const isLineStart = (words: readonly Word[], at: number): boolean => at === 0 || words[at - 1]?.text === '\n';

function startsOther(words: readonly Word[], at: number): boolean {
  const one = words[at] as Word;
  const two = words[at + 1]?.raw ?? '';
  const three = words[at + 2]?.raw ?? '';
  if (
    OTHER_PLACE.has(`${one.raw} ${two}`) ||
    OTHER_PLACE.has(`${one.raw} ${two} ${three}`) ||
    OTHER_PLACE.has(one.raw)
  )
    return true;
  if (one.raw === 'i' && MY_THEORY.has(two)) return true;
  if (one.raw === 'i' && (two === 'am' || two === 'was') && AFRAID.has(three)) return true;
  if (one.text === '>' && isLineStart(words, at)) return true;
  if (!KIN.has(one.raw)) return false;
  if (THEIR_THINGS.has(two) && one.raw.endsWith('s')) return true;
  if (OWNS.has(two) || (two === 'also' && OWNS.has(three))) return true;
  for (let ahead = at + 1; ahead <= at + 5 && ahead < words.length; ahead++) {
    const word = words[ahead] as Word;
    if (word.sentence !== one.sentence || word.hard) return false;
    if (THINKS.has(word.raw)) return true;
  }
  return false;
}
