/**
 * Center with left, and center against left, must follow from the two alone. When they do not, the gain changed, the
 * channels are not played each for itself, or the playback lost time between the sweeps: the sums tell which.
 */
import { decibels } from './bands.js';
import { productOf, type Spectrum, signalOf } from './fft.js';
import { type Clock, stretchOf } from './on-clock.js';
import type { Response } from './response.js';

const BEFORE_S = 0.004;
const LENGTH_S = 0.075;
const FROM_HZ = 150;
const TO_HZ = 2000;
/** Lost or doubled pieces of sound are looked for within, s; smaller ones than the second do no harm. */
const MOST_SLIP_S = 0.008;
const LEAST_SLIP_S = 0.00006;
/** The slips of the sum and of the difference agree within, s. */
const SAME_SLIP_S = 0.00008;
/** A slip explains when it leaves no more than this part of the error. */
const EXPLAINS = 0.4;

export interface SumCheck {
  /** Error of sum and difference against their energy, dB: -26 and less when all is well. */
  readonly errorDb: number;
  /** The same after the gains of left and center were set free, dB. */
  readonly withGainsDb: number;
  /** Largest shift in time that explains the error, ms; 0 when none does. */
  readonly slipMs: number;
}

interface Four {
  readonly left: Response;
  readonly center: Response;
  readonly sum: Response;
  readonly difference: Response;
}

/** @param arrivalsS of left and center, seconds after their sweeps were played */
export function sumCheck(clock: Clock, four: Four, arrivalsS: readonly [number, number]): SumCheck {
  const rate = four.left.sampleRateHz;
  const apart = Math.abs(arrivalsS[0] - arrivalsS[1]);
  const stretch = { fromS: Math.min(...arrivalsS) - BEFORE_S, lengthS: LENGTH_S + apart };
  const part = (name: keyof Four): Spectrum => inBand(stretchOf(clock, name, four[name], stretch), rate);
  const [left, center, sum, difference] = [part('left'), part('center'), part('sum'), part('difference')];
  const both = energyOf(sum) + energyOf(difference);
  const error = (leftGain: number, centerGain: number): number =>
    energyOf(mix([sum, 1], [left, -leftGain], [center, -centerGain])) +
    energyOf(mix([difference, 1], [left, -leftGain], [center, centerGain]));
  const gain = (of: Spectrum, sign: number): number =>
    product(of, mix([sum, 0.5], [difference, 0.5 * sign])) / Math.max(energyOf(of), 1e-30);
  return {
    errorDb: decibels(error(1, 1) / Math.max(both, 1e-30)),
    withGainsDb: decibels(error(gain(left, 1), gain(center, -1)) / Math.max(both, 1e-30)),
    slipMs: slipMs(left, center, sum, difference, rate),
  };
}

/** How far the sum, the difference and the center must be moved to fit best. */
function slipMs(left: Spectrum, center: Spectrum, sum: Spectrum, difference: Spectrum, rate: number): number {
  const slips = [
    { both: sum, sign: 1 },
    { both: difference, sign: -1 },
  ].map(({ both, sign }) => bestFit(left, center, both, sign, Math.trunc(MOST_SLIP_S * rate)));
  const [first, second] = slips;
  if (first === undefined || second === undefined) return 0;
  const explained = slips.every(({ left: part }) => part < EXPLAINS);
  const same = Math.abs(first.centerLag - second.centerLag) <= SAME_SLIP_S * rate;
  const largest = Math.max(
    ...slips.flatMap(({ ownLag, centerLag }) => [Math.abs(ownLag), Math.abs(centerLag)]),
  );
  return explained && same && largest > LEAST_SLIP_S * rate ? (1000 * largest) / rate : 0;
}

/** Shifts in samples of the pair and of the center in it with the least error, and the part of the error that stays. */
function bestFit(
  left: Spectrum,
  center: Spectrum,
  both: Spectrum,
  sign: number,
  reach: number,
): { ownLag: number; centerLag: number; left: number } {
  const withLeft = correlation(both, left);
  const withCenter = correlation(both, center);
  const leftCenter = correlation(left, center);
  const n = withLeft.length;
  const lags = Array.from({ length: 2 * reach + 1 }, (_, i) => i - reach);
  const row = (of: Float64Array, factor: number, sign: 1 | -1): Float64Array =>
    Float64Array.from(lags, (lag) => factor * (of[(sign * lag + n) % n] ?? 0));
  const energies = energyOf(left) + energyOf(center) + energyOf(both);
  // |B(t) - L - s C(t + d)|^2 by the three correlations.
  const [own, between] = [row(withLeft, -2, 1), row(leftCenter, 2 * sign, -1)];
  const across = Float64Array.from(
    { length: 4 * reach + 1 },
    (_, i) => -2 * sign * (withCenter[(i - 2 * reach + n) % n] ?? 0),
  );
  const error = (i: number, k: number): number =>
    energies + (own[i] as number) + (across[i - k + 2 * reach] as number) + (between[k] as number);
  let best = { i: reach, k: reach, error: error(reach, reach) };
  for (let i = 0; i < lags.length; i += 1) {
    for (let k = 0; k < lags.length; k += 1) {
      const here = error(i, k);
      if (here < best.error) best = { i, k, error: here };
    }
  }
  return {
    ownLag: best.i - reach,
    centerLag: best.k - reach,
    left: Math.max(0, best.error) / Math.max(error(reach, reach), 1e-30),
  };
}

/** Both sides of the spectrum count: twice the real part of the products. */
const product = ({ bins: a }: Spectrum, { bins: b }: Spectrum): number => {
  let total = 0;
  for (let i = 0; i < a.length; i += 1) total += (a[i] ?? 0) * (b[i] ?? 0);
  return total;
};
const energyOf = (spectrum: Spectrum): number => product(spectrum, spectrum);

function mix(...parts: readonly (readonly [Spectrum, number])[]): Spectrum {
  const n = parts[0]?.[0].n ?? 0;
  const bins = new Float64Array(n + 2);
  for (const [spectrum, gain] of parts) {
    for (let i = 0; i < bins.length; i += 1) bins[i] = (bins[i] ?? 0) + gain * (spectrum.bins[i] ?? 0);
  }
  return { n, bins };
}

function inBand({ n, bins }: Spectrum, rate: number): Spectrum {
  const out = new Float64Array(bins.length);
  for (let k = Math.ceil((FROM_HZ * n) / rate); (k * rate) / n < TO_HZ; k += 1) {
    out[2 * k] = bins[2 * k] ?? 0;
    out[2 * k + 1] = bins[2 * k + 1] ?? 0;
  }
  return { n, bins: out };
}

/** Correlation at each lag in the scale of `product`: a later than b by the lag of its top. */
const correlation = (a: Spectrum, b: Spectrum): Float64Array =>
  signalOf(productOf(a, b, true)).map((value) => (value * a.n) / 2);
