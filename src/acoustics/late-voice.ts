/**
 * How much of a voice arrives late in a room: direct sound against the sound of the room before and after 50 ms
 * (revised theory of Barron and Lee 1988, from memory, without its loss of level with distance).
 */
import { positive } from './input.js';

/** Up to here the room helps a voice, beyond it blurs, s (definition of D50, ISO 3382). */
const EARLY_S = 0.05;
/** Sound falls by 60 dB in the reverberation time: 6 ln 10. */
const DECAY = 6 * Math.LN10;
/** Sabine, m3 and m2 to s. */
const SABINE = 0.161;

/**
 * Part of the energy of a voice that comes more than 50 ms late, 0 to 1: 1 - D50.
 * @param reverberationS 60 dB decay, s; volumeM3 of the room; directivity of the source toward the seat (1 a point,
 * some 4 a loudspeaker in the voice range). All above 0; throws RangeError otherwise.
 */
export function lateVoicePart(input: {
  readonly reverberationS: number;
  readonly volumeM3: number;
  readonly distanceM: number;
  readonly directivity: number;
}): number {
  const reverberationS = positive('reverberationS', input.reverberationS);
  const areaM2 = (SABINE * positive('volumeM3', input.volumeM3)) / reverberationS;
  const direct =
    positive('directivity', input.directivity) / (4 * Math.PI * positive('distanceM', input.distanceM) ** 2);
  const room = 4 / areaM2;
  const late = room * Math.exp((-DECAY * EARLY_S) / reverberationS);
  return late / (direct + room);
}
