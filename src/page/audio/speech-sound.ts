/**
 * Noise that is like speech in what matters here: the long-term spectrum of a voice, and loudness that comes and
 * goes as syllables do. Nobody is recorded, and every page plays the same.
 */

/**
 * Long-term average spectrum of speech in third octaves, dB below the strongest, men and women together: the
 * international comparison of twelve languages (Journal of the Acoustical Society of America, 1994). From memory, to 1 dB.
 */
export const VOICE_SPECTRUM_DB: readonly (readonly [hz: number, db: number])[] = [
  [63, -24],
  [80, -19],
  [100, -9],
  [125, -4],
  [160, -4],
  [200, -2],
  [250, -2],
  [315, -2],
  [400, 0],
  [500, 0],
  [630, -1],
  [800, -5],
  [1000, -8],
  [1250, -9],
  [1600, -10],
  [2000, -12],
  [2500, -13],
  [3150, -13],
  [4000, -14],
  [5000, -15],
  [6300, -16],
  [8000, -18],
  [10000, -20],
  [12500, -22],
  [16000, -25],
];

/** Syllables a second: speech is modulated most near 4 Hz (IEC 60268-16 samples 0.63 to 12.5 Hz; from memory). */
const SYLLABLES_HZ = 4;
/** Phrases: slower swells, so that the ear gets pauses; whole in a loop of even seconds. Our own choice. */
const PHRASES_HZ = 0.5;

/** A repeatable stream of numbers between -1 and 1: every listener hears the same noise. */
export function noise(length: number, seed = 1): Float32Array<ArrayBuffer> {
  const out = new Float32Array(length);
  let state = seed >>> 0;
  for (let i = 0; i < length; i += 1) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    out[i] = state / 2 ** 31 - 1;
  }
  return out;
}

/** How loud the voice is at a moment, 0 to 1. */
export function syllables(timeS: number): number {
  const syllable = 0.5 - 0.5 * Math.cos(2 * Math.PI * SYLLABLES_HZ * timeS);
  const phrase = 0.6 - 0.4 * Math.cos(2 * Math.PI * PHRASES_HZ * timeS);
  return (0.1 + 0.9 * syllable) * phrase;
}
