/** Of what something is said: the nearest thing named before it in its clause. */
import type { Classes } from './pattern.js';
import type { Span } from './scope.js';
import type { Word } from './sentences.js';

const isOneOf = (names: readonly string[], word: Word, classes: Classes): boolean =>
  names.some((name) => name === word.text || classes.get(name)?.has(word.text));

/** Things whose dullness, boom or settings are not those of the center. */
const OTHER_THINGS = [
  'mains',
  'leftMain',
  'rightMain',
  'subwoofer',
  'surround',
  'tvSpeakers',
  'furniture',
] as const;
const OWN_THINGS = ['voice', 'center', 'person'] as const;
const REACH = 7;
/** What is no sound: a wall may be thin, a picture dull. */
const UNHEARD = new Set('wall window light phon bathroom color text menu fan'.split(' '));

/** "The mains are set to large", "the left speaker sounds dull". */
export function isOfOthers(
  words: readonly Word[],
  { first, used }: Span,
  classes: Classes,
  others: readonly string[] = OTHER_THINGS,
): boolean {
  const { clause } = words[first] as Word;
  if (used.some((at) => isOneOf(OWN_THINGS, words[at] as Word, classes))) return false;
  let unheard = false;
  for (let at = first - 1; at >= Math.max(0, first - REACH); at--) {
    const word = words[at] as Word;
    if (word.clause !== clause || word.kind !== 'word') break;
    if (isOneOf(OWN_THINGS, word, classes)) return false;
    if (isOneOf(others, word, classes)) return true;
    unheard ||= UNHEARD.has(word.text);
  }
  return unheard && others === OTHER_THINGS;
}

const STANDING = new Set(['sit', 'stand', 'lie', 'mount', 'hang']);

function clauseBefore(words: readonly Word[], { first }: Span): Word[] {
  const { clause } = words[first] as Word;
  const out: Word[] = [];
  for (let at = first - 1; at >= Math.max(0, first - REACH); at--) {
    const word = words[at] as Word;
    if (word.clause !== clause) break;
    out.push(word);
  }
  return out;
}

/** "The voices are behind the picture" places no loudspeaker. */
export function isOfVoice(words: readonly Word[], span: Span, classes: Classes): boolean {
  const thing = clauseBefore(words, span).find((word) => isOneOf(['voice', 'center'], word, classes));
  return thing !== undefined && isOneOf(['voice'], thing, classes);
}

/** "It stands below the screen": where a box stands is no place of a voice. */
export function isOfStanding(words: readonly Word[], span: Span, classes: Classes): boolean {
  const before = clauseBefore(words, span);
  return (
    before.some((word) => STANDING.has(word.text)) &&
    !before.some((word) => isOneOf(['voice', 'sound'], word, classes) && word.raw !== 'it')
  );
}

/** A text this short is an answer: "from below". */
const MOST_OF_ANSWER = 8;
const MOST_AROUND = 25;
const HEARD = new Set(['sound', 'hear', 'talk', 'speak', 'sing', 'com', 'imag']);

/** A direction is one of a voice where its sentence names what is heard. */
export function isHeard(words: readonly Word[], { first }: Span, classes: Classes): boolean {
  const { sentence } = words[first] as Word;
  return (
    words.length <= MOST_OF_ANSWER ||
    words
      .slice(Math.max(0, first - MOST_AROUND), first + MOST_AROUND)
      .some(
        (word) =>
          word.sentence === sentence &&
          (HEARD.has(word.text) || isOneOf(['voice', 'speaker', 'stageWord'], word, classes)),
      )
  );
}

const ROOMS = new Set(['size', 'room', 'hall', 'mode']);

/** "Room size set to small" is a setting of the ambience. */
export const isOfRoom = (words: readonly Word[], span: Span): boolean =>
  clauseBefore(words, span).some(({ raw }) => ROOMS.has(raw));

/** "The microphone was on the coffee table": no table in the way. */
export const isOfMicrophone = (words: readonly Word[], span: Span): boolean =>
  clauseBefore(words, span).some(({ text }) => text === 'microphon');

const PRONOUNS = new Set(['he', 'she', 'they', 'i', 'we', 'it']);

/** "She sits to the right of me": a person on a seat, not a voice. */
export function isSomebodySeated(words: readonly Word[], { first, last }: Span): boolean {
  return (
    PRONOUNS.has((words[first] as Word).raw) &&
    words.slice(first, last + 1).some((word) => STANDING.has(word.text))
  );
}

const SITTING = new Set(['sit', 'lie', 'stand', 'kneel', 'crouch']);

/** "He sits on the floor": no box stands there. */
export function isOfPerson(words: readonly Word[], span: Span): boolean {
  const before = clauseBefore(words, span);
  const verb = before.findIndex(({ text }) => SITTING.has(text));
  const subject = before[verb + 1]?.raw ?? '';
  return verb >= 0 && subject !== 'it' && PRONOUNS.has(subject);
}

const SIZES = new Set(['wide', 'high', 'tall', 'deep', 'long', 'thick']);

/** "7 inches high" is a size: nothing was lifted, nothing got wider. */
export const isSizeWord = (words: readonly Word[], at: number): boolean =>
  words[at - 1]?.quantity !== undefined && SIZES.has((words[at] as Word).raw);
