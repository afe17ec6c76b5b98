/**
 * Evaluates rules synchronously, without json-rules-engine: what-if questions need hundreds of audits
 * within milliseconds. A property test holds it equal to the engine.
 */
import type { FactId } from '../facts/catalog.js';
import type { Cause, Rule } from './cause.js';
import { type Condition, isLeaf, type Leaf, type LimitVar, type VarId } from './condition.js';
import type { LeafTrace, Outcome, Trace } from './evidence.js';
import { type Grade, LIMITS, type LimitId } from './limits.js';
import { fold, type LeafResult, SWAPPED, type Truth, type Verdict } from './verdict.js';
import type { View } from './view.js';

const limitValues = new Map<LimitVar, number>();

/** The number behind `limit.dipDb.clear`. */
export function limitValue(id: LimitVar): number {
  let value = limitValues.get(id);
  if (value === undefined) {
    const [, name, grade] = id.split('.') as [string, LimitId, Grade];
    value = LIMITS[name][grade];
    limitValues.set(id, value);
  }
  return value;
}

/** Both sides of a leaf as the view knows them, compared. */
function leafResult(leaf: Leaf, view: View): LeafResult {
  const value = view.read(leaf.fact).value;
  const limit = rightSide(leaf, view);
  return { value, limit, holds: value !== undefined && limit !== undefined && compare(leaf, value, limit) };
}

function rightSide(leaf: Leaf, view: View): LeafResult['limit'] {
  const operand = leaf.value;
  if (typeof operand === 'string') return operand;
  if (!('fact' in operand)) return operand;
  return operand.fact.startsWith('limit.')
    ? limitValue(operand.fact as LimitVar)
    : view.read(operand.fact as VarId).value;
}

function compare(leaf: Leaf, value: number | string, limit: NonNullable<LeafResult['limit']>): boolean {
  switch (leaf.operator) {
    case 'equal':
      return value === limit;
    case 'notEqual':
      return value !== limit;
    case 'in':
      return (limit as readonly string[]).includes(value as string);
    case 'notIn':
      return !(limit as readonly string[]).includes(value as string);
    default:
      return (
        typeof value === 'number' && typeof limit === 'number' && compareNumbers(leaf.operator, value, limit)
      );
  }
}

function compareNumbers(operator: Leaf['operator'], value: number, limit: number): boolean {
  if (operator === 'greaterThanInclusive') return value >= limit;
  if (operator === 'greaterThan') return value > limit;
  if (operator === 'lessThanInclusive') return value <= limit;
  return value < limit;
}

export function verdictOf(condition: Condition, view: View): Verdict {
  return fold(
    condition,
    (leaf) => leafResult(leaf, view),
    (id) => view.read(id).missing,
  );
}

/** The truth alone, found as soon as a part decides it: an answer that is only imagined is asked for no reasons. */
export function truthOf(condition: Condition, view: View): Truth {
  if (isLeaf(condition)) return leafTruth(condition, view);
  if ('not' in condition) return SWAPPED[truthOf(condition.not, view)];
  const deciding: Truth = 'all' in condition ? 'no' : 'yes';
  let truth = SWAPPED[deciding];
  for (const part of 'all' in condition ? condition.all : condition.any) {
    const found = truthOf(part, view);
    if (found === deciding) return deciding;
    if (found === 'unknown') truth = 'unknown';
  }
  return truth;
}

function leafTruth(leaf: Leaf, view: View): Truth {
  const { value } = view.read(leaf.fact);
  const limit = value === undefined ? undefined : rightSide(leaf, view);
  if (value === undefined || limit === undefined) return 'unknown';
  return compare(leaf, value, limit) ? 'yes' : 'no';
}

/** The gate of a cause, judged once for all its rules. */
export interface Gate {
  readonly truth: Truth;
  /** Part of its leaves that is unknown while it is open, else 0. */
  readonly openPart: number;
}

export function gateOf({ applies }: Cause, view: View): Gate {
  const truth = applies ? truthOf(applies, view) : 'yes';
  const isOpen = applies && truth === 'unknown';
  return { truth, openPart: isOpen ? openPart(verdictOf(applies, view)) : 0 };
}

/** What a trace of the rule would come to. */
export function outcomeOf(
  { applies, when }: Pick<Rule, 'applies' | 'when'>,
  gate: Gate,
  view: View,
): Outcome {
  if (gate.truth === 'no') return 'not-applicable';
  const ownGate = applies ? truthOf(applies, view) : 'yes';
  if (ownGate !== 'yes') return ownGate === 'no' ? 'not-applicable' : 'unknown';
  return truthOf(when, view);
}

interface Verdicts {
  readonly causeApplies: Verdict | undefined;
  /** Asked for only while no gate is settled no. */
  readonly applies: () => Verdict | undefined;
  readonly when: () => Verdict;
}

/**
 * The verdicts of a rule's three conditions joined: a gate settled no means the rule does not bear, the rule's own gate
 * open that it cannot tell; an open gate of its cause is noted, and the rule speaks.
 */
export function joinTrace(cause: Cause, rule: Rule, { causeApplies, applies, when }: Verdicts): Trace {
  const trace = (outcome: Outcome, leaves: readonly LeafTrace[], open: readonly FactId[]): Trace => {
    return { cause: cause.id, rule: rule.id, outcome, leaves, open };
  };
  if (causeApplies?.truth === 'no') return trace('not-applicable', [], []);
  const ownGate = applies();
  if (ownGate?.truth === 'no') return trace('not-applicable', [], []);
  const { truth, leaves, open } = when();
  const causeOpen = causeApplies?.truth === 'unknown' ? causeApplies.open : [];
  const gateOpen = openPart(causeApplies);
  const gate = gateOpen > 0 ? { gateOpen } : {};
  if (ownGate?.truth === 'unknown')
    return { ...trace('unknown', leaves, [...new Set([...causeOpen, ...ownGate.open, ...open])]), ...gate };
  // While it is open whether the cause applies, an answer speaks for all that it can speak for.
  return { ...trace(truth, leaves, [...new Set([...causeOpen, ...open])]), ...gate };
}

/** Part of a gate's leaves that is unknown; 0 where the gate is settled, or there is none. */
function openPart(gate: Verdict | undefined): number {
  if (gate?.truth !== 'unknown') return 0;
  return gate.leaves.filter((leaf) => leaf.outcome === 'unknown').length / gate.leaves.length;
}

/** The trace of one rule; a rule that throws becomes an error entry. */
export function traceRule(cause: Cause, rule: Rule, view: View, causeApplies?: Verdict): Trace {
  try {
    return joinTrace(cause, rule, {
      causeApplies: causeApplies ?? (cause.applies && verdictOf(cause.applies, view)),
      applies: () => rule.applies && verdictOf(rule.applies, view),
      when: () => verdictOf(rule.when, view),
    });
  } catch (error) {
    return errorTrace(cause, rule, error);
  }
}

export function errorTrace(cause: Cause, rule: Rule, error: unknown): Trace {
  const message = error instanceof Error ? error.message : String(error);
  return { cause: cause.id, rule: rule.id, outcome: 'error', leaves: [], open: [], error: message };
}
