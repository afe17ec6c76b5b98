/** Early against late energy: C50 and D50 after ISO 3382-1 (definitions read at second hand). */
import { decibels, type Mask, masked } from './bands.js';
import { powerOfTwo, signalOf, spectrumOf } from './fft.js';
import type { Voice } from './polarity.js';

const OCTAVES_HZ = [500, 1000, 2000, 4000];
const octaveMask = (hz: number): Mask => [hz / 1.55, hz / 1.29, hz * 1.29, hz * 1.55];
const EARLY_S = 0.05;
const BEFORE_S = 0.005;
const END_S = 0.42;
const SPARE_S = 0.05;
const NOISE_AT_S = [-0.13, 0.62] as const;
const NOISE_S = 0.1;
/** Late energy is never taken for less than this part of the early one. */
const LEAST_LATE = 1e-4;

interface Clarity {
  /** 10 lg of the energy within 50 ms over that behind, dB. */
  readonly c50Db: number;
  /** Energy within 50 ms over all of it, 0 to 1. */
  readonly d50: number;
}

/** Means over the octaves 500 Hz to 4 kHz; time zero is the direct sound. */
export function clarityOf({ response: { h, sampleRateHz: rate }, arrival }: Voice): Clarity {
  const start = Math.trunc((arrival.s - BEFORE_S) * rate);
  const cut = h.subarray(start, Math.trunc((arrival.s + END_S) * rate));
  const early = Math.round((arrival.s + EARLY_S) * rate) - start;
  const n = powerOfTwo(cut.length + SPARE_S * rate);
  const spectrum = spectrumOf(cut, n);
  const stretches = NOISE_AT_S.map((offset) => {
    const from = Math.trunc((arrival.s + offset) * rate);
    const length = Math.trunc(NOISE_S * rate);
    return { length, spectrum: spectrumOf(h.subarray(from, from + length), powerOfTwo(length)) };
  });
  const octaves = OCTAVES_HZ.map((hz) => {
    const band = signalOf(masked(spectrum, rate, octaveMask(hz)));
    const noise = Math.min(
      ...stretches.map(
        ({ length, spectrum }) =>
          energyOf(signalOf(masked(spectrum, rate, octaveMask(hz))), 0, spectrum.n) / length,
      ),
    );
    const within = Math.max(energyOf(band, 0, early) - noise * early, 1e-30);
    const behind = Math.max(
      energyOf(band, early, cut.length) - noise * (cut.length - early),
      within * LEAST_LATE,
    );
    return { c50Db: decibels(within / behind), d50: within / (within + behind) };
  });
  const mean = (of: (octave: Clarity) => number): number =>
    octaves.reduce((sum, octave) => sum + of(octave), 0) / octaves.length;
  return { c50Db: mean(({ c50Db }) => c50Db), d50: mean(({ d50 }) => d50) };
}

function energyOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i += 1) sum += (values[i] ?? 0) ** 2;
  return sum;
}
