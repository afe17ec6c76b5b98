/** Axes, grid and named thresholds of a plot, drawn over d3 scales. */
import { scaleLinear, scaleLog } from 'd3-scale';
import type { Axis, Threshold } from '../chart.js';
import { el, label, line } from './element.js';

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Scale = (value: number) => number;

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

/** Thresholds across the plot, those within the axis only, named right of it. */
export const thresholdLines = (
  list: readonly Threshold[],
  axis: Axis,
  y: Scale,
  { left, right }: Frame,
): string[] =>
  list
    .filter(({ at }) => at >= axis.from && at <= axis.to)
    .flatMap(({ at, name }) => [
      line(left, y(at), right, y(at), { class: 'c-limit', 'stroke-dasharray': '5 3' }),
      ...(name === ''
        ? []
        : [label(name, { x: right + GAP, y: y(at) + HALF_LETTER, className: 'c-text c-limit-text' })]),
    ]);

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
