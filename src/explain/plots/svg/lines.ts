/** Curves over two axes, named below them: no name ever stands on a line. */
import { line as path } from 'd3-shape';
import type { LineChart, XY } from '../chart.js';
import { colorOf, dashOf, drawing, el, fitting, label, line, tenth, textWidth, WIDTH } from './element.js';
import { clip, type Frame, scaleOf, thresholdLines, xAxis, yAxis, zeroLine } from './frame.js';

/** From the top of the drawing to the bottom of the plot. */
const PLOT_BOTTOM = 230;
const FRAME: Frame = { left: 34, right: WIDTH - 8, top: 26, bottom: PLOT_BOTTOM };
/** For the names of limits, right of the plot. */
const LIMIT_NAMES = 46;
const BELOW_PLOT = 42;
const KEY_ROW = 20;
const KEY_LINE = 26;
const KEY_GAP = 16;

export function drawLines(chart: LineChart): string {
  const { id, title, says, x: xOf, y: yOf, curves, thresholds } = chart;
  const named = thresholds.some(({ name }) => name !== '');
  const frame = named ? { ...FRAME, right: FRAME.right - LIMIT_NAMES } : FRAME;
  const x = scaleOf(xOf, frame.left, frame.right);
  const y = scaleOf(yOf, frame.bottom, frame.top);
  const clipId = `${id}-clip`;
  const keys = keyRows(curves.map(({ name }) => name));
  const write = path<XY>()
    .x(([a]) => tenth(x(a)))
    .y(([, b]) => tenth(y(b)));
  return drawing({
    id,
    title,
    says,
    height: frame.bottom + BELOW_PLOT + keys.length * KEY_ROW,
    parts: [
      clip(clipId, frame),
      ...xAxis(xOf, x, frame),
      ...yAxis(yOf, y, frame),
      ...zeroLine(yOf, y, frame),
      ...thresholdLines(thresholds, yOf, y, frame),
      el(
        'g',
        { 'clip-path': `url(#${clipId})` },
        ...curves.flatMap(({ points, marked }, i) => [
          el('path', {
            class: `c-line ${colorOf(i)}`,
            'stroke-dasharray': dashOf(i),
            d: write(points) ?? '',
          }),
          ...(marked
            ? points.map(([a, b]) =>
                el('circle', { class: `c-mark ${colorOf(i)}`, cx: x(a), cy: y(b), r: 2.5 }),
              )
            : []),
        ]),
      ),
      ...keys.flatMap((row, r) => {
        const base = frame.bottom + BELOW_PLOT + r * KEY_ROW + 8;
        return row.flatMap(({ name, index, at }) => [
          line(at, base - 4, at + KEY_LINE, base - 4, {
            class: `c-line ${colorOf(index)}`,
            'stroke-dasharray': dashOf(index),
          }),
          label(name, { x: at + KEY_LINE + 6, y: base, className: `c-name ${colorOf(index)}` }),
        ]);
      }),
    ],
  });
}

interface Key {
  readonly name: string;
  readonly index: number;
  readonly at: number;
}

/** As many names in a row as it has room for. */
function keyRows(names: readonly string[]): Key[][] {
  const rows: Key[][] = [];
  let at = Number.POSITIVE_INFINITY;
  names.forEach((full, index) => {
    const name = fitting(full, WIDTH - FRAME.left - KEY_LINE - 6);
    const width = KEY_LINE + 6 + textWidth(name);
    if (at + width > WIDTH) {
      rows.push([]);
      at = FRAME.left;
    }
    rows.at(-1)?.push({ name, index, at });
    at += width + KEY_GAP;
  });
  return rows;
}
