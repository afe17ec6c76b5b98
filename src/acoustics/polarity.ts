/** Content shared by center and sides when the center is connected the wrong way around. */
import { notNegative } from './input.js';

/** A sum smaller than this is total cancellation: what is left is rounding. */
const NOTHING = 1e-12;

function levelDb(amplitude: number): number | null {
  return Math.abs(amplitude) < NOTHING ? null : 20 * Math.log10(Math.abs(amplitude));
}

/**
 * Level on the middle seat of content with `sideGain` in each side and `centerGain` in the center, dB re one
 * loudspeaker at gain 1: |2 gs + gc| as meant, |2 gs - gc| with one of them inverted (arithmetic). Null where
 * nothing is left; then there is no change in dB either.
 */
export function sharedPolarityChangeDb(input: { sideGain: number; centerGain: number }): {
  correctDb: number | null;
  invertedDb: number | null;
  changeDb: number | null;
} {
  const sides = 2 * notNegative('sideGain', input.sideGain);
  const center = notNegative('centerGain', input.centerGain);
  const correctDb = levelDb(sides + center);
  const invertedDb = levelDb(sides - center);
  return {
    correctDb,
    invertedDb,
    changeDb: correctDb === null || invertedDb === null ? null : invertedDb - correctDb,
  };
}
