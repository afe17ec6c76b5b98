/** Conditions are typed: each of these mistakes must fail to compile (an unused directive is an error of tsc). */
import { expect, it } from 'vitest';
import { deviates } from '../../src/rules/cause.js';
import { above, atLeast, is, oneOf } from '../../src/rules/condition.js';

const words = {
  id: 'x',
  group: 'g',
  yes: '',
  no: '',
  because: '',
  source: 'geometry',
} as const;

it('rejects a mistyped fact, choice, limit, unit or source at compile time', () => {
  const mistakes = () => [
    // @ts-expect-error no such fact
    is('centerLayuot', 'coaxial'),
    // @ts-expect-error no such choice
    is('centerLayout', 'coaxal'),
    // @ts-expect-error a choice of another fact
    oneOf('centerPlacement', 'bay', 'coaxial'),
    // @ts-expect-error a number is not a choice
    is('seatDistance', '3'),
    // @ts-expect-error a choice is not a number
    above('centerLayout', 'dipDb'),
    // @ts-expect-error no such limit
    atLeast('layoutDipDb', 'dipdb'),
    // @ts-expect-error degrees are not decibels
    atLeast('seatAngleMaxDeg', 'dipDb'),
    // @ts-expect-error meters are not milliseconds
    atLeast('seatDistance', { other: 'delayErrorMs' }),
    // @ts-expect-error no such grade
    atLeast('layoutDipDb', 'dipDb.loud'),
    // @ts-expect-error no such source
    deviates({ ...words, source: 'hearsay', of: 'layoutDipDb', limit: 'dipDb' }),
  ];
  expect(mistakes).toBeTypeOf('function');
});

it('makes plain data of conditions, with the limit as a fact', () => {
  expect(atLeast('layoutDipDb', 'dipDb.severe')).toEqual({
    fact: 'layoutDipDb',
    operator: 'greaterThanInclusive',
    value: { fact: 'limit.dipDb.severe' },
  });
  expect(structuredClone(oneOf('centerPlacement', 'bay', 'floor'))).toEqual({
    fact: 'centerPlacement',
    operator: 'in',
    value: ['bay', 'floor'],
  });
});
