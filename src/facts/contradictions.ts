/**
 * Answers that hardly stand together, told neutrally with both answers quoted. Nothing is resolved here: the
 * owner is asked once, and may leave it open.
 */
import type { FactBook } from './book.js';
import { type Check, type Contradiction, clash, holds } from './contradictions/clash.js';
import {
  mixedUnits,
  obstacleBeyondSeat,
  offTheStep,
  tapeAgainstLayout,
  tapeTest,
  wrongUnit,
} from './contradictions/distances.js';
import {
  clapAgainstMeasured,
  complaintAgainstAnswer,
  complaintTwice,
  loudnessAgainstMeter,
  opposedComplaints,
  silentCenter,
  taste,
} from './contradictions/hearing.js';
import { PAIRS } from './contradictions/pairs.js';
import { mainSeatListed, seating } from './contradictions/seating.js';
import { aboveCeiling, bayDepth, floorPlacement, heardHeight, sizes } from './contradictions/sizes.js';
import { trialAgainstTest } from './contradictions/trials.js';

export type { Contradiction } from './contradictions/clash.js';

const CHECKS: readonly Check[] = [
  wrongUnit,
  mixedUnits,
  offTheStep,
  tapeAgainstLayout,
  tapeTest,
  obstacleBeyondSeat,
  aboveCeiling,
  sizes,
  bayDepth,
  floorPlacement,
  heardHeight,
  seating,
  mainSeatListed,
  loudnessAgainstMeter,
  clapAgainstMeasured,
  opposedComplaints,
  complaintTwice,
  taste,
  silentCenter,
  complaintAgainstAnswer,
  trialAgainstTest,
];

/** All contradictions of a book, in a fixed order. */
export function contradictions(book: FactBook): Contradiction[] {
  return [...CHECKS.flatMap((check) => check(book)), ...pairs(book)];
}

function pairs(book: FactBook): Contradiction[] {
  return PAIRS.filter(({ a, b }) => holds(book, a) && holds(book, b)).map(({ id, kind, a, b, note }) =>
    clash(book, id, kind, [a.fact, b.fact], note),
  );
}
