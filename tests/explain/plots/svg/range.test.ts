/** A value among its grades: good to the left where much is bad, to the right where little is. */
import { describe, expect, it } from 'vitest';
import { drawRange } from '../../../../src/explain/plots/svg/range.js';
import type { RangeBar } from '../../../../src/explain/report-types.js';
import { extentOf, textAt, withClass } from '../elements.js';

const DIP: RangeBar = {
  limit: 'dipDb',
  label: 'dip',
  unit: 'dB',
  value: 6,
  noticeable: 2,
  clear: 4,
  severe: 8,
  lowIsBad: false,
  near: true,
  valueText: '6 dB',
  noticeableText: '2 dB',
  clearText: '4 dB',
  grade: 'poor',
};
const CLEARANCE: RangeBar = { ...DIP, lowIsBad: true, noticeable: 8, clear: 4, severe: 2 };
const blocks = (bar: RangeBar) =>
  withClass(drawRange(bar, 'r'), 'c-block').map(({ is, at }) => [is.class, at('x'), at('width')]);
/** Where the marker points. */
const markerOf = (bar: RangeBar): number =>
  Number(/M([\d.-]+),/.exec(withClass(drawRange(bar, 'r'), 'c-marker')[0]?.is.d ?? '')?.[1]);
/** A drawing is 400 wide and ends a little beyond the severe grade. */
const at = (value: number): number => Math.round((4000 * value) / (8 * 1.15)) / 10;

describe('a value among its grades', () => {
  it('has good before borderline before poor where much is bad', () => {
    expect(blocks(DIP)).toEqual([
      ['c-block c-good', 0, at(2)],
      ['c-block c-borderline', at(2), at(2)],
      ['c-block c-poor', at(4), expect.closeTo(400 - at(4), 1)],
    ]);
    expect(textAt(drawRange(DIP, 'r'), '2 dB').at('x')).toBe(at(2));
    expect(textAt(drawRange(DIP, 'r'), '4 dB').at('x')).toBe(at(4));
  });
  it('has poor first where little is bad, each border with its own number', () => {
    const named = { ...CLEARANCE, noticeableText: '8 dB' };
    expect(blocks(named).map(([name]) => name)).toEqual([
      'c-block c-poor',
      'c-block c-borderline',
      'c-block c-good',
    ]);
    expect(textAt(drawRange(named, 'r'), '4 dB').at('x')).toBe(at(4));
    expect(textAt(drawRange(named, 'r'), '8 dB').at('x')).toBe(at(8));
  });
  it('has each grade written in the middle of its block', () => {
    const svg = drawRange(DIP, 'r');
    for (const block of withClass(svg, 'c-block'))
      expect(textAt(svg, (block.is.class ?? '').split('c-').at(-1) ?? '').at('x')).toBeCloseTo(
        block.at('x') + block.at('width') / 2,
        0,
      );
    expect(textAt(svg, 'good').is).toMatchObject({ 'text-anchor': 'middle', y: '34' });
  });
  it('is marked at its place, whichever is larger, it or the worst grade', () => {
    expect(markerOf(DIP)).toBe(at(6));
    expect(markerOf({ ...DIP, value: 80 })).toBeCloseTo(400 / 1.15, 1);
    expect(withClass(drawRange(DIP, 'r'), 'c-marker')[0]?.is.d).toMatch(
      /^M[\d.]+,26l-5,-8h10z M[\d.]+,20v20$/,
    );
    expect(markerOf({ ...CLEARANCE, value: 8 })).toBeCloseTo(400 / 1.15, 1);
  });
  it('below zero is marked at the beginning, the marker whole', () => {
    expect(markerOf({ ...DIP, value: -3 })).toBe(5);
    expect(markerOf({ ...DIP, value: 0 })).toBe(5);
  });
  it('is told in words above its marker, never off the drawing', () => {
    const told = (value: number, valueText = 'value') =>
      textAt(drawRange({ ...DIP, value, valueText }, 'r'), valueText);
    expect(told(6).is).toMatchObject({ x: String(at(6)), 'text-anchor': 'middle', y: '13' });
    expect(told(0).is).toMatchObject({ x: '0', class: 'c-strong' });
    expect(told(0).is['text-anchor']).toBeUndefined();
    expect(told(80).is).toMatchObject({ x: '400', 'text-anchor': 'end' });
    expect(extentOf(told(1.4, '12 letters x'))[0]).toBeGreaterThanOrEqual(0);
    // At 60 from either edge there is room for a word on both sides of the marker.
    expect(told((60 * 9.2) / 400).is['text-anchor']).toBe('middle');
  });
  it('has a name with its value and a description of its grades', () => {
    const svg = drawRange(DIP, 'r');
    expect(svg).toContain('<title id="r-title">dip: 6 dB</title>');
    expect(svg).toContain('good below 2 dB');
    expect(svg).toContain('viewBox="0 0 400 60"');
    for (const border of ['2 dB', '4 dB'])
      expect(textAt(svg, border).is).toMatchObject({ y: '54', 'text-anchor': 'middle' });
  });
});
