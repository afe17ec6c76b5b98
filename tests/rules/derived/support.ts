/** Books and readings for the claims about computed facts. */
import * as fc from 'fast-check';
import { type Answer, EMPTY_BOOK, type FactBook } from '../../../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec } from '../../../src/facts/catalog.js';
import { HOWS, type How } from '../../../src/facts/spec.js';
import type { VarId } from '../../../src/rules/condition.js';
import { viewOf } from '../../../src/rules/derived/view.js';
import type { Reading } from '../../../src/rules/view.js';
import { bookOf, type TestFacts, type TestSeat } from '../../support/causeClaims.js';

export function read(id: VarId, facts: TestFacts, seats?: readonly TestSeat[]): Reading {
  return viewOf(bookOf(facts, seats)).read(id);
}

/** The number, or NaN so that any comparison fails. */
export function numberOf(id: VarId, facts: TestFacts, seats?: readonly TestSeat[]): number {
  const { value } = read(id, facts, seats);
  return typeof value === 'number' ? value : Number.NaN;
}

export function withHow(facts: TestFacts, how: How): FactBook {
  const book = bookOf(facts);
  const answers = [...book.answers].map(([id, answer]): [FactId, Answer] => [
    id,
    { ...answer, how } as Answer,
  ]);
  return { ...book, answers: new Map(answers) };
}

function likelyAnswer(id: FactId): fc.Arbitrary<Answer> {
  const spec = factSpec(id);
  const how = fc.constantFrom(...HOWS);
  const value = ((): fc.Arbitrary<number | string> => {
    if (spec.kind === 'choice') return fc.constantFrom(...Object.keys(spec.choices));
    if (spec.kind === 'file') return fc.constant('center.txt');
    const [low, high] = spec.plausible;
    const within = spec.whole
      ? fc.integer({ min: low, max: high })
      : fc.double({ min: low, max: high, noNaN: true });
    return fc.oneof(within, fc.constantFrom(...spec.typical));
  })();
  return fc.record({ value, how });
}

/** A book as an owner might tell it: each fact known more often than not, within plausible ranges. */
export const richBook: fc.Arbitrary<FactBook> = fc
  .tuple(...FACT_IDS.map((id) => fc.option(likelyAnswer(id), { freq: 3, nil: undefined })))
  .map((answers): FactBook => {
    const told = FACT_IDS.flatMap((id, i): [FactId, Answer][] => {
      const answer = answers[i];
      return answer ? [[id, answer]] : [];
    });
    return { ...EMPTY_BOOK, answers: new Map(told) };
  });

export { likelyAnswer };
