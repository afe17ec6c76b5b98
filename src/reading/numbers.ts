/** Which fact a written quantity is the value of, in the unit of that fact. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec, type NumberFactId } from '../facts/catalog.js';
import type { NumberSpec } from '../facts/spec.js';
import { type Beside, channelsOf, factsOfChannel, isOfChannel } from './channels.js';
import type { FoundText } from './find.js';
import type { Classes } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { slotOf } from './slots.js';
import { canonical } from './spelling.js';
import { isOfOthers } from './subject.js';
import { matchOf, SIDED, type Told, toldBy } from './values.js';

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
      ]),
    );
  }
  return [...zeros, ...seatsIn(words), ...told.map((each) => inPlace(each, words, classes))];
}

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
  return isLoose && isOfOthers(words, match, classes) ? { ...told, fact: 'mainsBassCrossover' } : told;
}
const BACK = 45;
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
const COUNTS = new Map('two three four five six seven eight'.split(' ').map((word, at) => [word, at + 2]));
const SEATS = new Set(['seat', 'seater', 'armchair', 'recliner', 'of', 'people', 'person'].map(canonical));

/** "Three of us", "a sofa for four", "two seats": counts are spelled out. */
function seatsIn(words: readonly Word[]): Told[] {
  return words.flatMap((word, at): Told[] => {
    const value = COUNTS.get(word.raw);
    const next = words[at + (words[at + 1]?.text === '-' ? 2 : 1)];
    if (value === undefined || next?.sentence !== word.sentence) return [];
    if (MOVING.has(words[at - 1]?.raw ?? '')) return [];
    const isSeats = SEATS.has(next.text) && (next.raw !== 'of' || words[at + 2]?.raw === 'us');
    const isFor = words[at - 1]?.raw === 'for' && SOFAS.has(words[at - 2]?.text ?? '');
    const match = {
      meaning: { kind: 'number', fact: 'seatCount' } as const,
      first: at,
      last: at + 1,
      used: [at, at + 1],
    };
    return isSeats || isFor
      ? [{ fact: 'seatCount', value, approximate: false, match, sideMissing: false }]
      : [];
  });
}
/** Seats that are moved or stood on are not those of the row. */
const MOVING = new Set('moved move put pulled pushed took on between against removed borrowed'.split(' '));
const SOFAS = new Set(['sofa', 'loveseat', 'bench', 'row']);

function firstOf(ways: readonly (() => Told[])[]): Told[] {
  for (const way of ways) {
    const told = way();
    if (told.length > 0) return told;
  }
  return [];
}

/** "-3 dB at 55 Hz", "-3 dB point: 85 Hz": the drop, then the frequency it stands at. */
function lowLimit(words: readonly Word[], at: number, told: readonly Told[], units: UnitSystem): Told[] {
  const { quantity, sentence } = words[at] as Word;
  const before = told.at(-1);
  if (
    quantity?.dimension === 'frequency' &&
    before?.fact === 'centerLowLimitDrop' &&
    at - before.match.last <= 8
  )
    return toList(toldBy(words, matchOf('centerLowLimit', at, [at]), 'centerLowLimit', units));
  if (quantity?.dimension === 'frequency' && quantity.value <= 200 && isDropBehind(words, at))
    return toList(toldBy(words, matchOf('centerLowLimit', at, [at]), 'centerLowLimit', units));
  if (quantity === undefined || !DROPS.has(quantity.value)) return [];
  const isAt = words
    .slice(at + 1, at + 9)
    .some(
      (word) =>
        word.sentence === sentence && word.quantity?.dimension === 'frequency' && word.quantity.value <= 200,
    );
  const isBehind = words
    .slice(Math.max(0, at - 3), at)
    .some((word) => word.quantity?.dimension === 'frequency');
  const isPoint =
    words[at + 1]?.raw === 'point' ||
    isBehind ||
    (isAt && ['at', '@', 'point'].includes(words[at + 1]?.raw ?? ''));
  const given = { ...quantity, value: Math.abs(quantity.value) };
  return isPoint ? toList(sized(words, at, 'centerLowLimitDrop', given, [at], units)) : [];
}

/** "110 Hz at -6", "65 Hz (-3 dB)" */
const isDropBehind = (words: readonly Word[], at: number): boolean =>
  words
    .slice(at + 1, at + 4)
    .some(({ quantity, sentence }) => sentence === words[at]?.sentence && DROPS.has(quantity?.value ?? 0));

const DROPS = new Set([-3, -6, -10]);
const toList = (told: Told | undefined): Told[] => (told ? [told] : []);

/** "60 x 20 x 40 cm": width, height and depth of the box or the bay, or a room with its height. */
function sidesOf(words: readonly Word[], at: number, classes: Classes, units: UnitSystem): Told[] {
  const sides = words[at]?.quantity?.sides;
  if (sides === undefined) return [];
  const named = (name: string): number =>
    nearestBefore(words, at, (word) => classes.get(name)?.has(word.text) === true);
  const bay = named('bay');
  const room = nearestBefore(words, at, ({ raw }) => raw === 'room');
  const box = Math.max(
    named('center'),
    nearestBefore(words, at, ({ raw }) => raw === 'box'),
  );
  const last = Math.max(bay, box, room);
  if (last < 0 || (sides.length < 3 && last !== bay)) return [];
  const facts: readonly (NumberFactId | undefined)[] =
    last === room
      ? [undefined, undefined, 'ceilingHeight']
      : last === bay
        ? ['bayWidth', 'bayHeight', 'bayDepth']
        : ['centerWidth', 'centerHeight', 'centerDepth'];
  return facts.slice(0, sides.length).flatMap((fact, side) => {
    const given = { ...(words[at] as Word).quantity, value: sides[side] } as Quantity;
    return (fact && sized(words, at, fact, given, [last, at], units)) ?? [];
  });
}

function nearestBefore(words: readonly Word[], at: number, is: (word: Word) => boolean): number {
  const { sentence } = words[at] as Word;
  for (let place = at - 1; place >= Math.max(0, at - 25); place--) {
    const word = words[place] as Word;
    if (word.sentence < sentence - 1) return -1;
    if (is(word)) return place;
  }
  return -1;
}

function sized(
  words: readonly Word[],
  at: number,
  fact: NumberFactId,
  quantity: Quantity,
  used: readonly number[],
  units: UnitSystem,
): Told | undefined {
  const match = matchOf(fact, at, used);
  return toldBy(words, match, fact, units, { quantity, lenient: false });
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
    isBareLevel(words, at, fact) &&
    toldBy(words, matchOf(fact, at, [at]), fact, units) !== undefined;
  const slot = slotOf(words, at, classes, fits);
  if (slot && isLooseLength(words, at, slot.fact, slot.used)) return [];
  const told = slot && toldBy(words, matchOf(slot.fact, at, slot.used), slot.fact, units);
  return told ? [told] : [];
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
