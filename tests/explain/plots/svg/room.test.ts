/** The room: to one scale, nothing outside the drawing, names where they hide nothing. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RoomChart, RoomItem, XY } from '../../../../src/explain/plots/chart.js';
import { overlap } from '../../../../src/explain/plots/svg/place-labels.js';
import { drawRoom } from '../../../../src/explain/plots/svg/room.js';
import { type Element, elementsOf, extentOf, textAt, textsOf, withClass } from '../elements.js';

const draw = (view: RoomChart['view'], ...items: readonly RoomItem[]): string =>
  drawRoom({
    kind: 'room',
    id: 'room-above',
    title: 'Title',
    says: 'Says.',
    notes: [],
    view,
    items,
    scaleBar: { lengthM: 1, text: '1 m' },
    table: { caption: '', head: [], rows: [] },
  });
const speaker = (name: string, x: number, y: number, center = false): RoomItem => ({
  kind: 'loudspeaker',
  at: [x, y],
  name,
  center,
});
const seat = (name: string, x: number, y: number, main = false): RoomItem => ({
  kind: 'seat',
  at: [x, y],
  name,
  main,
});
const line = (
  role: 'sight' | 'axis' | 'bounce' | 'floor',
  name: string,
  ...points: readonly XY[]
): RoomItem => ({
  kind: 'line',
  role,
  name,
  points,
});
/** From above 1 m is 100 wide with the mains so far apart: 200 is the midline, 40 the line of the mains. */
const MAINS = [speaker('left', -1.66, 0), speaker('right', 1.66, 0)];
const above = (...items: readonly RoomItem[]): string => draw('above', ...MAINS, ...items);
/** From the side 1 m is 100: 54 is the front of the center, 146 the floor. */
const side = (...items: readonly RoomItem[]): string =>
  draw('side', line('floor', 'floor', [-0.3, 0], [3.22, 0]), speaker('mains', 0, 1.2), ...items);
const box = (text: Element) => {
  const [left, right] = extentOf(text);
  return { x: left, width: right - left, y: text.at('y') - 11, height: 14 };
};
const heightOf = (svg: string): number => Number(/viewBox="0 0 400 ([\d.]+)"/.exec(svg)?.[1]);

describe('the scale', () => {
  it('is one for both directions, from above with the seats below the mains', () => {
    const svg = above(seat('sofa', 0.5, 2, true));
    expect(withClass(svg, 'c-seat-main')[0]?.is).toMatchObject({ cx: '250', cy: '240', r: '7' });
    expect(withClass(svg, 'c-speaker').map(({ at }) => at('x') + at('width') / 2)).toEqual([34, 366]);
    expect(heightOf(svg)).toBe(284);
  });
  it('is one from the side, with the floor below', () => {
    const svg = side(seat('main seat', 3, 1, true));
    expect(withClass(svg, 'c-seat')[0]?.is).toMatchObject({ cx: '354', cy: '46' });
    expect(withClass(svg, 'c-floor')[0]?.is.d).toBe('M24,146L376,146');
    expect(heightOf(svg)).toBe(180);
  });
  it('shrinks for a deep room, which is drawn no taller than a phone shows', () => {
    expect(heightOf(above(seat('sofa', 0, 9)))).toBe(380);
    expect(heightOf(draw('side', speaker('mains', 0, 0), seat('main seat', 1, 9)))).toBe(380);
  });
  it('grows no further where all stands in one spot', () => {
    const svg = draw('above', speaker('left', 1, 1), seat('sofa', 1, 1));
    expect(withClass(svg, 'c-seat')[0]?.is).toMatchObject({ cx: '200', cy: '40' });
    expect(withClass(svg, 'c-scale')[0]?.is.d).toMatch(/H596\.0V/);
  });
  it('is told by a bar as long as its length, at the bottom', () => {
    const svg = above(seat('sofa', 0, 2));
    expect(withClass(svg, 'c-scale')[0]?.is.d).toBe('M4,274.0V278.0H104.0V274.0');
    expect(textAt(svg, '1 m').is).toMatchObject({ x: '109', y: '279' });
  });
});

describe('what stands in the room', () => {
  it('is drawn over lines: picture, what is in the way, loudspeakers, seats', () => {
    const svg = side(
      seat('main seat', 3, 1),
      { kind: 'obstacle', from: [1, 0], to: [1, 0.5], name: 'in the way' },
      { kind: 'picture', from: [-0.05, 0.5], to: [-0.05, 1.1], name: 'picture' },
      line('sight', '', [0, 1], [3, 1]),
    );
    const classes = elementsOf(svg).flatMap(({ is }) =>
      /^c-(?!text|strong|plot)/.test(is.class ?? '') ? is.class : [],
    );
    expect(classes).toEqual([
      'c-room c-floor',
      'c-room c-sight',
      'c-picture',
      'c-obstacle',
      'c-speaker',
      'c-seat',
      'c-scale',
    ]);
    expect(withClass(svg, 'c-picture')[0]?.is).toMatchObject({ x1: '49', x2: '49', y1: '96', y2: '36' });
    expect(withClass(svg, 'c-obstacle')[0]?.is).toMatchObject({ x1: '154', x2: '154', y1: '146', y2: '96' });
  });
  it('has the center in its own color and shape, its name beside it', () => {
    const svg = above(speaker('center', 0, 0, true));
    const boxes = withClass(svg, 'c-speaker').map(({ is }) => [is.class, is.x, is.y, is.width, is.height]);
    expect(boxes).toEqual([
      ['c-speaker', '27', '31', '14', '12'],
      ['c-speaker', '359', '31', '14', '12'],
      ['c-speaker c-speaker-center', '189', '33', '22', '10'],
    ]);
    expect(textAt(svg, 'center').is).toMatchObject({ x: '216', y: '52', class: 'c-strong' });
    expect(textAt(svg, 'left').is).toMatchObject({ x: '34', y: '25', 'text-anchor': 'middle' });
  });
  it('from the side has its front where it is told, the center named below and the mains above', () => {
    const svg = side(speaker('center', 1, 0.5, true));
    const center = withClass(svg, 'c-speaker-center')[0];
    expect(center?.is).toMatchObject({ x: '145', y: '90', width: '10', height: '12' });
    expect(textAt(svg, 'center').is).toMatchObject({ x: '160', y: '113', class: 'c-strong' });
    expect(textAt(svg, 'mains').is).toMatchObject({ x: '60', y: '17' });
  });
  it('has its picture from above a little in front of the mains, named in its middle', () => {
    const svg = above({ kind: 'picture', from: [-0.6, 0], to: [1, 0], name: 'picture' });
    expect(withClass(svg, 'c-picture')[0]?.is).toMatchObject({ x1: '140', x2: '300', y1: '29', y2: '29' });
    expect(textAt(svg, 'picture').is).toMatchObject({ x: '220', y: '23', 'text-anchor': 'middle' });
  });
  it('names the axis below its end and the bounce below the floor, each line in its own dashes', () => {
    const svg = above(line('axis', 'axis', [0, 0], [0, 2]), line('sight', '', [0, 0], [1, 1]));
    expect(withClass(svg, 'c-axis')[0]?.is).toMatchObject({
      d: 'M200,40L200,240',
      'stroke-dasharray': '8 4',
    });
    expect(withClass(svg, 'c-sight')[0]?.is['stroke-dasharray']).toBeUndefined();
    expect(textAt(svg, 'axis').is).toMatchObject({ x: '200', y: '270', 'text-anchor': 'middle' });
    const bounce = side(line('bounce', 'off the floor', [0, 1], [1, 0], [2, 1]));
    expect(textAt(bounce, 'off the floor').is).toMatchObject({ x: '154', y: '160' });
    expect(textsOf(bounce).map(({ text }) => text)).not.toContain('floor');
    expect(textsOf(side(line('axis', '', [0, 1], [1, 1]))).map(({ text }) => text)).toEqual(['mains', '1 m']);
  });
});

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
