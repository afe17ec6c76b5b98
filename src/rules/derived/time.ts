/** Arrival of center and mains, and what an error does to content they share. */

import { C_AIR } from '../../acoustics/air.js';
import {
  type Arrival,
  arrival,
  distanceM,
  LEAST_ENTRY_M,
  type Point,
  stepError,
  type Triple,
  type UnitSlip,
  unitErrorRatio,
  unitSlip,
} from '../../acoustics/arrival.js';
import { sharedRippleDb, smoothedRippleDb } from '../../acoustics/comb.js';
import { choice, derive, number, type Reader, seatsIn } from '../../compute/reader.js';
import type { Seat } from '../../facts/book.js';
import { LIMITS } from '../limits.js';
import { ENTRY_FACTS, type Entries, entries, entriesOrEqual, mainsEntries } from './entries.js';
import {
  type Head,
  headAt,
  mainHead,
  POINT_FACTS,
  type PointFact,
  pointOf,
  points,
  requireCenter,
} from './places.js';
import { SHARING_FACTS, voiceGains } from './sharing.js';

const TAPED_FACTS = ['tapedCenter', 'tapedMains', 'tapedLeft', 'tapedRight'] as const;

export const ARRIVAL_FACTS = [
  'centerCount',
  ...POINT_FACTS,
  ...ENTRY_FACTS,
  ...TAPED_FACTS,
  'calibrationSpot',
  'arrivalMeasuredMs',
] as const;
type ArrivalFact = (typeof ARRIVAL_FACTS)[number];

/** Distances from the main seat: taped ones where there are any, else from the geometry. As points in a line. */
export function distancesAtMainSeat(
  r: Reader<PointFact | (typeof TAPED_FACTS)[number]>,
): Triple<Point> & { readonly seat: Point } {
  const tapedCenterM = r.toldNumber('tapedCenter');
  const tapedLeftM = r.toldNumber('tapedLeft') ?? r.toldNumber('tapedMains');
  const tapedRightM = r.toldNumber('tapedRight');
  if (tapedCenterM === undefined && tapedLeftM === undefined && tapedRightM === undefined) {
    return { ...r.from(points), seat: pointOf(r.from(mainHead)) };
  }
  const seat = pointOf(r.from(mainHead));
  const away = (point: Point): number => distanceM(point, seat);
  const { left, center, right } = r.from(points);
  // Where one main is taped, the other differs by what the geometry says.
  const rightBeyondM = away(right) - away(left);
  const leftM =
    tapedLeftM ?? (tapedRightM === undefined ? away(left) : Math.max(0, tapedRightM - rightBeyondM));
  return {
    seat: [0, 0],
    left: [leftM, 0],
    center: [tapedCenterM ?? away(center), 0],
    right: [tapedRightM ?? Math.max(0, leftM + rightBeyondM), 0],
  };
}

/**
 * An automatic run writes the latency of a powered or wireless loudspeaker as distance. An entry longer than the way
 * by this much, m, may be that: 1 to 20 ms. Common practice, no source.
 */
const LATENCY_ENTRY_M = { least: 0.3, most: 7 } as const;
/** How well such an entry tells the latency, as a standard deviation of its logarithm. Judgement. */
const READ_LATENCY_SPREAD = 0.3;

type Group = 'center' | 'mains';

/** How much longer the automatic entry of a group is than that of the other, as latency, ms; 0 where it is not. */
function automaticLatencyMs(r: Reader<ArrivalFact>, group: Group): number {
  if (r.toldChoice('alignmentBy') !== 'automatic') return 0;
  // What has moved since the run explains the difference: the entry is that of the old place.
  if (r.toldChoice('calibrationSpot') === 'changed-since') return 0;
  const { entered } = r.from(entries);
  if (!entered) return 0;
  const { seat, left, center, right } = r.from(distancesAtMainSeat);
  const extra = (entryM: number, point: Point): number => entryM - distanceM(point, seat);
  const mainsM = (extra(entered.left, left) + extra(entered.right, right)) / 2;
  const aheadM = extra(entered.center, center) - mainsM;
  const excessM = group === 'center' ? aheadM : -aheadM;
  const { least, most } = LATENCY_ENTRY_M;
  return excessM >= least && excessM <= most ? (1000 * excessM) / C_AIR : 0;
}

/** Latency of a group that has processing of its own: as told, else as an automatic entry shows it. */
function groupLatencyMs(r: Reader<ArrivalFact>, group: Group): number {
  const fact = group === 'center' ? 'centerLatency' : 'mainsLatency';
  const toldMs = r.toldNumber(fact);
  if (toldMs !== undefined) return toldMs;
  const value = automaticLatencyMs(r, group);
  return value > 0 ? r.numberOr(fact, { value, spread: READ_LATENCY_SPREAD }) : r.number(fact);
}

/** Whether a group is late by itself; not to be told while an automatic entry looks as if it were. */
function isPowered(r: Reader<ArrivalFact>, group: Group): boolean {
  const center = r.toldChoice('centerPowered');
  // Mains of the same kind share the latency, and what all share is no difference.
  if (center === 'powered-mains-too') return false;
  const told = group === 'center' ? center : r.toldChoice('mainsPowered');
  if (told !== undefined) return told === 'yes';
  if (automaticLatencyMs(r, group) > 0) r.stop(group === 'center' ? 'centerPowered' : 'mainsPowered');
  return group === 'center' && r.choice('centerPowered') === 'yes';
}

/** What each of the three takes for its own processing, ms; as told, or as an automatic entry shows it. */
export function latenciesMs(r: Reader<ArrivalFact>): Triple<number> {
  const center = isPowered(r, 'center') ? groupLatencyMs(r, 'center') : 0;
  const mains = isPowered(r, 'mains') ? groupLatencyMs(r, 'mains') : 0;
  return { left: mains, center, right: mains };
}

/**
 * How much later the center was measured at the main seat than its way and the entries make it, ms; undefined where
 * nothing was measured. It is the same at every seat, so it counts as latency: of the mains where it is negative.
 */
export function beyondEntriesMs(
  r: Reader<ArrivalFact>,
  { entered, delaysMs }: Entries,
  processorSpeed = C_AIR,
): number | undefined {
  const measuredMs = r.toldNumber('arrivalMeasuredMs');
  if (measuredMs === undefined) return undefined;
  const computed = arrival({ ...r.from(distancesAtMainSeat), entered, latencyMs: delaysMs, processorSpeed });
  return measuredMs - computed.centerMinusMeanMs;
}

/** Latencies as a measured arrival shows them, else {@link latenciesMs}; ms. Only their differences are known. */
export function shownLatenciesMs(
  r: Reader<ArrivalFact>,
  set: Entries,
  processorSpeed = C_AIR,
): Triple<number> {
  const beyondMs = beyondEntriesMs(r, set, processorSpeed);
  if (beyondMs === undefined) return r.from(latenciesMs);
  const mains = Math.max(0, -beyondMs);
  return { left: mains, center: Math.max(0, beyondMs), right: mains };
}

function lateness(r: Reader<ArrivalFact>): { readonly entered?: Triple<number>; latencyMs: Triple<number> } {
  // What was measured holds whatever was entered: between center and mains nothing is left to be asked.
  const isMeasured = r.toldNumber('arrivalMeasuredMs') !== undefined;
  const set = r.from(isMeasured ? entriesOrEqual : entries);
  const own = shownLatenciesMs(r, set);
  return {
    ...(set.entered ? { entered: set.entered } : {}),
    latencyMs: {
      left: set.delaysMs.left + own.left,
      center: set.delaysMs.center + own.center,
      right: set.delaysMs.right + own.right,
    },
  };
}

/** With taped distances where there are any. */
export function arrivalAtMainSeat(r: Reader<ArrivalFact>): Arrival {
  requireCenter(r);
  return arrival({ ...r.from(distancesAtMainSeat), ...r.from(lateness) });
}

/** Left minus right at the main seat, ms. */
export function mainsArrivalMs(r: Reader<ArrivalFact>): number {
  const { entered, delaysMs } = r.from(mainsEntries);
  return arrival({ ...r.from(distancesAtMainSeat), entered, latencyMs: delaysMs }).leftMinusRightMs;
}

/** By geometry, at any seat. */
function arrivalAtSeat(r: Reader<ArrivalFact>, head: Head): Arrival {
  requireCenter(r);
  return arrival({ ...r.from(points), seat: pointOf(head), ...r.from(lateness) });
}

/** At every seat: at the main seat with taped distances where there are any, elsewhere by geometry. */
export function arrivalsAtSeats(r: Reader<ArrivalFact>): readonly Arrival[] {
  return seatsIn(r).map((seat) =>
    seat.main ? r.from(arrivalAtMainSeat) : arrivalAtSeat(r, headAt(r, seat)),
  );
}

function delayError(r: Reader<ArrivalFact>): number {
  const { centerMinusLeftMs, centerMinusRightMs } = r.from(arrivalAtMainSeat);
  return Math.max(Math.abs(centerMinusLeftMs), Math.abs(centerMinusRightMs));
}

/** Deeper combs are not told apart, dB: the room fills them. */
const MOST_RIPPLE_DB = 20;
/** Highest frequency at which a comb is judged, Hz: the end of the voice range. */
const VOICE_TO_HZ = 8000;
const VOICE_FROM_HZ = 200;
/** Beyond this a copy is an echo and combs no more, ms. Our own bound. */
const LONGEST_COMB_MS = 1000;

export const COMB_FACTS = [...ARRIVAL_FACTS, ...SHARING_FACTS] as const;
/** First and widest notch of the comb in what center and mains share, Hz; 0 where there is none in the voice. */
export function combHoleHz(r: Reader<(typeof COMB_FACTS)[number]>): number {
  const { side, center } = r.from(voiceGains);
  if (side === 0 || center === 0) return 0;
  const delayMs = r.from(delayError);
  const notchHz = 500 / delayMs;
  return notchHz > VOICE_TO_HZ || delayMs > LONGEST_COMB_MS ? 0 : notchHz;
}

/**
 * Judged where the first notch falls, since there the ear's filter is narrowest against it; a notch above the
 * voice range is none.
 */
function delayComb(r: Reader<(typeof COMB_FACTS)[number]>): number {
  const notchHz = r.from(combHoleHz);
  if (notchHz === 0) return 0;
  const { side, center } = r.from(voiceGains);
  const delayMs = r.from(delayError);
  const ripple = smoothedRippleDb({
    delayMs,
    relativeLevelDb: 20 * Math.log10((2 * side) / center),
    frequencyHz: Math.max(VOICE_FROM_HZ, notchHz),
  });
  return Math.min(MOST_RIPPLE_DB, ripple ?? MOST_RIPPLE_DB);
}

/** Points of the comb curve: enough for the short delays between seats, and for what a small shift changes. */
const COMB_POINTS = 400;
const SKETCH_POINTS = 200;
const OFF_SEAT_FACTS = [...POINT_FACTS, ...SHARING_FACTS] as const;
/** With arrivals and levels made right for the main seat. */
function offSeatComb(r: Reader<(typeof OFF_SEAT_FACTS)[number]>): number {
  const { side, center } = r.from(voiceGains);
  if (side === 0 || center === 0) return 0;
  const places = r.from(points);
  const main = pointOf(r.from(mainHead));
  const { centerMinusLeftMs, centerMinusRightMs } = arrival({ ...places, seat: main });
  const delaysMs = { left: centerMinusLeftMs, center: 0, right: centerMinusRightMs };
  const curvePoints = r.sketchGrid() ? SKETCH_POINTS : COMB_POINTS;
  const ripple = (seat: Seat): number =>
    sharedRippleDb({
      ...places,
      seat: pointOf(headAt(r, seat)),
      mainSeat: main,
      delaysMs,
      centerGain: center,
      sideGain: side,
      points: curvePoints,
    });
  return r.worst(seatsIn(r), ripple).badness;
}

const RATIO_FACTS = [
  ...POINT_FACTS,
  'entryKind',
  'enteredLeft',
  'enteredCenter',
  'enteredRight',
  ...TAPED_FACTS,
] as const;

/** Entered over true distance of the center, as a multiple of the same for the mains where they are entered. */
function entryRatio(r: Reader<(typeof RATIO_FACTS)[number]>): number | undefined {
  const enteredM = r.toldNumber('enteredCenter');
  if (enteredM === undefined) {
    return r.choice('entryKind') === 'delays' ? undefined : r.stop('enteredCenter');
  }
  const { seat, left, center, right } = r.from(distancesAtMainSeat);
  const own = unitErrorRatio(enteredM, distanceM(center, seat));
  const mains = [
    [r.toldNumber('enteredLeft'), left],
    [r.toldNumber('enteredRight'), right],
  ] as const;
  const ratios = mains.flatMap(([entry, point]) =>
    entry === undefined || entry < LEAST_ENTRY_M ? [] : [unitErrorRatio(entry, distanceM(point, seat))],
  );
  return ratios.length === 0 ? own : own / (ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length);
}

const SLIP_FACTS = [...RATIO_FACTS, ...ARRIVAL_FACTS] as const;
/** A ratio near that of foot and meter is a slip only where the center is out of step: a latency gives the same ratio. */
function slipOf(r: Reader<(typeof SLIP_FACTS)[number]>): UnitSlip | 'none' {
  const ratio = entryRatio(r);
  if (ratio === undefined) return r.stop();
  const slip = unitSlip(ratio);
  if (slip === null) return 'none';
  return r.from(delayError) >= LIMITS.delayMs.clear ? slip : 'none';
}

const TAPE_FACTS = ['alignmentBy', 'calibrationSpot', 'centerPowered', 'mainsPowered', 'testTape'] as const;
/** A tape sees no latency; after an automatic run a difference may be just that, and where there is none there is no latency. */
function tapeTells(r: Reader<(typeof TAPE_FACTS)[number]>): 'yes' | 'no' {
  const center = r.toldChoice('centerPowered');
  if (center === 'powered-mains-too') return 'yes';
  const automatic = r.toldChoice('alignmentBy') === 'automatic';
  if (automatic && r.toldChoice('testTape') === 'agrees') return 'yes';
  if (center === 'yes' || r.toldChoice('mainsPowered') === 'yes') return 'no';
  // What has moved since the run is another reason for a difference.
  const isOld = r.toldChoice('calibrationSpot') === 'changed-since';
  return center === undefined && automatic && !isOld ? r.stop('centerPowered') : 'yes';
}

/** What the automatic setup wrote stands as long as the entry is within one coarse step of it, m. Common practice. */
const KEPT_WITHIN_M = 0.1;

type MainsLength = 'enteredLeft' | 'enteredRight' | 'tapedMains' | 'tapedLeft' | 'tapedRight';

export const time = {
  arrivalMeasured: derive(
    number('ms', 'center against the mains as measured, magnitude'),
    ['arrivalMeasuredMs'],
    (r) => Math.abs(r.number('arrivalMeasuredMs')),
  ),
  automaticEntry: derive(
    choice('entry of the center against what the automatic setup wrote', ['kept', 'changed'] as const),
    ['enteredCenter', 'automaticDistanceCenter'],
    (r) => {
      const [entered, written] = r.numbers('enteredCenter', 'automaticDistanceCenter');
      return Math.abs(entered - written) <= KEPT_WITHIN_M ? 'kept' : 'changed';
    },
  ),
  unitSlip: derive(
    choice('unit slip in the entry of the center', ['feet-as-meters', 'meters-as-feet', 'none'] as const),
    SLIP_FACTS,
    slipOf,
  ),
  automaticLatency: derive(
    choice('whose automatic entry is longer than the tape', ['center', 'mains', 'none'] as const),
    ARRIVAL_FACTS,
    (r) =>
      automaticLatencyMs(r, 'center') > 0 ? 'center' : automaticLatencyMs(r, 'mains') > 0 ? 'mains' : 'none',
  ),
  setBy: derive(
    choice('what the entries come from, people unless told otherwise', ['microphone', 'people'] as const),
    ['alignmentBy'],
    (r) => (r.toldChoice('alignmentBy') === 'automatic' ? 'microphone' : 'people'),
  ),
  tapeTells: derive(
    choice('whether a tape can tell the arrival', ['yes', 'no'] as const),
    TAPE_FACTS,
    tapeTells,
  ),
  entryRatio: derive(
    number('1', 'entered distance of the center over its true distance, against the mains'),
    RATIO_FACTS,
    entryRatio,
  ),
  delayErrorMs: derive(
    number('ms', 'largest delay error of the center against left or right at the seat of the entries'),
    ARRIVAL_FACTS,
    delayError,
  ),
  entryAgainstTapeMs: derive(
    number(
      'ms',
      'entry of the center beyond its tape, less the same of the mains where both are told, magnitude',
    ),
    ['enteredCenter', 'enteredLeft', 'enteredRight', ...TAPED_FACTS],
    (r) => {
      const [entered, taped] = r.numbers('enteredCenter', 'tapedCenter');
      const toldM = (...ids: readonly MainsLength[]): number | undefined => {
        const all = ids.flatMap((id) => r.toldNumber(id) ?? []);
        return all.length === 0 ? undefined : all.reduce((sum, m) => sum + m, 0) / all.length;
      };
      const enteredM = toldM('enteredLeft', 'enteredRight');
      const tapedM = toldM('tapedMains') ?? toldM('tapedLeft', 'tapedRight');
      const mainsOffM = enteredM === undefined || tapedM === undefined ? 0 : enteredM - tapedM;
      return (1000 * Math.abs(entered - taped - mainsOffM)) / C_AIR;
    },
  ),
  delayGross: derive(
    choice('whether a gross delay error is known', ['yes', 'no'] as const),
    ARRIVAL_FACTS,
    (r) => (r.canTell(delayError) && r.from(delayError) >= LIMITS.grossDelayMs.clear ? 'yes' : 'no'),
  ),
  delaySignedMs: derive(
    number('ms', 'center against the mean of left and right (positive: center late)'),
    ARRIVAL_FACTS,
    (r) => r.from(arrivalAtMainSeat).centerMinusMeanMs,
  ),
  mainsArrivalErrorMs: derive(
    number('ms', 'left against right arrival at the main seat'),
    ARRIVAL_FACTS,
    (r) => Math.abs(r.from(mainsArrivalMs)),
  ),
  delayCombDb: derive(
    number('dB', 'ripple that this delay error makes in shared content, as the ear resolves it', {
      atMost: MOST_RIPPLE_DB,
    }),
    COMB_FACTS,
    delayComb,
  ),
  offSeatCombDb: derive(
    number(
      'dB',
      'ripple of shared content at the worst seat with perfect alignment, smoothed to a third octave',
    ),
    OFF_SEAT_FACTS,
    offSeatComb,
  ),
  entryStepErrorMs: derive(
    number('ms', 'largest error that the step of the entries can leave'),
    ['entryKind', 'entryStep'],
    (r) =>
      r.choice('entryKind') === 'delays' ? undefined : stepError({ stepM: r.number('entryStep') }).maxPairMs,
  ),
};
