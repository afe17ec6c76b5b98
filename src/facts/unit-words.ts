/** The words people use for units, and what one of each is in SI. */
import { quoted } from '../lib/sanitize.js';
import type { Unit } from './spec.js';

type Dimension = 'length' | 'time' | 'frequency' | 'level' | 'angle' | 'ratio' | 'mass' | Unit;

export interface UnitWord {
  readonly dimension: Dimension;
  readonly over: number;
  readonly under: number;
}

/** Unit words and the ratio `over / under` that turns one of them into the SI unit, exact in both parts. */
function words(dimension: Dimension, over: number, under: number, list: string): [string, UnitWord][] {
  return list.split(' ').map((word) => [word, { dimension, over, under }]);
}

/** Lower case, without spaces and dots. A foot is 0.3048 m and an inch 0.0254 m, both exact by definition. */
export const UNIT_WORDS: ReadonlyMap<string, UnitWord> = new Map([
  ...words('length', 1, 1, 'm mtr meter meters metre metres'),
  ...words('length', 1, 10, 'dm decimeter decimeters decimetre decimetres'),
  ...words('length', 1, 100, 'cm centimeter centimeters centimetre centimetres'),
  ...words('length', 1, 1000, 'mm millimeter millimeters millimetre millimetres'),
  ...words('length', 1, 1_000_000, 'micron microns'),
  ...words('length', 3048, 10_000, "ft foot feet '"),
  ...words('length', 254, 10_000, 'in inch inches incher "'),
  ...words('length', 9144, 10_000, 'yd yard yards'),
  ...words('time', 1, 1, 'ms msec millisecond milliseconds'),
  ...words('time', 1000, 1, 's sec secs second seconds'),
  ...words('time', 1, 1000, 'us µs μs microsecond microseconds'),
  ...words('frequency', 1, 1, 'hz hertz'),
  ...words('frequency', 1000, 1, 'k khz kilohertz'),
  ...words('level', 1, 1, 'db decibel decibels dba db(a) dbc db(c) dbspl'),
  ...words('angle', 1, 1, '° º deg degree degrees'),
  ...words('ratio', 1, 100, '% percent'),
  ...words('ratio', 1, 1, 'x times seat seats place places people persons'),
  ...words('mass', 1, 1, 'kg g lb lbs oz pound pounds ounce ounces kilogram kilograms gram grams'),
  ...words('kg/m2', 1, 1, 'kg/m2 kg/sqm'),
  ...words('kg/m2', 1, 1000, 'g/m2 g/sqm gsm'),
  ...words('Pa s/m', 1, 1, 'pas/m pasm-1 rayl rayls mksrayl mksrayls ns/m3'),
  ...words('W', 1, 1, 'w watt watts'),
  ...words('1/m2', 1, 1, '1/m2 /m2 perm2 persquaremeter persquaremetre persqm holes/m2 holespersquaremeter'),
  ...words('1/m2', 1e8, 64_516, '1/in2 /in2 perin2 persquareinch persqin holespersquareinch'),
  ...words('1/m2', 10_000, 1, '1/cm2 /cm2 percm2 persquarecentimeter persquarecentimetre'),
]);

/** The dimension of each SI unit a fact is kept in. */
export const DIMENSION_OF: Readonly<Record<Unit, Dimension>> = {
  m: 'length',
  ms: 'time',
  Hz: 'frequency',
  dB: 'level',
  deg: 'angle',
  '1': 'ratio',
  'kg/m2': 'kg/m2',
  'Pa s/m': 'Pa s/m',
  '1/m2': '1/m2',
  W: 'W',
};

const DIMENSION_NAMES: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  time: 'a time',
  frequency: 'a frequency',
  level: 'a level in decibels',
  angle: 'an angle',
  ratio: 'a plain number',
  mass: 'a mass',
  m: 'a length',
  ms: 'a time',
  Hz: 'a frequency',
  dB: 'a level in decibels',
  deg: 'an angle',
  '1': 'a plain number',
  'kg/m2': 'a mass per area',
  'Pa s/m': 'a flow resistance',
  '1/m2': 'a number per area',
  W: 'a power',
};

/** The unit word looked up, or words about what is wrong with it. */
export function unitOf(word: string, wanted: Dimension): UnitWord | string {
  const known = UNIT_WORDS.get(word);
  if (known === undefined) return `has a unit that is not known here: ${quoted(word, 20)}`;
  if (known.dimension !== wanted) {
    return `is ${DIMENSION_NAMES[known.dimension]}, and ${DIMENSION_NAMES[wanted]} is needed`;
  }
  return known;
}

/** A number of this unit, in SI. */
export function scaled(number: number, { over, under }: UnitWord): number {
  return (number * over) / under;
}
