/** The facts of a case with everything computed from them: lazy, remembered, and honest about its footing. */

import { ancestryOf } from '../../compute/asked.js';
import { type Core, createCore, type Earlier } from '../../compute/core.js';
import type { Use } from '../../compute/evaluator.js';
import { factSet } from '../../compute/fact-set.js';
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
  readonly footing: Footing;
}
const behind = new WeakMap<View, Behind>();

/** Every asked fact that can have a say in a variable; computations cannot read others (see reader.ts). */
export function factsBehind(id: VarId): readonly FactId[] {
  const direct = isFactId(id) ? [id] : DERIVED[id].needs;
  return [...new Set(direct.flatMap(ancestryOf))];
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
  const core = createCore(book, earlier && { ...earlier, from: earlier.from.core });
  const footing = footingOf(core, earlier && { ...earlier, from: earlier.from.footing });
  const readings = new Map<VarId, Reading>();
  const read = (id: VarId): Reading => {
    let reading = readings.get(id);
    if (reading === undefined) {
      reading = isFactId(id) ? askedReading(core, id) : derivedReading(core, footing, id);
      readings.set(id, reading);
    }
    return reading;
  };
  const view: View = {
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
  };
  behind.set(view, { core, footing });
  return view;
}

function reusable(
  book: FactBook,
  previous: { readonly view: View; readonly changed: readonly FactId[] } | undefined,
): Earlier<Behind> | undefined {
  const from = previous && behind.get(previous.view);
  if (!from || from.core.book.seats !== book.seats || from.core.book.responses !== book.responses)
    return undefined;
  return { from, changed: factSet(previous.changed) };
}

function derivedReading(core: Core, footing: Footing, id: DerivedId): Reading {
  const outcome = core.evaluate(DERIVED[id].compute);
  const facts = [...outcome.uses.keys()];
  const unit: Unit = DERIVED[id].unit;
  const { missing } = outcome;
  if (outcome.value === undefined)
    return { id, unit, value: undefined, assumed: [], facts, missing, how: 'measured', spread: 0 };
  let how: How | undefined;
  let spread: number | undefined;
  return {
    id,
    unit,
    value: outcome.value as number | string,
    assumed: facts.filter((fact) => 'spread' in (outcome.uses.get(fact) as Use).doubt),
    facts,
    missing: [],
    // Both need the value again for every number it rests on, so only when somebody asks.
    get how() {
      how ??= footing.howOf(id, outcome);
      return how;
    },
    get spread() {
      spread ??= footing.spreadOf(id, outcome);
      return spread;
    },
  };
}

function askedReading(core: Core, id: FactId): Reading {
  const spec = factSpec(id);
  const unit: Unit = spec.kind === 'number' ? spec.unit : '1';
  const state = core.state(id);
  if (state.kind === 'open' || state.kind === 'inapplicable') {
    const missing = state.kind === 'open' ? state.missing : [];
    return { id, unit, value: undefined, assumed: [], facts: [], missing, how: 'measured', spread: 0 };
  }
  const { value } = state;
  const doubt = state.kind === 'told' ? { how: state.how } : { spread: state.spread };
  return {
    id,
    unit,
    value,
    assumed: state.kind === 'assumed' ? [id] : [],
    facts: [id],
    missing: [],
    how: howOfUse(id, { value, doubt }),
    spread:
      typeof value === 'number'
        ? Math.min(MOST_SPREAD, logStep(value, oneDeviationOff(id, value, doubt), unit))
        : 0,
  };
}
