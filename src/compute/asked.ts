/** What can be said of an asked fact: told, assumed, open (and which facts come first), or not applicable. */
import { type FactBook, told } from '../facts/book.js';
import { FACT_IDS, type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { impliedAnswer, impliedBy } from '../facts/implied.js';
import type { How } from '../facts/spec.js';

export type AskedState =
  | { readonly kind: 'told'; readonly value: number | string; readonly how: How }
  | { readonly kind: 'assumed'; readonly value: number | string; readonly spread: number }
  | { readonly kind: 'open'; readonly missing: readonly FactId[] }
  | { readonly kind: 'inapplicable' };

const INAPPLICABLE: AskedState = { kind: 'inapplicable' };

function parentsOf(id: FactId): FactId[] {
  return Object.keys(factSpec(id).askedWhen ?? {}).filter(isFactId);
}

function ancestry(id: FactId): FactId[] {
  return [id, ...parentsOf(id).flatMap(ancestry)];
}

const ANCESTRY = new Map(
  FACT_IDS.map((id) => [
    id,
    [...new Set(ancestry(id).flatMap((a) => [a, ...impliedBy(a)]))] as readonly FactId[],
  ]),
);

/** The fact, those that decide whether it is asked at all, and those from which one of these can follow. */
export function ancestryOf(id: FactId): readonly FactId[] {
  return ANCESTRY.get(id) ?? [id];
}

/**
 * A value told for a fact that is no longer asked does not count: after the box has moved from the bay to a
 * shelf, the width of the bay is history. While the deciding fact itself is not told, a told value stands.
 */
export function stateOf(book: FactBook, id: FactId): AskedState {
  const spec = factSpec(id);
  const before: FactId[] = [];
  for (const [parent, accepted] of Object.entries(spec.askedWhen ?? {})) {
    if (!isFactId(parent)) continue;
    const state = stateOf(book, parent);
    if (state.kind === 'inapplicable') return INAPPLICABLE;
    if (state.kind === 'open') before.push(...state.missing);
    else if (!accepted.includes(String(state.value))) {
      if (state.kind === 'told') return INAPPLICABLE;
      before.push(parent);
    }
  }
  const answer = book.answers.get(id);
  if (answer && 'value' in answer) return { kind: 'told', value: answer.value, how: answer.how };
  const implied = impliedAnswer(book, id);
  if (implied) return { kind: 'told', value: implied.value, how: implied.how };
  if (before.length > 0) {
    const parentAssumed = before.every(
      (parent) => told(book, parent) === undefined && 'assume' in factSpec(parent),
    );
    return { kind: 'open', missing: parentAssumed ? before : [...before, id] };
  }
  const assume = 'assume' in spec ? spec.assume : undefined;
  if (assume === undefined) return { kind: 'open', missing: [id] };
  return { kind: 'assumed', value: assume.value, spread: 'spread' in assume ? assume.spread : 0 };
}
