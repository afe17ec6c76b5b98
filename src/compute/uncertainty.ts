/**
 * How far an answer may be off: one standard deviation, by how it was obtained and by its unit. Judgement,
 * common practice without a source; only the order of magnitude matters.
 */
import type { FactId } from '../facts/catalog.js';
import { factSpec } from '../facts/catalog.js';
import type { How, NumberSpec, Unit } from '../facts/spec.js';

/** Part of the value. A tape sags a little; a menu is read exactly but set by people; memory rounds. */
const RELATIVE: Record<How, number> = {
  measured: 0.01,
  read: 0.01,
  seen: 0.01,
  recalled: 0.1,
  guessed: 0.25,
};
/** Ends of a tape held by hand, m; a small part is measured with a ruler, m; an angle by a phone, deg. */
const MEASURED_FLOOR: Partial<Record<Unit, number>> = { m: 0.01, deg: 1, ms: 0.05 };
const RULER_FLOOR_M = 0.003;
/** A level is a logarithm already: its error does not grow with it, dB. */
const LEVEL_DB: Record<How, number> = { measured: 0.5, read: 0.5, seen: 0.5, recalled: 1.5, guessed: 3 };
/** No floor may exceed this part of the usual size: hole diameters are measured in tenths of a millimeter. */
const FLOOR_PART = 0.1;
/** Where zero is a common answer, memory and guess err by a part of what is usual, not of zero. */
const USUAL_PART = 0.5;

/** Standard deviation of a told number, in its own unit; 0 for counts that somebody looked at. */
function deviationOf(id: FactId, value: number, how: How): number {
  const spec = factSpec(id);
  if (spec.kind !== 'number') return 0;
  if (spec.unit === 'dB') return LEVEL_DB[how];
  const isCount = spec.unit === '1' && spec.possible[1] > 1;
  if (isCount && how !== 'recalled' && how !== 'guessed') return 0;
  const usual = Math.max(...spec.typical.map(Math.abs));
  const size = spec.possible[0] > 0 ? Math.abs(value) : Math.max(Math.abs(value), USUAL_PART * usual);
  return Math.hypot(
    RELATIVE[how] * (how === 'read' || how === 'seen' ? Math.abs(value) : size),
    floorOf(spec, how, usual),
  );
}

function floorOf(spec: NumberSpec, how: How, usual: number): number {
  if (how !== 'measured') return 0;
  const floor = spec.written === 'small-length' ? RULER_FLOOR_M : (MEASURED_FLOOR[spec.unit] ?? 0);
  return Math.min(floor, FLOOR_PART * usual);
}

/** The value one standard deviation away, within what is possible; the value itself where nothing may be off. */
export function oneDeviationOff(
  id: FactId,
  value: number,
  doubt: { readonly how: How } | { readonly spread: number },
): number {
  const spec = factSpec(id);
  if (spec.kind !== 'number') return value;
  const byLog = 'spread' in doubt;
  const up = byLog
    ? value === 0
      ? doubt.spread
      : value * Math.exp(doubt.spread)
    : value + deviationOf(id, value, doubt.how);
  const [least, most] = spec.possible;
  const whole = spec.unit === '1' && spec.possible[1] > 1;
  const moved = whole && up !== value ? Math.max(value + 1, Math.round(up)) : up;
  if (moved <= most) return Math.max(least, moved);
  return Math.max(least, 2 * value - moved);
}

/**
 * Below about a tenth of what is clearly audible a relative error means nothing: this is added before the
 * logarithm is taken, so that a value of nothing has a finite spread. By unit.
 */
const LOG_FLOOR: Record<Unit, number> = {
  m: 0.02,
  ms: 0.025,
  Hz: 1,
  dB: 0.4,
  deg: 1,
  '1': 0.02,
  'kg/m2': 0.01,
  'Pa s/m': 1,
  '1/m2': 1,
  W: 0.5,
};
/** Difference of two values as a natural logarithm of their ratio, with the floor of the unit. */
export function logStep(from: number, to: number, unit: Unit): number {
  const floor = LOG_FLOOR[unit];
  return Math.abs(Math.log((Math.abs(to) + floor) / (Math.abs(from) + floor)));
}
