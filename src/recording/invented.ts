/**
 * A recording of an invented room, made from numbers that are known: for trying the measurement without hardware,
 * and for judging it. Three loudspeakers with crossovers, a few reflections, a decaying room, a phone with its own
 * clock and noise.
 */
import { type Spectrum, signalOf, spectrumOf } from './fft.js';
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

type Side = 'left' | 'center' | 'right';

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

/** An upmix that moves a part of what both channels share to the center and keeps its power. */
export const extracting =
  (part: number): Take['plays'] =>
  ([left, right, center]) => {
    const shared = left === right && left !== 0;
    return shared
      ? [
          { side: 'left', gain: left * Math.sqrt(1 - part) },
          { side: 'right', gain: right * Math.sqrt(1 - part) },
          { side: 'center', gain: left * Math.sqrt(2 * part) },
        ]
      : discrete([left, right, center]);
  };

/** Seeded noise, standard deviation 1: a small counter-based generator and the sum of its neighbors (textbook). */
export function noiseOf(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

const BEFORE_S = 0.8;
const AFTER_S = 1;
const RESPONSE_S = 0.9;
const LOUDEST = 0.5;

/** Samples of the recording, its largest value at half of full scale. */
export function record(take: Take): Float32Array {
  const { kind, rateHz, room } = take;
  const { sweeps, lengthS } = SEQUENCES[kind];
  const scale = 1 + take.ppm * 1e-6;
  const out = new Float64Array(Math.ceil((BEFORE_S + lengthS + AFTER_S) * rateHz * scale));
  const n = 2 ** Math.ceil(Math.log2((SWEEP_S + RESPONSE_S) * rateHz * scale + 1));
  const responses = new Map<string, Spectrum>();
  const response = (of: InventedRoom, side: Side): Spectrum => {
    const key = `${side} ${of === room}`;
    const known = responses.get(key) ?? responseOf(of, side, rateHz, n, take.seed);
    responses.set(key, known);
    return known;
  };
  const played = new Map<Side, Spectrum>(
    (['left', 'center', 'right'] as const).map((side) => [
      side,
      spectrumOf(sweep(rateHz, scale, [1, ...room[side].harmonics]), n),
    ]),
  );
  let firstRms = 0;
  for (const { name, atS, gains } of sweeps) {
    const heard = take.roomAt?.(name) ?? room;
    const at = (BEFORE_S + atS + (take.lateS?.(name) ?? 0)) * scale * rateHz;
    const first = Math.floor(at);
    const bins = new Float64Array(n + 2);
    for (const { side, gain } of take.plays(gains)) {
      addProduct(bins, n, rateHz, played.get(side), response(heard, side), at - first, gain);
    }
    const sound = signalOf({ n, bins });
    for (let i = 0; i < n && first + i < out.length; i += 1) {
      out[first + i] = (out[first + i] ?? 0) + PEAK * (sound[i] ?? 0);
    }
    if (name === 'left') firstRms = rms(out.subarray(first, first + Math.trunc(SWEEP_S * rateHz)));
  }
  addLeadIn(out, rateHz, scale, firstRms);
  addNoise(out, firstRms * 10 ** (-take.snrDb / 20), take.seed);
  const largest = out.reduce((most, value) => Math.max(most, Math.abs(value)), 1e-12);
  return Float32Array.from(out, (value) => (value / largest) * LOUDEST);
}

function addProduct(
  bins: Float64Array,
  n: number,
  rateHz: number,
  played: Spectrum | undefined,
  response: Spectrum,
  fraction: number,
  gain: Part['gain'],
): void {
  if (played === undefined || gain === 0) return;
  for (let k = 0; k <= n / 2; k += 1) {
    const factor = typeof gain === 'number' ? gain : gain((k * rateHz) / n);
    const turn = (-2 * Math.PI * k * fraction) / n;
    const [c, s] = [factor * Math.cos(turn), factor * Math.sin(turn)];
    const [ar, ai] = [played.bins[2 * k] ?? 0, played.bins[2 * k + 1] ?? 0];
    const [br, bi] = [response.bins[2 * k] ?? 0, response.bins[2 * k + 1] ?? 0];
    const [re, im] = [ar * br - ai * bi, ar * bi + ai * br];
    bins[2 * k] = (bins[2 * k] ?? 0) + re * c - im * s;
    bins[2 * k + 1] = (bins[2 * k + 1] ?? 0) + re * s + im * c;
  }
}

/** Loudspeaker and room from one place to the phone. */
function responseOf(room: InventedRoom, side: Side, rateHz: number, n: number, seed: number): Spectrum {
  const speaker = room[side];
  const gain = speaker.polarity * 10 ** (speaker.levelDb / 20);
  const tail = spectrumOf(
    tailOf(room, speaker, rateHz, seed * 3 + ['left', 'center', 'right'].indexOf(side)),
    n,
  );
  const bins = new Float64Array(n + 2);
  for (let k = 1; k <= n / 2; k += 1) {
    const hz = (k * rateHz) / n;
    const box = boxAt(speaker, hz);
    let [re, im] = [tail.bins[2 * k] ?? 0, tail.bins[2 * k + 1] ?? 0];
    for (const [delayMs, amplitude] of [[0, 1] as const, ...speaker.reflections]) {
      const turn = (-2 * Math.PI * hz * (speaker.arrivalMs + delayMs)) / 1000;
      re += amplitude * Math.cos(turn);
      im += amplitude * Math.sin(turn);
    }
    bins[2 * k] = gain * (re * box[0] - im * box[1]);
    bins[2 * k + 1] = gain * (re * box[1] + im * box[0]);
  }
  return { n, bins };
}

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

/** White noise over a one-pole slope: rooms rumble more than they hiss. */
function addNoise(out: Float64Array, wantedRms: number, seed: number): void {
  const noise = noiseOf(seed + 977);
  let slow = 0;
  const sound = Float64Array.from(out, () => {
    const fresh = noise();
    slow = 0.95 * slow + fresh;
    return slow + fresh;
  });
  const factor = wantedRms / rms(sound);
  for (let i = 0; i < out.length; i += 1) out[i] = (out[i] ?? 0) + factor * (sound[i] ?? 0);
}

const rms = (values: Float64Array): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

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
