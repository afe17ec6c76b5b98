/**
 * The tester of causes: each rule must fire somewhere, stay silent somewhere, say what would settle it
 * somewhere, and (a computed deviation) turn exactly at its threshold. Fact names and choices are typed.
 */
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK, type FactBook, type Seat } from '../../src/facts/book.js';
import type { Choice, ChoiceFactId, FactId, FileFactId, NumberFactId } from '../../src/facts/catalog.js';
import type { How } from '../../src/facts/spec.js';
import type { Cause } from '../../src/rules/cause.js';
import type { VarId } from '../../src/rules/condition.js';
import { viewOf } from '../../src/rules/derived/view.js';
import type { Evidence } from '../../src/rules/evidence.js';
import { traceRule } from '../../src/rules/plain.js';
import type { View } from '../../src/rules/view.js';
import { weigh } from '../../src/rules/weigh.js';

type Told<V> = V | { readonly value: V; readonly how: How };
/** Facts as SI numbers or choice values; `measured` unless told otherwise. */
export type TestFacts = { readonly [Id in ChoiceFactId]?: Told<Choice<Id>> } & {
  readonly [Id in NumberFactId]?: Told<number>;
} & {
  /** The name of a file in `RESPONSES`. */
  readonly [Id in FileFactId]?: Told<string>;
};
export type TestSeat = Partial<Seat> & Pick<Seat, 'xM' | 'yM'>;

/** Where measured responses of the tests lie. */
export const RESPONSES = fileURLToPath(new URL('./responses/', import.meta.url));

interface Example {
  /** A claim about the trade. */
  readonly name: string;
  readonly facts: TestFacts;
  readonly seats?: readonly TestSeat[];
  readonly rules: readonly [string, ...string[]];
}
interface Open {
  readonly name: string;
  readonly facts: TestFacts;
  readonly rule: string;
  /** Exactly the facts that would settle it. */
  readonly asks: readonly FactId[];
}
interface Boundary {
  readonly name: string;
  readonly rule: string;
  readonly facts?: TestFacts;
  /** Values read directly, at the threshold. The first one is also moved a hair to the good side. */
  readonly derived: Partial<Record<VarId, number | string>>;
  readonly at: 'yes' | 'no';
  readonly below: 'yes' | 'no';
  /** The good side lies above the threshold (a clearance): the hair is added, not taken away. */
  readonly lowIsBad?: boolean;
}
export interface CauseTests {
  readonly fires: readonly [Example, ...Example[]];
  readonly silent: readonly [Example, ...Example[]];
  readonly cannotTell: readonly [Open, ...Open[]];
  readonly boundary?: readonly Boundary[];
}

export function bookOf(facts: TestFacts, seats: readonly TestSeat[] = []): FactBook {
  const answers = Object.entries(facts).map(([id, fact]): [FactId, Answer] => [
    id as FactId,
    typeof fact === 'object' ? fact : { value: fact, how: 'measured' },
  ]);
  return {
    ...EMPTY_BOOK,
    folder: RESPONSES,
    answers: new Map(answers),
    seats: seats.map((seat, i) => ({ name: `seat ${i + 1}`, row: 1, main: i === 0, ...seat })),
  };
}

/** A view in which some variables are set by hand. */
function overridden(view: View, values: Partial<Record<VarId, number | string>>): View {
  return {
    ...view,
    book: view.book,
    seats: view.seats,
    seatResults: () => view.seatResults(),
    read: (id) =>
      id in values
        ? {
            id,
            value: values[id],
            unit: view.read(id).unit,
            assumed: [],
            facts: [],
            missing: [],
            how: 'measured',
            spread: 0,
          }
        : view.read(id),
  };
}

function evidence(cause: Cause, ruleId: string, view: View): Evidence {
  const rule = cause.rules.find((r) => r.id === ruleId);
  if (!rule) throw new Error(`${cause.id} has no rule ${ruleId}`);
  return weigh(rule, traceRule(cause, rule, view), view);
}

export function testCause(cause: Cause, tests: CauseTests): void {
  describe(cause.id, () => {
    for (const { name, facts, seats, rules } of tests.fires)
      it(`fires: ${name}`, () => {
        const view = viewOf(bookOf(facts, seats));
        for (const rule of rules) expect(evidence(cause, rule, view), rule).toMatchObject({ outcome: 'yes' });
      });
    for (const { name, facts, seats, rules } of tests.silent)
      it(`stays silent: ${name}`, () => {
        const view = viewOf(bookOf(facts, seats));
        for (const rule of rules)
          expect(['no', 'not-applicable'], rule).toContain(evidence(cause, rule, view).outcome);
      });
    for (const { name, facts, rule, asks } of tests.cannotTell)
      it(`cannot tell yet: ${name}`, () => {
        const found = evidence(cause, rule, viewOf(bookOf(facts)));
        expect(found.outcome).toBe('unknown');
        expect([...found.open].sort()).toEqual([...asks].sort());
        expect(found.decibans).toBe(0);
      });
    for (const { name, rule, facts, derived, at, below, lowIsBad } of tests.boundary ?? [])
      it(`at its threshold: ${name}`, () => {
        const view = viewOf(bookOf(facts ?? {}));
        const [first] = Object.keys(derived) as [VarId];
        const hair = (derived[first] as number) * (lowIsBad ? 1 + 1e-9 : 1 - 1e-9);
        expect(evidence(cause, rule, overridden(view, derived)).outcome).toBe(at);
        expect(evidence(cause, rule, overridden(view, { ...derived, [first]: hair })).outcome).toBe(below);
      });
    it('every rule fires, stays silent, cannot tell, and every deviation has a threshold test', () => {
      const ids = cause.rules.map((rule) => rule.id);
      const deviations = cause.rules.filter((rule) => rule.weigh.kind === 'deviation').map((rule) => rule.id);
      expect(
        missing(
          ids,
          tests.fires.flatMap((t) => t.rules),
        ),
        'never fires',
      ).toEqual([]);
      expect(
        missing(
          ids,
          tests.silent.flatMap((t) => t.rules),
        ),
        'never silent',
      ).toEqual([]);
      // A rule whose facts all have defaults is settled from the start, on assumed values.
      const empty = viewOf(bookOf({}));
      const openAtFirst = ids.filter((id) => evidence(cause, id, empty).outcome === 'unknown');
      expect(
        missing(
          openAtFirst,
          tests.cannotTell.map((t) => t.rule),
        ),
        'never unknown',
      ).toEqual([]);
      expect(
        missing(
          deviations,
          (tests.boundary ?? []).map((t) => t.rule),
        ),
        'no threshold test',
      ).toEqual([]);
    });
    it('what speaks for the cause weighs more than nothing, what speaks against it less', () => {
      const views = [...tests.fires, ...tests.silent].map((t) => viewOf(bookOf(t.facts, t.seats)));
      for (const rule of cause.rules)
        for (const view of views) {
          const { outcome, decibans, ratio } = evidence(cause, rule.id, view);
          if (rule.weigh.kind === 'deviation' && outcome === 'yes' && (ratio ?? 0) > 1)
            expect(decibans, rule.id).toBeGreaterThanOrEqual(0);
          if (rule.weigh.kind === 'deviation' && outcome === 'no')
            expect(decibans, rule.id).toBeLessThanOrEqual(0);
        }
    });
  });
}

function missing(wanted: readonly string[], have: readonly string[]): string[] {
  return wanted.filter((id) => !have.includes(id));
}
