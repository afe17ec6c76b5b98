/** Width and wrapping, held to the libraries that everybody uses for it. */
import * as fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import wrapAnsi from 'wrap-ansi';
import { hanging, padded, widthOf, wrapped } from '../../src/explain/wrap.js';

/** Text as owners write it: Latin, Greek, Cyrillic, accents put together, our own marks, Chinese, Japanese, Korean. */
const letters = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom(...'abcxyzÄßéñøžΩдж“”’–—…°│█░┼→½µ×') },
  {
    weight: 1,
    arbitrary: fc.constantFrom('e\u0301', 'n\u0303', 'a\u00a0b', '中', '音', 'の', 'ガ', '한', 'ｆ', '！'),
  },
);
/** The library drops a space that must not break where it cuts a word at it; here it is a letter. Such words are short. */
const word = (maxLength: number) =>
  fc
    .array(letters, { minLength: 1, maxLength })
    .map((list) => list.join(''))
    .map((each) => (stringWidth(each) > 8 ? each.replaceAll('\u00a0', '') : each));
/** Now and then longer than any line. */
const words = fc.oneof({ weight: 9, arbitrary: word(14) }, { weight: 1, arbitrary: word(90) });
const text = fc.array(words, { maxLength: 20 }).map((list) => list.join(' ').normalize('NFC'));

describe('width', () => {
  it('is what string-width says', () => {
    fc.assert(
      fc.property(text, (line) => {
        expect(widthOf(line)).toBe(stringWidth(line));
      }),
    );
  });

  it.each([
    '',
    'a\u001b[1mbold\u001b[22m',
    '👍',
    '👨‍👩‍👧',
    '🎬 film',
    'カタカナ',
    '\u200b',
    'ﬁ',
    'שלום',
    'नमस्ते'.slice(0, 1),
  ])('%j as well', (line) => expect(widthOf(line)).toBe(stringWidth(line)));
});

describe('filling up', () => {
  it('counts columns, not letters, and never cuts', () => {
    expect([padded('ab', 4), padded('中', 4), padded('abcdef', 4)]).toEqual(['ab  ', '中  ', 'abcdef']);
  });
});

describe('wrapping', () => {
  it('cuts a word at the very column, between letters and never inside what styles them', () => {
    expect(wrapped('abcdefgh', 8)).toEqual(['abcdefgh']);
    expect(wrapped('abcdefghi', 8)).toEqual(['abcdefgh', 'i']);
    // A long word begins on the line at hand, unless a line of its own saves a cut.
    expect(wrapped('ab abcdefghijk', 8)).toEqual(['ab abcde', 'fghijk']);
    expect(wrapped('ab abcdefghijklmnop', 8)).toEqual(['ab', 'abcdefgh', 'ijklmnop']);
    expect(wrapped('\u001b[1mabcdefgh\u001b[22m', 8)).toEqual(['\u001b[1mabcdefgh\u001b[22m']);
    expect(wrapped('中中中中中', 8)).toEqual(['中中中中', '中']);
  });
  it('drops spaces around a break and at the ends, however many', () => {
    expect(wrapped('   abcd    efgh   ', 8)).toEqual(['abcd', 'efgh']);
    expect(wrapped('   ab   ', 8)).toEqual(['ab']);
  });

  it('breaks where wrap-ansi breaks', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 8, max: 60 }), (line, width) => {
        expect(wrapped(line, width)).toEqual(wrapAnsi(line, width, { hard: true, trim: true }).split('\n'));
      }),
    );
  });

  it('never goes beyond the width, and loses nothing but spaces', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 120 }),
        fc.integer({ min: 8, max: 40 }),
        (line, width) => {
          const plain = line.replace(/[\p{Cc}\p{Cf}]/gu, '');
          const lines = wrapped(plain, width);
          for (const each of lines) expect(widthOf(each)).toBeLessThanOrEqual(width);
          // White space of any kind may go where a line breaks or ends.
          expect(lines.join('').replace(/\s/gu, '')).toBe(plain.replace(/\s/gu, ''));
        },
      ),
    );
  });

  it('closes bold at the end of a line and opens it again after the indent', () => {
    const lines = hanging('  - ', '\u001b[1mone two three four\u001b[22m five', 14);
    expect(lines).toEqual([
      '  - \u001b[1mone two\u001b[22m',
      '    \u001b[1mthree four\u001b[22m',
      '    five',
    ]);
  });
});
