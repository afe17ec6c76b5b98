/** A recording at a lower rate, an integer part of its own. */

/** Half the taps of the low-pass, in samples of the lower rate. */
const HALF_LENGTH = 9;
/** Corner as a part of the lower rate: what lies above half of it would come back mirrored. */
const CORNER = 0.4;

/** Every `factor`-th sample after a windowed-sinc low-pass (textbook; Blackman window). */
export function decimated(samples: Float32Array, factor: number): Float32Array {
  if (factor === 1) return samples;
  const half = HALF_LENGTH * factor;
  const taps = Float64Array.from({ length: 2 * half + 1 }, (_, i) => {
    const x = i - half;
    const window = 0.42 + 0.5 * Math.cos((Math.PI * x) / half) + 0.08 * Math.cos((2 * Math.PI * x) / half);
    const turn = (2 * Math.PI * CORNER * x) / factor;
    return (x === 0 ? (2 * CORNER) / factor : Math.sin(turn) / (Math.PI * x)) * window;
  });
  const out = new Float32Array(Math.floor(samples.length / factor));
  for (let k = 0; k < out.length; k += 1) {
    const first = k * factor - half;
    const from = Math.max(0, -first);
    const to = Math.min(taps.length, samples.length - first);
    let sum = 0;
    for (let i = from; i < to; i += 1) sum += (taps[i] ?? 0) * (samples[first + i] ?? 0);
    out[k] = sum;
  }
  return out;
}
