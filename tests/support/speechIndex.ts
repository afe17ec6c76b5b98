/**
 * Speech intelligibility index, third-octave procedure of ANSI S3.5-1997 (sections 4.3 to 4.8, Table 3), read as
 * transcribed in two independent public implementations; the standard itself was not opened. It anchors the band
 * importances that every speech loss of this project rests on: they reproduce its published cases.
 */
import { finite } from '../../src/acoustics/input.js';
import { SPEECH_IMPORTANCE } from '../../src/acoustics/speech.js';

/** Nominal centers of the 18 bands, Hz, as the procedure reckons with them (Table 3). */
const BANDS_HZ: readonly number[] = [
  160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000,
];

/** Spectrum level of speech at normal vocal effort at 1 m, dB per Hz (Table 3). */
export const NORMAL_SPEECH_DB: readonly number[] = [
  32.41, 34.48, 34.75, 33.98, 34.59, 34.27, 32.06, 28.3, 25.01, 23, 20.15, 17.32, 13.18, 11.55, 9.33, 5.31,
  2.59, 1.13,
];

/** Internal noise that stands for the threshold of normal hearing, dB per Hz (Table 3). */
export const INTERNAL_NOISE_DB: readonly number[] = [
  0.6, -1.7, -3.9, -6.1, -8.2, -9.7, -10.8, -11.9, -12.5, -13.5, -15.4, -17.7, -21.2, -24.2, -25.9, -23.6,
  -15.8, -7.1,
];

/** How far speech masks itself, dB below its own level (section 4.3). */
const SELF_MASKING_DB = 24;
/** Part of a band that counts: peaks of speech 15 dB above its level, 30 dB of range (section 4.7). */
const PEAKS_DB = 15;
const RANGE_DB = 30;
/** Above normal effort by this much, loudness begins to cost: 160 dB to nothing (section 4.6). */
const DISTORTION_FROM_DB = 10;
const DISTORTION_RANGE_DB = 160;

export type SpeechIndexInput = {
  /** Spectrum levels in the 18 bands 160 Hz to 8 kHz, dB per Hz: band level minus 10 lg of its width. */
  readonly speechDb: readonly number[];
  readonly noiseDb: readonly number[];
  /** Hearing loss, dB; 0 when absent. */
  readonly hearingLossDb?: readonly number[];
  /** Weights that sum to 1; Table 3 when absent. */
  readonly importance?: readonly number[];
};

function eighteen(name: string, values: readonly number[]): readonly number[] {
  if (values.length !== BANDS_HZ.length) {
    throw new RangeError(
      `${name} has ${values.length} values; accepted: ${BANDS_HZ.length}, one a band from 160 Hz to 8 kHz`,
    );
  }
  values.forEach((value, i) => {
    finite(`${name}[${i}]`, value);
  });
  return values;
}

const at = (values: readonly number[], i: number): number => values[i] as number;
const clip = (value: number): number => Math.min(1, Math.max(0, value));

/** Equivalent masking of each band: its noise and what spreads up from the bands below (section 4.3). */
function maskingDb(speechDb: readonly number[], noiseDb: readonly number[]): number[] {
  const masker = BANDS_HZ.map((_, i) => Math.max(at(noiseDb, i), at(speechDb, i) - SELF_MASKING_DB));
  const slope = BANDS_HZ.map((hz, i) => 0.6 * (at(masker, i) + 10 * Math.log10(hz) - 6.353) - 80);
  return BANDS_HZ.map((hz, i) => {
    if (i === 0) return at(masker, 0);
    let power = 10 ** (at(noiseDb, i) / 10);
    for (let k = 0; k < i; k += 1) {
      const spreadDb = 3.32 * at(slope, k) * Math.log10((0.89 * hz) / at(BANDS_HZ, k));
      power += 10 ** ((at(masker, k) + spreadDb) / 10);
    }
    return 10 * Math.log10(power);
  });
}

/** Index from 0 (nothing of speech is heard) to 1 (all of it), and the masking it was computed with. */
export function speechIndex(input: SpeechIndexInput): { index: number; maskingDb: number[] } {
  const speech = eighteen('speechDb', input.speechDb);
  const noise = eighteen('noiseDb', input.noiseDb);
  const loss = eighteen('hearingLossDb', input.hearingLossDb ?? BANDS_HZ.map(() => 0));
  const importance = eighteen('importance', input.importance ?? SPEECH_IMPORTANCE);
  const masking = maskingDb(speech, noise);
  let index = 0;
  for (let i = 0; i < BANDS_HZ.length; i += 1) {
    const level = at(speech, i);
    const disturbance = Math.max(at(masking, i), at(INTERNAL_NOISE_DB, i) + at(loss, i));
    const heard = clip((level - disturbance + PEAKS_DB) / RANGE_DB);
    const undistorted = clip(
      1 - (level - at(NORMAL_SPEECH_DB, i) - DISTORTION_FROM_DB) / DISTORTION_RANGE_DB,
    );
    index += at(importance, i) * heard * undistorted;
  }
  return { index, maskingDb: masking };
}
