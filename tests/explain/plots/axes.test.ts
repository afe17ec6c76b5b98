/** Axes: ticks where the trade expects them, ends on whole steps, curves cut where the axis ends. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  frequencyAxis,
  levelAxis,
  linearAxis,
  nearHz,
  pairsBetween,
  signedText,
  tenth,
  VOICE_BANDS_HZ,
  valueAt,
} from '../../../src/explain/plots/axes.js';

describe('a frequency axis', () => {
  const axis = frequencyAxis(200, 8000);
  it('has a line at every whole figure of each decade between its ends, both included', () => {
    expect(axis.ticks.map(({ at }) => at)).toEqual([
      200, 300, 400, 500, 600, 700, 800, 900, 1000, 2000, 3000, 4000, 5000, 6000, 7000, 8000,
    ]);
    expect(axis).toMatchObject({ label: 'frequency (Hz)', scale: 'log', from: 200, to: 8000 });
  });
  it('names one, two and five of a decade, and its end; thousands in k', () => {
    expect(axis.ticks.filter(({ text }) => text !== '').map(({ text }) => text)).toEqual([
      '200',
      '500',
      '1k',
      '2k',
      '5k',
      '8k',
    ]);
    expect(frequencyAxis(20, 20_000).ticks.at(0)).toEqual({ at: 20, text: '20' });
    expect(frequencyAxis(20, 20_000).ticks.at(-1)).toEqual({ at: 20_000, text: '20k' });
  });
  it('leaves out what lies outside', () => {
    expect(frequencyAxis(210, 390).ticks.map(({ at }) => at)).toEqual([300]);
  });
});

describe('a linear axis', () => {
  it('has a tick on every whole step between its ends', () => {
    expect(linearAxis('level (dB)', -6, 3, 3)).toEqual({
      label: 'level (dB)',
      scale: 'linear',
      from: -6,
      to: 3,
      ticks: [
        { at: -6, text: '−6' },
        { at: -3, text: '−3' },
        { at: 0, text: '0' },
        { at: 3, text: '3' },
      ],
    });
    expect(linearAxis('x', -1, 7, 3).ticks.map(({ at }) => at)).toEqual([0, 3, 6]);
    expect(linearAxis('x', 0, 0.3, 0.1).ticks).toHaveLength(4);
  });
  it('writes its ticks as told', () => {
    expect(linearAxis('x', 0, 1, 1, (at) => `${at} m`).ticks.map(({ text }) => text)).toEqual(['0 m', '1 m']);
  });
  it('of levels holds every value and its least width, on whole steps', () => {
    const least = { step: 5, atLeast: [-10, 5] } as const;
    expect(levelAxis('dB', [], least)).toMatchObject({ from: -10, to: 5 });
    expect(levelAxis('dB', [-12, 6], least)).toMatchObject({ from: -15, to: 10 });
    expect(levelAxis('dB', [-15, 10], least)).toMatchObject({ from: -15, to: 10 });
  });
});

describe('a number on an axis', () => {
  it('has a true minus, no trailing zeros and no negative zero', () => {
    expect([-1.5, -0.001, 0, 2, 2.126].map(signedText)).toEqual(['−1.5', '0', '0', '2', '2.13']);
    expect([-1.26, -0.04, 0.25].map(tenth)).toEqual(['−1.3', '0', '0.3']);
  });
  it('of a dip is as exact as a curve is read', () => {
    expect(nearHz(2163)).toBe('2.2 kHz');
    expect(nearHz(887)).toBe('890 Hz');
  });
  it('of the voice bands is the name of a third octave, a factor of 1.26 apart within its rounding', () => {
    VOICE_BANDS_HZ.slice(1).forEach((hz, i) => {
      expect(hz / (VOICE_BANDS_HZ[i] as number)).toBeGreaterThan(1.23);
      expect(hz / (VOICE_BANDS_HZ[i] as number)).toBeLessThan(1.3);
    });
    expect([VOICE_BANDS_HZ[0], VOICE_BANDS_HZ.at(-1), VOICE_BANDS_HZ.length]).toEqual([200, 8000, 17]);
  });
});

describe('a curve', () => {
  const points = [
    [1, 10],
    [2, 20],
    [4, 0],
  ] as const;
  it('is straight between its points, exact at them, and nowhere else', () => {
    expect([1, 1.5, 2, 3, 4].map((x) => valueAt(points, x))).toEqual([10, 15, 20, 10, 0]);
    expect([0.9, 4.1].map((x) => valueAt(points, x))).toEqual([undefined, undefined]);
    expect(valueAt([], 1)).toBeUndefined();
  });
  it('is cut at both ends of the axis, with the value it has there', () => {
    const [xs, ys] = [
      [1, 2, 4],
      [10, 20, 0],
    ];
    expect(pairsBetween(xs, ys, 1.5, 3)).toEqual([
      [1.5, 15],
      [2, 20],
      [3, 10],
    ]);
    expect(pairsBetween(xs, ys, 1, 4)).toEqual(points);
    expect(pairsBetween(xs, ys, 0, 9)).toEqual(points);
  });
  it('cut anywhere stays within what it was and between the cuts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (a, b) => {
          const [from, to] = [Math.min(a, b), Math.max(a, b)];
          for (const [x, y] of pairsBetween([1, 2, 4], [10, 20, 0], from, to)) {
            expect(x).toBeGreaterThanOrEqual(from);
            expect(x).toBeLessThanOrEqual(to);
            expect(y).toBeCloseTo(x <= 2 ? 10 * x : 40 - 10 * x, 9);
          }
        },
      ),
    );
  });
});
