/**
 * Equalizer filters: digital biquads as every processor has them, and their analog prototypes.
 * Formulas: W3C Audio EQ Cookbook (existence and peaking terms read; shelf terms from memory, proved by the
 * tests: half the gain in dB at the corner of a shelf, all of it at the center of a peak).
 */
import { finite, oneOf, positive, within } from './input.js';

export const FILTER_TYPES = ['peaking', 'lowShelf', 'highShelf'] as const;
export type FilterType = (typeof FILTER_TYPES)[number];
export type Filter = {
  readonly type: FilterType;
  readonly frequencyHz: number;
  readonly gainDb: number;
  readonly q: number;
};

/** Sample rate of most processors, Hz. Common practice, no source. */
export const SAMPLE_RATE_HZ = 48_000;
/** Bounds against slips; ours. */
const LARGEST_GAIN_DB = 60;
const LARGEST_Q = 1000;

type Coefficients = readonly [b0: number, b1: number, b2: number, a0: number, a1: number, a2: number];

function coefficients({ type, frequencyHz, gainDb, q }: Filter, sampleRateHz: number): Coefficients {
  const a = 10 ** (gainDb / 40);
  const w0 = (2 * Math.PI * frequencyHz) / sampleRateHz;
  const cos = Math.cos(w0);
  const alpha = Math.sin(w0) / (2 * q);
  if (type === 'peaking')
    return [1 + alpha * a, -2 * cos, 1 - alpha * a, 1 + alpha / a, -2 * cos, 1 - alpha / a];
  // The two shelves mirror each other: the sign of the cosine terms changes.
  const s = type === 'highShelf' ? 1 : -1;
  const root = 2 * Math.sqrt(a) * alpha;
  return [
    a * (a + 1 + s * (a - 1) * cos + root),
    -2 * s * a * (a - 1 + s * (a + 1) * cos),
    a * (a + 1 + s * (a - 1) * cos - root),
    a + 1 - s * (a - 1) * cos + root,
    2 * s * (a - 1 - s * (a + 1) * cos),
    a + 1 - s * (a - 1) * cos - root,
  ];
}

/** |c0 + c1 e^-jw + c2 e^-2jw|^2 by p = sin^2(w/2), which does not lose digits at low frequencies. */
function squaredMagnitude(c0: number, c1: number, c2: number, p: number): number {
  const sum = c0 + c1 + c2;
  return sum * sum - 4 * (c0 * c1 + 4 * c0 * c2 + c1 * c2) * p + 16 * c0 * c2 * p * p;
}

/** Magnitude response in dB, unchecked and quick: one function for many frequencies of one filter. */
export function filterResponse(
  filter: Filter,
  sampleRateHz = SAMPLE_RATE_HZ,
): (frequencyHz: number) => number {
  const [b0, b1, b2, a0, a1, a2] = coefficients(filter, sampleRateHz);
  return (frequencyHz) => {
    const p = Math.sin((Math.PI * frequencyHz) / sampleRateHz) ** 2;
    return 10 * Math.log10(squaredMagnitude(b0, b1, b2, p) / squaredMagnitude(a0, a1, a2, p));
  };
}

function checked(filter: Filter): Filter {
  oneOf('type', filter.type, FILTER_TYPES);
  positive('frequencyHz', filter.frequencyHz);
  within('gainDb', filter.gainDb, -LARGEST_GAIN_DB, LARGEST_GAIN_DB);
  within('q', positive('q', filter.q), 0, LARGEST_Q);
  return filter;
}

/**
 * Magnitude of a digital biquad in dB at each frequency.
 * Frequencies above 0 and below half the sample rate; gain within +-60 dB; q above 0.
 */
export function filter(
  input: Filter & { sampleRateHz?: number | undefined; frequenciesHz: readonly number[] },
): { magnitudeDb: number[] } {
  const sampleRateHz = positive('sampleRateHz', input.sampleRateHz ?? SAMPLE_RATE_HZ);
  const nyquistHz = sampleRateHz / 2;
  const { frequencyHz } = checked(input);
  if (frequencyHz >= nyquistHz) {
    throw new RangeError(
      `frequencyHz is ${frequencyHz}; accepted: below half the sample rate, ${nyquistHz} Hz`,
    );
  }
  const magnitude = filterResponse(input, sampleRateHz);
  return {
    magnitudeDb: input.frequenciesHz.map((hz) => magnitude(within('frequenciesHz', hz, 0, nyquistHz))),
  };
}

/** Analog prototype of the same filter, dB: for fits that shall not depend on a sample rate. */
export function analogFilterDb(input: Filter, frequencyHz: number): number {
  const { type, frequencyHz: cornerHz, gainDb, q } = checked(input);
  const a = 10 ** (gainDb / 40);
  const x = finite('frequencyHz', frequencyHz) / cornerHz;
  const square = (real: number, imaginary: number) => real * real + imaginary * imaginary;
  if (type === 'peaking') {
    return 10 * Math.log10(square(1 - x * x, (x * a) / q) / square(1 - x * x, x / (a * q)));
  }
  const turn = (Math.sqrt(a) * x) / q;
  // With y = x^2 for the high shelf, the low shelf is the mirror: 1/x in place of x.
  const high = square(1 - a * x * x, turn);
  const low = square(a - x * x, turn);
  return 10 * Math.log10(type === 'highShelf' ? (a * a * high) / low : (a * a * low) / high);
}
