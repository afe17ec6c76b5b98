/**
 * The image between two loudspeakers by level and time and its crosstalk null.
 * Left is positive: `levelDb` left louder, `timeMs` left earlier, `imageDeg` to the left.
 */
import { C_AIR } from './air.js';
import { HEAD_RADIUS_M } from './head.js';
import { finite, positive, within } from './input.js';

const RADIANS = Math.PI / 180;

/** Base for which the level and time law was fitted, deg to each side. Read in the published code. */
const FITTED_HALF_ANGLE_DEG = 30;
/** Level difference that puts the image at the louder loudspeaker, dB. Read in the published code of the law. */
export const FULL_SHIFT_DB = 17;
/** Time difference that does the same at +-30 deg, ms. Read in the published code of the law. */
export const FULL_SHIFT_MS = 1;
/** Within this part of full shift the image moves at full rate, beyond it at half. Read in the published code. */
const INNER_REGION = 0.5;
/** Part of the half base covered where the two rates meet. Read in the published code. */
const INNER_IMAGE = 2 / 3;

/** Delay between the ears for a distant source, ms: a (theta + sin theta) / c (Woodworth). Odd in the angle. */
export function interauralDelayMs(angleDeg: number, speedOfSound = C_AIR): number {
  const angle = within('angleDeg', angleDeg, -90, 90) * RADIANS;
  return ((HEAD_RADIUS_M * (angle + Math.sin(angle))) / positive('speedOfSound', speedOfSound)) * 1000;
}

/** First null of a phantom center at each ear, Hz: 1 / (2 interaural delay). */
export function crosstalkNullHz(halfAngleDeg = 30, speedOfSound = C_AIR): number {
  return 1000 / (2 * interauralDelayMs(positive('halfAngleDeg', halfAngleDeg), speedOfSound));
}

/** Part of full shift (1: at the loudspeaker) to part of the half base, odd, clamped at the loudspeaker. */
function imageShare(shift: number): number {
  const size = Math.abs(shift);
  const outer = INNER_IMAGE + ((size - INNER_REGION) * (1 - INNER_IMAGE)) / (1 - INNER_REGION);
  const share = size <= INNER_REGION ? (size * INNER_IMAGE) / INNER_REGION : Math.min(1, outer);
  return Math.sign(shift) * share;
}

export type Phantom = { readonly imageDeg: number; readonly crosstalkNullHz: number };

/**
 * Image by the fitted level and time law: shift = time / full time + level / 17 dB, two thirds of the half base
 * at half shift, the rest at half the rate. Full time is 1 ms at +-30 deg and follows the ear delay for other
 * bases. Cues of the same sign add as published; opposing cues are our extension.
 * @param halfAngleDeg above 0 to 90 deg.
 */
export function phantom({
  levelDb = 0,
  timeMs = 0,
  halfAngleDeg = FITTED_HALF_ANGLE_DEG,
}: {
  levelDb?: number;
  timeMs?: number;
  halfAngleDeg?: number;
}): Phantom {
  within('halfAngleDeg', positive('halfAngleDeg', halfAngleDeg), 0, 90);
  const fullShiftMs =
    (FULL_SHIFT_MS * interauralDelayMs(halfAngleDeg)) / interauralDelayMs(FITTED_HALF_ANGLE_DEG);
  const shift = finite('timeMs', timeMs) / fullShiftMs + finite('levelDb', levelDb) / FULL_SHIFT_DB;
  return { imageDeg: halfAngleDeg * imageShare(shift), crosstalkNullHz: crosstalkNullHz(halfAngleDeg) };
}

export type StereoSeat = {
  /** Half the distance between the mains, m. */
  readonly halfBaseM: number;
  /** Seat's distance from the line between the mains, m. */
  readonly distanceM: number;
  /** Seat to the right of the midline, m. */
  readonly seatXM: number;
};

/**
 * Image of a centered sound from two mains (equal level and time in the middle) at a seat off the middle, deg
 * of the fitted law's half base: left positive, so a seat to the right gives a negative value.
 */
export function phantomAtSeat({ halfBaseM, distanceM, seatXM }: StereoSeat): Phantom & {
  levelDb: number;
  timeMs: number;
} {
  positive('halfBaseM', halfBaseM);
  positive('distanceM', distanceM);
  const toLeft = Math.hypot(halfBaseM + finite('seatXM', seatXM), distanceM);
  const toRight = Math.hypot(halfBaseM - seatXM, distanceM);
  const timeMs = ((toRight - toLeft) / C_AIR) * 1000;
  const levelDb = 20 * Math.log10(toRight / toLeft);
  const halfAngleDeg = Math.atan2(halfBaseM, distanceM) / RADIANS;
  return { ...phantom({ levelDb, timeMs, halfAngleDeg }), levelDb, timeMs };
}
