/** Rooms of few things. */
import type { RoomChart, RoomItem, XY } from '../../../../src/explain/plots/chart.js';
import { type Element, extentOf } from '../elements.js';

export const room = (view: RoomChart['view'], ...items: readonly RoomItem[]): RoomChart => ({
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
export const speaker = (name: string, x: number, y: number, center = false): RoomItem => ({
  kind: 'loudspeaker',
  at: [x, y],
  name,
  center,
});
export const seat = (name: string, x: number, y: number, main = false): RoomItem => ({
  kind: 'seat',
  at: [x, y],
  name,
  main,
});
export const line = (
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
export const fromAbove = (...items: readonly RoomItem[]): RoomChart => room('above', ...MAINS, ...items);
/** From the side 1 m is 100: 54 is the front of the center, 146 the floor. */
export const fromSide = (...items: readonly RoomItem[]): RoomChart =>
  room('side', line('floor', 'floor', [-0.3, 0], [3.22, 0]), speaker('mains', 0, 1.2), ...items);
export const box = (text: Element) => {
  const [left, right] = extentOf(text);
  return { x: left, width: right - left, y: text.at('y') - 11, height: 14 };
};
export const heightOf = (svg: string): number => Number(/viewBox="0 0 400 ([\d.]+)"/.exec(svg)?.[1]);
