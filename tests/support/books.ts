/** Random books of facts within what is possible, for property tests. */
import * as fc from 'fast-check';
import { ACT_IDS, ENTRIES_OF, OUTCOME_IDS, type Trial } from '../../src/facts/acts.js';
import type { Answer, FactBook, Seat } from '../../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { CONSTRAINT_IDS } from '../../src/facts/constraints.js';
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
  const conflicting = fc
    .uniqueArray(value, { minLength: 2, maxLength: 3 })
    .map((values): Answer => ({ how: 'conflicting', values }));
  return fc.oneof(
    { arbitrary: known, weight: 18 },
    { arbitrary: unknown, weight: 2 },
    { arbitrary: conflicting, weight: 1 },
  );
}

const answersTo = (ids: readonly FactId[]): fc.Arbitrary<ReadonlyMap<FactId, Answer>> =>
  fc
    .tuple(...ids.map((id) => answerTo(id).map((answer) => [id, answer] as const)))
    .map((answers) => new Map(answers));

/** One act with any outcome. */
export const anyTrial: fc.Arbitrary<Trial> = fc
  .record({
    act: fc.oneof(fc.constantFrom(...ACT_IDS), fc.constantFrom('delay/set-distances', 'aim/wedge')),
    outcome: fc.constantFrom(...OUTCOME_IDS),
    of: fc.constantFrom(undefined, ...ENTRIES_OF),
    complaint: fc.constantFrom(undefined, ...COMPLAINT_IDS),
    stays: fc.constantFrom(undefined, true, false),
  })
  .map(
    (trial) => Object.fromEntries(Object.entries(trial).filter(([, value]) => value !== undefined)) as never,
  );

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
    trials: fc.array(anyTrial, { maxLength: 4 }),
    constraints: fc.subarray(CONSTRAINT_IDS),
    beforeIds: fc.subarray(FACT_IDS, { maxLength: 3 }),
    solved: fc.constantFrom(undefined, true, false),
  })
  .chain(({ ids, beforeIds, title, words, notes, solved, ...rest }) =>
    fc.tuple(answersTo(ids), answersTo(beforeIds)).map(
      ([answers, before]): FactBook => ({
        ...rest,
        ...(solved === undefined ? {} : { solved }),
        ...(title ? { title } : {}),
        ...(words ? { words } : {}),
        notes: notes.filter((note) => note !== ''),
        answers,
        before,
      }),
    ),
  );
