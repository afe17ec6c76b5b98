/** What a quantity is worth as the value of a fact: in its unit, with its sign, or nothing where it cannot be meant. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec, type NumberFactId } from '../facts/catalog.js';
import type { NumberSpec } from '../facts/spec.js';
import { DIMENSION_OF } from '../facts/unit-words.js';
import type { Meaning } from './lexicon.js';
import type { Match } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

export interface Told {
  readonly fact: NumberFactId;
  readonly value: number;
  readonly range?: readonly [number, number];
  readonly approximate: boolean;
  readonly match: Match<Meaning>;
  /** Left or right was needed and is not told. */
  readonly sideMissing: boolean;
}

export const toList = (told: Told | undefined): Told[] => (told ? [told] : []);

export const matchOf = (fact: NumberFactId, at: number, used: readonly number[]): Match<Meaning> => {
  const sorted = [...new Set([...used, at])].sort((a, b) => a - b);
  return {
    meaning: { kind: 'number', fact },
    first: sorted[0] as number,
    last: sorted.at(-1) as number,
    used: sorted,
    quantity: at,
  };
};

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

export function toldBy(
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
  // People are counted, not in percent; a distortion is told in percent.
  if (dimension === 'ratio' && spec.unit === '1' && spec.possible[1] > 1)
    return spec.whole || quantity.scale !== 0.01 ? undefined : 100;
  if (dimension === DIMENSION_OF[spec.unit]) return 1;
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
export const SIDED: ReadonlySet<NumberFactId> = new Set<NumberFactId>([
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
