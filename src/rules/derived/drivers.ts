/** The drivers of this very center, from what is told and the usual dimensions of its layout. */

import type { CrossoverFilter } from '../../acoustics/crossover.js';
import {
  type Driver,
  type DriverLayout,
  LAYOUT_DEFAULTS,
  layoutDrivers,
  PISTON_RADIUS_M,
} from '../../acoustics/layouts.js';
import { METERS_PER_INCH } from '../../acoustics/practice.js';
import { interpolate } from '../../acoustics/shelf.js';
import type { Reader } from '../../compute/reader.js';
import { requireCenter } from './places.js';

export const DRIVER_FACTS = [
  'centerCount',
  'centerLayout',
  'centerOrientation',
  'fullRangeMidSide',
  'centerDriverSpacing',
  'centerTweeterSpacing',
  'centerMidSize',
  'centerCrossover',
  'centerLowCrossover',
  'centerCrossoverSlope',
] as const;
export type DriverFact = (typeof DRIVER_FACTS)[number];

/** Nominal driver size, inch, to piston radius, m: the table of the layouts, proportional beyond its ends. */
const RADIUS_BY_INCH: readonly (readonly [inch: number, radiusM: number])[] = [
  [0, 0],
  [3, PISTON_RADIUS_M.inch3],
  [4, PISTON_RADIUS_M.inch4],
  [5.25, PISTON_RADIUS_M.inch5],
  [6.5, PISTON_RADIUS_M.inch6],
  [8, PISTON_RADIUS_M.inch8],
  [80, 10 * PISTON_RADIUS_M.inch8],
];

/** How much these dimensions vary from model to model, as log-sd: the ranges of the table of layouts. */
const SPACING_SPREAD = 0.2;
const MID_SIZE_SPREAD = 0.2;
/** Nominal size of the voice cones where nobody told, inch: with the radius in the table of layouts. */
const USUAL_MID_INCH: Partial<Record<DriverLayout, number>> = {
  'woofer-mid-tweeter-woofer': 4,
  'full-range': 3,
};
const COMMONEST_MID_INCH = 5.25;

function midRadiusM(r: Reader<'centerMidSize'>, layout: DriverLayout): number {
  const usualInch = USUAL_MID_INCH[layout] ?? COMMONEST_MID_INCH;
  const nominalM = r.numberOr('centerMidSize', {
    value: usualInch * METERS_PER_INCH,
    spread: MID_SIZE_SPREAD,
  });
  return interpolate(RADIUS_BY_INCH, nominalM / METERS_PER_INCH);
}

/** Filters by slope, dB per octave; those of even order are taken as in phase, as is common. */
const FILTERS = { '12': 'LR2', '18': 'BW3', '24': 'LR4' } as const;
/** Layouts in which cones beside a tweeter play together around the crossover, so that its slope tells. */
const SLOPE_TELLS: ReadonlySet<DriverLayout> = new Set([
  'mid-tweeter-mid',
  'horizontal-two-way',
  'two-and-a-half-way',
]);
/** What the slope moves a dip by where nobody told it, as log-sd: from 24 to 12 dB per octave. Computed. */
const SLOPE_DOUBT = 0.15;

function crossoverFilter(r: Reader<DriverFact>, layout: DriverLayout): CrossoverFilter {
  if (!SLOPE_TELLS.has(layout)) return FILTERS['24'];
  if (r.toldChoice('centerCrossoverSlope') === undefined) r.doubt(SLOPE_DOUBT);
  return FILTERS[r.choiceOr('centerCrossoverSlope', '24')];
}

export function drivers(r: Reader<DriverFact>): readonly Driver[] {
  requireCenter(r);
  const layout = r.choice('centerLayout');
  const usual = LAYOUT_DEFAULTS[layout];
  const spacing = (value: number) => ({ value, spread: SPACING_SPREAD });
  return layoutDrivers(
    layout,
    {
      filter: crossoverFilter(r, layout),
      ...given({
        spacingM: r.numberOr('centerDriverSpacing', spacing(usual.spacingM)),
        tweeterSpacingM: r.numberOr('centerTweeterSpacing', spacing(usual.tweeterSpacingM)),
        crossoverHz: usual.crossoverHz === 0 ? 0 : r.number('centerCrossover'),
        lowCrossoverHz: usual.lowCrossoverHz === 0 ? 0 : r.number('centerLowCrossover'),
        midRadiusM: midRadiusM(r, layout),
      }),
    },
    // A box with its drivers above each other, told to stand upright, stands as it was meant.
    layout === 'vertical-two-way' && r.choice('centerOrientation') === 'upright'
      ? 'level'
      : r.choice('centerOrientation'),
    layout === 'two-and-a-half-way' ? r.choice('fullRangeMidSide') : 'right',
  );
}

/** Zero stands where a layout has no such dimension; it is left out. */
function given<T extends Readonly<Record<string, number>>>(values: T): Partial<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value > 0)) as Partial<T>;
}

/** Only the dome's size matters here: boxes are taken as small sources. */
export function twinBoxes(spacingM: number, way: 'beside' | 'above'): readonly Driver[] {
  return [-spacingM / 2, spacingM / 2].map((offsetM) => ({
    xM: way === 'beside' ? offsetM : 0,
    zM: way === 'above' ? offsetM : 0,
    radiusM: PISTON_RADIUS_M.dome,
    weight: 0.5,
  }));
}

/** True when left and right hear the same: every driver has its twin on the other side. */
export function isMirrored(box: readonly Driver[]): boolean {
  const rest = ({ xM: _xM, ...others }: Driver): string => JSON.stringify(others);
  return box.every((one) => box.some((other) => other.xM === -one.xM && rest(other) === rest(one)));
}
