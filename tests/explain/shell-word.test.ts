/** Paths as a shell takes them. */
import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shellWord } from '../../src/explain/shell-word.js';

/** What a shell makes of the rest of a command line. */
const echoed = (words: string): string =>
  execFileSync('/bin/sh', ['-c', `printf %s ${words}`], { encoding: 'utf8', env: { HOME: '/home/owner' } });

describe('a path in a command', () => {
  it('stands bare where no shell reads anything into it', () => {
    for (const path of ['case.json', '../cases/a-b_1.json', '/a/x@2,5%+1:3=4.json'])
      expect(shellWord(path)).toBe(path);
  });

  it('is never taken for an option or for standard input', () => {
    expect(['-', '-x.json', "-it's"].map(shellWord)).toEqual(['./-', './-x.json', "'./-it'\\''s'"]);
  });

  it('is quoted with a tilde or an equals sign in front, which stand for a folder or a program', () => {
    expect(shellWord('~root.json')).toBe("'~root.json'");
    expect(shellWord('~/case.json')).toBe("'~/case.json'");
    expect(shellWord('a=~/case.json')).toBe("'a=~/case.json'");
    expect(shellWord('=ls')).toBe("'=ls'");
    expect(echoed(shellWord('~'))).toBe('~');
  });

  it('is quoted with spaces, quotes and signs, and when it is empty', () => {
    expect(['my case.json', "it's", '$(x)', 'a.json; b', ''].map(shellWord)).toEqual([
      "'my case.json'",
      "'it'\\''s'",
      "'$(x)'",
      "'a.json; b'",
      "''",
    ]);
  });

  it('comes out of a shell as it went in, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'ab ~=$`\'"\\*?{}()[]<>|&;!#-.\n') }), (path) => {
        const named = path.startsWith('-') ? `./${path}` : path;
        expect(echoed(`'<' ${shellWord(path)} '>'`)).toBe(`<${named}>`);
      }),
      { numRuns: 40 },
    );
  });
});
