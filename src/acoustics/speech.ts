/**
 * How much a loss in each third-octave band costs speech.
 * Band importances of ANSI S3.5-1997 Table 3 (read, as transcribed in several independent public
 * implementations; the standard itself was not opened). They sum to 1.
 */
import { thirdOctaveCentersHz } from './bands.js';
import { finite } from './input.js';

/** First and last band of the speech range: 160 Hz and 8 kHz. */
const SPEECH_FIRST_BAND = -8;
const SPEECH_LAST_BAND = 9;

/** Exact centers of the 18 bands, Hz. */
export const SPEECH_BANDS_HZ: readonly number[] = thirdOctaveCentersHz(SPEECH_FIRST_BAND, SPEECH_LAST_BAND);

/** Importance of each band, 160 Hz to 8 kHz (ANSI S3.5-1997 Table 3; read as a copy in public code). */
export const SPEECH_IMPORTANCE: readonly number[] = [
  0.0083, 0.0095, 0.015, 0.0289, 0.044, 0.0578, 0.0653, 0.0711, 0.0818, 0.0844, 0.0882, 0.0898, 0.0868,
  0.0844, 0.0771, 0.0527, 0.0364, 0.0185,
];

/**
 * Speech-weighted mean of 18 band losses (160 Hz to 8 kHz), dB, positive when speech loses level.
 * Throws RangeError when there are not 18 finite numbers.
 */
export function speechLoss({ bandLossDb }: { bandLossDb: ArrayLike<number> }): { lossDb: number } {
  if (bandLossDb.length !== SPEECH_IMPORTANCE.length) {
    throw new RangeError(
      `bandLossDb has ${bandLossDb.length} values; accepted: ${SPEECH_IMPORTANCE.length}, one a third-octave band from 160 Hz to 8 kHz`,
    );
  }
  let lossDb = 0;
  for (let i = 0; i < SPEECH_IMPORTANCE.length; i += 1) {
    lossDb += (SPEECH_IMPORTANCE[i] ?? 0) * finite(`bandLossDb[${i}]`, bandLossDb[i] ?? Number.NaN);
  }
  return { lossDb };
}
