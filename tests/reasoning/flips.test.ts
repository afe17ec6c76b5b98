import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FactBook, withAnswer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { type Audit, auditSync } from '../../src/reasoning/audit.js';
import { flips } from '../../src/reasoning/flips.js';
import { possibleAnswers } from '../../src/reasoning/hypotheses.js';
import { anyBook } from './books.js';

const small = anyBook.map((book): FactBook => ({ ...book, answers: new Map([...book.answers].slice(0, 9)) }));
const leaderWith = (audit: Audit, changes: readonly { fact: FactId; to: number | string }[]): string => {
  const book = changes.reduce((b, { fact, to }) => {
    const how = audit.book.answers.get(fact)?.how ?? 'guessed';
    return withAnswer(
      b,
      fact,
      how === 'unknown' || how === 'conflicting' ? { how: 'unknown' } : { value: to, how },
    );
  }, audit.book);
  return auditSync(book).ranking.leader;
};
/** Every single change of a told answer. */
function changesOf(audit: Audit) {
  return [...audit.book.answers].flatMap(([fact, told]) =>
    'value' in told
      ? possibleAnswers(fact).flatMap((a) =>
          'value' in a && a.value !== told.value ? [{ fact, to: a.value }] : [],
        )
      : [],
  );
}

describe('what would change the conclusion', () => {
  it('every flip flips, by an audit from scratch', () => {
    fc.assert(
      fc.property(small, (book) => {
        const audit = auditSync(book);
        for (const flip of flips(audit)) {
          expect(leaderWith(audit, flip.changes)).toBe(flip.leader);
          expect(flip.leader).not.toBe(audit.ranking.leader);
          expect(flip.byDb).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 12 },
    );
  });
  it('no smaller set does, and none is claimed where one exists: brute force over sets of up to two', () => {
    fc.assert(
      fc.property(small, (book) => {
        const audit = auditSync(book);
        const found = flips(audit);
        const single = changesOf(audit);
        const flipping = (sets: { fact: FactId; to: number | string }[][]): number =>
          sets.filter((set) => leaderWith(audit, set) !== audit.ranking.leader).length;
        const ones = flipping(single.map((c) => [c]));
        if (ones > 0) {
          expect(found.map((f) => f.changes.length)).toEqual(Array(ones).fill(1));
          return;
        }
        const pairs = single.flatMap((a, i) =>
          single.slice(i + 1).flatMap((b) => (a.fact === b.fact ? [] : [[a, b]])),
        );
        if (found.length > 0) expect(found.every((f) => f.changes.length === 2)).toBe(true);
        else expect(flipping(pairs)).toBe(0);
      }),
      { numRuns: 6 },
    );
  }, 60_000);
});
