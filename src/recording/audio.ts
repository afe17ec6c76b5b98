/** Sound as the analysis takes it, and how a file says what it is. */
import { UserError } from '../lib/user-error.js';

export interface Sound {
  readonly rateHz: number;
  /** The louder of the channels, never their sum: two microphones add to a comb. */
  readonly samples: Float32Array;
}

/** Beyond, a file is no recording of the test, channels. */
export const MOST_CHANNELS = 8;
const LEAST_FILE_RATE_HZ = 8000;
const MOST_FILE_RATE_HZ = 384_000;
/** The longest recording that is read, s: the test takes half a minute. */
export const LONGEST_S = 300;

/** Five minutes of two channels at 48 kHz: what is more in rate or channels must be shorter. */
const MOST_SAMPLES = LONGEST_S * 48_000 * 2;

export const ADVICE =
  'a recording as WAV, FLAC or, where ffmpeg is installed, what phones store (m4a, mp3, opus); a WAV at 44.1 or 48 kHz is best';

export const audioError = (what: string): UserError => new UserError({ what, accepted: ADVICE });

/** Throws unless rate, channels and length (sample frames) are those of a recording. */
export function checkShape(rateHz: number, channels: number, frames: number): void {
  if (!(rateHz >= LEAST_FILE_RATE_HZ && rateHz <= MOST_FILE_RATE_HZ)) {
    throw audioError(`its sample rate is ${rateHz} Hz`);
  }
  if (!(channels >= 1 && channels <= MOST_CHANNELS))
    throw audioError(`it says that it has ${channels} channels`);
  if (frames === 0) throw audioError('it holds no sound');
  if (frames > LONGEST_S * rateHz || frames * channels > MOST_SAMPLES) {
    const shape = `${Math.round(frames / rateHz)} seconds long at ${rateHz} Hz in ${channels === 1 ? 'one channel' : `${channels} channels`}`;
    throw audioError(`it is ${shape}; the test takes half a minute, so cut it to that`);
  }
}

/** The channel with the most energy. Throws where a sample is no number. */
export function loudest(channels: readonly Float32Array[], rateHz: number): Sound {
  let best: { samples: Float32Array; energy: number } | undefined;
  for (const samples of channels) {
    let energy = 0;
    for (const value of samples) energy += value * value;
    if (!Number.isFinite(energy)) throw audioError('some of its samples are no numbers');
    if (best === undefined || energy > best.energy) best = { samples, energy };
  }
  if (best === undefined) throw audioError('it holds no sound');
  return { rateHz, samples: best.samples };
}
