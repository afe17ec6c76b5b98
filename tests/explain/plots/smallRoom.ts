/** A small room: a center before a wall, mains beside it, two seats. */
import type { RoomChart, RoomItem } from '../../../src/explain/plots/chart.js';
import { type Ask, knownIn } from '../../../src/explain/plots/known.js';
import type { Report } from '../../../src/explain/report-types.js';
import type { FactBook } from '../../../src/facts/book.js';
import { bookOf, type TestFacts, type TestSeat } from '../../support/causeClaims.js';
import { reportOf } from './small.js';

export const FACTS: TestFacts = {
  ...{ centerCount: 'one', mainsBase: 2.6, mainsTweeterHeight: 1, centerTweeterHeight: 0.5 },
  ...{ centerSideOffset: 0, centerBehindMains: 0.2, earHeight: 1 },
};
export const SEATS: readonly TestSeat[] = [
  { name: 'middle', xM: 0, yM: 3 },
  { name: 'end', xM: 1, yM: 3 },
];
type Draw = (
  facts?: TestFacts,
  seats?: readonly TestSeat[],
  units?: 'metric' | 'imperial',
) => RoomChart | undefined;
export const drawer =
  (chart: (ask: Ask, book: FactBook, report: Report) => RoomChart | undefined): Draw =>
  (facts = {}, seats = SEATS, units = 'metric') => {
    const book: FactBook = bookOf({ ...FACTS, ...facts }, seats);
    return chart(
      knownIn(book),
      book,
      reportOf({ seats: book.seats.map(({ name, main, yM }) => ({ name, main, yM })), units }),
    );
  };
export const linesOf = (chart: RoomChart | undefined, role: string) =>
  chart?.items.flatMap((item) => (item.kind === 'line' && item.role === role ? [item.points] : []));
export const of = (chart: RoomChart | undefined, kind: RoomItem['kind']) =>
  chart?.items.filter((item) => item.kind === kind);
