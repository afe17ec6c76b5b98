/** Seats told in two ways. */
import { type Seat, told } from '../book.js';
import { formatValue, plural } from '../format.js';
import { type Check, type Contradiction, clash, numberOf } from './clash.js';

export const seating: Check = (book) => {
  const count = numberOf(book, 'seatCount');
  const arrangement = told(book, 'seating');
  const out: Contradiction[] = [];
  if (arrangement === 'single-seat' && count !== undefined && count >= 2) {
    out.push(clash(book, 'single-seat-but-several', 'hard', ['seating', 'seatCount']));
  }
  if (book.seats.length === 0) return out;
  const listed = `The case lists ${plural(book.seats.length, 'seat')} in ${plural(rowsOf(book.seats), 'row')}.`;
  const front = book.seats.filter((seat) => seat.row === Math.min(...book.seats.map((each) => each.row)));
  if (arrangement === 'single-seat' && book.seats.length > 1) {
    out.push(clash(book, 'single-seat-but-list', 'hard', ['seating'], listed));
  }
  if (arrangement === 'one-row' && rowsOf(book.seats) > 1) {
    out.push(clash(book, 'one-row-but-list', 'hard', ['seating'], listed));
  }
  if (arrangement === 'several-rows' && rowsOf(book.seats) === 1) {
    out.push(clash(book, 'several-rows-but-list', 'soft', ['seating'], listed));
  }
  if (count !== undefined && count !== front.length) {
    const note = `The case lists ${plural(front.length, 'seat')} in the front row.`;
    out.push(clash(book, 'seat-count-but-list', 'hard', ['seatCount'], note));
  }
  return out;
};

/** A listed main seat and the told distance or offset may differ by so much: a head moves that far. Judgement. */
const SEAT_TOLERANCE_M = 0.25;

export const mainSeatListed: Check = (book) => {
  const seat = book.seats.find((each) => each.main);
  if (seat === undefined) return [];
  const sides = [
    ['seatDistance', seat.yM],
    ['mainSeatOffset', seat.xM],
  ] as const;
  return sides.flatMap(([id, listedM]) => {
    const value = numberOf(book, id);
    if (value === undefined || Math.abs(value - listedM) <= SEAT_TOLERANCE_M) return [];
    const note = `In the list of seats the main seat is at ${formatValue(listedM, 'm', { units: book.units })}.`;
    return [clash(book, `${id}-but-list`, 'hard', [id], note)];
  });
};

function rowsOf(seats: readonly Seat[]): number {
  return new Set(seats.map((seat) => seat.row)).size;
}
