/**
 * Arrival times of left, center and right at a seat, with what was entered in the processor.
 * tau_i = (longest entry - entry_i) / c_processor; arrival = distance / c + tau_i + latency_i. An entry that is
 * too long makes its channel early (textbook, closed form).
 */
import { C_AIR } from './air.js';
import { finite, notNegative, positive, within } from './input.js';
import { METERS_PER_FOOT } from './practice.js';

/** [x, y] or [x, y, z] in m: x to the right, y back from the line between the mains, z up. */
export type Point = readonly number[];
export type Triple<T> = { readonly left: T; readonly center: T; readonly right: T };

/** Largest coordinate or entry any room can have, m. Our own bound, only to catch slips. */
const LARGEST_M = 1000;
/** An entry below this is none: some menus show 0 for a loudspeaker without one, m. Our own bound. */
export const LEAST_ENTRY_M = 0.01;
/** Largest latency of a loudspeaker's own processing that is believed, ms. Our own bound, to catch slips. */
const LARGEST_LATENCY_MS = 10_000;

function checkedPoint(name: string, point: Point): Point {
  if (point.length !== 2 && point.length !== 3) {
    throw new RangeError(
      `${name} has ${point.length} numbers; accepted: [x, y] or [x, y, z] in m, for example [-1.5, 0]`,
    );
  }
  for (const coordinate of point) within(name, coordinate, -LARGEST_M, LARGEST_M);
  return point;
}

/** Distance between two points, m. Heights count only where both points give one or neither does. */
export function distanceM(from: Point, to: Point): number {
  if (from.length !== to.length) {
    throw new RangeError(
      `points with ${from.length} and ${to.length} numbers are mixed; accepted: all [x, y] or all [x, y, z]`,
    );
  }
  return Math.hypot(...from.map((coordinate, axis) => coordinate - (to[axis] ?? coordinate)));
}

/** Delays a processor adds for the entered distances, ms. Nothing entered means no delay. */
export function entryDelaysMs(entered: Triple<number> | undefined, processorSpeed = C_AIR): Triple<number> {
  positive('processorSpeed', processorSpeed);
  if (entered === undefined) return { left: 0, center: 0, right: 0 };
  const longest = Math.max(
    within('entered.left', entered.left, 0, LARGEST_M),
    within('entered.center', entered.center, 0, LARGEST_M),
    within('entered.right', entered.right, 0, LARGEST_M),
  );
  const delayMs = (meters: number) => ((longest - meters) / processorSpeed) * 1000;
  return {
    left: delayMs(entered.left),
    center: delayMs(entered.center),
    right: delayMs(entered.right),
  };
}

export type ArrivalInput = Triple<Point> & {
  readonly seat: Point;
  /** Distances as entered, in m (already converted from the unit of the menu). */
  readonly entered?: Triple<number> | undefined;
  /** Latency of the loudspeakers' own processing, ms, 0 when absent. */
  readonly latencyMs?: Partial<Triple<number>> | undefined;
  /** Speed of sound the processor reckons with, m/s. */
  readonly processorSpeed?: number | undefined;
  /** Speed of sound in the room, m/s. */
  readonly speedOfSound?: number | undefined;
};

export type Arrival = {
  readonly centerMinusMeanMs: number;
  readonly centerMinusLeftMs: number;
  readonly centerMinusRightMs: number;
  readonly leftMinusRightMs: number;
};

/** Absolute arrival times, ms. Throws RangeError for what no room can have. */
export function arrivalTimesMs(input: ArrivalInput): Triple<number> {
  const speed = positive('speedOfSound', input.speedOfSound ?? C_AIR);
  const seat = checkedPoint('seat', input.seat);
  const delays = entryDelaysMs(input.entered, input.processorSpeed ?? C_AIR);
  const time = (channel: keyof Triple<number>) =>
    (distanceM(checkedPoint(channel, input[channel]), seat) / speed) * 1000 +
    delays[channel] +
    within(`latencyMs.${channel}`, input.latencyMs?.[channel] ?? 0, 0, LARGEST_LATENCY_MS);
  return { left: time('left'), center: time('center'), right: time('right') };
}

/** Differences of arrival at a seat, ms; positive means the first named comes later. */
export function arrival(input: ArrivalInput): Arrival {
  const { left, center, right } = arrivalTimesMs(input);
  return {
    centerMinusMeanMs: center - (left + right) / 2,
    centerMinusLeftMs: center - left,
    centerMinusRightMs: center - right,
    leftMinusRightMs: left - right,
  };
}

/**
 * Error between two channels that the step of the menu leaves at best, ms. Each entry is off by up to half a
 * step: the pair by a whole step, and by step / sqrt 6 in the rms sense (difference of two uniform errors).
 */
export function stepError({ stepM, speedOfSound = C_AIR }: { stepM: number; speedOfSound?: number }): {
  maxPairMs: number;
  rmsPairMs: number;
} {
  const maxPairMs = (positive('stepM', stepM) / positive('speedOfSound', speedOfSound)) * 1000;
  return { maxPairMs, rmsPairMs: maxPairMs / Math.sqrt(6) };
}

/**
 * How far, as a factor, an entry may stray from 3.28 or 0.305 and still look like a unit slip. Judgement: the true
 * distance is paced or taped at a slant and the entry comes in steps of up to a foot, so that honest figures differ
 * by 15 %; a center that is right is nowhere near a third or three times of its distance.
 */
const UNIT_SLIP_FACTOR = 1.15;

export type UnitSlip = 'feet-as-meters' | 'meters-as-feet';

/** Entered over physical distance. 1 is right, near 3.28 feet in a field of meters, near 0.305 the reverse. */
export function unitErrorRatio(enteredM: number, trueM: number): number {
  return notNegative('enteredM', enteredM) / positive('trueM', trueM);
}

/** The unit slip a ratio of entered to physical distance points at, or null. */
export function unitSlip(ratio: number): UnitSlip | null {
  finite('ratio', ratio);
  const near = (target: number) => ratio < target * UNIT_SLIP_FACTOR && ratio > target / UNIT_SLIP_FACTOR;
  if (near(1 / METERS_PER_FOOT)) return 'feet-as-meters';
  return near(METERS_PER_FOOT) ? 'meters-as-feet' : null;
}
