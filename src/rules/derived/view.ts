/** The facts of a case with everything computed from them: lazy, remembered, and honest about its footing. */

import { ancestryOf } from '../../compute/asked.js';
import { type Core, createCore, type Earlier } from '../../compute/core.js';
import type { Outcome, Use } from '../../compute/evaluator.js';
import { type FactSet, factSet, overlap } from '../../compute/fact-set.js';
import { logStep, oneDeviationOff } from '../../compute/uncertainty.js';
import type { FactBook } from '../../facts/book.js';
import { type FactId, factSpec, isFactId } from '../../facts/catalog.js';
import type { How, Unit } from '../../facts/spec.js';
import type { VarId } from '../condition.js';
import type { Reading, View } from '../view.js';
import { MOST_SPREAD } from '../weight.js';
import { type Footing, footingOf, howOfUse } from './footing.js';
import { seatResultsOf } from './seat-results.js';
import { DERIVED, DERIVED_IDS, type DerivedId } from './table.js';

/** What stands behind a view, so that a later one can take over what still holds. */
interface Behind {
  readonly core: Core;
  readonly readings: ReadonlyMap<VarId, Reading>;
  /** Takes over the readings that still hold from the view this one came from, and lets go of that one. */
  readonly settle: () => void;
}
const BEHIND = Symbol('behind');
type Backed = View & { readonly [BEHIND]?: Behind };

/** Every asked fact that can have a say in a variable; computations cannot read others (see reader.ts). */
export function factsBehind(id: VarId): readonly FactId[] {
  const direct = isFactId(id) ? [id] : DERIVED[id].needs;
  return [...new Set(direct.flatMap(ancestryOf))];
}

const behindSets = new Map<VarId, FactSet>();

function behindSet(id: VarId): FactSet {
  let set = behindSets.get(id);
  if (set === undefined) {
    set = factSet(factsBehind(id));
    behindSets.set(id, set);
  }
  return set;
}

/**
 * @param previous a view of a book that differs in the answers of `changed` only: results that looked at none
 * of them are taken over. Other seats or responses void it.
 */
export function viewOf(
  book: FactBook,
  previous?: { readonly view: View; readonly changed: readonly FactId[] },
): View {
  const earlier = reusable(book, previous);
  let source = earlier?.from;
  source?.settle();
  const core = createCore(book, earlier && { ...earlier, from: earlier.from.core });
  const footing = footingOf(core);
  const readings = new Map<VarId, Reading>();
  const inherited = (id: VarId): Reading | undefined => {
    const reading = source?.readings.get(id);
    return reading && earlier && !overlap(behindSet(id), earlier.changed) ? reading : undefined;
  };
  const settle = (): void => {
    for (const id of source?.readings.keys() ?? []) if (inherited(id)) read(id);
    source = undefined;
  };
  const computed = (id: DerivedId): Reading =>
    new Computed(id, DERIVED[id].unit, core.evaluate(DERIVED[id].compute), footing);
  const read = (id: VarId): Reading => {
    let reading = readings.get(id);
    if (reading === undefined) {
      reading = inherited(id) ?? (isFactId(id) ? askedReading(core, id) : computed(id));
      readings.set(id, reading);
    }
    return reading;
  };
  const view: Backed = {
    book,
    seats: core.plan.seats,
    read,
    seatResults: () => seatResultsOf(core),
    assumedValue: (id) => {
      for (const derived of DERIVED_IDS) {
        const use = core.evaluate(DERIVED[derived].compute).uses.get(id);
        if (use && 'spread' in use.doubt) return use.value;
      }
      return undefined;
    },
    remarks: () => {
      const outcomes = DERIVED_IDS.map((id) => core.evaluate(DERIVED[id].compute));
      return [...new Set(outcomes.flatMap(({ remark }) => (remark === undefined ? [] : [remark])))];
    },
    [BEHIND]: { core, readings, settle },
  };
  return view;
}

function reusable(
  book: FactBook,
  previous: { readonly view: View; readonly changed: readonly FactId[] } | undefined,
): Earlier<Behind> | undefined {
  const from = previous && (previous.view as Backed)[BEHIND];
  if (!from || from.core.book.seats !== book.seats || from.core.book.responses !== book.responses)
    return undefined;
  return { from, changed: factSet(previous.changed) };
}

const NONE: readonly FactId[] = [];

/** What a value rests on, and how firmly, is found out when somebody asks: most only want the value. */
class Computed implements Reading {
  readonly value: number | string | undefined;
  readonly missing: readonly FactId[];
  readonly #outcome: Outcome;
  readonly #footing: Footing;
  #how: How | undefined;
  #spread: number | undefined;
  constructor(
    readonly id: DerivedId,
    readonly unit: Unit,
    outcome: Outcome,
    footing: Footing,
  ) {
    this.value = outcome.value as number | string | undefined;
    this.missing = outcome.value === undefined ? outcome.missing : NONE;
    this.#outcome = outcome;
    this.#footing = footing;
  }
  get facts(): readonly FactId[] {
    return [...this.#outcome.uses.keys()];
  }
  get assumed(): readonly FactId[] {
    if (this.value === undefined) return NONE;
    return [...this.#outcome.uses].flatMap(([fact, { doubt }]) => ('spread' in doubt ? [fact] : []));
  }
  // Both need the value again for every number it rests on.
  get how(): How {
    this.#how ??= this.value === undefined ? 'measured' : this.#footing.howOf(this.id, this.#outcome);
    return this.#how;
  }
  get spread(): number {
    this.#spread ??= this.value === undefined ? 0 : this.#footing.spreadOf(this.id, this.#outcome);
    return this.#spread;
  }
}

/** A fact that was told, or is assumed. */
class Asked implements Reading {
  readonly missing = NONE;
  constructor(
    readonly id: FactId,
    readonly unit: Unit,
    readonly value: number | string,
    readonly doubt: Use['doubt'],
  ) {}
  get facts(): readonly FactId[] {
    return [this.id];
  }
  get assumed(): readonly FactId[] {
    return 'spread' in this.doubt ? [this.id] : NONE;
  }
  get how(): How {
    return howOfUse(this.id, this);
  }
  get spread(): number {
    const { id, value, doubt, unit } = this;
    if (typeof value !== 'number') return 0;
    return Math.min(MOST_SPREAD, logStep(value, oneDeviationOff(id, value, doubt), unit));
  }
}

function askedReading(core: Core, id: FactId): Reading {
  const spec = factSpec(id);
  const unit: Unit = spec.kind === 'number' ? spec.unit : '1';
  const state = core.state(id);
  if (state.kind === 'told') return new Asked(id, unit, state.value, { how: state.how });
  if (state.kind === 'assumed') return new Asked(id, unit, state.value, { spread: state.spread });
  const missing = state.kind === 'open' ? state.missing : NONE;
  return { id, unit, value: undefined, assumed: NONE, facts: NONE, missing, how: 'measured', spread: 0 };
}
