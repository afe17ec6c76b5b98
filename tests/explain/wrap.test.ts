/** Width and wrapping, held to the libraries that everybody uses for it. */
import * as fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import wrapAnsi from 'wrap-ansi';
import { hanging, widthOf, wrapped } from '../../src/explain/wrap.js';

/** Text as owners write it: Latin, Greek, Cyrillic, accents put together, our own marks, Chinese, Japanese, Korean. */
const letters = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom(...'abcxyzÄßéñøžΩдж“”’–—…°│█░┼→½µ×') },
  {
    weight: 1,
    arbitrary: fc.constantFrom('e\u0301', 'n\u0303', 'a\u00a0b', '中', '音', 'の', 'ガ', '한', 'ｆ', '！'),
  },
);
const word = fc.array(letters, { minLength: 1, maxLength: 14 }).map((list) => list.join(''));
const text = fc.array(word, { maxLength: 20 }).map((list) => list.join(' ').normalize('NFC'));

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

describe('wrapping', () => {
  it('breaks where wrap-ansi breaks', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 16, max: 60 }), (line, width) => {
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
