/**
 * Causes of which at most one applies: their gates ask the same thing. An answer that several of them read speaks for
 * each, and is shared among them while their gates are open.
 */
import type { Cause, Rule } from './cause.js';
import { variablesOf } from './condition.js';

const known = new WeakMap<readonly Cause[], ReadonlyMap<Rule, number>>();

/** For each rule of a gated cause, how many siblings have a rule on the same variable. */
export function siblingsOf(causes: readonly Cause[]): ReadonlyMap<Rule, number> {
  let counts = known.get(causes);
  if (counts === undefined) {
    counts = counted(causes);
    known.set(causes, counts);
  }
  return counts;
}

function counted(causes: readonly Cause[]): ReadonlyMap<Rule, number> {
  const gated = causes.map((cause) => ({ cause, gate: cause.applies ? variablesOf(cause.applies) : [] }));
  const counts = new Map<Rule, number>();
  for (const { cause, gate } of gated) {
    const siblings = gated.filter((o) => o.cause !== cause && o.gate.some((id) => gate.includes(id)));
    for (const rule of cause.rules) {
      const read = variablesOf(rule.when);
      const alike = siblings.filter(({ cause: other }) =>
        other.rules.some((r) => variablesOf(r.when).some((id) => read.includes(id))),
      );
      if (alike.length > 0) counts.set(rule, alike.length);
    }
  }
  return counts;
}
