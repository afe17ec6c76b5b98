import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { plainLine } from '../../src/lib/sanitize.js';
import { draftOf } from '../../src/reading/draft.js';
import { readText } from '../../src/reading/read.js';
import { explained } from '../../src/reading/words.js';

/** Words of the trade among signs that steer displays, nest quotes and break numbers. */
const HOSTILE = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        'center',
        'dull',
        'not',
        '3 m',
        "10'",
        '"',
        '“',
        '\u001b[2J',
        '\u202e',
        '\u200f',
        '\u0000',
        '\n',
        '(',
        ')',
        '<script>',
        '1e999',
        '-',
        '..',
        '9'.repeat(40),
      ),
      fc.string({ unit: 'binary', maxLength: 12 }),
    ),
    { maxLength: 60 },
  )
  .map((parts) => parts.join(' '));

describe('text of strangers', () => {
  it('gives only exact parts of itself', () => {
    fc.assert(
      fc.property(HOSTILE, (text) => {
        const { taken, unsure, left } = readText(text);
        for (const { phrase, start } of [...taken, ...unsure, ...left])
          expect(text.slice(start, start + phrase.length)).toBe(phrase);
      }),
    );
  });

  it('gives a draft that reads back as the same case', () => {
    fc.assert(
      fc.property(HOSTILE, (text) => {
        const draft = writeCase(draftOf(readText(text)));
        expect(writeCase(readCase(draft).book)).toBe(draft);
      }),
    );
  });

  it('is explained without anything that steers a display', () => {
    fc.assert(
      fc.property(HOSTILE, (text) => {
        for (const { sentence, taken, unsure } of explained(readText(text)))
          for (const line of [sentence, ...taken, ...unsure]) expect(plainLine(line)).toBe(line);
      }),
    );
  });

  it('is read as far as a post can go in one line of a million letters', () => {
    const text = 'the "center (is [not dull, '.repeat(40_000);
    expect(readText(text).taken.map(({ fact }) => fact)).toContain('dull');
  });
});
