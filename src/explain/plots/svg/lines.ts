/** Curves over two axes. */
import { line as path } from 'd3-shape';
import type { LineChart, XY } from '../chart.js';
import { colorOf, dashOf, drawing, el, fitting, label, tenth, textWidth, WIDTH } from './element.js';
import { clip, type Frame, scaleOf, thresholdLines, xAxis, yAxis, zeroLine } from './frame.js';
import { placeLabels } from './place-labels.js';

const HEIGHT = 268;
const FRAME: Frame = { left: 34, right: WIDTH - 8, top: 26, bottom: HEIGHT - 38 };
/** Longer names are cut: nearly half the plot. */
const LONGEST_NAME = 178;

export function drawLines(chart: LineChart): string {
  const { id, title, says, x: xOf, y: yOf, curves, thresholds } = chart;
  const x = scaleOf(xOf, FRAME.left, FRAME.right);
  const y = scaleOf(yOf, FRAME.bottom, FRAME.top);
  const clipId = `${id}-clip`;
  const drawn = curves.map(({ points }) => points.map(([a, b]) => [x(a), y(b)] as const));
  const limits = thresholdLines(thresholds, yOf, y, FRAME, drawn);
  const names = curves.map(({ name }) => fitting(name, LONGEST_NAME));
  const places = placeLabels(drawn, names.map(textWidth), FRAME, limits.taken);
  const write = path<XY>()
    .x(([a]) => tenth(x(a)))
    .y(([, b]) => tenth(y(b)));
  return drawing({
    id,
    title,
    says,
    height: HEIGHT,
    parts: [
      clip(clipId, FRAME),
      ...xAxis(xOf, x, FRAME),
      ...yAxis(yOf, y, FRAME),
      ...zeroLine(yOf, y, FRAME),
      ...limits.parts,
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
      ...places.map((at, i) => label(names[i] ?? '', { ...at, className: `c-name ${colorOf(i)}` })),
    ],
  });
}
