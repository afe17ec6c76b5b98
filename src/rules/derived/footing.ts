/** How firmly a computed value stands: what each number that went into it moves, and the weakest that matters. */
import { type Answer, withAnswer } from '../../facts/book.js';
import { type FactId, factSpec } from '../../facts/catalog.js';
import { HOWS, type How } from '../../facts/spec.js';
import { type Core, createCore, type Outcome, type Use } from './core.js';
import { DERIVED, type DerivedId } from './table.js';
import { logStep, MOST_SPREAD, shifted } from './uncertainty.js';

/** How far each number moves the value within its own uncertainty, as a natural logarithm. */
export interface Parts {
  readonly moved: ReadonlyMap<FactId, number>;
  /** Every fact looked at on the way: a change of any may change the parts. */
  readonly reads: ReadonlySet<FactId>;
}

export interface Footing {
  readonly partsOf: (id: DerivedId, outcome: Outcome) => Parts;
  readonly known: ReadonlyMap<DerivedId, Parts>;
}

/** Each value is computed again with one number after another shifted; books shifted alike are shared. */
export function footingOf(core: Core, kept: ReadonlyMap<DerivedId, Parts>): Footing {
  const shiftedCores = new Map<string, Core>();
  const known = new Map(kept);
  const shiftedCore = (id: FactId, use: Use, to: number): Core => {
    const name = `${id} ${to}`;
    let found = shiftedCores.get(name);
    if (!found) {
      const answer: Answer = { value: to, how: 'how' in use.doubt ? use.doubt.how : 'guessed' };
      const unmoved = (key: unknown): Outcome | undefined => {
        const outcome = core.outcomes.get(key);
        return outcome?.reads.has(id) ? undefined : outcome;
      };
      const worst = (key: unknown) => core.outcomes.get(key)?.worst;
      found = createCore(withAnswer(core.book, id, answer), unmoved, worst);
      shiftedCores.set(name, found);
    }
    return found;
  };
  const partsOf = (id: DerivedId, outcome: Outcome): Parts => {
    const found = known.get(id) ?? compute(id, outcome);
    known.set(id, found);
    return found;
  };
  const compute = (id: DerivedId, outcome: Outcome): Parts => {
    const { value } = outcome;
    const moved = new Map<FactId, number>();
    const reads = new Set(outcome.reads);
    if (typeof value !== 'number') return { moved, reads };
    const { compute: computed, proportionalTo, unit } = DERIVED[id];
    for (const [fact, use] of outcome.uses) {
      const spec = factSpec(fact);
      if (typeof use.value !== 'number' || spec.kind !== 'number') continue;
      const to = shifted(fact, use.value, use.doubt);
      if (to === use.value) continue;
      if (proportionalTo) {
        moved.set(fact, proportionalTo.includes(fact) ? logStep(use.value, to, spec.unit) : 0);
        continue;
      }
      const again = shiftedCore(fact, use, to).evaluate(id, computed);
      for (const read of again.reads) reads.add(read);
      moved.set(fact, typeof again.value === 'number' ? logStep(value, again.value, unit) : 0);
    }
    return { moved, reads };
  };
  return { partsOf, known };
}

/** One standard deviation of the natural logarithm of a value: its parts and the doubt of the method. */
export function spreadOf(outcome: Outcome, { moved }: Parts): number {
  return Math.min(MOST_SPREAD, Math.hypot(outcome.doubt, ...moved.values()));
}

/**
 * A number that moves the value by less than this (as a logarithm, a factor of 1.28) does not decide how well it
 * is founded: it would move the weight by some two decibans, which the spread accounts for.
 */
const MATERIAL = 0.25;
/**
 * Choices that are so in about nineteen homes of twenty: assuming them errs as seldom as reading a label does.
 * Common practice, no source.
 */
const NEARLY_ALWAYS: ReadonlySet<FactId> = new Set<FactId>(['centerOrientation', 'centerPowered']);

/** How one fact was obtained, with an assumption as a guess. */
export function howOf(id: FactId, use: Use): How {
  if ('how' in use.doubt) return use.doubt.how;
  return NEARLY_ALWAYS.has(id) ? 'read' : 'guessed';
}

/** The weakest of the choices and of the numbers that matter. */
export function weakestOf(outcome: Outcome, { moved }: Parts): How {
  let worst = 0;
  for (const [fact, use] of outcome.uses) {
    const isNumber = typeof use.value === 'number' && typeof outcome.value === 'number';
    if (isNumber && (moved.get(fact) ?? 0) < MATERIAL) continue;
    worst = Math.max(worst, HOWS.indexOf(howOf(fact, use)));
  }
  return HOWS[worst] ?? 'guessed';
}
