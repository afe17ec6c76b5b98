/** What rules say about a case. */
import type { FactId } from '../facts/catalog.js';
import type { Unit } from '../facts/spec.js';
import type { Cause, Rule } from './cause.js';
import type { CauseId } from './cause-ids.js';
import type { Leaf } from './condition.js';

/** `not-applicable`: the rule's own gate, or that of its cause, is settled no. */
export type Outcome = 'yes' | 'no' | 'unknown' | 'not-applicable' | 'error';

export interface LeafTrace {
  readonly leaf: Leaf;
  readonly outcome: 'yes' | 'no' | 'unknown';
  readonly value: number | string | undefined;
  readonly limit: number | string | readonly string[] | undefined;
}

export interface Trace {
  readonly cause: CauseId;
  readonly rule: string;
  readonly outcome: Outcome;
  /** What its condition saw; empty where a gate is settled no. */
  readonly leaves: readonly LeafTrace[];
  /** Asked facts under still unknown branches, those of the gate of its cause first: what would settle it. */
  readonly open: readonly FactId[];
  /** Part of the leaves of its cause's gate that is not known, where the gate is still open; absent otherwise. */
  readonly gateOpen?: number;
  readonly error?: string;
}

/** One line of evidence. Unknown, not applicable and failed rules carry 0 decibans. */
export interface Evidence extends Trace {
  /** Weight before grouping and temperature, positive for the cause, capped. */
  readonly decibans: number;
  readonly value?: number;
  readonly threshold?: number;
  readonly ratio?: number;
  readonly unit?: Unit;
  /** Of a match: where the mechanism puts it, within what its inputs may be off. */
  readonly range?: readonly [low: number, high: number];
  /** Asked facts it rests on. */
  readonly facts: readonly FactId[];
  readonly assumed: readonly FactId[];
}

/** `cause/rule`, the id of a rule outside its cause. */
export const ruleId = (cause: Cause | CauseId, rule: Rule | string): string =>
  `${typeof cause === 'string' ? cause : cause.id}/${typeof rule === 'string' ? rule : rule.id}`;
