import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gridStepDecades,
  logGrid,
  smoothPower,
  thirdOctaveCenterHz,
  thirdOctaveEdgesHz,
} from '../../src/acoustics/bands.js';
import { SPEECH_BANDS_HZ, SPEECH_IMPORTANCE, speechLoss } from '../../src/acoustics/speech.js';

describe('third-octave bands', () => {
  it('have the edge factors that IEC 61260-1 Table F.1 prints: 0.89125 and 1.12202', () => {
    // Read as copied in public code.
    const { lowerHz, upperHz } = thirdOctaveEdgesHz(1000);
    expect(lowerHz / 1000).toBeCloseTo(0.89125, 5);
    expect(upperHz / 1000).toBeCloseTo(1.12202, 5);
  });

  it('touch without gap or overlap', () => {
    for (let n = -17; n < 13; n += 1) {
      expect(thirdOctaveEdgesHz(thirdOctaveCenterHz(n)).upperHz).toBeCloseTo(
        thirdOctaveEdgesHz(thirdOctaveCenterHz(n + 1)).lowerHz,
        8,
      );
    }
  });

  it('of speech run from 158.5 Hz to 7943 Hz, edges from 141 Hz to 8913 Hz', () => {
    expect(SPEECH_BANDS_HZ).toHaveLength(18);
    expect(thirdOctaveEdgesHz(SPEECH_BANDS_HZ[0] ?? 0).lowerHz).toBeCloseTo(141.25, 2);
    expect(thirdOctaveEdgesHz(SPEECH_BANDS_HZ[17] ?? 0).upperHz).toBeCloseTo(8912.5, 1);
  });
});

describe('sliding third-octave smoothing', () => {
  it('leaves a flat curve flat and never exceeds the extremes of a curve', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e-4, max: 10, noNaN: true }), { minLength: 40, maxLength: 300 }),
        (power) => {
          const smoothed = smoothPower(power, 0.1 / 32);
          const [least, most] = [Math.min(...power), Math.max(...power)];
          for (const value of smoothed) {
            expect(value).toBeGreaterThan(least * (1 - 1e-9));
            expect(value).toBeLessThan(most * (1 + 1e-9));
          }
        },
      ),
    );
    for (const value of smoothPower(new Array(100).fill(2.5), 0.004)) expect(value).toBeCloseTo(2.5, 12);
  });

  it('spreads a lone spike over one window', () => {
    const spike = new Array(201).fill(0);
    spike[100] = 32;
    const smoothed = smoothPower(spike, 0.1 / 32);
    expect(smoothed[100]).toBeCloseTo(1, 9);
    expect(smoothed[116]).toBeCloseTo(0.5, 9);
    expect(smoothed[118]).toBeCloseTo(0, 9);
  });

  it('log grids keep both ends and an even step', () => {
    const grid = logGrid(80, 20000, 481);
    expect(grid[0]).toBeCloseTo(80, 9);
    expect(grid[480]).toBeCloseTo(20000, 6);
    expect(Math.log10((grid[241] ?? 1) / (grid[240] ?? 1))).toBeCloseTo(gridStepDecades(grid), 12);
  });
});

describe('speech loss', () => {
  it('weighs 2 kHz most and the ends least', () => {
    expect(SPEECH_IMPORTANCE.indexOf(Math.max(...SPEECH_IMPORTANCE))).toBe(11);
    expect(SPEECH_BANDS_HZ[11]).toBeCloseTo(1995, 0);
    expect(SPEECH_IMPORTANCE.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  it('lies between the least and the greatest band loss', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -10, max: 30, noNaN: true }), { minLength: 18, maxLength: 18 }),
        (bandLossDb) => {
          const { lossDb } = speechLoss({ bandLossDb });
          expect(lossDb).toBeGreaterThanOrEqual(Math.min(...bandLossDb) - 1e-9);
          expect(lossDb).toBeLessThanOrEqual(Math.max(...bandLossDb) + 1e-9);
        },
      ),
    );
  });

  it('refuses anything but 18 finite numbers', () => {
    expect(() => speechLoss({ bandLossDb: [1, 2, 3] })).toThrow(/bandLossDb has 3 values; accepted: 18/);
    expect(() => speechLoss({ bandLossDb: new Array(18).fill(Number.NaN) })).toThrow(/bandLossDb\[0\]/);
  });
});
