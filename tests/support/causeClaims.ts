/**
 * Claims about a cause as data and pure checks, so that a test and the mutator of rules judge by the same
 * ones. Fact names and choices are typed.
 */
import { fileURLToPath } from 'node:url';
import { responsesIn } from '../../src/disk/response-files.js';
import { type Answer, EMPTY_BOOK, type FactBook, type Seat } from '../../src/facts/book.js';
import type { Choice, ChoiceFactId, FactId, FileFactId, NumberFactId } from '../../src/facts/catalog.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import { withResponses } from '../../src/facts/responses.js';
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
/** A complaint and the few answers of a first post, with values as people write them. */
interface FirstPost {
  readonly complaints: readonly [ComplaintId, ...ComplaintId[]];
  readonly facts: Partial<Record<FactId, string | number>>;
}
export interface CauseTests {
  /** Enough to bring the cause to the front: what an owner says at first is often no more. */
  readonly firstPosts: readonly [FirstPost, ...FirstPost[]];
  readonly fires: readonly [Example, ...Example[]];
  readonly silent: readonly [Example, ...Example[]];
  readonly cannotTell: readonly [Open, ...Open[]];
  readonly boundary?: readonly Boundary[];
}

/** What a claim sees in a cause, and what it must see. */
export interface Seen {
  readonly got: unknown;
  readonly wanted: unknown;
}
export interface Claim {
  readonly name: string;
  /** Of the cause, or of a mutant of it. Throws where a rule of the claim is gone. */
  readonly check: (cause: Cause) => Seen;
}

export function bookOf(facts: TestFacts, seats: readonly TestSeat[] = []): FactBook {
  const answers = Object.entries(facts).map(([id, fact]): [FactId, Answer] => [
    id as FactId,
    typeof fact === 'object' ? fact : { value: fact, how: 'measured' },
  ]);
  const book: FactBook = {
    ...EMPTY_BOOK,
    answers: new Map(answers),
    seats: seats.map((seat, i) => ({ name: `seat ${i + 1}`, row: 1, main: i === 0, ...seat })),
  };
  return withResponses(book, responsesIn(RESPONSES));
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

/** The view of a claim is made once: mutants of a cause do not change the facts. */
function lazy<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Decibans of each rule in each example in which it speaks or is silent, of a cause or of a mutant of it. */
export function weightsOf(tests: CauseTests): (cause: Cause) => Record<string, number[]> {
  const examples = [...tests.fires, ...tests.silent].map(({ facts, seats, rules }) => ({
    rules,
    view: lazy(() => viewOf(bookOf(facts, seats))),
  }));
  return (cause) =>
    Object.fromEntries(
      cause.rules.map(({ id }) => [
        id,
        examples
          .filter(({ rules }) => rules.includes(id))
          .map(({ view }) => Math.round(evidence(cause, id, view()).decibans * 10) / 10 + 0),
      ]),
    );
}

export function claimsOf(tests: CauseTests): Claim[] {
  const outcomes = ({ facts, seats, rules }: Example, wanted: string, word = (o: string): string => o) => {
    const view = lazy(() => viewOf(bookOf(facts, seats)));
    return (cause: Cause): Seen => ({
      got: rules.map((rule) => [rule, word(evidence(cause, rule, view()).outcome)]),
      wanted: rules.map((rule) => [rule, wanted]),
    });
  };
  const silence = (outcome: string): string =>
    outcome === 'no' || outcome === 'not-applicable' ? 'silent' : outcome;
  return [
    ...tests.fires.map((test) => ({ name: `fires: ${test.name}`, check: outcomes(test, 'yes') })),
    ...tests.silent.map((test) => ({
      name: `stays silent: ${test.name}`,
      check: outcomes(test, 'silent', silence),
    })),
    ...tests.cannotTell.map((test) => ({ name: `cannot tell yet: ${test.name}`, check: open(test) })),
    ...(tests.boundary ?? []).map((test) => ({ name: `at its threshold: ${test.name}`, check: turns(test) })),
    {
      name: 'what speaks for the cause weighs more than nothing, what speaks against it less',
      check: signs(tests),
    },
  ];
}

function open({ facts, rule, asks }: Open): Claim['check'] {
  const view = lazy(() => viewOf(bookOf(facts)));
  return (cause) => {
    const found = evidence(cause, rule, view());
    return {
      got: { outcome: found.outcome, asks: [...found.open].sort(), decibans: found.decibans },
      wanted: { outcome: 'unknown', asks: [...asks].sort(), decibans: 0 },
    };
  };
}

function turns({ rule, facts, derived, at, below, lowIsBad }: Boundary): Claim['check'] {
  const [first] = Object.keys(derived) as [VarId];
  const hair = (derived[first] as number) * (lowIsBad ? 1 + 1e-9 : 1 - 1e-9);
  const view = lazy(() => viewOf(bookOf(facts ?? {})));
  const outcome = (cause: Cause, values: Boundary['derived']): string =>
    evidence(cause, rule, overridden(view(), values)).outcome;
  return (cause) => ({
    got: { at: outcome(cause, derived), below: outcome(cause, { ...derived, [first]: hair }) },
    wanted: { at, below },
  });
}

/** A deviation above its threshold never speaks against the cause, one below never for it. */
function signs(tests: CauseTests): Claim['check'] {
  const views = lazy(() => [...tests.fires, ...tests.silent].map((t) => viewOf(bookOf(t.facts, t.seats))));
  return (cause) => {
    const deviations = cause.rules.filter((rule) => rule.weigh.kind === 'deviation');
    const wrong = deviations.filter(({ id }) =>
      views().some((view) => {
        const { outcome, decibans } = evidence(cause, id, view);
        return outcome === 'yes' ? decibans < 0 : outcome === 'no' && decibans > 0;
      }),
    );
    return { got: wrong.map((rule) => rule.id), wanted: [] };
  };
}

/** Rules of a cause that its claims leave out, by what is left out. */
export function gapsOf(cause: Cause, tests: CauseTests): Readonly<Record<string, readonly string[]>> {
  // What is made is held by tests/rules/telltales.test.ts and cleared.test.ts, all in one way.
  const ids = cause.rules.filter((rule) => !rule.madeFrom).map((rule) => rule.id);
  // A rule whose facts all have defaults is settled from the start, on assumed values.
  const empty = viewOf(bookOf({}));
  const missing = (wanted: readonly string[], have: readonly string[]): string[] =>
    wanted.filter((id) => !have.includes(id));
  return {
    'never fires': missing(
      ids,
      tests.fires.flatMap((t) => t.rules),
    ),
    'never silent': missing(
      ids,
      tests.silent.flatMap((t) => t.rules),
    ),
    'never unknown': missing(
      ids.filter((id) => evidence(cause, id, empty).outcome === 'unknown'),
      tests.cannotTell.map((t) => t.rule),
    ),
    'no threshold test': missing(
      cause.rules.filter((rule) => rule.weigh.kind === 'deviation').map((rule) => rule.id),
      (tests.boundary ?? []).map((t) => t.rule),
    ),
  };
}
