/** What version 2 of the case file adds, and that version 1 goes on being read. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { told } from '../../src/facts/book.js';
import { type CaseError, readCase, writeCase } from '../../src/facts/case-file.js';
import { openFacts } from '../../src/reasoning/hypotheses.js';
import { anyBook } from '../support/books.js';
import { inVain } from '../support/trials.js';

const bookOf = (parts: object) => readCase(JSON.stringify(parts)).book;
const firstProblem = (parts: object) => {
  try {
    bookOf(parts);
  } catch (error) {
    return (error as CaseError).problems[0];
  }
  return undefined;
};

/** As the contract shows it. */
const CONTRACT = {
  version: 2,
  trials: [
    {
      act: 'entry-corrected',
      of: 'center',
      outcome: 'gone',
      complaint: 'image-collapses-to-center',
      stays: true,
      note: 'typed 9 ft',
    },
  ],
  before: { facts: { enteredCenter: '3.0 m' } },
  constraints: ['no-purchase'],
  solved: true,
};

describe('a case of version 2', () => {
  it('tells trials, what was before, constraints, and whether it is solved', () => {
    expect(bookOf(CONTRACT)).toMatchObject({
      trials: CONTRACT.trials,
      before: new Map([['enteredCenter', { value: 3, how: 'read' }]]),
      constraints: ['no-purchase'],
      solved: true,
    });
  });

  it('is what is written, and reads back as the same book', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const text = writeCase(book);
        expect(JSON.parse(text).version).toBe(2);
        expect(readCase(text).book).toEqual(book);
      }),
    );
  });

  it('holds an answer told both ways, which counts as no answer and is asked again', () => {
    const book = bookOf({ facts: { subwoofer: { how: 'conflicting', values: ['one', 'none'] } } });
    expect(book.answers.get('subwoofer')).toEqual({ how: 'conflicting', values: ['one', 'none'] });
    expect(told(book, 'subwoofer')).toBeUndefined();
    expect(openFacts(book)).toContain('subwoofer');
    expect(openFacts(bookOf({ facts: { subwoofer: { how: 'unknown' } } }))).not.toContain('subwoofer');
  });

  it('takes words of the trade and quantities in a conflict and in what was before', () => {
    const book = bookOf({
      facts: {
        centerLayout: { how: 'conflicting', values: ['MTM', 'coax'] },
        seatDistance: { how: 'conflicting', values: ['3 m', '300 cm'] },
      },
      before: {
        facts: { centerLayout: 'TMT', enteredCenter: { how: 'conflicting', values: ['3 m', '9 ft'] } },
      },
    });
    expect(book.answers.get('centerLayout')).toMatchObject({ values: ['mid-tweeter-mid', 'coaxial'] });
    // Told twice the same is told once.
    expect(book.answers.get('seatDistance')).toEqual({ value: 3, how: 'measured' });
    expect(book.before.get('centerLayout')).toMatchObject({ value: 'tweeter-mid-tweeter' });
    expect(book.before.get('enteredCenter')).toMatchObject({ values: [3, 2.7432] });
  });

  it('knows what is plain to see', () => {
    expect(bookOf({ facts: { subwoofer: { value: 'none', how: 'seen' } } }).answers.get('subwoofer')).toEqual(
      {
        value: 'none',
        how: 'seen',
      },
    );
  });

  it('names the near act, outcome, complaint and constraint for a mistyped one', () => {
    const trial = (parts: object) =>
      firstProblem({ trials: [{ act: 'center-tilted', outcome: 'gone', ...parts }] });
    expect(trial({ act: 'center-tiltd' })).toMatchObject({
      path: 'trials.0.act',
      what: '"center-tiltd" is no act; did you mean center-tilted?',
      example: 'center-tilted',
    });
    expect(trial({ act: 'Aim/Wedge!' })?.what).toBe('"Aim/Wedge!" is no act');
    expect(trial({ act: 'aim/wedge' })).toBeUndefined();
    expect(trial({ outcome: 'cured' })).toMatchObject({
      path: 'trials.0.outcome',
      accepted: 'gone, better, same, worse, cannot-tell',
    });
    expect(trial({ of: 'centre' })?.what).toBe('"centre" is no entry; did you mean center?');
    expect(trial({ complaint: 'dul' })?.what).toBe('"dul" is no complaint; did you mean dull?');
    expect(firstProblem({ constraints: ['no-purchases'] })?.what).toBe(
      '"no-purchases" is no constraint; did you mean no-purchase?',
    );
  });

  it('tells a wrong value of before at its own place', () => {
    expect(firstProblem({ before: { facts: { enteredCenter: '300 m' } } })).toMatchObject({
      path: 'before.facts.enteredCenter',
      accepted: expect.stringContaining('a length'),
    });
  });
});

describe('a case of version 1', () => {
  it('has its remedies tried in vain as trials without effect; what names no remedy becomes a note', () => {
    const book = bookOf({ version: 1, tried: ['delay/set-distances', 'a new rug'], notes: ['calls back'] });
    expect(book.trials).toEqual(inVain('delay/set-distances'));
    expect(book.notes).toEqual(['calls back', 'Tried: a new rug.']);
  });

  it('may leave its version out', () => {
    expect(bookOf({ tried: ['delay/set-distances'] }).trials).toEqual(inVain('delay/set-distances'));
  });
});
