import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COARSE_GRID, SKETCH_GRID } from '../../../src/acoustics/radiation.js';
import { type Core, createCore, shifted, sketchOf } from '../../../src/compute/core.js';
import type { Outcome } from '../../../src/compute/evaluator.js';
import { logStep, oneDeviationOff } from '../../../src/compute/uncertainty.js';
import { told, withAnswer } from '../../../src/facts/book.js';
import { FACT_IDS, type FactId } from '../../../src/facts/catalog.js';
import { HOWS } from '../../../src/facts/spec.js';
import { footingOf } from '../../../src/rules/derived/footing.js';
import { DERIVED, DERIVED_IDS, type DerivedId } from '../../../src/rules/derived/table.js';
import { factsBehind, viewOf } from '../../../src/rules/derived/view.js';
import type { View } from '../../../src/rules/view.js';
import { MOST_SPREAD } from '../../../src/rules/weight.js';
import { anyBook } from '../../support/books.js';
import { likelyAnswer, richBook } from './support.js';

const books = fc.oneof(richBook, anyBook);

function everything(view: View): unknown {
  return DERIVED_IDS.map((derived) => {
    const { id, unit, value, assumed, facts, missing, how, spread } = view.read(derived);
    return { id, unit, value, assumed, facts, missing, how, spread };
  });
}

/** The spread by its definition, with curves on the working grid instead of the sketch's. */
function spreadOnFineGrid(core: Core, id: DerivedId, outcome: Outcome): number {
  const { compute, unit } = DERIVED[id];
  const sketch = sketchOf(core, COARSE_GRID);
  const before = sketch.evaluate(compute).value as number;
  let sum = outcome.doubt ** 2;
  for (const [fact, { value, doubt }] of outcome.uses) {
    if (typeof value !== 'number') continue;
    const to = oneDeviationOff(fact, value, doubt);
    const steps = (value === 0 && 'spread' in doubt ? [to, -to] : [to]).map((there) => {
      const after = shifted(sketch, fact, there, 'how' in doubt ? doubt.how : 'guessed').evaluate(
        compute,
      ).value;
      return typeof after === 'number' ? logStep(before, after, unit) : 0;
    });
    sum += Math.max(...steps) ** 2;
  }
  return Math.min(MOST_SPREAD, Math.sqrt(sum));
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
          expect(HOWS, id).toContain(how);
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

  it('three views in a row, each read in part, agree with one computed afresh', () => {
    const change = fc
      .constantFrom(...FACT_IDS)
      .chain((id) => fc.tuple(fc.constant(id), fc.option(likelyAnswer(id), { nil: undefined, freq: 4 })));
    const someIds = fc.subarray([...DERIVED_IDS]);
    fc.assert(
      fc.property(richBook, fc.tuple(someIds, someIds), fc.tuple(change, change), (book, parts, changes) => {
        let [view, current] = [viewOf(book), book];
        changes.forEach(([id, answer], i) => {
          for (const derived of parts[i] ?? []) void view.read(derived).spread;
          current = withAnswer(current, id, answer);
          view = viewOf(current, { view, changed: [id] });
        });
        expect(everything(view)).toEqual(everything(viewOf(current)));
      }),
      { numRuns: 40 },
    );
  }, 120_000);

  it('a spread from few frequencies is that from many: within a tenth, or 0.03 where it is small', () => {
    fc.assert(
      fc.property(richBook, (book) => {
        const core = createCore(book);
        const { spreadOf } = footingOf(core);
        for (const id of DERIVED_IDS) {
          const outcome = core.evaluate(DERIVED[id].compute);
          if (!outcome.onGrid || typeof outcome.value !== 'number') continue;
          const fine = spreadOnFineGrid(core, id, outcome);
          // Where a dip lies is told in steps of the grid.
          const step = DERIVED[id].unit === 'Hz' ? SKETCH_GRID.stepDecades * Math.LN10 : 0;
          expect(Math.abs(spreadOf(id, outcome) - fine), id).toBeLessThan(0.03 + step + 0.1 * fine);
        }
      }),
      { numRuns: 60 },
    );
  }, 120_000);
});
