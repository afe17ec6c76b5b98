/** Which fact a written quantity is the value of, in the unit of that fact. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec, type NumberFactId } from '../facts/catalog.js';
import type { NumberSpec } from '../facts/spec.js';
import { DIMENSION_OF } from '../facts/unit-words.js';
import { type Beside, channelsOf, distancesOf, isOfChannel } from './channels.js';
import type { FoundText } from './find.js';
import { CUES, type Cue, type Meaning } from './lexicon.js';
import type { Classes, Match } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { slotOf } from './slots.js';
import { isAnotherLength } from './subject.js';

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

/** Facts that one written number may stand for at once: it is said of both mains, or of all. */
const TOGETHER: readonly (readonly NumberFactId[])[] = [
  ['enteredLeft', 'enteredCenter', 'enteredRight'],
  ['centerBassCrossover', 'mainsBassCrossover'],
  ['tapedCenter', 'tapedMains'],
];

/** Every quantity with the fact whose phrase fits it best. */
export function numbersIn({ words, matches, lexicon }: FoundText, units: UnitSystem): Told[] {
  const byPlace = new Map<number, Told[]>();
  const channels = new Map<number, Beside | undefined>();
  for (const [at, { quantity }] of words.entries()) {
    if (quantity !== undefined) channels.set(at, channelsOf(words, at, lexicon.classes));
  }
  for (const match of matches) {
    if (match.meaning.kind !== 'number') continue;
    const { fact, cue } = match.meaning;
    if (cue !== undefined && !hasCue(words, match, cue)) continue;
    const place = match.quantity ?? match.first;
    if (!isOfChannel(fact, channels.get(place))) continue;
    const told = toldBy(words, match, fact, units);
    if (told === undefined) continue;
    const list = byPlace.get(place);
    if (list) list.push(told);
    else byPlace.set(place, [told]);
  }
  const distances = [...channels].flatMap(([at, own]) =>
    own === undefined || words[at]?.quantity?.dimension !== 'length'
      ? []
      : distancesOf(words, at, own, isList(words, at)).flatMap((fact): Told[] => {
          const told = tells(words, at, fact, units);
          const span = {
            first: Math.min(at, own.place),
            last: Math.max(at, own.place),
            used: [at, own.place],
          };
          return told ? [{ ...told, match: { ...told.match, ...span } }] : [];
        }),
  );
  for (const { match } of distances) byPlace.set(match.quantity as number, []);
  const phrased = [...byPlace.values()].flatMap((list) => bestOf(words, list, lexicon.classes));
  const slotted = words.flatMap((word, at): Told[] => {
    if (word.quantity === undefined || byPlace.has(at) || isListMark(words, at)) return [];
    // A bare number is a level where nothing else has that size; of a length nobody can tell the unit.
    if (
      word.quantity.dimension === 'none' &&
      !word.quantity.signed &&
      (word.quantity.value < 50 || word.quantity.value > 95)
    )
      return [];
    const slot = slotOf(
      words,
      at,
      lexicon.classes,
      (fact) => isOfChannel(fact, channels.get(at)) && tells(words, at, fact, units) !== undefined,
    );
    const told =
      slot &&
      toldBy(
        words,
        { ...slot, meaning: { kind: 'number', fact: slot.fact }, quantity: at },
        slot.fact,
        units,
      );
    return told ? [told] : [];
  });
  return [...distances, ...phrased, ...slotted];
}

const CUE_WORDS = new Map(Object.entries(CUES).map(([cue, list]) => [cue, new Set(list.split(' '))]));
const CUE_REACH = 16;

/** A word of the cue stands near, in this sentence or the one before. */
function hasCue(words: readonly Word[], match: Match<Meaning>, cue: Cue): boolean {
  if (cue === 'menu' && isList(words, match.first)) return true;
  const wanted = CUE_WORDS.get(cue);
  const { sentence } = words[match.first] as Word;
  return words
    .slice(Math.max(0, match.first - CUE_REACH), match.last + 6)
    .some(
      (word) =>
        (word.sentence === sentence || word.sentence === sentence - 1) &&
        (wanted?.has(word.text) || (word.quantity?.dimension === 'frequency' && cue === 'bass')),
    );
}

const CHANNELS = new Set([
  'center',
  'c',
  'l',
  'r',
  'left',
  'right',
  'main',
  'front',
  'leftMain',
  'rightMain',
  'tower',
]);

/** Lengths for several channels in a row are what the menu says: "L 9.8, R 9.9, C 10.1". */
function isList(words: readonly Word[], at: number): boolean {
  const near = words.slice(Math.max(0, at - 8), at + 9);
  const told = near.filter((word, index) => {
    const next = near[index + 1]?.soft ? near[index + 2] : near[index + 1];
    return (
      CHANNELS.has(word.text) &&
      next?.quantity !== undefined &&
      (next.quantity.dimension === 'length' || next.quantity.dimension === 'none')
    );
  });
  return new Set(told.map(({ text }) => text)).size >= 2;
}

/** Little words tell little. */
const LITTLE = new Set(['the', 'of', 'a', 'to', 'in', 'on', 'be', 'for', 'at', 'from', 'and', 'it']);

function bestOf(words: readonly Word[], list: readonly Told[], classes: Classes): Told[] {
  const weight = ({ match }: Told): number =>
    match.used.reduce((sum, at) => sum + (LITTLE.has((words[at] as Word).text) ? 3 : 10), 0) -
    (match.last - match.first);
  const perFact = new Map<NumberFactId, Told>();
  for (const told of list) {
    const before = perFact.get(told.fact);
    if (before === undefined || weight(told) > weight(before)) perFact.set(told.fact, told);
  }
  const sorted = [...perFact.values()].sort((a, b) => weight(b) - weight(a));
  const [first] = sorted;
  if (first === undefined) return [];
  const group = TOGETHER.find((ids) => ids.includes(first.fact)) ?? [first.fact];
  const kept = sorted.filter(
    (each) => each === first || (group.includes(each.fact) && weight(each) > weight(first) - 4),
  );
  const rival = sorted.find((each) => !kept.includes(each) && weight(each) === weight(first));
  if (rival === undefined) return kept;
  const slot = slotOf(words, first.match.quantity ?? first.match.first, classes, (fact) =>
    sorted.some((each) => each.fact === fact),
  );
  return sorted.filter(({ fact }) => fact === slot?.fact);
}

/** The quantity at this word as the answer to a question about a fact: a bare number takes the unit in which it makes sense. */
export function valueIn(
  words: readonly Word[],
  at: number,
  fact: NumberFactId,
  units: UnitSystem,
): { readonly value: number; readonly approximate: boolean } | undefined {
  if (!words[at]?.quantity) return undefined;
  const match = {
    meaning: { kind: 'number', fact, cue: 'delay' } as const,
    first: at,
    last: at,
    used: [at, at, at],
    quantity: at,
  };
  return toldBy(words, match, fact, units, true);
}

/** "4) plugged it back" */
const isListMark = (words: readonly Word[], at: number): boolean =>
  words[at + 1]?.text === ')' && words[at - 1]?.sentence !== words[at]?.sentence;

/** A quantity as the value of a fact, with no phrase around it. */
function tells(words: readonly Word[], at: number, fact: NumberFactId, units: UnitSystem): Told | undefined {
  const match = { meaning: { kind: 'number', fact } as const, first: at, last: at, used: [at], quantity: at };
  return toldBy(words, match, fact, units);
}

function toldBy(
  words: readonly Word[],
  match: Match<Meaning>,
  fact: NumberFactId,
  units: UnitSystem,
  lenient = false,
): Told | undefined {
  const spec = factSpec(fact) as NumberSpec;
  const around = wordsAround(words, match);
  if (match.quantity === undefined) {
    return {
      fact,
      value: fact === 'centerSpreadAmount' ? 1 : 0,
      approximate: false,
      match,
      sideMissing: false,
    };
  }
  const word = words[match.quantity] as Word;
  const quantity: Quantity = word.quantity ?? {
    dimension: 'none',
    value: word.number ?? 0,
    approximate: false,
    signed: false,
  };
  const scale = scaleFor(spec, quantity, match, units, lenient);
  if (scale === undefined) return undefined;
  const sign = signFor(fact, around, quantity);
  // The width of a picture is no diagonal.
  if (isAnotherLength(fact, words, match.quantity)) return undefined;
  if (fact === 'displayDiagonal' && words[match.quantity + 1]?.text === 'wid') return undefined;
  if (spec.unit === 'Hz' && quantity.dimension === 'none' && match.used.length < 2) return undefined;
  const value = scale * quantity.value * (sign === 0 ? 1 : sign);
  if (value < spec.possible[0] || value > spec.possible[1]) return undefined;
  const slack = spec.unit === 'Hz' ? 1 : 2;
  if (!lenient && (value < spec.plausible[0] / slack || value > spec.plausible[1] * slack)) return undefined;
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
  match: Match<Meaning>,
  units: UnitSystem,
  lenient: boolean,
): number | undefined {
  const wanted = DIMENSION_OF[spec.unit];
  if (quantity.dimension === 'other') return undefined;
  if (quantity.dimension === wanted) return spec.unit === '1' && spec.possible[1] > 1 ? undefined : 1;
  if (quantity.dimension !== 'none') return undefined;
  const size = Math.abs(quantity.value);
  if (spec.unit === '1')
    return spec.whole === true || spec.possible[1] <= 1
      ? 1
      : Number.isInteger(quantity.value)
        ? 1
        : undefined;
  if (spec.unit === 'Hz') return size >= 20 && Number.isInteger(quantity.value) ? 1 : undefined;
  if (spec.unit === 'ms')
    return match.used.length > 1 && match.meaning.kind === 'number' && match.meaning.cue === 'delay'
      ? 1
      : undefined;
  if (spec.unit === 'dB')
    return quantity.signed || match.used.length > 2 || spec.plausible[0] > 20 ? 1 : undefined;
  if (spec.unit !== 'm' || match.used.length < 2 || LAYOUTS.has(quantity.value)) return undefined;
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
const SIDED: ReadonlySet<NumberFactId> = new Set<NumberFactId>(['centerSideOffset', 'mainSeatOffset']);

/** -1 or 1 for the side or the direction told with it; 0 where a side is needed and none is told. */
function signFor(fact: NumberFactId, around: readonly string[], quantity: Quantity): number {
  if (SIDED.has(fact)) {
    if (quantity.value === 0) return 1;
    const left = around.some((word) => LEFT.has(word));
    const right = around.some((word) => RIGHT.has(word));
    return left === right ? 0 : left ? -1 : 1;
  }
  if (fact === 'centerTrim') return around.includes('down') && !quantity.signed ? -1 : 1;
  if (fact === 'centerBehindMains' && around.includes('behind')) return 1;
  if (fact === 'centerBehindMains') return around.includes('front') || around.includes('forward') ? -1 : 1;
  if (fact === 'centerTilt')
    return around.some((word) => word === 'down' || word === 'downward') && quantity.value > 0 ? -1 : 1;
  if (fact === 'subDelay') return around.includes('early') ? -1 : 1;
  return 1;
}

/** Canonical words of the phrase and the three behind it. */
function wordsAround(words: readonly Word[], match: Match<Meaning>): string[] {
  const { sentence } = words[match.first] as Word;
  return words
    .slice(match.first, match.last + 4)
    .filter((word) => word.sentence === sentence)
    .map((word) => word.text);
}
