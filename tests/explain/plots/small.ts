/** Small reports, facts and results for tests of single charts. */
import type { XY } from '../../../src/explain/plots/chart.js';
import { type Ask, type Known, knownIn } from '../../../src/explain/plots/known.js';
import type { Report, ReportCause, ReportSeat } from '../../../src/explain/report-types.js';
import type { FactId } from '../../../src/facts/catalog.js';
import { viewOf } from '../../../src/rules/derived/view.js';
import type { View } from '../../../src/rules/view.js';
import { bookOf, type TestFacts, type TestSeat } from '../../support/causeClaims.js';

/** The parts of a report that charts read; the first seat is the main one unless told otherwise. */
export function reportOf({
  seats = [],
  told = [],
  causes = [],
  units = 'metric',
}: {
  readonly seats?: readonly (string | Partial<ReportSeat>)[];
  readonly told?: readonly FactId[];
  readonly causes?: readonly Partial<ReportCause>[];
  readonly units?: Report['units'];
} = {}): Report {
  const listed = seats.map((seat, i) => ({
    main: i === 0,
    ...(typeof seat === 'string' ? { name: seat } : seat),
  }));
  return { units, seats: listed, told: told.map((fact) => ({ fact })), causes } as unknown as Report;
}

type Assumed = Known<unknown>['assumed'];
/** Answers the questions of a chart in turn, whatever is computed; nothing where there is no more. */
export function answering(...values: readonly unknown[]): Ask {
  const left = [...values];
  return <T>() => {
    const value = left.shift();
    return value === undefined ? undefined : { value: value as T, assumed: new Map() };
  };
}
/** One answer that rests on assumed facts. */
export const assuming =
  (value: unknown, ...assumed: readonly (readonly [FactId, number | string])[]): Ask =>
  <T>() => ({ value: value as T, assumed: new Map(assumed) as Assumed });

/** What is computed from facts, and a view of them. */
export function system(facts: TestFacts, seats: readonly TestSeat[] = []): { ask: Ask; view: View } {
  const book = bookOf(facts, seats);
  return { ask: knownIn(book), view: viewOf(book) };
}

/** A curve with the same value everywhere. */
export const level = (value: number, ...xs: readonly number[]): XY[] => xs.map((x): XY => [x, value]);
