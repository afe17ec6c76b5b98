/** Small readers of words: directions behind a number, paths of files, and the error that people read. */
import { describe, expect, it } from 'vitest';
import { CaseError, placed, problem } from '../../src/facts/case-error.js';
import { filePathProblem } from '../../src/facts/paths.js';
import { stripSide } from '../../src/facts/sides.js';
import { problemText, UserError } from '../../src/lib/user-error.js';

describe('a direction instead of a sign', () => {
  const sides = { plus: 'right', minus: 'left' };
  it.each([
    ['1 ft left', '1 ft', 'minus'],
    ['1 ft to the left', '1 ft', 'minus'],
    ['1 ft on the RIGHT ', '1 ft', 'plus'],
    ['  30 cm right', '30 cm', 'plus'],
  ])('%j', (text, rest, turned) => {
    expect(stripSide(text, sides)).toEqual({ text: rest, turned });
  });

  it('is none where the word is missing, stands alone, or is part of another', () => {
    for (const text of ['1 ft', 'left', '1 ftleft', '1 ft leftover'])
      expect(stripSide(text, sides)).toEqual({ text });
    expect(stripSide(' 1 ft ', sides)).toEqual({ text: '1 ft' });
  });
});

describe('a path in a case', () => {
  it('may have 255 letters and dots in its names', () => {
    for (const path of ['x'.repeat(255), 'a/b.c/d..e', '...', 'cd/e:f'])
      expect(filePathProblem(path), path).toBeUndefined();
  });

  it.each([
    ['x'.repeat(256), 'the path is longer than 255 letters'],
    [' \t', 'nothing is written there'],
    ['/a', '"/a" is an absolute path; files are looked for in the folder of the case'],
    ['Z:a', '"Z:a" is an absolute path; files are looked for in the folder of the case'],
    ['a/..', '"a/.." climbs out of the folder of the case'],
    ['a\u0007', '"a" holds characters that a path should not hold'],
  ])('%j is refused', (path, words) => {
    expect(filePathProblem(path)).toBe(words);
  });
});

describe('an error for people', () => {
  it('says where, what, what is accepted and an example, each only where it is there', () => {
    expect(problemText({ what: 'too long' })).toBe('too long');
    expect(problemText({ what: 'too long', where: 'title', accepted: 'ten letters', example: 'den' })).toBe(
      'title: too long\n  accepted: ten letters\n  example: den',
    );
    const error = new UserError({ what: 'a' }, { what: 'b', where: 'c' });
    expect(error.message).toBe('a\nc: b');
    expect(error.name).toBe('UserError');
    expect(error.problems).toHaveLength(2);
  });

  it('of a case tells twenty problems and counts the rest', () => {
    const many = (count: number) => {
      const [first, ...rest] = Array.from({ length: count }, (_, i) => problem(`p${i}`, 'is off', 'on'));
      return new CaseError(first as NonNullable<typeof first>, ...rest);
    };
    expect(many(20).message).not.toMatch(/more/);
    expect(many(22).message).toMatch(/\np19: is off\n {2}accepted: on\nand 2 more$/);
    expect(many(22)).toMatchObject({
      name: 'CaseError',
      path: 'p0',
      what: 'is off',
      accepted: 'on',
      example: '',
    });
  });

  it('names the place by path, by line and column, by both or by neither', () => {
    const at = { line: 3, column: 7 };
    expect(placed(problem('a.b', 'x', 'y'), at)).toMatchObject({ ...at, where: 'a.b, line 3, column 7' });
    expect(placed(problem('', 'x', 'y'), at)).toMatchObject({ where: 'line 3, column 7' });
    expect(problem('a.b', 'x', 'y')).toMatchObject({ where: 'a.b' });
    expect(problem('', 'x', 'y')).not.toHaveProperty('where');
  });
});
