/** Systems that the tests of reports share. */
import { type Answer, EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { bookOf, type TestFacts } from '../support/causeClaims.js';

const ROW: TestFacts = {
  seating: 'one-row',
  seatCount: 3,
  seatSpacing: 0.75,
  seatDistance: 2.2,
  centerCount: 'one',
  centerLayout: 'mid-tweeter-mid',
  centerOrientation: 'level',
  centerDriverSpacing: 0.34,
  centerCrossover: 2500,
  troubleSeats: 'off-middle',
  testSitMiddle: 'clear-in-middle',
};

/** A lying mid-tweeter-mid at a near sofa: a decided case with computed numbers. */
export const LOBING: FactBook = {
  ...bookOf(ROW),
  units: 'imperial',
  title: 'Near sofa',
  words: 'At the ends of the sofa the news sounds muffled.',
  complaints: ['voice-unclear-off-side'],
};

/** Only a complaint: nothing can be decided. */
export const SPARSE: FactBook = { ...EMPTY_BOOK, complaints: ['hollow'] };

export function told(book: FactBook, answers: Readonly<Record<string, Answer>>): FactBook {
  return { ...book, answers: new Map([...book.answers, ...(Object.entries(answers) as [FactId, Answer][])]) };
}
