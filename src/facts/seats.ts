/**
 * The seats of a case: as listed, or laid out from count, spacing, distance and rows.
 *
 * Layout of a row. Where the place of the main seat was told, it is there, and its neighbors are laid beside it
 * at the seat spacing so that the row stands as nearly as it can in the middle between the mains (with an even
 * number the odd one out sits on the right). Where it was not told, the row itself is centered, as a sofa is:
 * an odd number puts the main seat in the middle, an even number half a spacing to the right of it.
 * Seats behind stand exactly behind, one row pitch back and one riser up.
 */
import { type FactBook, type Seat, told } from './book.js';
import { CASE_LIMITS } from './case-limits.js';
import { FACTS, type NumberFactId } from './catalog.js';

export interface SeatPlan {
  /** Front row first, from left to right; exactly one is `main`. */
  readonly seats: readonly Seat[];
  /** Facts that were not told and stand at their default here. */
  readonly assumed: readonly NumberFactId[];
}

/** All seats in use. Never empty. */
export function seatsOf(book: FactBook): SeatPlan {
  if (book.seats.length > 0) return { seats: book.seats, assumed: [] };
  const assumed: NumberFactId[] = [];
  const number = (id: NumberFactId): number => {
    const value = told(book, id);
    if (typeof value === 'number') return value;
    assumed.push(id);
    return defaultOf(id);
  };
  const count = rowCount(book, number);
  const rows = told(book, 'seating') === 'several-rows' ? 2 : 1;
  const spacingM = count > 1 ? number('seatSpacing') : 0;
  const yM = Math.max(LEAST_SEAT_M, number('seatDistance') - behindMains(book));
  const { xs, main } = rowPlaces(count, spacingM, mainOffset(book, count, spacingM, assumed));
  const front = xs.map(
    (xM, index): Seat => ({ name: placeName(index, count), xM, yM, row: 1, main: index === main }),
  );
  if (rows === 1) return { seats: front, assumed };
  const backYM = yM + number('rowSpacing');
  const earHeightM = number('earHeight') + number('rowRiser');
  const back = front.map((seat): Seat => {
    return { ...seat, name: `second row ${seat.name}`, yM: backYM, row: 2, earHeightM, main: false };
  });
  return { seats: [...front, ...back], assumed };
}

/** The main seat of a plan. */
export function mainSeat({ seats }: SeatPlan): Seat {
  const seat = seats.find((each) => each.main) ?? seats[0];
  if (seat === undefined) throw new RangeError('a seat plan holds at least one seat');
  return seat;
}

/** How far display and wall lie behind the line between the mains in a usual room, m. Common practice, no source. */
const BEHIND_MAINS_M = { display: 0.2, wall: 0.5 } as const;
const LEAST_SEAT_M = 0.5;

/** What a seat distance holds too much where it was not taped from the line between the mains, m. */
function behindMains(book: FactBook): number {
  const from = told(book, 'seatDistanceFrom');
  return from === 'display' || from === 'wall' ? BEHIND_MAINS_M[from] : 0;
}

function defaultOf(id: NumberFactId): number {
  const spec = FACTS[id];
  if (!('assume' in spec)) throw new RangeError(`${id} has no default`);
  return spec.assume.value;
}

/**
 * Two of the longest rows hold as many seats as a case may list. A told count stands even beside "one seat only":
 * the contradiction is told elsewhere, no seat is dropped.
 */
function rowCount(book: FactBook, number: (id: NumberFactId) => number): number {
  const single = told(book, 'seating') === 'single-seat' && told(book, 'seatCount') === undefined;
  return single ? 1 : Math.min(CASE_LIMITS.seats / 2, Math.max(1, Math.round(number('seatCount'))));
}

function mainOffset(book: FactBook, count: number, spacingM: number, assumed: NumberFactId[]): number {
  const offset = told(book, 'mainSeatOffset');
  if (typeof offset === 'number') return offset;
  assumed.push('mainSeatOffset');
  return count % 2 === 1 ? 0 : spacingM / 2;
}

/** Places of a row from left to right such that one of them is at `mainXM`. */
function rowPlaces(count: number, spacingM: number, mainXM: number): { xs: number[]; main: number } {
  const half = (count - 1) / 2;
  const wanted = spacingM > 0 ? half + mainXM / spacingM : 0;
  const main = Math.min(count - 1, Math.max(0, Math.ceil(wanted - 0.5 - 1e-9)));
  return { xs: Array.from({ length: count }, (_, index) => mainXM + (index - main) * spacingM), main };
}

function placeName(index: number, count: number): string {
  if (count === 1) return 'main seat';
  if (count === 2) return index === 0 ? 'left seat' : 'right seat';
  if (index === 0) return 'left end';
  if (index === count - 1) return 'right end';
  if (index === (count - 1) / 2) return 'middle';
  return `seat ${index + 1} from left`;
}
