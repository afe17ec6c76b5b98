/** Plays the speech-like sound, or the owner's own file, as it should be and as a seat gets it. */
import { type Curve, equalLoudnessDb, TAPS, tapsFor } from './filter-taps.js';
import { noise, syllables, VOICE_SPECTRUM_DB } from './speech-sound.js';

const SECONDS = 6;
/** Level of the voice against full scale, dB: quiet, for nobody knows what is plugged in. */
const LEVEL_DB = -26;
/** Up to here sound passes as it is; above it is bent so that it never gets past LIMIT. Parts of full scale. */
const STRAIGHT = 0.35;
const LIMIT = 0.5;
const LIMITER_POINTS = 4097;
const FADE_S = 0.4;

const FLAT: Curve = [
  [20, 0],
  [20_000, 0],
];

interface Player {
  /** Plays on until stopped; a new curve takes over where the sound is. */
  readonly play: (curve: Curve | undefined) => Promise<void>;
  readonly stop: () => void;
  /** The owner's own sound instead of the made one; undefined for the made one. */
  readonly useFile: (file: Blob | undefined) => Promise<void>;
}

export function createPlayer(): Player {
  let context: AudioContext | undefined;
  let own: AudioBuffer | undefined;
  let made: AudioBuffer | undefined;
  let playing: { readonly source: AudioBufferSourceNode; readonly gain: GainNode } | undefined;

  const stop = (): void => {
    if (!context || !playing) return;
    const { source, gain } = playing;
    gain.gain.setTargetAtTime(0, context.currentTime, FADE_S / 5);
    source.stop(context.currentTime + FADE_S);
    playing = undefined;
  };
  const ready = async (): Promise<AudioContext> => {
    context ??= new AudioContext();
    await context.resume();
    return context;
  };
  return {
    stop,
    useFile: async (file) => {
      own = file === undefined ? undefined : await (await ready()).decodeAudioData(await file.arrayBuffer());
    },
    play: async (curve = FLAT) => {
      const at = await ready();
      made ??= await speechBuffer(at.sampleRate);
      stop();
      playing = chain(at, own ?? made, curve);
      playing.gain.gain.setValueAtTime(0, at.currentTime);
      playing.gain.gain.linearRampToValueAtTime(1, at.currentTime + FADE_S);
      playing.source.start();
    },
  };
}

/** Sound through the curve, made equally loud, through a limiter. Also the way it is measured in the tests. */
export function chain(context: BaseAudioContext, sound: AudioBuffer, curve: Curve) {
  const source = new AudioBufferSourceNode(context, { buffer: sound, loop: true });
  const loudness = new GainNode(context, { gain: 10 ** (equalLoudnessDb(curve, VOICE_SPECTRUM_DB) / 20) });
  const limiter = new WaveShaperNode(context, { curve: limiterCurve(), oversample: '4x' });
  const gain = new GainNode(context);
  source
    .connect(filterNode(context, curve))
    .connect(loudness)
    .connect(limiter)
    .connect(gain)
    .connect(context.destination);
  return { source, gain };
}

/** A limiter without memory and without a gain of its own: what is not too loud is not touched. */
function limiterCurve(): Float32Array<ArrayBuffer> {
  const bend = LIMIT - STRAIGHT;
  return Float32Array.from({ length: LIMITER_POINTS }, (_, i) => {
    const x = (2 * i) / (LIMITER_POINTS - 1) - 1;
    const size = Math.abs(x);
    return size <= STRAIGHT ? x : Math.sign(x) * (STRAIGHT + bend * Math.tanh((size - STRAIGHT) / bend));
  });
}

/** Noise with the spectrum of a voice that comes and goes like syllables; loops without a seam. */
async function speechBuffer(rate: number): Promise<AudioBuffer> {
  const length = SECONDS * rate;
  const white = new AudioBuffer({ length, sampleRate: rate });
  white.copyToChannel(noise(length), 0);
  const offline = new OfflineAudioContext(1, length + TAPS, rate);
  const source = new AudioBufferSourceNode(offline, { buffer: white, loop: true });
  source.connect(filterNode(offline, perHertz(VOICE_SPECTRUM_DB))).connect(offline.destination);
  source.start();
  // The first taps are the filter filling up; after them the loop is in its steady state.
  const colored = (await offline.startRendering()).getChannelData(0).subarray(TAPS);
  const voice = colored.map((value, i) => value * syllables(i / rate));
  const rms = Math.sqrt(voice.reduce((sum, value) => sum + value * value, 0) / length);
  const scale = 10 ** (LEVEL_DB / 20) / rms;
  const buffer = new AudioBuffer({ length, sampleRate: rate });
  buffer.copyToChannel(
    voice.map((value) => value * scale),
    0,
  );
  return buffer;
}

function filterNode(context: BaseAudioContext, curve: Curve): ConvolverNode {
  const impulse = new AudioBuffer({ length: TAPS, sampleRate: context.sampleRate });
  impulse.copyToChannel(tapsFor(curve, context.sampleRate), 0);
  return new ConvolverNode(context, { buffer: impulse, disableNormalization: true });
}

/** Levels per third octave as levels per hertz: a band grows with its frequency. */
const perHertz = (spectrum: Curve): Curve =>
  spectrum.map(([hz, db]) => [hz, db - 10 * Math.log10(hz / 500)] as const);
