/** One sweep of a recording turned into the impulse response of loudspeaker, room and microphone. */
import { type Mask, maskAt, masked } from './bands.js';
import { powerOfTwo, productOf, type Spectrum, signalOf, spectrumOf } from './fft.js';
import { SWEEP_S, sweep } from './sequence.js';

/** Cut out before the expected start, s: early loudspeakers, and noise before the direct sound. */
export const PRE_S = 0.35;
/** What follows a sweep and belongs to it, s. */
const AFTER_S = 0.8;
/** Of that, what must be there, s. */
const NEEDED_AFTER_S = 0.3;
/** Room for the images of the harmonics, s. */
const SPARE_S = 0.25;
/** Band kept by the division, and where it is held from blowing up noise, Hz. */
const KEPT: Mask = [80, 110, 14_500, 16_000];
const SAFE: Mask = [70, 100, 15_000, 16_500];
/** Regularization against the power of the sweep near 1 kHz: 30 dB down, alike at all frequencies of a falling spectrum. */
const LEAST_PART = 1e-3;

export interface Response {
  readonly sampleRateHz: number;
  /** First sample of the recording that was cut out: the integer is kept, the fraction lies in the arrival. */
  readonly start: number;
  readonly spectrum: Spectrum;
  /** Sample i lies i / rate seconds after `start`; images of harmonics lie at its end, since it is circular. */
  readonly h: Float64Array;
  /** False when the recording begins or ends within the sweep. */
  readonly complete: boolean;
  /** Root mean square of the recording during the sweep. */
  readonly rms: number;
}

/** Inverse filters by clock: one per scale that is in use. */
export type Inverses = Map<number, Spectrum>;

/**
 * @param startS expected start of the sweep, seconds of the recording
 * @param scale length of a second of the player on the recorder's clock
 */
export function responseOf(
  samples: Float32Array,
  sampleRateHz: number,
  startS: number,
  scale: number,
  inverses: Inverses,
): Response {
  const start = Math.round((startS - PRE_S) * sampleRateHz);
  const length = Math.trunc((SWEEP_S + PRE_S + AFTER_S) * sampleRateHz);
  const n = powerOfTwo(length + Math.trunc(SPARE_S * sampleRateHz));
  const cut = new Float64Array(length);
  const end = Math.min(samples.length, start + length);
  for (let i = Math.max(0, start); i < end; i += 1) cut[i - start] = samples[i] ?? 0;
  let inverse = inverses.get(scale);
  if (inverse === undefined) {
    inverse = inverseOf(sampleRateHz, scale, n);
    inverses.set(scale, inverse);
  }
  const spectrum = productOf(spectrumOf(cut, n), inverse);
  const [from, to] = [Math.trunc(PRE_S * sampleRateHz), Math.trunc((PRE_S + SWEEP_S) * sampleRateHz)];
  return {
    sampleRateHz,
    start,
    spectrum,
    h: signalOf(spectrum),
    complete: start >= 0 && end - start > (SWEEP_S + PRE_S + NEEDED_AFTER_S) * sampleRateHz,
    rms: rootMeanSquare(cut.subarray(from, to)),
  };
}

function inverseOf(sampleRateHz: number, scale: number, n: number): Spectrum {
  const { bins } = spectrumOf(sweep(sampleRateHz, scale), n);
  const step = sampleRateHz / n;
  const power = (k: number): number => (bins[2 * k] ?? 0) ** 2 + (bins[2 * k + 1] ?? 0) ** 2;
  const near: number[] = [];
  for (let k = Math.ceil(900 / step); k * step < 1100; k += 1) near.push(power(k));
  const reference = near.sort((a, b) => a - b)[near.length >> 1] ?? 0;
  const out = new Float64Array(n + 2);
  for (let k = 0; k <= n / 2; k += 1) {
    const hz = k * step;
    const gain = maskAt(KEPT, hz);
    if (gain === 0) continue;
    const least = LEAST_PART * reference * (1000 / Math.max(hz, 50)) + reference * (1 - maskAt(SAFE, hz));
    const factor = gain / (power(k) + least);
    out[2 * k] = factor * (bins[2 * k] ?? 0);
    out[2 * k + 1] = -factor * (bins[2 * k + 1] ?? 0);
  }
  return { n, bins: out };
}

export function rootMeanSquare(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += (values[i] ?? 0) ** 2;
  return Math.sqrt(sum / Math.max(1, values.length));
}

/** Length of the stretch around the direct sound that the search for arrivals looks at, s, and where it begins. */
const NEAR_FROM_S = PRE_S - 0.17;
const NEAR_S = 0.34;
const NEAR_EDGE_S = 0.005;

/** The response around its direct sound. */
export interface Near {
  readonly sampleRateHz: number;
  /** Time of the first sample in `h`, samples. */
  readonly first: number;
  readonly spectrum: Spectrum;
}

export function nearOf({ h, sampleRateHz }: Response): Near {
  const first = Math.trunc(NEAR_FROM_S * sampleRateHz);
  const length = Math.trunc(NEAR_S * sampleRateHz);
  const edge = Math.trunc(NEAR_EDGE_S * sampleRateHz);
  const cut = h.slice(first, first + length);
  for (let i = 0; i < edge; i += 1) {
    const gain = 0.5 - 0.5 * Math.cos((Math.PI * i) / edge);
    cut[i] = gain * (cut[i] ?? 0);
    cut[length - 1 - i] = gain * (cut[length - 1 - i] ?? 0);
  }
  return { sampleRateHz, first, spectrum: spectrumOf(cut, powerOfTwo(length)) };
}

export const bandOf = ({ spectrum, sampleRateHz }: Near, mask: Mask): Spectrum =>
  masked(spectrum, sampleRateHz, mask);
