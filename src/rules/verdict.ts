/**
 * Three-valued verdicts (strong Kleene): a leaf with an undefined side is unknown; `all` is no if any part
 * is no, else unknown if any is unknown; `any` is the dual; `not` swaps. A settled verdict never changes
 * however the gaps are filled. json-rules-engine itself is two-valued and lets `notEqual`, `notIn` and
 * `not` fire on missing facts, so its group results are never used.
 */
import type { FactId } from '../facts/catalog.js';
import type { Condition, Leaf, VarId } from './condition.js';
import { isLeaf } from './condition.js';
import type { LeafTrace } from './evidence.js';

export type Truth = 'yes' | 'no' | 'unknown';

export interface Verdict {
  readonly truth: Truth;
  readonly leaves: readonly LeafTrace[];
  /** Asked facts under the branches that are still unknown. */
  readonly open: readonly FactId[];
}

/** What a leaf saw: both sides, and the comparison's result where both are known. */
export interface LeafResult {
  readonly value: LeafTrace['value'];
  readonly limit: LeafTrace['limit'];
  readonly holds: boolean;
}

/** Nothing is open. */
const NONE: readonly FactId[] = [];
export const SWAPPED: Record<Truth, Truth> = { yes: 'no', no: 'yes', unknown: 'unknown' };

/**
 * Folds a condition over the results of its leaves, which come in the order of the tree.
 * `missing` names the asked facts that would settle a variable.
 */
export function fold(
  condition: Condition,
  leafResult: (leaf: Leaf) => LeafResult,
  missing: (id: VarId) => readonly FactId[],
): Verdict {
  if (isLeaf(condition)) return leafVerdict(condition, leafResult(condition), missing);
  if ('not' in condition) {
    const inner = fold(condition.not, leafResult, missing);
    return { ...inner, truth: SWAPPED[inner.truth] };
  }
  const deciding: Truth = 'all' in condition ? 'no' : 'yes';
  const leaves: LeafTrace[] = [];
  let open: Set<FactId> | undefined;
  let truth: Truth = SWAPPED[deciding];
  for (const part of 'all' in condition ? condition.all : condition.any) {
    const verdict = fold(part, leafResult, missing);
    leaves.push(...verdict.leaves);
    if (verdict.truth === deciding) truth = deciding;
    else if (verdict.truth === 'unknown') {
      if (truth !== deciding) truth = 'unknown';
      open ??= new Set();
      for (const id of verdict.open) open.add(id);
    }
  }
  return { truth, leaves, open: truth === 'unknown' && open ? [...open] : NONE };
}

function leafVerdict(leaf: Leaf, result: LeafResult, missing: (id: VarId) => readonly FactId[]): Verdict {
  const { value, limit } = result;
  const truth: Truth = value === undefined || limit === undefined ? 'unknown' : result.holds ? 'yes' : 'no';
  const open = truth === 'unknown' ? missingSides(leaf, limit, missing) : NONE;
  return { truth, leaves: [{ leaf, outcome: truth, value, limit }], open };
}

function missingSides(
  leaf: Leaf,
  limit: LeafResult['limit'],
  missing: (id: VarId) => readonly FactId[],
): readonly FactId[] {
  const right = limit === undefined ? rightVariable(leaf) : undefined;
  return [...new Set([...missing(leaf.fact), ...(right ? missing(right) : [])])];
}

/** The variable on the right-hand side, where it is one and not a limit of the table. */
function rightVariable(leaf: Leaf): VarId | undefined {
  if (typeof leaf.value === 'string' || !('fact' in leaf.value)) return undefined;
  return leaf.value.fact.startsWith('limit.') ? undefined : (leaf.value.fact as VarId);
}
