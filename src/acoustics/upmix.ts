/**
 * Two channels to three: what goes where, how much stage width is kept, what mains and center share, and how
 * firm the image stays off the middle. A source panned at phi has a = cos phi left and b = sin phi right
 * (constant power); extraction lambda takes lambda min(a, b) from both and feeds the center by one of the laws.
 */
import { C_AIR } from './air.js';
import { finite, oneOf, positive, within } from './input.js';
import { energyVector, type Feed, velocityVector } from './vectors.js';

/**
 * `power`: center makes the summed power 1. `pressure`: keeps L + R + C. `sqrt2`: center sqrt2 lambda m.
 * `add`: mains untouched, center added. `matrix`: linear three-speaker matrix (Gerzon 1991, abstract read; the
 * formula from memory, energy preservation checked by the tests).
 */
export const UPMIX_LAWS = ['power', 'pressure', 'sqrt2', 'add', 'matrix'] as const;
export type UpmixLaw = (typeof UPMIX_LAWS)[number];

export type UpmixSetting = {
  /** Part of the common content taken to the center, 0 to 1. Not used by the matrix. */
  readonly extraction?: number;
  readonly law?: UpmixLaw;
  /** Angle of the matrix: 90 is plain stereo, 0 the plain sum in the center. Needed by the matrix only. */
  readonly matrixDeg?: number;
};

export type Gains = { readonly left: number; readonly center: number; readonly right: number };

const RADIANS = Math.PI / 180;
/** Usual base for which angles are given, deg to each side. Common practice, no source. */
const HALF_ANGLE_DEG = 30;

function matrixAngle(matrixDeg: number | undefined): number {
  if (matrixDeg === undefined) {
    throw new RangeError('matrixDeg is missing; accepted: 0 to 90 with law matrix, for example 54.7');
  }
  return within('matrixDeg', matrixDeg, 0, 90) * RADIANS;
}

function extractionOf(extraction: number | undefined): number {
  if (extraction === undefined) {
    throw new RangeError('extraction is missing; accepted: 0 to 1, for example 0.5');
  }
  return within('extraction', extraction, 0, 1);
}

/** Amplitudes of the three loudspeakers for a source at `panDeg` (0 left, 45 center, 90 right). */
export function upmixGains(panDeg: number, setting: UpmixSetting): Gains {
  const pan = within('panDeg', panDeg, 0, 90) * RADIANS;
  // cos(90 deg) is not exactly 0 in floating point; a hard-panned source is meant to be exactly that.
  const a = panDeg === 90 ? 0 : Math.cos(pan);
  const b = Math.sin(pan);
  const law = oneOf('law', setting.law ?? 'power', UPMIX_LAWS);
  if (law === 'matrix') {
    const angle = matrixAngle(setting.matrixDeg);
    const sum = (a + b) / Math.SQRT2;
    const difference = (a - b) / Math.SQRT2;
    return {
      left: (sum * Math.sin(angle) + difference) / Math.SQRT2,
      center: sum * Math.cos(angle),
      right: (sum * Math.sin(angle) - difference) / Math.SQRT2,
    };
  }
  const taken = extractionOf(setting.extraction) * Math.min(a, b);
  if (law === 'add') return { left: a, center: Math.SQRT2 * taken, right: b };
  const left = a - taken;
  const right = b - taken;
  if (law === 'sqrt2') return { left, center: Math.SQRT2 * taken, right };
  if (law === 'pressure') return { left, center: 2 * taken, right };
  return { left, center: Math.sqrt(taken * (2 * (a + b) - 2 * taken)), right };
}

const feeds = ({ left, center, right }: Gains, halfAngleDeg: number): Feed[] => [
  { angleDeg: halfAngleDeg, gain: left },
  { angleDeg: 0, gain: center },
  { angleDeg: -halfAngleDeg, gain: right },
];

const STEREO: UpmixSetting = { law: 'power', extraction: 0 };
/** Steps of one degree over the pan, as the contract states the width retained. */
const PANS_DEG = Array.from({ length: 91 }, (_, pan) => pan);

function rmsImageDeg(setting: UpmixSetting, halfAngleDeg: number, vector: typeof energyVector): number {
  const squares = PANS_DEG.map(
    (pan) => (vector(feeds(upmixGains(pan, setting), halfAngleDeg)).angleDeg ?? 0) ** 2,
  );
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

/** Image width after over before: rms of the image angle over pans 0 to 90 deg, by both vectors. */
export function widthRetained(
  setting: UpmixSetting,
  halfAngleDeg = HALF_ANGLE_DEG,
): { energy: number; velocity: number } {
  within('halfAngleDeg', positive('halfAngleDeg', halfAngleDeg), 0, 90);
  const ratio = (vector: typeof energyVector) =>
    rmsImageDeg(setting, halfAngleDeg, vector) / rmsImageDeg(STEREO, halfAngleDeg, vector);
  return { energy: ratio(energyVector), velocity: ratio(velocityVector) };
}

export type Upmix = Gains & {
  readonly velocityDeg: number | null;
  readonly energyDeg: number | null;
  readonly widthRetainedEnergy: number;
  readonly widthRetainedVelocity: number;
};

/** Gains, images (left positive, loudspeakers at +-30 deg and 0) and width retained for one pan. */
export function upmix({ panDeg, ...setting }: UpmixSetting & { panDeg: number }): Upmix {
  const gains = upmixGains(panDeg, setting);
  const width = widthRetained(setting);
  return {
    ...gains,
    velocityDeg: velocityVector(feeds(gains, HALF_ANGLE_DEG)).angleDeg,
    energyDeg: energyVector(feeds(gains, HALF_ANGLE_DEG)).angleDeg,
    widthRetainedEnergy: width.energy,
    widthRetainedVelocity: width.velocity,
  };
}

export type SharedContent = {
  /** Amplitude of a centered source left in each main, and in the center (input power 1). */
  readonly sideGain: number;
  readonly centerGain: number;
  /** Phantom sum of the mains over the center: what combs. Null when the center gets nothing. */
  readonly ratio: number | null;
  /** The same in dB; null when either part is silent, for then nothing combs. */
  readonly ratioDb: number | null;
};

/** How much of a centered source mains and center both play. */
export function sharedContent(setting: UpmixSetting): SharedContent {
  const { left, center, right } = upmixGains(45, setting);
  // Rounding leaves about 1e-17 of a fully extracted source in the mains.
  const sideGain = Math.abs(left) < 1e-12 ? 0 : (left + right) / 2;
  const centerGain = Math.abs(center) < 1e-12 ? 0 : center;
  const ratio = centerGain === 0 ? null : (2 * sideGain) / centerGain;
  const ratioDb = ratio === null || ratio <= 0 ? null : 20 * Math.log10(ratio);
  return { sideGain, centerGain, ratio, ratioDb };
}

/** Weight lost by a later sound, dB/ms: trading ratio 13 % per 0.1 ms over 7.5 % per dB. From memory. */
const PRECEDENCE_DB_PER_MS = 17.3;
/** Most that lateness costs, dB. Our own constant (heuristic). */
const PRECEDENCE_CAP_DB = 18;

/** Direct sound of one loudspeaker at a seat: where it stands from there, its power, when it arrives. */
export interface ImageRay {
  readonly acrossM: number;
  readonly aheadM: number;
  readonly strength: number;
  readonly timeMs: number;
}

/** Direction of the image as a vector, across and ahead: energies, of which later ones count less. */
export function precedenceImage(rays: readonly ImageRay[]): {
  readonly across: number;
  readonly ahead: number;
} {
  const first = Math.min(...rays.map(({ timeMs }) => timeMs));
  let across = 0;
  let ahead = 0;
  for (const { acrossM, aheadM, strength, timeMs } of rays) {
    const costDb = Math.min(PRECEDENCE_DB_PER_MS * (timeMs - first), PRECEDENCE_CAP_DB);
    const weight = (strength * 10 ** (-costDb / 10)) / Math.hypot(acrossM, aheadM);
    across += weight * acrossM;
    ahead += weight * aheadM;
  }
  return { across, ahead };
}

/**
 * Position of the image on the line of the loudspeakers, m from the center, right positive (a position), for a
 * seat off the middle; levels and delays are right in the middle seat. Precedence-weighted energy vector seen from
 * the seat, drawn out to the line (adding precedence is published, Stitt et al. 2016; these constants are not):
 * a heuristic to rank settings, not to quote.
 */
export function offSeatImage(
  input: UpmixSetting & {
    panDeg?: number;
    /** Seat to the right of the midline, m. */
    seatXM: number;
    distanceM: number;
    halfBaseM: number;
    speedOfSound?: number;
  },
): { imageM: number } {
  const seatXM = finite('seatXM', input.seatXM);
  const distanceM = positive('distanceM', input.distanceM);
  const halfBaseM = positive('halfBaseM', input.halfBaseM);
  const speed = positive('speedOfSound', input.speedOfSound ?? C_AIR);
  const gains = upmixGains(input.panDeg ?? 45, input);
  const rays = [
    { xM: -halfBaseM, gain: gains.left },
    { xM: 0, gain: gains.center },
    { xM: halfBaseM, gain: gains.right },
  ]
    .filter(({ gain }) => Math.abs(gain) > 1e-12)
    .map(({ xM, gain }) => {
      const meters = Math.hypot(xM - seatXM, distanceM);
      const middle = Math.hypot(xM, distanceM);
      // Levels and delays are right in the middle seat: each loudspeaker counts relative to its distance there.
      return {
        xM,
        strength: ((gain * middle) / meters) ** 2,
        timeMs: ((meters - middle) / speed) * 1000,
      };
    });
  const { across, ahead } = precedenceImage(
    rays.map(({ xM, ...ray }) => ({ ...ray, acrossM: xM - seatXM, aheadM: distanceM })),
  );
  return { imageM: ahead === 0 ? 0 : seatXM + (distanceM * across) / ahead };
}
