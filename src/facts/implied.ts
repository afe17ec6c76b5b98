/**
 * What a told fact says about others. Of the fact that decides whether it is asked: who tells the setback of the shelf
 * has told that the center stands on a shelf. And what its choice implies: a box in a bay has no screen in front.
 */
import { type FactBook, told } from './book.js';
import { FACT_IDS, type FactId, factSpec, isFactId } from './catalog.js';
import type { How } from './spec.js';

/** An answer that follows from another one, with the trust in that one. */
interface Implied {
  readonly value: string;
  readonly how: How;
}

interface Implication {
  readonly child: FactId;
  /** The choice of the child that implies it; any where left out. */
  readonly choice?: string;
  readonly value: string;
}

/** For each fact, those whose answer tells it: asked for exactly one of its values, or choices that imply one. */
const IMPLICATIONS = new Map<FactId, Implication[]>();
for (const child of FACT_IDS)
  for (const [parent, accepted] of Object.entries(factSpec(child).askedWhen ?? {})) {
    const [value, ...others] = accepted;
    if (!isFactId(parent) || value === undefined || others.length > 0) continue;
    IMPLICATIONS.set(parent, [...(IMPLICATIONS.get(parent) ?? []), { child, value }]);
  }
for (const child of FACT_IDS) {
  const spec = factSpec(child);
  const implies = spec.kind === 'choice' ? (spec.implies ?? {}) : {};
  for (const [choice, told] of Object.entries(implies))
    for (const [id, value] of Object.entries(told))
      if (isFactId(id)) IMPLICATIONS.set(id, [...(IMPLICATIONS.get(id) ?? []), { child, choice, value }]);
}

/** Facts from which the value of this one can follow. */
export function impliedBy(id: FactId): readonly FactId[] {
  return [...new Set((IMPLICATIONS.get(id) ?? []).map(({ child }) => child))];
}

/** The answer that follows from told facts; none when nothing implies one, or when they disagree. */
export function impliedAnswer(book: FactBook, id: FactId): Implied | undefined {
  let found: Implied | undefined;
  for (const { child, choice, value } of IMPLICATIONS.get(id) ?? []) {
    const answer = book.answers.get(child);
    if (!answer || !('value' in answer) || (choice !== undefined && answer.value !== choice)) continue;
    if (found && found.value !== value) return undefined;
    found ??= { value, how: answer.how };
  }
  return found;
}

/** The value of a fact as told, or as it follows from what was told. */
export function toldOrImplied(book: FactBook, id: FactId): number | string | undefined {
  return told(book, id) ?? impliedAnswer(book, id)?.value;
}
