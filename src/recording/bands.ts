/** Masks, bands and energies over a spectrum. */
import { thirdOctaveCentersHz, thirdOctaveEdgesHz } from '../acoustics/bands.js';
import { type Spectrum, spectrumOf } from './fft.js';

/** Third octaves that are read, 200 Hz to 10 kHz: exact base-ten centers (IEC 61260-1). */
export const BANDS_HZ: readonly number[] = thirdOctaveCentersHz(-7, 10);
export const BAND_EDGES = BANDS_HZ.map(thirdOctaveEdgesHz);

/** Nothing below the first and above the last, all between the middle two, raised cosine on log frequency. Hz. */
export type Mask = readonly [number, number, number, number];

export function maskAt([zero, full, fullTo, zeroAt]: Mask, hz: number): number {
  if (hz <= zero || hz >= zeroAt) return 0;
  if (hz >= full && hz <= fullTo) return 1;
  const rise = hz >= full ? 1 : Math.log(hz / zero) / Math.log(full / zero);
  const fall = hz <= fullTo ? 1 : Math.log(zeroAt / hz) / Math.log(zeroAt / fullTo);
  return (0.5 - 0.5 * Math.cos(Math.PI * rise)) * (0.5 - 0.5 * Math.cos(Math.PI * fall));
}

export function masked({ n, bins }: Spectrum, sampleRateHz: number, mask: Mask): Spectrum {
  const out = new Float64Array(bins.length);
  const step = sampleRateHz / n;
  const last = Math.min(n / 2, Math.ceil(mask[3] / step));
  for (let k = Math.floor(mask[0] / step); k <= last; k += 1) {
    const gain = maskAt(mask, k * step);
    out[2 * k] = gain * (bins[2 * k] ?? 0);
    out[2 * k + 1] = gain * (bins[2 * k + 1] ?? 0);
  }
  return { n, bins: out };
}

/** Energy between two frequencies, part bins at the edges included: bin k covers half a bin to each side. */
export function energyBetween(
  { n, bins }: Spectrum,
  sampleRateHz: number,
  lowerHz: number,
  upperHz: number,
): number {
  const [from, to] = [(lowerHz * n) / sampleRateHz + 0.5, (upperHz * n) / sampleRateHz + 0.5];
  let sum = 0;
  for (let k = Math.floor(from); k <= Math.min(n / 2, Math.floor(to)); k += 1) {
    const part = Math.min(to, k + 1) - Math.max(from, k);
    sum += part * ((bins[2 * k] ?? 0) ** 2 + (bins[2 * k + 1] ?? 0) ** 2);
  }
  return sum;
}

/** Energy in each third octave. @param n length of the transform, a power of two */
export function thirdOctaves(signal: ArrayLike<number>, sampleRateHz: number, n = 32_768): Float64Array {
  const spectrum = spectrumOf(signal, n);
  return Float64Array.from(BAND_EDGES, ({ lowerHz, upperHz }) =>
    energyBetween(spectrum, sampleRateHz, lowerHz, upperHz),
  );
}

/** Energies below are zero for every purpose; their logarithm stays finite. */
const LEAST_ENERGY = 1e-30;
export const decibels = (energy: number): number => 10 * Math.log10(Math.max(energy, LEAST_ENERGY));

/** A window in time, s: rise before the arrival, length after it, and how much of that length falls. */
export interface Gate {
  readonly preS: number;
  readonly lengthS: number;
  readonly fallS: number;
}

/** A response cut out around `atS` with raised-cosine sides; `startS` is the time of its first sample. */
export function gated(
  h: Float64Array,
  sampleRateHz: number,
  atS: number,
  { preS, lengthS, fallS }: Gate,
): { readonly samples: Float64Array; readonly start: number } {
  const start = Math.max(0, Math.floor((atS - preS) * sampleRateHz));
  const end = Math.min(h.length, Math.ceil((atS + lengthS) * sampleRateHz));
  const samples = new Float64Array(Math.max(0, end - start));
  for (let i = 0; i < samples.length; i += 1) {
    const t = (start + i) / sampleRateHz - atS;
    let weight = 1;
    if (t < 0) weight = 0.5 + 0.5 * Math.cos(Math.PI * Math.min(1, -t / preS));
    const falling = (t - lengthS + fallS) / fallS;
    if (falling > 0) weight *= 0.5 + 0.5 * Math.cos(Math.PI * Math.min(1, falling));
    samples[i] = weight * (h[start + i] ?? 0);
  }
  return { samples, start };
}

/** Samples of constant power under a gate, as a count of full samples: a raised-cosine side counts three eighths. */
export const gateSamples = ({ preS, lengthS, fallS }: Gate, sampleRateHz: number): number =>
  (preS * 0.375 + (lengthS - fallS) + fallS * 0.375) * sampleRateHz;
