/**
 * Checks of the measurement by recording: closed forms (own algebra; sweep after the published exponential sweep,
 * third-octave edges after IEC 61260-1, clarity after ISO 3382-1, all from memory or read at second hand) and values that
 * an independent numerical prototype computed. Each row says which.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { arrivalOf } from '../../src/recording/arrival.js';
import {
  BAND_EDGES,
  BANDS_HZ,
  decibels,
  energyBetween,
  maskAt,
  thirdOctaves,
} from '../../src/recording/bands.js';
import { distortionOf } from '../../src/recording/distortion.js';
import { type Spectrum, signalOf, spectrumOf } from '../../src/recording/fft.js';
import { playedChannels } from '../../src/recording/play-file.js';
import { polarityScore, type Voice } from '../../src/recording/polarity.js';
import { PRE_S, responseOf } from '../../src/recording/response.js';
import {
  fade,
  harmonicLeadS,
  PEAK,
  playedAt,
  SEQUENCES,
  SWEEP_FROM_HZ,
  SWEEP_GROWTH_S,
  SWEEP_S,
  sweep,
} from '../../src/recording/sequence.js';

interface Check {
  readonly id: string;
  readonly given: Readonly<Record<string, number | number[]>>;
  readonly expect: number | number[];
  readonly tol: number;
}

const CHECKS: readonly Check[] = JSON.parse(
  readFileSync(new URL('./data/recording-checks.json', import.meta.url), 'utf8'),
);
const RATE = 48_000;
const clean = sweep(RATE);
const START_S = 1;

/** A recording of one sweep through taps of delay (s) and amplitude. */
function heard(taps: readonly (readonly [number, number])[], sound: Float64Array = clean): Voice {
  const n = 1 << 19;
  const played = spectrumOf(sound, n);
  const bins = new Float64Array(n + 2);
  for (let k = 0; k <= n / 2; k += 1) {
    for (const [delayS, amplitude] of taps) {
      const turn = (-2 * Math.PI * k * RATE * (START_S + delayS)) / n;
      const [c, s] = [amplitude * Math.cos(turn), amplitude * Math.sin(turn)];
      const [re, im] = [played.bins[2 * k] ?? 0, played.bins[2 * k + 1] ?? 0];
      bins[2 * k] = (bins[2 * k] ?? 0) + re * c - im * s;
      bins[2 * k + 1] = (bins[2 * k + 1] ?? 0) + re * s + im * c;
    }
  }
  const samples = Float32Array.from(signalOf({ n, bins }).subarray(0, 6 * RATE));
  const response = responseOf(samples, RATE, START_S, 1, new Map());
  return { response, arrival: arrivalOf(response) };
}

const one = heard([[0, 1]]);
const peakOf = (h: Float64Array): number =>
  h.reduce((best, value, i) => (Math.abs(value) > Math.abs(h[best] ?? 0) ? i : best), 0);
const top = peakOf(one.response.h);
const TENTH_DECADE = 10 ** 0.1;
/** Energy of a one-sided spectrum that is `of(hz)`, in third octave `i` of 1 Hz wide bins. */
function bandDb(i: number, of: (hz: number) => number): number {
  const n = 1 << 16;
  const bins = new Float64Array(n + 2);
  for (let k = 1; k <= n / 2; k += 1) bins[2 * k] = Math.sqrt(of((k * RATE) / n));
  const spectrum: Spectrum = { n, bins };
  const { lowerHz, upperHz } = BAND_EDGES[i] ?? { lowerHz: 0, upperHz: 0 };
  return decibels(energyBetween(spectrum, RATE, lowerHz, upperHz));
}
/** C50 and D50 of an exponential decay. */
const early = (rt60: number): number => 1 - Math.exp((-6 * Math.LN10 * 0.05) / rt60);
const distortion = distortionOf(heard([[0, 1]], sweep(RATE, 1, [1, 0.03, 0.01])));
const number = (value: number | number[] | undefined): number =>
  typeof value === 'number' ? value : Number.NaN;

function computed({ id, given }: Check): number | number[] {
  if (/^sweep-(48k|44k|scaled)/.test(id)) {
    const rate = id === 'sweep-44k-44100' ? 44_100 : RATE;
    return sweep(rate, number(given.scale ?? 1))[number(given.index)] ?? Number.NaN;
  }
  if (/^c50-exp/.test(id))
    return 10 * Math.log10(early(number(given.rt60)) / (1 - early(number(given.rt60))));
  const make: Readonly<Record<string, () => number | number[]>> = {
    'sweep-length': () => SWEEP_S,
    'sweep-cycles': () => SWEEP_FROM_HZ * SWEEP_GROWTH_S,
    'sweep-count-48k': () => clean.length,
    'sweep-rms': () => Math.sqrt(clean.reduce((sum, value) => sum + value * value, 0) / clean.length),
    'fade-half': () => fade(0.05),
    'peak-gain': () => PEAK,
    'harmonic-lag-2': () => harmonicLeadS(2),
    'harmonic-lag-3': () => harmonicLeadS(3),
    'inverse-peak-index': () => top,
    'inverse-peak-value': () => one.response.h[top] ?? 0,
    'inverse-floor': () => {
      const far = one.response.h.filter((_, i) => Math.abs(i - top) > 0.02 * RATE);
      return 20 * Math.log10(Math.abs(far[peakOf(far)] ?? 0) / (one.response.h[top] ?? 1));
    },
    'two-tap-delay': () => {
      const first = 100.25 / RATE;
      const two = heard([
        [first, 1],
        [first + 0.003, 2],
      ]);
      return 1000 * (two.arrival.s - one.arrival.s);
    },
    'polarity-inverted': () => polarityScore(one, heard([[0, -1]])),
    'd50-exp-0.5': () => early(0.5),
    'rt60-room': () => {
      const [x = 0, y = 0, z = 0] = given.dims as number[];
      return (0.161 * x * y * z) / (-2 * (x * y + x * z + y * z) * Math.log(1 - number(given.alpha)));
    },
    'band-edges-1k': () => {
      const { lowerHz = 0, upperHz = 0 } = BAND_EDGES[7] ?? {};
      return [lowerHz, upperHz];
    },
    'white-step': () => 10 * Math.log10((BANDS_HZ[8] ?? 0) / (BANDS_HZ[7] ?? 1)),
    'white-1k': () => {
      const { lowerHz = 0, upperHz = 0 } = BAND_EDGES[7] ?? {};
      return 10 * Math.log10((upperHz - lowerHz) / (RATE / 2));
    },
    'impulse-bands': () => decibels(thirdOctaves([0, 0, 0, 0, 0, 1], RATE)[7] ?? 0),
    'pink-step': () => bandDb(12, (hz) => 1 / hz) - bandDb(11, (hz) => 1 / hz),
    // Of a polynomial a sine of amplitude A gives a2 A^2 / 2 and a3 A^3 / 4 against A + 3/4 a3 A^3 (textbook).
    'poly-2nd': () => {
      const [a2, a3, a] = [number(given.a2), number(given.a3), number(given.A)];
      return (a2 * a) / 2 / (1 + 0.75 * a3 * a * a);
    },
    'poly-3rd': () => {
      const [a3, a] = [number(given.a3), number(given.A)];
      return (a3 * a * a) / 4 / (1 + 0.75 * a3 * a * a);
    },
    'sweep-2nd': () => distortion.second,
    'sweep-3rd': () => distortion.third,
    'mask-half': () => maskAt([number(given.a0), number(given.a1), 9000, 12_500], number(given.f)),
    'clock-ppm': () =>
      1e6 * (12.60126 / (playedAt(SEQUENCES.stereo, 'repeat') - playedAt(SEQUENCES.stereo, 'left')) - 1),
    'file-length': () => [
      playedChannels('stereo')[0]?.length ?? 0,
      playedChannels('channels')[0]?.length ?? 0,
    ],
  };
  const value = make[id];
  if (value === undefined) throw new Error(`no computation for the check ${id}`);
  return value();
}

describe('measurement by recording, against closed forms and an independent prototype', () => {
  it('has all forty checks', () => {
    expect(CHECKS).toHaveLength(40);
  });

  it.each(CHECKS.map((check) => [check.id, check] as const))('%s', (id, check) => {
    const [found, wanted] = [[computed(check)].flat(), [check.expect].flat()];
    for (const [i, value] of wanted.entries()) {
      // The floor of the inverse may be lower than the prototype's, not higher.
      if (id === 'inverse-floor') expect(found[i]).toBeLessThan(value + check.tol);
      else expect(Math.abs((found[i] ?? Number.NaN) - value)).toBeLessThanOrEqual(check.tol);
    }
  });

  it('has band steps of a tenth of a decade (IEC 61260-1, from memory)', () => {
    for (let i = 1; i < BANDS_HZ.length; i += 1) {
      expect((BANDS_HZ[i] ?? 0) / (BANDS_HZ[i - 1] ?? 1)).toBeCloseTo(TENTH_DECADE, 12);
    }
  });

  it('carries the prediction of its peak back to where the sweep began', () => {
    expect(top / RATE).toBeCloseTo(PRE_S, 6);
  });
});
