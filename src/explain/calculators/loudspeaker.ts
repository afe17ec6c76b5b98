/** Calculators about the loudspeaker itself: pairs of drivers and what seats off the axis hear. */
import { CROSSOVER_FILTERS } from '../../acoustics/crossover.js';
import { DRIVER_LAYOUTS, LAYOUT_DEFAULTS, type LayoutOverrides } from '../../acoustics/layouts.js';
import { lobingAngle, pairNull } from '../../acoustics/lobing.js';
import { offAxis } from '../../acoustics/offaxis.js';
import type { Problem } from '../../lib/user-error.js';
import { frequency, frontAngle, length } from './bounds.js';
import { define } from './calculator.js';
import { driversInput } from './drivers-input.js';
import { choice, number, optional, usually } from './input-kinds.js';

const spacingM = length('distance between the two drivers, center to center', '0.26');
const filterInput = choice(
  CROSSOVER_FILTERS,
  'kind of crossover: Linkwitz-Riley (LR) or Butterworth (BW) and its order',
  'LR4',
);

export const pairNullCalculator = define({
  name: 'pair-null',
  title: 'First null of two drivers that play the same sound',
  answers: 'At which frequency do two equal drivers first cancel for a seat at this angle?',
  inputs: {
    spacingM,
    angleDeg: frontAngle('direction of the seat from the middle axis, in the plane of the two drivers', '20'),
  },
  outputs: { firstNullHz: { unit: 'Hz', meaning: 'first frequency that cancels; none on the axis' } },
  formula: 'f = c / (2 d sin(angle)), c = 343.2 m/s',
  validity: 'Two equal point sources in phase, seat far away compared with their spacing.',
  source: { cite: 'two-source interference, far field (closed form)', mark: 'computed' },
  example: 'spacingM=0.26 angleDeg=30',
  run: (values) => pairNull(values),
});

export const lobingAngleCalculator = define({
  name: 'lobing-angle',
  title: 'Angle at which a mid-tweeter-mid first loses so much',
  answers: 'How far off the axis may a seat be before the dip of an in-line mid-tweeter-mid gets this deep?',
  inputs: {
    spacingM,
    crossoverHz: frequency('crossover between mids and tweeter', '2500'),
    filter: usually('LR4', filterInput),
    targetDipDb: usually(
      6,
      number('depth of the dip that counts as reached', '6', { unit: 'dB', above: 0, max: 200 }),
    ),
  },
  outputs: { angleDeg: { unit: 'deg', meaning: 'from the axis; none where the dip never gets that deep' } },
  formula:
    'angle = asin(K c / (fc d)); K from the deepest dip of |cos(pi x K) + x^n| / (1 + x^n) over x = f / fc (n = 2, 4, 8 for LR2, LR4, LR8 and 2 for BW2); sqrt((cos^2 + x^6) / (1 + x^6)) for BW3',
  validity:
    'Symmetric pair of point sources with the tweeter between them, seat far away, no smoothing. The calculator off-axis adds driver sizes, distances and smoothing.',
  source: {
    cite: 'closed form from the crossover filters, checked against the full model of this project',
    mark: 'computed',
  },
  example: 'spacingM=0.26 crossoverHz=2500',
  run: (values) => lobingAngle(values),
});

const OVERRIDES = ['spacingM', 'tweeterSpacingM', 'crossoverHz', 'lowCrossoverHz', 'filter'] as const;

type OffAxisValues = {
  readonly layout: (typeof DRIVER_LAYOUTS)[number] | undefined;
  readonly drivers: unknown;
} & { readonly [K in (typeof OVERRIDES)[number]]: unknown };

const AXIS_EXAMPLE = 'layout=mid-tweeter-mid azimuthDeg=20';

function sourceConflicts(values: OffAxisValues): Problem[] {
  const where = 'calc off-axis';
  const example = `center-audit calc off-axis ${AXIS_EXAMPLE}`;
  if (values.layout === undefined && values.drivers === undefined) {
    const accepted = `layout (${DRIVER_LAYOUTS.join(', ')}) or drivers`;
    return [{ where, what: 'neither layout nor drivers is given', accepted, example }];
  }
  if (values.drivers === undefined) return [];
  const extra = ['layout' as const, ...OVERRIDES].filter((key) => values[key] !== undefined);
  if (extra.length === 0) return [];
  const what = `${extra.join(', ')} cannot be given together with drivers`;
  return [{ where, what, accepted: 'either a layout with its dimensions, or a list of drivers', example }];
}

/** Dimensions that this layout does not have: a two-way has no second crossover. */
function idleOverrides(values: OffAxisValues): string[] {
  if (values.layout === undefined) return [];
  const usual = LAYOUT_DEFAULTS[values.layout];
  const single = values.layout === 'tweeter-mid-tweeter';
  return OVERRIDES.filter(
    (key) => values[key] !== undefined && usual[key] === 0 && !(single && key === 'spacingM'),
  );
}

export const offAxisCalculator = define({
  name: 'off-axis',
  title: 'What a seat off the axis loses',
  answers:
    'How deep is the hole that this driver layout leaves at a seat, where is it, and what does speech lose?',
  inputs: {
    layout: optional(
      choice(DRIVER_LAYOUTS, 'arrangement of the drivers, with usual dimensions', 'mid-tweeter-mid'),
    ),
    drivers: optional(driversInput),
    azimuthDeg: frontAngle('direction of the seat from the axis, right positive', '20'),
    elevationDeg: usually(0, frontAngle('direction of the seat above the axis', '5')),
    distanceM: usually(3, length('distance of the seat', '3')),
    spacingM: optional({ ...spacingM, meaning: 'distance between the two low drivers' }),
    tweeterSpacingM: optional(
      length('distance between the tweeters, or height of the tweeter above the mids', '0.46'),
    ),
    crossoverHz: optional(frequency('crossover between mids and tweeter', '2500')),
    lowCrossoverHz: optional(
      frequency('crossover between woofers and mid, or roll-off of the second mid', '500'),
    ),
    filter: optional(filterInput),
  },
  outputs: {
    dipDb: { unit: 'dB', meaning: 'deepest third-octave-smoothed dip between 200 Hz and 8 kHz' },
    dipHz: { unit: 'Hz', meaning: 'where that dip is; none where nothing dips' },
    speechLossDb: { unit: 'dB', meaning: 'speech-weighted loss against the design axis' },
  },
  formula:
    'p = sum of weight * filter * 2 J1(k a sin(alpha)) / (k a sin(alpha)) * (R / r) * exp(-jk (r - R)) with exact paths r; level against the design axis at the same distance; third-octave power smoothing; speech by ANSI S3.5 band importance',
  validity:
    'Pistons in a large baffle, 300 Hz to 8 kHz, to 60 degrees. Left out: cabinet edges, cone break-up, waveguides, the room. Read anything below -20 dB as -20: the room fills deep nulls.',
  source: {
    cite: 'piston directivity (textbook) and crossover filters, summed with exact distances; usual dimensions are common practice',
    mark: 'computed',
  },
  example: AXIS_EXAMPLE,
  conflicts: sourceConflicts,
  run: (values, { tell }) => {
    const { layout, drivers, azimuthDeg, elevationDeg, distanceM } = values;
    const seat = { azimuthDeg, elevationDeg, distanceM };
    if (drivers !== undefined) return offAxis({ drivers, ...seat });
    if (layout === undefined) throw new Error('a layout or drivers');
    const idle = idleOverrides(values);
    if (idle.length > 0) tell(`${layout} has no ${idle.join(', ')}: not used.`);
    const overrides = Object.fromEntries(
      OVERRIDES.flatMap((key) => (values[key] === undefined ? [] : [[key, values[key]]])),
    ) as LayoutOverrides;
    return offAxis({ layout, ...overrides, ...seat });
  },
});
