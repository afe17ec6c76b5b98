/** The list of calculators and how one is found by its name. */
import { describe, expect, it } from 'vitest';
import { LENGTH } from '../../../src/explain/calculators/bounds.js';
import { CALCULATORS, calculatorOf } from '../../../src/explain/calculators/index.js';
import { rangeText } from '../../../src/explain/calculators/input-kinds.js';
import { UserError } from '../../../src/lib/user-error.js';

const problemOf = (name: string) => {
  try {
    calculatorOf(name);
  } catch (error) {
    if (error instanceof UserError) return error.problems[0];
    throw error;
  }
  return undefined;
};

describe('the calculators', () => {
  it('are found by their names, each of which is given once', () => {
    const names = CALCULATORS.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const calculator of CALCULATORS) expect(calculatorOf(calculator.name)).toBe(calculator);
  });
  it('are all named where one is not known, with the nearest first', () => {
    expect(problemOf('comp')).toEqual({
      where: 'calc',
      what: '"comp" is no calculator; did you mean comb?',
      accepted: CALCULATORS.map(({ name }) => name).join(', '),
      example: 'center-audit calc comb delayMs=1',
    });
    expect(problemOf('qqqqqqqqqqqq')?.what).toBe('"qqqqqqqqqqqq" is no calculator');
  });
  it('take no length of zero', () => {
    expect(rangeText(LENGTH)).toBe('a number above 0, up to 1000');
  });
});
