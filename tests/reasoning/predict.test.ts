/** Foreseen answers: what each would do, how common it is, and how likely with each cause. */
import { describe, expect, it } from 'vitest';
import { withAnswer } from '../../src/facts/book.js';
import { factSpec } from '../../src/facts/catalog.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { answerChances, baseRates, hypothesesOf, movablePlaces } from '../../src/reasoning/predict.js';
import { all, atLeast, is } from '../../src/rules/condition.js';
import { viewOf } from '../../src/rules/derived/view.js';
import { LIMITS } from '../../src/rules/limits.js';
import { absentDb, deviationDb, givenDb } from '../../src/rules/weight.js';
import type { TestFacts } from '../support/causeClaims.js';
import { auditOf, ruleOn, small, whenTest } from './smallCauses.js';

const [UP, DOWN] = [givenDb(0.8, 0.2, 'measured'), absentDb(0.8, 0.2, 'measured')];
const lift = small('level', { rules: [ruleOn('lift', is('testLift', 'improves'))] });
const wide = small('mains-layout', {
  rules: [
    {
      ...ruleOn('wide', atLeast('mainsBaseDeg', 'baseWideDeg')),
      weigh: { kind: 'deviation', of: 'mainsBaseDeg', limit: 'limit.baseWideDeg.clear', lowIsBad: false },
    },
  ],
});
const movesOf = (facts: TestFacts = {}, temperature = 1) =>
  hypothesesOf(auditOf([lift, small('delay')], facts, { temperature }), 'testTape');

describe('an answer that may come', () => {
  it('would add the weight of its rule to its cause, and nothing to others', () => {
    const near = (db: number) => [0, expect.closeTo(db, 12)];
    expect(movesOf()).toEqual([
      { value: 'agrees', movesDb: near(DOWN) },
      { value: 'off', movesDb: near(UP) },
      { value: 'wrong-unit', movesDb: near(DOWN) },
    ]);
    expect(movesOf({}, 2)[1]?.movesDb).toEqual(near(UP / 2));
  });
  it('is looked into once, and comes out the same when asked for again', () => {
    const audit = auditOf([lift, small('delay')]);
    const first = hypothesesOf(audit, 'testTape');
    expect([...audit.foreseen.keys()]).toEqual(['testTape']);
    expect(hypothesesOf(audit, 'testTape')).toEqual(first);
  });
  it('cannot be made up for a measured file', () => {
    expect(hypothesesOf(auditOf([small('delay')]), 'responseCenter')).toEqual([]);
  });
  it('moves no rule that still waits for something else, or is settled without it', () => {
    const both = small('delay', { rules: [ruleOn('one', all(whenTest('off'), is('testLift', 'same')))] });
    const still = hypothesesOf(auditOf([both]), 'testTape').map((h) => h.movesDb[0]);
    expect(still).toEqual([expect.closeTo(DOWN, 12), 0, expect.closeTo(DOWN, 12)]);
    const settled = auditOf([both], { testLift: 'improves' });
    expect(hypothesesOf(settled, 'testTape').map((h) => h.movesDb[0])).toEqual([0, 0, 0]);
  });
  it.each(['mainsBase', 'seatDistance', 'mainSeatOffset'] as const)(
    'in lengths (%s) does what telling it would do, the typical one to the last digit',
    (fact) => {
      const audit = auditOf([wide, lift]);
      const found = hypothesesOf(audit, fact);
      const how = factSpec(fact).usually;
      const told = found.map(({ value }) => {
        const after = auditSync(withAnswer(audit.book, fact, { value, how }), audit);
        return (after.own[0]?.ownDb ?? 0) - (audit.own[0]?.ownDb ?? 0);
      });
      const middle = Math.floor(found.length / 2);
      expect(found[middle]?.movesDb[0]).toBeCloseTo(told[middle] ?? Number.NaN, 12);
      found.forEach(({ movesDb }, i) => {
        // Others borrow how well founded the typical one is.
        expect(Math.abs((movesDb[0] ?? 0) - (told[i] ?? 0))).toBeLessThan(1);
        expect(movesDb[1]).toBe(0);
      });
    },
  );
});

describe('an answer that changes a computed value', () => {
  const near = (values: readonly (number | undefined)[]) =>
    values.map((value) => expect.closeTo(value ?? Number.NaN, 9));
  it('in lengths is as well founded as the typical one, whatever its own value', () => {
    const audit = auditOf([wide]);
    const reading = (value: number | string) =>
      viewOf(withAnswer(audit.book, 'mainsBase', { value, how: 'measured' })).read('mainsBaseDeg');
    const found = hypothesesOf(audit, 'mainsBase');
    const { how, spread } = reading(found[1]?.value ?? 0);
    const limit = LIMITS.baseWideDeg.clear;
    const now = audit.own[0]?.ownDb ?? 0;
    const weights = found.map(({ value }) =>
      deviationDb((reading(value).value as number) / limit, { how, spread: () => spread }),
    );
    expect(found.map((h) => (h.movesDb[0] ?? 0) + now)).toEqual(near(weights));
    expect(new Set(weights).size).toBe(found.length);
  });
  it('by a choice does exactly what telling it would do', () => {
    const weighs = (
      id: 'reverbClarityMs' | 'trebleDeficitDb' | 'screenLossDb',
      limit: 'reverberationMs' | 'trebleDb',
    ) => ({
      ...ruleOn(id, whenTest('off')),
      when: atLeast(id as 'screenLossDb', limit as 'trebleDb'),
      weigh: { kind: 'deviation', of: id, limit: `limit.${limit}.clear`, lowIsBad: false } as const,
    });
    const room = small('room-acoustics', { rules: [weighs('reverbClarityMs', 'reverberationMs')] });
    const screen = small('screen-loss', { rules: [weighs('screenLossDb', 'trebleDb')] });
    const audit = auditOf([room, screen]);
    for (const fact of ['clapRing', 'screenKind'] as const) {
      const told = hypothesesOf(audit, fact).map(({ value }) => {
        const after = auditSync(withAnswer(audit.book, fact, { value, how: factSpec(fact).usually }), audit);
        return after.own.map((own, i) => own.ownDb - (audit.own[i]?.ownDb ?? 0));
      });
      expect(hypothesesOf(audit, fact).map((h) => h.movesDb)).toEqual(told.map(near));
      expect(told.flat().some((db) => Math.abs(db) > 1)).toBe(true);
    }
  });
});

describe('the causes an answer can move now', () => {
  it('have a rule that waits for it, or rests on what is usual in its place', () => {
    const causes = [wide, small('delay'), lift];
    expect(movablePlaces(auditOf(causes), 'testTape')).toEqual([1]);
    expect(movablePlaces(auditOf(causes), 'mainsBase')).toEqual([0]);
    expect(movablePlaces(auditOf(causes), 'centerTrim')).toEqual([]);
  });
  it('are those whose rule waits for this answer, not for another one', () => {
    const both = small('delay', { rules: [ruleOn('both', all(whenTest('off'), is('testLift', 'same')))] });
    const half = auditOf([both], { testTape: 'off' });
    expect([movablePlaces(half, 'testTape'), movablePlaces(half, 'testLift')]).toEqual([[], [0]]);
  });
  it('need one rule that waits, beside others that are settled', () => {
    const two = small('delay', {
      rules: [ruleOn('both', all(whenTest('off'), is('testLift', 'same'))), ruleOn('one', whenTest('off'))],
    });
    expect(movablePlaces(auditOf([two], { testLift: 'improves' }), 'testTape')).toEqual([0]);
  });
  it('are also those that are out of the question on usual lengths only', () => {
    const gated = small('delay', { applies: atLeast('mainsBaseDeg', 'baseWideDeg') });
    const audit = auditOf([gated], { seatDistance: 2 });
    expect(audit.own[0]?.applies).toBe(false);
    expect(movablePlaces(audit, 'mainsBase')).toEqual([0]);
    expect(hypothesesOf(audit, 'mainsBase').at(-1)?.movesDb[0]).toBeCloseTo(60, 9);
  });
  it('are none once it is told', () => {
    expect(movablePlaces(auditOf([small('delay')], { testTape: 'off' }), 'testTape')).toEqual([]);
    const taped = { mainsBase: 2 };
    expect(movablePlaces(auditOf([wide], taped), 'mainsBase')).toEqual([]);
    expect(movablePlaces(auditOf([wide], taped), 'seatDistance')).toEqual([0]);
  });
});

describe('how common an answer is without the causes', () => {
  const of = (...columns: readonly (readonly number[])[]) =>
    (columns[0] ?? []).map((_, a) => ({ value: `${a}`, movesDb: columns.map((c) => c[a] ?? 0) }));
  const meanRatio = (rates: readonly number[], column: readonly number[]): number =>
    rates.reduce((sum, rate, a) => sum + rate * 10 ** ((column[a] ?? 0) / 10), 0);
  it('is such that the likelihood ratio averages one: a sign three times as common with the cause, and half', () => {
    // u 3 + (1 - u) / 2 = 1 gives one in five.
    const column = [10 * Math.log10(3), 10 * Math.log10(0.5)];
    expect(baseRates(of(column))).toEqual([expect.closeTo(0.2, 12), expect.closeTo(0.8, 12)]);
  });
  it('holds for several causes at once where they can agree', () => {
    const columns = [
      [6, -3, -3],
      [-2, 5, -2],
    ];
    const rates = baseRates(of(...columns));
    for (const column of columns) expect(meanRatio(rates, column)).toBeCloseTo(1, 3);
    expect(rates.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });
  it('leaves answers on one side of a cause their shares', () => {
    // Two answers against, one twice as strong: both are scaled alike.
    const [, b, c] = baseRates(of([6, -3, -6]));
    expect(b).toBeCloseTo(c ?? Number.NaN, 12);
  });
  it('scales an answer that says nothing with those against', () => {
    const [, neutral, against] = baseRates(of([6, 0, -6]));
    expect(neutral).toBeCloseTo(against ?? Number.NaN, 12);
    expect(meanRatio(baseRates(of([6, 0, -6])), [6, 0, -6])).toBeCloseTo(1, 12);
  });
  it('is the same for all answers where nothing is known about it', () => {
    expect(baseRates(of([0, 0, 0]))).toEqual([1 / 3, 1 / 3, 1 / 3]);
    expect(baseRates(of([3, 0, 0]))).toEqual([1 / 3, 1 / 3, 1 / 3]);
    expect(baseRates(of([-3, 0, 0]))).toEqual([1 / 3, 1 / 3, 1 / 3]);
    expect(baseRates([])).toEqual([]);
  });
  it('makes chances that add up to one with every cause, and with none', () => {
    const hypotheses = of([6, -3, -3], [3, 0, 0]);
    const rows = answerChances(hypotheses, [0.2, 0.3, 0.5], 2);
    const columns = [0, 1, 2].map((i) => rows.map((row) => row[i] ?? Number.NaN));
    for (const column of columns) expect(column.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(columns[2]).toEqual([0.2, 0.3, 0.5]);
    const [r, rest] = [10 ** 0.3, 0.8];
    expect(columns[1]?.[0]).toBeCloseTo((0.2 * r) / (0.2 * r + rest), 12);
  });
});
