/** Responses laid on the player's clock, so that sums and differences of several sweeps mean something. */
import { type Spectrum, spectrumOf } from './fft.js';
import type { Response } from './response.js';
import { playedAt, type Sequence, type SweepName } from './sequence.js';

export interface Clock {
  readonly sequence: Sequence;
  /** Length of a second of the player on the recorder's clock. */
  readonly scale: number;
}

/** Where a response begins after its sweep was played, seconds of the recorder (below zero). */
export const startOnClock = (
  { sequence, scale }: Clock,
  name: SweepName,
  { start, sampleRateHz }: Response,
): number => start / sampleRateHz - playedAt(sequence, name) * scale;

const N = 16_384;
const RISE_S = 0.002;

interface Stretch {
  /** Seconds after the sweep was played, on the player's clock. */
  readonly fromS: number;
  readonly lengthS: number;
  /** Evens out the decay of a room with this reverberation time, s: more independent samples. */
  readonly evenS?: number;
}

/** Spectrum of a stretch of a response that begins at the same instant after each sweep. */
export function stretchOf(
  clock: Clock,
  name: SweepName,
  response: Response,
  { fromS, lengthS, evenS }: Stretch,
): Spectrum {
  const rate = response.sampleRateHz;
  const at = (fromS * clock.scale - startOnClock(clock, name, response)) * rate;
  const first = Math.floor(at);
  const length = Math.min(N, Math.trunc(lengthS * rate));
  const [rise, fall] = [Math.trunc(RISE_S * rate), Math.trunc(length / 3)];
  const cut = Float64Array.from({ length }, (_, i) => {
    const left = length - i;
    let weight = i < rise ? i / rise : 1;
    if (left < fall) weight *= 0.5 - 0.5 * Math.cos((Math.PI * left) / fall);
    if (evenS !== undefined) weight *= Math.exp((6.9 * i) / rate / evenS);
    return weight * (response.h[first + i] ?? 0);
  });
  const spectrum = spectrumOf(cut, N);
  return { n: N, bins: delayed(spectrum, -(at - first)) };
}

/** Bins of a spectrum moved later by a part of a sample or more. */
export function delayed({ n, bins }: Spectrum, samples: number): Float64Array {
  const out = new Float64Array(bins.length);
  for (let k = 0; k <= n / 2; k += 1) {
    const turn = (-2 * Math.PI * k * samples) / n;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const [re, im] = [bins[2 * k] ?? 0, bins[2 * k + 1] ?? 0];
    out[2 * k] = re * c - im * s;
    out[2 * k + 1] = re * s + im * c;
  }
  return out;
}
