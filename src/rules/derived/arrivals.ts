/** When center and mains arrive: ways as taped or by geometry, entries, and the latency of what has processing of its own. */

import { C_AIR } from '../../acoustics/air.js';
import { type Arrival, arrival, distanceM, type Point, type Triple } from '../../acoustics/arrival.js';
import { type Reader, seatsIn } from '../../compute/reader.js';
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

export const TAPED_FACTS = ['tapedCenter', 'tapedMains', 'tapedLeft', 'tapedRight'] as const;

export const ARRIVAL_FACTS = [
  'centerCount',
  ...POINT_FACTS,
  ...ENTRY_FACTS,
  ...TAPED_FACTS,
  'calibrationSpot',
  'arrivalMeasuredMs',
] as const;
export type ArrivalFact = (typeof ARRIVAL_FACTS)[number];

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
export function automaticLatencyMs(r: Reader<ArrivalFact>, group: Group): number {
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
