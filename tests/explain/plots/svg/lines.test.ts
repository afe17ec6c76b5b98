/** Curves over two axes: through their points, clipped to the plot, told apart and named. */
import { describe, expect, it } from 'vitest';
import { linearAxis } from '../../../../src/explain/plots/axes.js';
import type { Curve, LineChart } from '../../../../src/explain/plots/chart.js';
import { drawLines } from '../../../../src/explain/plots/svg/lines.js';
import { elementsOf, extentOf, textAt, textsOf, withClass } from '../elements.js';

const curve = (name: string, ...levels: readonly number[]): Curve => ({
  name,
  points: levels.map((level, i) => [50 * i, level]),
  marked: false,
});
const draw = (curves: readonly Curve[], thresholds: LineChart['thresholds'] = []): string =>
  drawLines({
    kind: 'lines',
    id: 'stage',
    title: 'Title',
    says: 'Says.',
    notes: [],
    x: linearAxis('place', 0, 100, 50),
    y: linearAxis('level (dB)', -10, 10, 5),
    curves,
    thresholds,
    table: { caption: '', head: [], rows: [] },
  });

describe('curves', () => {
  it('run through their points', () => {
    const [path] = withClass(draw([curve('now', -10, 0, 10)]), 'c-line');
    // 34 to 392 across, 230 up to 26.
    expect(path?.is).toMatchObject({ class: 'c-line c-0', d: 'M34,230L213,128L392,26' });
    expect(withClass(draw([curve('now')]), 'c-line')[0]?.is.d).toBe('');
  });
  it('are cut where the plot ends, by the clip of this very plot', () => {
    const svg = draw([curve('now', 0, 99)]);
    const [group] = elementsOf(svg).filter(({ is }) => is['clip-path']);
    expect(group?.is['clip-path']).toBe('url(#stage-clip)');
    expect(elementsOf(svg).find(({ tag }) => tag === 'clipPath')?.is.id).toBe('stage-clip');
    expect(svg.slice(svg.indexOf('<g '), svg.indexOf('</g>'))).toContain('c-line');
  });
  it('have marks at their points where these are bands', () => {
    const svg = draw([curve('now', 1, 2, 3), { ...curve('before', -10, 0, 10), marked: true }]);
    expect(withClass(svg, 'c-mark').map(({ is }) => [is.class, is.cx, is.cy])).toEqual([
      ['c-mark c-1', '34', '230'],
      ['c-mark c-1', '213', '128'],
      ['c-mark c-1', '392', '26'],
    ]);
  });
  it('differ by dashes, and have a name in their own color beside a piece of their line', () => {
    const svg = draw([curve('upper', 8, 8, 8), curve('lower', -8, -8, -8)]);
    const dashes = withClass(svg, 'c-line').map(({ tag, is }) => [tag, is['stroke-dasharray']]);
    expect(dashes).toEqual([
      ['path', undefined],
      ['path', '7 4'],
      ['line', undefined],
      ['line', '7 4'],
    ]);
    expect(withClass(svg, 'c-name').map(({ is, text }) => [text, is.class])).toEqual([
      ['upper', 'c-name c-0'],
      ['lower', 'c-name c-1'],
    ]);
  });
  it('have their names below the plot, in as many rows as these need, never beyond the drawing', () => {
    const long = ['first '.repeat(5), 'second '.repeat(5), 'x'.repeat(80)].map((name) => curve(name, 0, 0));
    const names = withClass(draw(long), 'c-name');
    expect(new Set(names.map(({ at }) => at('y'))).size).toBe(3);
    for (const name of names) {
      expect(name.at('y')).toBeGreaterThan(230 + 31);
      expect(extentOf(name)[1]).toBeLessThanOrEqual(400);
    }
    expect(names[2]?.text.endsWith('…')).toBe(true);
  });
  it('leave room at the right for the names of limits, and only then', () => {
    const svg = draw([curve('one', 1, 1, 1)], [{ at: 0, name: 'severe' }]);
    const [limit] = withClass(svg, 'c-limit');
    expect(textAt(svg, 'severe').at('x')).toBeGreaterThan(limit?.at('x2') ?? 400);
    expect(Math.max(...textsOf(svg).map((text) => extentOf(text)[1]))).toBeLessThanOrEqual(400);
    expect(withClass(draw([curve('one', 1)], [{ at: 0, name: '' }]), 'c-limit')[0]?.is.x2).toBe('392');
  });
  it('stand over both axes and the line at zero, in a drawing that ends with the names', () => {
    const svg = draw([curve('now', 0, 0)]);
    expect([textAt(svg, 'place').at('y'), textAt(svg, 'level (dB)').at('x')]).toEqual([261, 0]);
    expect(withClass(svg, 'c-zero')[0]?.is).toMatchObject({ y1: '128', x1: '34', x2: '392' });
    expect(svg).toContain('viewBox="0 0 400 292"');
  });
});
