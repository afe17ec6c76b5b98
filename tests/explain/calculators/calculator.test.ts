/** A calculator from its table: what its results look like, and whose error it is when a model refuses. */
import { describe, expect, it } from 'vitest';
import { readResponseFile } from '../../../src/disk/response-files.js';
import { define } from '../../../src/explain/calculators/calculator.js';
import { number } from '../../../src/explain/calculators/input-kinds.js';
import { UserError } from '../../../src/lib/user-error.js';

const TABLE = {
  name: 'made-up',
  title: 'Made up',
  answers: 'What comes out?',
  inputs: { farM: number('how far', '3', { unit: 'm' }) },
  outputs: { a: { unit: '', meaning: 'one' }, b: { unit: '', meaning: 'other' } },
  formula: 'a + b',
  validity: 'Everywhere.',
  source: { cite: 'a book', mark: 'practice' },
  example: 'farM=3',
} as const;
const silent = { tell: (): void => undefined, readResponse: readResponseFile };
const result = (a: unknown, rest: object = {}) =>
  define({ ...TABLE, run: () => ({ a, b: 1, ...rest }) }).run({ farM: 3 }, silent);
const value = (a: unknown): unknown => result(a).a;
const failing = (error: unknown): unknown => {
  const broken = define({
    ...TABLE,
    run: () => {
      throw error;
    },
  });
  try {
    return broken.run({ farM: 3 }, silent);
  } catch (thrown) {
    return thrown;
  }
};

describe('a result', () => {
  it('has exactly the outputs of the table, in their order', () => {
    const found = define({ ...TABLE, run: () => ({ extra: 9, b: 2, a: 1 }) }).run({}, silent);
    expect(Object.entries(found)).toEqual([
      ['a', 1],
      ['b', 2],
    ]);
  });
  it('is computed from the inputs, and may tell something beside', () => {
    const notices: string[] = [];
    const doubling = define({
      ...TABLE,
      run: ({ farM }, { tell }) => {
        tell('so it is');
        return { a: 2 * farM, b: 0 };
      },
    });
    expect(doubling.run({ farM: 3 }, { ...silent, tell: (notice) => notices.push(notice) })).toEqual({
      a: 6,
      b: 0,
    });
    expect(notices).toEqual(['so it is']);
  });
  it('is null where nothing exists, and where a depth has no number', () => {
    const nothing = [undefined, null, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    expect(nothing.map(value)).toEqual([null, null, null, null]);
    expect(define({ ...TABLE, run: () => ({ a: 1 }) as never }).run({}, silent)).toEqual({
      a: 1,
      b: null,
    });
  });
  it('is zero where it is a rounding of zero, never minus zero', () => {
    for (const tiny of [-0, 0, 9e-13, -9e-13]) expect(Object.is(value(tiny), 0)).toBe(true);
    expect(value(1e-12)).toBe(1e-12);
    expect(value(-2.5)).toBe(-2.5);
  });
  it('may be a word, a list or rows, each settled as deep as it goes', () => {
    expect(value('left')).toBe('left');
    expect(value(new Float64Array([1, -0, Number.POSITIVE_INFINITY]))).toEqual([1, 0, null]);
    expect(value([{ hz: 100, dip: Number.NEGATIVE_INFINITY }, undefined])).toEqual([
      { hz: 100, dip: null },
      null,
    ]);
  });
  it('is refused where it is no number or nothing that can be printed, by the name of its place', () => {
    expect(() => result(Number.NaN)).toThrow('a is not a number');
    expect(() => result([{ hz: Number.NaN }])).toThrow('hz is not a number');
    expect(() => result(true)).toThrow('a is a boolean');
    expect(() => result(() => 1)).toThrow('a is a function');
  });
});

describe('what a model refuses', () => {
  it('is an error of the input, with what is accepted where the model tells it', () => {
    const told = failing(new RangeError('base -1 is no length; accepted: above 0'));
    expect(told).toBeInstanceOf(UserError);
    expect((told as UserError).problems).toEqual([
      { where: 'calc made-up', what: 'base -1 is no length', accepted: 'above 0' },
    ]);
    expect((failing(new RangeError('too far')) as UserError).problems).toEqual([
      { where: 'calc made-up', what: 'too far' },
    ]);
  });
  it('stays an error of the program where it is anything else', () => {
    const broken = new TypeError('x is not a function');
    expect(failing(broken)).toBe(broken);
  });
});

describe('conflicts between inputs', () => {
  it('are judged where the table has them, and only there', () => {
    const plain = define({ ...TABLE, run: () => ({ a: 1, b: 1 }) });
    expect('conflicts' in plain).toBe(false);
    const strict = define({
      ...TABLE,
      conflicts: ({ farM }) => (farM > 2 ? [{ what: 'too far' }] : []),
      run: () => ({ a: 1, b: 1 }),
    });
    expect(strict.conflicts?.({ farM: 3 })).toEqual([{ what: 'too far' }]);
    expect(strict.conflicts?.({ farM: 1 })).toEqual([]);
  });
});
