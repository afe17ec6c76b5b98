/** Axes, grid and named thresholds of a plot, drawn over d3 scales. */
import { scaleLinear, scaleLog } from 'd3-scale';
import type { Axis, Threshold } from '../chart.js';
import { el, label, line, textWidth } from './element.js';
import { type Box, holds } from './place-labels.js';

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export type Scale = (value: number) => number;

export function scaleOf({ scale, from, to }: Axis, start: number, end: number): Scale {
  const made = scale === 'log' ? scaleLog() : scaleLinear();
  return made.domain([from, to]).range([start, end]);
}

/** Space between a tick's text and the plot. */
const GAP = 6;
/** From the base line of a text to its middle, at the size of the drawings. */
export const HALF_LETTER = 4;

/** Vertical grid lines with their numbers below, and the name of the axis. */
export function xAxis(axis: Axis, x: Scale, { left, right, top, bottom }: Frame): string[] {
  return [
    ...axis.ticks.map(({ at, text }) =>
      line(x(at), top, x(at), bottom, { class: text === '' ? 'c-grid c-minor' : 'c-grid' }),
    ),
    ...axis.ticks
      .filter(({ text }) => text !== '')
      .map(({ at, text }) => label(text, { x: x(at), y: bottom + 15, anchor: 'middle' })),
    label(axis.label, { x: (left + right) / 2, y: bottom + 31, anchor: 'middle' }),
  ];
}

/** Horizontal grid lines with their numbers at the left, and the name of the axis on top. */
export function yAxis(axis: Axis, y: Scale, { left, right, top }: Frame): string[] {
  return [
    ...axis.ticks.map(({ at }) => line(left, y(at), right, y(at), { class: 'c-grid' })),
    ...axis.ticks.map(({ at, text }) =>
      label(text, { x: left - GAP, y: y(at) + HALF_LETTER, anchor: 'end' }),
    ),
    label(axis.label, { x: 0, y: top - 10 }),
  ];
}

/** The line that everything is measured against. */
export const zeroLine = (axis: Axis, y: Scale, { left, right }: Frame): string[] =>
  axis.from <= 0 && axis.to >= 0 ? [line(left, y(0), right, y(0), { class: 'c-zero' })] : [];

export interface Drawn {
  readonly parts: readonly string[];
  /** Where the names stand, so that nothing else is put there. */
  readonly taken: readonly Box[];
}

/**
 * Thresholds across the plot, those within the axis only. Their names stand at the end of the line where fewer
 * points of the curves are.
 */
export function thresholdLines(
  list: readonly Threshold[],
  axis: Axis,
  y: Scale,
  { left, right }: Frame,
  curves: readonly (readonly (readonly [x: number, y: number])[])[],
): Drawn {
  const inside = list.filter(({ at }) => at >= axis.from && at <= axis.to);
  const names = inside
    .filter(({ name }) => name !== '')
    .map(({ at, name }) => {
      const box = { y: y(at) - 15, width: textWidth(name), height: 14 };
      const ends: Box[] = [
        { ...box, x: left + 4 },
        { ...box, x: right - 4 - box.width },
      ];
      const covered = ends.map((end) => curves.flat().filter(([a, b]) => holds(end, a, b)).length);
      const best = (covered[1] ?? 0) < (covered[0] ?? 0) ? 1 : 0;
      return { name, box: ends[best] as Box, anchor: best === 0 ? ('start' as const) : ('end' as const) };
    });
  return {
    parts: [
      ...inside.map(({ at }) =>
        line(left, y(at), right, y(at), { class: 'c-limit', 'stroke-dasharray': '5 3' }),
      ),
      ...names.map(({ name, box, anchor }) =>
        label(name, {
          x: anchor === 'start' ? box.x : right - 4,
          y: box.y + 11,
          anchor,
          className: 'c-text c-limit-text',
        }),
      ),
    ],
    taken: names.map(({ box }) => box),
  };
}

/** Keeps curves inside the plot. */
export function clip(id: string, { left, right, top, bottom }: Frame): string {
  return el(
    'defs',
    {},
    el(
      'clipPath',
      { id },
      el('rect', { x: left, y: top - 1, width: right - left, height: bottom - top + 2 }),
    ),
  );
}
