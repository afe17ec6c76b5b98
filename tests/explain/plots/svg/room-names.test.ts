/** Names in the room: beside what they name, clear of each other while they can, never off the page. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RoomItem } from '../../../../src/explain/plots/chart.js';
import { overlap } from '../../../../src/explain/plots/svg/boxes.js';
import { drawRoom } from '../../../../src/explain/plots/svg/room.js';
import { extentOf, textAt, textsOf, withClass } from '../elements.js';
import { box, fromAbove, fromSide, heightOf, seat, speaker } from './roomScenes.js';

const above = (...items: readonly RoomItem[]): string => drawRoom(fromAbove(...items));
const side = (...items: readonly RoomItem[]): string => drawRoom(fromSide(...items));

/** A plain reading of where two places of a room lie on the drawing. */
const free = (svg: string): boolean => {
  const boxes = textsOf(svg).map(box);
  return boxes.every((a, i) => boxes.slice(i + 1).every((b) => !overlap(a, b)));
};

describe('names of seats', () => {
  const row = (...names: readonly string[]): RoomItem[] => names.map((name, i) => seat(name, 0.5 * i, 2));
  const tops = (svg: string, ...names: readonly string[]) => names.map((name) => textAt(svg, name).at('y'));
  it('stand below the heads in one line where there is room, in the order of the row', () => {
    expect(new Set(tops(above(...row('a', 'b', 'c')), 'a', 'b', 'c')).size).toBe(1);
    expect(textAt(above(...row('a')), 'a').is).toMatchObject({ x: '200', 'text-anchor': 'middle' });
  });
  it('stand on two lines in turn where they are too long for their neighbors, cut where even that is not enough', () => {
    const svg = above(...row('seats1', 'b', 'c'));
    const [first, second, third] = tops(svg, 'seats1', 'b', 'c');
    expect(third).toBe(first);
    expect(second).toBeGreaterThan(first ?? 0);
    expect(free(svg)).toBe(true);
    const long = textsOf(above(...row('a very long name', 'another long name')));
    expect(long.some(({ text }) => text.endsWith('…'))).toBe(true);
  });
  it('stay on the drawing at its edges', () => {
    const svg = above(seat('the very left', -1.6, 2), seat('the very right', 1.6, 2));
    expect(extentOf(textAt(svg, 'the very left'))[0]).toBeGreaterThanOrEqual(0);
    expect(extentOf(textAt(svg, 'the very right'))[1]).toBeLessThanOrEqual(400);
  });
  it('from the side keep clear of each other', () => {
    const svg = side(seat('main seat', 2.5, 0.5), seat('row 2', 2.6, 0.5));
    expect(overlap(box(textAt(svg, 'row 2')), box(textAt(svg, 'main seat')))).toBe(false);
  });
});

describe('a name gives way', () => {
  it('to the lines of sight: beside them, or where there is no such place, the line stops at it', () => {
    const sight: RoomItem = {
      kind: 'line',
      role: 'sight',
      points: [
        [0, 0],
        [0, 3],
      ],
      name: '',
    };
    const svg = above(seat('middle', 0, 2), seat('rear', 0, 3), sight);
    const name = box(textAt(svg, 'middle'));
    expect(name.x > 200 || name.x + name.width < 200).toBe(true);
    expect(svg).not.toContain('c-plate');
    const fan = Array.from(
      { length: 60 },
      (_, i): RoomItem => ({
        kind: 'line',
        role: 'sight',
        points: [
          [-3 + i / 10, 0],
          [-3 + i / 10, 3],
        ],
        name: '',
      }),
    );
    expect(above(seat('middle', 0, 2), ...fan)).toContain('c-plate');
  });
  it('of the picture, of what is in the way and of the center to those of seats', () => {
    const svg = side(
      { kind: 'obstacle', from: [1.5, 0], to: [1.5, 0.5], name: 'shelf' },
      { kind: 'picture', from: [-0.05, 0.4], to: [-0.05, 1], name: 'tv' },
      seat('x', 1.5, 0.6),
      seat('y', 0.2, 1),
      speaker('center', 0, 0.8, true),
    );
    expect(free(svg)).toBe(true);
  });
});

describe('names', () => {
  it('of seats have the first choice; the others keep clear of them while they can', () => {
    const svg = side(
      { kind: 'obstacle', from: [1, 0], to: [1, 0.5], name: 'in the way' },
      { kind: 'picture', from: [-0.05, 0.1], to: [-0.05, 1], name: 'picture' },
      seat('row 1', 1, 0.4),
      speaker('center', 0, 0.8, true),
    );
    const boxes = textsOf(svg).map(box);
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
  });
  it('are drawn all, on top of each other where every place is taken', () => {
    const svg = above(...[1, 2, 3].map(() => speaker('same', 0, 1)));
    expect(textsOf(svg).filter(({ text }) => text === 'same')).toHaveLength(3);
  });
  it('and seats stay on the page wherever these are', () => {
    const place = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 1, maxLength: 6 }), (places) => {
        const svg = above(...places.map(([x, y], i) => seat(`place number ${i}`, x, y)));
        for (const circle of withClass(svg, 'c-seat')) {
          expect(circle.at('cx')).toBeGreaterThanOrEqual(34);
          expect(circle.at('cx')).toBeLessThanOrEqual(366);
          expect(circle.at('cy')).toBeLessThanOrEqual(heightOf(svg) - 56 + 0.1);
        }
        for (const text of withClass(svg, 'c-strong')) {
          if (!text.text.startsWith('place')) continue;
          expect(extentOf(text)[0]).toBeGreaterThanOrEqual(-0.1);
          expect(extentOf(text)[1]).toBeLessThanOrEqual(400.1);
        }
      }),
    );
  });
});
