/**
 * Electrical power that a loudspeaker takes for a level at the seat: sensitivity plus ten times the logarithm of the
 * power, less 20 lg of the distance, plus what the room adds.
 */
import { finite, positive } from './input.js';

/**
 * A meter shows the mean; speech and film peaks stand 12 to 18 dB above it (read in a public calculator of levels), the
 * peak of a rated sine 3 dB above its own mean: 15 - 3.
 */
const PEAKS_ABOVE_METER_DB = 12;
/** A living room adds this much to the direct sound some meters away (the same calculator: two loudspeakers at 2 m as one in the open at 1 m). */
const ROOM_GAIN_DB = 3;

/** Level of a sine at full power in the open, dB. Sensitivity in dB at 1 m for 1 W, power in W, distance in m, both above 0. */
export function fullLevelDb(input: {
  readonly sensitivityDb: number;
  readonly powerW: number;
  readonly distanceM: number;
}): number {
  const { sensitivityDb, powerW, distanceM } = input;
  return (
    finite('sensitivityDb', sensitivityDb) +
    10 * Math.log10(positive('powerW', powerW)) -
    20 * Math.log10(positive('distanceM', distanceM))
  );
}

/** Rated power, W, that passes the peaks of what a meter at the seat shows as `levelDb`, in a living room. */
export function powerForLevelW(input: {
  readonly levelDb: number;
  readonly sensitivityDb: number;
  readonly distanceM: number;
}): number {
  const { levelDb, ...box } = input;
  const wantedDb = finite('levelDb', levelDb) + PEAKS_ABOVE_METER_DB - ROOM_GAIN_DB;
  return 10 ** ((wantedDb - fullLevelDb({ ...box, powerW: 1 })) / 10);
}
