import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, withAnswer } from '../../src/facts/book.js';
import { auditSync, changedFacts } from '../../src/reasoning/audit.js';
import { compare } from '../../src/reasoning/compare.js';
import { contrast } from '../../src/reasoning/contrast.js';
import { separators } from '../../src/reasoning/separate.js';
import { anyAnswer, anyBook } from './books.js';

const RUNS = { numRuns: 20 };

describe('why this and not that', () => {
  it('the rows add up to the difference, and the largest come first', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        const [a, b] = audit.ranking.causes;
        if (!a || !b) return;
        const found = contrast(audit, a.cause, b.cause);
        const sum = [...found.rows, ...found.common].reduce((s, row) => s + row.differenceDb, 0);
        expect(Math.abs(sum - found.differenceDb)).toBeLessThan(1e-9);
        const sizes = found.rows.map((row) => Math.abs(row.differenceDb));
        expect(sizes).toEqual([...sizes].sort((x, y) => y - x));
      }),
      RUNS,
    );
  });
  it('turned round, every row turns its sign', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        const [a, b] = audit.ranking.causes;
        if (!a || !b) return;
        const there = contrast(audit, a.cause, b.cause).differenceDb;
        expect(contrast(audit, b.cause, a.cause).differenceDb).toBeCloseTo(-there, 9);
      }),
      RUNS,
    );
  });
});

describe('what separates two causes', () => {
  it('is still open, and is expected to say something whichever of the two is true', () => {
    const audit = auditSync(EMPTY_BOOK);
    const found = separators(audit, 'driver-layout', 'delay');
    expect(found.length).toBeGreaterThan(0);
    for (const { fact, expectedDb } of found) {
      expect(audit.book.answers.has(fact)).toBe(false);
      expect(expectedDb).toBeGreaterThanOrEqual(1);
    }
  });
});

describe('two audits of one system', () => {
  it('an audit compared with itself shows no change', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        expect(compare(audit, audit)).toMatchObject({ changedFacts: [], causes: [] });
      }),
      { numRuns: 10 },
    );
  });
  it('names every changed answer and every cause whose verdict changed', () => {
    fc.assert(
      fc.property(anyBook, anyAnswer, (book, { id, answer }) => {
        const [before, after] = [auditSync(book), auditSync(withAnswer(book, id, answer))];
        const found = compare(before, after);
        expect(found.changedFacts).toEqual(changedFacts(book, after.book));
        const was = new Map(before.ranking.causes.map((c) => [c.cause, c.verdict]));
        const turned = after.ranking.causes.filter((c) => was.get(c.cause) !== c.verdict).map((c) => c.cause);
        expect(found.causes.map((c) => c.cause)).toEqual(expect.arrayContaining(turned));
      }),
      RUNS,
    );
  });
});
