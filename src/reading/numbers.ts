/** Which fact a written quantity is the value of, in the unit of that fact. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec, type NumberFactId } from '../facts/catalog.js';
import type { NumberSpec } from '../facts/spec.js';
import { type Beside, channelsOf, factsOfChannel, isOfChannel } from './channels.js';
import type { FoundText } from './find.js';
import type { Classes } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { lowLimit, seatsIn, sidesOf } from './shapes.js';
import { slotOf } from './slots.js';
import { isOfOthers } from './subject.js';
import { matchOf, SIDED, type Told, toList, toldBy } from './values.js';

/** The unit system that most lengths of the text are written in. */
export function unitsOf(words: readonly Word[]): UnitSystem | undefined {
  let imperial = 0;
  let metric = 0;
  for (const { quantity } of words) {
    if (quantity?.system === 'imperial') imperial++;
    if (quantity?.system === 'metric') metric++;
  }
  return imperial + metric === 0 ? undefined : imperial > metric ? 'imperial' : 'metric';
}

/** Every quantity with the fact it is the value of. */
export function numbersIn({ words, matches, lexicon }: FoundText, units: UnitSystem): Told[] {
  const { classes } = lexicon;
  const framed = new Map<number, Told>();
  const zeros: Told[] = [];
  for (const match of matches) {
    const { meaning, first, quantity } = match;
    if (meaning.kind !== 'number') continue;
    if (quantity === undefined) {
      if (!CONDITIONS.has(words[first - 1]?.raw ?? ''))
        zeros.push(withoutNumber(meaning.fact, meaning.value ?? 0, match));
    } else if (words[quantity]?.quantity !== undefined) {
      const isStray = OF_CENTER.test(meaning.fact) && isOfOthers(words, match, classes);
      const each = isStray ? undefined : toldBy(words, match, meaning.fact, units);
      if (each && (framed.get(quantity)?.match.used.length ?? 0) < match.used.length)
        framed.set(quantity, each);
    }
  }
  const told: Told[] = [];
  for (const [at, { quantity }] of words.entries()) {
    if (quantity === undefined || quantity.dimension === 'other' || isListMark(words, at)) continue;
    const frame = framed.get(at);
    if (frame) {
      told.push(frame);
      continue;
    }
    const beside = quantity.sides ? undefined : channelsOf(words, at, classes);
    told.push(
      ...firstOf([
        () => sidesOf(words, at, classes, units),
        () => lowLimit(words, at, told, units),
        () => ofChannels(words, at, beside, classes, units),
        () => goneOn(words, at, told, units),
        () => slotted(words, at, beside, classes, units),
        () => setAnew(words, at, beside, told, units),
      ]),
    );
  }
  return [...zeros, ...seatsIn(words), ...told.map((each) => inPlace(each, words, classes))];
}

/** What a recording of the center shows. */
const OF_ROOM = /^(?:clarity|reflection)/;
/** Facts of the center alone. */
const OF_CENTER = /^(?:center(?!.*Mains)|wall|clarity|reflection|distortionC)/;

/** What is only said to be of an edge or a crossover is of the thing that was named last before it. */
function inPlace(told: Told, words: readonly Word[], classes: Classes): Told {
  const named = (name: string, from: number): number =>
    words.findLastIndex(
      ({ text }, at) => at < from && at > from - BACK && classes.get(name)?.has(text) === true,
    );
  const { fact, match } = told;
  const around = words.slice(Math.max(0, match.first - 4), match.last + 5);
  const isOnTop = around.some(({ text, raw }) => classes.get('furniture')?.has(text) || raw === 'wood');
  const isEdge = around.some(({ raw }) => EDGES.has(raw));
  if (fact === 'shelfSetback' && isEdge && !isOnTop && named('bay', match.last + 6) >= 0)
    return { ...told, fact: 'bayRecess' };
  const isLoose = fact === 'centerBassCrossover' && named('center', match.last) < match.first;
  const isOfMains =
    MANY.has(words[match.first - 1]?.raw ?? '') ||
    isOfOthers(words, { ...match, first: match.last }, classes);
  return isLoose && isOfMains ? { ...told, fact: 'mainsBassCrossover' } : told;
}
const BACK = 45;
const MANY = new Set(['them', 'they', 'those', 'both']);
const EDGES = new Set(['edge', 'lip']);

const withoutNumber = (fact: NumberFactId, value: number, match: Told['match']): Told => ({
  fact,
  value,
  approximate: false,
  match,
  sideMissing: false,
});

/** "When I sit in the middle": nobody's seat. */
const CONDITIONS = new Set(['when', 'whenever', 'if', 'once', 'unless']);
function firstOf(ways: readonly (() => Told[])[]): Told[] {
  for (const way of ways) {
    const told = way();
    if (told.length > 0) return told;
  }
  return [];
}

function ofChannels(
  words: readonly Word[],
  at: number,
  beside: Beside | undefined,
  classes: Classes,
  units: UnitSystem,
): Told[] {
  if (beside === undefined) return [];
  const list = listOf(words, at, classes);
  const quantity = inUnitOf(words[at]?.quantity as Quantity, list.unit);
  const facts = factsOfChannel(words, at, quantity, beside, list.is);
  const given = { quantity, lenient: false };
  return [...new Set(facts)].flatMap((fact) =>
    toList(toldBy(words, matchOf(fact, at, [beside.place]), fact, units, given)),
  );
}

/** A bare number beside one with a unit or a sign is of the same kind: "L 3.2, C 3.0, R 3.2 m", "C -6, L and R 0". */
const inUnitOf = (bare: Quantity, unit: Quantity | undefined): Quantity =>
  bare.dimension === 'none' && !bare.signed && unit !== undefined
    ? {
        ...bare,
        dimension: unit.dimension,
        value: bare.value * (unit.scale ?? 1),
        signed: unit.signed,
      }
    : bare;

/** Units in which nobody tells anything else. */
const ONLY: { readonly [D in Quantity['dimension']]?: NumberFactId } = {
  'Pa s/m': 'screenFlowResistance',
  '1/m2': 'screenHolesPerArea',
};

/** Words without which a bare number is no level. */
const LEVEL_WORDS = new Set([
  'trim',
  'level',
  'volum',
  'turn',
  'bump',
  'boost',
  'rais',
  'crank',
  'up',
  'down',
  'db',
  'reduc',
  'hot',
  'minu',
  'plus',
]);

/** A bare number is a length only right beside what it is of, and never one to a side: "I got 5 right". */
function isLooseLength(
  words: readonly Word[],
  at: number,
  fact: NumberFactId,
  used: readonly number[],
): boolean {
  const { quantity } = words[at] as Word;
  if (quantity?.dimension !== 'none' || (factSpec(fact) as NumberSpec).unit !== 'm') return false;
  return SIDED.has(fact) || !used.some((place) => place !== at && Math.abs(place - at) <= 3);
}

/** "It is 10 by tape": a bare number is a level only where a level is talked about. */
function isBareLevel(words: readonly Word[], at: number, fact: NumberFactId): boolean {
  const { quantity, sentence } = words[at] as Word;
  if (quantity?.dimension !== 'none' || quantity.signed || factSpec(fact).kind !== 'number') return true;
  if ((factSpec(fact) as NumberSpec).unit !== 'dB') return true;
  return words
    .slice(Math.max(0, at - 6), at + 5)
    .some((word) => word.sentence === sentence && LEVEL_WORDS.has(word.text));
}

function slotted(
  words: readonly Word[],
  at: number,
  beside: Beside | undefined,
  classes: Classes,
  units: UnitSystem,
): Told[] {
  const quantity = words[at]?.quantity as Quantity;
  if (quantity.sides) return [];
  const only = ONLY[quantity.dimension];
  if (only) return toList(toldBy(words, matchOf(only, at, [at]), only, units));
  const fits = (fact: NumberFactId): boolean =>
    isOfChannel(fact, beside) &&
    !(OF_ROOM.test(fact) && isOfOthers(words, matchOf(fact, at, [at]), classes)) &&
    isBareLevel(words, at, fact) &&
    toldBy(words, matchOf(fact, at, [at]), fact, units) !== undefined;
  const slot = slotOf(words, at, classes, fits);
  if (slot && isLooseLength(words, at, slot.fact, slot.used)) return [];
  return toList(slot && toldBy(words, matchOf(slot.fact, at, slot.used), slot.fact, units));
}

const GOES_ON = new Set(['now', 'then', 'back', 'later', 'today', 'currently']);
const BETWEEN = new Set(
  'and to at it its is i we put set again down up only about away back from , ; apart ft feet in m'.split(
    ' ',
  ),
);

/** "It was 14 ft away, now 9", "set to +4, then back to 0": the same measure told again, in place of the first. */
function goneOn(words: readonly Word[], at: number, told: Told[], units: UnitSystem): Told[] {
  const before = told.at(-1);
  const place = before?.match.quantity;
  if (before === undefined || place === undefined || at - place > 6) return [];
  const between = words.slice(place + 1, at);
  if (words[place]?.sentence !== words[at]?.sentence) return [];
  if (before.fact === 'centerLowCrossover')
    return toList(toldBy(words, matchOf('centerCrossover', at, [at]), 'centerCrossover', units));
  const isAgain = between.some(({ raw }) => GOES_ON.has(raw));
  if (!isAgain || !between.every(({ raw }) => GOES_ON.has(raw) || BETWEEN.has(raw))) return [];
  const quantity = inUnitOf((words[at] as Word).quantity as Quantity, (words[place] as Word).quantity);
  const again = toldBy(words, matchOf(before.fact, at, [at]), before.fact, units, {
    quantity,
    lenient: false,
  });
  if (again) told.pop();
  return toList(again);
}

/** "Center 30 ft … had him change the center to 9.5": the same measure set to another value. */
function setAnew(
  words: readonly Word[],
  at: number,
  beside: Beside | undefined,
  told: readonly Told[],
  units: UnitSystem,
): Told[] {
  const { quantity } = words[at] as Word;
  if (quantity === undefined || words[at - 1]?.raw !== 'to' || !isRenewed(words, at)) return [];
  const before = told.findLast(({ fact }) => isOfChannel(fact, beside) && SET.test(fact));
  const again = before && toldBy(words, matchOf(before.fact, at, [at]), before.fact, units);
  return toList(again);
}
/** Facts that are typed in. */
const SET = /^(?:entered|delay|trim|centerTrim|centerBassCrossover|mainsBassCrossover|centerSpreadAmount)/;

/** Numbers of several channels in a row: "L 9.8, R 9.9, C 10.1", and one that has the unit. */
function listOf(
  words: readonly Word[],
  at: number,
  classes: Classes,
): { readonly is: boolean; readonly unit?: Quantity } {
  const { sentence } = words[at] as Word;
  const named = new Set<string>();
  let unit: Quantity | undefined;
  for (let place = Math.max(0, at - 14); place <= at + 14; place++) {
    const word = words[place];
    if (word?.quantity === undefined || word.sentence !== sentence) continue;
    const beside = channelsOf(words, place, classes);
    if (beside === undefined || beside.channels.includes('other')) continue;
    named.add(beside.channels.join());
    const isTelling = word.quantity.dimension === 'none' ? word.quantity.signed : true;
    if (place !== at && isTelling && word.quantity.dimension !== 'other') unit = word.quantity;
  }
  const is = named.size >= 2 || [...named].some((each) => each.includes('left,center'));
  return { is, ...(is && unit ? { unit } : {}) };
}

/** "4) plugged it back" */
const isListMark = (words: readonly Word[], at: number): boolean =>
  words[at + 1]?.text === ')' && words[at - 1]?.sentence !== words[at]?.sentence;

const TO = new Set(['to', 'at', 'on']);
const SETTING = new Set(
  'changed change set put moved brought bring raised raise lowered lower dropped turned corrected typed entered dialed switched went nudged pushed'.split(
    ' ',
  ),
);
const STATES = new Set(['is', 'are', 'was', 'were', 'be', 'its', 'it', 'currently', 'still']);
const UNDOING = new Set(['forgot', 'reset', 'reverted', 'undid', 'returned', 'back', 'again', 'test', 'try']);
const TO_REACH = 3;
const SETTING_REACH = 8;
const UNDONE_REACH = 60;

/** "I changed the center to 80": a value set by an act, of which nothing says that it was undone. */
export function isRenewed(words: readonly Word[], at: number): boolean {
  const { sentence } = words[at] as Word;
  if (!words.slice(Math.max(0, at - TO_REACH), at).some(({ raw }) => TO.has(raw))) return false;
  let place = at - 1;
  while (
    place >= at - SETTING_REACH &&
    words[place]?.sentence === sentence &&
    !SETTING.has(words[place]?.raw ?? '')
  )
    place--;
  if (words[place]?.sentence !== sentence || !SETTING.has(words[place]?.raw ?? '')) return false;
  if (STATES.has(words[place - 1]?.raw ?? '')) return false;
  return !words.slice(at, at + UNDONE_REACH).some(({ raw }) => UNDOING.has(raw));
}
