/**
 * What a seat away from the design axis hears of a loudspeaker, relative to the design axis at the same
 * distance (model in radiation.ts).
 *
 * Valid from 300 Hz to 8 kHz and to 60 degrees; edge diffraction, break-up, waveguides and the room are left
 * out. The room fills deep nulls: read anything below -20 dB as -20.
 */
import { C_AIR } from './air.js';
import { cumulative, meanBetween, smoothPower, THIRD_OCTAVE_DECADES } from './bands.js';
import { boundedMemo } from './cache.js';
import { positive, within } from './input.js';
import { type Driver, type DriverLayout, type LayoutOverrides, layoutDrivers } from './layouts.js';
import { COARSE_GRID, type Grid, prepare, type Reference, response } from './radiation.js';
import { SPEECH_BANDS_HZ, speechLoss } from './speech.js';

export type OffAxisSource =
  /** A list that stays as it is: what is computed of it is remembered. */
  { readonly drivers: readonly Driver[] } | ({ readonly layout: DriverLayout } & LayoutOverrides);

export type Seat = {
  /** Degrees from the design axis, positive to the listener's right as the box is seen. */
  readonly azimuthDeg: number;
  /** Degrees above the design axis. */
  readonly elevationDeg?: number;
  readonly distanceM?: number;
  readonly speedOfSound?: number;
};

export type OffAxis = Dip & { speechLossDb: number };
/** Deepest point of a smoothed curve; the frequency is null where nothing dips. */
export type Dip = { dipDb: number; dipHz: number | null };
export type OffAxisCurve = { frequencyHz: Float64Array; levelDb: Float64Array; smoothedDb: Float64Array };

/** Usual listening distance, m. Common practice, no source. */
const DEFAULT_DISTANCE_M = 3;
/** The dip is sought between these, Hz: the range in which a hole in the response is heard as one. */
const DIP_FROM_HZ = 200;
const DIP_TO_HZ = 8000;
/** A dip shallower than this is rounding, dB. */
const ROUNDING_DB = 1e-9;

/** Enough for the seats and variants of one audit; older results leave. */
const RESULTS_KEPT = 1024;
const analyses = boundedMemo<Analysis>(RESULTS_KEPT);

type Analysis = {
  readonly power: Float64Array;
  readonly reference: Reference;
  readonly smoothed: Float64Array;
  readonly dip: Dip;
  /** Computed when first asked for: most of those who ask for the dip do not. */
  readonly speechLossDb: () => number;
};

/** A seat may not sit on a driver: it stands this part of the box's extent farther out. */
const NEAREST_MARGIN = 1e-6;

/** Fractional index of a frequency on a grid. */
function indexOf(grid: Grid, frequencyHz: number): number {
  return Math.log10(frequencyHz / (grid.frequencyHz[0] ?? 1)) / grid.stepDecades;
}

function bandLossesDb(grid: Grid, reference: Reference, power: Float64Array): number[] {
  const running = cumulative(power);
  const half = THIRD_OCTAVE_DECADES / grid.stepDecades / 2;
  return SPEECH_BANDS_HZ.map((centerHz) => {
    const index = indexOf(grid, centerHz);
    const on = meanBetween(reference.running, index - half, index + half);
    const off = meanBetween(running, index - half, index + half);
    return 10 * Math.log10(on / off);
  });
}

function analyze(source: OffAxisSource & Seat, grid: Grid): Analysis {
  const azimuthDeg = within('azimuthDeg', source.azimuthDeg, -90, 90);
  const elevationDeg = within('elevationDeg', source.elevationDeg ?? 0, -90, 90);
  const distanceM = positive('distanceM', source.distanceM ?? DEFAULT_DISTANCE_M);
  const c = positive('speedOfSound', source.speedOfSound ?? C_AIR);
  const prepared = prepare('drivers' in source ? source.drivers : layoutDrivers(source.layout, source), grid);
  return analyses(`${prepared.id} ${azimuthDeg} ${elevationDeg} ${distanceM} ${c}`, () => {
    within('distanceM', distanceM, prepared.extentM * (1 + NEAREST_MARGIN), Number.MAX_VALUE);
    const azimuth = (azimuthDeg * Math.PI) / 180;
    const elevation = (elevationDeg * Math.PI) / 180;
    const point = {
      x: distanceM * Math.sin(azimuth) * Math.cos(elevation),
      y: distanceM * Math.cos(azimuth) * Math.cos(elevation),
      z: distanceM * Math.sin(elevation),
    };
    const reference = prepared.reference(distanceM, c);
    const power = response(prepared.groups, grid, point, distanceM, c);
    const smoothed = smoothPower(ratioOf(power, reference), grid.stepDecades);
    let lossDb: number | undefined;
    const speechLossDb = (): number => {
      lossDb ??= speechLoss({ bandLossDb: bandLossesDb(grid, reference, power) }).lossDb;
      return lossDb;
    };
    return { power, reference, smoothed, dip: deepest(grid, smoothed, DIP_FROM_HZ, DIP_TO_HZ), speechLossDb };
  });
}

function ratioOf(power: Float64Array, reference: Reference): Float64Array {
  const ratio = new Float64Array(power.length);
  for (let i = 0; i < power.length; i += 1) ratio[i] = (power[i] as number) / (reference.power[i] as number);
  return ratio;
}

/** Deepest point of a smoothed power curve between two frequencies; the ends are interpolated. */
function deepest(grid: Grid, smoothed: Float64Array, fromHz: number, toHz: number): Dip {
  const from = indexOf(grid, fromHz);
  const to = indexOf(grid, toHz);
  let least = Number.POSITIVE_INFINITY;
  let at = from;
  const consider = (index: number, value: number): void => {
    if (value < least) {
      least = value;
      at = index;
    }
  };
  const between = (index: number): number => {
    const low = Math.floor(index);
    const here = smoothed[low] as number;
    return here + (index - low) * ((smoothed[low + 1] ?? here) - here);
  };
  consider(from, between(from));
  for (let i = Math.ceil(from); i <= to; i += 1) consider(i, smoothed[i] as number);
  consider(to, between(to));
  const dipDb = 10 * Math.log10(least);
  if (dipDb > -ROUNDING_DB) return { dipDb: 0, dipHz: null };
  return { dipDb, dipHz: (grid.frequencyHz[0] ?? 1) * 10 ** (at * grid.stepDecades) };
}

/**
 * Deepest third-octave-smoothed dip between 200 Hz and 8 kHz (0 or negative; its frequency is null when there
 * is none) and speech-weighted loss, both relative to the design axis at the same distance.
 * Angles -90 to 90 degrees, distance above 0; throws RangeError otherwise.
 */
export function offAxis(input: OffAxisSource & Seat, grid: Grid = COARSE_GRID): OffAxis {
  const { dip, speechLossDb } = analyze(input, grid);
  return {
    ...dip,
    get speechLossDb() {
      return speechLossDb();
    },
  };
}

/** Deepest smoothed dip between two frequencies within 160 Hz and 8 kHz: twin tweeters show theirs in the treble. */
export function offAxisDip(
  input: OffAxisSource & Seat & { readonly fromHz: number; readonly toHz: number },
  grid: Grid = COARSE_GRID,
): Dip {
  within('fromHz', input.fromHz, 160, DIP_TO_HZ);
  within('toHz', input.toHz, input.fromHz, DIP_TO_HZ);
  return deepest(grid, analyze(input, grid).smoothed, input.fromHz, input.toHz);
}

/** The response at a seat relative to the design axis, dB, raw and smoothed to a third octave. */
export function offAxisCurve(input: OffAxisSource & Seat, grid: Grid = COARSE_GRID): OffAxisCurve {
  const { power, reference, smoothed } = analyze(input, grid);
  const toDb = (power: number): number => 10 * Math.log10(power);
  return {
    frequencyHz: grid.frequencyHz,
    levelDb: ratioOf(power, reference).map(toDb),
    smoothedDb: smoothed.map(toDb),
  };
}

export type ThresholdInput = OffAxisSource & {
  /** Depth that counts as reached, dB, above 0. */
  readonly targetDipDb: number;
  readonly plane: 'horizontal' | 'vertical';
  /** Direction of the search; right or up when left out. */
  readonly side?: 'left' | 'right' | 'up' | 'down';
  readonly distanceM?: number;
  readonly speedOfSound?: number;
};

/** The model is not trusted beyond this angle. */
const SEARCH_TO_DEG = 60;
const FIRST_STEP_DEG = 0.5;
/** Steps grow with the angle, since dips deepen with its sine, but never pass over a layout's whole range. */
const STEP_GROWTH = 0.25;
const LARGEST_STEP_DEG = 3;
const ANGLE_RESOLUTION_DEG = 0.02;

/**
 * Angle from the design axis at which the smoothed dip first reaches `targetDipDb`, or null when it does not
 * within 60 degrees. Found by search on the full model; the closed form is `lobingAngle`.
 */
export function thresholdAngle(input: ThresholdInput): number | null {
  const targetDipDb = positive('targetDipDb', input.targetDipDb);
  const vertical = input.plane === 'vertical';
  const sign = input.side === 'left' || input.side === 'down' ? -1 : 1;
  const reached = (angleDeg: number): boolean => {
    const angle = sign * angleDeg;
    const seat = vertical ? { azimuthDeg: 0, elevationDeg: angle } : { azimuthDeg: angle };
    return analyze({ ...input, ...seat }, COARSE_GRID).dip.dipDb <= -targetDipDb;
  };
  let below = 0;
  while (below < SEARCH_TO_DEG) {
    const step = Math.min(LARGEST_STEP_DEG, Math.max(FIRST_STEP_DEG, below * STEP_GROWTH));
    let above = Math.min(SEARCH_TO_DEG, below + step);
    if (!reached(above)) {
      below = above;
      continue;
    }
    while (above - below > ANGLE_RESOLUTION_DEG) {
      const middle = (above + below) / 2;
      if (reached(middle)) above = middle;
      else below = middle;
    }
    return above;
  }
  return null;
}
