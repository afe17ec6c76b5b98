/** Names in the room: beside what they name, clear of each other while they can, never off the page. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RoomItem } from '../../../../src/explain/plots/chart.js';
import { overlap } from '../../../../src/explain/plots/svg/place-labels.js';
import { drawRoom } from '../../../../src/explain/plots/svg/room.js';
import { extentOf, textAt, textsOf, withClass } from '../elements.js';
import { box, fromAbove, fromSide, heightOf, room, seat, speaker } from './roomScenes.js';

const draw = (...told: Parameters<typeof room>): string => drawRoom(room(...told));
const above = (...items: readonly RoomItem[]): string => drawRoom(fromAbove(...items));
const side = (...items: readonly RoomItem[]): string => drawRoom(fromSide(...items));

describe('names of seats', () => {
  const row = (...names: readonly string[]): RoomItem[] => names.map((name, i) => seat(name, 0.5 * i, 2));
  const tops = (svg: string, ...names: readonly string[]) => names.map((name) => textAt(svg, name).at('y'));
  it('stand below the heads in one line where there is room, in the order of the row', () => {
    expect(tops(above(...row('a', 'b', 'c')), 'a', 'b', 'c')).toEqual([261, 261, 261]);
    expect(textAt(above(...row('a')), 'a').is).toMatchObject({ x: '200', 'text-anchor': 'middle' });
  });
  it('stand on two lines in turn where they are too long for their neighbors, cut where even that is not enough', () => {
    // 50 apart: 44 of room holds five letters.
    expect(tops(above(...row('seats', 'b', 'c')), 'seats', 'b', 'c')).toEqual([261, 261, 261]);
    expect(tops(above(...row('seats1', 'b', 'c')), 'seats1', 'b', 'c')).toEqual([261, 275, 261]);
    const svg = above(...[...row('elevenchars', 'elevenlong12')].reverse());
    expect(tops(svg, 'elevenchars', 'elevenlong…')).toEqual([261, 275]);
  });
  it('heed the seats of their own row only', () => {
    const svg = above(seat('front seat', 0, 1), seat('rear seat', 0.5, 2));
    expect(tops(svg, 'front seat', 'rear seat')).toEqual([161, 261]);
    const near = above(seat('front seat', 0, 1.7), seat('rear seat', 0.5, 2));
    expect(tops(near, 'front seat', 'rear seat')).toEqual([231, 275]);
    const apart = above(seat('front seat', 0, 1.59), seat('rear seat', 0.5, 2));
    expect(tops(apart, 'front seat', 'rear seat')).toEqual([220, 261]);
  });
  it('heed how far the seats of a row are apart, and no loudspeaker among them', () => {
    expect(tops(above(seat('abcd', 1, 2), seat('b', 1.3, 2)), 'abcd', 'b')).toEqual([261, 275]);
    const svg = above(speaker('center', 0.2, 0.1, true), seat('a long name', 0, 0.3));
    expect(textAt(svg, 'a long name').at('y')).toBe(91);
  });
  it('stay on the drawing at its edges', () => {
    const svg = above(seat('the very left', -1.6, 2), seat('the very right', 1.6, 2));
    expect(extentOf(textAt(svg, 'the very left'))[0]).toBeCloseTo(0, 1);
    expect(extentOf(textAt(svg, 'the very right'))[1]).toBeCloseTo(400, 1);
  });
  it('from the side stand above the heads, below where that is taken', () => {
    expect(textAt(side(seat('main seat', 3, 0.5)), 'main seat').is).toMatchObject({ x: '354', y: '84' });
    const svg = side(seat('main seat', 2.5, 0.5), seat('row 2', 2.6, 0.5));
    expect(tops(svg, 'row 2', 'main seat')).toEqual([84, 118]);
  });
});

/** A seat seen from the side whose name of one letter stands with its base line in the middle here. */
const nameAt = (x: number, base: number): RoomItem => seat('x', (x - 54) / 100, (146 - 12 - base) / 100);

describe('a name gives way to those of seats', () => {
  const placeOf = (svg: string, name: string) => {
    const { is, at } = textAt(svg, name);
    return [at('x'), at('y'), is['text-anchor'] ?? 'start'];
  };
  it('of what is in the way: above it, then at its left, right and further down, then above after all', () => {
    const shelf: RoomItem = { kind: 'obstacle', from: [1.5, 0], to: [1.5, 0.5], name: 'shelf' };
    const taken = [nameAt(190, 91), nameAt(180, 110), nameAt(230, 110), nameAt(180, 126)];
    const places = [0, 1, 2, 3, 4].map((count) => placeOf(side(shelf, ...taken.slice(0, count)), 'shelf'));
    expect(places).toEqual([
      [204, 91, 'middle'],
      [197, 110, 'end'],
      [211, 110, 'start'],
      [197, 126, 'end'],
      [204, 91, 'middle'],
    ]);
    expect(placeOf(side(shelf, nameAt(215, 91)), 'shelf')[1]).toBe(110);
    expect(placeOf(side(shelf, nameAt(227, 91), nameAt(181, 91)), 'shelf')[1]).toBe(91);
  });
  it('of the picture: above it, below it, then beside its upper and its lower part', () => {
    const picture: RoomItem = { kind: 'picture', from: [-0.05, 0.4], to: [-0.05, 1], name: 'tv' };
    const taken = [nameAt(50, 40), nameAt(50, 121), nameAt(60, 66)];
    const places = [0, 1, 2, 3].map((count) => placeOf(side(picture, ...taken.slice(0, count)), 'tv'));
    expect(places).toEqual([
      [45, 40, 'start'],
      [45, 121, 'start'],
      [55, 66, 'start'],
      [55, 86, 'start'],
    ]);
  });
  it('of the center from above: at its right, then at its left', () => {
    const center = speaker('center', 0, 0.5, true);
    expect(placeOf(above(center, seat('x', 0.3, 0.41)), 'center')).toEqual([184, 102, 'end']);
    expect(placeOf(above(center, seat('x', -0.3, 0.41)), 'center')).toEqual([216, 102, 'start']);
  });
  it('of a seat in front: on the lower line', () => {
    const wide = [speaker('left', -6.64, 0), speaker('right', 6.64, 0)];
    const svg = draw('above', ...wide, seat('rear', 0, 1.41), seat('front', 0, 1));
    expect([placeOf(svg, 'front')[1], placeOf(svg, 'rear')[1]]).toEqual([86, 110.3]);
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
    expect(textAt(svg, 'row 1').at('y')).toBe(94);
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
          expect(circle.at('cy')).toBeLessThanOrEqual(heightOf(svg) - 44 + 0.1);
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
