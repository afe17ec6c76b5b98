/** The comb of shared content against its own curve and against a plain sum of three sine waves. */
import { describe, expect, it } from 'vitest';
import { C_AIR } from '../../src/acoustics/air.js';
import type { Point } from '../../src/acoustics/arrival.js';
import {
  type SharedCombInput,
  sharedCombAtSeat,
  sharedRippleDb,
  smoothedRippleDb,
} from '../../src/acoustics/comb.js';

const at = (xM: number, yM: number): Point => [xM, yM];
const input = (changes: Partial<SharedCombInput> = {}): SharedCombInput => ({
  left: at(-1.5, 0),
  center: at(0, 0),
  right: at(1.5, 0),
  seat: at(0.4, 3),
  delaysMs: { left: 0, center: 0.3, right: 0 },
  centerGain: 1,
  sideGain: 0.4,
  ...changes,
});

/** Level of the three waves added as they arrive, dB over center or phantom alone, whichever is louder. */
function plainSumDb(
  { seat, mainSeat = seat, delaysMs, centerGain, sideGain, ...boxes }: SharedCombInput,
  hz: number,
): number {
  const parts = (['left', 'center', 'right'] as const).map((channel) => {
    const far = (to: Point): number => Math.hypot(...boxes[channel].map((v, i) => v - (to[i] as number)));
    const amplitude = ((channel === 'center' ? centerGain : sideGain) * far(mainSeat)) / far(seat);
    const phase = 2 * Math.PI * hz * (far(seat) / C_AIR + delaysMs[channel] / 1000);
    return { re: amplitude * Math.cos(phase), im: amplitude * Math.sin(phase) };
  });
  const [re, im] = [parts.reduce((s, p) => s + p.re, 0), parts.reduce((s, p) => s + p.im, 0)];
  return 20 * Math.log10(Math.hypot(re, im) / Math.max(centerGain, 2 * sideGain));
}

describe('the comb at a seat', () => {
  it('sums up its own curve between 200 Hz and 8 kHz', () => {
    for (const changes of [{}, { mainSeat: at(0, 3) }, { sideGain: 2 }, { centerGain: 0 }]) {
      const { curve, ...result } = sharedCombAtSeat(input(changes));
      const judged = [...curve.frequencyHz.keys()].filter((i) => {
        const hz = curve.frequencyHz[i] as number;
        return hz >= 200 && hz <= 8000;
      });
      const levels = judged.map((i) => curve.smoothedDb[i] as number);
      expect(result.ripplePeakToPeakDb).toBeCloseTo(Math.max(...levels) - Math.min(...levels), 9);
      const powers = judged.map(
        (i) => 10 ** (plainSumDb(input(changes), curve.frequencyHz[i] as number) / 10),
      );
      const meanDb = 10 * Math.log10(powers.reduce((a, b) => a + b, 0) / powers.length);
      const squares = levels.map((level) => (level - meanDb) ** 2);
      expect(result.rippleRmsDb).toBeCloseTo(
        Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length),
        6,
      );
    }
  });
  it('runs from 100 Hz to 16 kHz', () => {
    const { frequencyHz } = sharedCombAtSeat(input({ points: 50 })).curve;
    expect(frequencyHz).toHaveLength(50);
    expect([frequencyHz[0], frequencyHz[49]].map((hz) => Math.round(hz ?? 0))).toEqual([100, 16_000]);
  });
  it('notches first where the plain sum has its first minimum below -3 dB', () => {
    for (const changes of [{}, { delaysMs: { left: 0, center: 1, right: 0 } }, { sideGain: 0.6 }]) {
      const { firstNotchHz, firstNotchDb } = sharedCombAtSeat(input(changes));
      const grid = Array.from({ length: 20_001 }, (_, i) => 100 * 160 ** (i / 20_000));
      const levels = grid.map((hz) => plainSumDb(input(changes), hz));
      const first = levels.findIndex(
        (level, i) => i > 0 && level < -3 && level < (levels[i - 1] ?? 0) && level <= (levels[i + 1] ?? -99),
      );
      expect(Math.abs((firstNotchHz ?? 0) / (grid[first] ?? 1) - 1)).toBeLessThan(0.005);
      expect(firstNotchDb).toBeCloseTo(plainSumDb(input(changes), firstNotchHz ?? 0), 6);
    }
  });
  it('has no notch where only one box plays, and none at all in silence', () => {
    const alone = sharedCombAtSeat(input({ sideGain: 0 }));
    expect([alone.firstNotchHz, alone.firstNotchDb]).toEqual([null, null]);
    const silent = sharedCombAtSeat(input({ sideGain: 0, centerGain: 0 }));
    expect(silent).toMatchObject({
      rippleRmsDb: 0,
      ripplePeakToPeakDb: 0,
      firstNotchHz: null,
      firstNotchDb: null,
    });
    expect(silent.curve.smoothedDb).toHaveLength(silent.curve.frequencyHz.length);
    expect(Math.max(...silent.curve.smoothedDb.map(Math.abs))).toBe(0);
  });
  it('read for its ripple alone says the same', () => {
    for (const changes of [{}, { sideGain: 2 }, { points: 300 }, { mainSeat: at(0, 3) }])
      expect(sharedRippleDb(input(changes))).toBeCloseTo(
        sharedCombAtSeat(input(changes)).ripplePeakToPeakDb,
        12,
      );
    expect(sharedRippleDb(input({ sideGain: 0, centerGain: 0 }))).toBe(0);
  });
  it('names what cannot be: a seat in a loudspeaker, a delay that is no number', () => {
    expect(() => sharedCombAtSeat(input({ seat: at(0, 0) }))).toThrow('distance from center to seat is 0');
    const delaysMs = { left: Number.NaN, center: 0, right: 0 };
    expect(() => sharedCombAtSeat(input({ delaysMs }))).toThrow('delaysMs.left is NaN');
  });
});

describe('what the ear leaves of a comb', () => {
  it('has no depth where the notch is complete: equal level without delay', () => {
    expect(smoothedRippleDb({ delayMs: 0, frequencyHz: 1000 })).toBeNull();
    expect(smoothedRippleDb({ delayMs: 0, relativeLevelDb: -20, frequencyHz: 1000 })).toBeCloseTo(1.743, 3);
  });
});
