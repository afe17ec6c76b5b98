import { logGrid } from './bands.js';
import { analogFilterDb, type Filter } from './filter.js';
import { positive, within } from './input.js';
import { leastSquares } from './minimize.js';

/** Range in which a screen is judged and compensated, Hz. */
const FROM_HZ = 1000;
const TO_HZ = 16_000;
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
