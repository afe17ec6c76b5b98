/** One reading of an asked or derived fact, with where it came from. */
import type { FactBook, Seat } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { How, Unit } from '../facts/spec.js';
import type { VarId } from './condition.js';

export interface Reading {
  readonly id: VarId;
  /** SI number, choice value, or undefined when it cannot be told yet. */
  readonly value: number | string | undefined;
  readonly unit: Unit;
  /** Asked facts whose assumed default went into the value. */
  readonly assumed: readonly FactId[];
  /** Asked facts the value rests on, told or assumed. */
  readonly facts: readonly FactId[];
  /**
   * Asked facts that are not known and would settle the value, those that decide whether others are asked
   * first. Empty when there is a value, and when the value does not exist for this system.
   */
  readonly missing: readonly FactId[];
  /**
   * The weakest way in which a fact it rests on was obtained; assumed defaults count as guessed. Numbers that
   * hardly move the value do not count, and choices that are so in nearly every home count as read.
   */
  readonly how: How;
  /** One standard deviation of the natural logarithm of the value, from the uncertainty of the facts. */
  readonly spread: number;
}

/** What one seat hears: the seats table of the report. */
export interface SeatResult {
  readonly seat: Seat;
  /** Undefined at a seat beside or behind the center. */
  readonly azimuthDeg: number | undefined;
  readonly distanceM: number;
  readonly dipDb: number | undefined;
  readonly dipHz: number | undefined;
  readonly speechLossDb: number | undefined;
  readonly centerMinusMainsMs: number | undefined;
  readonly phantomPullDeg: number | undefined;
}

/** The facts of a case with everything computed from them, each value computed once when first read. */
export interface View {
  readonly book: FactBook;
  readonly seats: readonly Seat[];
  read(id: VarId): Reading;
  seatResults(): readonly SeatResult[];
  /** The value that computations took for a fact that was not told; undefined where none did. */
  assumedValue(id: FactId): number | string | undefined;
  /** What could not be computed because the facts as told cannot be true together, or a file cannot be read. */
  remarks(): readonly string[];
}
