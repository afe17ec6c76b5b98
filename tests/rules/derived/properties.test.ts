import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { told, withAnswer } from '../../../src/facts/book.js';
import { FACT_IDS, type FactId } from '../../../src/facts/catalog.js';
import { DERIVED, DERIVED_IDS } from '../../../src/rules/derived/table.js';
import { factsBehind, viewOf } from '../../../src/rules/derived/view.js';
import type { View } from '../../../src/rules/view.js';
import { anyBook } from '../../support/books.js';
import { likelyAnswer, richBook } from './support.js';

const books = fc.oneof(richBook, anyBook);

function everything(view: View): unknown {
  return DERIVED_IDS.map((id) => ({ ...view.read(id) }));
}

describe('whatever an owner may tell', () => {
  it('every value is a finite number or one of its choices, and every footing is finite', () => {
    fc.assert(
      fc.property(books, (book) => {
        const view = viewOf(book);
        for (const id of DERIVED_IDS) {
          const { value, spread, how } = view.read(id);
          const meta: { kind: string; values?: readonly string[] } = DERIVED[id];
          if (value === undefined) continue;
          if (meta.kind === 'choice') expect(meta.values, id).toContain(value);
          else expect(value, id).toSatisfy(Number.isFinite);
          expect(spread, id).toBeGreaterThanOrEqual(0);
          expect(spread, id).toBeLessThanOrEqual(1.5);
          expect(['measured', 'read', 'recalled', 'guessed'], id).toContain(how);
        }
      }),
      { numRuns: 60 },
    );
  }, 120_000);

  it('the seats table holds no number that is not one', () => {
    fc.assert(
      fc.property(books, (book) => {
        const view = viewOf(book);
        const rows = view.seatResults();
        expect(rows).toHaveLength(view.seats.length);
        for (const { seat: _seat, ...row } of rows)
          for (const value of Object.values(row))
            if (value !== undefined) expect(value).toSatisfy(Number.isFinite);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('a value rests only on facts that the index knows, names as missing only what is not told', () => {
    fc.assert(
      fc.property(books, (book) => {
        const view = viewOf(book);
        for (const id of DERIVED_IDS) {
          const { facts, missing, assumed } = view.read(id);
          const behind = factsBehind(id);
          for (const fact of [...facts, ...missing, ...assumed]) expect(behind, id).toContain(fact);
          for (const fact of [...missing, ...assumed])
            expect(told(book, fact), `${id} ${fact}`).toBeUndefined();
        }
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('changing a fact outside of the index changes nothing', () => {
    fc.assert(
      fc.property(
        richBook,
        fc.constantFrom(...FACT_IDS).chain((id) => fc.tuple(fc.constant(id), likelyAnswer(id))),
        (book, [id, answer]) => {
          const before = viewOf(book);
          const after = viewOf(withAnswer(book, id, answer));
          for (const derived of DERIVED_IDS)
            if (!factsBehind(derived).includes(id))
              expect(after.read(derived).value, derived).toEqual(before.read(derived).value);
        },
      ),
      { numRuns: 60 },
    );
  }, 60_000);

  it('a view that takes over what still holds equals one computed afresh', () => {
    const change = fc
      .constantFrom(...FACT_IDS)
      .chain((id) => fc.tuple(fc.constant(id), fc.option(likelyAnswer(id), { nil: undefined, freq: 4 })));
    fc.assert(
      fc.property(richBook, fc.array(change, { minLength: 1, maxLength: 3 }), (book, changes) => {
        let changedBook = book;
        for (const [id, answer] of changes) changedBook = withAnswer(changedBook, id, answer);
        const changed = changes.map(([id]): FactId => id);
        const view = viewOf(book);
        everything(view);
        const reused = viewOf(changedBook, { view, changed });
        expect(everything(reused)).toEqual(everything(viewOf(changedBook)));
        expect(reused.seatResults()).toEqual(viewOf(changedBook).seatResults());
      }),
      { numRuns: 40 },
    );
  }, 120_000);
});
