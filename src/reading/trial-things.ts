/** Which act is meant where a pronoun or a place leaves it open: by what was spoken of last, and where it stood. */
import type { ActId } from '../facts/acts.js';
import type { Meaning } from './lexicon.js';
import type { Classes, Match } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';

/** What "it" can stand for, and the act that switches it off. */
const THINGS: readonly (readonly [noun: string, off: ActId | undefined])[] = [
  ['center', 'center-set-to-none'],
  ['mains', undefined],
  ['leftMain', undefined],
  ['rightMain', undefined],
  ['subwoofer', 'subwoofer-off'],
  ['surround', 'surrounds-off'],
  ['seatWord', undefined],
  ['correction', 'equalization-bypassed'],
  ['autoSetup', undefined],
  ['spread', undefined],
  ['boostMode', 'voice-boost-changed'],
  ['nightMode', 'night-mode-changed'],
  ['tvSpeakers', 'display-muted'],
  ['upmix', 'upmix-off'],
  ['distWord', undefined],
  ['crossoverWord', undefined],
  ['softThing', undefined],
  ['obstacle', undefined],
];
const PRONOUNS = new Set('it this that him its them'.split(' '));
const GOVERNING = new Set(
  'under on in of from behind with to at for below beside over above between near before against toward'.split(
    ' ',
  ),
);
const REACH = 70;

/** Acts that need no center as what "it" stands for. */
const ITS: Partial<Record<ActId, readonly string[]>> = {
  'spread-changed': ['spread'],
  'spread-on': ['spread'],
  'crossover-changed': ['crossoverWord'],
  'correction-run-again': ['autoSetup', 'correction'],
  'equalization-bypassed': ['correction', 'autoSetup'],
};

/** Where the center stood before it was put on something. */
const STOOD: Readonly<Record<string, ActId>> = {
  'voiceDirection=aside': 'center-moved-to-midline',
  'voice-pulled-aside': 'center-moved-to-midline',
  'centerPlacement=bay': 'center-taken-out',
};
const UP = new Set(
  'up higher raised raising lifted lifting elevated height out open outside from'.split(' '),
);

const ABOVE = new Set(['above', 'over']);

/** Said before: the center is above the picture. */
const hangsAbove = (words: readonly Word[], before: number, classes: Classes): boolean =>
  words
    .slice(0, before)
    .some(
      ({ raw, sentence }, at) =>
        ABOVE.has(raw) &&
        words
          .slice(at + 1, at + 4)
          .some(
            (word) =>
              word.sentence === sentence &&
              (classes.get('display')?.has(word.text) || classes.get('picture')?.has(word.text)),
          ) &&
        words
          .slice(Math.max(0, at - 4), at)
          .some((word) => word.sentence === sentence && classes.get('center')?.has(word.text)),
    );

/** "Put it on a stool": higher, lower, in the middle or out of the furniture, by where it stood. */
function putOn(
  words: readonly Word[],
  { first, used }: Match<Meaning>,
  told: ActId,
  matches: readonly Match<Meaning>[],
  classes: Classes,
): ActId {
  const raws = used.map((at) => (words[at] as Word).raw);
  if (raws.some((raw) => UP.has(raw)) && !raws.includes('held')) return told;
  if (hangsAbove(words, first, classes)) return 'center-lowered';
  for (const { meaning } of matches) {
    const key =
      meaning.kind === 'choice'
        ? `${meaning.fact}=${meaning.value}`
        : meaning.kind === 'complaint' && !meaning.absent
          ? meaning.id
          : '';
    const act = STOOD[key];
    if (act) return act;
  }
  return told;
}

/** "Changed the center to 9.5", "to 80": no box, a value of it. */
function setTo({ dimension, value, signed }: Quantity): ActId | undefined {
  if (dimension === 'frequency' || (dimension === 'none' && value >= LEAST_HERTZ)) return 'crossover-changed';
  return (dimension === 'length' || dimension === 'none') && !signed ? 'entry-corrected' : undefined;
}
/** No distance is typed in that is as large, in feet or meters. */
const LEAST_HERTZ = 40;

export function meantAct(
  words: readonly Word[],
  match: Match<Meaning>,
  told: ActId,
  matches: readonly Match<Meaning>[],
  classes: Classes,
): ActId | undefined {
  if (told === 'center-exchanged' && words[match.last + 1]?.raw === 'to') {
    const given = words[match.last + 2]?.quantity;
    if (given) return setTo(given);
  }
  const at = match.used.find((each) => PRONOUNS.has((words[each] as Word).raw));
  const act =
    told === 'center-raised' || told === 'center-taken-out'
      ? putOn(words, match, told, matches, classes)
      : told;
  if (act === 'upmix-off' && isSwitch(words, match)) return switched(words, match.first, classes) ?? act;
  if (at === undefined) return act;
  const its = ITS[act];
  if (its) return mentioned(words, at, classes).some((thing) => its.includes(thing)) ? act : undefined;
  if (!act.startsWith('center-') && act !== 'size-changed') return act;
  const [it] = mentioned(words, at, classes, { sentences: 1 });
  return it === undefined || it === 'center' ? act : undefined;
}

const SWITCHED = new Set('off it button mode everything out'.split(' '));
const TURN = new Set('turn switch shut flip with hav power flick'.split(' '));

/** "With it off", "button off": what is off was named before. */
const isSwitch = (words: readonly Word[], { used }: Match<Meaning>): boolean =>
  used.every((at) => SWITCHED.has((words[at] as Word).raw) || TURN.has((words[at] as Word).text)) &&
  used.some((at) => (words[at] as Word).raw === 'off');

/** The act that switches off what was spoken of last and can be switched. */
function switched(words: readonly Word[], at: number, classes: Classes): ActId | undefined {
  for (const thing of mentioned(words, at, classes, { places: true })) {
    const off = THINGS.find(([noun]) => noun === thing)?.[1];
    if (off && thing !== 'center') return off;
  }
  return undefined;
}

/** The things named before a word, the last one first, but not the places where something is. */
function mentioned(
  words: readonly Word[],
  at: number,
  classes: Classes,
  { places = false, sentences = REACH }: { places?: boolean; sentences?: number } = {},
): string[] {
  const things: string[] = [];
  for (let back = at - 1; back >= Math.max(0, at - REACH); back--) {
    const { text, sentence } = words[back] as Word;
    if (sentence < (words[at] as Word).sentence - sentences) break;
    const thing = THINGS.find(([noun]) => classes.get(noun)?.has(text) && !PRONOUNS.has(text));
    if (thing !== undefined && (places || !isPlace(words, back))) things.push(thing[0]);
  }
  return things;
}

const isPlace = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 3), at)
    .some(({ raw, clause }) => clause === words[at]?.clause && GOVERNING.has(raw));
