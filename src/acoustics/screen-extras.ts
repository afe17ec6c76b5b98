/**
 * What follows from a screen: the wave thrown back and forth behind it, and the shelf that makes up for its loss.
 * The first, `screenBackWave`, is an upper bound that published rows hold; no rule reads it.
 */
import { C_AIR } from './air.js';
import { gridStepDecades, logGrid, smoothPower } from './bands.js';
import { add, type Complex, complex, mul, ONE, polar, power, scale, sub } from './complex.js';
import { analogFilterDb, type Filter } from './filter.js';
import { positive, within } from './input.js';
import { leastSquares } from './minimize.js';
import { type Screen, screenTransmission } from './screen.js';

/** Range in which a screen is judged and compensated, Hz. */
const FROM_HZ = 1000;
const TO_HZ = 16_000;
/** Points of the back-wave curve: at least 10 for each tooth of gaps up to 0.3 m. */
const BACK_WAVE_POINTS = 800;
/** Passes between screen and baffle that are followed, and the amplitude below which they are not. */
const MOST_PASSES = 100;
const FAINTEST = 1e-4;

export type BackWave = {
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
  const grid = logGrid(FROM_HZ, TO_HZ, BACK_WAVE_POINTS);
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

/** Most boost advised for a tweeter, dB: four times its power. Our own choice. */
export const MOST_SHELF_BOOST_DB = 6;
const FIT_POINTS = 60;
/** Corners to start from, Hz: the fit has more than one low point. */
const STARTS_HZ: readonly number[] = [3000, 8000, 15_000];

export type ShelfCompensation = Pick<Filter, 'frequencyHz' | 'gainDb' | 'q'> & {
  /** What is left of the loss from 1 to 16 kHz. */
  readonly rmsDb: number;
  readonly worstDb: number;
};

/** High shelf (analog prototype, least squares from 1 to 16 kHz) that makes up for a loss within a bound. */
export function shelfCompensation(input: {
  lossDb: (frequencyHz: number) => number;
  maxBoostDb?: number;
}): ShelfCompensation {
  const maxBoostDb = within(
    'maxBoostDb',
    positive('maxBoostDb', input.maxBoostDb ?? MOST_SHELF_BOOST_DB),
    0,
    20,
  );
  const grid = logGrid(FROM_HZ, TO_HZ, FIT_POINTS);
  const wanted = grid.map(input.lossDb);
  const shelf = ([logHz = 0, gainDb = 0, q = 1]: readonly number[]): Filter => ({
    type: 'highShelf',
    frequencyHz: Math.exp(logHz),
    gainDb,
    q,
  });
  const residuals = (values: readonly number[]) =>
    grid.map((hz, i) => analogFilterDb(shelf(values), hz) - (wanted[i] ?? 0));
  const fits = STARTS_HZ.map((startHz) =>
    leastSquares(residuals, [
      { start: Math.log(startHz), min: Math.log(500), max: Math.log(20_000) },
      { start: maxBoostDb / 2, min: 0, max: maxBoostDb },
      { start: 0.6, min: 0.1, max: 2 },
    ]),
  );
  const best = fits.reduce((a, b) => (b.cost < a.cost ? b : a));
  const { frequencyHz, gainDb, q } = shelf(best.values);
  const left = residuals(best.values);
  return {
    frequencyHz,
    gainDb,
    q,
    rmsDb: Math.sqrt(best.cost / left.length),
    worstDb: Math.max(...left.map(Math.abs)),
  };
}
