/** The recorder's clock against the player's, by two sweeps that must be alike. */
import type { Arrival } from './arrival.js';
import { parabola } from './arrival.js';
import type { Mask } from './bands.js';
import { productOf, type Spectrum, signalOf, spectrumOf } from './fft.js';
import { bandOf } from './response.js';

const BAND: Mask = [800, 1200, 5000, 7000];
/** Of both responses, from shortly before the direct sound, s. */
const LENGTH_S = 0.06;
const BEFORE_S = 0.003;
/** The two arrivals agree within, s. */
const MOST_LAG_S = 0.0012;
const N = 8192;
const FINER = 8;

/**
 * How much later `second` is than `first`, seconds, each counted in its own response, and how alike they are
 * (1: the same but for a factor).
 */
export function lagBetween(
  first: Arrival,
  second: Arrival,
): { readonly lagS: number; readonly alike: number } {
  const rate = first.near.sampleRateHz;
  const cut = (arrival: Arrival): { from: number; part: Float64Array } => {
    const from = Math.trunc(arrival.s * rate) - Math.trunc(BEFORE_S * rate);
    const start = from - arrival.first;
    const band = signalOf(bandOf(arrival.near, BAND));
    return { from, part: band.subarray(start, start + Math.trunc(LENGTH_S * rate)) };
  };
  const [a, b] = [cut(first), cut(second)];
  const fine = signalOf(stretched(productOf(spectrumOf(a.part, N), spectrumOf(b.part, N), true)));
  const reach = Math.trunc(MOST_LAG_S * rate * FINER);
  const at = (lag: number): number => fine[(lag + fine.length) % fine.length] ?? 0;
  let best = -reach + 1;
  for (let lag = best; lag < reach; lag += 1) if (at(lag) > at(best)) best = lag;
  const shift = (best + parabola(at(best - 1), at(best), at(best + 1))) / (rate * FINER);
  const norm = Math.sqrt(sumOfSquares(a.part) * sumOfSquares(b.part));
  return {
    lagS: (b.from - a.from) / rate - shift,
    alike: norm === 0 ? 0 : (at(best) * FINER) / norm,
  };
}

const sumOfSquares = (values: Float64Array): number => values.reduce((sum, value) => sum + value * value, 0);

/** The same signal at a finer grid. */
function stretched({ n, bins }: Spectrum): Spectrum {
  const finer = new Float64Array(n * FINER + 2);
  finer.set(bins);
  return { n: n * FINER, bins: finer };
}
