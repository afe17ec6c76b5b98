/** What a denial reaches: "not muffled", "no echo or boom", "volume isn't the issue". */
import type { Span } from './scope.js';
import type { Word } from './sentences.js';

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

const NEGATORS = set(
  'not no never none nothing without neither nor isnt arent wasnt werent dont doesnt didnt wont cant couldnt wouldnt havent hasnt hadnt shouldnt cannot aint nobody hardly zero nope nowhere',
);
/** "Far from muffled", "anything but dull", "free of rattles". */
const DENYING = new Map([
  ['far', set('from')],
  ['anything', set('but')],
  ['free', set('of from')],
  ['nothing', set('like')],
]);
/** "Not only muffled", "no doubt", "not sure": no denial of what follows. */
const NO_DENIAL_BEFORE = set(
  'only just doubt wonder sure matter merely surprise necessarily bad idea mind care bother',
);
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
    if (word.sentence !== sentence || word.hard || word.text === ':') break;
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
  if (word.kind !== 'word') return false;
  if (DENYING.get(word.raw)?.has(words[at + 1]?.raw ?? '')) return true;
  if (!NEGATORS.has(word.raw)) return false;
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
