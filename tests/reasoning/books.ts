/** Random and hand-made books for tests of the reasoning: any facts of the catalog, known to any degree. */
import fc from 'fast-check';
import { type Answer, EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { HOWS } from '../../src/facts/spec.js';

function answerTo(id: FactId): fc.Arbitrary<Answer> {
  const spec = factSpec(id);
  if (spec.kind === 'file') return fc.constant({ how: 'unknown' });
  const value: fc.Arbitrary<number | string> =
    spec.kind === 'choice'
      ? fc.constantFrom(...Object.keys(spec.choices))
      : fc.constantFrom(...spec.typical, ...spec.plausible);
  return fc.oneof(
    { weight: 9, arbitrary: fc.record({ value, how: fc.constantFrom(...HOWS) }) },
    { weight: 1, arbitrary: fc.constant<Answer>({ how: 'unknown' }) },
  );
}

/** Up to 40 answers to facts drawn from the catalog, and some complaints. */
export const anyBook: fc.Arbitrary<FactBook> = fc
  .record({
    ids: fc.uniqueArray(fc.constantFrom(...FACT_IDS), { maxLength: 40 }),
    heard: fc.shuffledSubarray(COMPLAINT_IDS, { maxLength: 6 }),
    present: fc.integer({ min: 0, max: 4 }),
  })
  .chain(({ ids, heard, present }) =>
    fc.tuple(...ids.map(answerTo)).map((answers) => ({
      ...EMPTY_BOOK,
      complaints: heard.slice(0, present),
      absentComplaints: heard.slice(present),
      answers: new Map(ids.map((id, i) => [id, answers[i] as Answer])),
    })),
  );

export const anyAnswer: fc.Arbitrary<{ id: FactId; answer: Answer }> = fc
  .constantFrom(...FACT_IDS)
  .chain((id) => answerTo(id).map((answer) => ({ id, answer })));
