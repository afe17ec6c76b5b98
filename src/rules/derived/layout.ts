/** What the driver layout of the center does at the seats, sideways and vertically. */
import { elevation } from '../../acoustics/elevation.js';
import { DEEPEST_DB, heardDepthDb } from '../../acoustics/holes.js';
import type { Driver } from '../../acoustics/layouts.js';
import { offAxis, offAxisDip, thresholdAngle } from '../../acoustics/offaxis.js';
import type { Grid } from '../../acoustics/radiation.js';
import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';
import { DRIVER_FACTS, type DriverFact, drivers, isMirrored, twinBoxes } from './drivers.js';
import {
  BEARING_FACTS,
  type Bearing,
  type BearingFact,
  bearings,
  headAt,
  mainBearing,
  requireCenter,
} from './places.js';

export const LAYOUT_FACTS = [...BEARING_FACTS, ...DRIVER_FACTS] as const;
type LayoutFact = (typeof LAYOUT_FACTS)[number];

/** A dip shallower than this has no frequency worth naming, dB. Our own choice. */
const NAMED_DIP_DB = 0.5;
/** Stands for "at no angle a seat can have". */
const NEVER_DEG = 90;
/** Treble, where tweeters play: our own bounds within the range of the off-axis model, Hz. */
const TREBLE_FROM_HZ = 2000;
const TREBLE_TO_HZ = 8000;
/** Half the width of a hand: nobody holds the head still to less, m to each side. Our own choice. */
const HEAD_SWAY_M = 0.05;

interface Box {
  readonly drivers: readonly Driver[];
  /** Both sides hear the same: the mirror seat need not be computed again. */
  readonly mirrored: boolean;
}

function boxOf(r: Reader<DriverFact>): Box {
  const found = r.from(drivers);
  return { drivers: found, mirrored: isMirrored(found) };
}

export interface SeatDip {
  readonly bearing: Bearing;
  readonly dipDb: number;
  readonly dipHz: number | undefined;
  readonly speechLossDb: number;
}

function dipAt(box: Box, bearing: Bearing, grid: Grid | undefined): SeatDip {
  const { distanceM } = bearing;
  const azimuthDeg = box.mirrored ? Math.abs(bearing.azimuthDeg) : bearing.azimuthDeg;
  const found = offAxis({ drivers: box.drivers, azimuthDeg, distanceM }, grid);
  const dipDb = heardDepthDb(found.dipDb);
  return {
    bearing,
    dipDb,
    dipHz: dipDb >= NAMED_DIP_DB ? (found.dipHz ?? undefined) : undefined,
    get speechLossDb() {
      return found.speechLossDb;
    },
  };
}

/** The models of drivers hold so far off the axis, deg: beyond, the box itself shades them. Common practice, no source. */
const VALID_TO_DEG = 60;
/** Seats at which a dip can be told: those within what the models hold for. */
function judged(r: Reader<BearingFact>): readonly Bearing[] {
  const within = r.from(bearings).filter(({ azimuthDeg }) => Math.abs(azimuthDeg) <= VALID_TO_DEG);
  if (within.length === 0)
    throw new RangeError(
      `no seat lies within ${VALID_TO_DEG} degrees of the axis of the center: what its drivers do there is not computed`,
    );
  return within;
}

/** Sideways only: what height does to it is the matter of the aim. */
export function layoutAtSeats(r: Reader<LayoutFact>): readonly SeatDip[] {
  const box = r.from(boxOf);
  return r.from(judged).map((bearing) => dipAt(box, bearing, r.sketchGrid()));
}

function worstSeat(r: Reader<LayoutFact>): SeatDip {
  const box = r.from(boxOf);
  const at = (bearing: Bearing): SeatDip => dipAt(box, bearing, r.sketchGrid());
  return at(r.worst(r.from(judged), (bearing) => at(bearing).dipDb).item);
}

/** At the seat where somebody measured: the worst one where that was off to the side. 0 where the layout makes none. */
export function layoutHoleHz(r: Reader<LayoutFact | 'measuredHoleSeat'>): number {
  const aside = r.choice('measuredHoleSeat') === 'side';
  const found = aside ? r.from(worstSeat) : dipAt(r.from(boxOf), r.from(mainBearing), r.sketchGrid());
  return found.dipDb < LIMITS.dipDb.noticeable ? 0 : (found.dipHz ?? 0);
}

/** Speech lost at the worst seat. */
export function layoutSpeechLoss(r: Reader<LayoutFact>): number {
  const box = r.from(boxOf);
  return Math.max(
    0,
    r.worst(r.from(judged), (bearing) => dipAt(box, bearing, r.sketchGrid()).speechLossDb).badness,
  );
}

type Apart = 'tweeters' | 'shared-band' | 'none';
/** What lies side by side in a box that lies as its maker meant it. */
const SIDE_BY_SIDE: Record<string, Apart> = {
  'tweeter-mid-mid-tweeter': 'tweeters',
  'tweeter-mid-tweeter': 'tweeters',
  'paired-boxes': 'tweeters',
  'mid-tweeter-mid': 'shared-band',
  'nested-mid-tweeter-mid': 'shared-band',
  'two-and-a-half-way': 'shared-band',
  'woofer-mid-tweeter-woofer': 'shared-band',
  'horizontal-two-way': 'shared-band',
};

const KIND_FACTS = ['centerCount', 'centerLayout', 'centerOrientation', 'centerTweeterSpacing'] as const;
function layoutKind(r: Reader<(typeof KIND_FACTS)[number]>) {
  requireCenter(r);
  const upright = r.choice('centerOrientation') === 'upright';
  // Who tells how far its tweeters are apart has told that it has two.
  if (r.toldChoice('centerLayout') === undefined && r.toldNumber('centerTweeterSpacing') !== undefined)
    return upright ? 'vertical' : 'outer-tweeters';
  const layout = r.choice('centerLayout');
  if (layout === 'coaxial' || layout === 'full-range') return 'point';
  // A box whose drivers stand above each other is upright in both words; on its side it is another layout.
  if (layout === 'vertical-two-way' || upright) return 'vertical';
  return SIDE_BY_SIDE[layout] === 'tweeters' ? 'outer-tweeters' : 'shared-band-side-by-side';
}

function trebleDip(
  box: readonly Driver[],
  { azimuthDeg, distanceM }: Bearing,
  grid: Grid | undefined,
): number {
  const dip = offAxisDip(
    { drivers: box, azimuthDeg, distanceM, fromHz: TREBLE_FROM_HZ, toHz: TREBLE_TO_HZ },
    grid,
  );
  return heardDepthDb(dip.dipDb);
}

/** The same place, the head moved sideways. */
function beside(bearing: Bearing, swayM: number): Bearing {
  const offsetM = bearing.offsetM + swayM;
  const turnedRad = Math.atan2(offsetM, bearing.aheadM) - Math.atan2(bearing.offsetM, bearing.aheadM);
  const azimuthDeg = bearing.azimuthDeg + (turnedRad * 180) / Math.PI;
  return { ...bearing, offsetM, azimuthDeg, distanceM: Math.hypot(offsetM, bearing.aheadM) };
}

const TWIN_FACTS = [
  ...BEARING_FACTS,
  'centerCount',
  'twinArrangement',
  'twinSpacing',
  'centerTweeterHeight',
  'displayMiddleHeight',
] as const;
/** Two boxes are not both within this of the middle of the picture, m: a box is that high itself. Our own choice. */
const LEAST_TWIN_SPACING_M = 0.3;
/** Where nobody told, m: two common boxes end to end, and two stacked. Common practice, no source. */
const BESIDE = { value: 0.6, spread: 0.4 } as const;
const STACKED = { value: 0.2, spread: 0.2 } as const;

/** Where the two are: a list of drivers around their middle, and how high that is. */
function twins(r: Reader<(typeof TWIN_FACTS)[number]>) {
  const arrangement = r.choice('twinArrangement');
  if (arrangement === 'side-by-side')
    return { box: twinBoxes(r.numberOr('twinSpacing', BESIDE), 'beside'), middleM: undefined };
  const firstM = r.number('centerTweeterHeight');
  if (arrangement === 'stacked')
    return { box: twinBoxes(r.numberOr('twinSpacing', STACKED), 'above'), middleM: firstM };
  const pictureM = r.number('displayMiddleHeight');
  // One below and one above the picture, at equal distances from its middle unless told otherwise.
  const spacingM = r.toldNumber('twinSpacing') ?? 2 * Math.abs(firstM - pictureM);
  const box = twinBoxes(Math.max(LEAST_TWIN_SPACING_M, spacingM), 'above');
  return { box, middleM: firstM + (Math.sign(pictureM - firstM) * spacingM) / 2 };
}

interface TwinDip {
  readonly dipDb: number;
  readonly dipHz: number | null;
}
function twinCenterDip(r: Reader<(typeof TWIN_FACTS)[number]>): TwinDip {
  const count = r.choice('centerCount');
  if (count === 'none') return r.stop();
  if (count === 'one') return { dipDb: 0, dipHz: null };
  const { box, middleM } = r.from(twins);
  const at = ({ seat, azimuthDeg, distanceM }: Bearing): TwinDip => {
    const riseM = middleM === undefined ? 0 : headAt(r, seat).earHeightM - middleM;
    const elevationDeg = (Math.atan2(riseM, distanceM) * 180) / Math.PI;
    const found = offAxis({ drivers: box, azimuthDeg, elevationDeg, distanceM }, r.sketchGrid());
    return { dipDb: heardDepthDb(found.dipDb), dipHz: found.dipHz };
  };
  return at(r.worst(r.from(bearings), (bearing) => at(bearing).dipDb).item);
}

const AIM_FACTS = [...LAYOUT_FACTS, 'centerTweeterHeight', 'centerTilt'] as const;
function aimDip(r: Reader<(typeof AIM_FACTS)[number]>): number {
  const box = r.from(drivers);
  const [sourceHeightM, tiltUpDeg] = r.numbers('centerTweeterHeight', 'centerTilt');
  return r.worst(r.from(bearings), ({ seat, aheadM }) => {
    const { offAxisDeg } = elevation({
      sourceHeightM,
      earHeightM: headAt(r, seat).earHeightM,
      distanceM: aheadM,
      tiltUpDeg,
    });
    const elevationDeg = Math.max(-NEVER_DEG, Math.min(NEVER_DEG, offAxisDeg));
    return heardDepthDb(
      offAxis({ drivers: box, azimuthDeg: 0, elevationDeg, distanceM: aheadM }, r.sketchGrid()).dipDb,
    );
  }).badness;
}

/** At the usual distance: between 2 and 5 m the angle hardly depends on it. */
function failAngle(r: Reader<(typeof DRIVER_FACTS)[number]>): number {
  const box = r.from(boxOf);
  const sides = (box.mirrored ? (['right'] as const) : (['left', 'right'] as const)).map(
    (side) =>
      thresholdAngle({ drivers: box.drivers, targetDipDb: LIMITS.dipDb.clear, plane: 'horizontal', side }) ??
      NEVER_DEG,
  );
  return Math.min(...sides);
}

export const layout = {
  layoutKind: derive(
    choice('what the driver layout does sideways', [
      'shared-band-side-by-side',
      'outer-tweeters',
      'vertical',
      'point',
    ] as const),
    KIND_FACTS,
    layoutKind,
  ),
  layoutDipDb: derive(
    number('dB', 'deepest dip of the voice range at the worst seat, from the driver layout', {
      atMost: DEEPEST_DB,
    }),
    LAYOUT_FACTS,
    (r) => r.from(worstSeat).dipDb,
  ),
  layoutDipHz: derive(number('Hz', 'frequency of that dip'), LAYOUT_FACTS, (r) => r.from(worstSeat).dipHz),
  layoutDipMainDb: derive(
    number('dB', 'deepest dip at the main seat, from the driver layout', { atMost: DEEPEST_DB }),
    LAYOUT_FACTS,
    (r) => dipAt(r.from(boxOf), r.from(mainBearing), r.sketchGrid()).dipDb,
  ),
  layoutSpeechLossDb: derive(
    number('dB', 'speech-weighted loss at the worst seat, from the driver layout'),
    LAYOUT_FACTS,
    layoutSpeechLoss,
  ),
  // Spacing times sine of the angle times crossover is what decides.
  layoutFailDeg: derive(
    number('deg', 'angle at which this very center reaches a clearly audible dip'),
    DRIVER_FACTS,
    failAngle,
    ['centerDriverSpacing', 'centerTweeterSpacing', 'centerCrossover', 'centerLowCrossover'],
  ),
  tweeterDipDb: derive(
    number('dB', 'deepest treble dip at the worst seat, from tweeters apart'),
    LAYOUT_FACTS,
    (r) => {
      if (r.from(layoutKind) !== 'outer-tweeters') return 0;
      const box = r.from(drivers);
      return r.worst(r.from(judged), (bearing) => trebleDip(box, bearing, r.sketchGrid())).badness;
    },
  ),
  tweeterDipMainDb: derive(
    number('dB', 'deepest treble dip at the main seat, or half a hand beside it, from tweeters apart'),
    LAYOUT_FACTS,
    (r) => {
      if (r.from(layoutKind) !== 'outer-tweeters') return 0;
      const box = r.from(drivers);
      const bearing = r.from(mainBearing);
      return Math.max(
        ...[-HEAD_SWAY_M, 0, HEAD_SWAY_M].map((swayM) =>
          trebleDip(box, beside(bearing, swayM), r.sketchGrid()),
        ),
      );
    },
  ),
  twinCenterDipDb: derive(
    number('dB', 'deepest dip at the worst seat from two center boxes with one signal', {
      atMost: DEEPEST_DB,
    }),
    TWIN_FACTS,
    (r) => r.from(twinCenterDip).dipDb,
  ),
  twinCenterDipHz: derive(
    number('Hz', 'frequency of that dip'),
    TWIN_FACTS,
    (r) => r.from(twinCenterDip).dipHz ?? undefined,
  ),
  orientationSeen: derive(
    choice('whether it was told how the center lies', ['yes'] as const),
    ['centerOrientation'],
    (r): 'yes' => (r.toldChoice('centerOrientation') === undefined ? r.stop('centerOrientation') : 'yes'),
  ),
  aimDipDb: derive(
    number('dB', 'deepest dip because the ears are above or below the axis'),
    AIM_FACTS,
    aimDip,
  ),
};
