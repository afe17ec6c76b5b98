/**
 * The ways drivers are arranged on the front of a center loudspeaker, as lists of drivers with filters.
 * Positions in meters on the baffle: x right, z up, y out of the baffle, as the listener sees it.
 */
import { boundedMemo } from './cache.js';
import { CROSSOVER_FILTERS, type CrossoverFilter } from './crossover.js';
import { oneOf, positive } from './input.js';

export type DriverLayout =
  | 'mid-tweeter-mid'
  | 'nested-mid-tweeter-mid'
  | 'two-and-a-half-way'
  | 'woofer-mid-tweeter-woofer'
  | 'tweeter-mid-mid-tweeter'
  | 'tweeter-mid-tweeter'
  | 'paired-boxes'
  | 'coaxial'
  | 'vertical-two-way'
  | 'horizontal-two-way'
  | 'full-range';

export type FilterStage = { readonly filter: CrossoverFilter; readonly frequencyHz: number };
type Stages = FilterStage | readonly FilterStage[];

export type Driver = {
  readonly xM: number;
  readonly zM: number;
  /** Depth in front of the baffle; 0 when left out. */
  readonly yM?: number;
  readonly radiusM: number;
  /** Amplitude; a pair of equal drivers in parallel carries 0.5 each. */
  readonly weight: number;
  readonly lowPass?: Stages;
  readonly highPass?: Stages;
  readonly allPass?: Stages;
};

export type LayoutOverrides = {
  /** Between the two low drivers (mid to dome for a two-way), center to center. */
  readonly spacingM?: number;
  /** Between the domes; the height of the dome for nested and mid-over-dome layouts. */
  readonly tweeterSpacingM?: number;
  readonly crossoverHz?: number;
  /** Woofer crossover of a three-way, roll-off of the second mid of a 2.5-way. */
  readonly lowCrossoverHz?: number;
  readonly filter?: CrossoverFilter;
  readonly midRadiusM?: number;
};

export type Rotation = 'level' | 'upright' | 'upside-down';
export type Side = 'left' | 'right';

/** Effective piston radius by nominal driver size, m. From memory (typical cone diameters). */
export const PISTON_RADIUS_M = {
  inch3: 0.032,
  inch4: 0.041,
  inch5: 0.052,
  inch6: 0.065,
  inch8: 0.082,
  dome: 0.013,
} as const;

export type LayoutDefaults = Required<LayoutOverrides>;

/** Zero stands where a layout has no such dimension or crossover. */
const NONE = 0;
const COMMON = {
  spacingM: NONE,
  tweeterSpacingM: NONE,
  crossoverHz: 2500,
  lowCrossoverHz: NONE,
  filter: 'LR4',
  midRadiusM: PISTON_RADIUS_M.inch5,
} as const satisfies LayoutDefaults;

/**
 * Typical dimensions of each layout: common practice, no source. A 5.25 inch mid where the size is open.
 * Every value may be overridden by what is measured on the box.
 */
export const LAYOUT_DEFAULTS: Record<DriverLayout, LayoutDefaults> = {
  'mid-tweeter-mid': { ...COMMON, spacingM: 0.26 },
  'nested-mid-tweeter-mid': { ...COMMON, spacingM: 0.155, tweeterSpacingM: 0.1 },
  'two-and-a-half-way': { ...COMMON, spacingM: 0.26, lowCrossoverHz: 600 },
  'woofer-mid-tweeter-woofer': {
    ...COMMON,
    spacingM: 0.4,
    tweeterSpacingM: 0.1,
    lowCrossoverHz: 500,
    midRadiusM: PISTON_RADIUS_M.inch4,
  },
  'tweeter-mid-mid-tweeter': { ...COMMON, spacingM: 0.18, tweeterSpacingM: 0.46 },
  'tweeter-mid-tweeter': { ...COMMON, tweeterSpacingM: 0.3 },
  'paired-boxes': { ...COMMON, spacingM: 0.3, tweeterSpacingM: 0.6 },
  coaxial: COMMON,
  'vertical-two-way': { ...COMMON, spacingM: 0.15 },
  'horizontal-two-way': { ...COMMON, spacingM: 0.15 },
  'full-range': { ...COMMON, crossoverHz: NONE, midRadiusM: PISTON_RADIUS_M.inch3 },
};

export const DRIVER_LAYOUTS = Object.keys(LAYOUT_DEFAULTS) as readonly DriverLayout[];

/** Woofers of the three-way layout: 6.5 inch. Common practice, no source. */
const WOOFER_RADIUS_M = PISTON_RADIUS_M.inch6;

type Parts = {
  readonly low: FilterStage;
  readonly high: FilterStage;
  readonly mid: (xM: number, zM: number, weight: number) => Driver;
  readonly tweeter: (xM: number, zM: number, weight: number) => Driver;
};

/** Mids and domes of a two-way with one crossover. */
function twoWayParts(values: LayoutDefaults): Parts {
  const stage: FilterStage = { filter: values.filter, frequencyHz: values.crossoverHz };
  // A second-order Butterworth pair cancels at its crossover unless the dome is inverted.
  const polarity = values.filter === 'BW2' ? -1 : 1;
  return {
    low: { filter: values.filter, frequencyHz: values.lowCrossoverHz },
    high: stage,
    mid: (xM, zM, weight) => ({ xM, zM, weight, radiusM: values.midRadiusM, lowPass: stage }),
    tweeter: (xM, zM, weight) => ({
      xM,
      zM,
      weight: weight * polarity,
      radiusM: PISTON_RADIUS_M.dome,
      highPass: stage,
    }),
  };
}

function pair(distanceM: number, make: (xM: number, zM: number, weight: number) => Driver): Driver[] {
  return [make(-distanceM / 2, 0, 0.5), make(distanceM / 2, 0, 0.5)];
}

/** Mid and dome side by side along x. */
function twoWayInLine(values: LayoutDefaults): Driver[] {
  const { mid, tweeter } = twoWayParts(values);
  return [mid(-values.spacingM / 2, 0, 1), tweeter(values.spacingM / 2, 0, 1)];
}

function twoAndAHalfWay(values: LayoutDefaults, fullRangeMid: Side): Driver[] {
  const { mid, tweeter, high } = twoWayParts(values);
  const half = values.spacingM / 2;
  const full = fullRangeMid === 'right' ? half : -half;
  const rolledOff: FilterStage = { filter: 'BW2', frequencyHz: values.lowCrossoverHz };
  return [mid(full, 0, 1), { ...mid(-full, 0, 1), lowPass: [high, rolledOff] }, tweeter(0, 0, 1)];
}

/** Woofers outside; the all-pass of the upper crossover keeps their phase with the mid above it. */
function threeWay(values: LayoutDefaults): Driver[] {
  const { mid, tweeter, low, high } = twoWayParts(values);
  const half = values.tweeterSpacingM / 2;
  const woofer = (xM: number, zM: number, weight: number): Driver => ({
    xM,
    zM,
    weight,
    radiusM: WOOFER_RADIUS_M,
    lowPass: low,
    allPass: high,
  });
  return [
    ...pair(values.spacingM, woofer),
    { ...mid(0, -half, 1), highPass: low },
    { ...tweeter(0, half, 1), highPass: [low, high] },
  ];
}

function build(layout: DriverLayout, values: LayoutDefaults, fullRangeMid: Side): Driver[] {
  const { mid, tweeter } = twoWayParts(values);
  switch (layout) {
    case 'mid-tweeter-mid':
    case 'nested-mid-tweeter-mid':
      return [...pair(values.spacingM, mid), tweeter(0, values.tweeterSpacingM, 1)];
    case 'two-and-a-half-way':
      return twoAndAHalfWay(values, fullRangeMid);
    case 'woofer-mid-tweeter-woofer':
      return threeWay(values);
    case 'tweeter-mid-mid-tweeter':
    case 'paired-boxes':
      return [...pair(values.spacingM, mid), ...pair(values.tweeterSpacingM, tweeter)];
    case 'tweeter-mid-tweeter':
      return [mid(0, 0, 1), ...pair(values.tweeterSpacingM, tweeter)];
    case 'coaxial':
      return [mid(0, 0, 1), tweeter(0, 0, 1)];
    case 'horizontal-two-way':
      return twoWayInLine(values);
    case 'vertical-two-way':
      return turn(twoWayInLine(values), 'upright');
    case 'full-range':
      return [{ xM: 0, zM: 0, radiusM: values.midRadiusM, weight: 1 }];
  }
}

/** Upright: stood on its left end, so that what was right is on top. Upside-down: turned half around. */
function turn(drivers: readonly Driver[], rotation: Rotation): Driver[] {
  if (rotation === 'level') return [...drivers];
  return drivers.map((driver) => {
    const { xM, zM } = driver;
    return rotation === 'upright' ? { ...driver, xM: -zM, zM: xM } : { ...driver, xM: -xM, zM: -zM };
  });
}

/** What a layout's dimensions become with the caller's overrides. */
function withOverrides(layout: DriverLayout, overrides: LayoutOverrides): LayoutDefaults {
  const defaults = LAYOUT_DEFAULTS[layout];
  const dimension = (name: Exclude<keyof LayoutDefaults, 'filter'>): number => {
    const given = overrides[name];
    return given === undefined ? defaults[name] : positive(name, given);
  };
  // With a single mid the only spacing there is lies between the domes, whichever name it was given.
  const domesOnly =
    layout === 'tweeter-mid-tweeter' &&
    overrides.tweeterSpacingM === undefined &&
    overrides.spacingM !== undefined;
  return {
    spacingM: dimension('spacingM'),
    tweeterSpacingM: dimension(domesOnly ? 'spacingM' : 'tweeterSpacingM'),
    crossoverHz: dimension('crossoverHz'),
    lowCrossoverHz: dimension('lowCrossoverHz'),
    midRadiusM: dimension('midRadiusM'),
    filter: oneOf('filter', overrides.filter ?? defaults.filter, CROSSOVER_FILTERS),
  };
}

/** Enough for the layouts and variants of one audit; older ones leave. */
const LAYOUTS_KEPT = 64;
const known = boundedMemo<readonly Driver[]>(LAYOUTS_KEPT);

/**
 * The drivers of a layout, with defaults from `LAYOUT_DEFAULTS` for what `overrides` leaves out. The same list
 * is handed out for the same dimensions: what is computed of a loudspeaker is remembered by its list.
 * @param fullRangeMid the side of a 2.5-way, as the listener sees it, whose mid is not rolled off
 * Throws RangeError for an unknown layout or a dimension that is not above 0.
 */
export function layoutDrivers(
  layout: DriverLayout,
  overrides: LayoutOverrides = {},
  rotation: Rotation = 'level',
  fullRangeMid: Side = 'right',
): readonly Driver[] {
  oneOf('layout', layout, DRIVER_LAYOUTS);
  const { spacingM, tweeterSpacingM, crossoverHz, lowCrossoverHz, filter, midRadiusM } = overrides;
  const key = `${layout} ${rotation} ${fullRangeMid} ${spacingM} ${tweeterSpacingM} ${crossoverHz} ${lowCrossoverHz} ${filter} ${midRadiusM}`;
  return known(key, () => turn(build(layout, withOverrides(layout, overrides), fullRangeMid), rotation));
}
