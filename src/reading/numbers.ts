/** Which fact a written quantity is the value of, in the unit of that fact. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec, type NumberFactId } from '../facts/catalog.js';
import type { NumberSpec } from '../facts/spec.js';
import { DIMENSION_OF } from '../facts/unit-words.js';
import { type Beside, channelsOf, factsOfChannel, isOfChannel } from './channels.js';
import type { FoundText } from './find.js';
import type { Meaning } from './lexicon.js';
import type { Classes, Match } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { slotOf } from './slots.js';
import { canonical } from './spelling.js';

interface Told {
  readonly fact: NumberFactId;
  readonly value: number;
  readonly range?: readonly [number, number];
  readonly approximate: boolean;
  readonly match: Match<Meaning>;
  /** Left or right was needed and is not told. */
  readonly sideMissing: boolean;
}

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
  const zeros = matches.flatMap((match): Told[] =>
    match.meaning.kind === 'number' && !CONDITIONS.has(words[match.first - 1]?.raw ?? '')
      ? [
          {
            fact: match.meaning.fact,
            value: ZERO[match.meaning.fact] ?? 0,
            approximate: false,
            match,
            sideMissing: false,
          },
        ]
      : [],
  );
  const told: Told[] = [];
  for (const [at, { quantity }] of words.entries()) {
    if (quantity === undefined || quantity.dimension === 'other' || isListMark(words, at)) continue;
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
  return [...zeros, ...seatsIn(words), ...told];
}

/** "When I sit in the middle": nobody's seat. */
const CONDITIONS = new Set(['when', 'whenever', 'if', 'once', 'unless']);
const COUNTS = new Map('two three four five six seven eight'.split(' ').map((word, at) => [word, at + 2]));
const SEATS = new Set(['seat', 'seater', 'armchair', 'recliner', 'of', 'people', 'person', 'seat']);

/** "Three of us", "a sofa for four", "two seats": counts are spelled out. */
function seatsIn(words: readonly Word[]): Told[] {
  return words.flatMap((word, at): Told[] => {
    const value = COUNTS.get(word.raw);
    const next = words[at + (words[at + 1]?.text === '-' ? 2 : 1)];
    if (value === undefined || next?.sentence !== word.sentence) return [];
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
const SOFAS = new Set(['sofa', 'loveseat', 'bench', 'row']);

/** Without a number it is nothing of it, but of the spread all. */
const ZERO: { readonly [Id in NumberFactId]?: number } = { centerSpreadAmount: 1 };

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
  if (sides === undefined || sides.length < 3) return [];
  const named = (name: string): number =>
    nearestBefore(words, at, (word) => classes.get(name)?.has(word.text) === true);
  const bay = named('bay');
  const room = nearestBefore(words, at, ({ raw }) => raw === 'room');
  const box = Math.max(
    named('center'),
    nearestBefore(words, at, ({ raw }) => raw === 'box'),
  );
  const last = Math.max(bay, box, room);
  if (last < 0) return [];
  const facts: readonly (NumberFactId | undefined)[] =
    last === room
      ? [undefined, undefined, 'ceilingHeight']
      : last === bay
        ? ['bayWidth', 'bayHeight', 'bayDepth']
        : ['centerWidth', 'centerHeight', 'centerDepth'];
  return facts.flatMap((fact, side) => {
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

const matchOf = (fact: NumberFactId, at: number, used: readonly number[]): Match<Meaning> => {
  const sorted = [...new Set([...used, at])].sort((a, b) => a - b);
  return {
    meaning: { kind: 'number', fact },
    first: sorted[0] as number,
    last: sorted.at(-1) as number,
    used: sorted,
    quantity: at,
  };
};

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

/** A bare number beside one with a unit is told in the same: "L 3.2, C 3.0, R 3.2 m". */
const inUnitOf = (bare: Quantity, unit: Quantity | undefined): Quantity =>
  bare.dimension === 'none' && !bare.signed && unit?.scale !== undefined
    ? { ...bare, dimension: unit.dimension, value: bare.value * unit.scale }
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
    if (place !== at && word.quantity.dimension !== 'none' && word.quantity.dimension !== 'other')
      unit = word.quantity;
  }
  const is = named.size >= 2 || [...named].some((each) => each.includes('left,center'));
  return { is, ...(is && unit ? { unit } : {}) };
}

/** The quantity at this word as the answer to a question about a fact: a bare number takes the unit in which it makes sense. */
export function valueIn(
  words: readonly Word[],
  at: number,
  fact: NumberFactId,
  units: UnitSystem,
): { readonly value: number; readonly approximate: boolean } | undefined {
  const quantity = words[at]?.quantity;
  return quantity && toldBy(words, matchOf(fact, at, [at]), fact, units, { quantity, lenient: true });
}

/** "4) plugged it back" */
const isListMark = (words: readonly Word[], at: number): boolean =>
  words[at + 1]?.text === ')' && words[at - 1]?.sentence !== words[at]?.sentence;

function toldBy(
  words: readonly Word[],
  match: Match<Meaning>,
  fact: NumberFactId,
  units: UnitSystem,
  given: { readonly quantity: Quantity; readonly lenient: boolean } | undefined = undefined,
): Told | undefined {
  const spec = factSpec(fact) as NumberSpec;
  const at = match.quantity as number;
  const quantity = given?.quantity ?? ((words[at] as Word).quantity as Quantity);
  const lenient = given?.lenient === true;
  const scale = scaleFor(spec, quantity, units, lenient);
  if (scale === undefined) return undefined;
  const sign = signFor(fact, wordsAround(words, match), quantity);
  const value = scale * quantity.value * (sign === 0 ? 1 : sign);
  if (value < spec.possible[0] || value > spec.possible[1]) return undefined;
  const slack = spec.unit === 'Hz' ? 1 : spec.unit === 'm' ? 1.3 : 1.5;
  const [low, high] = spec.plausible;
  const least = low < 0 ? low * slack : low / slack;
  if (!lenient && (value < least || value > high * slack)) return undefined;
  if (isStep(words, match, fact)) return undefined;
  const range = quantity.range && ([quantity.range[0] * scale, quantity.range[1] * scale] as const);
  return {
    fact,
    value,
    ...(range ? { range } : {}),
    approximate: quantity.approximate,
    match,
    sideMissing: sign === 0,
  };
}

/** What one of the written unit is in the unit of the fact; undefined where it cannot be meant. */
function scaleFor(
  spec: NumberSpec,
  quantity: Quantity,
  units: UnitSystem,
  lenient: boolean,
): number | undefined {
  const { dimension, value } = quantity;
  if (dimension === DIMENSION_OF[spec.unit]) return spec.unit === '1' && spec.possible[1] > 1 ? undefined : 1;
  if (dimension !== 'none') return undefined;
  const size = Math.abs(value);
  if (spec.unit === '1') return spec.whole !== true || Number.isInteger(value) ? 1 : undefined;
  if (spec.unit === 'Hz') return size >= 20 && Number.isInteger(value) ? 1 : undefined;
  if (spec.unit === 'dB') return LAYOUTS.has(value) && !quantity.signed ? undefined : 1;
  if (spec.unit === 'ms') return lenient ? 1 : undefined;
  if (spec.unit !== 'm' || (!lenient && LAYOUTS.has(value)) || (!lenient && quantity.signed))
    return undefined;
  // A picture without a unit is told in inches everywhere.
  if (spec === factSpec('displayDiagonal') && size >= 30) return 0.0254;
  return lengthScale(spec, size, units, lenient);
}

/** 5.1 and its kin are numbers of channels. */
const LAYOUTS = new Set([2.1, 3.1, 4.1, 5.1, 6.1, 7.1, 5.2, 7.2]);
const UNITS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [1, 0.01],
  imperial: [0.3048, 0.0254],
};

/** The unit of the owner's system in which a bare length makes sense. */
function lengthScale(
  spec: NumberSpec,
  size: number,
  units: UnitSystem,
  lenient: boolean,
): number | undefined {
  const [low, high] = spec.plausible;
  const order = spec.written === 'small-length' ? UNITS[units].toReversed() : UNITS[units];
  const [least, most] = lenient ? spec.possible : spec.plausible;
  return (
    order.find((unit) => size * unit >= Math.max(low, 0.005) && size * unit <= high) ??
    order.find((unit) => size * unit >= Math.max(least, 0.005) && size * unit <= most)
  );
}

const LEFT = new Set(['left', 'l', 'leftMain']);
const RIGHT = new Set(['right', 'r', 'rightMain']);
const SIDED: ReadonlySet<NumberFactId> = new Set<NumberFactId>([
  'centerSideOffset',
  'mainSeatOffset',
  'pictureSideOffset',
  'centerToeIn',
]);
/** Differences that are told without a sign: "3 dB below". */
const DIFFERENCES: ReadonlySet<NumberFactId> = new Set<NumberFactId>([
  'centerAgainstMainsDb',
  'centerAgainstMainsSideDb',
  'reflectionMeasuredDb',
]);
const LESS = new Set(
  ['down', 'below', 'under', 'soft', 'quiet', 'low', 'weak', 'behind', 'less'].map(canonical),
);

/** -1 or 1 for the side or the direction told with it; 0 where a side is needed and none is told. */
function signFor(fact: NumberFactId, around: readonly string[], quantity: Quantity): number {
  if (SIDED.has(fact)) {
    if (quantity.value === 0) return 1;
    const left = around.some((word) => LEFT.has(word));
    const right = around.some((word) => RIGHT.has(word));
    return left === right ? 0 : left ? -1 : 1;
  }
  if (fact === 'centerTrim') return around.includes('down') && !quantity.signed ? -1 : 1;
  if (DIFFERENCES.has(fact)) return !quantity.signed && around.some((word) => LESS.has(word)) ? -1 : 1;
  if (fact === 'centerBehindMains') {
    const isAhead = around.includes('front') || around.includes('forward') || around.includes('ahead');
    return isAhead && !around.includes('behind') ? -1 : 1;
  }
  if (fact === 'centerTilt')
    return around.some((word) => word === 'down' || word === 'downward') && quantity.value > 0 ? -1 : 1;
  if (fact === 'arrivalMeasuredMs') return around.includes('early') || around.includes('befor') ? -1 : 1;
  if (fact === 'subDelay') return around.includes('early') ? -1 : 1;
  return 1;
}

/** "Down by 2 dB": a change of the trim, and not the trim. */
const isStep = (words: readonly Word[], { quantity = 0 }: Match<Meaning>, fact: NumberFactId): boolean =>
  fact.startsWith('trim') || fact === 'centerTrim' ? words[quantity - 1]?.raw === 'by' : false;

/** Canonical words of the phrase and the three behind it. */
function wordsAround(words: readonly Word[], match: Match<Meaning>): string[] {
  const { sentence } = words[match.first] as Word;
  return words
    .slice(match.first, match.last + 4)
    .filter((word) => word.sentence === sentence)
    .map((word) => word.text);
}
