/** What goes wrong with recordings, done to a recording whose truth is known. */
import { discrete, noiseOf, type Part, type Take } from '../../src/recording/invented.js';

type Samples = Float32Array;

/** Seconds of the played file begin here in a recording. */
const FILE_AT_S = 0.8;

/** Everything beyond `part` of the largest value is cut off. */
export function clipped(samples: Samples, part: number): Samples {
  const top = part * samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return samples.map((value) => Math.max(-top, Math.min(top, value)));
}

/** Gain that drifts by `db` over the recording. */
export const drifting = (samples: Samples, db: number): Samples =>
  samples.map((value, i) => value * 10 ** ((db * i) / samples.length / 20));

/** A bark, a bang, a word: broad noise for `lengthS` at a second of the played file, rms against the recording's peak. */
export function withBurst(
  samples: Samples,
  rateHz: number,
  atS: number,
  loudness: number,
  lengthS = 0.2,
): Samples {
  const noise = noiseOf(3);
  const out = samples.slice();
  const from = Math.round((FILE_AT_S + atS) * rateHz);
  const count = Math.round(lengthS * rateHz);
  let [fast, slow] = [0, 0];
  for (let i = 0; i < count; i += 1) {
    const fresh = noise();
    fast = 0.8 * fast + fresh;
    slow = 0.95 * slow + 0.2 * fresh;
    const value = loudness * (fast - slow) * Math.sin((Math.PI * i) / count);
    out[from + i] = (out[from + i] ?? 0) + value;
  }
  return out;
}

/** An upmix that moves a part of what both channels share to the center and keeps its power. */
export const extracting =
  (part: number): Take['plays'] =>
  ([left, right, center]) =>
    left === right && left !== 0
      ? [
          { side: 'left', gain: left * Math.sqrt(1 - part) },
          { side: 'right', gain: right * Math.sqrt(1 - part) },
          { side: 'center', gain: left * Math.sqrt(2 * part) },
        ]
      : discrete([left, right, center]);

/** The upmix moves to the center what lies between two frequencies only. */
export const extractingBand =
  (fromHz: number, toHz: number): Take['plays'] =>
  (gains) => {
    const [left, right] = gains;
    if (left !== right || left === 0) return discrete(gains);
    const inside = (hz: number): boolean => hz > fromHz && hz < toHz;
    return [
      { side: 'left', gain: (hz) => (inside(hz) ? 0 : left) },
      { side: 'right', gain: (hz) => (inside(hz) ? 0 : right) },
      { side: 'center', gain: (hz) => (inside(hz) ? left * Math.SQRT2 : 0) },
    ] satisfies Part[];
  };

/** The player has no center: it goes to left and right, 3 dB weaker each. */
export const downmixing: Take['plays'] = ([left, right, center]) =>
  discrete([left + center * Math.SQRT1_2, right + center * Math.SQRT1_2, 0]);

/** One loudspeaker says nothing. */
export const silencing =
  (side: 'left' | 'right' | 'center'): Take['plays'] =>
  (gains) =>
    discrete(gains).filter((part) => part.side !== side);
