/** Room that a text takes, and whether something else is in it. */
import { type TextAt, textWidth } from './element.js';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Points on the drawing. */
export type Segment = readonly [from: readonly [number, number], to: readonly [number, number]];

const TEXT_HEIGHT = 15;
const BASE_TO_TOP = 12;

export function boxOf(text: string, { x, y, anchor = 'start' }: TextAt): Box {
  const width = textWidth(text);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { x: left, y: y - BASE_TO_TOP, width, height: TEXT_HEIGHT };
}

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Whether a straight line runs through a box (clipped edge by edge, Liang & Barsky 1984, from memory). */
export function crosses({ x, y, width, height }: Box, [[x1, y1], [x2, y2]]: Segment): boolean {
  const [dx, dy] = [x2 - x1, y2 - y1];
  let [from, to] = [0, 1];
  for (const [step, room] of [
    [-dx, x1 - x],
    [dx, x + width - x1],
    [-dy, y1 - y],
    [dy, y + height - y1],
  ] as const) {
    if (step === 0 && room < 0) return false;
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  }
  return from <= to;
}
