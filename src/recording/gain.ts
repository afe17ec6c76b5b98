/** A recorder that rides the gain: it changes the known step of the repeated sweep, or spreads it over the bands. */
import type { BandLevels } from './loudness.js';
import { REPEAT_STEP_DB } from './sequence.js';
import type { SumCheck } from './sums.js';

/** Error of the known step of 6 dB that tells a gain control, dB: of the mean, and spread over the bands. */
const MOST_STEP_ERROR_DB = 0.2;
const MOST_STEP_SPREAD_DB = 0.4;
/** Numbers of third octaves: those of level (500 Hz to 2 kHz), and those of the spread (315 Hz to 8 kHz). */
export const LEVEL_BANDS = [4, 11] as const;
const SPREAD_BANDS = [2, 17] as const;
/** Sums that miss by more tell that something between them changed, dB. */
export const SUMS_DIFFER_DB = -21;
/** Bands so far over their noise show a spread of the step that is not the noise's, dB; and how many it takes. */
const SPREAD_SNR_DB = 20;
const LEAST_SPREAD_BANDS = 5;
/** What noise adds to the error of the step, dB for each dB that a band lies under those. */
const NOISE_ERROR = 0.015;

/** The repeated sweep is weaker by a known step: whatever rides the gain changes it, or spreads it over the bands. */
export function gainRides(first: BandLevels, repeat: BandLevels, sums: SumCheck | undefined): boolean {
  const steps = first.db.map((db, i) => db - (repeat.db[i] ?? 0));
  const off = meanOf(steps.slice(...LEVEL_BANDS)) - REPEAT_STEP_DB;
  const weakest = Math.min(...repeat.snrDb.slice(...LEVEL_BANDS));
  const wide = steps.filter(
    (_, i) => i >= SPREAD_BANDS[0] && i < SPREAD_BANDS[1] && (repeat.snrDb[i] ?? 0) >= SPREAD_SNR_DB,
  );
  const mean = meanOf(wide);
  const spread = Math.sqrt(meanOf(wide.map((step) => (step - mean) ** 2)));
  const gains = sums !== undefined && sums.errorDb > SUMS_DIFFER_DB && sums.withGainsDb < SUMS_DIFFER_DB;
  return (
    Math.abs(off) > MOST_STEP_ERROR_DB + NOISE_ERROR * Math.max(0, SPREAD_SNR_DB - weakest) ||
    (wide.length >= LEAST_SPREAD_BANDS && spread > MOST_STEP_SPREAD_DB) ||
    gains
  );
}

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
