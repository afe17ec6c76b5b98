/** What each seat hears, for the table of the report. */

import type { Core } from '../../compute/core.js';
import { type Reader, seatsIn } from '../../compute/reader.js';
import type { Seat } from '../../facts/book.js';
import type { FactId } from '../../facts/catalog.js';
import type { SeatResult } from '../view.js';
import { arrivalsAtSeats } from './arrivals.js';
import { mainsCarryVoice, pullAt } from './image.js';
import { layoutAtSeats } from './layout.js';
import { bearings, headAt } from './places.js';

type Model<T> = (r: Reader<FactId>) => T;

const arrivals: Model<readonly number[]> = (r) =>
  arrivalsAtSeats(r).map(({ centerMinusMeanMs }) => centerMinusMeanMs);

const pulls: Model<readonly number[]> = (r) => {
  const carried = mainsCarryVoice(r);
  return seatsIn(r).map((seat) => (carried ? pullAt(r, headAt(r, seat)) : 0));
};

/** By place, not by identity: what an earlier audit computed holds the seats of that audit. */
const isSame = (a: Seat, b: Seat): boolean => a.name === b.name && a.xM === b.xM && a.yM === b.yM;

/** A column is undefined throughout where the facts for it are missing. */
export function seatResultsOf(core: Core): readonly SeatResult[] {
  const column = <T>(model: (r: Reader<FactId>) => T): T | undefined =>
    core.evaluate(model).value as T | undefined;
  const seen = column(bearings);
  const dips = column(layoutAtSeats);
  const late = column(arrivals);
  const pulled = column(pulls);
  return core.plan.seats.map((seat: Seat, i): SeatResult => {
    const bearing = seen?.find((each) => isSame(each.seat, seat));
    const dip = dips?.find((each) => isSame(each.bearing.seat, seat));
    return {
      seat,
      azimuthDeg: bearing?.azimuthDeg,
      distanceM: bearing?.distanceM ?? Math.hypot(seat.xM, seat.yM),
      dipDb: dip?.dipDb,
      dipHz: dip?.dipHz,
      speechLossDb: dip?.speechLossDb,
      centerMinusMainsMs: late?.[i],
      phantomPullDeg: pulled?.[i],
    };
  });
}
