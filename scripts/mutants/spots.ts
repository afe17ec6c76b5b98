/** Where a condition can be changed: each node of the tree with what the whole becomes when it is another one. */
import { type Condition, isLeaf } from '../../src/rules/condition.js';

export interface Spot {
  readonly here: Condition;
  /** The whole condition with another node in this place. */
  readonly put: (next: Condition) => Condition;
}

/** Every node, the whole first. */
export function spotsOf(condition: Condition): Spot[] {
  const below = (part: Condition, wrap: (next: Condition) => Condition): Spot[] =>
    spotsOf(part).map(({ here, put }) => ({ here, put: (next) => wrap(put(next)) }));
  const within = (parts: readonly Condition[], join: (parts: never) => Condition): Spot[] =>
    parts.flatMap((part, i) =>
      below(part, (next) => join(parts.map((old, j) => (j === i ? next : old)) as never)),
    );
  const whole: Spot = { here: condition, put: (next) => next };
  if (isLeaf(condition)) return [whole];
  if ('all' in condition) return [whole, ...within(condition.all, (all) => ({ all }))];
  if ('any' in condition) return [whole, ...within(condition.any, (any) => ({ any }))];
  return [whole, ...below(condition.not, (not) => ({ not }))];
}
