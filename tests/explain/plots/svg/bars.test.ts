/** Bars as long as their values, named and told beside them. */
import { describe, expect, it } from 'vitest';
import { linearAxis } from '../../../../src/explain/plots/axes.js';
import type { BarChart } from '../../../../src/explain/plots/chart.js';
import { drawBars } from '../../../../src/explain/plots/svg/bars.js';
import { elementsOf, extentOf, textAt, textsOf, withClass } from '../elements.js';

const base = { title: 'Title', says: 'Says.', notes: [], table: { caption: '', head: [], rows: [] } };
const seat = (label: string, ...values: readonly number[]): BarChart['groups'][number] => ({
  label,
  bars: (['left', 'center', 'right'] as const).flatMap((channel, i) =>
    values[i] === undefined ? [] : [{ label: channel, value: values[i], text: `${values[i]} ms` }],
  ),
});
const bars = (extra: Partial<BarChart>): string =>
  drawBars({
    ...base,
    kind: 'bars',
    id: 'arrivals',
    x: linearAxis('ms', 0, 2, 1),
    groups: [seat('middle', 0, 2, 1)],
    thresholds: [],
    ...extra,
  });
const rects = (svg: string) => elementsOf(svg).filter(({ tag }) => tag === 'rect');
const heightOf = (svg: string): number => Number(/viewBox="0 0 400 ([\d.]+)"/.exec(svg)?.[1]);

describe('bars', () => {
  it('begin at zero and are as long as their values, the least one a line', () => {
    const drawn = rects(bars({}));
    expect(drawn.map(({ is }) => is.x)).toEqual(['48', '48', '48']);
    expect(drawn.map(({ is }) => is.width)).toEqual(['1', '292', '146']);
  });
  it('have their channel before them and their value in a column of its own', () => {
    const svg = bars({});
    expect(textAt(svg, 'center').is).toMatchObject({ x: '42', 'text-anchor': 'end' });
    expect(textAt(svg, '2 ms').is).toMatchObject({ x: '400', 'text-anchor': 'end' });
    rects(svg).forEach((rect, i) => {
      const value = textAt(svg, ['0 ms', '2 ms', '1 ms'][i] ?? '');
      expect(value.at('y') - rect.at('y') - 11 / 2).toBe(4);
      expect(textAt(svg, ['left', 'center', 'right'][i] ?? '').is.y).toBe(value.is.y);
    });
  });
  it('show the center in a color of its own', () => {
    expect(rects(bars({})).map(({ is }) => is.class)).toEqual(['c-bar', 'c-bar c-bar-center', 'c-bar']);
  });
  it('stand below the name of their seat, seat below seat, and the axis below all', () => {
    const svg = bars({ groups: [seat('middle', 0, 2, 1), seat('end', 1, 0), seat('far end', 1)] });
    expect(['middle', 'end', 'far end'].map((name) => textAt(svg, name).at('y'))).toEqual([17, 92, 150]);
    expect(rects(svg).map(({ at }) => at('y'))).toEqual([22, 39, 56, 97, 114, 155]);
    expect(textAt(svg, 'ms').at('y')).toBe(178 + 31);
    expect(heightOf(svg)).toBe(178 + 38);
    expect(withClass(svg, 'c-grid').every(({ is }) => is.y1 === '4' && is.y2 === '178')).toBe(true);
    expect([textAt(svg, '0').at('x'), textAt(svg, '2').at('x')]).toEqual([48, 340]);
  });
  it('keep a long name within the drawing', () => {
    const [name] = textsOf(bars({ groups: [seat('x'.repeat(90), 1)] })).filter(({ text }) =>
      text.endsWith('…'),
    );
    expect(name && extentOf(name)[1]).toBeLessThanOrEqual(380);
  });
  it('are crossed by a threshold where it says, short of the names of the seats, with its own name above', () => {
    const svg = bars({ thresholds: [{ at: 1, name: 'heard' }] });
    const [limit] = withClass(svg, 'c-limit');
    expect(limit?.is).toMatchObject({ x1: '194', x2: '194', y1: '34', y2: '87' });
    expect(textAt(svg, 'heard from here').is).toMatchObject({ x: '194', y: '12' });
    expect(rects(svg)[0]?.at('y')).toBe(36);
  });
});
