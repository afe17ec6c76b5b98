/** Arrivals at each seat, counted from the first of the three. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arrival } from '../../../src/acoustics/arrival.js';
import { arrivalChart, niceStep } from '../../../src/explain/plots/arrivals.js';
import type { BarChart } from '../../../src/explain/plots/chart.js';
import { LIMITS } from '../../../src/rules/limits.js';
import { answering, assuming, reportOf } from './small.js';

/** When the center comes after left and after right, ms. */
const late = (left: number, right: number): Arrival => ({
  centerMinusLeftMs: left,
  centerMinusRightMs: right,
  centerMinusMeanMs: (left + right) / 2,
  leftMinusRightMs: right - left,
});
const chartOf = (seats: readonly string[], ...arrivals: readonly Arrival[]): BarChart | undefined =>
  arrivalChart(answering(arrivals), reportOf({ seats }));
const barsOf = (chart: BarChart | undefined, group = 0) =>
  chart?.groups[group]?.bars.map(({ label, value }) => [label, value]);

describe('arrivals', () => {
  it('count from the first of the three, whichever that is', () => {
    expect(barsOf(chartOf(['middle'], late(2, 0.5)))).toEqual([
      ['left', 0],
      ['center', 2],
      ['right', 1.5],
    ]);
    expect(barsOf(chartOf(['middle'], late(-1, -3)))).toEqual([
      ['left', 1],
      ['center', 0],
      ['right', 3],
    ]);
  });
  it('are written with two decimals at most', () => {
    const texts = chartOf(['middle'], late(1.2345, 0))?.groups[0]?.bars.map(({ text }) => text);
    expect(texts).toEqual(['0 ms', '1.23 ms', '1.23 ms']);
  });
  it('at the main seat are told in the sentence', () => {
    const says = (left: number, right: number) => chartOf(['middle'], late(left, right))?.says;
    expect(says(2, 1)).toBe('At the seat “middle” the center arrives 1.5 ms after the mean of the mains.');
    expect(says(-2, -1)).toContain(' arrives 1.5 ms before the mean ');
    expect(says(1, -1)).toContain(' arrives together with the mean ');
  });
  it('show the main seat first, six seats at most, and all in the table', () => {
    const names = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
    const seats = names.map((name) => ({ name, main: name === 'c' }));
    const arrivals = names.map((_, i) => late(i, i));
    const chart = arrivalChart(answering(arrivals), reportOf({ seats }));
    expect(chart?.groups.map(({ label }) => label)).toEqual(['c', 'a', 'b', 'd', 'e', 'f']);
    expect(chart?.says).toContain('“c” the center arrives 2 ms after');
    expect(chart?.table.rows.map(([name]) => name)).toEqual(names);
    expect(chart?.table.head).toEqual(['seat', 'left', 'center', 'right', 'center − mains']);
    expect(chart?.table.rows[2]).toEqual(['c', '0.00', '2.00', '0.00', '2.00']);
    expect(chart?.x.to).toBe(5);
    const nobody = arrivalChart(answering([late(1, 1)]), reportOf({ seats: [{ name: 'a', main: false }] }));
    expect(nobody?.says).toContain('“a”');
  });
  it('have an axis from zero that holds the longest, and half a millisecond at least', () => {
    const ends = (ms: number) => [chartOf(['a'], late(ms, 0))?.x.from, chartOf(['a'], late(ms, 0))?.x.to];
    expect(ends(0)).toEqual([0, 0.5]);
    expect(ends(2.2)).toEqual([0, 2.5]);
    expect(chartOf(['a'], late(0, 0))?.x.ticks).toHaveLength(6);
  });
  it('are held against the least error that is clearly heard', () => {
    expect(chartOf(['a'], late(0, 0))?.thresholds).toEqual([
      { at: LIMITS.delayMs.clear, name: 'clearly heard' },
    ]);
  });
  it('are left out where they are not known, or there is no seat', () => {
    expect(arrivalChart(answering(), reportOf())).toBeUndefined();
    expect(chartOf([])).toBeUndefined();
    expect(arrivalChart(assuming([late(0, 0)], ['earHeight', 1.05]), reportOf())?.notes[1]).toContain(
      'ear height',
    );
  });
});

describe('a step of an axis', () => {
  it('is 1, 2 or 5 of a decade', () => {
    expect([0.5, 3, 6, 6.1, 12, 13, 30, 31].map(niceStep)).toEqual([0.1, 0.5, 1, 2, 2, 5, 5, 10]);
  });
  it('cuts any length into six at most, and into more than two', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (length) => {
        expect(length / niceStep(length)).toBeLessThanOrEqual(6);
        expect(length / niceStep(length)).toBeGreaterThan(2);
      }),
    );
  });
});
