/** Which rules a fact can move, through computed facts too: only those are run again when it changes. */
import type { FactId } from '../facts/catalog.js';
import type { Cause, Rule } from '../rules/cause.js';
import { ruleVariables } from '../rules/cause.js';
import { type VarId, variablesOf } from '../rules/condition.js';
import { factsBehind } from '../rules/derived/view.js';

/** Variables that decide or weigh a rule: its conditions, the gate of its cause, deviation and limit. */
export function variablesOfRule(cause: Cause, rule: Rule): VarId[] {
  const conditions = [cause.applies, rule.applies, rule.when].flatMap((c) => (c ? variablesOf(c) : []));
  const limit = rule.weigh.kind === 'deviation' ? rule.weigh.limit : undefined;
  const computedLimit = limit && !limit.startsWith('limit.') ? [limit as VarId] : [];
  return [...new Set([...conditions, ...ruleVariables(rule), ...computedLimit])];
}

interface RuleIndex {
  /** Places of the causes that a fact can move. */
  readonly causesOf: ReadonlyMap<FactId, readonly number[]>;
  /** The same with the places of the rules that it can move in each of them. */
  readonly rulesOf: ReadonlyMap<FactId, ReadonlyMap<number, readonly number[]>>;
  /** Facts that share a rule with a fact, itself among them: what an answer may change the meaning of. */
  readonly neighbors: ReadonlyMap<FactId, ReadonlySet<FactId>>;
}

const indices = new WeakMap<readonly Cause[], RuleIndex>();

/** The index of a rule base, built once. */
export function ruleIndex(causes: readonly Cause[]): RuleIndex {
  const known = indices.get(causes);
  if (known) return known;
  const factsOf = causes.map((cause) =>
    cause.rules.map((rule) => new Set(variablesOfRule(cause, rule).flatMap(factsBehind))),
  );
  const rulesOf = new Map<FactId, Map<number, number[]>>();
  const neighbors = new Map<FactId, Set<FactId>>();
  factsOf.forEach((rules, place) => {
    rules.forEach((facts, rule) => {
      for (const id of facts) {
        const places = at(rulesOf, id, () => new Map<number, number[]>());
        at(places, place, () => []).push(rule);
        const near = at(neighbors, id, () => new Set<FactId>());
        for (const other of facts) near.add(other);
      }
    });
  });
  const causesOf = new Map([...rulesOf].map(([id, places]) => [id, [...places.keys()]]));
  const index = { causesOf, rulesOf, neighbors };
  indices.set(causes, index);
  return index;
}

/** What stands under a key, put there first where nothing does. */
function at<K, V>(map: Map<K, V>, key: K, start: () => V): V {
  const there = map.get(key);
  if (there !== undefined) return there;
  const value = start();
  map.set(key, value);
  return value;
}
