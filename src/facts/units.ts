/**
 * Quantities as people write them, read into SI. One pass from left to right over a short text; no regular
 * expression that could backtrack. Writing them back is in `format.ts`.
 *
 * A number without a unit takes the unit system of the case: meters in a metric one; in an imperial one feet,
 * or inches where a small length is asked for. Every other quantity is taken in its SI unit.
 */

import { quoted } from '../lib/sanitize.js';
import type { UnitSystem } from './book.js';
import { isDigit, readNumber } from './numerals.js';
import type { Unit } from './spec.js';
import { DIMENSION_OF, scaled, UNIT_WORDS, unitOf } from './unit-words.js';

/** What was wrong, what is accepted, and an example: the three parts of every refusal. */
export interface Refusal {
  readonly what: string;
  readonly accepted: string;
  readonly example: string;
}

interface Quantity {
  /** In the SI unit asked for. */
  readonly value: number;
  /** Written with "about", "~", "or so": most likely a guess. */
  readonly approximate: boolean;
  /** No unit was written, so the unit system of the case was used. */
  readonly bare: boolean;
}

interface UnitContext {
  readonly unit: Unit;
  readonly written: 'length' | 'small-length' | 'plain';
  readonly units: UnitSystem;
}

type QuantityResult = Quantity | { readonly refused: Refusal };

/** Longest text read as a quantity; the longest sensible one has some 30 letters. */
export const MAX_QUANTITY_LENGTH = 80;

interface Form {
  readonly accepted: string;
  readonly example: string;
}

const FORMS: Readonly<Record<Exclude<Unit, 'm'>, Form>> = {
  ms: { accepted: 'a time in ms or s', example: '1.2 ms' },
  Hz: { accepted: 'a frequency in Hz or kHz', example: '2.5 kHz' },
  dB: { accepted: 'a level in dB', example: '-1.5 dB' },
  deg: { accepted: 'an angle in degrees', example: '5 deg' },
  '1': { accepted: 'a plain number', example: '0.5' },
  'kg/m2': { accepted: 'a mass per area in kg/m2 or g/m2', example: '0.35 kg/m2' },
  'Pa s/m': { accepted: 'a flow resistance in Pa s/m (rayl)', example: '40 Pa s/m' },
  W: { accepted: 'a power in W', example: '80 W' },
  '1/m2': { accepted: 'a number per m2, cm2 or square inch', example: '59200 per m2' },
};

const LENGTH_FORMS: Readonly<Record<UnitSystem, { readonly length: Form; readonly small: Form }>> = {
  metric: {
    length: { accepted: 'a length in m, cm, or ft and in', example: '3.2 m' },
    small: { accepted: 'a length in cm, mm, m or in', example: '26 cm' },
  },
  imperial: {
    length: { accepted: 'a length in ft and in, or m or cm', example: '10 ft 6 in' },
    small: { accepted: 'a length in in, ft, cm or mm', example: '10 1/4 in' },
  },
};

/** How a quantity of this kind may be written, and one example in the owner's units. */
export function acceptedForm({ unit, written, units }: UnitContext): Form {
  if (unit !== 'm') return FORMS[unit];
  return written === 'small-length' ? LENGTH_FORMS[units].small : LENGTH_FORMS[units].length;
}

/** The unit a number without one is taken in, as written: '' where it is already the SI unit. */
export function bareUnit({ unit, written, units }: UnitContext): 'm' | 'ft' | 'in' | '' {
  if (unit !== 'm') return '';
  if (units === 'metric') return 'm';
  return written === 'small-length' ? 'in' : 'ft';
}

/** A number without a unit, in SI. */
export function bareValue(number: number, context: UnitContext): number {
  const unit = UNIT_WORDS.get(bareUnit(context));
  return unit === undefined ? number : scaled(number, unit);
}

/** Reads one quantity. Never throws; what cannot be read or could be read in two ways is refused with words. */
export function parseQuantity(text: string, context: UnitContext): QuantityResult {
  const form = acceptedForm(context);
  const refuse = (what: string): QuantityResult => ({ refused: { what, ...form } });
  if (text.length > MAX_QUANTITY_LENGTH) return refuse(`${quoted(text, 30)} is too long for a quantity`);
  const { body, approximate } = stripAbout(tidy(text));
  if (body === '') return refuse('nothing is written there');
  const read = readTerms(body);
  if (typeof read === 'string') return refuse(`${quoted(text)} ${read}`);
  const value =
    context.unit === 'm' ? lengthOf(read.terms, context) : plainOf(read.terms, context, read.ambiguous);
  if (typeof value === 'string') return refuse(`${quoted(text)} ${value}`);
  if (read.ambiguous && !(context.unit === 'Hz' || context.unit === '1/m2')) {
    return refuse(`${quoted(text)} ${TWO_WAYS}`);
  }
  if (!Number.isFinite(value)) return refuse(`${quoted(text)} is too large`);
  const signed = read.negative && value !== 0 ? -value : value;
  return { value: signed, approximate, bare: read.terms.every((term) => term.word === '') };
}

const TWO_WAYS = 'can be read in two ways: is the comma a decimal point or a thousands mark?';

/** Marks people and their keyboards use for the same thing, brought to one form. */
const SAME_MARKS: ReadonlyMap<string, string> = new Map([
  ...Array.from('′’‘`´ʹ').map((mark): [string, string] => [mark, "'"]),
  ...Array.from('″”“„ʺ').map((mark): [string, string] => [mark, '"']),
  ...Array.from('−–—‒﹣－').map((mark): [string, string] => [mark, '-']),
  ...Array.from('\u00a0\u2007\u2009\u202f\t\n\r').map((mark): [string, string] => [mark, ' ']),
  ...Array.from('≈≃∼').map((mark): [string, string] => [mark, '~']),
  ['⁄', '/'],
  ['∕', '/'],
  ['²', '2'],
  ['³', '3'],
  ['·', ''],
  ['½', ' 1/2'],
  ['¼', ' 1/4'],
  ['¾', ' 3/4'],
  ['⅓', ' 1/3'],
  ['⅔', ' 2/3'],
  ['⅛', ' 1/8'],
  ['⅜', ' 3/8'],
  ['⅝', ' 5/8'],
  ['⅞', ' 7/8'],
]);

function tidy(text: string): string {
  let out = '';
  for (const letter of text) out += SAME_MARKS.get(letter) ?? letter;
  return out.toLowerCase().replaceAll("''", '"').trim();
}

const ABOUT_BEFORE = [
  'about',
  'around',
  'approximately',
  'approx',
  'roughly',
  'circa',
  'ca',
  'maybe',
  'some',
];
const ABOUT_AFTER = [' or so', ' roughly', ' approximately', ' approx', '-ish', 'ish', ' maybe'];

function stripAbout(text: string): { body: string; approximate: boolean } {
  let body = text;
  let approximate = false;
  if (body.startsWith('~')) {
    body = body.slice(1).trim();
    approximate = true;
  }
  for (const word of ABOUT_BEFORE) {
    const next = body[word.length] ?? '';
    if (body.startsWith(word) && (next === ' ' || next === '.' || isDigit(next))) {
      body = body.slice(word.length + (next === '.' ? 1 : 0)).trim();
      approximate = true;
      break;
    }
  }
  for (const word of ABOUT_AFTER) {
    if (body.endsWith(word) || body.endsWith(`${word}.`)) {
      body = body.slice(0, body.lastIndexOf(word)).trim();
      approximate = true;
      break;
    }
  }
  return { body, approximate };
}

/** One number and the unit word behind it, '' when there is none. */
interface Term {
  readonly number: number;
  readonly whole: boolean;
  readonly digits: number;
  readonly word: string;
}

interface Terms {
  readonly terms: readonly Term[];
  readonly negative: boolean;
  /** A comma before exactly three digits: 3,200 is 3.2 or 3200. */
  readonly ambiguous: boolean;
}

/** What may join feet and inches, and what stands between two values of which one is meant. */
const LINKS = ['and', '&', ',', '+'];
const BETWEEN = ['-', 'to', 'or'];

/** Splits the text into terms, or says in words why it cannot be read. */
function readTerms(body: string): Terms | string {
  let at = 0;
  let negative = false;
  let ambiguous = false;
  const terms: Term[] = [];
  const skipSpaces = (): void => {
    while (body[at] === ' ') at++;
  };
  if (body[at] === '-' || body[at] === '+') {
    negative = body[at] === '-';
    at++;
  }
  skipSpaces();
  while (at < body.length) {
    if (terms.length === 3) return 'has more parts than one quantity needs';
    const number = readNumber(body, at);
    if (typeof number === 'string') return number;
    at = number.end;
    ambiguous = ambiguous || number.ambiguous;
    const wordStart = at;
    while (at < body.length && !startsTerm(body, at)) at++;
    let word = body.slice(wordStart, at).replaceAll(' ', '').replaceAll('.', '');
    if (at < body.length) {
      const link = LINKS.find((each) => word.endsWith(each));
      if (link === undefined ? BETWEEN.some((each) => word.endsWith(each)) : word === link) {
        return 'holds more than one value';
      }
      word = word.slice(0, word.length - (link?.length ?? 0));
    }
    terms.push({ number: number.value, whole: number.whole, digits: number.digits, word });
    skipSpaces();
  }
  return terms.length === 0 ? 'holds no number' : { terms, negative, ambiguous };
}

/** True where a new number begins; a digit inside a unit such as kg/m2 or 1/m2 begins none. */
function startsTerm(body: string, at: number): boolean {
  const letter = body[at] ?? '';
  const next = body[at + 1] ?? '';
  if (letter === '.' || letter === ',') return isDigit(next);
  if (!isDigit(letter)) return false;
  if (letter === '1' && next === '/' && !isDigit(body[at + 2] ?? '')) return false;
  return !isPowerOfUnit(body, at);
}

/** The digit at `at` is the power in a unit such as kg/m2 or n s/m3. */
function isPowerOfUnit(body: string, at: number): boolean {
  const isPower = (body[at] === '2' || body[at] === '3') && !isDigit(body[at + 1] ?? '');
  const before = body[at - 1];
  return isPower && (before === 'm' || before === 'n') && (body.includes('/') || body.includes('per'));
}

function plainOf(terms: readonly Term[], context: UnitContext, ambiguous: boolean): number | string {
  const [term] = terms;
  if (term === undefined || terms.length > 1) return 'holds more than one number';
  if (term.word === '') return term.number;
  const unit = unitOf(term.word, DIMENSION_OF[context.unit]);
  if (typeof unit === 'string') return unit;
  if (ambiguous && unit.over !== unit.under) return TWO_WAYS;
  return scaled(term.number, unit);
}

/** One length out of its terms: `10 ft 6 in`, `3 m 20`, `126 in`, or a bare number. */
function lengthOf(terms: readonly Term[], context: UnitContext): number | string {
  const [first, second, third] = terms;
  if (first === undefined) return 'holds no number';
  if (third !== undefined) return 'has more parts than a length needs';
  if (first.word === '') {
    return second === undefined ? bareValue(first.number, context) : 'has a number without a unit';
  }
  const unit = unitOf(first.word, 'length');
  if (typeof unit === 'string') return unit;
  if (second === undefined) return scaled(first.number, unit);
  if (!first.whole) return 'has a fraction in its first part and a second part as well';
  if (unit.over === 3048) return feetAndInches(first, second);
  if (unit.over === unit.under) return metersAndCentimeters(first, second);
  return 'has two parts that do not belong together';
}

function feetAndInches(feet: Term, inches: Term): number | string {
  const unit = unitOf(inches.word === '' ? 'in' : inches.word, 'length');
  if (typeof unit === 'string') return unit;
  if (unit.over !== 254) return 'has two parts that do not belong together';
  if (inches.number >= 12) return 'has 12 inches or more after the feet';
  return scaled(feet.number * 12 + inches.number, unit);
}

function metersAndCentimeters(meters: Term, rest: Term): number | string {
  if (rest.word === '' && (rest.digits !== 2 || !rest.whole)) {
    return 'needs two digits of centimeters after the meters';
  }
  const unit = unitOf(rest.word === '' ? 'cm' : rest.word, 'length');
  if (typeof unit === 'string') return unit;
  const centimeters = unit.over === 1 && unit.under === 100 && rest.number < 100;
  const millimeters = unit.over === 1 && unit.under === 1000 && rest.number < 1000;
  if (!centimeters && !millimeters) return 'has two parts that do not belong together';
  return (meters.number * unit.under + rest.number) / unit.under;
}

export { formatValue } from './format.js';
