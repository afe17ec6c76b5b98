/** What charts know: the computed value with what was assumed for it, or nothing at all. */
import { describe, expect, it } from 'vitest';
import { assumedNotes, type Known, knownIn } from '../../../src/explain/plots/known.js';
import { EMPTY_BOOK } from '../../../src/facts/book.js';
import { mainHead } from '../../../src/rules/derived/places.js';
import { bookOf } from '../../support/causeClaims.js';

describe('what is known of a book', () => {
  it('is what the model says of the facts told, with nothing assumed', () => {
    const ask = knownIn(bookOf({ seatDistance: 3, mainsBase: 2 }));
    expect(ask((r) => r.number('seatDistance') + r.number('mainsBase'))).toEqual({
      value: 5,
      assumed: new Map(),
    });
  });
  it('tells every fact that stands at what is usual, and no other', () => {
    const known = knownIn(bookOf({ seatDistance: 3, seating: 'single-seat', mainSeatOffset: 0 }))(mainHead);
    expect(known?.value).toEqual({ xM: 0, yM: 3, earHeightM: 1.05 });
    expect([...(known?.assumed ?? [])]).toEqual([['earHeight', 1.05]]);
  });
  it('is nothing where a fact is missing or the thing does not exist', () => {
    const ask = knownIn(EMPTY_BOOK);
    expect(ask((r) => r.choice('screenKind'))).toBeUndefined();
    expect(ask((r) => r.stop())).toBeUndefined();
    expect(ask(() => 0)).toEqual({ value: 0, assumed: new Map() });
  });
});

describe('the note on what was assumed', () => {
  const known = (...assumed: readonly (readonly ['earHeight' | 'mainsBase', number])[]): Known<unknown> => ({
    value: 1,
    assumed: new Map(assumed),
  });
  it('is left out where all was told', () => {
    expect(assumedNotes('metric', known(), undefined)).toEqual([]);
    expect(assumedNotes('metric')).toEqual([]);
  });
  it('names each fact once, with its value in the units of the owner', () => {
    expect(assumedNotes('metric', known(['earHeight', 1.05]), undefined, known(['earHeight', 1.05]))).toEqual(
      ['Not told and taken as usual: ear height 1.05 m (3 ft 5 1/2 in).'],
    );
    expect(assumedNotes('imperial', known(['earHeight', 1.05]), known(['mainsBase', 2.6]))[0]).toMatch(
      /^Not told and taken as usual: ear height 3 ft 5 1\/2 in \(1\.05 m\) and .+ 8 ft 6 1\/2 in \(2\.60 m\)\.$/,
    );
  });
});
