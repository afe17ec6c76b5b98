/** Everyday dimensions of living rooms and menus, and units. */
import { positive } from './input.js';

/** Length of a foot, m. Exact by definition. */
export const METERS_PER_FOOT = 0.3048;
/** Length of an inch, m. Exact by definition. */
export const METERS_PER_INCH = 0.0254;

/** Height of a seated ear, m: 0.90 reclined, 1.20 upright on a dining chair. Common practice, no source. */
export const SEATED_EAR_HEIGHT_M = { usual: 1.05, least: 0.9, most: 1.2 } as const;

/**
 * Steps in which processors take distances, m: 1 cm, 0.1 ft, 10 cm, half a foot, 30 cm, a foot. That foot,
 * half-foot and 1/12-foot entries exist was read in a general how-to article; the rest is from memory.
 */
export const DISTANCE_STEPS_M: readonly number[] = [0.01, 0.03048, 0.1, 0.1524, 0.3, 0.3048];

/** Ratio of a 16:9 picture's sides to its diagonal: plain geometry. */
const DISPLAY_DIAGONAL = Math.hypot(16, 9);

/** Width and height of a 16:9 picture with this diagonal, m. */
export function display16x9({ diagonalM }: { diagonalM: number }): { widthM: number; heightM: number } {
  positive('diagonalM', diagonalM);
  return { widthM: (16 * diagonalM) / DISPLAY_DIAGONAL, heightM: (9 * diagonalM) / DISPLAY_DIAGONAL };
}
