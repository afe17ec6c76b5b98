/** The latency of a powered center: the entry it asks for, and what of it no entry makes up for. */
import { C_AIR } from '../../acoustics/air.js';
import { distanceM } from '../../acoustics/arrival.js';
import { derive, number, type Reader } from '../../compute/reader.js';
import {
  ARRIVAL_FACTS,
  arrivalAtMainSeat,
  beyondEntriesMs,
  distancesAtMainSeat,
  latenciesMs,
} from './arrivals.js';
import { ENTERED, entries } from './entries.js';

/** What a millisecond is as a distance. */
const M_PER_MS = C_AIR / 1000;

type LatencyFact = (typeof ARRIVAL_FACTS)[number];

function neededEntry(r: Reader<LatencyFact>): number {
  const { center, seat } = r.from(distancesAtMainSeat);
  // A latency that nobody told asks for nothing yet.
  const toldMs = r.toldNumber('centerLatency') === undefined ? 0 : r.from(latenciesMs).center;
  return distanceM(center, seat) + M_PER_MS * toldMs;
}

/** Set by hand, the entries come from a tape, and no tape shows latency. */
const setByTape = (r: Reader<LatencyFact>): boolean =>
  r.toldNumber('arrivalMeasuredMs') === undefined &&
  ENTERED.every((id) => r.toldNumber(id) === undefined) &&
  r.toldChoice('alignmentBy') === 'by-hand';

function latencyLeft(r: Reader<LatencyFact>): number {
  const ownMs = r.from(latenciesMs).center;
  if (ownMs === 0 || r.from(setByTape)) return ownMs;
  return Math.min(ownMs, Math.max(0, r.from(arrivalAtMainSeat).centerMinusMeanMs));
}

/** The part of a measured error that no way and no entry explains: only a latency is left to make it. */
function latencyFound(r: Reader<LatencyFact>): number {
  const measuredMs = r.number('arrivalMeasuredMs');
  const beyondMs = beyondEntriesMs(r, r.from(entries)) ?? 0;
  if (measuredMs * beyondMs <= 0) return 0;
  return Math.min(Math.abs(measuredMs), Math.abs(beyondMs));
}

export const latency = {
  latencyFoundMs: derive(
    number('ms', 'part of the measured arrival error that neither ways nor entries explain'),
    ARRIVAL_FACTS,
    latencyFound,
  ),
  neededEntryM: derive(
    number('m', 'distance entry that the center needs: its own way, and its latency as told'),
    ARRIVAL_FACTS,
    neededEntry,
  ),
  latencyLeftMs: derive(
    number('ms', 'latency of the center that no entry makes up for'),
    ARRIVAL_FACTS,
    latencyLeft,
  ),
};
