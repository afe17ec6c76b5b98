/** Center and subwoofer around their crossover. */
import { alignedHole, bassSum, CROSSOVER_CHOICES_HZ, lowestCrossoverHz } from '../../acoustics/bass.js';
import { DEEPEST_DB, heardDepthDb } from '../../acoustics/holes.js';
import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';
import { ARRIVAL_FACTS, arrivalAtMainSeat } from './arrivals.js';
import { reversedMiddleDb } from './image.js';
import { requireCenter } from './places.js';
import { SHARING_FACTS } from './sharing.js';

const BOX_FACTS = [
  'centerCount',
  'centerLowLimit',
  'centerLowLimitDrop',
  'centerEnclosure',
  'highPassSlope',
] as const;
type BoxFact = (typeof BOX_FACTS)[number];

/** Order of the roll-off of a box; textbook. */
const ORDER = { sealed: 2, vented: 4 } as const;

/**
 * -3 dB point of a Butterworth roll-off of order n that is `dropDb` down at `limitHz`:
 * 10^(drop/10) = 1 + (f3/f)^2n.
 */
function minus3Hz(limitHz: number, dropDb: number, order: number): number {
  const at = (db: number): number => 10 ** (db / 10) - 1;
  return limitHz * (at(dropDb) / at(3)) ** (1 / (2 * order));
}

type Enclosure = keyof typeof ORDER;
function box(r: Reader<BoxFact>, enclosure: Enclosure = r.choice('centerEnclosure')) {
  requireCenter(r);
  const [limitHz, dropDb] = r.numbers('centerLowLimit', 'centerLowLimitDrop');
  const highPass = r.choice('highPassSlope') === '24' ? ('LR4' as const) : ('BW2' as const);
  return { enclosure, lowLimitHz: minus3Hz(limitHz, dropDb, ORDER[enclosure]), highPass };
}

const TIMING_FACTS = ['subTiming', 'subDelay', 'subPolarity'] as const;
/** The sub counts as aligned unless its timing is known to be wrong. */
function timingKnown(r: Reader<(typeof TIMING_FACTS)[number]>) {
  const untouched = r.toldChoice('subTiming') === 'untouched';
  return {
    delayMs: r.toldNumber('subDelay') ?? (untouched ? 0 : undefined),
    polarity: r.toldChoice('subPolarity'),
  };
}

export const HOLE_FACTS = [
  ...BOX_FACTS,
  ...TIMING_FACTS,
  'subwoofer',
  'centerBassSize',
  'centerBassCrossover',
] as const;
type HoleFact = (typeof HOLE_FACTS)[number];

/** Crossover of center and subwoofer, or undefined where there is none. */
function crossover(r: Reader<HoleFact>): number | undefined {
  if (r.choice('subwoofer') === 'none') return undefined;
  return r.choice('centerBassSize') === 'large' ? undefined : r.number('centerBassCrossover');
}

/** Where nobody told whether the box has a port, the shallower hole of both counts, if it is one at all. */
function hole(r: Reader<HoleFact>): Hole | undefined {
  const told = r.toldChoice('centerEnclosure');
  if (told !== undefined) return holeOf(r, told);
  const [sealed, vented] = [holeOf(r, 'sealed'), holeOf(r, 'vented')];
  if (sealed === undefined || vented === undefined) return undefined;
  const least = sealed.dipDb <= vented.dipDb ? sealed : vented;
  return least.dipDb >= LIMITS.bassHoleDb.noticeable ? least : r.stop('centerEnclosure');
}

type Hole = { readonly dipDb: number; readonly dipHz: number };
function holeOf(r: Reader<HoleFact>, enclosure: Enclosure): Hole | undefined {
  const crossoverHz = r.from(crossover);
  if (crossoverHz === undefined) return undefined;
  const input = { ...box(r, enclosure), crossoverHz };
  const { delayMs, polarity } = r.from(timingKnown);
  if (delayMs !== undefined) {
    const asSet = depth(bassSum({ ...input, subDelayMs: delayMs }));
    if (polarity === undefined || polarity === 'no-difference') return asSet;
    const turned = depth(bassSum({ ...input, subDelayMs: delayMs, subInverted: true }));
    const [fuller, thinner] = asSet.dipDb <= turned.dipDb ? [asSet, turned] : [turned, asSet];
    return polarity === 'fuller-as-set' ? fuller : thinner;
  }
  const best = alignedHole(input);
  if (polarity !== 'fuller-other-way') return depth(best);
  return depth(bassSum({ ...input, subDelayMs: best.subDelayMs, subInverted: !best.subInverted }));
}

function depth({ dipDb, dipHz }: { readonly dipDb: number | null; readonly dipHz: number }) {
  return { dipDb: heardDepthDb(dipDb), dipHz };
}

/** A hole shallower than this has no frequency worth naming, dB. Our own choice. */
const NAMED_HOLE_DB = 0.5;

/** Where center and subwoofer leave a hole, Hz; 0 where they add up. */
export function crossoverHoleHz(r: Reader<HoleFact>): number {
  const found = r.from(hole);
  return found && found.dipDb >= NAMED_HOLE_DB ? found.dipHz : 0;
}

/** What a main set to large plays down to counts as the lowest crossover processors offer, Hz. Common practice. */
const LARGE_AS_HZ = Math.min(...CROSSOVER_CHOICES_HZ);
/** Where no choice leaves a shallow hole. */
const HIGHEST_HZ = Math.max(...CROSSOVER_CHOICES_HZ);
/** Above this a subwoofer is heard as a place; the rest is for its timing, Hz. */
const HIGHEST_ADVISED_HZ = LIMITS.subLocalHz.clear;

const SAFE_FACTS = [...BOX_FACTS, ...TIMING_FACTS] as const;
function safeCrossover(r: Reader<(typeof SAFE_FACTS)[number]>): number {
  const { delayMs, polarity } = r.from(timingKnown);
  const aligned = delayMs === undefined && polarity !== 'fuller-other-way';
  const lowest = lowestCrossoverHz({ ...box(r), maxHoleDb: LIMITS.bassHoleDb.noticeable, aligned });
  return lowest ?? HIGHEST_HZ;
}

const PAIR_FACTS = [...HOLE_FACTS, ...ARRIVAL_FACTS, ...SHARING_FACTS] as const;
/**
 * Center and subwoofer are a pair of their own: they share the low voice of every content. What a change of the
 * center alone adds to the hole at their crossover, with the subwoofer right for a center that is right; 0 where
 * there is no crossover.
 */
function holeAdded(r: Reader<HoleFact>, change: { subDelayMs?: number; subInverted?: boolean }): number {
  const crossoverHz = r.from(crossover);
  if (crossoverHz === undefined) return 0;
  const input = { ...box(r), crossoverHz };
  const best = alignedHole(input);
  const changed = bassSum({
    ...input,
    subDelayMs: best.subDelayMs + (change.subDelayMs ?? 0),
    subInverted: best.subInverted !== (change.subInverted ?? false),
  });
  return Math.max(0, depth(changed).dipDb - depth(best).dipDb);
}

/** A voice that the mains share cancels; so does its low part with the subwoofer, whatever the mains play. */
function reversedLoss(r: Reader<(typeof PAIR_FACTS)[number]>): number {
  const midDb = r.from(reversedMiddleDb);
  if (midDb >= LIMITS.levelDb.clear && r.toldChoice('subwoofer') === undefined) return midDb;
  return Math.max(midDb, holeAdded(r, { subInverted: true }));
}

const SIZE_FACTS = ['centerSizeAgainstMains', 'centerMidSize'] as const;
/** Cones up to this, a nominal 5.25 in, end above 70 Hz whatever the mains are, m. Common practice, no source. */
const SMALL_CONE_M = 0.135;
function boxSize(r: Reader<(typeof SIZE_FACTS)[number]>): 'smaller' | 'similar' {
  const told = r.toldChoice('centerSizeAgainstMains');
  if (told !== undefined) return told;
  const coneM = r.toldNumber('centerMidSize');
  return coneM !== undefined && coneM <= SMALL_CONE_M ? 'smaller' : r.stop('centerSizeAgainstMains');
}

const GAP_FACTS = ['centerCount', 'centerBassSize', 'centerBassCrossover', 'mainsBassCrossover'] as const;

export const bass = {
  entryBassHoleDb: derive(
    number('dB', 'hole that the late or early center leaves at its crossover with the subwoofer', {
      atMost: DEEPEST_DB,
    }),
    PAIR_FACTS,
    (r) => holeAdded(r, { subDelayMs: -r.from(arrivalAtMainSeat).centerMinusMeanMs }),
  ),
  reversedLossDb: derive(
    number('dB', 'loss if the center is reversed: in what mains and center share, or at the subwoofer', {
      atMost: DEEPEST_DB,
    }),
    PAIR_FACTS,
    reversedLoss,
  ),
  bassHoleDb: derive(
    number('dB', 'hole at the bass crossover of center and subwoofer', { atMost: DEEPEST_DB }),
    HOLE_FACTS,
    (r) => r.from(hole)?.dipDb ?? 0,
  ),
  bassHoleHz: derive(
    number('Hz', 'frequency of that hole'),
    HOLE_FACTS,
    (r) => r.from(crossoverHoleHz) || undefined,
  ),
  safeCrossoverHz: derive(
    number('Hz', 'lowest bass crossover that leaves no audible hole for this center'),
    [...BOX_FACTS, ...TIMING_FACTS],
    safeCrossover,
    ['centerLowLimit'],
  ),
  advisedCrossoverHz: derive(
    number(
      'Hz',
      'bass crossover to begin with: as the center needs it, but not where a subwoofer is heard as a place',
    ),
    [...BOX_FACTS, ...TIMING_FACTS],
    (r) => Math.min(HIGHEST_ADVISED_HZ, r.from(safeCrossover)),
    ['centerLowLimit'],
  ),
  crossoverGapHz: derive(
    number('Hz', 'difference of the bass crossovers of center and mains'),
    GAP_FACTS,
    (r) => {
      requireCenter(r);
      const size = r.toldChoice('centerBassSize');
      const centerHz = size === 'large' ? LARGE_AS_HZ : r.number('centerBassCrossover');
      return Math.abs(
        Math.max(LARGE_AS_HZ, centerHz) - Math.max(LARGE_AS_HZ, r.number('mainsBassCrossover')),
      );
    },
  ),
  subReachHz: derive(
    number('Hz', 'up to where the subwoofer plays the voice (0 without one, or with the center set large)'),
    ['subwoofer', 'centerBassSize', 'centerBassCrossover'],
    (r) => {
      if (r.choice('subwoofer') === 'none') return 0;
      return r.choice('centerBassSize') === 'large' ? 0 : r.number('centerBassCrossover');
    },
  ),
  boxSize: derive(
    choice('size of the center, against the mains or by its cones', ['smaller', 'similar'] as const),
    SIZE_FACTS,
    boxSize,
  ),
  unplayedVoiceHz: derive(
    number('Hz', 'low limit of a center set large: below it nobody plays the voice (0 if set small)'),
    ['centerBassSize', 'centerLowLimit'],
    (r) => (r.choice('centerBassSize') === 'large' ? r.number('centerLowLimit') : 0),
  ),
};
