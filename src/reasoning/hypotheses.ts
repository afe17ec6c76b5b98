/** Answers that could still be given: which questions are open, and what people might say. */
import type { Answer, FactBook } from '../facts/book.js';
import { FACT_IDS, type FactId, factSpec, isFactId, TEST_IDS } from '../facts/catalog.js';
import { impliedAnswer, toldOrImplied } from '../facts/implied.js';

const TESTS: ReadonlySet<FactId> = new Set<FactId>(TEST_IDS);
/** A home test is a fact that is found by doing something. */
export const isTest = (id: FactId): boolean => TESTS.has(id);

/**
 * Asked, told or implied: also a question that nobody could answer is not asked again; one that was answered in
 * several ways is.
 */
export function isAsked(book: FactBook, id: FactId): boolean {
  const answer = book.answers.get(id);
  return (answer !== undefined && answer.how !== 'conflicting') || impliedAnswer(book, id) !== undefined;
}

/** True where every fact that decides whether the question makes sense is told and as it should be. */
export function makesSense(book: FactBook, id: FactId): boolean {
  return Object.entries(factSpec(id).askedWhen ?? {}).every(([parent, accepted]) => {
    const value = isFactId(parent) ? toldOrImplied(book, parent) : undefined;
    return value !== undefined && accepted.includes(String(value));
  });
}

/** True where it makes sense now or still could, depending on what is not asked yet. */
export function couldMakeSense(book: FactBook, id: FactId): boolean {
  return Object.entries(factSpec(id).askedWhen ?? {}).every(([parent, accepted]) => {
    if (!isFactId(parent)) return false;
    const value = toldOrImplied(book, parent);
    if (value !== undefined) return accepted.includes(String(value));
    return !isAsked(book, parent) && couldMakeSense(book, parent);
  });
}

/** True where another answer, or what is complained of, has made the question pointless; an answer that stands still counts. */
export function isPointless(book: FactBook, id: FactId): boolean {
  const { pointlessWhen = {}, presupposes = [], bearsOn } = factSpec(id);
  const isUnknown = (other: string): boolean => isFactId(other) && book.answers.get(other)?.how === 'unknown';
  if (presupposes.some(isUnknown)) return true;
  if (bearsOn && book.complaints.length > 0 && !bearsOn.some((heard) => book.complaints.includes(heard)))
    return true;
  return Object.entries(pointlessWhen).some(([other, values]) => {
    if (!isFactId(other)) return false;
    const value = toldOrImplied(book, other) ?? book.answers.get(other)?.how;
    return value !== undefined && values.includes(String(value));
  });
}

/** Not asked yet, and worth putting now or once other answers are there. */
export const canBeAsked = (book: FactBook, id: FactId): boolean =>
  !isAsked(book, id) && couldMakeSense(book, id) && !isPointless(book, id);

/** Questions and tests that can be put now, in the order of the catalog. */
export function openFacts(book: FactBook): FactId[] {
  return FACT_IDS.filter((id) => canBeAsked(book, id) && makesSense(book, id));
}

/** The answers a question may get, as its typical owner would give them; none for a measured file. */
export function possibleAnswers(id: FactId): Answer[] {
  const spec = factSpec(id);
  if (spec.kind === 'file') return [];
  const values = spec.kind === 'choice' ? Object.keys(spec.choices) : spec.typical;
  return values.map((value) => ({ value, how: spec.usually }));
}
