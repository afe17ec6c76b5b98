/** How a calculator is shown: results, help and list, on a calculator made up for it. */
import { describe, expect, it } from 'vitest';
import type { Calculator, Result } from '../../../src/explain/calculators/calculator.js';
import { listForPrograms, showHelp, showList, showResult } from '../../../src/explain/calculators/show.js';

const input = (changes: object) => ({
  unit: 'm',
  meaning: 'how far',
  accepted: 'a number',
  required: true,
  ...changes,
});
const made = {
  name: 'made-up',
  title: 'Made up',
  answers: 'What comes out?',
  inputs: {
    farM: input({}),
    near: input({ unit: '', required: false, usual: 2 }),
    spare: input({ unit: '', required: false }),
  },
  outputs: { outDb: { unit: 'dB', meaning: 'what comes out' }, share: { unit: '', meaning: 'a part' } },
  formula: 'a + b',
  validity: 'Everywhere.',
  source: { cite: 'a book', mark: 'practice' },
  example: 'farM=3',
} as never as Calculator;
const shown = (values: object, result: object, columns = 80): string[] =>
  showResult(made, values as never, result as Result, columns).split('\n');
const value = (outDb: unknown): string | undefined =>
  shown({}, { outDb, share: 1 })
    .find((line) => line.includes('outDb'))
    ?.trim();

describe('a result', () => {
  it('has the inputs given or usual, the outputs with unit and meaning, and where it comes from', () => {
    expect(shown({ farM: 3, near: 2, spare: undefined }, { outDb: -6.02059, share: 0.5 })).toEqual([
      'Made up',
      '',
      '  farM  3 m',
      '  near  2 (usual)',
      '',
      '  outDb  -6.021 dB   (what comes out)',
      '  share  0.5   (a part)',
      '',
      '  formula  a + b',
      '  holds    Everywhere.',
      '  source   a book (common practice, no source)',
      '',
    ]);
    expect(shown({}, { outDb: 1, share: 1 })[1]).toBe('');
    expect(shown({}, { outDb: 1, share: 1 })[2]).toMatch(/outDb/);
    expect(shown({ near: false, farM: 'x' }, {}).slice(2, 4)).toEqual(['  farM  x', '  near  false']);
  });
  it.each([
    [null, 'none'],
    [undefined, 'none'],
    [[], 'none'],
    [12345.6, '12350 dB'],
    [[1, 2.00004], '1, 2 dB'],
    ['text', 'text'],
    [{ a: 1, b: null }, 'a 1, b none'],
    [[{ a: 1 }, { a: 2 }], 'a 1; a 2'],
    [[1, 'x'], '1 dB; x'],
  ])('of %j reads %s', (given, words) => {
    expect(value(given)).toBe(`outDb  ${words}   (what comes out)`);
  });
  it('is never narrower than forty columns nor wider than a hundred', () => {
    const wide = { ...made, validity: 'word '.repeat(60).trim() } as Calculator;
    const widest = (columns: number): number =>
      Math.max(
        ...showResult(wide, {}, {} as Result, columns)
          .split('\n')
          .map((line) => line.length),
      );
    expect(widest(10)).toBeLessThanOrEqual(40);
    expect(widest(10)).toBeGreaterThan(30);
    expect(widest(70)).toBeLessThanOrEqual(70);
    expect(widest(70)).toBeGreaterThan(60);
    expect(widest(500)).toBeLessThanOrEqual(100);
    expect(widest(500)).toBeGreaterThan(90);
  });
});

describe('help and list', () => {
  it('tell what is needed, usual, and may be left out', () => {
    expect(showHelp(made, 80).split('\n')).toEqual([
      'made-up: Made up',
      'What comes out?',
      '',
      'Inputs (KEY=VALUE)',
      '  farM   how far [m]: a number; needed',
      '  near   how far: a number; usual: 2',
      '  spare  how far: a number; may be left out',
      '',
      'Results',
      '  outDb  what comes out [dB]',
      '  share  a part',
      '',
      '  formula  a + b',
      '  holds    Everywhere.',
      '  source   a book (common practice, no source)',
      '',
      'Example',
      '  center-audit calc made-up farM=3',
      '',
    ]);
  });
  it('list every calculator in two lines', () => {
    const lines = showList([made, made], 80).split('\n');
    expect(lines.slice(2, 6)).toEqual([
      'made-up: What comes out?',
      '  farM [near=2] [spare]',
      'made-up: What comes out?',
      '  farM [near=2] [spare]',
    ]);
  });
  it('list the same for programs, with null where nothing is usual', () => {
    expect(listForPrograms([made])).toEqual([
      {
        name: 'made-up',
        title: 'Made up',
        answers: 'What comes out?',
        inputs: [
          { key: 'farM', unit: 'm', meaning: 'how far', accepted: 'a number', required: true, default: null },
          { key: 'near', unit: '', meaning: 'how far', accepted: 'a number', required: false, default: 2 },
          {
            key: 'spare',
            unit: '',
            meaning: 'how far',
            accepted: 'a number',
            required: false,
            default: null,
          },
        ],
        outputs: [
          { key: 'outDb', unit: 'dB', meaning: 'what comes out' },
          { key: 'share', unit: '', meaning: 'a part' },
        ],
        formula: 'a + b',
        validity: 'Everywhere.',
        source: { cite: 'a book', mark: 'practice' },
        example: 'farM=3',
      },
    ]);
  });
});
