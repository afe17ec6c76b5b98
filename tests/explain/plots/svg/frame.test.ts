/** Axes, grid and thresholds: each where its number says, names clear of the curves and of the plot's edges. */
import { describe, expect, it } from 'vitest';
import { frequencyAxis, linearAxis } from '../../../../src/explain/plots/axes.js';
import {
  clip,
  type Frame,
  scaleOf,
  thresholdLines,
  xAxis,
  yAxis,
  zeroLine,
} from '../../../../src/explain/plots/svg/frame.js';
import { elementsOf, textAt, textsOf, withClass } from '../elements.js';

const FRAME: Frame = { left: 30, right: 390, top: 20, bottom: 220 };
const levels = linearAxis('level (dB)', -15, 5, 5);
const y = scaleOf(levels, FRAME.bottom, FRAME.top);

describe('a scale', () => {
  it('is even for numbers, and by ratios for frequencies', () => {
    expect([-15, -5, 5].map(scaleOf(levels, FRAME.bottom, FRAME.top))).toEqual([220, 120, 20]);
    const x = scaleOf(frequencyAxis(200, 3200), 0, 400);
    expect([200, 400, 800, 3200].map(x)).toEqual([0, 100, 200, 400].map((at) => expect.closeTo(at, 9)));
  });
});

describe('the axis below', () => {
  const axis = frequencyAxis(200, 800);
  const drawn = xAxis(axis, scaleOf(axis, FRAME.left, FRAME.right), FRAME);
  it('has a line at every tick from top to bottom, thinner ones where no number stands', () => {
    const lines = elementsOf(drawn).filter(({ tag }) => tag === 'line');
    expect(lines).toHaveLength(axis.ticks.length);
    expect(lines.map(({ is }) => [is.y1, is.y2])).toEqual(lines.map(() => ['20', '220']));
    expect(lines.map(({ is }) => is.class === 'c-grid c-minor')).toEqual(
      axis.ticks.map(({ text }) => text === ''),
    );
    expect(lines.every(({ is }) => is.x1 === is.x2)).toBe(true);
  });
  it('has its numbers in the middle below their lines, none empty, and its name below them', () => {
    expect(textsOf(drawn).map(({ text }) => text)).toEqual(['200', '500', '800', 'frequency (Hz)']);
    expect(textAt(drawn, '200').is).toMatchObject({ x: '30', 'text-anchor': 'middle', y: '235' });
    expect(textAt(drawn, 'frequency (Hz)').is).toMatchObject({ x: '210', y: '251' });
  });
});

describe('the axis at the left', () => {
  const drawn = yAxis(levels, y, FRAME);
  it('has a line across at every tick, its number beside it and outside the plot', () => {
    expect(withClass(drawn, 'c-grid').map(({ is }) => [is.x1, is.x2, is.y1, is.y2])).toEqual(
      [220, 170, 120, 70, 20].map((at) => ['30', '390', `${at}`, `${at}`]),
    );
    expect(textAt(drawn, '0').is).toMatchObject({ x: '24', y: '74', 'text-anchor': 'end' });
    expect(textAt(drawn, 'level (dB)').is).toMatchObject({ x: '0', y: '10' });
  });
  it('has a line at zero where zero is on it, its ends included', () => {
    expect(elementsOf(zeroLine(levels, y, FRAME))[0]?.is).toEqual({
      x1: '30',
      x2: '390',
      y1: '70',
      y2: '70',
      class: 'c-zero',
    });
    for (const [from, to, count] of [
      [0, 5, 1],
      [-5, 0, 1],
      [1, 5, 0],
      [-5, -1, 0],
    ] as const)
      expect(zeroLine({ ...levels, from, to }, y, FRAME)).toHaveLength(count);
  });
});

describe('thresholds', () => {
  const lines = (at: number, name = 'clear') => thresholdLines([{ at, name }], levels, y, FRAME);
  it('are drawn across the plot within the axis, its ends included, and not beyond', () => {
    expect(elementsOf(lines(-5))[0]?.is).toMatchObject({
      x1: '30',
      x2: '390',
      y1: '120',
      y2: '120',
      'stroke-dasharray': '5 3',
    });
    expect([-15, 5].map((at) => lines(at).length)).toEqual([2, 2]);
    expect([-15.1, 5.1].map((at) => lines(at).length)).toEqual([0, 0]);
  });
  it('are named right of the plot, where no line runs; without a name they are lines alone', () => {
    expect(textAt(lines(-5), 'clear').at('x')).toBeGreaterThan(FRAME.right);
    expect(elementsOf(lines(-5, '')).map(({ tag }) => tag)).toEqual(['line']);
  });
});

describe('the clip', () => {
  it('is the plot and one unit more above and below, so that a line on its edge is whole', () => {
    const [defs, path, rect] = elementsOf(clip('tone-clip', FRAME));
    expect([defs?.tag, path?.tag, path?.is.id]).toEqual(['defs', 'clipPath', 'tone-clip']);
    expect(rect?.is).toEqual({ x: '30', y: '19', width: '360', height: '202' });
  });
});
