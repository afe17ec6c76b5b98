/** Where in a recording the sweeps are, and of which file: the uneven spacing tells. */
import { type Mask, maskAt } from './bands.js';
import { decimated } from './decimate.js';
import { powerOfTwo, productOf, type Spectrum, signalOf, spectrumOf } from './fft.js';
import { playedAt, SEQUENCES, type Sequence, SWEEP_S, type SweepName, sweep } from './sequence.js';

/** Band of the search, Hz: phones hear it, and rooms leave it alone. */
const SEARCH: Mask = [350, 500, 3500, 4800];
/** The search runs near this rate, Hz. */
const SEARCH_RATE_HZ = 11_000;
const SMOOTH_S = 0.004;
/** The floor is read from every so many samples: they are smooth. */
const FLOOR_STRIDE = 16;
/** Peaks looked at, how far over the floor they stand (energy), how far below the largest they may lie, dB. */
const MOST_PEAKS = 14;
const OVER_FLOOR = 20;
const BELOW_LARGEST_DB = 26;
/** Around a peak nothing else is a sweep, s: reflections behind it, harmonics before it. */
const BLOCKED_BEFORE_S = 0.15;
const BLOCKED_AFTER_S = 0.25;
/** Delay errors of common size, the drift of a clock and the first reflections stay within, s. */
const ON_TIME_S = 0.02;
/** Wrong entries and latencies of a loudspeaker stay within, s. */
const EARLIEST_S = -0.15;
const LATEST_S = 0.4;
const MISS = 0.45;
/** Three sweeps in their spacing are one file only; two are not. */
const ENOUGH_SWEEPS = 3;
/** Spacing of two sweeps that are to tell a file by themselves, s. */
const PAIR_S = 0.006;

export interface Located {
  readonly sequence: Sequence;
  /** Start of each sweep that was found, seconds of the recording. */
  readonly starts: ReadonlyMap<SweepName, number>;
  /** Start of the file, seconds of the recording. */
  readonly fileStart: number;
}

interface Peak {
  readonly at: number;
  readonly energy: number;
}

/** Undefined when the sweeps of neither file stand there. */
export function locate(samples: Float32Array, sampleRateHz: number): Located | undefined {
  const { peaks, floor } = peaksOf(samples, sampleRateHz);
  let best: (Located & { score: number }) | undefined;
  for (const sequence of Object.values(SEQUENCES)) {
    for (const peak of peaks) {
      for (const played of sequence.sweeps) {
        const found = matched(sequence, peak.at - played.atS, peaks, floor);
        if (best === undefined || found.score > best.score + 1e-9) best = found;
      }
    }
  }
  if (best === undefined || (best.starts.size < ENOUGH_SWEEPS && !onlyLeftSilent(best, peaks)))
    return undefined;
  return { ...best, starts: withLate(best, peaks) };
}

/** Right and middle alone, with hardly anything else in the recording: no other two sweeps are so far apart. */
function onlyLeftSilent({ sequence, starts }: Located, peaks: readonly Peak[]): boolean {
  const [right, middle] = [starts.get('right'), starts.get('middle')];
  if (right === undefined || middle === undefined || peaks.length > ENOUGH_SWEEPS) return false;
  const [first, second] = (['right', 'middle'] as const).map((name) => playedAt(sequence, name));
  return Math.abs(middle - right - ((second ?? 0) - (first ?? 0))) < PAIR_S;
}

function matched(
  sequence: Sequence,
  fileStart: number,
  peaks: readonly Peak[],
  floor: number,
): Located & { score: number } {
  const starts = new Map<SweepName, number>();
  let score = 0;
  for (const { name, atS } of sequence.sweeps) {
    const near = largest(peaks.filter(({ at }) => Math.abs(at - fileStart - atS) < ON_TIME_S));
    if (near) {
      starts.set(name, near.at);
      score += 1 + 0.05 * Math.log10(near.energy / floor);
    } else score -= MISS;
  }
  return { sequence, starts, fileStart, score };
}

/** Loudspeakers that play far too late or early: a peak of their own near where they should be. */
function withLate({ sequence, starts, fileStart }: Located, peaks: readonly Peak[]): Map<SweepName, number> {
  const all = new Map(starts);
  const taken = new Set(starts.values());
  for (const { name, atS } of sequence.sweeps) {
    if (all.has(name)) continue;
    const late = largest(
      peaks.filter(({ at }) => {
        const off = at - fileStart - atS;
        return !taken.has(at) && off > EARLIEST_S && off < LATEST_S;
      }),
    );
    if (late) all.set(name, late.at);
  }
  return all;
}

const largest = (peaks: readonly Peak[]): Peak | undefined =>
  peaks.reduce<Peak | undefined>(
    (best, peak) => (best && best.energy >= peak.energy ? best : peak),
    undefined,
  );

function peaksOf(
  samples: Float32Array,
  sampleRateHz: number,
): { readonly peaks: readonly Peak[]; readonly floor: number } {
  const factor = Math.max(1, Math.round(sampleRateHz / SEARCH_RATE_HZ));
  const slow = decimated(samples, factor);
  const rate = sampleRateHz / factor;
  const energy = smoothed(compressed(slow, rate), Math.max(3, Math.trunc(SMOOTH_S * rate)), slow.length);
  const floor = medianOf(energy.filter((_, i) => i % FLOOR_STRIDE === 0)) + 1e-30;
  const peaks: Peak[] = [];
  while (peaks.length < MOST_PEAKS) {
    let [top, height] = [0, 0];
    for (let i = 0; i < energy.length; i += 1) {
      const value = energy[i] ?? 0;
      if (value > height) [top, height] = [i, value];
    }
    const least = Math.max(OVER_FLOOR * floor, (peaks[0]?.energy ?? 0) * 10 ** (-BELOW_LARGEST_DB / 10));
    if (!(height >= least)) break;
    peaks.push({ at: top / rate, energy: height });
    energy.fill(
      0,
      Math.max(0, top - Math.trunc(BLOCKED_BEFORE_S * rate)),
      top + Math.trunc(BLOCKED_AFTER_S * rate),
    );
  }
  return { peaks, floor };
}

/** What the inverse of a sweep spreads before and behind it, s. */
const SPREAD_S = 0.2;

/** The recording divided by the sweep, piece by piece: each sweep becomes a pulse at its start. */
function compressed(slow: Float32Array, rate: number): Float64Array {
  const [length, spread] = [Math.ceil(SWEEP_S * rate), Math.ceil(SPREAD_S * rate)];
  const n = 2 * powerOfTwo(length + 2 * spread);
  const reference = spectrumOf(sweep(rate), n);
  const step = rate / n;
  const inBand: number[] = [];
  for (let k = Math.ceil(SEARCH[1] / step); k * step < SEARCH[2]; k += 16) inBand.push(powerAt(reference, k));
  const least = 1e-3 * medianOf(inBand);
  const inverse = { n, bins: new Float64Array(n + 2) };
  for (let k = Math.floor(SEARCH[0] / step); k <= Math.min(n / 2, SEARCH[3] / step); k += 1) {
    const gain = maskAt(SEARCH, k * step) / (powerAt(reference, k) + least);
    for (const i of [2 * k, 2 * k + 1]) inverse.bins[i] = gain * (reference.bins[i] ?? 0);
  }
  const out = new Float64Array(slow.length);
  const hop = n - length - 2 * spread;
  for (let start = 0; start < slow.length; start += hop) {
    const piece = new Float64Array(n);
    piece.set(slow.subarray(Math.max(0, start - spread), start - spread + n), Math.max(0, spread - start));
    const pulses = signalOf(productOf(spectrumOf(piece, n), inverse, true));
    out.set(pulses.subarray(spread, spread + Math.min(hop, slow.length - start)), start);
  }
  return out;
}

const powerAt = ({ bins }: Spectrum, k: number): number =>
  (bins[2 * k] ?? 0) ** 2 + (bins[2 * k + 1] ?? 0) ** 2;

/** Running mean of the squares over `width` samples. */
function smoothed(signal: Float64Array, width: number, count: number): Float64Array {
  const out = new Float64Array(count);
  const before = width >> 1;
  let sum = 0;
  for (let i = -before; i < count; i += 1) {
    sum += (signal[i + before] ?? 0) ** 2 - (signal[i + before - width] ?? 0) ** 2;
    if (i >= 0) out[i] = Math.max(0, sum) / width;
  }
  return out;
}

export function medianOf(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  return sorted.length === 0 ? 0 : (sorted[sorted.length >> 1] ?? 0);
}
