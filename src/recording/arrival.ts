/** When the direct sound of a response arrives, and the strongest reflection behind it. */
import type { Mask } from './bands.js';
import { envelopeOf } from './fft.js';
import { bandOf, type Near, nearOf, PRE_S, type Response, rootMeanSquare } from './response.js';

/** The treble: its flank is steep, and rooms leave it alone. Hz. */
const TREBLE: Mask = [2000, 3000, 9000, 12_500];
/** For recorders of low rate, and to hold against the treble. Hz. */
export const MIDDLE: Mask = [700, 1000, 5500, 6800];
/** Recorders below hold no treble, Hz. */
export const TREBLE_RATE_HZ = 32_000;
const arrivalBandOf = (sampleRateHz: number): Mask => (sampleRateHz < TREBLE_RATE_HZ ? MIDDLE : TREBLE);

/** Where the largest top is looked for around the expected place, s. */
const SEARCH_BEFORE_S = 0.04;
const SEARCH_AFTER_S = 0.06;
/** The direct sound lies at most so long before the largest top, s, and so far below it, dB. */
const DIRECT_BEFORE_S = 0.025;
const DIRECT_BELOW_DB = 13;
/** Times the noise that a top must reach. */
const OVER_NOISE = 5;
/** A small bump on the flank of the pulse is no arrival: width of the pulse, s, and how much higher its top is. */
const PULSE_S = 0.00022;
const BUMP = 1.6;
/** Where noise is read before the largest top, s. */
const NOISE_FROM_S = 0.12;
const NOISE_TO_S = 0.03;
/** Reflections count from here to here after the direct top, s. */
const REFLECTION_FROM_S = 0.0007;
const REFLECTION_TO_S = 0.03;

export interface Arrival {
  /** Half-height of the rising flank, seconds in the response: what comes later cannot move it. */
  readonly s: number;
  /** Top of the direct sound, seconds in the response. */
  readonly topS: number;
  /** Largest top over the noise before it, dB. */
  readonly snrDb: number;
  /** Direct top against the largest one, dB: below -8 the direct sound is all but lost. */
  readonly directDb: number;
  readonly envelope: Float64Array;
  /** Time of the first sample of the envelope in the response, samples. */
  readonly first: number;
  readonly near: Near;
}

export function arrivalOf(response: Response, band = arrivalBandOf(response.sampleRateHz)): Arrival {
  return arrivalIn(nearOf(response), band);
}

export function arrivalIn(near: Near, band: Mask): Arrival {
  const { sampleRateHz: rate, first } = near;
  const envelope = envelopeOf(bandOf(near, band));
  const at = (i: number): number => envelope[i] ?? 0;
  const expected = Math.trunc(PRE_S * rate) - first;
  let largest = expected - Math.trunc(SEARCH_BEFORE_S * rate);
  for (let i = largest; i < expected + Math.trunc(SEARCH_AFTER_S * rate); i += 1) {
    if (at(i) > at(largest)) largest = i;
  }
  const noise = rootMeanSquare(
    envelope.subarray(
      Math.max(0, largest - Math.trunc(NOISE_FROM_S * rate)),
      Math.max(1, largest - Math.trunc(NOISE_TO_S * rate)),
    ),
  );
  const threshold = Math.max(at(largest) * 10 ** (-DIRECT_BELOW_DB / 20), OVER_NOISE * noise);
  const earliest = Math.max(1, largest - Math.trunc(DIRECT_BEFORE_S * rate));
  let top = earliest;
  while (top < largest && at(top) < threshold) top += 1;
  while (top < largest && at(top + 1) > at(top)) top += 1;
  let higher = top;
  for (let i = top; i < top + Math.trunc(PULSE_S * rate); i += 1) if (at(i) > at(higher)) higher = i;
  if (at(higher) > BUMP * at(top)) top = higher;
  const half = at(top) / 2;
  let flank = top;
  while (flank > earliest && at(flank) > half) flank -= 1;
  const rise = at(flank + 1) - at(flank);
  const crossing = flank + (rise > 0 ? (half - at(flank)) / rise : 0);
  return {
    s: (first + crossing) / rate,
    topS: (first + top + parabola(at(top - 1), at(top), at(top + 1))) / rate,
    snrDb: 20 * Math.log10(at(largest) / (noise + 1e-20) + 1e-20),
    directDb: 20 * Math.log10(at(top) / (at(largest) + 1e-30) + 1e-30),
    envelope,
    first,
    near,
  };
}

/** Where between samples the top of three values lies, -0.5 to 0.5. */
export function parabola(before: number, top: number, after: number): number {
  const bend = before - 2 * top + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
}

/** Numbers of the local tops of an envelope between two samples. */
export function topsBetween(envelope: Float64Array, from: number, to: number): number[] {
  const tops: number[] = [];
  for (let i = from + 1; i < Math.min(to, envelope.length) - 1; i += 1) {
    const value = envelope[i] ?? 0;
    if (value > (envelope[i - 1] ?? 0) && value >= (envelope[i + 1] ?? 0)) tops.push(i);
  }
  return tops;
}

/** The envelope near the direct top: a sample to each side. */
export function directHeight({ envelope, first, topS, near }: Arrival): { at: number; height: number } {
  const at = Math.round(topS * near.sampleRateHz) - first;
  return { at, height: Math.max(envelope[at - 1] ?? 0, envelope[at] ?? 0, envelope[at + 1] ?? 0) };
}

/** The strongest reflection 0.7 to 30 ms behind the direct sound: ms behind it, dB against it. */
export function reflectionOf(arrival: Arrival): { delayMs: number; levelDb: number } | undefined {
  const rate = arrival.near.sampleRateHz;
  const { at, height } = directHeight(arrival);
  const tops = topsBetween(
    arrival.envelope,
    at + Math.trunc(REFLECTION_FROM_S * rate),
    at + Math.trunc(REFLECTION_TO_S * rate),
  );
  const strongest = tops.reduce<number | undefined>(
    (best, top) =>
      best !== undefined && (arrival.envelope[best] ?? 0) >= (arrival.envelope[top] ?? 0) ? best : top,
    undefined,
  );
  if (strongest === undefined || height === 0) return undefined;
  return {
    delayMs: ((arrival.first + strongest) / rate - arrival.topS) * 1000,
    levelDb: 20 * Math.log10((arrival.envelope[strongest] ?? 0) / height),
  };
}
