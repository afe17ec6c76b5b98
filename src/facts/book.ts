/** The facts of one system as told so far: an immutable book of answers, complaints and seats. */
import type { Trial } from './acts.js';
import type { FactId } from './catalog.js';
import type { ComplaintId } from './complaints.js';
import type { ConstraintId } from './constraints.js';
import type { MeasuredResponse } from './responses.js';
import type { How } from './spec.js';

export type UnitSystem = 'metric' | 'imperial';

/**
 * An answer in SI units, a choice value, or a file path; a question that nobody could answer; or one that was
 * answered in several ways, of which none counts until it is asked again.
 */
export type Answer =
  | { readonly value: number | string; readonly how: How }
  | { readonly how: 'unknown' }
  | { readonly how: 'conflicting'; readonly values: readonly (number | string)[] };

/** A place for listening: `xM` to the right of the midline, `yM` back from the line between the mains. */
export interface Seat {
  readonly name: string;
  readonly xM: number;
  readonly yM: number;
  /** Row counted from 1 at the front. */
  readonly row: number;
  readonly earHeightM?: number;
  readonly main: boolean;
}

export interface FactBook {
  readonly units: UnitSystem;
  readonly title?: string;
  /** The complaint in the owner's own words, verbatim. */
  readonly words?: string;
  readonly complaints: readonly ComplaintId[];
  /** Complaints the owner was asked about and does not hear. */
  readonly absentComplaints: readonly ComplaintId[];
  readonly answers: ReadonlyMap<FactId, Answer>;
  /** Seats as listed in the case; empty when they follow from count, spacing and distance. */
  readonly seats: readonly Seat[];
  readonly notes: readonly string[];
  /** What was done and what it did, in the order told. */
  readonly trials: readonly Trial[];
  /** Answers as they were when the trouble was heard, of facts that a trial changed since; `answers` are today's. */
  readonly before: ReadonlyMap<FactId, Answer>;
  /** What must not be done in this home. */
  readonly constraints: readonly ConstraintId[];
  /** Whether the owner holds the trouble for settled; absent when not asked. */
  readonly solved?: boolean;
  /** What stands in the files that answers name, by path as told; see responses.ts. */
  readonly responses?: ReadonlyMap<string, MeasuredResponse>;
}

export const EMPTY_BOOK: FactBook = {
  units: 'metric',
  complaints: [],
  absentComplaints: [],
  answers: new Map(),
  seats: [],
  notes: [],
  trials: [],
  before: new Map(),
  constraints: [],
};

export function withAnswer(book: FactBook, id: FactId, answer: Answer | undefined): FactBook {
  const answers = new Map(book.answers);
  if (answer === undefined) answers.delete(id);
  else answers.set(id, answer);
  return { ...book, answers };
}

/** The told value of a fact, or undefined when it was not asked or not known. */
export function told(book: FactBook, id: FactId): number | string | undefined {
  const answer = book.answers.get(id);
  return answer && 'value' in answer ? answer.value : undefined;
}
