/** Energy of a response in third octaves, with what noise adds taken off. */
import { decibels, type Gate, gated, gateSamples, thirdOctaves } from './bands.js';
import type { Voice } from './polarity.js';

/** What is heard of steady sound, room included: level, timbre of the whole. */
const WHOLE: Gate = { preS: 0.002, lengthS: 0.25, fallS: 0.05 };

/** Where noise is read: before the direct sound and after the room has died away, s; and how long. */
const NOISE_AT_S = [-0.13, 0.62] as const;
const NOISE_S = 0.09;
const NOISE_N = 16_384;
/** What is left when noise is taken off is never less than this part. */
const LEAST_LEFT = 0.02;
const LEAST_KNOWN = 1e-4;

export interface BandLevels {
  /** Level in each third octave, dB. */
  readonly db: readonly number[];
  /** Each over its noise, dB. */
  readonly snrDb: readonly number[];
}

/** Noise energy a sample in each third octave: the quieter of the two stretches. */
function noiseOf({ response, arrival }: Voice): Float64Array {
  const rate = response.sampleRateHz;
  const length = Math.trunc(NOISE_S * rate);
  let energyOfWindow = 0;
  const window = Float64Array.from({ length }, (_, i) => {
    const weight = Math.sin((Math.PI * i) / length) ** 2;
    energyOfWindow += weight * weight;
    return weight;
  });
  const [before, after] = NOISE_AT_S.map((offset) => {
    const start = Math.trunc((arrival.s + offset) * rate);
    const part = window.map((weight, i) => weight * (response.h[start + i] ?? 0));
    return thirdOctaves(part, rate, NOISE_N);
  });
  return Float64Array.from(
    before ?? [],
    (energy, i) => Math.min(energy, after?.[i] ?? energy) / energyOfWindow,
  );
}

export function bandLevels(voice: Voice, gate: Gate = WHOLE): BandLevels {
  const { response, arrival } = voice;
  const rate = response.sampleRateHz;
  const noise = noiseOf(voice);
  const energies = thirdOctaves(gated(response.h, rate, arrival.s, gate).samples, rate);
  const samples = gateSamples(gate, rate);
  const pairs = Array.from(energies, (energy, i) => ({ energy, noise: (noise[i] ?? 0) * samples }));
  return {
    db: pairs.map(({ energy, noise }) => decibels(Math.max(energy - noise, energy * LEAST_LEFT))),
    snrDb: pairs.map(
      ({ energy, noise }) =>
        decibels(Math.max(energy - noise, energy * LEAST_KNOWN)) - decibels(noise + 1e-30),
    ),
  };
}
