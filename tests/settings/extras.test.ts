/** Subwoofer and filters of the sheet, and the cautions that stand beside the steps. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { documentText } from '../../src/explain/document-text.js';
import { settingsBlocks } from '../../src/explain/settings-words.js';
import { type FactBook, withAnswer } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import type { FactId } from '../../src/facts/catalog.js';
import { CAUTIONS } from '../../src/rules/cautions.js';
import { settingsFor } from '../../src/settings/sheet.js';

const told = (book: FactBook, facts: Partial<Record<FactId, number | string>>): FactBook =>
  Object.entries(facts).reduce(
    (all, [id, value]) => withAnswer(all, id as FactId, { value, how: 'measured' }),
    book,
  );
const demo = readCase(readFileSync(new URL('../../cases/demo.json', import.meta.url), 'utf8')).book;
const metric: FactBook = {
  ...told(demo, {
    mainsBase: 2.4,
    entryKind: 'distances',
    entryStep: 0.01,
    enteredLeft: 3,
    enteredCenter: 3.6,
    enteredRight: 3,
  }),
  units: 'metric',
};
const textOf = (book: FactBook, options: Parameters<typeof settingsFor>[1] = {}): string =>
  documentText(settingsBlocks(settingsFor(book, options), book.units), {
    width: 100,
    color: false,
    ascii: false,
    accessible: false,
  }).replace(/\s+/g, ' ');

describe('the subwoofer of the sheet', () => {
  it('follows the center, so that the two stay as they are', () => {
    const { subwoofer, entries, before } = settingsFor(told(metric, { subwoofer: 'one' }));
    expect(subwoofer?.change).toBeCloseTo(entries.center - (before.entries?.center ?? 0), 2);
    expect(subwoofer?.lateMs).toBeNull();
  });

  it('takes out a measured lateness: 6 ms are 2.06 m more (closed form, 343.2 m/s)', () => {
    const sub = told(metric, { subwoofer: 'one' });
    const [as, late] = [sub, told(sub, { subDelay: 6 })].map((book) => settingsFor(book).subwoofer);
    expect((late?.change ?? 0) - (as?.change ?? 0)).toBeCloseTo(0.006 * 343.2, 1);
  });

  it('gets less delay by as much in a menu of milliseconds', () => {
    const bare = { ...demo, answers: new Map() };
    const places = { mainsBase: 2.4, seatDistance: 3, centerTweeterHeight: 0.6, entryKind: 'delays' };
    const sub = told(bare, { ...places, delayLeft: 0, delayCenter: 0.5, delayRight: 0, subwoofer: 'one' });
    const [as, late] = [sub, told(sub, { subDelay: 3 })].map((book) => settingsFor(book).subwoofer?.change);
    expect(as).not.toBeNull();
    expect((late ?? 0) - (as ?? 0)).toBeCloseTo(-3, 6);
  });

  it('is left out where there is none or nobody told of one', () => {
    expect(settingsFor(metric).subwoofer).toBeNull();
    expect(settingsFor(told(metric, { subwoofer: 'none' })).subwoofer).toBeNull();
  });
});

describe('the filters of the sheet', () => {
  /** Third octaves 200 Hz to 10 kHz with a hump of 6 dB, an octave wide, at 2 kHz. */
  const frequencyHz = Array.from({ length: 18 }, (_, i) => 10 ** (2.3 + i / 10));
  const hump = (db: number) => ({
    frequencyHz,
    levelDb: frequencyHz.map((hz) => db * Math.exp(-((Math.log2(hz / 2000) / 0.6) ** 2))),
  });

  it('cut a hump that a recording found, within a third octave, which it resolves, and leave less than half of it', () => {
    const { filters, toneRmsDb } = settingsFor(metric, { tone: hump(6) });
    const deepest = filters.reduce((a, b) => (b.gainDb < a.gainDb ? b : a));
    expect(Math.abs(Math.log2(deepest.frequencyHz / 2000))).toBeLessThan(1 / 3);
    expect(deepest.gainDb).toBeLessThan(-3);
    expect(toneRmsDb?.after).toBeLessThan((toneRmsDb?.before ?? 0) / 2);
  });

  it('are none where the tone is alike, and none are told where nothing was measured', () => {
    expect(settingsFor(metric, { tone: hump(0.3) }).filters).toEqual([]);
    expect(settingsFor(metric).toneRmsDb).toBeNull();
    expect(textOf(metric)).toContain('Filters need a measured tone');
  });

  it('carry the caution of tweeters where they boost the treble, and not where they only cut', () => {
    const dull = { frequencyHz, levelDb: frequencyHz.map((hz) => Math.min(0, -3 * Math.log2(hz / 2500))) };
    expect(textOf(metric, { tone: dull })).toContain(CAUTIONS['tweeter-power']);
    expect(textOf(metric, { tone: hump(6) })).not.toContain(CAUTIONS['tweeter-power']);
  });
});

describe('the cautions of the sheet', () => {
  it('put a reversed loudspeaker before every number, and wires without power', () => {
    const text = textOf(told(metric, { polarityMeasured: 'center-inverted' }));
    expect(text.indexOf('center is connected in reverse')).toBeGreaterThan(0);
    expect(text.indexOf('center is connected in reverse')).toBeLessThan(text.indexOf('Left:'));
    expect(text).toContain(CAUTIONS['power-off-wires']);
    expect(textOf(told(metric, { polarityMeasured: 'alike' }))).not.toContain('in reverse');
  });

  it('stand beside what can hurt: noise, a louder center, a wedged box, and the menu before all', () => {
    const text = textOf(
      told(metric, {
        subwoofer: 'one',
        centerAgainstMainsDb: -4,
        centerTrim: 1,
        centerTweeterHeight: 0.3,
        centerTilt: 0,
        centerDepth: 0.3,
      }),
    );
    const at = (words: string): number => text.indexOf(words);
    expect(at(CAUTIONS['photograph-menu'])).toBeLessThan(at('Left:'));
    for (const [step, caution] of [
      ['Subwoofer:', 'test-noise'],
      ['Trim, center:', 'hearing'],
    ] as const) {
      expect(at(step)).toBeGreaterThan(0);
      expect(at(CAUTIONS[caution])).toBeGreaterThan(at(step));
    }
  });
});
