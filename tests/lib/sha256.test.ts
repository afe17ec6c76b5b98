/** The hash that a page names its style sheet by. */
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sha256Base64 } from '../../src/lib/sha256.js';

const hex = (text: string): string =>
  [...atob(sha256Base64(text))].map((byte) => byte.charCodeAt(0).toString(16).padStart(2, '0')).join('');

describe('SHA-256', () => {
  // The examples published with the standard (FIPS 180-2, appendix B.1 and B.2), from memory.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of %s is that of the standard', (text, wanted) => {
    expect(hex(text)).toBe(wanted);
  });
  it('is that of an independent implementation for any text', () => {
    const anyLength = fc.string({ maxLength: 300, unit: 'grapheme-composite' });
    fc.assert(
      fc.property(anyLength, (text) => {
        expect(sha256Base64(text)).toBe(createHash('sha256').update(text).digest('base64'));
      }),
    );
    for (const length of [55, 56, 63, 64, 65, 119, 120])
      expect(sha256Base64('x'.repeat(length))).toBe(
        createHash('sha256').update('x'.repeat(length)).digest('base64'),
      );
  });
});
