/**
 * Third-octave bands and smoothing on logarithmic grids.
 * Exact base-10 centers 1000 * 10^(n/10) and edges 10^(+-1/20) from them, as in IEC 61260-1
 * (read as copied in public code).
 */
import { positive } from './input.js';

/** Reference frequency of the base-10 band scale, Hz (IEC 61260-1, read as a copy in public code). */
const BAND_REFERENCE_HZ = 1000;
/** Width of a third-octave band in decades. */
export const THIRD_OCTAVE_DECADES = 0.1;
/** Upper edge of a third-octave band over its center; the lower edge is its inverse. */
export const THIRD_OCTAVE_EDGE = 10 ** (THIRD_OCTAVE_DECADES / 2);

/** Exact center of third-octave band n, Hz; n = 0 is 1 kHz, n = -8 is 160 Hz (158.49), n = 9 is 8 kHz (7943.3). */
export function thirdOctaveCenterHz(n: number): number {
  return BAND_REFERENCE_HZ * 10 ** (n * THIRD_OCTAVE_DECADES);
}

/** Lower and upper edge of the third-octave band around an exact center, Hz. */
export function thirdOctaveEdgesHz(centerHz: number): { lowerHz: number; upperHz: number } {
  positive('centerHz', centerHz);
  return { lowerHz: centerHz / THIRD_OCTAVE_EDGE, upperHz: centerHz * THIRD_OCTAVE_EDGE };
}

/** Exact third-octave centers with first and last band number included. */
export function thirdOctaveCentersHz(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => thirdOctaveCenterHz(first + i));
}

/** `count` frequencies from `fromHz` to `toHz` with equal ratios, both ends included. count >= 2. */
export function logGrid(fromHz: number, toHz: number, count: number): Float64Array {
  positive('fromHz', fromHz);
  positive('toHz', toHz);
  const grid = new Float64Array(count);
  const step = Math.log(toHz / fromHz) / (count - 1);
  for (let i = 0; i < count; i += 1) grid[i] = fromHz * Math.exp(i * step);
  return grid;
}

/** Running trapezoid integral of `values` per grid step: out[i] = integral from point 0 to point i. */
export function cumulative(values: ArrayLike<number>): Float64Array {
  const out = new Float64Array(values.length);
  let sum = 0;
  for (let i = 1; i < values.length; i += 1) {
    sum += ((values[i - 1] ?? 0) + (values[i] ?? 0)) / 2;
    out[i] = sum;
  }
  return out;
}

/** Value of a running integral at a fractional index, linear between points. */
function integralAt(running: Float64Array, index: number): number {
  const low = Math.floor(index);
  const part = index - low;
  const here = running[low] ?? 0;
  return part === 0 ? here : here + part * ((running[low + 1] ?? here) - here);
}

/** Mean between two fractional indices (clipped to the grid) from a running integral. */
export function meanBetween(running: Float64Array, fromIndex: number, toIndex: number): number {
  const from = Math.max(0, fromIndex);
  const to = Math.min(running.length - 1, toIndex);
  return (integralAt(running, to) - integralAt(running, from)) / (to - from);
}

/**
 * Sliding rectangular power mean on a log grid, a third octave wide unless `widthDecades` says otherwise.
 * Windows are cut off at the ends of the grid. `power` in, smoothed power out.
 */
export function smoothPower(
  power: ArrayLike<number>,
  gridStepDecades: number,
  widthDecades = THIRD_OCTAVE_DECADES,
): Float64Array {
  const half = widthDecades / gridStepDecades / 2;
  const running = cumulative(power);
  const out = new Float64Array(power.length);
  for (let i = 0; i < power.length; i += 1) out[i] = meanBetween(running, i - half, i + half);
  return out;
}

/** Step of a log grid in decades. */
export function gridStepDecades(grid: ArrayLike<number>): number {
  const last = grid.length - 1;
  return Math.log10((grid[last] ?? 1) / (grid[0] ?? 1)) / last;
}
