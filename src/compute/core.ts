/** Computes and remembers for one book of facts, and takes over what still holds from the book before it. */
import { type Grid, SKETCH_GRID } from '../acoustics/radiation.js';
import { type FactBook, withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import { type SeatPlan, seatsOf } from '../facts/seats.js';
import type { How } from '../facts/spec.js';
import { type AskedState, stateOf } from './asked.js';
import {
  ancestrySet,
  type Basis,
  type Evaluator,
  evaluatorOn,
  type Model,
  type Outcome,
} from './evaluator.js';
import { type FactSet, factSet, overlap } from './fact-set.js';
import { SEAT_FACTS } from './reader.js';

export interface Core extends Evaluator {
  readonly book: FactBook;
  readonly plan: SeatPlan;
  readonly state: (id: FactId) => AskedState;
  /** Takes over all that still holds from the core this one came from, and lets go of that one. */
  readonly settle: () => void;
  readonly states: ReadonlyMap<FactId, AskedState>;
}

/** Something to take over from, but for what looked at facts that are answered differently now. */
export interface Earlier<T> {
  readonly from: T;
  readonly changed: FactSet;
}

/** Computes like a core, for comparison only. */
export type Sketch = Basis & Evaluator;

const SEAT_FACT_SET = factSet(SEAT_FACTS);

/** @param earlier the core of another book with the same seats and folder */
export function createCore(book: FactBook, earlier?: Earlier<Core>): Core {
  let source = earlier?.from;
  source?.settle();
  const changed = earlier?.changed ?? factSet();
  const plan = source && !overlap(changed, SEAT_FACT_SET) ? source.plan : seatsOf(book);
  const states = new Map<FactId, AskedState>();
  const state = (id: FactId): AskedState => {
    let found = states.get(id);
    if (found === undefined) {
      if (!overlap(ancestrySet(id), changed)) found = source?.states.get(id);
      found ??= stateOf(book, id);
      states.set(id, found);
    }
    return found;
  };
  const inherited = (model: Model): Outcome | undefined => {
    const outcome = source?.outcomes.get(model);
    return outcome && !overlap(outcome.reads, changed) ? outcome : undefined;
  };
  const evaluator = evaluatorOn({
    book,
    plan,
    state,
    inherited,
    likelyWorst: () => undefined,
    sketchGrid: undefined,
  });
  const settle = (): void => {
    for (const id of source?.states.keys() ?? []) state(id);
    for (const model of source?.outcomes.keys() ?? []) evaluator.known(model);
    source = undefined;
  };
  return { book, plan, state, states, settle, ...evaluator };
}

/**
 * A core with curves on few frequencies, and of several only the one that was the worst: what its shifted
 * copies are compared with.
 */
export function sketchOf(core: Core, grid: Grid = SKETCH_GRID): Sketch {
  const basis: Basis = {
    book: core.book,
    plan: core.plan,
    state: core.state,
    inherited: (model) => {
      const outcome = core.known(model);
      return outcome?.onGrid ? undefined : outcome;
    },
    likelyWorst: (model) => core.known(model)?.worst,
    sketchGrid: grid,
  };
  return { ...basis, ...evaluatorOn(basis) };
}

/** A sketch with one number a little different. */
export function shifted(sketch: Sketch, id: FactId, value: number, how: How): Sketch {
  const isSeatFact = SEAT_FACTS.some((fact) => fact === id);
  const book = isSeatFact ? withAnswer(sketch.book, id, { value, how }) : sketch.book;
  const told: AskedState = { kind: 'told', value, how };
  const moved = factSet([id]);
  const basis: Basis = {
    ...sketch,
    book,
    plan: isSeatFact ? seatsOf(book) : sketch.plan,
    state: (other) => (other === id ? told : sketch.state(other)),
    inherited: (model) => {
      const outcome = sketch.known(model);
      return outcome && !overlap(outcome.reads, moved) ? outcome : undefined;
    },
  };
  return { ...basis, ...evaluatorOn(basis) };
}
