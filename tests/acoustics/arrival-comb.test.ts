import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ArrivalInput,
  arrival,
  stepError,
  unitErrorRatio,
  unitSlip,
} from '../../src/acoustics/arrival.js';
import { comb, type SharedCombInput, sharedCombAtSeat, smoothedRippleDb } from '../../src/acoustics/comb.js';

const FRONT = { left: [-1.5, 0], center: [0, 0], right: [1.5, 0] };
/** Distances of that front to the middle seat at 3 m, as someone would enter them. */
const EXACT = { left: Math.hypot(1.5, 3), center: 3, right: Math.hypot(1.5, 3) };
const meters = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.tuple(meters(-5, 5), meters(0, 2));
const seatPoint = fc.tuple(meters(-4, 4), meters(2.5, 9));
const trio = <T>(arbitrary: fc.Arbitrary<T>) =>
  fc.record({ left: arbitrary, center: arbitrary, right: arbitrary });
const anyArrival: fc.Arbitrary<ArrivalInput> = fc.record({
  left: point,
  center: point,
  right: point,
  seat: seatPoint,
  entered: trio(meters(0, 20)),
  latencyMs: trio(meters(0, 50)),
});

describe('arrival', () => {
  // Computed, acoustic model of this project: center minus mean of the mains, ms, in the middle seat.
  it.each([
    ['nothing entered', undefined, {}, -1.03],
    ['all entered right', EXACT, {}, 0],
    ['all three in feet, the field in meters', { left: 11.004, center: 9.8425, right: 11.004 }, {}, 2.35],
    ['all three in meters, the field in feet', { left: 1.0223, center: 0.9144, right: 1.0223 }, {}, -0.72],
    ['a processor that reckons 1 ms a foot', EXACT, { processorSpeed: 304.8 }, 0.13],
    ['a processor that reckons 1130 ft/s', EXACT, { processorSpeed: 344.424 }, -0.004],
    ['a center with 2 ms of its own', EXACT, { latencyMs: { center: 2 } }, 2],
  ])('%s', (_, entered, more, expectedMs) => {
    const r = arrival({ ...FRONT, seat: [0, 3], entered, ...more });
    expect(r.centerMinusMeanMs).toBeCloseTo(expectedMs, Math.abs(expectedMs) < 0.01 ? 3 : 2);
  });

  // Computed, same source: exact entries for the middle, other seats. L-R, C-L, C-R, C-mean.
  it.each([
    [0.3, 0.78, -0.38, 0.4, 0.012],
    [0.6, 1.54, -0.72, 0.82, 0.048],
    [1.2, 2.98, -1.31, 1.66, 0.174],
  ])('leaves these errors %f m to the right', (x, leftRight, centerLeft, centerRight, centerMean) => {
    const r = arrival({ ...FRONT, seat: [x, 3], entered: EXACT });
    expect(Math.abs(r.leftMinusRightMs - leftRight)).toBeLessThan(0.0065);
    expect(Math.abs(r.centerMinusLeftMs - centerLeft)).toBeLessThan(0.0065);
    expect(Math.abs(r.centerMinusRightMs - centerRight)).toBeLessThan(0.0065);
    expect(Math.abs(r.centerMinusMeanMs - centerMean)).toBeLessThan(0.00065);
  });

  it('mirrors with the room', () => {
    const mirror = ([x = 0, y = 0]: readonly number[]) => [-x, y];
    const swap = <T>(t: { left?: T; center?: T; right?: T } | undefined) =>
      t && { left: t.right, center: t.center, right: t.left };
    fc.assert(
      fc.property(anyArrival, (input) => {
        const here = arrival(input);
        const there = arrival({
          left: mirror(input.right),
          center: mirror(input.center),
          right: mirror(input.left),
          seat: mirror(input.seat),
          entered: swap(input.entered) as ArrivalInput['entered'],
          latencyMs: swap(input.latencyMs) as ArrivalInput['latencyMs'],
        });
        expect(there.centerMinusMeanMs).toBeCloseTo(here.centerMinusMeanMs, 9);
        expect(there.leftMinusRightMs).toBeCloseTo(-here.leftMinusRightMs, 9);
        expect(there.centerMinusLeftMs).toBeCloseTo(here.centerMinusRightMs, 9);
      }),
    );
  });

  it('scales: all lengths doubled, all times doubled', () => {
    const double = (p: readonly number[]) => p.map((v) => 2 * v);
    fc.assert(
      fc.property(anyArrival, ({ left, center, right, seat }) => {
        const here = arrival({ left, center, right, seat });
        const large = arrival({
          left: double(left),
          center: double(center),
          right: double(right),
          seat: double(seat),
        });
        for (const key of Object.keys(here) as (keyof typeof here)[])
          expect(large[key]).toBeCloseTo(2 * here[key], 9);
      }),
    );
  });

  it('is never NaN, and heights alone can make a difference', () => {
    fc.assert(
      fc.property(anyArrival, (input) => {
        for (const value of Object.values(arrival(input))) expect(Number.isFinite(value)).toBe(true);
      }),
    );
    const low = arrival({ left: [-1.5, 0, 1], center: [0, 0, 0], right: [1.5, 0, 1], seat: [0, 3, 1] });
    const level = arrival({ left: [-1.5, 0, 1], center: [0, 0, 1], right: [1.5, 0, 1], seat: [0, 3, 1] });
    expect(low.centerMinusMeanMs).toBeGreaterThan(level.centerMinusMeanMs);
  });

  it('refuses what no room has, and says what it accepts', () => {
    const good = { ...FRONT, seat: [0, 3] };
    expect(() => arrival({ ...good, seat: [0, Number.NaN] })).toThrow(/seat is NaN; accepted/);
    expect(() => arrival({ ...good, seat: [0] })).toThrow(/seat has 1 numbers; accepted: \[x, y\]/);
    expect(() => arrival({ ...good, seat: [0, 3, 1] })).toThrow(/mixed/);
    expect(() => arrival({ ...good, entered: { left: 3, center: -1, right: 3 } })).toThrow(
      /entered.center is -1/,
    );
    expect(() => arrival({ ...good, latencyMs: { left: -1 } })).toThrow(RangeError);
    expect(() => arrival({ ...good, processorSpeed: 0 })).toThrow(/processorSpeed/);
  });
});

describe('entries', () => {
  // Computed, acoustic model of this project: largest and rms pair error, ms.
  it.each([
    [0.01, 0.029, 0.012],
    [0.1, 0.29, 0.12],
    [0.1524, 0.44, 0.18],
    [0.3, 0.87, 0.36],
  ])('a step of %f m costs up to %f ms', (stepM, max, rms) => {
    const r = stepError({ stepM });
    expect(Math.abs(r.maxPairMs - max)).toBeLessThan(0.006);
    expect(Math.abs(r.rmsPairMs - rms)).toBeLessThan(0.006);
  });

  it('knows a unit slip by its ratio, and an ordinary error is none', () => {
    expect(unitSlip(unitErrorRatio(9.84, 3))).toBe('feet-as-meters');
    expect(unitSlip(unitErrorRatio(0.9144, 3))).toBe('meters-as-feet');
    // Feet of a real 3 m, entered 14 % too far: 11.25 m.
    expect(unitSlip(unitErrorRatio(11.25, 3))).toBe('feet-as-meters');
    expect(unitSlip(unitErrorRatio(11.4, 3))).toBeNull();
    expect(unitSlip(unitErrorRatio(3.4, 3))).toBeNull();
    expect(unitSlip(unitErrorRatio(6, 3))).toBeNull();
  });
});

describe('comb', () => {
  it('has its nulls between its peaks and no depth for an equal copy', () => {
    const r = comb({ delayMs: 1 });
    expect(r.nullsHz).toEqual([500, 1500, 2500]);
    expect(r.peaksHz).toEqual([1000, 2000, 3000]);
    expect(r.dipDb).toBeNull();
    expect(r.rippleDb).toBeNull();
    expect(r.peakDb).toBeCloseTo(6.0206, 4);
  });

  it('has neither nulls nor peaks without a delay', () => {
    expect(comb({ delayMs: 0 })).toMatchObject({ nullsHz: [], peaksHz: [], dipDb: null, rippleDb: 0 });
  });

  it('scales, never dips upward, and does not care which of the two is the louder', () => {
    fc.assert(
      fc.property(meters(0.001, 500), meters(0.01, 60), (delayMs, levelDb) => {
        const r = comb({ delayMs, relativeLevelDb: -levelDb });
        expect(comb({ delayMs: 2 * delayMs }).nullsHz[0]).toBeCloseTo((r.nullsHz[0] ?? 0) / 2, 9);
        expect(r.dipDb).toBeLessThanOrEqual(0);
        expect(r.rippleDb).toBeCloseTo(r.peakDb - (r.dipDb ?? 0), 12);
        expect(comb({ delayMs, relativeLevelDb: levelDb })).toEqual(r);
      }),
    );
  });

  it('is heard the less the later and the softer the copy is', () => {
    fc.assert(
      fc.property(meters(0.05, 20), meters(0.1, 40), meters(50, 10_000), (delayMs, level, frequencyHz) => {
        const at = (d: number, l: number) =>
          smoothedRippleDb({ delayMs: d, relativeLevelDb: -l, frequencyHz }) ?? 99;
        expect(at(delayMs * 1.2, level)).toBeLessThanOrEqual(at(delayMs, level) + 1e-9);
        expect(at(delayMs, level + 1)).toBeLessThanOrEqual(at(delayMs, level) + 1e-9);
        expect(at(delayMs, level)).toBeLessThanOrEqual(
          (comb({ delayMs, relativeLevelDb: -level }).rippleDb ?? 99) + 1e-9,
        );
      }),
    );
  });

  it('refuses a delay no room has', () => {
    expect(() => comb({ delayMs: -1 })).toThrow(/delayMs is -1; accepted: a number from 0 to 1000/);
    expect(() => comb({ delayMs: Number.POSITIVE_INFINITY })).toThrow(RangeError);
    expect(() => comb({ delayMs: 1, relativeLevelDb: Number.NaN })).toThrow(/relativeLevelDb/);
  });
});

const aligned = { left: 0, center: 1.031765, right: 0 };
const shared = (x: number, centerGain: number, sideGain: number): SharedCombInput => ({
  ...FRONT,
  seat: [x, 3],
  mainSeat: [0, 3],
  delaysMs: aligned,
  centerGain,
  sideGain,
});

describe('content shared by center and mains', () => {
  // Computed, acoustic model of this project: rms / peak to peak for a phantom sum g times the center.
  it.each([
    [0.3, 1, 0.25, 1.3, 4.2],
    [0.3, 1, 0.5, 2.9, 9],
    [0.3, 1, 1, 7.7, 25.8],
    [0.3, 1, 2, 5.9, 21.4],
    [0.3, 0, 1, 4.4, 18.9],
    [0.6, 1, 0.5, 2.4, 8.8],
    [0.6, 1, 1, 6, 21],
    [1.2, 1, 0.5, 2.1, 8.2],
    [1.2, 1, 1, 4.6, 17.1],
    [1.2, 0, 1, 1.8, 9.3],
  ])('at %f m, center %f, phantom %f', (x, centerGain, g, rms, peakToPeak) => {
    const r = sharedCombAtSeat(shared(x, centerGain, g / 2));
    expect(Math.abs(r.rippleRmsDb - rms)).toBeLessThan(0.08);
    expect(Math.abs(r.ripplePeakToPeakDb - peakToPeak)).toBeLessThan(0.12);
  });

  // Same source: first notch at 0.3 m. Depths on the grid of the source; ours is coarser by a factor of five.
  it.each([
    [1, 0.5, 1277, -6],
    [1, 1, 1182, -21.5],
    [0, 1, 642, -28],
  ])('notches first where computed (center %f, phantom %f)', (centerGain, g, hz, depthDb) => {
    const r = sharedCombAtSeat(shared(0.3, centerGain, g / 2));
    expect(Math.abs((r.firstNotchHz ?? 0) / hz - 1)).toBeLessThan(0.005);
    expect(Math.abs((r.firstNotchDb ?? 0) - depthDb)).toBeLessThan(0.15);
  });

  it('combs worst when both play it alike: worse than the center alone and the mains alone', () => {
    const both = sharedCombAtSeat(shared(0.3, 1, 0.5)).ripplePeakToPeakDb;
    expect(both).toBeGreaterThan(sharedCombAtSeat(shared(0.3, 0, 0.5)).ripplePeakToPeakDb);
    expect(sharedCombAtSeat(shared(0.3, 1, 0)).ripplePeakToPeakDb).toBeCloseTo(0, 9);
    expect(sharedCombAtSeat(shared(0, 1, 0.5)).ripplePeakToPeakDb).toBeLessThan(0.001);
  });

  it('agrees with a grid five times as fine within 0.1 dB rms', () => {
    for (const x of [0.1, 0.3, 0.6, 1.2, 1.8]) {
      const input = shared(x, 1, 0.25);
      const fine = sharedCombAtSeat({ ...input, points: 6000 });
      const coarse = sharedCombAtSeat(input);
      expect(Math.abs(coarse.rippleRmsDb - fine.rippleRmsDb)).toBeLessThan(0.1);
      expect(Math.abs(coarse.ripplePeakToPeakDb - fine.ripplePeakToPeakDb)).toBeLessThan(0.1);
    }
  });

  it('is the same at mirrored seats, does not depend on the gain, and is never NaN', () => {
    // Smaller gains have no exact multiples among the numbers of a computer.
    const gain = meters(0, 1).map((value) => (value < 1e-290 ? 0 : value));
    fc.assert(
      fc.property(meters(-2, 2), gain, gain, meters(0.1, 10), (x, c, s, factor) => {
        const here = sharedCombAtSeat(shared(x, c, s));
        const there = sharedCombAtSeat(shared(-x, c, s));
        const louder = sharedCombAtSeat(shared(x, c * factor, s * factor));
        expect(there.rippleRmsDb).toBeCloseTo(here.rippleRmsDb, 6);
        expect(louder.rippleRmsDb).toBeCloseTo(here.rippleRmsDb, 6);
        expect(Number.isNaN(here.ripplePeakToPeakDb)).toBe(false);
      }),
      { numRuns: 30, examples: [[0, 0, 7.858638923513144e-163, 0.1]] },
    );
  });
});
