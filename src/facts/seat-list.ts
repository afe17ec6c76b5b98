/** The list of seats of a case file. */

import type { Json } from '../lib/json-text.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import type { Seat, UnitSystem } from './book.js';
import { type Findings, problem } from './case-error.js';
import { CASE_LIMITS } from './case-limits.js';
import { formatValue } from './format.js';
import { stripSide } from './sides.js';
import { parseQuantity } from './units.js';

/** Where a seat of a home can be, meters. */
export const SEAT_RANGES = { xM: [-10, 10], yM: [0.2, 40], earHeightM: [0.3, 5] } as const;

const LEFT_RIGHT = { plus: 'right', minus: 'left' };

type Key = keyof typeof SEAT_RANGES;

/** Reads seats whose shape is known to be right. Keys end in M: a number alone is meters in every case. */
export function readSeats(list: Json | undefined, units: UnitSystem, found: Findings): Seat[] {
  if (!Array.isArray(list)) return [];
  const problemsBefore = found.problems.length;
  const seats = list.map((entry, index) =>
    readSeat(entry as unknown as RawSeat, `seats.${index}`, index, units, found),
  );
  if (found.problems.length > problemsBefore || seats.length === 0) return seats;
  const names = new Set<string>();
  for (const [index, seat] of seats.entries()) {
    if (names.has(seat.name)) {
      found.problems.push(
        problem(
          `seats.${index}.name`,
          `two seats are called ${quoted(seat.name)}`,
          'a name of its own for each seat',
          '"left end"',
        ),
      );
    }
    names.add(seat.name);
  }
  return withOneMain(seats, found);
}

interface RawSeat {
  readonly name?: string;
  readonly xM: number | string;
  readonly yM: number | string;
  readonly row?: number;
  readonly earHeightM?: number | string;
  readonly main?: boolean;
}

function readSeat(raw: RawSeat, path: string, index: number, units: UnitSystem, found: Findings): Seat {
  const length = (key: Key, value: number | string): number =>
    readLength(value, key, `${path}.${key}`, units, found);
  const name = plainLine(raw.name ?? '');
  return {
    name: name === '' ? `seat ${index + 1}` : name.slice(0, CASE_LIMITS.seatNameLetters),
    xM: length('xM', raw.xM),
    yM: length('yM', raw.yM),
    row: raw.row ?? 1,
    ...(raw.earHeightM === undefined ? {} : { earHeightM: length('earHeightM', raw.earHeightM) }),
    main: raw.main ?? false,
  };
}

function readLength(
  raw: number | string,
  key: Key,
  path: string,
  units: UnitSystem,
  found: Findings,
): number {
  const [low, high] = SEAT_RANGES[key];
  const accepted = `meters, or a text with its unit, from ${low} to ${high} m`;
  const example = units === 'metric' ? '2.8' : '"9 ft 2 in"';
  const refuse = (what: string): number => {
    found.problems.push(problem(path, what, accepted, example));
    return 0;
  };
  let value: number;
  if (typeof raw === 'number') value = raw;
  else {
    const { text, turned } = key === 'xM' ? stripSide(raw, LEFT_RIGHT) : { text: raw };
    const read = parseQuantity(text, { unit: 'm', written: 'length', units: 'metric' });
    if ('refused' in read) return refuse(read.refused.what);
    if (turned && read.value < 0) return refuse(`${quoted(raw)} has a minus and a side as well`);
    value = turned === 'minus' ? -read.value : read.value;
  }
  if (value < low || value > high) {
    return refuse(`${formatValue(value, 'm', { units })} cannot be right for a seat`);
  }
  return Object.is(value, -0) ? 0 : value;
}

/** Exactly one main seat: the one marked, or else the one nearest to the middle of the front row. */
function withOneMain(seats: Seat[], found: Findings): Seat[] {
  const marked = seats.filter((seat) => seat.main);
  if (marked.length === 1) return seats;
  if (marked.length > 1) {
    const names = marked.map((seat) => quoted(seat.name)).join(' and ');
    found.problems.push(
      problem('seats', `${names} are both marked as the main seat`, 'main: true at one seat'),
    );
    return seats;
  }
  const frontRow = Math.min(...seats.map((seat) => seat.row));
  const front = seats.filter((seat) => seat.row === frontRow);
  const main = front.reduce((best, seat) => (Math.abs(seat.xM) < Math.abs(best.xM) ? seat : best));
  if (seats.length > 1) {
    found.warnings.push({ path: 'seats', text: `no main seat is marked; ${quoted(main.name)} is taken` });
  }
  return seats.map((seat) => ({ ...seat, main: seat === main }));
}
