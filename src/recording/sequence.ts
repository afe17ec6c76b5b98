/**
 * The test signal as both sides know it: an exponential sine sweep s(t) = w(t) sin(2 pi f1 Ls (exp(t/Ls) - 1))
 * and when it is played by which loudspeaker. All numbers are this project's own choice; the form of the sweep is
 * the synchronized one: f1 Ls is whole, so that harmonics start in phase with the fundamental (from memory:
 * "Synchronized swept-sine", J. Audio Eng. Soc. 63, 2015).
 */

/** Phones hear little below; the fade-in then ends at 98 Hz, below the lowest band that is read. */
export const SWEEP_FROM_HZ = 80;
/** A recorder of 44.1 kHz and a coder that ends at 15 kHz both keep the third octave of 10 kHz. */
const SWEEP_TO_HZ = 16_000;
/** Time in which the frequency grows e-fold, s. */
export const SWEEP_GROWTH_S = 0.5;
export const SWEEP_S = SWEEP_GROWTH_S * Math.log(SWEEP_TO_HZ / SWEEP_FROM_HZ);
/** Raised-cosine ends, s: no switching clicks reach the drivers. */
const FADE_IN_S = 0.1;
const FADE_OUT_S = 0.02;
/** Peak of a sweep, -18 dBFS: an octave lasts a third of a second only, so no tweeter is loaded for long. */
export const PEAK = 10 ** (-18 / 20);
/** The repeated left sweep is weaker by this, dB: whatever rides the gain changes the step. */
export const REPEAT_STEP_DB = 6;
const REPEAT = 10 ** (-REPEAT_STEP_DB / 20);
/** Falling tone before the sweeps: opens sleeping amplifiers, lets a gain control settle. Falls, so that no sweep is found in it. */
export const LEAD_IN = { startS: 0.3, lengthS: 1, fromHz: 2000, toHz: 300, fromDb: -30, toDb: -24 } as const;

export type SignalKind = 'stereo' | 'channels';
/** left, right, middle (both alike), center, left again and weaker, left with center, left without center */
export type SweepName = 'left' | 'right' | 'middle' | 'center' | 'repeat' | 'sum' | 'difference';

interface PlayedSweep {
  readonly name: SweepName;
  /** Start in the file, s. The uneven spacing is what tells the sweeps apart. */
  readonly atS: number;
  /** Gains of front left, front right, front center. */
  readonly gains: readonly [number, number, number];
}

export interface Sequence {
  readonly kind: SignalKind;
  readonly lengthS: number;
  readonly sweeps: readonly PlayedSweep[];
}

export const SEQUENCES: Readonly<Record<SignalKind, Sequence>> = {
  stereo: {
    kind: 'stereo',
    lengthS: 18.3,
    sweeps: [
      { name: 'left', atS: 2, gains: [1, 0, 0] },
      { name: 'right', atS: 6, gains: [0, 1, 0] },
      { name: 'middle', atS: 10.2, gains: [1, 1, 0] },
      { name: 'repeat', atS: 14.6, gains: [REPEAT, 0, 0] },
    ],
  },
  channels: {
    kind: 'channels',
    lengthS: 26.4,
    sweeps: [
      { name: 'left', atS: 2, gains: [1, 0, 0] },
      { name: 'right', atS: 6.1, gains: [0, 1, 0] },
      { name: 'center', atS: 10, gains: [0, 0, 1] },
      { name: 'repeat', atS: 14.3, gains: [REPEAT, 0, 0] },
      { name: 'sum', atS: 18.8, gains: [1, 0, 1] },
      { name: 'difference', atS: 22.75, gains: [1, 0, -1] },
    ],
  },
};

/** When a sweep is played, seconds of the file. */
export const playedAt = (sequence: Sequence, name: SweepName): number =>
  sequence.sweeps.find((played) => played.name === name)?.atS ?? 0;

/** The sweep that is to be compared with left and right. */
export const centerSweepOf = (kind: SignalKind): 'middle' | 'center' =>
  kind === 'stereo' ? 'middle' : 'center';

/** How long before the linear response the image of harmonic `order` lies after deconvolution, s: Ls ln k. */
export const harmonicLeadS = (order: number): number => SWEEP_GROWTH_S * Math.log(order);

/** Frequency that the sweep passes `t` seconds after its start, Hz. */
export const sweepHzAt = (t: number): number => SWEEP_FROM_HZ * Math.exp(t / SWEEP_GROWTH_S);

/** Envelope of a sweep `t` seconds after its start, 0 to 1. */
export function fade(t: number): number {
  if (t < 0 || t > SWEEP_S) return 0;
  const end = (left: number, lengthS: number): number =>
    left >= lengthS ? 1 : 0.5 - 0.5 * Math.cos((Math.PI * left) / lengthS);
  return end(t, FADE_IN_S) * end(SWEEP_S - t, FADE_OUT_S);
}

/** Frequencies near half the sample rate fade out, as parts of the rate: no harmonic comes back as an alias. */
const ALIAS_FREE = 0.46;
const ALIAS_FADE = 0.03;

/**
 * A sweep of unit peak at `sampleRateHz`.
 * @param scale length as a clock sees it that runs fast by scale - 1
 * @param harmonics amplitudes of the fundamental and its harmonics, for tests of distortion
 */
export function sweep(sampleRateHz: number, scale = 1, harmonics: readonly number[] = [1]): Float64Array {
  const out = new Float64Array(Math.ceil(SWEEP_S * scale * sampleRateHz) + 1);
  for (let i = 0; i < out.length; i += 1) {
    const t = i / sampleRateHz / scale;
    const envelope = fade(t);
    if (envelope === 0) continue;
    const phase = 2 * Math.PI * SWEEP_FROM_HZ * SWEEP_GROWTH_S * Math.expm1(t / SWEEP_GROWTH_S);
    const hz = sweepHzAt(t);
    let sum = 0;
    for (let order = 1; order <= harmonics.length; order += 1) {
      const room = (ALIAS_FREE * sampleRateHz - order * hz) / (ALIAS_FADE * sampleRateHz);
      const wave = order % 2 === 1 ? Math.sin(order * phase) : -Math.cos(order * phase);
      sum += (harmonics[order - 1] ?? 0) * wave * Math.min(1, Math.max(0, room)) * envelope ** order;
    }
    out[i] = sum;
  }
  return out;
}

/** The falling tone before the sweeps. */
export function leadIn(sampleRateHz: number, scale = 1): Float64Array {
  const { lengthS, fromHz, toHz, fromDb, toDb } = LEAD_IN;
  const rate = Math.log(toHz / fromHz) / lengthS;
  return Float64Array.from({ length: Math.trunc(lengthS * scale * sampleRateHz) }, (_, i) => {
    const t = i / sampleRateHz / scale;
    const part = t / lengthS;
    const gain = 10 ** ((fromDb + (toDb - fromDb) * part) / 20);
    return (
      gain *
      Math.sin((2 * Math.PI * fromHz * Math.expm1(rate * t)) / rate) *
      Math.sqrt(Math.sin(Math.PI * part))
    );
  });
}
