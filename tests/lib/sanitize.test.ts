import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../src/lib/nearest.js';
import { plainLine, plainText, quoted } from '../../src/lib/sanitize.js';

describe('text from strangers', () => {
  it.each([
    ['terminal colors', 'a\u001b[31mb\u001b[0mc', 'abc'],
    ['a terminal title', 'a\u001b]0;evil\u0007b', 'a0;evilb'],
    ['single-letter control sequences', 'a\u009b31mb', 'ab'],
    ['bells, backspaces and zero bytes', 'a\u0007b\u0008c\u0000d', 'abcd'],
    ['direction overrides', 'a\u202eb\u2066c\u2069', 'abc'],
    ['invisible letters', 'a\u200bb\ufeffc\u00add', 'abcd'],
    ['hidden tags', 'a\u{e0041}\u{e0042}b', 'ab'],
    ['lone halves of letters', 'a\ud800b\udc00c', 'abc'],
    ['line ends of every system', 'a\r\nb\rc\u2028d', 'a\nb\nc\nd'],
    ['space around', '  a  ', 'a'],
  ])('loses %s', (_name, text, plain) => {
    expect(plainText(text)).toBe(plain);
  });

  it('keeps what people write', () => {
    for (const text of ['Café, naïve', '中文', 'tab\tand\nline', '10′ 6″', 'smile 😀']) {
      expect(plainText(text)).toBe(text);
    }
  });

  it('is not changed by a second cleaning, and holds no control characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const once = plainText(text);
        expect(plainText(once)).toBe(once);
        expect(plainLine(plainLine(text))).toBe(plainLine(text));
        for (const letter of once) {
          const code = letter.codePointAt(0) ?? 0;
          expect(code >= 32 || letter === '\n' || letter === '\t').toBe(true);
          expect(code >= 0x7f && code < 0xa0).toBe(false);
        }
        expect(plainLine(text)).not.toContain('\n');
      }),
      { numRuns: 1000 },
    );
  });

  it('is quoted short and in one line', () => {
    expect(quoted('a\nb')).toBe('"a b"');
    expect(plainLine('a \t\n  b')).toBe('a b');
    expect(quoted('x'.repeat(60))).toBe(`"${'x'.repeat(60)}"`);
    expect(quoted('x'.repeat(61))).toBe(`"${'x'.repeat(59)}…"`);
    expect(quoted('x'.repeat(500), 10)).toBe(`"${'x'.repeat(9)}…"`);
    expect(Array.from(quoted('😀'.repeat(500), 10))).toHaveLength(12);
  });
});

describe('the near miss', () => {
  const known = ['centerLayout', 'centerLatency', 'seatDistance', 'dull'];
  it.each([
    ['centerLayot', 'centerLayout'],
    ['center_layout', 'centerLayout'],
    ['CENTERLAYOUT', 'centerLayout'],
    ['seatDistnace', 'seatDistance'],
    ['dul', 'dull'],
  ])('of %s is %s', (typed, meant) => {
    expect(nearest(typed, known)).toBe(meant);
  });

  it('is counted in letters changed, put in, left out or swapped with a neighbor', () => {
    // kitten / sitting is the textbook example; with swaps of neighbors only, ca / abc is 3 (from memory).
    for (const [a, b, distance] of [
      ['kitten', 'sitting', 3],
      ['', 'abc', 3],
      ['abc', '', 3],
      ['abc', 'abc', 0],
      ['ab', 'ba', 1],
      ['ca', 'abc', 3],
      ['abcd', 'acbd', 1],
      ['abcdef', 'badcfe', 3],
    ] as const) {
      expect(editDistance(a, b), `${a} ${b}`).toBe(distance);
      expect(editDistance(b, a), `${b} ${a}`).toBe(distance);
    }
  });

  it('may differ in a third of its letters, in one at least, and is the nearest of several', () => {
    expect(nearest('abcdefxyz', ['abcdefghi'])).toBe('abcdefghi');
    expect(nearest('abcdewxyz', ['abcdefghi'])).toBeUndefined();
    expect(nearest('at', ['it'])).toBe('it');
    expect(nearest('ab', ['xy'])).toBeUndefined();
    expect(nearest('centerLayoux', ['centerLayxxx', 'centerLayout'])).toBe('centerLayout');
    expect(nearest('a'.repeat(60), ['a'.repeat(59)])).toBe('a'.repeat(59));
    expect(nearest('a'.repeat(61), ['a'.repeat(61)])).toBeUndefined();
  });

  it('is nothing where nothing is near', () => {
    for (const typed of ['', 'zebra', 'x', 'y'.repeat(1000)]) expect(nearest(typed, known)).toBeUndefined();
    expect(nearest('dull', [])).toBeUndefined();
  });
});
