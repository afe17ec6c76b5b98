/**
 * Energy vector with precedence: the later of two sounds counts less, the more so the later and weaker it is.
 * Formula and constants read in open code after a published model (Stitt, Bertet, van Walstijn 2016). No rule uses it: it is an outside
 * measure of the fitted law of the phantom image, and published rows hold it.
 */
import { finite, notNegative, within } from '../../src/acoustics/input.js';
import { energyVector, type ImageVector } from '../../src/acoustics/vectors.js';

/** Rate at which the lag loses its weight with delay, 1/ms. Read in the code. */
const DELAY_RATE_PER_MS = 1.09;
/** Amplitude ratio lag over lead at which the lag has half its weight (13.06 dB). Read in the code. */
const HALF_WEIGHT_RATIO = 4.5;
/** Scale, exponent and shape of the level term. Read in the code. */
const RATIO_SCALE = 3.5;
const RATIO_POWER = 10;
const GAMMA_SHAPE = 0.1;
/** sin of 4 deg: variance of the direction term. Two sources in one direction fuse whatever the delay. Read. */
const DIRECTION_VARIANCE = Math.sin((4 * Math.PI) / 180);

const RADIANS = Math.PI / 180;

/** Complementary error function for x >= 0: series below 2.5, continued fraction above. About 1e-12. */
export function erfc(x: number): number {
  notNegative('x', x);
  if (x < 2.5) {
    let term = x;
    let sum = x;
    for (let n = 1; Math.abs(term) > 1e-17; n += 1) {
      term *= (-x * x) / n;
      sum += term / (2 * n + 1);
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * sum;
  }
  let tail = x;
  for (let n = 60; n >= 1; n -= 1) tail = x + n / 2 / tail;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * tail);
}

/** Gamma(1.1), computed. */
const GAMMA_OF_SHAPE_PLUS_ONE = 0.951350769866873;
/** Beyond this the regularised gamma function of shape 0.1 is 1 to double precision. */
const GAMMA_SATURATED = 40;

/** Lower regularised incomplete gamma function P(0.1, x), x >= 0, by its power series. */
export function lowerGamma(x: number): number {
  if (x <= 0) return 0;
  if (x > GAMMA_SATURATED) return 1;
  let term = 1;
  let sum = 1;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= x / (GAMMA_SHAPE + n);
    sum += term;
  }
  return Math.min(1, (x ** GAMMA_SHAPE * Math.exp(-x) * sum) / GAMMA_OF_SHAPE_PLUS_ONE);
}

/** Weight on the amplitude of the lag, 0 to 1. `levelDb` is lag over lead. */
export function lagWeight(delayMs: number, levelDb: number, directionSineDifference: number): number {
  const byTime = erfc(DELAY_RATE_PER_MS * notNegative('delayMs', delayMs));
  const above = 10 ** (within('levelDb', levelDb, -200, 200) / 20) - HALF_WEIGHT_RATIO;
  const byLevel = 0.5 + 0.5 * Math.sign(above) * lowerGamma((Math.abs(above) / RATIO_SCALE) ** RATIO_POWER);
  const byDirection = Math.exp(-(finite('direction', directionSineDifference) ** 2) / DIRECTION_VARIANCE / 2);
  const apart = byLevel * (1 - byTime) + byTime;
  return (1 - byDirection) * apart + byDirection;
}

/**
 * Image of a sound from two loudspeakers, the second `delayMs` later and `levelDb` louder (negative: softer).
 * Angles in deg, left positive.
 */
export function precedenceImage(input: {
  leadDeg: number;
  lagDeg: number;
  delayMs: number;
  levelDb?: number;
}): ImageVector {
  const levelDb = input.levelDb ?? 0;
  const apart =
    Math.sin(finite('leadDeg', input.leadDeg) * RADIANS) - Math.sin(finite('lagDeg', input.lagDeg) * RADIANS);
  const weight = lagWeight(input.delayMs, levelDb, apart);
  return energyVector([
    { angleDeg: input.leadDeg, gain: 1 },
    { angleDeg: input.lagDeg, gain: 10 ** (levelDb / 20) * weight },
  ]);
}

/** Level beyond which no re-centering is looked for, dB. Own bound: the need stops near 10 dB. */
const MOST_DB = 30;
const BISECTIONS = 60;

/** How much louder the lag must be, dB, to bring the image back to the middle between two loudspeakers. */
export function levelToRecenterDb(delayMs: number, halfAngleDeg = 30): number {
  within('halfAngleDeg', halfAngleDeg, 0, 90);
  const apart = 2 * Math.sin(halfAngleDeg * RADIANS);
  let low = 0;
  let high = MOST_DB;
  for (let i = 0; i < BISECTIONS; i += 1) {
    const levelDb = (low + high) / 2;
    if (10 ** (levelDb / 20) * lagWeight(delayMs, levelDb, apart) < 1) low = levelDb;
    else high = levelDb;
  }
  return (low + high) / 2;
}
