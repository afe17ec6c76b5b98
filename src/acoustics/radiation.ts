/**
 * Sound pressure of a set of baffled pistons with crossover filters at a point in front of them.
 *
 * Pressure: sum of weight * filter * 2 J1(k a sin(alpha)) / (k a sin(alpha)) * (R / r) * exp(-jk (r - R)), with
 * the exact path r from each driver. What depends on the loudspeaker alone is computed once and kept.
 */
import { cumulative, gridStepDecades, logGrid } from './bands.js';
import { boundedMemo, type Memo } from './cache.js';
import { CROSSOVER_FILTERS, type CrossoverFilter, highPass, lowPass } from './crossover.js';
import { finite, notNegative, oneOf, positive } from './input.js';
import type { Driver, FilterStage } from './layouts.js';
import { jincFast } from './special.js';

/** A complex quantity on a grid. */
type Curve = { readonly re: Float64Array; readonly im: Float64Array };
export type Grid = { readonly frequencyHz: Float64Array; readonly stepDecades: number };
const gridOf = (frequencyHz: Float64Array): Grid => ({
  frequencyHz,
  stepDecades: gridStepDecades(frequencyHz),
});

/** From the lower edge of the 160 Hz band to a little above the upper edge of the 8 kHz band. */
const BANDS_COVERED = 18;
const FROM_HZ = 1000 * 10 ** (-8.5 / 10);
const EXTRA_STEPS = 2;
/** @param steps a third-octave band, even, so that band edges and smoothing windows fall on grid points */
function bandGrid(steps: number): Grid {
  const intervals = steps * BANDS_COVERED + EXTRA_STEPS;
  return gridOf(logGrid(FROM_HZ, FROM_HZ * 10 ** (intervals / (10 * steps)), intervals + 1));
}

/** The working grid: agrees with the fine grid within 0.1 dB (tested). */
export const COARSE_GRID = bandGrid(20);
/** For what a small shift changes: agrees with the working grid within 0.3 dB, changes agree better (tested). */
export const SKETCH_GRID = bandGrid(8);
/** The grid of the project's reference tables: 4800 points, 80 Hz to 20 kHz. */
export const FINE_GRID = gridOf(logGrid(80, 20000, 4800));

/** Drivers that share their filters, with the filters' response on the grid. */
type Group = { readonly drivers: readonly Driver[] } & Curve;
/** A loudspeaker ready to be heard from anywhere. */
type Prepared = {
  /** One number a loudspeaker and grid, to remember results by. */
  readonly id: number;
  /** Distance of the outermost driver from the origin, m: a seat must be farther away. */
  readonly extentM: number;
  readonly groups: readonly Group[];
  readonly reference: (distanceM: number, c: number) => Reference;
};
/** Power on the design axis and its running integral: what a seat is compared with. */
export type Reference = { readonly power: Float64Array; readonly running: Float64Array };

/** Distances whose reference is kept with each prepared loudspeaker: more than the seats of one room. */
const REFERENCES_KEPT = 64;
/** Filters kept with each grid: more than the variants of one audit. */
const FILTERS_KEPT = 64;

/** What has been computed on a grid. */
type Workspace = {
  readonly filters: Memo<Curve>;
  readonly loudspeakers: WeakMap<readonly Driver[], Prepared>;
  /** For sums on the way to one response. */
  readonly totalIm: Float64Array;
  readonly sumRe: Float64Array;
  readonly sumIm: Float64Array;
};
const workspaces = new WeakMap<Grid, Workspace>();

function workspaceOf(grid: Grid): Workspace {
  const known = workspaces.get(grid);
  if (known !== undefined) return known;
  const line = (): Float64Array => new Float64Array(grid.frequencyHz.length);
  const workspace = {
    filters: boundedMemo<Curve>(FILTERS_KEPT),
    loudspeakers: new WeakMap(),
    totalIm: line(),
    sumRe: line(),
    sumIm: line(),
  };
  workspaces.set(grid, workspace);
  return workspace;
}

function stages(value: Driver['lowPass']): readonly FilterStage[] {
  if (value === undefined) return [];
  // A list has a method called `filter`, so `'filter' in value` would not tell the two apart.
  return 'frequencyHz' in value ? [value] : value;
}

const FILTER_KINDS = ['lowPass', 'highPass', 'allPass'] as const;
type FilterKind = (typeof FILTER_KINDS)[number];

function filterCurve(grid: Grid, kind: FilterKind, filter: CrossoverFilter, crossoverHz: number): Curve {
  return workspaceOf(grid).filters(`${kind} ${filter} ${crossoverHz}`, () => {
    if (kind === 'allPass') {
      const low = filterCurve(grid, 'lowPass', filter, crossoverHz);
      const high = filterCurve(grid, 'highPass', filter, crossoverHz);
      return {
        re: low.re.map((value, i) => value + (high.re[i] as number)),
        im: low.im.map((value, i) => value + (high.im[i] as number)),
      };
    }
    const pass = kind === 'lowPass' ? lowPass : highPass;
    const curve = {
      re: new Float64Array(grid.frequencyHz.length),
      im: new Float64Array(grid.frequencyHz.length),
    };
    grid.frequencyHz.forEach((frequencyHz, i) => {
      const response = pass(filter, crossoverHz, frequencyHz);
      curve.re[i] = response.re;
      curve.im[i] = response.im;
    });
    return curve;
  });
}

/** Product of all filters of a driver. */
function filtersOf(driver: Driver, grid: Grid): Curve {
  const re = new Float64Array(grid.frequencyHz.length).fill(1);
  const im = new Float64Array(grid.frequencyHz.length);
  for (const kind of FILTER_KINDS) {
    for (const stage of stages(driver[kind])) {
      const next = filterCurve(grid, kind, stage.filter, stage.frequencyHz);
      for (let i = 0; i < re.length; i += 1) {
        const [a, b, c, d] = [re[i] as number, im[i] as number, next.re[i] as number, next.im[i] as number];
        re[i] = a * c - b * d;
        im[i] = a * d + b * c;
      }
    }
  }
  return { re, im };
}

function checkDrivers(drivers: readonly Driver[]): void {
  if (drivers.length === 0) throw new RangeError('drivers is empty; accepted: a list of at least one driver');
  drivers.forEach((driver, i) => {
    finite(`drivers[${i}].xM`, driver.xM);
    finite(`drivers[${i}].zM`, driver.zM);
    finite(`drivers[${i}].yM`, driver.yM ?? 0);
    notNegative(`drivers[${i}].radiusM`, driver.radiusM);
    finite(`drivers[${i}].weight`, driver.weight);
    for (const name of FILTER_KINDS) {
      for (const stage of stages(driver[name])) {
        oneOf(`drivers[${i}].${name}.filter`, stage.filter, CROSSOVER_FILTERS);
        positive(`drivers[${i}].${name}.frequencyHz`, stage.frequencyHz);
      }
    }
  });
}

/** A reference must have sound at every frequency: all levels are relative to it. */
function audible(power: Float64Array): Reference {
  if (power.every((each) => each > 0)) return { power, running: cumulative(power) };
  throw new RangeError(
    'drivers cancel on the design axis; accepted: drivers whose weights and filters add there at every frequency',
  );
}

/** Filters of a driver as text: drivers with the same text form a group. */
function filterNames(driver: Driver): string {
  const named = (kind: FilterKind): string =>
    stages(driver[kind])
      .map((stage) => `${kind} ${stage.filter} ${stage.frequencyHz}`)
      .join();
  return FILTER_KINDS.map(named).join();
}

let lastId = 0;

/** What does not depend on the seat, once for each list of drivers. Throws RangeError for a bad driver. */
export function prepare(drivers: readonly Driver[], grid: Grid): Prepared {
  const { loudspeakers } = workspaceOf(grid);
  const known = loudspeakers.get(drivers);
  if (known !== undefined) return known;
  checkDrivers(drivers);
  const byFilter = new Map<string, Driver[]>();
  for (const driver of drivers) {
    const names = filterNames(driver);
    const same = byFilter.get(names);
    if (same === undefined) byFilter.set(names, [driver]);
    else same.push(driver);
  }
  const groups = [...byFilter.values()].map((same) => ({
    drivers: same,
    ...filtersOf(same[0] as Driver, grid),
  }));
  const references = boundedMemo<Reference>(REFERENCES_KEPT);
  lastId += 1;
  const prepared: Prepared = {
    id: lastId,
    groups,
    extentM: Math.max(...drivers.map((driver) => Math.hypot(driver.xM, driver.yM ?? 0, driver.zM))),
    reference: (distanceM, c) =>
      references(`${distanceM} ${c}`, () =>
        audible(response(groups, grid, { x: 0, y: distanceM, z: 0 }, distanceM, c)),
      ),
  };
  loudspeakers.set(drivers, prepared);
  return prepared;
}

type Point = { readonly x: number; readonly y: number; readonly z: number };
/** One driver as a point hears it. */
type Ray = { readonly pathM: number; readonly aSin: number; gain: number };
/** Paths closer than this are the same path: the two mids of a symmetric box seen from its axis, m. */
const SAME_PATH_M = 1e-12;

function rays(drivers: readonly Driver[], point: Point, distanceM: number): Ray[] {
  const list: Ray[] = [];
  for (const driver of drivers) {
    const dx = point.x - driver.xM;
    const dy = point.y - (driver.yM ?? 0);
    const dz = point.z - driver.zM;
    const r = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const aSin = (driver.radiusM * Math.sqrt(dx * dx + dz * dz)) / r;
    const pathM = r - distanceM;
    const gain = (driver.weight * distanceM) / r;
    const twin = list.find(
      (ray) => Math.abs(ray.pathM - pathM) < SAME_PATH_M && Math.abs(ray.aSin - aSin) < SAME_PATH_M,
    );
    if (twin === undefined) list.push({ pathM, aSin, gain });
    else twin.gain += gain;
  }
  return list;
}

/** Power of the pressure at a point on the whole grid. The hot loop of the project. */
export function response(
  groups: readonly Group[],
  grid: Grid,
  point: Point,
  distanceM: number,
  c: number,
): Float64Array {
  const { frequencyHz } = grid;
  const count = frequencyHz.length;
  const totalRe = new Float64Array(count);
  const { totalIm, sumRe, sumIm } = workspaceOf(grid);
  totalIm.fill(0);
  const waveNumberPerHz = (2 * Math.PI) / c;
  for (const group of groups) {
    sumRe.fill(0);
    sumIm.fill(0);
    for (const ray of rays(group.drivers, point, distanceM)) {
      const phasePerHz = waveNumberPerHz * ray.pathM;
      const argumentPerHz = waveNumberPerHz * ray.aSin;
      for (let i = 0; i < count; i += 1) {
        const f = frequencyHz[i] as number;
        const amplitude = ray.gain * jincFast(argumentPerHz * f);
        const phase = phasePerHz * f;
        sumRe[i] = (sumRe[i] as number) + amplitude * Math.cos(phase);
        sumIm[i] = (sumIm[i] as number) - amplitude * Math.sin(phase);
      }
    }
    for (let i = 0; i < count; i += 1) {
      const re = sumRe[i] as number;
      const im = sumIm[i] as number;
      const filterRe = group.re[i] as number;
      const filterIm = group.im[i] as number;
      totalRe[i] = (totalRe[i] as number) + re * filterRe - im * filterIm;
      totalIm[i] = (totalIm[i] as number) + re * filterIm + im * filterRe;
    }
  }
  const power = totalRe;
  for (let i = 0; i < count; i += 1) {
    const re = totalRe[i] as number;
    const im = totalIm[i] as number;
    power[i] = re * re + im * im;
  }
  return power;
}
