/**
 * A recording of an invented room, made from numbers that are known: for trying the measurement without hardware,
 * and for judging it. Three loudspeakers with crossovers, a few reflections, a decaying room, a phone with its own
 * clock and noise.
 */
import { normalBy, uniformFrom } from '../lib/random.js';
import { powerOfTwo, productOf, type Spectrum, signalOf, spectrumOf } from './fft.js';
import { delayed } from './on-clock.js';
import { rootMeanSquare } from './response.js';
import {
  LEAD_IN,
  leadIn,
  PEAK,
  SEQUENCES,
  type SignalKind,
  SWEEP_S,
  type SweepName,
  sweep,
} from './sequence.js';

export interface InventedSpeaker {
  /** Travel, electronics and entries together, ms. */
  readonly arrivalMs: number;
  readonly levelDb: number;
  readonly polarity: 1 | -1;
  /** Second-order Butterworth high-pass, Hz. */
  readonly lowLimitHz: number;
  /** Linkwitz-Riley crossovers, in phase at the crossover: frequency and order. */
  readonly crossovers: readonly { readonly hz: number; readonly order: 2 | 4 }[];
  /** Level against 1 kHz, dB an octave. */
  readonly tiltDb: number;
  /** Behind the direct sound, ms and amplitude against it. */
  readonly reflections: readonly (readonly [delayMs: number, amplitude: number])[];
  /** Amplitudes of second and third harmonic against the fundamental. */
  readonly harmonics: readonly [number, number];
}

export interface InventedRoom {
  readonly left: InventedSpeaker;
  readonly center: InventedSpeaker;
  readonly right: InventedSpeaker;
  /** Reverberation time, s, and energy of the reverberation against the direct sound, dB. */
  readonly rt60S: number;
  readonly reverbDb: number;
}

const SIDES = ['left', 'center', 'right'] as const;
type Side = (typeof SIDES)[number];

/** What one loudspeaker plays of one sweep: a gain, by frequency where it depends on it. */
export interface Part {
  readonly side: Side;
  readonly gain: number | ((hz: number) => number);
}

export interface Take {
  readonly kind: SignalKind;
  readonly room: InventedRoom;
  readonly rateHz: number;
  /** The recorder's clock against the player's, parts in a million. */
  readonly ppm: number;
  /** First sweep against the noise, dB. */
  readonly snrDb: number;
  readonly seed: number;
  /** Gains of left, right and center that the player asks for, turned into what the loudspeakers play. */
  readonly plays: (gains: readonly [number, number, number]) => readonly Part[];
  /** Time that the playback loses before a sweep, s. */
  readonly lateS?: (name: SweepName) => number;
  /** Another room from some sweep on: the phone moved. */
  readonly roomAt?: (name: SweepName) => InventedRoom;
}

/** Each channel on its own loudspeaker. */
export const discrete: Take['plays'] = ([left, right, center]) => [
  { side: 'left', gain: left },
  { side: 'right', gain: right },
  { side: 'center', gain: center },
];

export function noiseOf(seed: number): () => number {
  const uniform = uniformFrom(seed);
  return () => normalBy(uniform);
}

const BEFORE_S = 0.8;
const AFTER_S = 1;
const RESPONSE_S = 0.9;
const LOUDEST = 0.5;

/** Samples of the recording, its largest value at half of full scale. */
export function record(take: Take): Float32Array {
  const { kind, rateHz } = take;
  const { sweeps, lengthS } = SEQUENCES[kind];
  const scale = 1 + take.ppm * 1e-6;
  const out = new Float64Array(Math.ceil((BEFORE_S + lengthS + AFTER_S) * rateHz * scale));
  const n = powerOfTwo((SWEEP_S + RESPONSE_S) * rateHz * scale + 1);
  let firstRms = 0;
  for (const { name, atS, gains } of sweeps) {
    const room = take.roomAt?.(name) ?? take.room;
    const at = (BEFORE_S + atS + (take.lateS?.(name) ?? 0)) * scale * rateHz;
    const first = Math.floor(at);
    const bins = new Float64Array(n + 2);
    for (const { side, gain } of take.plays(gains))
      addTo(bins, heard(take, room, side, scale, n), gain, rateHz);
    const sound = signalOf({ n, bins: delayed({ n, bins }, at - first) });
    for (let i = 0; i < n && first + i < out.length; i += 1)
      out[first + i] = (out[first + i] ?? 0) + PEAK * (sound[i] ?? 0);
    if (name === 'left') firstRms = rootMeanSquare(out.subarray(first, first + Math.trunc(SWEEP_S * rateHz)));
  }
  addLeadIn(out, rateHz, scale, firstRms);
  addNoise(out, firstRms * 10 ** (-take.snrDb / 20), take.seed);
  let largest = 1e-12;
  for (let i = 0; i < out.length; i += 1) largest = Math.max(largest, Math.abs(out[i] ?? 0));
  return new Float32Array(out).map((value) => (value / largest) * LOUDEST);
}

function addTo(bins: Float64Array, { n, bins: part }: Spectrum, gain: Part['gain'], rateHz: number): void {
  if (gain === 0) return;
  for (let k = 0; k <= n / 2; k += 1) {
    const factor = typeof gain === 'number' ? gain : gain((k * rateHz) / n);
    bins[2 * k] = (bins[2 * k] ?? 0) + factor * (part[2 * k] ?? 0);
    bins[2 * k + 1] = (bins[2 * k + 1] ?? 0) + factor * (part[2 * k + 1] ?? 0);
  }
}

/** What was heard of a loudspeaker before: whoever makes many recordings changes one at a time. */
const heardBefore = new WeakMap<InventedSpeaker, Map<string, Spectrum>>();

/** One sweep through loudspeaker and room at the phone, its channel at full. */
function heard({ rateHz, seed }: Take, room: InventedRoom, side: Side, scale: number, n: number): Spectrum {
  const speaker = room[side];
  const known = heardBefore.get(speaker) ?? new Map<string, Spectrum>();
  heardBefore.set(speaker, known);
  const key = [side, rateHz, seed, scale, room.rt60S, room.reverbDb].join(' ');
  const before = known.get(key);
  if (before) return before;
  const played = spectrumOf(sweep(rateHz, scale, [1, ...speaker.harmonics]), n);
  const { bins: tail } = spectrumOf(tailOf(room, speaker, rateHz, seed * 3 + SIDES.indexOf(side)), n);
  const gain = speaker.polarity * 10 ** (speaker.levelDb / 20);
  const bins = new Float64Array(n + 2);
  for (let k = 1; k <= n / 2; k += 1) {
    const hz = (k * rateHz) / n;
    let [re, im] = [tail[2 * k] ?? 0, tail[2 * k + 1] ?? 0];
    for (const [delayMs, amplitude] of [DIRECT, ...speaker.reflections]) {
      const turn = (-2 * Math.PI * hz * (speaker.arrivalMs + delayMs)) / 1000;
      re += amplitude * Math.cos(turn);
      im += amplitude * Math.sin(turn);
    }
    const [boxRe, boxIm] = boxAt(speaker, hz);
    bins[2 * k] = gain * (re * boxRe - im * boxIm);
    bins[2 * k + 1] = gain * (re * boxIm + im * boxRe);
  }
  const fresh = productOf(played, { n, bins });
  known.set(key, fresh);
  return fresh;
}

const DIRECT = [0, 1] as const;

/** High-pass, crossovers as the all-passes that their sums are, tilt: real and imaginary part. */
function boxAt({ lowLimitHz, crossovers, tiltDb }: InventedSpeaker, hz: number): readonly [number, number] {
  const x = hz / lowLimitHz;
  // s^2 / (s^2 + sqrt 2 s + 1) at s = jx
  let turn = Math.atan2(0, -x * x) - Math.atan2(Math.SQRT2 * x, 1 - x * x);
  const size = (x * x) / Math.hypot(1 - x * x, Math.SQRT2 * x);
  for (const { hz: corner, order } of crossovers) {
    const y = hz / corner;
    turn -= order === 2 ? 2 * Math.atan(y) : 2 * Math.atan2(Math.SQRT2 * y, 1 - y * y);
  }
  const level = size * 10 ** ((tiltDb * Math.max(-3, Math.min(4, Math.log2(hz / 1000)))) / 20);
  return [level * Math.cos(turn), level * Math.sin(turn)];
}

const TAIL_FROM_S = 0.012;
const TAIL_RISE_S = 0.02;

function tailOf(
  { rt60S, reverbDb }: InventedRoom,
  { arrivalMs }: InventedSpeaker,
  rateHz: number,
  seed: number,
): Float64Array {
  const noise = noiseOf(seed);
  const size = Math.sqrt((10 ** (reverbDb / 10) * 13.8155) / rt60S / rateHz);
  return Float64Array.from({ length: Math.trunc(RESPONSE_S * rateHz) }, (_, i) => {
    const t = i / rateHz - arrivalMs / 1000;
    const rise = Math.min(1, Math.max(0, (t - TAIL_FROM_S) / TAIL_RISE_S));
    return rise === 0 ? 0 : noise() * size * rise * Math.exp((-6.9078 * t) / rt60S);
  });
}

function addLeadIn(out: Float64Array, rateHz: number, scale: number, loudness: number): void {
  const sound = leadIn(rateHz, scale);
  const start = Math.round((BEFORE_S + LEAD_IN.startS) * rateHz * scale);
  const gain = loudness / Math.max(PEAK, 1e-9);
  for (let i = 0; i < sound.length; i += 1) out[start + i] = (out[start + i] ?? 0) + gain * (sound[i] ?? 0);
}

/** The last noise that was made: recordings of one room mostly share it. */
let noiseBefore: { readonly seed: number; readonly sound: Float64Array } | undefined;

/** White noise over a one-pole slope: rooms rumble more than they hiss. */
function addNoise(out: Float64Array, wantedRms: number, seed: number): void {
  if (noiseBefore?.seed !== seed || noiseBefore.sound.length < out.length) {
    const noise = noiseOf(seed + 977);
    let slow = 0;
    const sound = out.map(() => {
      const fresh = noise();
      slow = 0.95 * slow + fresh;
      return slow + fresh;
    });
    noiseBefore = { seed, sound };
  }
  const sound = noiseBefore.sound.subarray(0, out.length);
  const factor = wantedRms / rootMeanSquare(sound);
  for (let i = 0; i < out.length; i += 1) out[i] = (out[i] ?? 0) + factor * (sound[i] ?? 0);
}

const MAIN: InventedSpeaker = {
  arrivalMs: 9,
  levelDb: 0,
  polarity: 1,
  lowLimitHz: 55,
  crossovers: [{ hz: 2400, order: 4 }],
  tiltDb: -0.2,
  reflections: [
    [3.4, 0.3],
    [7.9, 0.25],
  ],
  harmonics: [0.004, 0.002],
};

/** The room of the demonstration: the center 1.6 ms late, inverted, 4 dB weak and a little dull, on a shelf. */
export const DEMO_ROOM: InventedRoom = {
  rt60S: 0.4,
  reverbDb: -2,
  left: MAIN,
  right: {
    ...MAIN,
    arrivalMs: 9.05,
    reflections: [
      [2.8, 0.28],
      [9.3, 0.2],
    ],
  },
  center: {
    ...MAIN,
    arrivalMs: 10.6,
    levelDb: -4,
    polarity: -1,
    lowLimitHz: 90,
    crossovers: [{ hz: 2800, order: 4 }],
    tiltDb: -0.8,
    reflections: [
      [0.9, 0.45],
      [4.2, 0.25],
    ],
  },
};

export const DEMO_TAKE: Take = {
  kind: 'channels',
  room: DEMO_ROOM,
  rateHz: 48_000,
  ppm: 23,
  snrDb: 32,
  seed: 5,
  plays: discrete,
};
