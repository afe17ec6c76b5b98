/** The room: to one scale, nothing outside the drawing, each thing as it is told. */
import { describe, expect, it } from 'vitest';
import type { RoomItem } from '../../../../src/explain/plots/chart.js';
import { drawRoom } from '../../../../src/explain/plots/svg/room.js';
import { elementsOf, extentOf, textAt, textsOf, withClass } from '../elements.js';
import { fromAbove, fromSide, heightOf, line, room, seat, speaker } from './roomScenes.js';

const draw = (...told: Parameters<typeof room>): string => drawRoom(room(...told));
const above = (...items: readonly RoomItem[]): string => drawRoom(fromAbove(...items));
const side = (...items: readonly RoomItem[]): string => drawRoom(fromSide(...items));

describe('the scale', () => {
  it('is one for both directions, from above with the seats below the mains', () => {
    const svg = above(seat('sofa', 0.5, 2, true));
    expect(withClass(svg, 'c-seat-main')[0]?.is).toMatchObject({ cx: '250', cy: '240', r: '7' });
    expect(withClass(svg, 'c-speaker').map(({ at }) => at('x') + at('width') / 2)).toEqual([34, 366]);
    expect(heightOf(svg)).toBe(296);
  });
  it('is one from the side, with the floor below and room for names at both ends', () => {
    const svg = side(seat('main seat', 3, 1, true));
    const [from, to] = [withClass(svg, 'c-seat')[0], withClass(svg, 'c-speaker')[0]];
    // 3.52 m of floor on 400 less 56 at each side; 3 m and 0.2 m between the two.
    const perM = (400 - 2 * 56) / 3.52;
    expect((from?.at('cx') ?? 0) - ((to?.at('x') ?? 0) + 9)).toBeCloseTo(3 * perM, 0);
    expect((from?.at('cy') ?? 0) - ((to?.at('y') ?? 0) + 6)).toBeCloseTo(0.2 * perM, 0);
    expect(withClass(svg, 'c-floor')[0]?.is.d).toMatch(/^M56,/);
  });
  it('shrinks for a deep room, which is drawn no taller than a phone shows', () => {
    expect(heightOf(above(seat('sofa', 0, 9)))).toBe(380);
    expect(heightOf(draw('side', speaker('mains', 0, 0), seat('main seat', 1, 9)))).toBe(380);
  });
  it('grows no further where all stands in one spot', () => {
    const svg = draw('above', speaker('left', 1, 1), seat('sofa', 1, 1));
    expect(withClass(svg, 'c-seat')[0]?.is).toMatchObject({ cx: '200', cy: '40' });
    expect(withClass(svg, 'c-scale')[0]?.is.d).toMatch(/H572\.0V/);
  });
  it('holds a picture wider than all else', () => {
    const svg = above({ kind: 'picture', from: [-3, 0], to: [3, 0], name: 'picture' }, seat('sofa', 0, 2));
    expect(withClass(svg, 'c-picture')[0]?.is).toMatchObject({ x1: '34', x2: '366' });
  });
  it('is told by a bar as long as its length, at the bottom', () => {
    const svg = above(seat('sofa', 0, 2));
    expect(withClass(svg, 'c-scale')[0]?.is.d).toBe('M4,286.0V290.0H104.0V286.0');
    expect(textAt(svg, '1 m').is).toMatchObject({ x: '109', y: '291' });
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
    const [picture, obstacle] = [withClass(svg, 'c-picture')[0], withClass(svg, 'c-obstacle')[0]];
    expect(picture?.is.x1).toBe(picture?.is.x2);
    expect(obstacle?.is.x1).toBe(obstacle?.is.x2);
    expect(obstacle?.at('y1')).toBe(
      withClass(svg, 'c-floor')[0] &&
        Number(/,([\d.]+)L/.exec(withClass(svg, 'c-floor')[0]?.is.d ?? '')?.[1]),
    );
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
  it('from the side has its front where it is told, the center named before it and the mains above', () => {
    const svg = side(speaker('center', 1, 0.5, true));
    const center = withClass(svg, 'c-speaker-center')[0];
    expect(textAt(svg, 'center').is).toMatchObject({ 'text-anchor': 'end', class: 'c-strong' });
    expect(extentOf(textAt(svg, 'center'))[1]).toBeLessThan(center?.at('x') ?? 0);
    expect(textAt(svg, 'mains').at('y')).toBeLessThan(withClass(svg, 'c-speaker')[0]?.at('y') ?? 0);
  });
  it('has its picture from above a little in front of the mains, named in its middle', () => {
    const svg = above({ kind: 'picture', from: [-0.6, 0], to: [1, 0], name: 'picture' });
    expect(withClass(svg, 'c-picture')[0]?.is).toMatchObject({ x1: '140', x2: '300', y1: '29', y2: '29' });
    expect(textAt(svg, 'picture').is).toMatchObject({ x: '220', y: '23', 'text-anchor': 'middle' });
  });
  it('has each line in its own dashes, and names the bounce below the floor', () => {
    const svg = above(line('axis', '', [0, 0], [0, 2]), line('sight', '', [0, 0], [1, 1]));
    expect(withClass(svg, 'c-axis')[0]?.is).toMatchObject({
      d: 'M200,40L200,240',
      'stroke-dasharray': '8 4',
    });
    expect(withClass(svg, 'c-sight')[0]?.is['stroke-dasharray']).toBeUndefined();
    const bounce = side(line('bounce', 'off the floor', [0, 1], [1, 0], [2, 1]));
    const floorY = Number(/,([\d.]+)L/.exec(withClass(bounce, 'c-floor')[0]?.is.d ?? '')?.[1]);
    expect(textAt(bounce, 'off the floor').at('y')).toBeGreaterThan(floorY);
    expect(textsOf(bounce).map(({ text }) => text)).not.toContain('floor');
  });
});
