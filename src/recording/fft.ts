/** Fourier transforms of real signals, in double precision. The one door to the transform library. */
import FFT from 'fft.js';

/** Of a real signal of `n` samples (a power of two): bins 0 to n/2, real and imaginary part in turn. */
export interface Spectrum {
  readonly n: number;
  readonly bins: Float64Array;
}

interface Plan {
  readonly half: FFT;
  /** cos and sin of 2 pi k / n, for k up to n / 2. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

const plans = new Map<number, Plan>();

function planOf(n: number): Plan {
  const known = plans.get(n);
  if (known) return known;
  const [cos, sin] = [new Float64Array(n / 2 + 1), new Float64Array(n / 2 + 1)];
  for (let k = 0; k <= n / 2; k += 1) {
    cos[k] = Math.cos((2 * Math.PI * k) / n);
    sin[k] = Math.sin((2 * Math.PI * k) / n);
  }
  const plan = { half: new FFT(n / 2), cos, sin };
  plans.set(n, plan);
  return plan;
}

/** Smallest power of two that holds `count` samples, at least 16. */
export const powerOfTwo = (count: number): number =>
  2 ** Math.max(4, Math.ceil(Math.log2(Math.max(1, count))));

/** @param n a power of two, at least 4; a longer signal is cut, a shorter one padded with zeros */
export function spectrumOf(signal: ArrayLike<number>, n: number): Spectrum {
  const { half, cos, sin } = planOf(n);
  // A real signal of n samples read as n / 2 complex ones, taken apart again below.
  const packed = new Float64Array(n);
  for (let i = Math.min(n, signal.length) - 1; i >= 0; i -= 1) packed[i] = signal[i] as number;
  const mixed = new Float64Array(n);
  half.transform(mixed, packed);
  const bins = new Float64Array(n + 2);
  const [re, im] = [mixed[0] as number, mixed[1] as number];
  bins[0] = re + im;
  bins[n] = re - im;
  for (let a = 2; a < n; a += 2) {
    const b = n - a;
    const [ar, ai, br, bi] = [mixed[a], mixed[a + 1], mixed[b], mixed[b + 1]] as Four;
    const [oddRe, oddIm] = [(ai + bi) / 2, (br - ar) / 2];
    const [c, s] = [cos[a / 2] as number, sin[a / 2] as number];
    bins[a] = (ar + br) / 2 + c * oddRe + s * oddIm;
    bins[a + 1] = (ai - bi) / 2 + c * oddIm - s * oddRe;
  }
  return { n, bins };
}

type Four = [number, number, number, number];

/** The real signal of a spectrum, `n` samples. */
export function signalOf({ n, bins }: Spectrum): Float64Array {
  const { half, cos, sin } = planOf(n);
  const mixed = new Float64Array(n);
  for (let a = 0; a < n; a += 2) {
    const b = n - a;
    const [ar, ai, br, bi] = [bins[a], bins[a + 1], bins[b], bins[b + 1]] as Four;
    const [diffRe, diffIm] = [(ar - br) / 2, (ai + bi) / 2];
    const [c, s] = [cos[a / 2] as number, sin[a / 2] as number];
    mixed[a] = (ar + br) / 2 - (diffRe * s + diffIm * c);
    mixed[a + 1] = (ai - bi) / 2 + diffRe * c - diffIm * s;
  }
  const out = new Float64Array(n);
  half.inverseTransform(out, mixed);
  return out;
}

/** The product of two spectra: what a filter makes of a signal or, with the second conjugated, their correlation. */
export function productOf({ n, bins: a }: Spectrum, { bins: b }: Spectrum, conjugated = false): Spectrum {
  const bins = new Float64Array(n + 2);
  const sign = conjugated ? -1 : 1;
  for (let k = 0; k <= n; k += 2) {
    const [ar, ai, br, bi] = [a[k], a[k + 1], b[k], b[k + 1]] as Four;
    bins[k] = ar * br - sign * ai * bi;
    bins[k + 1] = ai * br + sign * ar * bi;
  }
  return { n, bins };
}

/** Envelope of a signal: magnitude of its analytic signal. */
export function envelopeOf({ n, bins }: Spectrum): Float64Array {
  const full = planOf(2 * n).half;
  const oneSided = new Float64Array(2 * n);
  for (let i = 2; i < n; i += 1) oneSided[i] = 2 * (bins[i] ?? 0);
  const analytic = new Float64Array(2 * n);
  full.inverseTransform(analytic, oneSided);
  const out = new Float64Array(n);
  for (let i = 0; i < n; i += 1) out[i] = Math.hypot(analytic[2 * i] ?? 0, analytic[2 * i + 1] ?? 0);
  return out;
}
