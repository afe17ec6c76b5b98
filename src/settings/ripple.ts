/**
 * The comb of shared content at a seat for many settings: the same curve as `sharedRippleDb` of the acoustics. The
 * smoothed cosine of each pair of rays depends on their difference in time alone and is kept, so that a setting costs
 * three sums.
 */
import { gridStepDecades, logGrid, smoothPower } from '../acoustics/bands.js';

const FROM_HZ = 100;
const TO_HZ = 16_000;
const JUDGED_FROM_HZ = 200;
const JUDGED_TO_HZ = 8000;
/** Points of the curve: as many as the rules take for their combs at seats. */
export const POINTS = 400;
/** Differences in time are rounded to this, ms: far below what any menu can set. */
const ROUND_MS = 0.0001;

const frequencies = logGrid(FROM_HZ, TO_HZ, POINTS);
const step = gridStepDecades(frequencies);
const first = frequencies.findIndex((hz) => hz >= JUDGED_FROM_HZ);
const last = frequencies.findLastIndex((hz) => hz <= JUDGED_TO_HZ);

const kept = new Map<number, Float64Array>();
const MOST_KEPT = 10_000;

function cosines(differenceMs: number): Float64Array {
  const key = Math.round(Math.abs(differenceMs) / ROUND_MS);
  const known = kept.get(key);
  if (known) return known;
  if (kept.size > MOST_KEPT) kept.clear();
  const turn = (2 * Math.PI * key * ROUND_MS) / 1000;
  const curve = smoothPower(
    frequencies.map((hz) => Math.cos(turn * hz)),
    step,
  ).subarray(first, last + 1);
  kept.set(key, curve);
  return curve;
}

interface Ray {
  readonly amplitude: number;
  readonly timeMs: number;
}

/** Peak to dip of the third-octave-smoothed sum of three rays, 200 Hz to 8 kHz, dB. */
export function rippleDb(left: Ray, center: Ray, right: Ray): number {
  const squares = left.amplitude ** 2 + center.amplitude ** 2 + right.amplitude ** 2;
  if (squares === 0) return 0;
  const pairs = [
    { weight: 2 * left.amplitude * center.amplitude, curve: cosines(left.timeMs - center.timeMs) },
    { weight: 2 * right.amplitude * center.amplitude, curve: cosines(right.timeMs - center.timeMs) },
    { weight: 2 * left.amplitude * right.amplitude, curve: cosines(left.timeMs - right.timeMs) },
  ].filter(({ weight }) => weight !== 0);
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i <= last - first; i += 1) {
    let power = squares;
    for (const { weight, curve } of pairs) power += weight * (curve[i] ?? 0);
    least = Math.min(least, power);
    most = Math.max(most, power);
  }
  return 10 * Math.log10(most / Math.max(least, most * 1e-6));
}
