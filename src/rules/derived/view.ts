/** The facts of a case with everything computed from them: lazy, remembered, and honest about its footing. */
import { type Answer, type FactBook, withAnswer } from '../../facts/book.js';
import { type FactId, factSpec, isFactId } from '../../facts/catalog.js';
import { HOWS, type How, type NumberSpec, type Unit } from '../../facts/spec.js';
import type { VarId } from '../condition.js';
import type { Reading, View } from '../view.js';
import { ancestryOf, stateOf } from './asked.js';
import { type Core, createCore, type Outcome, type Use } from './core.js';
import { seatResultsOf } from './seat-results.js';
import { DERIVED, type DerivedId } from './table.js';
import { logStep, MOST_SPREAD, shifted } from './uncertainty.js';

/** Cores behind views, so that a later view can take over what still holds. */
const cores = new WeakMap<View, Core>();

/** Every asked fact that can have a say in a variable; computations cannot read others (see reader.ts). */
export function factsBehind(id: VarId): readonly FactId[] {
  const direct = isFactId(id) ? [id] : DERIVED[id].needs;
  return [...new Set(direct.flatMap(ancestryOf))];
}

/**
 * @param previous a view of a book that differs in the answers of `changed` only: results that looked at none
 * of them are taken over. Other seats or another folder void it.
 */
export function viewOf(
  book: FactBook,
  previous?: { readonly view: View; readonly changed: readonly FactId[] },
): View {
  const kept = previous ? stillValid(book, previous.view, previous.changed) : new Map<unknown, Outcome>();
  const core = createCore(book, (key) => kept.get(key));
  const readings = new Map<VarId, Reading>();
  const footing = footingOf(core);
  const read = (id: VarId): Reading => {
    let reading = readings.get(id);
    if (reading === undefined) {
      reading = isFactId(id) ? askedReading(book, id) : derivedReading(core, footing, id);
      readings.set(id, reading);
    }
    return reading;
  };
  const view: View = {
    book,
    seats: core.seats,
    read,
    seatResults: () => seatResultsOf(core),
    remarks: () => [...new Set([...core.outcomes.values()].flatMap((o) => (o.remark ? [o.remark] : [])))],
  };
  cores.set(view, core);
  return view;
}

function stillValid(book: FactBook, view: View, changed: readonly FactId[]): Map<unknown, Outcome> {
  const before = cores.get(view);
  const kept = new Map<unknown, Outcome>();
  if (!before || before.book.seats !== book.seats || before.book.folder !== book.folder) return kept;
  for (const [key, outcome] of before.outcomes)
    if (!changed.some((id) => outcome.reads.has(id))) kept.set(key, outcome);
  return kept;
}

/** How much each number moves a value, worked out once a value by computing it again with that number shifted. */
interface Footing {
  readonly contributions: (id: DerivedId, outcome: Outcome) => ReadonlyMap<FactId, number>;
}

function footingOf(core: Core): Footing {
  const shiftedCores = new Map<FactId, Core>();
  const known = new Map<DerivedId, ReadonlyMap<FactId, number>>();
  const shiftedCore = (id: FactId, use: Use, to: number): Core => {
    let found = shiftedCores.get(id);
    if (!found) {
      const answer: Answer = { value: to, how: 'how' in use.doubt ? use.doubt.how : 'guessed' };
      found = createCore(
        withAnswer(core.book, id, answer),
        (key) => {
          const outcome = core.outcomes.get(key);
          return outcome && !outcome.reads.has(id) ? outcome : undefined;
        },
        core.worstIndex,
      );
      shiftedCores.set(id, found);
    }
    return found;
  };
  const contributions = (id: DerivedId, outcome: Outcome): ReadonlyMap<FactId, number> => {
    let found = known.get(id);
    if (found) return found;
    const parts = new Map<FactId, number>();
    for (const [fact, use] of outcome.uses) {
      if (typeof use.value !== 'number' || typeof outcome.value !== 'number') continue;
      const to = shifted(fact, use.value, use.doubt);
      if (to === use.value) continue;
      const { compute, proportionalTo } = DERIVED[id];
      if (proportionalTo) {
        const unit = (factSpec(fact) as NumberSpec).unit;
        parts.set(fact, proportionalTo.includes(fact) ? logStep(use.value, to, unit) : 0);
        continue;
      }
      const moved = shiftedCore(fact, use, to).evaluate(id, compute).value;
      parts.set(fact, typeof moved === 'number' ? logStep(outcome.value, moved, DERIVED[id].unit) : 0);
    }
    found = parts;
    known.set(id, found);
    return found;
  };
  return { contributions };
}

/** A number that moves the value by less than this (as a logarithm) does not decide how well it is founded. */
const MATERIAL = 0.1;
/**
 * Choices that are so in about nineteen homes of twenty: assuming them errs as seldom as reading a label does.
 * Common practice, no source.
 */
const NEARLY_ALWAYS: ReadonlySet<FactId> = new Set<FactId>(['centerOrientation', 'centerPowered']);

function weakest(hows: Iterable<How>): How {
  let worst = 0;
  for (const how of hows) worst = Math.max(worst, HOWS.indexOf(how));
  return HOWS[worst] ?? 'guessed';
}

function howOf(id: FactId, use: Use): How {
  if ('how' in use.doubt) return use.doubt.how;
  return NEARLY_ALWAYS.has(id) ? 'read' : 'guessed';
}

function derivedReading(core: Core, footing: Footing, id: DerivedId): Reading {
  const outcome = core.evaluate(id, DERIVED[id].compute);
  const facts = [...outcome.uses.keys()];
  const common = { id, unit: DERIVED[id].unit as Unit, facts };
  if (outcome.value === undefined)
    return { ...common, value: undefined, assumed: [], missing: outcome.missing, how: 'measured', spread: 0 };
  let how: How | undefined;
  let spread: number | undefined;
  return {
    ...common,
    value: outcome.value as number | string,
    assumed: facts.filter((fact) => 'spread' in (outcome.uses.get(fact) as Use).doubt),
    missing: [],
    get how() {
      if (how === undefined) {
        const moved = footing.contributions(id, outcome);
        how = weakest(
          [...outcome.uses]
            .filter(
              ([fact, use]) =>
                typeof outcome.value !== 'number' ||
                typeof use.value !== 'number' ||
                (moved.get(fact) ?? 0) >= MATERIAL,
            )
            .map(([fact, use]) => howOf(fact, use)),
        );
      }
      return how;
    },
    get spread() {
      spread ??= Math.min(
        MOST_SPREAD,
        Math.hypot(outcome.doubt, ...footing.contributions(id, outcome).values()),
      );
      return spread;
    },
  };
}

function askedReading(book: FactBook, id: FactId): Reading {
  const spec = factSpec(id);
  const unit: Unit = spec.kind === 'number' ? spec.unit : '1';
  const state = stateOf(book, id);
  if (state.kind === 'open' || state.kind === 'inapplicable') {
    const missing = state.kind === 'open' ? state.missing : [];
    return { id, unit, value: undefined, assumed: [], facts: [], missing, how: 'measured', spread: 0 };
  }
  const use: Use = {
    value: state.value,
    doubt: state.kind === 'told' ? { how: state.how } : { spread: state.spread },
  };
  const spread =
    typeof use.value === 'number'
      ? Math.min(MOST_SPREAD, logStep(use.value, shifted(id, use.value, use.doubt), unit))
      : 0;
  return {
    id,
    unit,
    value: state.value,
    assumed: state.kind === 'assumed' ? [id] : [],
    facts: [id],
    missing: [],
    how: howOf(id, use),
    spread,
  };
}
