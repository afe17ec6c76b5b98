/** Horizontal bars in groups, from zero. */
import type { BarChart } from '../chart.js';
import { drawing, el, fitting, label, line, WIDTH } from './element.js';
import { type Frame, HALF_LETTER, scaleOf, xAxis } from './frame.js';

const BAR = 11;
const BAR_STEP = 17;
const GROUP_HEAD = 18;
const GROUP_GAP = 6;
const BELOW = 38;
const LABELS_WIDTH = 48;

export function drawBars({ id, title, says, x: axis, groups, thresholds }: BarChart): string {
  const top = thresholds.length > 0 ? 18 : 4;
  const heights = groups.map(({ bars }) => GROUP_HEAD + bars.length * BAR_STEP + GROUP_GAP);
  const bottom = top + heights.reduce((sum, height) => sum + height, 0);
  const frame: Frame = { left: LABELS_WIDTH, right: WIDTH - 60, top, bottom };
  const x = scaleOf(axis, frame.left, frame.right);
  const rows = groups.flatMap(({ label: name, bars }, i) => {
    const y = top + heights.slice(0, i).reduce((sum, height) => sum + height, 0);
    return [
      label(fitting(name, WIDTH - 20), { x: 0, y: y + 13, className: 'c-strong' }),
      ...bars.flatMap((bar, row) => {
        const barTop = y + GROUP_HEAD + row * BAR_STEP;
        const middle = barTop + BAR / 2 + HALF_LETTER;
        const end = x(bar.value);
        return [
          label(bar.label, { x: LABELS_WIDTH - 6, y: middle, anchor: 'end' }),
          el('rect', {
            class: bar.label === 'center' ? 'c-bar c-bar-center' : 'c-bar',
            x: x(0),
            y: barTop,
            width: Math.max(1, end - x(0)),
            height: BAR,
          }),
          label(bar.text, { x: WIDTH, y: middle, anchor: 'end', className: 'c-value' }),
        ];
      }),
    ];
  });
  // The line of a limit stops at the names of the groups.
  const limits = thresholds.flatMap(({ at, name }) => [
    ...groups.map(({ bars }, i) => {
      const from = top + heights.slice(0, i).reduce((sum, height) => sum + height, 0) + GROUP_HEAD;
      return line(x(at), from - 2, x(at), from + bars.length * BAR_STEP, {
        class: 'c-limit',
        'stroke-dasharray': '5 3',
      });
    }),
    label(`${name} from here`, { x: x(at), y: top - 6, className: 'c-text c-limit-text' }),
  ]);
  const parts = [...xAxis(axis, x, frame), ...limits, ...rows];
  return drawing({ id, title, says, height: bottom + BELOW, parts });
}
