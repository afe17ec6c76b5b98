/** What an interview would ask, for whoever has no terminal to hold one. */
import { acceptedAnswer } from '../facts/answer.js';
import type { FactBook } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { auditSync } from '../reasoning/audit.js';
import { next } from '../reasoning/next.js';
import { MOST_QUESTIONS } from './flow.js';

interface Missing {
  readonly fact: FactId;
  readonly ask: string;
  readonly howToFindOut: string;
  readonly accepted: string;
  readonly example: string;
  readonly minutes: number;
}

/** Open questions that can move a conclusion, the one to begin with first, then best first. */
export function missingFacts(book: FactBook): Missing[] {
  const { fact: first, candidates } = next(auditSync(book), { questionsOnly: true });
  const ids = [...new Set([...(first ? [first] : []), ...candidates.map(({ fact }) => fact)])];
  return ids.slice(0, MOST_QUESTIONS).map((fact) => {
    const { ask, findOut, minutes } = factSpec(fact);
    return {
      fact,
      ask,
      howToFindOut: findOut.join(' '),
      ...acceptedAnswer(factSpec(fact), book.units),
      minutes,
    };
  });
}
