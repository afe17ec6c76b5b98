import { PassThrough } from 'node:stream';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pasteGate, pasteReader, placeholder } from '../../src/terminal/paste.js';

const bracketed = (text: string): string => `\u001b[200~${text}\u001b[201~`;

describe('a paste in what is typed', () => {
  it('is told from it', () => {
    expect(pasteReader().read(`ab${bracketed('1\r2')}c`)).toEqual([
      { typed: 'ab' },
      { pasted: '1\r2' },
      { typed: 'c' },
    ]);
  });

  it('is one piece however it is cut', () => {
    const text = `x${bracketed('first line\rsecond line\rthird')}\r`;
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: text.length - 1 })), (cuts) => {
        const places = [0, ...cuts.sort((a, b) => a - b), text.length];
        const reader = pasteReader();
        const pieces = places.slice(1).flatMap((end, i) => reader.read(text.slice(places[i], end)));
        const pasted = pieces.flatMap((piece) => ('pasted' in piece ? [piece.pasted] : []));
        // A cut right inside the first bracket leaves a key press and digits, as on every terminal.
        fc.pre(!cuts.some((cut) => cut > 1 && cut < 1 + '\u001b[20'.length));
        expect(pasted).toEqual(['first line\rsecond line\rthird']);
      }),
    );
  });

  it('is known by its line ends where nothing brackets it', () => {
    expect(pasteReader().read('one\rtwo\r')).toEqual([{ pasted: 'one\rtwo' }, { typed: '\r' }]);
    expect(pasteReader().read('typed\r')).toEqual([{ typed: 'typed\r' }]);
  });
});

describe('the gate', () => {
  const through = (...chunks: string[]) => {
    const input = new PassThrough();
    const gate = pasteGate(input as unknown as NodeJS.ReadStream);
    for (const chunk of chunks) input.write(chunk);
    return { gate, shown: gate.stream.read()?.toString() ?? '' };
  };

  it('shows a place for a long paste and gives it back whole', () => {
    const text = Array.from({ length: 12 }, (_, i) => `line ${i}`).join('\r');
    const { gate, shown } = through(bracketed(text));
    expect(shown).toBe(placeholder(text));
    expect(gate.whole(`about: ${shown}`)).toBe(`about: ${text.replaceAll('\r', '\n')}`);
  });

  it('types a short one in one line as it is', () => {
    expect(through(bracketed('3.2 m')).shown).toBe('3.2 m');
  });

  it('lets keys through as they come', () => {
    expect(through('\u001b', '[A', '?').shown).toBe('\u001b[A?');
  });
});
