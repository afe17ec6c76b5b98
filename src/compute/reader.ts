/**
 * How a computation reads facts. The reader is typed by the facts a computation declares, so that what it
 * reads can never exceed what the dependency index knows; and it keeps book of what was read.
 */
import type { Grid } from '../acoustics/radiation.js';
import type { Response } from '../acoustics/response.js';
import type { Seat } from '../facts/book.js';
import type { Choice, ChoiceFactId, FactId, FileFactId, NumberFactId } from '../facts/catalog.js';
import type { Unit } from '../facts/spec.js';

/** What is typical where the catalog has no single default, e.g. a spacing that depends on the layout. */
export interface Typical {
  readonly value: number;
  /** One standard deviation of the natural logarithm. */
  readonly spread: number;
}

/** The facts from which the places of seats follow; the ear height of a second row rests on that of the first. */
export const SEAT_FACTS = [
  'seating',
  'seatCount',
  'seatSpacing',
  'seatDistance',
  'seatDistanceFrom',
  'mainSeatOffset',
  'rowSpacing',
  'rowRiser',
  'earHeight',
] as const satisfies readonly FactId[];
export type SeatFact = (typeof SEAT_FACTS)[number];

interface Worst<T> {
  readonly item: T;
  readonly badness: number;
}

export interface Reader<F extends FactId> {
  /** Value as told or assumed. Where it is neither, the computation stops and the fact is missing. */
  readonly number: (id: F & NumberFactId) => number;
  /** Several numbers; all that are missing are named at once. */
  readonly numbers: <const Ids extends readonly (F & NumberFactId)[]>(
    ...ids: Ids
  ) => { readonly [K in keyof Ids]: number };
  /** Value as told; else what is typical here, marked as assumed; unmarked where the fact does not apply. */
  readonly numberOr: (id: F & NumberFactId, typical: Typical) => number;
  /** Only what was told. */
  readonly toldNumber: (id: F & NumberFactId) => number | undefined;
  readonly choice: <Id extends F & ChoiceFactId>(id: Id) => Choice<Id>;
  readonly toldChoice: <Id extends F & ChoiceFactId>(id: Id) => Choice<Id> | undefined;
  /** Value as told; else what other answers suggest, marked as assumed. */
  readonly choiceOr: <Id extends F & ChoiceFactId>(id: Id, suggested: Choice<Id>) => Choice<Id>;
  /** Measured responses from files beside the case. */
  readonly responses: <const Ids extends readonly (F & FileFactId)[]>(
    ...ids: Ids
  ) => { readonly [K in keyof Ids]: Response };
  /**
   * Few frequencies for curves, where only the effect of a small shift is looked for; elsewhere undefined, and
   * models take their own.
   */
  readonly sketchGrid: () => Grid | undefined;
  /** A shared intermediate result, computed once a view. */
  readonly from: <T>(model: (r: Reader<F>) => T) => T;
  /** Whether a result can be told; what it looked at counts as looked at here, nothing as used. */
  readonly canTell: (model: (r: Reader<F>) => unknown) => boolean;
  /**
   * The worst of several, none of them empty. Where a value is computed again only to see how far a shifted
   * fact moves it, the one that was worst before stands for all.
   */
  readonly worst: <T>(items: readonly T[], badness: (item: T) => number) => Worst<T>;
  /** Uncertainty of the method itself, as a standard deviation of the natural logarithm of the value. */
  readonly doubt: (spread: number) => void;
  /** Stops: these facts would settle it. Without any, the value does not exist for this system. */
  readonly stop: (...missing: readonly (F & FactId)[]) => never;
}

/** What every reader can do; reached by the functions below, which ask for the right to the facts behind it. */
export interface SeatReader {
  readonly seats: () => readonly Seat[];
  readonly mainSeat: () => Seat;
}
const withSeats = (r: unknown): SeatReader => r as SeatReader;

/** Every seat in use; never empty. */
export const seatsIn = (r: Reader<SeatFact>): readonly Seat[] => withSeats(r).seats();
/** The seat all settings are made for. Rests on fewer facts than the whole row. */
export const mainSeatIn = (r: Reader<SeatFact>): Seat => withSeats(r).mainSeat();

/**
 * Thrown to stop a computation: facts that are missing, or none where the value does not apply. No Error, for it
 * is no fault and a stack trace costs more than the computation.
 */
export class Stop {
  readonly missing: readonly FactId[];
  constructor(missing: readonly FactId[]) {
    this.missing = missing;
  }
}

/** What a computed fact is called. */
export interface DerivedMeta {
  readonly kind: 'number' | 'choice';
  readonly unit: Unit;
  readonly label: string;
  readonly values?: readonly string[];
  /** Larger values are not told apart: this one means itself or more. */
  readonly atMost?: number;
}

export const number = <const U extends Unit>(
  unit: U,
  label: string,
  most: { readonly atMost?: number } = {},
) => ({ kind: 'number', unit, label, ...most }) as const;
export const choice = <const V extends readonly string[]>(label: string, values: V) =>
  ({ kind: 'choice', unit: '1', label, values }) as const;

type ValueOf<M extends DerivedMeta> = M extends { readonly values: readonly (infer V)[] } ? V : number;

/** The facts a computed fact may read, and its value; undefined where it does not exist. */
export interface Derivation {
  readonly needs: readonly FactId[];
  readonly compute: (r: Reader<FactId>) => number | string | undefined;
  /**
   * Where a value is slow to compute or moves in steps: it is as uncertain as these facts together, for it grows
   * or falls in proportion to them.
   */
  readonly proportionalTo?: readonly FactId[];
}

/** One computed fact. The reader is tied to the declared facts: reading another one does not compile. */
export function derive<const M extends DerivedMeta, const F extends FactId>(
  meta: M,
  needs: readonly F[],
  compute: (r: Reader<F>) => ValueOf<M> | undefined,
  proportionalTo?: readonly NoInfer<F>[],
): M & Derivation {
  // A reader of all facts is a reader of these; the cast only forgets which ones.
  const erased = compute as Derivation['compute'];
  return { ...meta, needs, compute: erased, ...(proportionalTo ? { proportionalTo } : {}) };
}
