/** Which questions make sense: by what was told about the questions they hang on. */
import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec, isFactId, TEST_IDS } from '../../src/facts/catalog.js';
import { impliedAnswer } from '../../src/facts/implied.js';
import {
  couldMakeSense,
  isAsked,
  isTest,
  makesSense,
  openFacts,
  possibleAnswers,
} from '../../src/reasoning/hypotheses.js';

const bookWith = (answers: readonly (readonly [FactId, Answer])[]): FactBook => ({
  ...EMPTY_BOOK,
  answers: new Map(answers),
});
const parentsOf = (id: FactId): [FactId, readonly string[]][] =>
  Object.entries(factSpec(id).askedWhen ?? {}) as [FactId, readonly string[]][];
const said = (value: string): Answer => ({ value, how: 'read' });
const dependent = FACT_IDS.filter((id) => parentsOf(id).length > 0);
/** The question and those it hangs on answered so that it makes sense. */
const fitting = (id: FactId): (readonly [FactId, Answer])[] =>
  parentsOf(id).flatMap(([parent, accepted]) => [
    ...fitting(parent),
    [parent, said(accepted[0] as string)] as const,
  ]);

describe('a question that hangs on others', () => {
  it('is there at all, and hangs on questions with choices', () => {
    expect(dependent.length).toBeGreaterThan(20);
    for (const id of dependent) for (const [parent] of parentsOf(id)) expect(isFactId(parent)).toBe(true);
  });
  it.each(dependent)('%s makes sense once each of them is answered so', (id) => {
    const book = bookWith(fitting(id));
    expect([makesSense(book, id), couldMakeSense(book, id)]).toEqual([true, true]);
    expect(openFacts(book).includes(id)).toBe(!isAsked(book, id));
  });
  it.each(dependent)('%s makes none when one of them is answered otherwise, or nobody knows', (id) => {
    for (const [parent, accepted] of parentsOf(id)) {
      const spec = factSpec(parent);
      const others =
        spec.kind === 'choice' ? Object.keys(spec.choices).filter((c) => !accepted.includes(c)) : [];
      expect(others.length).toBeGreaterThan(0);
      for (const other of others) {
        const book = bookWith([...fitting(id), [parent, said(other)]]);
        expect([makesSense(book, id), couldMakeSense(book, id)]).toEqual([false, false]);
        expect(openFacts(book)).not.toContain(id);
      }
      const unknown = bookWith([...fitting(id).filter(([f]) => f !== parent), [parent, { how: 'unknown' }]]);
      if (impliedAnswer(unknown, parent) === undefined)
        expect([makesSense(unknown, id), couldMakeSense(unknown, id)]).toEqual([false, false]);
    }
  });
  it.each(dependent)('%s could still make sense before anybody was asked', (id) => {
    expect(makesSense(EMPTY_BOOK, id)).toBe(false);
    expect(couldMakeSense(EMPTY_BOOK, id)).toBe(true);
  });
});

describe('questions', () => {
  it('are open until told or known to be unknown, in the order of the catalog', () => {
    const free = FACT_IDS.filter((id) => parentsOf(id).length === 0);
    expect(openFacts(EMPTY_BOOK)).toEqual(free.filter((id) => impliedAnswer(EMPTY_BOOK, id) === undefined));
    const [first] = free as [FactId];
    const asked = bookWith([[first, { how: 'unknown' }]]);
    expect(isAsked(asked, first)).toBe(true);
    expect(openFacts(asked)).not.toContain(first);
  });
  it('are settled by what is asked for one of their choices only: a setback tells of a shelf', () => {
    const book = bookWith([['shelfSetback', { value: 0.1, how: 'measured' }]]);
    expect([isAsked(book, 'centerPlacement'), isAsked(EMPTY_BOOK, 'centerPlacement')]).toEqual([true, false]);
    expect(openFacts(book)).not.toContain('centerPlacement');
  });
  it('that another answer settles count as asked', () => {
    const implied = FACT_IDS.flatMap((id) =>
      dependent.flatMap((other) => {
        const book = bookWith(fitting(other));
        return impliedAnswer(book, id) !== undefined && !book.answers.has(id) ? [{ book, id }] : [];
      }),
    );
    for (const { book, id } of implied) {
      expect(isAsked(book, id)).toBe(true);
      expect(openFacts(book)).not.toContain(id);
    }
  });
  it('are home tests exactly when they are found by doing something', () => {
    expect(FACT_IDS.filter(isTest)).toEqual(FACT_IDS.filter((id) => (TEST_IDS as FactId[]).includes(id)));
  });
  it('may get every choice or a typical number, told as usual; a file none', () => {
    for (const id of FACT_IDS) {
      const spec = factSpec(id);
      const values =
        spec.kind === 'choice' ? Object.keys(spec.choices) : spec.kind === 'number' ? spec.typical : [];
      expect(possibleAnswers(id)).toEqual(values.map((value) => ({ value, how: spec.usually })));
    }
  });
});
