/** Three values on a two-valued engine: json-rules-engine and the plain evaluator say the same, and a settled verdict stays. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FactBook } from '../../src/facts/book.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import type { Cause, Rule } from '../../src/rules/cause.js';
import { type Condition, variablesOf } from '../../src/rules/condition.js';
import { viewOf } from '../../src/rules/derived/view.js';
import { evaluate } from '../../src/rules/engine.js';
import type { Trace } from '../../src/rules/evidence.js';
import { CAUSES } from '../../src/rules/index.js';
import { traceRule, verdictOf } from '../../src/rules/plain.js';
import type { Reading, View } from '../../src/rules/view.js';
import { anyBook } from '../support/books.js';

/** All rules of some causes by the plain evaluator. */
const evaluatePlain = (causes: readonly Cause[], view: View): Trace[] =>
  causes.flatMap((cause) => cause.rules.map((rule) => traceRule(cause, rule, view)));

/** A view over made-up values: what is not given is unknown. */
function viewFrom(values: Readonly<Record<string, number | string>>): View {
  return {
    book: EMPTY_BOOK,
    seats: [],
    seatResults: () => [],
    assumedValue: () => undefined,
    remarks: () => [],
    read: (id): Reading => ({
      id,
      value: values[id],
      unit: '1',
      assumed: [],
      facts: [],
      missing: id in values ? [] : [id as never],
      how: 'measured',
      spread: 0,
    }),
  };
}

const NUMBERS = ['layoutDipDb', 'seatAngleMaxDeg', 'delayErrorMs', 'layoutSpeechLossDb'];
const CHOICES = { playedContent: ['two-channel-music', 'television'], centerCount: ['one', 'two', 'none'] };
const numberLeaf = fc.record({
  fact: fc.constantFrom(...NUMBERS),
  operator: fc.constantFrom('greaterThanInclusive', 'greaterThan', 'lessThanInclusive', 'lessThan'),
  value: fc.oneof(
    fc.constant({ fact: 'limit.dipDb.clear' }),
    fc.constantFrom(...NUMBERS).map((fact) => ({ fact })),
  ),
});
const choiceLeaf = fc.constantFrom(...(Object.keys(CHOICES) as (keyof typeof CHOICES)[])).chain((fact) =>
  fc.oneof(
    fc.record({
      fact: fc.constant(fact),
      operator: fc.constantFrom('equal', 'notEqual'),
      value: fc.constantFrom(...CHOICES[fact]),
    }),
    fc.record({
      fact: fc.constant(fact),
      operator: fc.constantFrom('in', 'notIn'),
      value: fc.subarray(CHOICES[fact], { minLength: 1 }),
    }),
  ),
);
const condition = fc.letrec<{ tree: Condition }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    fc.oneof(numberLeaf, choiceLeaf) as unknown as fc.Arbitrary<Condition>,
    fc.array(tie('tree'), { minLength: 1, maxLength: 3 }).map((all) => ({ all }) as unknown as Condition),
    fc.array(tie('tree'), { minLength: 1, maxLength: 3 }).map((any) => ({ any }) as unknown as Condition),
    tie('tree').map((not) => ({ not }) as Condition),
  ),
})).tree;
const values = fc.record(
  {
    ...Object.fromEntries(NUMBERS.map((id) => [id, fc.constantFrom(0, 3.9, 4, 4.1, 12)])),
    ...Object.fromEntries(Object.entries(CHOICES).map(([id, list]) => [id, fc.constantFrom(...list)])),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<Record<string, number | string>>;
const completion = fc.record({
  ...Object.fromEntries(NUMBERS.map((id) => [id, fc.constantFrom(0, 3.9, 4, 4.1, 12)])),
  ...Object.fromEntries(Object.entries(CHOICES).map(([id, list]) => [id, fc.constantFrom(...list)])),
}) as fc.Arbitrary<Record<string, number | string>>;

function causeWith(when: Condition, applies?: Condition): Cause {
  const rule = {
    id: 'made-up',
    group: 'g',
    when,
    ...(applies ? { applies } : {}),
    weigh: { kind: 'answer', tp: 0.9, fp: 0.1 },
    says: { yes: '', no: '' },
    because: '',
    source: 'practice',
  } as const satisfies Rule;
  return { ...(CAUSES[0] as Cause), rules: [rule], applies: applies ?? when };
}

describe('three-valued verdicts', () => {
  it('come out equal from json-rules-engine and from the plain evaluator, for any conditions and gaps', async () => {
    await fc.assert(
      fc.asyncProperty(condition, condition, values, async (when, applies, given) => {
        const causes = [causeWith(when, applies)];
        const view = viewFrom(given);
        expect(await evaluate(causes, view)).toEqual(evaluatePlain(causes, view));
      }),
      { numRuns: 400 },
    );
  });

  it('once settled, never flip however the gaps are filled', () => {
    fc.assert(
      fc.property(condition, values, completion, (when, given, rest) => {
        const { truth } = verdictOf(when, viewFrom(given));
        if (truth === 'unknown') return;
        expect(verdictOf(when, viewFrom({ ...rest, ...given })).truth).toBe(truth);
      }),
      { numRuns: 3000 },
    );
  });

  it('are settled when nothing is missing, and name what is missing when not', () => {
    fc.assert(
      fc.property(condition, values, completion, (when, given, rest) => {
        expect(verdictOf(when, viewFrom({ ...rest, ...given })).truth).not.toBe('unknown');
        const { truth, open } = verdictOf(when, viewFrom(given));
        if (truth === 'unknown') expect(open.length).toBeGreaterThan(0);
        const missing = variablesOf(when).filter((id) => !(id in given));
        expect(open.filter((id) => !missing.includes(id))).toEqual([]);
      }),
    );
  });

  it('agree over the whole rule base for whole cases', async () => {
    await fc.assert(
      fc.asyncProperty(anyBook, async (book: FactBook) => {
        const view = viewOf(book);
        expect(await evaluate(CAUSES, view)).toEqual(evaluatePlain(CAUSES, view));
      }),
      { numRuns: 60 },
    );
  });

  it('turn a rule that throws into an error of that rule, and let the others go on', async () => {
    const broken: View = {
      ...viewFrom({ layoutDipDb: 9 }),
      read: (id) => {
        if (id === 'delayErrorMs') throw new Error('no such luck');
        return viewFrom({ layoutDipDb: 9 }).read(id);
      },
    };
    const sound = {
      fact: 'layoutDipDb',
      operator: 'greaterThan',
      value: { fact: 'limit.dipDb.clear' },
    } as const;
    const failing = { ...sound, fact: 'delayErrorMs' } as const;
    const base = causeWith(sound);
    const first = base.rules[0];
    const { applies: _, ...open } = base;
    const causes: Cause[] = [
      {
        ...open,
        rules: [
          { ...first, id: 'broken', when: failing },
          { ...first, id: 'sound' },
        ],
      },
    ];
    for (const traces of [await evaluate(causes, broken), evaluatePlain(causes, broken)])
      expect(traces.map(({ rule, outcome, error }) => [rule, outcome, error])).toEqual([
        ['broken', 'error', 'no such luck'],
        ['sound', 'yes', undefined],
      ]);
  });
});
