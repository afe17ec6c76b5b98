/** Quantities written for people: in the owner's units first, the other system in brackets. */
import { METERS_PER_INCH } from '../acoustics/practice.js';
import type { UnitSystem } from './book.js';
import type { NumberSpec, Unit } from './spec.js';

export interface FormatOptions {
  readonly units: UnitSystem;
  /** As in the catalog; a length alone is written in feet and inches. Lengths default to `length`. */
  readonly written?: 'length' | 'small-length' | 'plain';
  /** Adds the other system in brackets (default) or leaves it out. */
  readonly both?: boolean;
  /** A plus sign before positive values: for trims and differences. */
  readonly sign?: boolean;
}

/** Inches are written to a half in a length of feet, since no owner tapes closer. */
const STEPS_PER_INCH = 2;
/** Closer than this to a quarter of an inch it is meant as one: sizes are sold so and listed in whole millimeters. */
const QUARTER_WITHIN_IN = 0.02;

/** A value in SI as people write it: `3.20 m (10 ft 6 in)`, `2.5 kHz`, `−1.5 dB` with a true minus. */
export function formatValue(value: number, unit: Unit, options: FormatOptions): string {
  const written = unit === 'm' ? formatLength(value, options) : formatPlain(value, unit);
  const text = written.replace(/-(?=\d)/g, '−');
  return options.sign && value > 0 ? `+${text}` : text;
}

/** A value of a fact as people say it: where its sign has a word, with the word (`30 cm left`, `3 dB softer`). */
export function formatFact(
  value: number,
  { unit, written, sides }: Pick<NumberSpec, 'unit' | 'written' | 'sides'>,
  units: UnitSystem,
  both?: boolean,
): string {
  const options = { units, written, ...(both === undefined ? {} : { both }) };
  if (!sides || value === 0) return formatValue(value, unit, options);
  return `${formatValue(Math.abs(value), unit, options)} ${value > 0 ? sides.plus : sides.minus}`;
}

function formatLength(valueM: number, { units, written, both }: FormatOptions): string {
  const metric = metricLength(valueM);
  const imperial = imperialLength(valueM, written === 'small-length');
  const [first, second] = units === 'metric' ? [metric, imperial] : [imperial, metric];
  // Nothing is nothing in either system.
  return both === false || /^0 /.test(first) ? first : `${first} (${second})`;
}

/** Meters to the centimeter, centimeters to the millimeter, small things in millimeters. */
function metricLength(valueM: number): string {
  const size = Math.abs(valueM);
  if (size >= 0.9995) return `${valueM.toFixed(2)} m`;
  if (size >= 0.00995 || size < 0.000005) return `${short(valueM * 100, 1)} cm`;
  return `${short(valueM * 1000, 2)} mm`;
}

/** Feet and inches, inches alone below a foot; small lengths in inches alone. */
function imperialLength(valueM: number, small: boolean): string {
  const inches = valueM / METERS_PER_INCH;
  if (small) return `${smallInches(inches)} in`;
  const steps = Math.round(Math.abs(inches) * STEPS_PER_INCH);
  const feet = Math.floor(steps / (12 * STEPS_PER_INCH));
  const rest = steps - feet * 12 * STEPS_PER_INCH;
  const whole = Math.floor(rest / STEPS_PER_INCH);
  const half = rest % STEPS_PER_INCH === 1 ? '1/2' : '';
  const inchText = [whole > 0 || half === '' ? String(whole) : '', half].filter(Boolean).join(' ');
  const sign = valueM < 0 && steps > 0 ? '-' : '';
  if (feet === 0) return `${sign}${inchText} in`;
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inchText} in`;
}

/** Thousandths below an inch, a quarter where it is one (a cone of 5.25 in), else tenths. */
function smallInches(inches: number): string {
  if (Math.abs(inches) < 0.95) return short(inches, 3);
  const quarter = Math.round(inches * 4) / 4;
  return Math.abs(inches - quarter) < QUARTER_WITHIN_IN ? short(quarter, 2) : short(inches, 1);
}

function formatPlain(value: number, unit: Exclude<Unit, 'm'>): string {
  const size = Math.abs(value);
  switch (unit) {
    case 'ms':
      return `${short(value, size < 10 ? 2 : 1)} ms`;
    case 'Hz':
      return size >= 999.5 ? `${short(value / 1000, size < 9995 ? 2 : 1)} kHz` : `${short(value, 0)} Hz`;
    case 'dB':
      return `${short(value, 1)} dB`;
    case 'deg':
      return `${short(value, 1)}°`;
    case '1':
      return short(value, 2);
    case 'kg/m2':
      return `${short(value, 3)} kg/m2`;
    case 'Pa s/m':
      return `${short(value, 1)} Pa s/m`;
    case 'W':
      return `${short(value, size < 10 ? 1 : 0)} W`;
    case '1/m2':
      return `${short(value, 0)} per m2`;
  }
}

/** `3 minutes`, `half a minute`, `about 2 hours`. */
export function minutesText(minutes: number): string {
  if (minutes < 0.75) return 'half a minute';
  const whole = Math.round(minutes);
  if (whole < 90) return plural(whole, 'minute');
  return `about ${plural(Math.round(minutes / 60), 'hour')}`;
}

/** Where minutes are an estimate: `about 3 minutes`, `about 2 hours`. */
export const aboutMinutesText = (minutes: number): string =>
  `about ${minutesText(minutes).replace(/^about /, '')}`;

export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** At most so many decimals; trailing zeros and the minus of a zero are dropped. */
function short(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
