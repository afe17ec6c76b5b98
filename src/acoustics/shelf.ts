/**
 * Sound off a flat top of limited depth in front of a loudspeaker: furniture, a table between it and the seat.
 *
 * The image method alone is wrong here, since the mirror point usually lies in front of the edge. The strip is
 * weighted with Fresnel-Kirchhoff edge terms instead: r = Rc [F(v_near) - F(v_far)] (d1 / d2).
 * Compared with a two-dimensional boundary-element computation it is within about 2 dB and errs to the bad side.
 * `shelfStrip` and `tableStrip` tell it at one frequency, for published and computed rows: no rule reads them.
 */
import { C_AIR } from './air.js';
import { THIRD_OCTAVE_DECADES } from './bands.js';
import { abs, add, type Complex, complex, mul, polar, power, scale, sub, ZERO } from './complex.js';
import { finite, notNegative, positive, within } from './input.js';
import { type Extremes, smoothedExtremes } from './reflection.js';
import { fresnel } from './special.js';

/** Part of a wave that an edge lets through: 1 far on the lit side (v below 0), 0.5 at v = 0, 0 in the shadow. */
export function fresnelHalf(v: number): Complex {
  const { c, s } = fresnel(v);
  return mul(complex(0.5, 0.5), complex(0.5 - c, -(0.5 - s)));
}

export type StripGeometry = {
  /** Acoustic center above the surface, m, above 0. */
  readonly heightAboveShelfM: number;
  /** Ear above the plane of the surface, m; at or below 0 nothing is reflected to it. */
  readonly earAboveShelfM: number;
  readonly distanceM: number;
  /** Amplitude reflection of the surface, 0 to 1. */
  readonly reflection?: number;
};

export type Strip = { readonly nearEdgeM: number; readonly farEdgeM: number; readonly widthM?: number };

/** Where the mirror ray meets the plane, how much longer it is, and how much weaker. Null without such a ray. */
export function shelfSpecular(geometry: StripGeometry): {
  specularM: number;
  pathDifferenceM: number;
  spreadRatio: number;
} | null {
  const sourceM = positive('heightAboveShelfM', geometry.heightAboveShelfM);
  const earM = finite('earAboveShelfM', geometry.earAboveShelfM);
  const distanceM = positive('distanceM', geometry.distanceM);
  if (earM <= 0) return null;
  const direct = Math.hypot(distanceM, sourceM - earM);
  const mirrored = Math.hypot(distanceM, sourceM + earM);
  return {
    specularM: (distanceM * sourceM) / (sourceM + earM),
    pathDifferenceM: mirrored - direct,
    spreadRatio: direct / mirrored,
  };
}

/** Reflection off the strip as a function of frequency, amplitude over the direct sound, without its delay. */
function stripReflection(geometry: StripGeometry, strip: Strip): (frequencyHz: number) => Complex {
  const specular = shelfSpecular(geometry);
  const reflection = within('reflection', geometry.reflection ?? 1, 0, 1);
  if (specular === null) return () => ZERO;
  const { heightAboveShelfM: sourceM, earAboveShelfM: earM, distanceM } = geometry;
  const mirroredM = Math.hypot(distanceM, sourceM + earM);
  /** v of an edge per root of frequency, negative for an edge nearer than the mirror point. */
  const edge = (xM: number): number => {
    const detourM = Math.hypot(xM, sourceM) + Math.hypot(distanceM - xM, earM) - mirroredM;
    return Math.sign(xM - specular.specularM) * 2 * Math.sqrt(Math.max(0, detourM) / C_AIR);
  };
  const near = edge(strip.nearEdgeM);
  const far = edge(strip.farEdgeM);
  const side =
    strip.widthM === undefined
      ? null
      : lateralEdge(geometry, specular.specularM, mirroredM, strip.widthM / 2);
  return (frequencyHz) => {
    const root = Math.sqrt(frequencyHz);
    const deep = sub(fresnelHalf(near * root), fresnelHalf(far * root));
    const wide = side === null ? complex(1) : sub(complex(1), scale(fresnelHalf(side * root), 2));
    return scale(mul(deep, wide), reflection * specular.spreadRatio);
  };
}

function lateralEdge(g: StripGeometry, specularM: number, mirroredM: number, halfWidthM: number): number {
  const detourM =
    Math.hypot(specularM, g.heightAboveShelfM, halfWidthM) +
    Math.hypot(g.distanceM - specularM, g.earAboveShelfM, halfWidthM) -
    mirroredM;
  return 2 * Math.sqrt(Math.max(0, detourM) / C_AIR);
}

type ShelfInput = StripGeometry & {
  /** Depth of the top left bare between the baffle and the front edge, m, 0 or above. */
  readonly exposedDepthM: number;
};

function shelfOf(input: ShelfInput): Strip {
  return { nearEdgeM: 0, farEdgeM: notNegative('exposedDepthM', input.exposedDepthM) };
}

/** Level re the direct sound alone, as power, of direct plus reflection. */
function combinedPower(geometry: StripGeometry, strip: Strip): (frequencyHz: number) => number {
  const reflectionAt = stripReflection(geometry, strip);
  const wave = (2 * Math.PI * (shelfSpecular(geometry)?.pathDifferenceM ?? 0)) / C_AIR;
  return (frequencyHz) =>
    power(add(complex(1), mul(reflectionAt(frequencyHz), polar(1, -wave * frequencyHz))));
}

export type StripLevel = { reflectionAbs: number; levelDb: number };

function stripLevel(geometry: StripGeometry, strip: Strip, frequencyHz: number): StripLevel {
  positive('frequencyHz', frequencyHz);
  return {
    reflectionAbs: abs(stripReflection(geometry, strip)(frequencyHz)),
    levelDb: 10 * Math.log10(combinedPower(geometry, strip)(frequencyHz)),
  };
}

/** Amplitude of the reflection and resulting level of an exposed shelf at one frequency. */
export function shelfStrip(input: ShelfInput & { readonly frequencyHz: number }): StripLevel {
  return stripLevel(input, shelfOf(input), input.frequencyHz);
}

type TableInput = StripGeometry & Strip;

/** Edges in order and before the seat. */
function tableOf(input: TableInput): Strip {
  const nearEdgeM = notNegative('nearEdgeM', input.nearEdgeM);
  within('farEdgeM', input.farEdgeM, nearEdgeM, positive('distanceM', input.distanceM));
  if (input.widthM !== undefined) positive('widthM', input.widthM);
  return input;
}

/** As `shelfStrip`, for a table between loudspeaker and seat: edges in m from the loudspeaker, `widthM` across. */
export function tableStrip(input: TableInput & { readonly frequencyHz: number }): StripLevel {
  return stripLevel(input, tableOf(input), input.frequencyHz);
}

/** The range over which the dip of a surface is judged, Hz: that of the boundary-element comparison. */
const EFFECT_FROM_HZ = 250;
const EFFECT_TO_HZ = 7000;
/** Step of the curve, decades: a reflection off furniture comes soon, so that 16 to a band follow its comb. */
const EFFECT_STEP_DECADES = THIRD_OCTAVE_DECADES / 16;

/**
 * Rise at 350 to 500 Hz that an exposed top adds, dB over exposed depth in m: computed with a two-dimensional
 * boundary-element model (center 0.12 m above the top, ear 0.5 m above it, 3 m away). The strip model has no
 * such rise. Held beyond 0.6 m.
 */
const RISE_DB: readonly (readonly [exposedDepthM: number, riseDb: number])[] = [
  [0, 0],
  [0.03, 1.7],
  [0.1, 2.9],
  [0.2, 4.1],
  [0.3, 3.9],
  [0.4, 3.4],
  [0.6, 4.3],
];

/** Straight lines between the points of a table, held at both ends. The table is in rising order. */
export function interpolate(table: readonly (readonly [number, number])[], x: number): number {
  let [lowX, lowY] = table[0] ?? [0, 0];
  if (x <= lowX) return lowY;
  for (const [highX, highY] of table) {
    if (x <= highX) return lowY + ((x - lowX) / (highX - lowX)) * (highY - lowY);
    [lowX, lowY] = [highX, highY];
  }
  return lowY;
}

/**
 * What the exposed top does to the sound: deepest third-octave dip 250 Hz to 7 kHz by the strip model, and the
 * low rise by the boundary-element table (scaled with the reflection).
 */
export function shelfEffect(
  input: ShelfInput,
  stepDecades = EFFECT_STEP_DECADES,
): { dipDb: number; dipHz: number; riseDb: number } {
  const strip = shelfOf(input);
  const { dipDb, dipHz } = stripExtremes(input, strip, stepDecades);
  const reflects = input.earAboveShelfM > 0 ? (input.reflection ?? 1) : 0;
  return { dipDb, dipHz, riseDb: reflects * interpolate(RISE_DB, strip.farEdgeM) };
}

/** Dip and peak that a table leaves at the seat, smoothed to a third octave, 250 Hz to 7 kHz. */
export function tableEffect(input: TableInput, stepDecades = EFFECT_STEP_DECADES): Extremes {
  return stripExtremes(input, tableOf(input), stepDecades);
}

const stripExtremes = (geometry: StripGeometry, strip: Strip, stepDecades: number): Extremes =>
  smoothedExtremes(EFFECT_FROM_HZ, EFFECT_TO_HZ, combinedPower(geometry, strip), stepDecades);
