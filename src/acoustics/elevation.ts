/** Directions between a loudspeaker and a seat: plain geometry, angles in degrees. */
import { finite, positive, within } from './input.js';
import { SEATED_EAR_HEIGHT_M } from './practice.js';

const DEG_PER_RAD = 180 / Math.PI;

export type ElevationInput = {
  readonly sourceHeightM: number;
  readonly earHeightM?: number;
  /** Horizontal distance, above 0. */
  readonly distanceM: number;
  /** Upward tilt of the loudspeaker, -90 to 90. */
  readonly tiltUpDeg?: number;
};

/**
 * `elevationDeg`: the loudspeaker as the ear sees it, positive above the ear. `offAxisDeg`: the ear as the
 * loudspeaker sees it, positive above its axis; 0 when the tilt points at the ear.
 */
export function elevation(input: ElevationInput): { elevationDeg: number; offAxisDeg: number } {
  const riseM =
    finite('sourceHeightM', input.sourceHeightM) -
    finite('earHeightM', input.earHeightM ?? SEATED_EAR_HEIGHT_M.usual);
  const tiltUpDeg = within('tiltUpDeg', input.tiltUpDeg ?? 0, -90, 90);
  const elevationDeg = Math.atan(riseM / positive('distanceM', input.distanceM)) * DEG_PER_RAD;
  return { elevationDeg, offAxisDeg: -elevationDeg - tiltUpDeg };
}

/** Horizontal direction of a point `offsetM` to the right at `distanceM` ahead, positive right. */
export function azimuthDeg({ offsetM, distanceM }: { offsetM: number; distanceM: number }): number {
  return Math.atan(finite('offsetM', offsetM) / positive('distanceM', distanceM)) * DEG_PER_RAD;
}
