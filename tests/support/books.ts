/** Random books of facts within what is possible, for property tests. */
import * as fc from 'fast-check';
import type { Answer, FactBook, Seat } from '../../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { SEAT_RANGES } from '../../src/facts/seat-list.js';
import { HOWS } from '../../src/facts/spec.js';
import { plainLine, plainText } from '../../src/lib/sanitize.js';

const double = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true }).map((value) => (value === 0 ? 0 : value));

/** A value people would write: a whole number of hundredths. */
const round = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((hundredths) => hundredths / 100);

/** One answer to a fact, known or not. */
export function answerTo(id: FactId): fc.Arbitrary<Answer> {
  const spec = factSpec(id);
  const how = fc.constantFrom(...HOWS);
  const unknown = fc.constant<Answer>({ how: 'unknown' });
  const value = ((): fc.Arbitrary<number | string> => {
    switch (spec.kind) {
      case 'choice':
        return fc.constantFrom(...Object.keys(spec.choices));
      case 'number': {
        const [low, high] = spec.possible;
        if (spec.whole) return fc.integer({ min: low, max: high });
        return high - low > 0.5 ? fc.oneof(double(low, high), round(low, high)) : double(low, high);
      }
      case 'file':
        return fc.constantFrom('center.txt', 'responses/left.txt', 'a b.txt');
    }
  })();
  const known = fc.record({ value, how }).map((answer): Answer => answer);
  return fc.oneof({ arbitrary: known, weight: 9 }, { arbitrary: unknown, weight: 1 });
}

const line = (maxLength: number): fc.Arbitrary<string> =>
  fc
    .string({ maxLength, unit: 'grapheme' })
    .map((text) => plainLine(text).slice(0, maxLength))
    .map(plainLine);

const seats: fc.Arbitrary<readonly Seat[]> = fc
  .array(
    fc.record({
      xM: double(...SEAT_RANGES.xM),
      yM: double(...SEAT_RANGES.yM),
      row: fc.integer({ min: 1, max: 10 }),
      earHeightM: fc.option(double(...SEAT_RANGES.earHeightM), { nil: undefined }),
    }),
    { maxLength: 6 },
  )
  .chain((list) =>
    fc.nat(Math.max(0, list.length - 1)).map((main) =>
      list.map(({ earHeightM, ...seat }, index) => ({
        name: `place ${index + 1}`,
        ...seat,
        ...(earHeightM === undefined ? {} : { earHeightM }),
        main: index === main,
      })),
    ),
  );

/** A whole book. Answers stand in the order of the catalog, as every reader leaves them. */
export const anyBook: fc.Arbitrary<FactBook> = fc
  .record({
    units: fc.constantFrom('metric' as const, 'imperial' as const),
    title: fc.option(line(60), { nil: '' }),
    words: fc.option(fc.string({ maxLength: 200, unit: 'grapheme' }).map(plainText), { nil: '' }),
    complaints: fc.subarray(COMPLAINT_IDS),
    absentComplaints: fc.subarray(COMPLAINT_IDS, { maxLength: 3 }),
    ids: fc.subarray(FACT_IDS, { maxLength: 40 }),
    seats,
    notes: fc.array(fc.string({ minLength: 1, maxLength: 80 }).map(plainText), { maxLength: 4 }),
    tried: fc.subarray(['delay/set-distances', 'height/lift-the-center']),
  })
  .chain(({ ids, title, words, notes, ...rest }) =>
    fc.tuple(...ids.map((id) => answerTo(id).map((answer) => [id, answer] as const))).map(
      (answers): FactBook => ({
        ...rest,
        ...(title ? { title } : {}),
        ...(words ? { words } : {}),
        notes: notes.filter((note) => note !== ''),
        answers: new Map(answers),
      }),
    ),
  );
