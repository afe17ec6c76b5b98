import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { mainSeat, seatsOf } from '../../src/facts/seats.js';
import { anyBook } from '../support/books.js';

function bookOf(facts: Partial<Record<FactId, number | string>>): FactBook {
  return Object.entries(facts).reduce<FactBook>(
    (book, [id, value]) => withAnswer(book, id as FactId, { value, how: 'measured' }),
    EMPTY_BOOK,
  );
}
const places = (facts: Partial<Record<FactId, number | string>>) => {
  const { seats } = seatsOf(bookOf(facts));
  return seats.map((seat) => [seat.name, Number(seat.xM.toFixed(6)), seat.yM, seat.main]);
};

describe('seats without a list', () => {
  it('three on a sofa sit around the middle, the main one in it', () => {
    expect(places({ seatCount: 3, seatSpacing: 0.6, seatDistance: 3 })).toEqual([
      ['left end', -0.6, 3, false],
      ['middle', 0, 3, true],
      ['right end', 0.6, 3, false],
    ]);
  });

  it('two on a sofa sit on both sides of the middle when nobody said where the main one is', () => {
    expect(places({ seatCount: 2, seatSpacing: 0.6, seatDistance: 3 })).toEqual([
      ['left seat', -0.3, 3, false],
      ['right seat', 0.3, 3, true],
    ]);
  });

  it('two on a sofa are shifted when the main one is said to be in the middle', () => {
    expect(places({ seatCount: 2, seatSpacing: 0.6, seatDistance: 3, mainSeatOffset: 0 })).toEqual([
      ['left seat', 0, 3, true],
      ['right seat', 0.6, 3, false],
    ]);
  });

  it('a main seat off the middle takes the place in the row that leaves the row nearest to the middle', () => {
    expect(places({ seatCount: 3, seatSpacing: 0.6, seatDistance: 3, mainSeatOffset: -0.6 })).toEqual([
      ['left end', -0.6, 3, true],
      ['middle', 0, 3, false],
      ['right end', 0.6, 3, false],
    ]);
    expect(places({ seatCount: 4, seatSpacing: 0.6, seatDistance: 3, mainSeatOffset: 0.3 })).toEqual([
      ['left end', -0.9, 3, false],
      ['seat 2 from left', -0.3, 3, false],
      ['seat 3 from left', 0.3, 3, true],
      ['right end', 0.9, 3, false],
    ]);
  });

  it('one seat only is one seat, where it was said to be', () => {
    expect(places({ seating: 'single-seat', seatDistance: 2.5 })).toEqual([['main seat', 0, 2.5, true]]);
    expect(places({ seating: 'single-seat', seatDistance: 2.5, mainSeatOffset: 0.4 })).toEqual([
      ['main seat', 0.4, 2.5, true],
    ]);
  });

  it('a told count is not dropped for "one seat only"', () => {
    expect(places({ seating: 'single-seat', seatCount: 3, seatSpacing: 0.6, seatDistance: 3 })).toHaveLength(
      3,
    );
  });

  it('a second row stands behind the first, higher by the riser', () => {
    const { seats } = seatsOf(
      bookOf({
        seating: 'several-rows',
        seatCount: 1,
        seatDistance: 3,
        rowSpacing: 1.5,
        rowRiser: 0.3,
        earHeight: 1,
      }),
    );
    expect(seats).toEqual([
      { name: 'main seat', xM: 0, yM: 3, row: 1, main: true },
      { name: 'second row main seat', xM: 0, yM: 4.5, row: 2, earHeightM: 1.3, main: false },
    ]);
  });

  it('name what was assumed, and nothing that was told', () => {
    expect([...seatsOf(EMPTY_BOOK).assumed].sort()).toEqual([
      'mainSeatOffset',
      'seatCount',
      'seatDistance',
      'seatSpacing',
    ]);
    const told = bookOf({ seatCount: 3, seatSpacing: 0.6, seatDistance: 3, mainSeatOffset: 0 });
    expect(seatsOf(told).assumed).toEqual([]);
    expect(seatsOf(bookOf({ seating: 'single-seat', mainSeatOffset: 0 })).assumed).toEqual(['seatDistance']);
  });

  it('take an answer nobody knows like one nobody gave', () => {
    const unknown = withAnswer(EMPTY_BOOK, 'seatCount', { how: 'unknown' });
    expect(seatsOf(unknown)).toEqual(seatsOf(EMPTY_BOOK));
  });
});

describe('any book', () => {
  it('has exactly one main seat, finite places, names of their own, and listed seats as listed', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const plan = seatsOf(book);
        expect(plan.seats.filter((seat) => seat.main)).toHaveLength(1);
        expect(mainSeat(plan).main).toBe(true);
        expect(new Set(plan.seats.map((seat) => seat.name)).size).toBe(plan.seats.length);
        for (const { xM, yM } of plan.seats) expect(Number.isFinite(xM) && yM > 0).toBe(true);
        if (book.seats.length > 0) expect(plan).toEqual({ seats: book.seats, assumed: [] });
      }),
    );
  });

  it('puts the main seat where it was said to be', () => {
    const offset = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(offset, fc.integer({ min: 1, max: 8 }), (xM, count) => {
        const plan = seatsOf(bookOf({ mainSeatOffset: xM, seatCount: count, seatDistance: 3 }));
        expect(mainSeat(plan).xM).toBeCloseTo(xM, 12);
        expect(plan.seats).toHaveLength(count);
      }),
    );
  });
});
