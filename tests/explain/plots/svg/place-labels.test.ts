/** Names of curves: inside the plot, clear of each other and of what is taken, nearest to their own curve. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Box,
  type Drawn,
  holds,
  overlap,
  placeLabels,
} from '../../../../src/explain/plots/svg/place-labels.js';

const FRAME = { left: 30, right: 390, top: 20, bottom: 220 };
const flat = (y: number, count = 37): Drawn =>
  Array.from({ length: count }, (_, i) => [30 + (360 * i) / (count - 1), y] as const);
const boxOf = ({ x, y }: { x: number; y: number }, width: number): Box => ({
  x,
  y: y - 11,
  width,
  height: 14,
});

describe('boxes', () => {
  const box = { x: 10, y: 10, width: 20, height: 10 };
  it('overlap where they share room, not where they touch', () => {
    expect(overlap(box, { ...box, x: 29 })).toBe(true);
    expect(overlap(box, { ...box, y: 19 })).toBe(true);
    for (const moved of [{ x: 30 }, { x: -10 }, { y: 20 }, { y: 0 }])
      expect(overlap(box, { ...box, ...moved })).toBe(false);
  });
  it('hold the points within them and on their edges', () => {
    for (const [x, y] of [
      [10, 10],
      [30, 20],
      [20, 15],
    ] as const)
      expect(holds(box, x, y)).toBe(true);
    for (const [x, y] of [
      [9, 15],
      [31, 15],
      [20, 9],
      [20, 21],
    ] as const)
      expect(holds(box, x, y)).toBe(false);
  });
});

describe('the name of a curve', () => {
  it('stands close to its curve and covers none of it', () => {
    const [place] = placeLabels([flat(120)], [60], FRAME, []);
    const box = boxOf(place as { x: number; y: number }, 60);
    expect(flat(120).filter(([x, y]) => holds(box, x, y))).toEqual([]);
    expect(Math.min(Math.abs(box.y - 120), Math.abs(box.y + 14 - 120))).toBeLessThan(7);
  });
  it('stays within the plot, whichever edge the curve follows', () => {
    for (const curve of [
      flat(20),
      flat(220),
      [[30, 100] as const],
      [[390, 100] as const],
      [[210, 31] as const],
      [[210, 217] as const],
    ]) {
      const [{ x, y } = { x: 0, y: 0 }] = placeLabels([curve], [100], FRAME, []);
      expect([x >= 32, x + 100 <= 388, y - 11 >= 20, y + 2 <= 220]).toEqual([true, true, true, true]);
    }
  });
  it('goes where no name stands already', () => {
    const taken = [{ x: 30, y: 20, width: 300, height: 200 }];
    const [place] = placeLabels([flat(120)], [40], FRAME, taken);
    expect(overlap(taken[0] as Box, boxOf(place as { x: number; y: number }, 40))).toBe(false);
  });
  it('would rather cover a curve than another name', () => {
    const [near, far] = [flat(120, 10), { x: 30, y: 20, width: 360, height: 86 }];
    const full = Array.from({ length: 8 }, (_, i) => flat(124 + 11 * i, 19));
    const [place] = placeLabels([near, ...full], [60], FRAME, [far]);
    expect(overlap(far, boxOf(place as { x: number; y: number }, 60))).toBe(false);
  });
  it('stands where its own curve is nearer than any other', () => {
    const upper = [...flat(100).slice(0, 19), ...flat(60).slice(19)];
    const lower = [...flat(110).slice(0, 19), ...flat(180).slice(19)];
    const places = placeLabels([upper, lower], [40, 40], FRAME, []);
    const distance = (curve: Drawn, { x, y }: { x: number; y: number }): number =>
      Math.min(...curve.map(([a, b]) => Math.hypot(a - x - 20, b - y + 4)));
    expect(places.map(({ x }) => x > 190)).toEqual([true, true]);
    expect(distance(upper, places[0] as { x: number; y: number })).toBeLessThan(30);
    expect(distance(lower, places[1] as { x: number; y: number })).toBeLessThan(30);
  });
  it('stands at the top left where its curve is nowhere in the plot', () => {
    expect(placeLabels([[], flat(500)], [40, 40], FRAME, [])).toEqual([
      { x: 30, y: 34 },
      { x: 30, y: 34 },
    ]);
  });
  it('never lies on another, of four curves on fair ground', () => {
    const height = fc.integer({ min: 50, max: 200 });
    fc.assert(
      fc.property(fc.tuple(height, height, height, height), (heights) => {
        const places = placeLabels(
          heights.map((y) => flat(y, 12)),
          [60, 60, 60, 60],
          FRAME,
          [],
        );
        const boxes = places.map((place) => boxOf(place, 68));
        for (const [i, a] of boxes.entries())
          for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      }),
      { numRuns: 10 },
    );
  });
});
