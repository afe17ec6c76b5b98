/**
 * The port to json-rules-engine, and its only importer. It decides the leaves, each distinct one once a case; trees are
 * folded three-valued (see verdict.ts). No priorities, no paths, no events with text, one fresh engine a run:
 * each of these is a trap of that library.
 */
import { Engine, type RuleProperties } from 'json-rules-engine';
import type { Cause } from './cause.js';
import { type Condition, type Leaf, type LimitVar, leavesOf, type VarId, variablesOf } from './condition.js';
import type { Trace } from './evidence.js';
import { errorTrace, joinTrace, limitValue } from './plain.js';
import { fold, type LeafResult, type Verdict } from './verdict.js';
import type { View } from './view.js';

type EngineFacts = Record<string, number | string>;
interface EngineLeaf {
  readonly factResult?: unknown;
  readonly valueResult?: unknown;
  readonly result?: boolean;
}

/** Traces of all rules, in the order of causes and rules. A leaf that fails takes only the rules with it that read it. */
export async function evaluate(causes: readonly Cause[], view: View): Promise<Trace[]> {
  const { keys, leaves, limits } = distinctLeaves(causes);
  const facts: EngineFacts = { ...limits };
  const broken = new Map<string, unknown>();
  const sound = new Map<string, Leaf>();
  for (const [key, leaf] of leaves) {
    try {
      for (const id of variablesOf(leaf)) addFact(facts, id, view);
      sound.set(key, leaf);
    } catch (error) {
      broken.set(key, error);
    }
  }
  const results = await runAll(sound, facts, broken);
  const resultOf = (leaf: Leaf): LeafResult => {
    const key = keys.get(leaf) as string;
    const found = results.get(key);
    if (found) return found;
    throw broken.get(key) ?? new Error('the rule engine returned no result for it');
  };
  const verdict = (condition: Condition): Verdict => fold(condition, resultOf, (id) => view.read(id).missing);
  return causes.flatMap((cause) => {
    let gate: Verdict | undefined;
    return cause.rules.map((rule) => {
      try {
        gate ??= cause.applies && verdict(cause.applies);
        return joinTrace(cause, rule, {
          causeApplies: gate,
          applies: () => rule.applies && verdict(rule.applies),
          when: () => verdict(rule.when),
        });
      } catch (error) {
        return errorTrace(cause, rule, error);
      }
    });
  });
}

interface DistinctLeaves {
  readonly keys: ReadonlyMap<Leaf, string>;
  /** One of each kind. */
  readonly leaves: Leaves;
  /** The limits they compare with. */
  readonly limits: Readonly<EngineFacts>;
}
const known = new WeakMap<readonly Cause[], DistinctLeaves>();

/** The leaves of all conditions, sorted out once a rule base. */
function distinctLeaves(causes: readonly Cause[]): DistinctLeaves {
  const found = known.get(causes);
  if (found) return found;
  const conditions = causes.flatMap((cause) => [
    cause.applies,
    ...cause.rules.flatMap((rule) => [rule.applies, rule.when]),
  ]);
  const all = conditions.flatMap((condition) => (condition ? leavesOf(condition) : []));
  const keys = new Map(all.map((leaf) => [leaf, keyOf(leaf)]));
  const leaves = new Map([...keys].map(([leaf, key]) => [key, leaf]));
  const limits = all.flatMap(({ value }) => {
    if (typeof value === 'string' || !('fact' in value) || !value.fact.startsWith('limit.')) return [];
    return [[value.fact, limitValue(value.fact as LimitVar)] as const];
  });
  const distinct = { keys, leaves, limits: Object.fromEntries(limits) };
  known.set(causes, distinct);
  return distinct;
}

const keyOf = ({ fact, operator, value }: Leaf): string => `${fact} ${operator} ${JSON.stringify(value)}`;

type Leaves = ReadonlyMap<string, Leaf>;
type Results = ReadonlyMap<string, LeafResult>;

async function runAll(leaves: Leaves, facts: EngineFacts, broken: Map<string, unknown>): Promise<Results> {
  try {
    return await run(leaves, facts);
  } catch {
    // One failing leaf makes the whole run of the library fail: run one by one to find it.
    const results = new Map<string, LeafResult>();
    for (const one of leaves) {
      try {
        for (const [key, result] of await run(new Map([one]), facts)) results.set(key, result);
      } catch (error) {
        broken.set(one[0], error);
      }
    }
    return results;
  }
}

/** All leaves as the parts of one `any` without priorities: the library evaluates every part of it. */
async function run(leaves: Leaves, facts: EngineFacts): Promise<Results> {
  const engine = new Engine([], { allowUndefinedFacts: true });
  engine.addRule({
    conditions: { any: [...leaves.values()] },
    event: { type: 'leaves' },
  } as unknown as RuleProperties);
  const { results, failureResults } = await engine.run(facts);
  const [tree] = [...results, ...failureResults].map(
    ({ conditions }) => (conditions as unknown as { readonly any: readonly EngineLeaf[] }).any,
  );
  return new Map(
    [...leaves.keys()].map((key, i) => {
      const { factResult, valueResult, result } = tree?.[i] ?? {};
      const value = factResult as LeafResult['value'];
      return [key, { value, limit: valueResult as LeafResult['limit'], holds: result === true }];
    }),
  );
}

/** Undefined values stay out: the library then hands `undefined` to the leaf, which we read as unknown. */
function addFact(facts: EngineFacts, id: VarId, view: View): void {
  const value = view.read(id).value;
  if (value !== undefined) facts[id] = value;
}
