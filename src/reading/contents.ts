/** What is played where it is bad and where it is fine: "fine on TV, awful on concert discs". */
import type { Choice } from '../facts/catalog.js';
import { isDenied } from './denial.js';
import type { Classes } from './pattern.js';
import { contextOf, type Others } from './scope.js';
import type { Word } from './sentences.js';

interface ToldContent {
  readonly value: Choice<'playedContent'>;
  /** Said to be fine there. */
  readonly fine: boolean;
  readonly first: number;
  readonly last: number;
}

const KINDS: readonly (readonly [string, Choice<'playedContent'>])[] = [
  ['film', 'multichannel-film'],
  ['news', 'television'],
  ['recordings', 'two-channel-music'],
];
const AFTER = new Set(['only', 'through', 'via']);
const MUSIC = 'music';
const REACH = 6;
/** Said of what is heard there: a preposition or a verb right before it, or a trouble in its clause. */
const HEARD = new Set(
  'on in with during while for watch watching watches play playing plays listen listening listens'.split(' '),
);

export function contentsIn(words: readonly Word[], others: Others, classes: Classes): ToldContent[] {
  return words.flatMap((word, at): ToldContent[] => {
    const kind = KINDS.find(([name]) => classes.get(name)?.has(word.text));
    const value =
      kind?.[1] ??
      (isOnTelevision(words, at) ? 'television' : word.text === MUSIC ? 'two-channel-music' : undefined);
    if (value === undefined) return [];
    const span = { first: at, last: at, used: [at] };
    const context = contextOf(words, span, others);
    if (context.other || context.planned || context.asked) return [];
    const praise = praiseAround(words, at, classes);
    if (praise === undefined) {
      const isHeard = isDenied(words, span)
        ? isFineElsewhere(words, at, classes)
        : isOfTrouble(words, at, classes);
      return context.past || !isHeard ? [] : [{ value, fine: false, first: at, last: at }];
    }
    return [{ value, fine: true, first: Math.min(at, praise), last: Math.max(at, praise) }];
  });
}

/** Classes of what is wrong, and of what is not done: "cannot follow films". */
const TROUBLES = ['trouble', 'grasp'];

/** "On the evening news", "film voices", "records sound dull": more than a word in passing. */
function isOfTrouble(words: readonly Word[], at: number, classes: Classes): boolean {
  const { clause, sentence, text } = words[at] as Word;
  const before = words.slice(Math.max(0, at - 3), at).filter((word) => word.sentence === sentence);
  if (before.some(({ raw }) => HEARD.has(raw)) || AFTER.has(words[at + 1]?.raw ?? '')) return true;
  // "The music drowns the voices": a part of the sound, not what is played.
  if (text === MUSIC) return false;
  if (classes.get('voice')?.has(words[at + 1]?.text ?? '')) return true;
  return words
    .slice(Math.max(0, at - REACH), at + REACH)
    .some((word) => word.clause === clause && TROUBLES.some((name) => classes.get(name)?.has(word.text)));
}

const isOnTelevision = (words: readonly Word[], at: number): boolean =>
  words[at]?.text === 'television' && ['on', 'watch', 'watching'].includes(words[at - 1]?.raw ?? '');

/** "Fine for music, but not for films" */
function isFineElsewhere(words: readonly Word[], at: number, classes: Classes): boolean {
  const { sentence } = words[at] as Word;
  let isBut = false;
  for (let back = at - 1; back >= Math.max(0, at - 2 * REACH); back--) {
    const word = words[back] as Word;
    if (word.sentence !== sentence) return false;
    if (word.raw === 'but') isBut = true;
    else if (isBut && isPraise(words, back, classes)) return true;
  }
  return false;
}

/** It is said to be fine with what this word names. */
export const isPraised = (words: readonly Word[], at: number, classes: Classes): boolean =>
  praiseAround(words, at, classes) !== undefined;

/** The word that says it is fine there: behind it in its clause, or right before it. */
function praiseAround(words: readonly Word[], at: number, classes: Classes): number | undefined {
  const { sentence, clause } = words[at] as Word;
  for (let ahead = at + 1; ahead <= at + REACH && ahead < words.length; ahead++) {
    const word = words[ahead] as Word;
    if (word.sentence !== sentence || word.hard || (word.clause !== clause && word.text !== ':')) break;
    if (isPraise(words, ahead, classes)) return ahead;
  }
  for (let back = at - 1; back >= Math.max(0, at - REACH); back--) {
    const word = words[back] as Word;
    if (word.sentence !== sentence || word.hard || word.clause < clause - 1) break;
    if (
      word.clause !== clause &&
      !['or', 'and'].includes(words[back + 1]?.raw ?? '') &&
      words[back + 1]?.clause === clause
    )
      break;
    if (isPraise(words, back, classes)) return back;
  }
  return undefined;
}

function isPraise(words: readonly Word[], at: number, classes: Classes): boolean {
  const word = words[at] as Word;
  if (word.text === 'problem' || word.text === 'troubl' || word.text === 'issu') {
    return words
      .slice(Math.max(0, at - 3), at)
      .some(({ raw }) => raw === 'no' || raw === 'never' || raw === 'without' || raw === 'zero');
  }
  return (
    classes.get('good')?.has(word.text) === true && !isDenied(words, { first: at, last: at, used: [at] })
  );
}
