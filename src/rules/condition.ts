/**
 * Conditions as data for json-rules-engine, built by typed helpers: a mistyped fact, choice, limit or
 * unit does not compile. A right-hand side that is a number is always a limit or a derived fact, so that
 * a trace carries the measured value and the limit.
 */
import type { Choice, ChoiceFactId, FactId, NumberFactId, UnitOf } from '../facts/catalog.js';
import type { Unit } from '../facts/spec.js';
import type { DERIVED, DerivedChoice, DerivedChoiceId, DerivedId, DerivedNumberId } from './derived/table.js';
import type { Grade, LIMITS, LimitId } from './limits.js';

/** What a leaf may read: an asked fact or a derived one. */
export type VarId = FactId | DerivedId;
export type NumberVar = NumberFactId | DerivedNumberId;
type ChoiceVar = ChoiceFactId | DerivedChoiceId;
/** A limit seen by the engine as a fact: `limit.dipDb.clear`. */
export type LimitVar = `limit.${LimitId}.${Grade}`;

export type Operator =
  | 'equal'
  | 'notEqual'
  | 'in'
  | 'notIn'
  | 'greaterThanInclusive'
  | 'greaterThan'
  | 'lessThanInclusive'
  | 'lessThan';
type Operand = string | readonly string[] | { readonly fact: LimitVar | NumberVar };
export interface Leaf {
  readonly fact: VarId;
  readonly operator: Operator;
  readonly value: Operand;
}
export type Condition =
  | Leaf
  | { readonly all: readonly [Condition, ...Condition[]] }
  | { readonly any: readonly [Condition, ...Condition[]] }
  | { readonly not: Condition };

type VarUnit<V extends NumberVar> = V extends NumberFactId
  ? UnitOf<V>
  : V extends DerivedNumberId
    ? (typeof DERIVED)[V]['unit']
    : never;
type ChoiceOf<V extends ChoiceVar> = V extends ChoiceFactId
  ? Choice<V>
  : V extends DerivedChoiceId
    ? DerivedChoice<V>
    : never;
type LimitsIn<U extends Unit> = { [L in LimitId]: (typeof LIMITS)[L]['unit'] extends U ? L : never }[LimitId];
type NumbersIn<U extends Unit> = { [N in NumberVar]: VarUnit<N> extends U ? N : never }[NumberVar];

/** A limit of the same unit, optionally with its grade (`clear` when left out), or another number of that unit. */
type Bound<U extends Unit> = LimitsIn<U> | `${LimitsIn<U>}.${Grade}` | { readonly other: NumbersIn<U> };

function boundVar(bound: string | { readonly other: NumberVar }): LimitVar | NumberVar {
  if (typeof bound !== 'string') return bound.other;
  return (bound.includes('.') ? `limit.${bound}` : `limit.${bound}.clear`) as LimitVar;
}

export const is = <V extends ChoiceVar>(fact: V, value: ChoiceOf<V>): Leaf => ({
  fact,
  operator: 'equal',
  value,
});
export const isNot = <V extends ChoiceVar>(fact: V, value: ChoiceOf<V>): Leaf => ({
  fact,
  operator: 'notEqual',
  value,
});
export const oneOf = <V extends ChoiceVar>(
  fact: V,
  ...value: readonly [ChoiceOf<V>, ...ChoiceOf<V>[]]
): Leaf => ({ fact, operator: 'in', value });
export const noneOf = <V extends ChoiceVar>(
  fact: V,
  ...value: readonly [ChoiceOf<V>, ...ChoiceOf<V>[]]
): Leaf => ({ fact, operator: 'notIn', value });
const compare =
  (operator: Operator) =>
  <V extends NumberVar>(fact: V, bound: Bound<VarUnit<V>>): Leaf => ({
    fact,
    operator,
    value: { fact: boundVar(bound as string | { other: NumberVar }) },
  });
export const atLeast = compare('greaterThanInclusive');
export const above = compare('greaterThan');
export const atMost = compare('lessThanInclusive');
export const below = compare('lessThan');
export const all = (first: Condition, ...rest: Condition[]): Condition => ({ all: [first, ...rest] });
export const any = (first: Condition, ...rest: Condition[]): Condition => ({ any: [first, ...rest] });
export const not = (condition: Condition): Condition => ({ not: condition });

export function isLeaf(condition: Condition): condition is Leaf {
  return 'fact' in condition;
}

const leaves = new WeakMap<Condition, readonly Leaf[]>();
const variables = new WeakMap<Condition, readonly VarId[]>();

/** The leaves of a condition in the order of the tree. Found once a condition. */
export const leavesOf = (condition: Condition): readonly Leaf[] =>
  remembered(leaves, condition, () => {
    if (isLeaf(condition)) return [condition];
    if ('not' in condition) return leavesOf(condition.not);
    return ('all' in condition ? condition.all : condition.any).flatMap(leavesOf);
  });

/** Every variable a condition reads, limits left out, each once, in order of appearance. Found once a condition. */
export const variablesOf = (condition: Condition): readonly VarId[] =>
  remembered(variables, condition, () => [...new Set(leavesOf(condition).flatMap(variablesIn))]);

function variablesIn({ fact, value }: Leaf): VarId[] {
  const isVariable = typeof value === 'object' && 'fact' in value && !value.fact.startsWith('limit.');
  return isVariable ? [fact, value.fact as NumberVar] : [fact];
}

function remembered<V>(known: WeakMap<Condition, V>, condition: Condition, find: () => V): V {
  let found = known.get(condition);
  if (found === undefined) {
    found = find();
    known.set(condition, found);
  }
  return found;
}
