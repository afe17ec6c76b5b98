/**
 * Combing: what a delayed copy of the same sound does to the spectrum, how much of it hearing resolves, and
 * what content shared by mains and center does at a seat.
 */
import { C_AIR } from './air.js';
import { distanceM, type Point, type Triple } from './arrival.js';
import { gridStepDecades, logGrid, smoothPower } from './bands.js';
import { boundedMemo } from './cache.js';
import { finite, notNegative, positive, within } from './input.js';

/** Longest delay taken for combing, ms: beyond it a copy is an echo. Our own bound, to catch slips. */
const LONGEST_DELAY_MS = 1000;
/** Level range of a copy, dB: below -200 it is nothing. Our own bound, to catch slips. */
const LEVEL_LIMIT_DB = 200;
/** How many nulls and peaks are listed. */
const LISTED = 3;

const dB = (amplitude: number): number => 20 * Math.log10(amplitude);

/** Amplitude of the weaker of two sounds over the stronger, 0 to 1. */
const weakerOverStronger = (relativeLevelDb: number): number =>
  10 ** (-Math.abs(within('relativeLevelDb', relativeLevelDb, -LEVEL_LIMIT_DB, LEVEL_LIMIT_DB)) / 20);

export type Comb = {
  readonly nullsHz: readonly number[];
  readonly peaksHz: readonly number[];
  readonly peakDb: number;
  /** Null for two equal sounds: a full cancellation has no depth in dB. */
  readonly dipDb: number | null;
  readonly rippleDb: number | null;
};

/**
 * A sound and its copy: notches at (2n+1)/(2 tau), peaks at n/tau, levels 20 lg (1 +- a) relative to the
 * stronger of the two (closed form, textbook). A copy without delay has neither nulls nor peaks.
 * @param delayMs 0 to 1000 ms. @param relativeLevelDb level of the copy; the sign does not matter.
 */
export function comb({ delayMs, relativeLevelDb = 0 }: { delayMs: number; relativeLevelDb?: number }): Comb {
  const delayS = within('delayMs', delayMs, 0, LONGEST_DELAY_MS) / 1000;
  const a = weakerOverStronger(relativeLevelDb);
  const peakDb = dB(1 + a);
  if (delayS === 0) return { nullsHz: [], peaksHz: [], peakDb, dipDb: null, rippleDb: 0 };
  const list = (at: (n: number) => number) => Array.from({ length: LISTED }, (_, n) => at(n));
  const dipDb = a < 1 ? dB(1 - a) : null;
  return {
    nullsHz: list((n) => (2 * n + 1) / (2 * delayS)),
    peaksHz: list((n) => (n + 1) / delayS),
    peakDb,
    dipDb,
    rippleDb: dipDb === null ? null : peakDb - dipDb,
  };
}

/** Width of the auditory filter, Hz: ERB = 24.7 (0.00437 f + 1). Read in two open auditory toolboxes. */
export function erbHz(frequencyHz: number): number {
  return 24.7 * (0.00437 * notNegative('frequencyHz', frequencyHz) + 1);
}

/** Bandwidth of a fourth-order gammatone over the ERB. From memory (textbook). */
const GAMMATONE_BANDWIDTH = 1.019;

/**
 * Ripple of a comb that is left after the ear's own filter at `frequencyHz`, dB peak to dip: closed form for
 * the power weight of a fourth-order gammatone, u = 2 pi 1.019 ERB tau, D = e^-u (1 + u + 0.4 u^2 + u^3/15),
 * m = 2aD/(1+a^2), 10 lg ((1+m)/(1-m)). Computed for this project, checked there against numerical
 * integration. Null when the notch is complete (equal level, no delay).
 */
export function smoothedRippleDb(input: {
  delayMs: number;
  relativeLevelDb?: number;
  frequencyHz: number;
}): number | null {
  const delayS = within('delayMs', input.delayMs, 0, LONGEST_DELAY_MS) / 1000;
  const a = weakerOverStronger(input.relativeLevelDb ?? 0);
  const u = 2 * Math.PI * GAMMATONE_BANDWIDTH * erbHz(positive('frequencyHz', input.frequencyHz)) * delayS;
  const kept = Math.exp(-u) * (1 + u + 0.4 * u * u + u ** 3 / 15);
  const depth = (2 * a * kept) / (1 + a * a);
  return depth < 1 ? 10 * Math.log10((1 + depth) / (1 - depth)) : null;
}

/** Grid of the curve at a seat, Hz. */
const CURVE_FROM_HZ = 100;
const CURVE_TO_HZ = 16_000;
/** Enough for combs of 10 ms; tested against 6000 points. */
const CURVE_POINTS = 1200;
/** Range in which the ripple is judged, Hz: where voices and timbre are. */
const JUDGED_FROM_HZ = 200;
const JUDGED_TO_HZ = 8000;
/** A local minimum this far below the nominal level counts as the first notch, dB. Our own choice. */
const NOTCH_DB = -3;

/** Frequencies of the curve, and the indices between which the ripple is judged. */
type CurveGrid = {
  readonly frequencyHz: Float64Array;
  readonly stepDecades: number;
  readonly first: number;
  readonly last: number;
};
const GRIDS_KEPT = 8;
const grids = boundedMemo<CurveGrid>(GRIDS_KEPT);
function curveGrid(points: number): CurveGrid {
  return grids(String(points), () => {
    const frequencyHz = logGrid(CURVE_FROM_HZ, CURVE_TO_HZ, points);
    return {
      frequencyHz,
      stepDecades: gridStepDecades(frequencyHz),
      first: frequencyHz.findIndex((hz) => hz >= JUDGED_FROM_HZ),
      last: frequencyHz.findLastIndex((hz) => hz <= JUDGED_TO_HZ),
    };
  });
}

export type SharedCombInput = Triple<Point> & {
  readonly seat: Point;
  /** Seat for which gains hold (the levels are trimmed there); the same as `seat` when absent. */
  readonly mainSeat?: Point;
  readonly delaysMs: Triple<number>;
  /** Amplitude of the shared content from the center, at the main seat. */
  readonly centerGain: number;
  /** Amplitude of the shared content from each main, at the main seat. */
  readonly sideGain: number;
  /** The one whose two wires are crossed: its sound is taken away from that of the others. */
  readonly reversed?: keyof Triple<number>;
  readonly speedOfSound?: number;
  readonly points?: number;
};

export type SharedComb = {
  /** Third-octave-smoothed deviation from the power mean 200 Hz to 8 kHz, rms. */
  readonly rippleRmsDb: number;
  readonly ripplePeakToPeakDb: number;
  /** First local minimum, unsmoothed, relative to center or phantom sum alone, whichever is stronger. */
  readonly firstNotchHz: number | null;
  readonly firstNotchDb: number | null;
  readonly curve: { readonly frequencyHz: Float64Array; readonly smoothedDb: Float64Array };
};

const SILENT: Omit<SharedComb, 'curve'> = {
  rippleRmsDb: 0,
  ripplePeakToPeakDb: 0,
  firstNotchHz: null,
  firstNotchDb: null,
};

type Ray = { readonly amplitude: number; readonly timeS: number };

/** The three rays, amplitudes over `nominal`: results do not hang on the gain, and tiny gains do not underflow. */
function raysAt(input: SharedCombInput, nominal: number): Ray[] {
  const speed = positive('speedOfSound', input.speedOfSound ?? C_AIR);
  const ray = (channel: keyof Triple<number>, gain: number): Ray => {
    const here = positive(`distance from ${channel} to seat`, distanceM(input[channel], input.seat));
    const main = distanceM(input[channel], input.mainSeat ?? input.seat);
    return {
      amplitude: ((channel === input.reversed ? -1 : 1) * (gain / nominal) * main) / here,
      timeS: here / speed + finite(`delaysMs.${channel}`, input.delaysMs[channel]) / 1000,
    };
  };
  const sideGain = notNegative('sideGain', input.sideGain);
  return [
    ray('left', sideGain),
    ray('center', notNegative('centerGain', input.centerGain)),
    ray('right', sideGain),
  ];
}

/** Power of the sum over frequency: squares plus one cosine for each pair of rays. */
function powerCurve(rays: readonly Ray[], frequenciesHz: Float64Array): Float64Array {
  const squares = rays.reduce((sum, ray) => sum + ray.amplitude ** 2, 0);
  const power = new Float64Array(frequenciesHz.length).fill(squares);
  rays.forEach((a, i) => {
    for (const b of rays.slice(i + 1)) {
      const weight = 2 * a.amplitude * b.amplitude;
      const turn = 2 * Math.PI * (a.timeS - b.timeS);
      for (let n = 0; n < power.length; n += 1)
        power[n] = (power[n] as number) + weight * Math.cos(turn * (frequenciesHz[n] as number));
    }
  });
  return power;
}

function firstNotch(frequencyHz: Float64Array, power: Float64Array) {
  for (let i = 1; i + 1 < power.length; i += 1) {
    const here = power[i] ?? 0;
    if (here >= (power[i - 1] ?? 0) || here > (power[i + 1] ?? 0)) continue;
    const levelDb = toDb(here);
    if (levelDb <= NOTCH_DB) return { firstNotchHz: frequencyHz[i] ?? null, firstNotchDb: levelDb };
  }
  return { firstNotchHz: null, firstNotchDb: null };
}

/** Gain that levels are relative to: center or phantom sum alone, whichever is stronger. */
const nominalGain = ({ centerGain, sideGain }: SharedCombInput): number => Math.max(centerGain, 2 * sideGain);
const toDb = (power: number): number => 10 * Math.log10(Math.max(power, Number.MIN_VALUE));

/**
 * Combing of content that center and mains share, at one seat: direct sound, 1/r, one ear, no head. Room sound
 * fills notches, so peak-to-peak values hold for the direct sound only (acoustic model of this project).
 */
export function sharedCombAtSeat(input: SharedCombInput): SharedComb {
  const { frequencyHz, stepDecades, first, last } = curveGrid(input.points ?? CURVE_POINTS);
  const nominal = nominalGain(input);
  const rays = raysAt(input, nominal === 0 ? 1 : nominal);
  if (nominal === 0)
    return { ...SILENT, curve: { frequencyHz, smoothedDb: new Float64Array(frequencyHz.length) } };
  const power = powerCurve(rays, frequencyHz);
  const smoothed = smoothPower(power, stepDecades);
  const smoothedDb = smoothed.map(toDb);
  const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const meanDb = toDb(mean(power.subarray(first, last + 1)));
  const deviationsDb = smoothedDb.subarray(first, last + 1).map((level) => level - meanDb);
  return {
    rippleRmsDb: Math.sqrt(mean(deviationsDb.map((level) => level ** 2))),
    ripplePeakToPeakDb: peakToPeakDb(smoothed.subarray(first, last + 1)),
    ...firstNotch(frequencyHz, power),
    curve: { frequencyHz, smoothedDb },
  };
}

const peakToPeakDb = (power: Float64Array): number => toDb(Math.max(...power)) - toDb(Math.min(...power));

/** Only the peak-to-peak ripple of `sharedCombAtSeat`, dB: what the worst of many seats is found by. */
export function sharedRippleDb(input: SharedCombInput): number {
  const nominal = nominalGain(input);
  if (nominal === 0) return 0;
  const { frequencyHz, stepDecades, first, last } = curveGrid(input.points ?? CURVE_POINTS);
  const smoothed = smoothPower(powerCurve(raysAt(input, nominal), frequencyHz), stepDecades);
  return peakToPeakDb(smoothed.subarray(first, last + 1));
}
