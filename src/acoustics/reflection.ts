/**
 * Reflections by the method of images (textbook): floor, wall behind the loudspeaker, and
 * what walls nearby add to what arrives at the seat.
 */
import { C_AIR } from './air.js';
import { gridStepDecades, logGrid, smoothPower, THIRD_OCTAVE_DECADES, THIRD_OCTAVE_EDGE } from './bands.js';
import { notNegative, positive, within } from './input.js';
import { SEATED_EAR_HEIGHT_M } from './practice.js';

/** Depth of the first null, dB; null when both sounds are equal and nothing is left. */
function nullDepth(ratio: number): number | null {
  return ratio === 1 ? null : 20 * Math.log10(Math.abs(1 - ratio));
}

export type BounceGeometry = {
  readonly sourceHeightM: number;
  readonly earHeightM?: number;
  /** Horizontal distance, above 0. */
  readonly distanceM: number;
};

export type FloorBounce = {
  /** Longer way over the floor, m. */
  pathDifferenceM: number;
  delayMs: number;
  firstNullHz: number | null;
  /** Where the ray meets the floor, m from the loudspeaker; null when both stand on the floor. */
  specularM: number | null;
  nullDepthDb: number | null;
  /** Amplitude of the reflection over the direct sound at the ear. */
  reflectionRatio: number;
};

/**
 * Reflection off the floor or any large level plane (heights are then above that plane).
 * @param input heights 0 or above; `reflection` 0 to 1, amplitude. Throws RangeError otherwise.
 */
export function floorBounce(input: BounceGeometry & { readonly reflection?: number }): FloorBounce {
  const sourceM = notNegative('sourceHeightM', input.sourceHeightM);
  const earM = notNegative('earHeightM', input.earHeightM ?? SEATED_EAR_HEIGHT_M.usual);
  const distanceM = positive('distanceM', input.distanceM);
  const reflection = within('reflection', input.reflection ?? 1, 0, 1);
  const direct = Math.hypot(distanceM, sourceM - earM);
  const bounced = Math.hypot(distanceM, sourceM + earM);
  const pathDifferenceM = bounced - direct;
  const reflectionRatio = (reflection * direct) / bounced;
  return {
    pathDifferenceM,
    delayMs: (pathDifferenceM / C_AIR) * 1000,
    firstNullHz: pathDifferenceM === 0 ? null : C_AIR / (2 * pathDifferenceM),
    specularM: sourceM + earM === 0 ? null : (distanceM * sourceM) / (sourceM + earM),
    nullDepthDb: nullDepth(reflectionRatio),
    reflectionRatio,
  };
}

export type FloorCover = 'bare' | 'carpet';
/** Amplitude reflection of floors by frequency; from memory. Carpet: thick with a pad, lying on the reflection. */
const FLOOR_REFLECTION: Record<FloorCover, readonly (readonly [frequencyHz: number, ratio: number])[]> = {
  bare: [[250, 0.95]],
  carpet: [
    [250, 0.9],
    [500, 0.8],
    [1000, 0.6],
    [2000, 0.5],
  ],
};

/** Amplitude reflection of a floor, straight lines over log frequency between the table's points. */
export function floorReflection(cover: FloorCover, frequencyHz: number): number {
  return interpolateLog(FLOOR_REFLECTION[cover], frequencyHz);
}

/** Value of a table over log frequency, held at both ends. The table is in rising order. */
export function interpolateLog(table: readonly (readonly [number, number])[], frequencyHz: number): number {
  let [lowHz, lowValue] = table[0] ?? [1, 0];
  if (frequencyHz <= lowHz) return lowValue;
  for (const [highHz, highValue] of table) {
    if (frequencyHz <= highHz) {
      const part = Math.log(frequencyHz / lowHz) / Math.log(highHz / lowHz);
      return lowValue + part * (highValue - lowValue);
    }
    [lowHz, lowValue] = [highHz, highValue];
  }
  return lowValue;
}

export type Extremes = { dipDb: number; dipHz: number; peakDb: number; peakHz: number };
/** Step of a curve before it is smoothed, decades: 32 to a third-octave band follow the comb of a floor. */
const RIPPLE_STEP_DECADES = THIRD_OCTAVE_DECADES / 32;

/**
 * Deepest dip and highest peak, smoothed to a third octave, of `powerAt` between two frequencies.
 * The grid reaches half a band beyond both.
 * @param stepDecades of the grid, about
 */
export function smoothedExtremes(
  fromHz: number,
  toHz: number,
  powerAt: (frequencyHz: number) => number,
  stepDecades = RIPPLE_STEP_DECADES,
): Extremes {
  const decades = Math.log10(toHz / fromHz) + THIRD_OCTAVE_DECADES;
  const points = Math.ceil(decades / stepDecades) + 1;
  const grid = logGrid(fromHz / THIRD_OCTAVE_EDGE, toHz * THIRD_OCTAVE_EDGE, points);
  const smoothed = smoothPower(grid.map(powerAt), gridStepDecades(grid));
  let [dip, peak] = [-1, -1];
  for (let i = 0; i < grid.length; i += 1) {
    const frequencyHz = grid[i] as number;
    if (frequencyHz < fromHz || frequencyHz > toHz) continue;
    if (dip < 0 || (smoothed[i] as number) < (smoothed[dip] as number)) dip = i;
    if (peak < 0 || (smoothed[i] as number) > (smoothed[peak] as number)) peak = i;
  }
  const level = (index: number): number => 10 * Math.log10(smoothed[index] as number);
  return {
    dipDb: Math.min(0, level(dip)),
    dipHz: grid[dip] as number,
    peakDb: Math.max(0, level(peak)),
    peakHz: grid[peak] as number,
  };
}

/** The range in which a single reflection colors a voice, Hz. Below it the room's modes take over. */
const RIPPLE_FROM_HZ = 100;
const RIPPLE_TO_HZ = 8000;

/** Third-octave-smoothed dip and peak that a floor of given cover leaves at the ear, 100 Hz to 8 kHz. */
export function bounceRipple(
  geometry: BounceGeometry & { readonly cover: FloorCover },
  stepDecades?: number,
): Extremes {
  const { pathDifferenceM, reflectionRatio } = floorBounce(geometry);
  const wave = (2 * Math.PI * pathDifferenceM) / C_AIR;
  const powerAt = (frequencyHz: number): number => {
    const ratio = reflectionRatio * floorReflection(geometry.cover, frequencyHz);
    return 1 + ratio * ratio + 2 * ratio * Math.cos(wave * frequencyHz);
  };
  return smoothedExtremes(RIPPLE_FROM_HZ, RIPPLE_TO_HZ, powerAt, stepDecades);
}

/**
 * Reflection off the wall behind the loudspeaker: first null c / (4 d) of its acoustic center's distance, with
 * an omnidirectional source. `reflection` 0 to 1 also stands for the box's weaker sound to the rear.
 */
export function frontWall(input: {
  wallDistanceM: number;
  listeningDistanceM?: number;
  reflection?: number;
}): {
  firstNullHz: number | null;
  nullDepthDb: number | null;
  reflectionRatio: number;
} {
  const wallM = notNegative('wallDistanceM', input.wallDistanceM);
  const listeningM = positive('listeningDistanceM', input.listeningDistanceM ?? 3);
  const reflection = within('reflection', input.reflection ?? 1, 0, 1);
  const reflectionRatio = (reflection * listeningM) / (listeningM + 2 * wallM);
  return {
    firstNullHz: wallM === 0 ? null : C_AIR / (4 * wallM),
    nullDepthDb: nullDepth(reflectionRatio),
    reflectionRatio,
  };
}

/**
 * Mean level that the wall behind, and a wall beside, add at a seat straight ahead, dB re free field: the coherent sum
 * of the source and its images. For frequencies at which the box radiates alike to all sides
 * (below some 200 Hz for a box half a meter wide). Up to 6 dB for one wall, 12 for a corner.
 */
export function nearbyWallsDb({
  wallDistanceM,
  sideWallDistanceM,
  listeningDistanceM,
  frequenciesHz,
}: {
  readonly wallDistanceM: number;
  readonly sideWallDistanceM?: number | undefined;
  readonly listeningDistanceM: number;
  readonly frequenciesHz: readonly number[];
}): number {
  const behindM = 2 * notNegative('wallDistanceM', wallDistanceM);
  const seatM = positive('listeningDistanceM', listeningDistanceM);
  const besideM =
    sideWallDistanceM === undefined ? [0] : [0, 2 * notNegative('sideWallDistanceM', sideWallDistanceM)];
  const images = [0, behindM].flatMap((back) => besideM.map((side) => Math.hypot(seatM + back, side)));
  const powerAt = (frequencyHz: number): number => {
    const wave = (2 * Math.PI * frequencyHz) / C_AIR;
    const sum = images.reduce(
      ([re, im], lengthM) => {
        const amplitude = seatM / lengthM;
        const phase = wave * (lengthM - seatM);
        return [re + amplitude * Math.cos(phase), im + amplitude * Math.sin(phase)] as const;
      },
      [0, 0] as readonly [number, number],
    );
    return sum[0] ** 2 + sum[1] ** 2;
  };
  const levels = frequenciesHz.map((hz) => 10 * Math.log10(powerAt(positive('frequenciesHz', hz))));
  return levels.reduce((total, db) => total + db, 0) / levels.length;
}
