/**
 * Where a sound fed to several loudspeakers is heard: velocity and energy vectors. Angles are seen from the listener,
 * left positive.
 */
import { finite } from './input.js';

export type Feed = { readonly angleDeg: number; readonly gain: number };
/** `length` 1 is as firm as a single loudspeaker. Null where all feeds cancel: the vector does not exist. */
export type ImageVector = { readonly angleDeg: number | null; readonly length: number | null };

const RADIANS = Math.PI / 180;

function weightedVector(feeds: readonly Feed[], weight: (gain: number) => number): ImageVector {
  let ahead = 0;
  let left = 0;
  let total = 0;
  for (const { angleDeg, gain } of feeds) {
    const w = weight(finite('gain', gain));
    const angle = finite('angleDeg', angleDeg) * RADIANS;
    ahead += w * Math.cos(angle);
    left += w * Math.sin(angle);
    total += w;
  }
  if (total === 0) return { angleDeg: null, length: null };
  return {
    angleDeg: Math.atan2(left / total, ahead / total) / RADIANS,
    length: Math.hypot(ahead, left) / Math.abs(total),
  };
}

/** r_V = sum g u / sum g: below about 700 Hz. Read in an open evaluation toolbox; the 700 Hz are from memory. */
export function velocityVector(feeds: readonly Feed[]): ImageVector {
  return weightedVector(feeds, (gain) => gain);
}

/** r_E = sum g^2 u / sum g^2: above about 700 Hz. Read in an open evaluation toolbox; 700 Hz from memory. */
export function energyVector(feeds: readonly Feed[]): ImageVector {
  return weightedVector(feeds, (gain) => gain * gain);
}
