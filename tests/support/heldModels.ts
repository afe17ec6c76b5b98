/** Models that published rows and other checks hold: what the program computes is measured against them, and no rule reads them. */
import { C_AIR } from '../../src/acoustics/air.js';
import { gridStepDecades, logGrid, smoothPower } from '../../src/acoustics/bands.js';
import {
  add,
  type Complex,
  complex,
  mul,
  ONE,
  polar,
  power,
  scale,
  sub,
} from '../../src/acoustics/complex.js';
import { CROSSOVER_FILTERS, type CrossoverFilter } from '../../src/acoustics/crossover.js';
import { notNegative, oneOf, positive, within } from '../../src/acoustics/input.js';
import { type MtmPoint, mtmAmplitude } from '../../src/acoustics/lobing.js';
import { phantomAtSeat } from '../../src/acoustics/phantom.js';
import {
  END_CORRECTION,
  HOLE_INTERACTION,
  type PerforatedScreen,
  type Screen,
  screenTransmission,
} from '../../src/acoustics/screen.js';
import { UPMIX_LAWS, type UpmixLaw, type UpmixSetting } from '../../src/acoustics/upmix.js';

const RADIANS = Math.PI / 180;
const BISECTIONS = 40;

/** Level of one frequency relative to the axis, dB; -Infinity in an exact null. */
export function mtmPointDb(point: MtmPoint): number {
  oneOf('filter', point.filter, CROSSOVER_FILTERS);
  return 20 * Math.log10(Math.abs(mtmAmplitude(point)));
}

/** Nulls are sought below this multiple of the crossover, above which the tweeter plays alone, in these steps. */
const NULLS_BELOW = 3;
const NULL_STEP = NULLS_BELOW / 3000;

/**
 * Frequency of the first exact null over the textbook null c / (2 d sin angle) of the mids alone; null where
 * the tweeter leaves none.
 */
export function mtmFirstNullRatio(filter: CrossoverFilter, spacingInWavelengths: number): number | null {
  oneOf('filter', filter, CROSSOVER_FILTERS);
  const k = positive('spacingInWavelengths', spacingInWavelengths);
  const at = (x: number): number => mtmAmplitude({ filter, frequencyRatio: x, spacingInWavelengths: k });
  for (let low = 0; low < NULLS_BELOW; low += NULL_STEP) {
    if (at(low) < 0 || at(low + NULL_STEP) >= 0) continue;
    let [from, to] = [low, low + NULL_STEP];
    for (let i = 0; i < BISECTIONS; i += 1) {
      const middle = (from + to) / 2;
      if (at(middle) >= 0) from = middle;
      else to = middle;
    }
    return to * 2 * k;
  }
  return null;
}

/** Steps beyond |x| after which the periodic trapezoid is exact to double precision. */
const STEPS_BEYOND = 40;

/**
 * J1(x) for real x to about 1e-15, by Bessel's integral (1/pi) int cos(t - x sin t) dt over 0..pi.
 * The integrand is periodic, so the trapezoid rule converges faster than any power of the step.
 * Too slow for the models: it is the proof of `jincFast`.
 */
export function besselJ1(x: number): number {
  const steps = Math.ceil(Math.abs(x)) + STEPS_BEYOND;
  // The end points, t = 0 and t = pi, contribute cos(0)/2 and cos(pi)/2: they cancel.
  let sum = 0;
  for (let n = 1; n < steps; n += 1) {
    const t = (Math.PI * n) / steps;
    sum += Math.cos(t - x * Math.sin(t));
  }
  return sum / steps;
}

/**
 * Power a small source gains from one to three walls at right angles, dB re free field (Waterhouse 1955, from
 * memory): 10 lg of the sum over all images of sinc(2 k d). Limits 3.01, 6.02, 9.03 dB.
 * @param distancesM to each wall, 0 or above, one to three of them. Throws RangeError otherwise.
 */
export function boundaryGainDb({
  distancesM,
  frequencyHz,
}: {
  distancesM: readonly number[];
  frequencyHz: number;
}): number {
  within('distancesM.length', distancesM.length, 1, 3);
  for (const [i, d] of distancesM.entries()) notNegative(`distancesM[${i}]`, d);
  const k = (2 * Math.PI * positive('frequencyHz', frequencyHz)) / C_AIR;
  // Squared distances of all images: each wall is either mirrored or not.
  let imagesSquared = [0];
  for (const d of distancesM) imagesSquared = imagesSquared.flatMap((s) => [s, s + d * d]);
  const sum = imagesSquared.reduce((total, squared) => {
    const argument = 2 * k * Math.sqrt(squared);
    return total + (argument === 0 ? 1 : Math.sin(argument) / argument);
  }, 0);
  return 10 * Math.log10(sum);
}

/** Image shift that still counts as the middle, deg. Read: the criterion of a published sweet-spot study. */
const SWEET_SPOT_SHIFT_DEG = 5;

/**
 * Width of the region, m, in which a phantom center moves by no more than `maxShiftDeg` by the fitted law. Laws
 * from listening tests give about half the width that a published binaural model gives (read): treat as a floor.
 */
export function sweetSpotWidthM({
  halfBaseM,
  distanceM,
  maxShiftDeg = SWEET_SPOT_SHIFT_DEG,
}: {
  halfBaseM: number;
  distanceM: number;
  maxShiftDeg?: number;
}): number {
  positive('maxShiftDeg', maxShiftDeg);
  let inside = 0;
  let outside = positive('halfBaseM', halfBaseM);
  for (let i = 0; i < BISECTIONS; i += 1) {
    const seatXM = (inside + outside) / 2;
    const shift = Math.abs(phantomAtSeat({ halfBaseM, distanceM, seatXM }).imageDeg);
    if (shift <= maxShiftDeg) inside = seatXM;
    else outside = seatXM;
  }
  return 2 * inside;
}

type Diffuse = {
  /** Shares of power left, center, right; sum 1. */
  readonly shares: readonly [number, number, number];
  /** Correlation between left and right, -1 to 1: below about -0.5 the sides sound hollow. */
  readonly correlation: number;
  /** Part of the power that comes from the sides. */
  readonly lateralFraction: number;
};

/**
 * Uncorrelated content of equal power in both channels. Ideal extraction leaves it alone (`leak` 0); a passive
 * subtraction of the middle takes it along (`leak` 1); in between, that part of the extraction leaks. The
 * matrix has no choice; `add` leaves the sides alone. Closed form, computed for this project.
 */
export function diffuse(setting: UpmixSetting & { leak?: number }): Diffuse {
  const leak = within('leak', setting.leak ?? 1, 0, 1);
  const law = oneOf('law', setting.law ?? 'power', UPMIX_LAWS);
  const [own, other, center] = diffuseRow(setting, law, leak);
  const side = own * own + other * other;
  const middle = 2 * center * center;
  const total = 2 * side + middle;
  return {
    shares: [side / total, middle / total, side / total],
    correlation: (2 * own * other) / side,
    lateralFraction: (2 * side) / total,
  };
}

/** Gain of a channel into its own main, into the other main, into the center. */
function diffuseRow(setting: UpmixSetting, law: UpmixLaw, leak: number): [number, number, number] {
  if (law === 'matrix') {
    const angle = within('matrixDeg', setting.matrixDeg ?? Number.NaN, 0, 90) * RADIANS;
    return [(Math.sin(angle) + 1) / 2, (Math.sin(angle) - 1) / 2, Math.cos(angle) / Math.SQRT2];
  }
  const taken = within('extraction', setting.extraction ?? Number.NaN, 0, 1) * leak;
  const center = taken / Math.SQRT2;
  return law === 'add' ? [1, 0, center] : [1 - taken / 2, -taken / 2, center];
}

/** Place on the ERB scale: 21.4 lg (0.00437 f + 1). Read in two open auditory toolboxes. */
export function erbNumber(frequencyHz: number): number {
  return 21.4 * Math.log10(0.00437 * notNegative('frequencyHz', frequencyHz) + 1);
}

/** Level at the crossover of two ideal branches of equal level when one is late, dB: 20 lg |cos(pi f tau)|. */
export function delayErrorAtCrossoverDb(crossoverHz: number, delayMs: number): number | null {
  const level = Math.abs(Math.cos((Math.PI * positive('crossoverHz', crossoverHz) * delayMs) / 1000));
  return level < 1e-12 ? null : 20 * Math.log10(level);
}

/** Reflection R = 1 - T of the sheet, magnitude at normal incidence. */
export function screenReflection(sheet: Screen, frequencyHz: number): number {
  const { re, im } = sub(ONE, screenTransmission(sheet, frequencyHz));
  return Math.hypot(re, im);
}

/** Where a perforated sheet loses 3 dB, Hz, by its mass alone: c sigma / (pi (t + 0.85 d psi)); then 6 dB/octave. */
export function screenF3Hz(
  sheet: Omit<PerforatedScreen, 'kind' | 'openArea'> & { openArea: number },
): number {
  const interaction = within('holeInteraction', sheet.holeInteraction ?? HOLE_INTERACTION, 0, 1);
  const area = positive('openArea', sheet.openArea);
  const length =
    positive('thicknessM', sheet.thicknessM) +
    END_CORRECTION * positive('holeDiameterM', sheet.holeDiameterM) * interaction;
  return (C_AIR * area) / (Math.PI * length);
}

/** Factor of power that a boost asks of a tweeter: 10^(dB/10). */
export function tweeterPowerFactor(boostDb: number): number {
  return 10 ** (within('boostDb', boostDb, -100, 100) / 10);
}

/** Points of the back-wave curve: at least 10 for each tooth of gaps up to 0.3 m. */
const BACK_WAVE_POINTS = 800;
/** Passes between screen and baffle that are followed, and the amplitude below which they are not. */
const MOST_PASSES = 100;
const FAINTEST = 1e-4;

type BackWave = {
  readonly combSpacingHz: number;
  readonly ripplePeakToPeakDb: number;
  readonly thirdOctavePeakToPeakDb: number;
};

/** Sum of the passes behind the sheet, relative to the sheet alone. */
function passes(reflected: Complex, gapM: number, distanceM: number, frequencyHz: number): Complex {
  const once = mul(reflected, polar(1, (-4 * Math.PI * frequencyHz * gapM) / C_AIR));
  let term = ONE;
  let sum = complex(0);
  for (let n = 0; n < MOST_PASSES && power(term) > FAINTEST ** 2; n += 1) {
    sum = add(sum, scale(term, distanceM / (distanceM + 2 * n * gapM)));
    term = mul(term, once);
  }
  return sum;
}

/**
 * Ripple of the wave between screen and baffle, 1 to 16 kHz: p = T sum (R Rb e^-j2ks)^n D / (D + 2ns), teeth
 * c / (2s) apart. Upper bound: an endless hard baffle parallel to the sheet (acoustic model of this project).
 * @param backReflection 0.9 for a hard flat baffle, 0.3 with absorbent on it (common practice, no source).
 */
export function screenBackWave(input: {
  screen: Screen;
  gapM: number;
  distanceM?: number;
  backReflection?: number;
}): BackWave {
  const gapM = positive('gapM', input.gapM);
  const distanceM = positive('distanceM', input.distanceM ?? 3);
  const back = within('backReflection', input.backReflection ?? 0.9, 0, 0.99);
  const grid = logGrid(1000, 16_000, BACK_WAVE_POINTS);
  const ripple = grid.map((hz) => {
    const reflected = scale(sub(ONE, screenTransmission(input.screen, hz)), back);
    return power(passes(reflected, gapM, distanceM, hz));
  });
  const peakToPeakDb = (powers: Float64Array) => 10 * Math.log10(Math.max(...powers) / Math.min(...powers));
  return {
    combSpacingHz: C_AIR / (2 * gapM),
    ripplePeakToPeakDb: peakToPeakDb(ripple),
    thirdOctavePeakToPeakDb: peakToPeakDb(smoothPower(ripple, gridStepDecades(grid))),
  };
}
