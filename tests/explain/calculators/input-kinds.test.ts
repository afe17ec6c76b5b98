/** Kinds of input: what is taken, what is refused and in which words, and how a text of the command line is read. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  channels,
  choice,
  flag,
  type Input,
  isObject,
  number,
  numbers,
  optional,
  path,
  rangeText,
  shown,
  textOfJson,
  usually,
} from '../../../src/explain/calculators/input-kinds.js';

const TOLD = ['how far', '3'] as const;
/** `place: what` of everything refused. */
const refused = (input: Input<unknown>, given: unknown): string[] => {
  const checked = input.value(given);
  return 'refused' in checked ? checked.refused.map(({ at = '', what }) => `${at}: ${what}`) : [];
};

describe('every input', () => {
  it('is needed unless it has a usual value or may be left out', () => {
    const input = number(...TOLD, { unit: 'm', min: 0 });
    expect(input).toMatchObject({
      meaning: 'how far',
      example: '3',
      unit: 'm',
      accepted: 'a number 0 or more',
      required: true,
    });
    expect(number(...TOLD, {}).unit).toBe('');
    expect(usually(3, input)).toMatchObject({ usual: 3, required: false, unit: 'm' });
    expect(optional(input)).toMatchObject({ required: false, meaning: 'how far' });
    expect('usual' in optional(input)).toBe(false);
  });
  it('is refused with what is accepted and a good example, and its place where it has one', () => {
    expect(number(...TOLD, { max: 5 }).value(6)).toEqual({
      refused: [{ what: '6 is above 5', accepted: 'a number up to 5', example: '3' }],
    });
    expect(numbers(...TOLD, {}).value([1, 'x'])).toEqual({
      refused: [{ what: '"x" is no number', accepted: 'a list, each a number', example: '3', at: '[1]' }],
    });
  });
});

describe('a range', () => {
  it('is told in words', () => {
    expect(rangeText({})).toBe('a number');
    expect(rangeText({ min: 0 })).toBe('a number 0 or more');
    expect(rangeText({ max: 5 })).toBe('a number up to 5');
    expect(rangeText({ min: -5, max: 5 })).toBe('a number from -5 to 5');
    expect(rangeText({ above: 0 })).toBe('a number above 0');
    expect(rangeText({ above: 0, max: 5 })).toBe('a number above 0, up to 5');
  });
  it('holds its ends, but not the value it must lie above', () => {
    const from = number(...TOLD, { min: -1, max: 5 });
    expect([-1, 0, 5].flatMap((given) => refused(from, given))).toEqual([]);
    expect(refused(from, -1.01)).toEqual([': -1.01 is below -1']);
    expect(refused(from, 5.01)).toEqual([': 5.01 is above 5']);
    const above = number(...TOLD, { above: 0 });
    expect(refused(above, 0)).toEqual([': 0 is not above 0']);
    expect(above.value(1e-9)).toEqual({ value: 1e-9 });
    for (const given of [-1e300, 0, 1e300]) expect(refused(number(...TOLD, {}), given)).toEqual([]);
    for (const given of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(refused(number(...TOLD, {}), given)).toEqual([': the number is not finite']);
  });
  it('takes what it says and nothing else', () => {
    const input = number(...TOLD, { above: 1, max: 2 });
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -5, max: 5 }), (given) => {
        expect(refused(input, given).length === 0).toBe(given > 1 && given <= 2);
      }),
    );
  });
});

describe('a refused value', () => {
  it('is quoted as what it is', () => {
    expect(['a', [1, 2], {}, null, true, undefined].map(shown)).toEqual([
      '"a"',
      'a list of 2',
      'an object',
      'null',
      'true',
      'undefined',
    ]);
  });
});

describe('a text of the command line', () => {
  it('is a number where it is written as one', () => {
    const texts = ['3', '-3.5', '+.5', '5.', '1e3', '2E-2'];
    expect(texts.map(number(...TOLD, {}).text)).toEqual([3, -3.5, 0.5, 5, 1000, 0.02]);
    for (const text of ['', '.', '3 m', '0x10', '3,5', 'x3', '3x', 'Infinity', '1e', ' 3'])
      expect(number(...TOLD, {}).text(text)).toBe(text);
  });
  it('is a list with or without brackets, or an object', () => {
    expect(textOfJson('[1, 2]')).toEqual([1, 2]);
    expect(textOfJson('1, 2.5 ,-3')).toEqual([1, 2.5, -3]);
    expect(textOfJson('7')).toEqual([7]);
    expect(textOfJson('{"left": 1}')).toEqual({ left: 1 });
    for (const text of ['1,x', '1,,2', '[1', '{left:1}', 'x [1]', '']) expect(textOfJson(text)).toBe(text);
  });
  it('is a word or a path as it is written', () => {
    expect(choice(['7'], ...TOLD).text('7')).toBe('7');
    expect(path(...TOLD).text('7')).toBe('7');
    expect(['true', 'false', 'yes'].map(flag(...TOLD).text)).toEqual([true, false, 'yes']);
  });
});

describe('words, flags and paths', () => {
  it('are one of those known', () => {
    const input = choice(['near', 'far'], ...TOLD);
    expect(input.accepted).toBe('near, far');
    expect(input.value('far')).toEqual({ value: 'far' });
    expect(refused(input, 'away')).toEqual([': "away" is not known']);
    expect(flag(...TOLD).value(false)).toEqual({ value: false });
    expect(refused(flag(...TOLD), 'no')).toEqual([': "no" is neither']);
  });
  it('that are paths are neither blank nor no text', () => {
    expect(path(...TOLD).value('a b.txt')).toEqual({ value: 'a b.txt' });
    for (const given of ['', '  ', 'a\0b', 3]) expect(refused(path(...TOLD), given)).toHaveLength(1);
  });
});

describe('a list of numbers', () => {
  it('has a number at least, and as many as are wanted', () => {
    expect(numbers(...TOLD, {}).accepted).toBe('a list, each a number');
    expect(numbers(...TOLD, {}).value([1, 2])).toEqual({ value: [1, 2] });
    expect(refused(numbers(...TOLD, {}), [])).toEqual([': the list has 0 numbers']);
    expect(refused(numbers(...TOLD, {}), 'x')).toEqual([': "x" is no list of numbers']);
    const two = numbers(...TOLD, { lengths: [2, 4], min: 0 });
    expect(two.accepted).toBe('a list, 2 or 4 numbers: each a number 0 or more');
    expect(
      [
        [1, 2],
        [1, 2, 3, 4],
      ].flatMap((given) => refused(two, given)),
    ).toEqual([]);
    expect(refused(two, [1, 2, 3])).toEqual([': the list has 3 numbers']);
    expect(numbers(...TOLD, { lengths: [0] }).value([])).toEqual({ value: [] });
  });
  it('is no longer than ten thousand, and every bad number is named', () => {
    expect(refused(numbers(...TOLD, {}), Array(10_000).fill(1))).toEqual([]);
    expect(refused(numbers(...TOLD, {}), Array(10_001).fill(1))).toEqual([': the list is longer than 10000']);
    expect(refused(numbers(...TOLD, { min: 0 }), [-1, 1, null])).toEqual([
      '[0]: -1 is below 0',
      '[2]: null is no number',
    ]);
  });
});

describe('one number for each channel', () => {
  const all = channels(...TOLD, { min: 0, partial: false });
  const some = channels(...TOLD, { min: 0, partial: true });
  it('is an object with all of them, or some where that is enough', () => {
    expect(all.accepted).toBe('an object with left, center and right, each a number 0 or more');
    expect(some.accepted).toBe('an object with any of left, center and right, each a number 0 or more');
    expect(all.parts).toEqual(['left', 'center', 'right']);
    expect(all.value({ right: 3, left: 1, center: 2 })).toEqual({ value: { left: 1, center: 2, right: 3 } });
    expect(refused(all, { left: 1, right: null })).toEqual(['.center: is missing', '.right: is missing']);
    expect(some.value({ left: 1, right: null })).toEqual({ value: { left: 1 } });
  });
  it('names everything that is wrong with it', () => {
    expect(refused(some, { left: -1, rear: 2 })).toEqual([': "rear" is not known', '.left: -1 is below 0']);
    for (const given of [3, null, [1, 2, 3]]) expect(refused(all, given)[0]).toMatch(/ is no object$/);
    expect([{}, [], null, 'x'].map(isObject)).toEqual([true, false, false, false]);
  });
});
