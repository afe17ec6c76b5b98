/** How firmly a computed value stands: what each number that went into it moves, and the weakest that matters. */

import { type Core, type Sketch, shifted, sketchOf } from '../../compute/core.js';
import type { Outcome, Use } from '../../compute/evaluator.js';
import { logStep, oneDeviationOff } from '../../compute/uncertainty.js';
import { type FactId, factSpec } from '../../facts/catalog.js';
import { HOWS, type How } from '../../facts/spec.js';
import { MOST_SPREAD } from '../weight.js';
import { DERIVED, type DerivedId } from './table.js';

export interface Footing {
  /** The weakest of the choices and of the numbers that matter. */
  readonly howOf: (id: DerivedId, outcome: Outcome) => How;
  /** One standard deviation of the natural logarithm of a value: its parts and the doubt of the method. */
  readonly spreadOf: (id: DerivedId, outcome: Outcome) => number;
}

function remembered<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let value = map.get(key);
  if (value === undefined) {
    value = make();
    map.set(key, value);
  }
  return value;
}

/** Each value is computed again with one number after another shifted; cores shifted alike are shared. */
export function footingOf(core: Core): Footing {
  /** How far numbers move a value within their own uncertainty, as a natural logarithm, as far as somebody asked. */
  const moved = new Map<DerivedId, Map<FactId, number>>();
  const shiftedTo = new Map<FactId, Map<number, Sketch>>();
  let sketch: Sketch | undefined;
  const still = (): Sketch => {
    sketch ??= sketchOf(core);
    return sketch;
  };
  const shiftedSketch = (id: FactId, { doubt }: Use, to: number): Sketch =>
    remembered(
      remembered(shiftedTo, id, () => new Map<number, Sketch>()),
      to,
      () => shifted(still(), id, to, 'how' in doubt ? doubt.how : 'guessed'),
    );
  const movedBy = (id: DerivedId, outcome: Outcome, fact: FactId, use: Use): number =>
    remembered(
      remembered(moved, id, () => new Map<FactId, number>()),
      fact,
      () => measured(id, outcome, fact, use),
    );
  const measured = (id: DerivedId, outcome: Outcome, fact: FactId, use: Use): number => {
    const spec = factSpec(fact);
    if (typeof use.value !== 'number' || spec.kind !== 'number') return 0;
    const to = oneDeviationOff(fact, use.value, use.doubt);
    if (to === use.value) return 0;
    const { compute, proportionalTo, unit } = DERIVED[id];
    if (proportionalTo) return proportionalTo.includes(fact) ? logStep(use.value, to, spec.unit) : 0;
    const before = (outcome.onGrid ? still().evaluate(compute) : outcome).value;
    const movedTo = (shiftedTo: number): number => {
      const after = shiftedSketch(fact, use, shiftedTo).evaluate(compute);
      if (typeof before === 'number' && typeof after.value === 'number')
        return logStep(before, after.value, unit);
      // A word is moved where it becomes another one.
      return typeof before === 'string' && after.value !== before ? MATERIAL : 0;
    };
    // What is taken to be in the middle, or level, errs to either side, and a magnitude may hide one of them.
    const hasSides = use.value === 0 && 'spread' in use.doubt && spec.possible[0] < 0;
    // A word may turn on either side of a limit.
    const other = typeof before === 'string' ? Math.max(spec.possible[0], 2 * use.value - to) : -to;
    return hasSides || typeof before === 'string' ? Math.max(movedTo(to), movedTo(other)) : movedTo(to);
  };
  const spreadOf = (id: DerivedId, outcome: Outcome): number => {
    if (typeof outcome.value !== 'number') return 0;
    let sum = outcome.doubt ** 2;
    for (const [fact, use] of outcome.uses) sum += movedBy(id, outcome, fact, use) ** 2;
    return Math.min(MOST_SPREAD, Math.sqrt(sum));
  };
  const howOf = (id: DerivedId, outcome: Outcome): How => {
    let weakest = 0;
    for (const [fact, use] of outcome.uses) {
      const trust = HOWS.indexOf(howOfUse(fact, use));
      if (trust <= weakest) continue;
      if (typeof use.value !== 'number' || movedBy(id, outcome, fact, use) >= MATERIAL) weakest = trust;
    }
    return HOWS[weakest] ?? 'guessed';
  };
  return { howOf, spreadOf };
}

/**
 * A number that moves the value by less than this (as a logarithm, a factor of 1.28) does not decide how well it
 * is founded: it would move the weight by some two decibans, which the spread accounts for.
 */
const MATERIAL = 0.25;
/**
 * Choices that are so in about nineteen homes of twenty: assuming them errs as seldom as reading a label does.
 * Common practice, no source. The slope of a crossover is no such choice, but what it moves is accounted for as doubt.
 */
const NEARLY_ALWAYS: ReadonlySet<FactId> = new Set<FactId>([
  'centerOrientation',
  'centerPowered',
  'centerCrossoverSlope',
]);

/** How one fact was obtained, with an assumption as a guess. */
export function howOfUse(id: FactId, use: Use): How {
  if ('how' in use.doubt) return use.doubt.how;
  return NEARLY_ALWAYS.has(id) ? 'read' : 'guessed';
}
