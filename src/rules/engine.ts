/**
 * The port to json-rules-engine, and its only importer. It decides the leaves; groups are folded again
 * three-valued (see verdict.ts). No priorities, no paths, no events with text, one fresh engine a run:
 * each of these is a trap of that library.
 */
import { Engine, type RuleProperties } from 'json-rules-engine';
import type { Cause, Rule } from './cause.js';
import { type Condition, isLeaf, type Leaf, type LimitVar, type VarId, variablesOf } from './condition.js';
import type { Trace } from './evidence.js';
import { GRADES, LIMITS, type LimitId } from './limits.js';
import { errorTrace, joinTrace } from './plain.js';
import { fold, type LeafResult, type Verdict } from './verdict.js';
import type { View } from './view.js';

type EngineFacts = Record<string, number | string>;
interface EngineNode {
  readonly fact?: string;
  readonly factResult?: unknown;
  readonly valueResult?: unknown;
  readonly result?: boolean;
  readonly all?: readonly EngineNode[];
  readonly any?: readonly EngineNode[];
  readonly not?: EngineNode;
}

/** A condition of a cause or a rule, by name. */
interface Named {
  readonly name: string;
  readonly condition: Condition;
}

/** Traces of all rules, in the order of causes and rules. A rule that fails never takes others with it. */
export async function evaluate(causes: readonly Cause[], view: View): Promise<Trace[]> {
  const facts: EngineFacts = limitFacts();
  const broken = new Map<string, unknown>();
  const sound = causes.flatMap(conditionsOf).filter(({ name, condition }) => {
    try {
      for (const id of variablesOf(condition)) addFact(facts, id, view);
      return true;
    } catch (error) {
      broken.set(name, error);
      return false;
    }
  });
  const verdicts = await runAll(sound, facts, view, broken);
  const verdict = (name: string): Verdict => {
    const found = verdicts.get(name);
    if (found) return found;
    throw broken.get(name) ?? new Error('the rule engine returned no result for it');
  };
  return causes.flatMap((cause) =>
    cause.rules.map((rule) => {
      try {
        return joinTrace(cause, rule, {
          causeApplies: cause.applies && verdict(nameOf(cause)),
          applies: () => rule.applies && verdict(nameOf(cause, rule, 'applies')),
          when: () => verdict(nameOf(cause, rule, 'when')),
        });
      } catch (error) {
        return errorTrace(cause, rule, error);
      }
    }),
  );
}

function conditionsOf(cause: Cause): Named[] {
  return [
    ...(cause.applies ? [{ name: nameOf(cause), condition: cause.applies }] : []),
    ...cause.rules.flatMap((rule) => [
      ...(rule.applies ? [{ name: nameOf(cause, rule, 'applies'), condition: rule.applies }] : []),
      { name: nameOf(cause, rule, 'when'), condition: rule.when },
    ]),
  ];
}

async function runAll(
  named: readonly Named[],
  facts: EngineFacts,
  view: View,
  broken: Map<string, unknown>,
): Promise<Map<string, Verdict>> {
  try {
    return await run(named, facts, view);
  } catch {
    // One failing rule makes the whole run of the library fail: run one by one to find it.
    const verdicts = new Map<string, Verdict>();
    for (const one of named) {
      try {
        for (const [name, verdict] of await run([one], facts, view)) verdicts.set(name, verdict);
      } catch (error) {
        broken.set(one.name, error);
      }
    }
    return verdicts;
  }
}

async function run(named: readonly Named[], facts: EngineFacts, view: View): Promise<Map<string, Verdict>> {
  const engine = new Engine([], { allowUndefinedFacts: true });
  for (const { name, condition } of named)
    engine.addRule({
      name,
      conditions: { all: [condition] },
      event: { type: 'evidence' },
    } as unknown as RuleProperties);
  const { results, failureResults } = await engine.run(facts);
  const trees = new Map(
    [...results, ...failureResults].map((r) => [r.name, r.conditions as unknown as EngineNode]),
  );
  const verdicts = new Map<string, Verdict>();
  for (const { name, condition } of named) {
    const tree = trees.get(name)?.all?.[0];
    if (!tree) continue;
    const seen = new Map<Leaf, LeafResult>();
    pairLeaves(condition, tree, seen);
    verdicts.set(
      name,
      fold(
        condition,
        (leaf) => seen.get(leaf) as LeafResult,
        (id) => view.read(id).missing,
      ),
    );
  }
  return verdicts;
}

/** Walks our condition and the library's tree side by side: they have the same shape. */
function pairLeaves(condition: Condition, node: EngineNode, seen: Map<Leaf, LeafResult>): void {
  if (isLeaf(condition)) {
    seen.set(condition, {
      value: node.factResult as LeafResult['value'],
      limit: node.valueResult as LeafResult['limit'],
      holds: node.result === true,
    });
  } else if ('not' in condition) pairLeaves(condition.not, node.not as EngineNode, seen);
  else {
    const nodes = ('all' in condition ? node.all : node.any) as readonly EngineNode[];
    const parts = 'all' in condition ? condition.all : condition.any;
    parts.forEach((part, i) => {
      pairLeaves(part, nodes[i] as EngineNode, seen);
    });
  }
}

function nameOf(cause: Cause, rule?: Rule, part?: 'applies' | 'when'): string {
  return rule ? `${cause.id}/${rule.id}#${part}` : `${cause.id}#applies`;
}

/** Undefined values stay out: the library then hands `undefined` to the leaf, which we read as unknown. */
function addFact(facts: EngineFacts, id: VarId, view: View): void {
  const value = view.read(id).value;
  if (value !== undefined) facts[id] = value;
}

function limitFacts(): EngineFacts {
  return Object.fromEntries(
    (Object.keys(LIMITS) as LimitId[]).flatMap((id) =>
      GRADES.map((grade): [LimitVar, number] => [`limit.${id}.${grade}`, LIMITS[id][grade]]),
    ),
  );
}
