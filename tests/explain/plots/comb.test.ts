/** The comb of a voice that center and mains share: as set now, and with arrivals made equal. */
import { describe, expect, it } from 'vitest';
import { sharedCombAtSeat } from '../../../src/acoustics/comb.js';
import { combChart } from '../../../src/explain/plots/arrivals.js';
import { voiceGains } from '../../../src/rules/derived/sharing.js';
import type { TestFacts } from '../../support/causeClaims.js';
import { answering, reportOf, system } from './small.js';

const comb = (ripplePeakToPeakDb: number, ...smoothedDb: readonly number[]) => ({
  ripplePeakToPeakDb,
  curve: { frequencyHz: [100, 1000, 10_000], smoothedDb },
});
const UPMIX: TestFacts = {
  ...{
    centerCount: 'one',
    seating: 'single-seat',
    seatDistance: 3,
    mainsBase: 2.6,
    centerTweeterHeight: 0.6,
  },
  ...{
    playedContent: 'two-channel-music',
    upmixUse: 'on',
    upmixCommonPart: 'shares',
    upmixMainsDrop: 20 * Math.log10(2),
  },
};
/** Ears at 1.05 m, mains at 1 m, center at 0.6 m. */
const TRUE_M = { mains: Math.hypot(1.3, 3, 0.05), center: Math.hypot(3, 0.45) };
const entered = (center: number): TestFacts => ({
  enteredLeft: TRUE_M.mains,
  enteredCenter: center,
  enteredRight: TRUE_M.mains,
});
const combOf = (facts: TestFacts) =>
  combChart(system({ ...UPMIX, ...facts }).ask, reportOf({ seats: ['sofa'] }));

describe('the comb', () => {
  it('shows both curves between 200 Hz and 8 kHz and tells the ripple of both', () => {
    const pair = { now: comb(7.26, -3, -9, -3), equal: comb(1, 0, 0, 0) };
    const chart = combChart(answering(pair), reportOf({ seats: ['end', { name: 'sofa', main: true }] }));
    expect(chart?.curves.map(({ name, marked }) => [name, marked])).toEqual([
      ['as set now', false],
      ['arrivals equal', false],
    ]);
    const [now] = chart?.curves ?? [];
    expect([now?.points[0]?.[0], now?.points[1], now?.points.at(-1)?.[0]]).toEqual([200, [1000, -9], 8000]);
    expect(chart?.says).toContain('varies by 7.3 dB from peak to dip as set now, and by 1 dB once');
    expect([chart?.y.from, chart?.y.to]).toEqual([-9, 3]);
    expect(chart?.table.head).toEqual(['Hz', 'as set now', 'arrivals equal']);
    expect(chart?.table.rows.find(([hz]) => hz === '1000')).toEqual(['1000', '−9', '0']);
    expect(chart?.table.rows.flat().join()).not.toContain('NaN');
  });
  it('names the main seat, or calls it so', () => {
    const pair = { now: comb(1, 0, 0, 0), equal: comb(1, 0, 0, 0) };
    const says = (...seats: readonly { name: string; main: boolean }[]) =>
      combChart(answering(pair), reportOf({ seats }))?.says;
    expect(says({ name: 'end', main: false }, { name: 'sofa', main: true })).toContain('seat “sofa”');
    expect(says({ name: 'end', main: false })).toContain('seat “main seat”');
  });
  it('is the same with arrivals made equal whatever is entered, and worse for a wrong entry', () => {
    const [right, wrong] = [combOf(entered(TRUE_M.center)), combOf(entered(TRUE_M.center + 0.5))];
    expect(right?.curves[1]).toEqual(wrong?.curves[1]);
    const ripple = (chart: typeof right, i: number) => {
      const levels = chart?.curves[i]?.points.map(([, db]) => db) ?? [];
      return Math.max(...levels) - Math.min(...levels);
    };
    expect(ripple(wrong, 0)).toBeGreaterThan(ripple(wrong, 1) + 2);
    right?.curves[0]?.points.forEach(([hz, db], i) => {
      expect([hz, db]).toEqual([hz, expect.closeTo(right.curves[1]?.points[i]?.[1] ?? 99, 6)]);
    });
  });
  it('follows from delays as they are entered, whichever of the three they hold up', () => {
    const facts: TestFacts = { ...UPMIX, delayLeft: 0.4, delayCenter: 0, delayRight: 1 };
    const { side: sideGain = 0, center: centerGain = 0 } = system(facts).ask(voiceGains)?.value ?? {};
    const { curve } = sharedCombAtSeat({
      ...{ left: [-1.3, 0, 1], center: [0, 0, 0.6], right: [1.3, 0, 1], seat: [0, 3, 1.05] },
      ...{ sideGain, centerGain, delaysMs: { left: 0.4, center: 0, right: 1 } },
    });
    const [now] = combChart(system(facts).ask, reportOf({ seats: ['sofa'] }))?.curves ?? [];
    const hz = now?.points[50]?.[0] ?? 0;
    expect(now?.points[50]?.[1]).toBeCloseTo(curve.smoothedDb[[...curve.frequencyHz].indexOf(hz)] ?? 99, 6);
  });
  it('does not add up once arrivals are equal where wires are told to be crossed, until these are put right too', () => {
    const chart = combOf({ ...entered(TRUE_M.center + 0.3), polarityMarks: 'center-crossed' });
    expect(chart?.curves.map(({ name }) => name)).toEqual([
      'as set now',
      'arrivals equal',
      'wires right too',
    ]);
    const at = (i: number, hz: number) => chart?.curves[i]?.points.find(([f]) => f >= hz)?.[1] ?? 0;
    // In opposite polarity and in step the shared voice is weaker; in the same polarity it is whole.
    expect(at(1, 500)).toBeLessThan(at(2, 500) - 3);
    expect(chart?.says).toContain('crossed wires stay');
    const main = combOf({ ...entered(TRUE_M.center), polarityMarks: 'main-crossed', faultyMain: 'right' });
    expect(main?.curves).toHaveLength(3);
    expect(combOf({ ...entered(TRUE_M.center), polarityMarks: 'all-match' })?.curves).toHaveLength(2);
  });
  it('is left out where one plays the voice alone, or one is so late that it is an echo', () => {
    expect(combOf({ ...entered(3), upmixUse: 'off' })).toBeUndefined();
    expect(combOf({ ...entered(3), upmixCommonPart: 'takes-out' })).toBeUndefined();
    const delays = (center: number): TestFacts => ({ delayLeft: 0, delayCenter: center, delayRight: 0 });
    expect(combOf(delays(9.5))?.id).toBe('comb');
    expect(combOf(delays(12))).toBeUndefined();
    expect(combChart(answering(), reportOf())).toBeUndefined();
  });
});
