/** What tells two causes apart, against the expected weight of evidence worked out by hand (Good & Card 1971). */
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { knownChance } from '../../src/reasoning/knows.js';
import { answerChances, baseRates, hypothesesOf } from '../../src/reasoning/predict.js';
import { separators } from '../../src/reasoning/separate.js';
import { is } from '../../src/rules/condition.js';
import { ERROR_RATE } from '../../src/rules/weight.js';
import { auditOf, ruleOn, small, whenTest } from './smallCauses.js';

/** Chance of hearing an answer of true chance p from somebody who measured. */
const heard = (p: number): number => p * (1 - ERROR_RATE.measured) + (1 - p) * ERROR_RATE.measured;
const [T, F] = [heard(0.8), heard(0.2)];
const db = (ratio: number): number => 10 * Math.log10(ratio);
const lifts = (tp: number, fp: number) => [ruleOn('lift', is('testLift', 'improves'), { tp, fp })] as const;

describe('chances of an answer', () => {
  it('are those the rule was written with: the true positives with the cause, the false ones without', () => {
    const hypotheses = hypothesesOf(
      auditOf([small('delay'), small('level', { rules: lifts(0.6, 0.5) })]),
      'testTape',
    );
    const rates = baseRates(hypotheses);
    const at = hypotheses.findIndex((h) => h.value === 'off');
    expect(hypotheses.map((h) => h.value)).toEqual(['agrees', 'off', 'wrong-unit']);
    expect(rates[at]).toBeCloseTo(F, 9);
    expect(rates.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(answerChances(hypotheses, rates, 2)[at]).toEqual([
      expect.closeTo(T, 9),
      expect.closeTo(F, 9),
      expect.closeTo(F, 9),
    ]);
  });
});

describe('what separates two causes', () => {
  it('is worth the mean of its weights over either being true, by the chance that it can be told', () => {
    const audit = auditOf([small('delay'), small('level', { rules: lifts(0.5, 0.49) })]);
    const expectedDb = (T - F) * db(T / F) * 0.5 + (F - T) * db((1 - T) / (1 - F)) * 0.5;
    const known = knownChance(EMPTY_BOOK, 'testTape');
    const wanted = [{ fact: 'testTape', minutes: 5, expectedDb: expect.closeTo(known * expectedDb, 9) }];

    // Whichever is named first; the other cause's own test says too little.
    expect(separators(audit, 'delay', 'level')).toEqual(wanted);
    expect(separators(audit, 'level', 'delay')).toEqual(wanted);
  });
  it('comes by decibans a minute, and each cause may bring its own', () => {
    // 5 minutes against 6: the tape check first although lifting says a little more.
    const two = auditOf([small('level', { rules: lifts(0.82, 0.2) }), small('delay')]);
    expect(separators(two, 'level', 'delay').map((s) => s.fact)).toEqual(['testTape', 'testLift']);
    const strong = auditOf([small('level', { rules: lifts(0.95, 0.05) }), small('delay')]);
    expect(separators(strong, 'level', 'delay').map((s) => s.fact)).toEqual(['testLift', 'testTape']);
  });
  it('may speak only one way', () => {
    const oneWay = small('delay', {
      rules: [ruleOn('one', whenTest('off'), { only: 'for', tp: 0.95, fp: 0.05 })],
    });
    const audit = auditOf([
      small('aim', { rules: lifts(0.5, 0.49) }),
      oneWay,
      small('level', { rules: lifts(0.5, 0.49) }),
    ]);
    expect(separators(audit, 'delay', 'level').map((s) => s.fact)).toEqual(['testTape']);
    expect(separators(audit, 'aim', 'level')).toEqual([]);
  });
  it('is nothing that both expect alike, that is done, or that bears on a third only', () => {
    const [a, b] = [small('delay'), small('level')];
    const third = small('aim', { rules: lifts(0.8, 0.2) });
    expect(separators(auditOf([a, b, third]), 'delay', 'level')).toEqual([]);
    const odd = small('level', { rules: [ruleOn('one', whenTest('agrees'))] });
    expect(separators(auditOf([a, odd]), 'delay', 'level')).toHaveLength(1);
    expect(separators(auditOf([a, odd], { testTape: 'off' }), 'delay', 'level')).toEqual([]);
  });
});
