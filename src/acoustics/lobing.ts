/**
 * Closed forms for a symmetric pair of point sources with the tweeter between them.
 *
 * With psi = pi f d sin(angle) / c and x = f / fc, the level relative to the axis is
 * |cos psi + x^n| / (1 + x^n) for Linkwitz-Riley of order n, and sqrt((cos^2 psi + x^6) / (1 + x^6)) for BW3,
 * whose tweeter stands in quadrature. (Follows from the filters; checked against the full model.)
 */
import { C_AIR } from './air.js';
import { boundedMemo } from './cache.js';
import { CROSSOVER_FILTERS, type CrossoverFilter } from './crossover.js';
import { finite, oneOf, positive, within } from './input.js';
import { goldenMinimum } from './minimize.js';

/** Exponent of x. A second-order Butterworth with its tweeter inverted leaves the same shape as LR2. */
const IN_PHASE_EXPONENT: Record<Exclude<CrossoverFilter, 'BW3'>, number> = { LR2: 2, LR4: 4, LR8: 8, BW2: 2 };

export type MtmPoint = {
  readonly filter: CrossoverFilter;
  /** Frequency over crossover frequency, 0 or above. */
  readonly frequencyRatio: number;
  /** Spacing times sine of the angle, in wavelengths at the crossover. */
  readonly spacingInWavelengths: number;
};

/** Amplitude relative to the axis, signed when both branches are in phase. */
export function mtmAmplitude({ filter, frequencyRatio: x, spacingInWavelengths: k }: MtmPoint): number {
  const mids = Math.cos(Math.PI * x * k);
  if (filter === 'BW3') return Math.sqrt((mids ** 2 + x ** 6) / (1 + x ** 6));
  const tweeter = x ** IN_PHASE_EXPONENT[filter];
  return (mids + tweeter) / (1 + tweeter);
}

/** Dips are sought below this multiple of the crossover: above it the tweeter plays alone. */
const RATIO_LIMIT = 3;
const RATIO_STEPS = 150;

/** Smallest signed amplitude over frequency: below zero means that an exact null has been passed. */
function leastAmplitude(filter: CrossoverFilter, k: number): number {
  const at = (x: number): number => mtmAmplitude({ filter, frequencyRatio: x, spacingInWavelengths: k });
  const step = RATIO_LIMIT / RATIO_STEPS;
  let best = 0;
  for (let i = 1; i <= RATIO_STEPS; i += 1) if (at(i * step) < at(best * step)) best = i;
  return at(goldenMinimum(at, Math.max(0, best - 1) * step, (best + 1) * step));
}

const K_STEP = 0.05;
/** The last K tried: far past the first exact null of every in-phase filter. */
const K_LIMIT = 6;
const K_BISECTIONS = 30;
const thresholds = boundedMemo<number | null>(256);

/**
 * K: spacing times sine of the angle, in wavelengths at the crossover, at which the deepest dip first reaches
 * `targetDipDb` (above 0; Infinity asks for the first exact null). Null when it is never reached: BW3 has no
 * exact null.
 */
export function mtmThresholdK(filter: CrossoverFilter, targetDipDb: number): number | null {
  oneOf('filter', filter, CROSSOVER_FILTERS);
  if (targetDipDb !== Number.POSITIVE_INFINITY) positive('targetDipDb', targetDipDb);
  return thresholds(`${filter} ${targetDipDb}`, () => {
    const target = 10 ** (-targetDipDb / 20);
    let low = 0;
    let high = K_STEP;
    while (leastAmplitude(filter, high) > target) {
      low = high;
      high += K_STEP;
      if (high > K_LIMIT) return null;
    }
    for (let i = 0; i < K_BISECTIONS; i += 1) {
      const middle = (low + high) / 2;
      if (leastAmplitude(filter, middle) > target) low = middle;
      else high = middle;
    }
    return high;
  });
}

/** First null of two equal sources in phase, Hz: c / (2 d sin angle). Null on the axis. */
export function pairNull({ spacingM, angleDeg }: { spacingM: number; angleDeg: number }): {
  firstNullHz: number | null;
} {
  positive('spacingM', spacingM);
  within('angleDeg', angleDeg, -90, 90);
  const detourM = spacingM * Math.abs(Math.sin((angleDeg * Math.PI) / 180));
  return { firstNullHz: detourM === 0 ? null : C_AIR / (2 * detourM) };
}

/**
 * Angle at which the dip of an in-line symmetric pair with the tweeter between first reaches `targetDipDb`
 * (above 0): asin(K c / (fc d)). Null when the layout never gets there.
 */
export function lobingAngle(input: {
  spacingM: number;
  crossoverHz: number;
  filter?: CrossoverFilter;
  targetDipDb?: number;
}): { angleDeg: number | null } {
  const { spacingM, crossoverHz, filter = 'LR4', targetDipDb = 6 } = input;
  positive('spacingM', spacingM);
  positive('crossoverHz', crossoverHz);
  const k = mtmThresholdK(filter, finite('targetDipDb', targetDipDb));
  const sine = k === null ? Number.POSITIVE_INFINITY : (k * C_AIR) / (crossoverHz * spacingM);
  return { angleDeg: sine > 1 ? null : (Math.asin(sine) * 180) / Math.PI };
}
