/** What a recording tells becomes facts of a case: only what is trusted, at the seat it was made at. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, told, withAnswer } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import type { FactId } from '../../src/facts/catalog.js';
import { seatsOf } from '../../src/facts/seats.js';
import { withMeasurement } from '../../src/recording/facts.js';
import { type Measurement, refused } from '../../src/recording/measurement.js';

const NONE = refused(['noisy']);
const good: Measurement = {
  ...NONE,
  signal: 'channels',
  trusted: true,
  reasons: [],
  delayMs: { centerMinusLeft: 1.5, centerMinusRight: 1.7, leftMinusRight: 0.2, uncertainty: 0.1 },
  polarity: { left: 1, center: -1, right: 1, undecided: [] },
  levelDb: { centerMinusMains: -4.2504, leftMinusRight: 0, uncertainty: 1.5 },
  toneDb: {
    hz: [158.5, 199.5, 1000, 3981, 10_000],
    centerMinusMains: [-12, 1, 0.5, -5.1, -14],
    uncertainty: 2.5,
  },
};
const take = (measurement: Measurement, book: FactBook = EMPTY_BOOK, seat: string | null = null) =>
  withMeasurement(book, { file: 'a.wav', seat, measurement }, '2031-05-17');
const fact = (m: Measurement, id: FactId): unknown => told(take(m).book, id);

describe('facts of a recording', () => {
  it('hold the mean arrival, the odd polarity and the level', () => {
    expect(fact(good, 'arrivalMeasuredMs')).toBe(1.6);
    expect(fact(good, 'polarityMeasured')).toBe('center-inverted');
    expect(fact(good, 'centerAgainstMainsDb')).toBe(-4.25);
  });

  it('hold the worst third octave of the tone and its middle, within 200 Hz to 8 kHz', () => {
    expect(fact(good, 'toneMeasuredDb')).toBe(-5.1);
    expect(fact(good, 'toneMeasuredHz')).toBe(3981);
  });

  it('hold no tone where no band of those was told', () => {
    const deaf = { ...good, toneDb: { ...good.toneDb, centerMinusMains: [-12, null, null, null, -14] } };
    expect(fact(deaf, 'toneMeasuredDb')).toBeUndefined();
    expect(fact(deaf, 'toneMeasuredHz')).toBeUndefined();
  });

  it('take 3 dB off a level of the stereo file, where the center carries both channels', () => {
    expect(fact({ ...good, signal: 'stereo' }, 'centerAgainstMainsDb')).toBeCloseTo(-4.2504 - 3.0103, 3);
  });

  it('are only the level at another seat than the main one', () => {
    const demo = readCase(readFileSync(new URL('../../cases/demo.json', import.meta.url), 'utf8')).book;
    const side = seatsOf(demo).seats.find(({ main }) => !main)?.name ?? '';
    expect(take(good, demo, side).facts).toEqual([{ id: 'centerAgainstMainsSideDb', value: -4.25 }]);
  });

  it('are none where nothing can be trusted, and the case stays as it was', () => {
    expect(take(NONE)).toEqual({ book: EMPTY_BOOK, facts: [], clashes: [] });
  });

  it('are measured ones with file and day beside them, and contradict what was told', () => {
    const before = withAnswer(EMPTY_BOOK, 'arrivalMeasuredMs', { value: 0, how: 'read' });
    const { book, clashes } = take(good, before);
    expect(told(book, 'toneMeasuredDb')).toBe(-5.1);
    expect(book.answers.get('toneMeasuredDb')).toMatchObject({ how: 'measured' });
    expect(book.notes.at(-1)).toMatch(/2031-05-17 from a\.wav/);
    expect(clashes).toContainEqual({ id: 'arrivalMeasuredMs', told: 0, measured: 1.6 });
  });
});
