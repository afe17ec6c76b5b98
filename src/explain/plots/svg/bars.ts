/** Horizontal bars: groups from zero, and the steps of a balance. */
import type { BalanceChart, BarChart } from '../chart.js';
import { drawing, el, fitting, label, line, textWidth, WIDTH } from './element.js';
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
          label(bar.text, { x: end + 5, y: middle, className: 'c-value' }),
        ];
      }),
    ];
  });
  const limits = thresholds.flatMap(({ at, name }) => [
    line(x(at), top, x(at), bottom, { class: 'c-limit', 'stroke-dasharray': '5 3' }),
    label(`${name} from here`, { x: x(at), y: top - 6, className: 'c-text c-limit-text' }),
  ]);
  const parts = [...xAxis(axis, x, frame), ...limits, ...rows];
  return drawing({ id, title, says, height: bottom + BELOW, parts });
}

const STEP = 34;
const STEP_BAR = 10;
const VALUE_WIDTH = 40;

/** Each step begins where the one before ended; thin lines tie them together. */
export function drawBalance({ id, title, says, x: axis, steps }: BalanceChart): string {
  const top = 20;
  const bottom = top + steps.length * STEP;
  const frame: Frame = { left: 14, right: WIDTH - 14, top, bottom };
  const x = scaleOf(axis, frame.left, frame.right);
  const rows = steps.flatMap((step, i) => {
    const y = top + i * STEP;
    const barTop = y + 18;
    const [start, end] = [Math.min(step.from, step.to), Math.max(step.from, step.to)];
    const kind = step.total ? 'c-total' : step.to >= step.from ? 'c-for' : 'c-against';
    const next = steps[i + 1];
    const tie =
      next && !next.total
        ? [line(x(step.to), barTop, x(step.to), barTop + STEP + STEP_BAR, { class: 'c-tie' })]
        : [];
    return [
      ...tie,
      el('rect', {
        class: `c-step ${kind}`,
        x: x(start),
        y: barTop,
        width: Math.max(1.5, x(end) - x(start)),
        height: STEP_BAR,
      }),
      label(fitting(step.label, WIDTH - VALUE_WIDTH - 16), {
        x: 0,
        y: y + 13,
        className: step.total ? 'c-strong' : 'c-value',
      }),
      label(step.text, {
        x: WIDTH,
        y: y + 13,
        anchor: 'end',
        className: step.total ? 'c-strong' : 'c-value',
      }),
    ];
  });
  const even = 'as likely as not';
  const evenX = Math.min(WIDTH - textWidth(even) / 2, Math.max(textWidth(even) / 2, x(0)));
  return drawing({
    id,
    title,
    says,
    height: bottom + BELOW,
    parts: [
      ...xAxis(axis, x, frame),
      line(x(0), top, x(0), bottom, { class: 'c-zero' }),
      label(even, { x: evenX, y: top - 7, anchor: 'middle' }),
      ...rows,
    ],
  });
}
