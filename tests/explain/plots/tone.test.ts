/** The tone of center against mains: as measured, before the equalization where told, and with a correction. */
import { describe, expect, it } from 'vitest';
import type { TonalMatch } from '../../../src/acoustics/tonal.js';
import type { LineChart } from '../../../src/explain/plots/chart.js';
import { toneChart } from '../../../src/explain/plots/tone.js';
import { LIMITS } from '../../../src/rules/limits.js';
import { answering, system } from './small.js';

const FILTER = {
  type: 'peak',
  frequencyHz: 1000,
  gainDb: -4,
  q: 1,
} as unknown as TonalMatch['filters'][number];
const MATCH: TonalMatch = {
  levelOffsetDb: 0,
  rmsDb: 2,
  worstBandHz: 1000,
  worstBandDb: 4,
  bandsOver3Db: 1,
  filters: [],
  residualRmsDb: 1,
  residualWorstDb: -1.26,
  bands: [
    { hz: 500, diffDb: 1, afterDb: 0.5 },
    { hz: 1000, diffDb: 4, afterDb: -1.26 },
    { hz: 2000, diffDb: -2, afterDb: 0 },
  ],
  warnings: [],
};
const chartOf = (changes: Partial<TonalMatch> = {}, before?: ReadonlyMap<number, number>): LineChart =>
  toneChart(answering({ ...MATCH, ...changes }, before)) as LineChart;
const namesOf = (chart: LineChart) => chart.curves.map(({ name }) => name);

describe('the tone', () => {
  it('is one curve with a mark at each band where nothing is corrected', () => {
    expect(chartOf().curves).toEqual([
      {
        name: 'now',
        marked: true,
        points: [
          [500, 1],
          [1000, 4],
          [2000, -2],
        ],
      },
    ]);
    expect(chartOf().says).toBe(
      'The center is 4 dB louder than the mains near 1 kHz, the worst of the bands.',
    );
  });
  it('is told as weaker where the worst band is', () => {
    expect(chartOf({ worstBandDb: -5, worstBandHz: 2000 }).says).toContain(
      'is 5 dB weaker than the mains near 2 kHz',
    );
  });
  it('shows the correction where there is one, and says what it leaves', () => {
    const chart = chartOf({ filters: [FILTER] });
    expect(namesOf(chart)).toEqual(['now', 'corrected']);
    expect(chart.curves[1]?.points).toEqual([
      [500, 0.5],
      [1000, -1.26],
      [2000, 0],
    ]);
    expect(chart.says).toMatch(
      / A correction with one filter would leave 1\.3 dB at most, once its level is set again\.$/,
    );
    expect(chartOf({ filters: [FILTER, FILTER] }).says).toContain('with 2 filters would');
  });
  it('shows the measurement before the equalization first, where there is one', () => {
    const chart = chartOf(
      { filters: [FILTER] },
      new Map([
        [500, -3],
        [1000, 0.04],
      ]),
    );
    expect(namesOf(chart)).toEqual(['equalization off', 'now', 'corrected']);
    expect(chart.curves[0]?.points).toEqual([
      [500, -3],
      [1000, 0.04],
    ]);
    expect(chart.table.head).toEqual(['Hz', 'equalization off', 'now', 'corrected']);
    expect(chart.table.rows.slice(0, 2)).toEqual([
      ['500', '−3', '1', '0.5'],
      ['1000', '0', '4', '−1.3'],
    ]);
  });
  it('has both borders of another tone, one of them named, and room for every value', () => {
    const chart = chartOf({ bands: [{ hz: 500, diffDb: -10, afterDb: 0 }] });
    const clear = LIMITS.bandDb.clear;
    expect(chart.thresholds.map(({ at }) => at)).toEqual([clear, -clear]);
    expect(chart.thresholds.filter(({ name }) => name !== '')).toHaveLength(1);
    expect([chart.y.from, chart.y.to]).toEqual([-12, 6]);
    expect([chartOf().y.from, chartOf().y.to]).toEqual([-6, 6]);
    expect([chart.x.from, chart.x.to]).toEqual([180, 8900]);
  });
  it('passes on what the comparison warns of', () => {
    expect(chartOf({ warnings: ['Few points.'] }).notes.at(-1)).toBe('Few points.');
    expect(chartOf().notes).toHaveLength(1);
  });
  it('is computed from the measured files', () => {
    const now = { responseLeft: 'even.txt', responseCenter: 'peak-at-1k.txt', responseRight: 'even.txt' };
    const before = {
      responseLeftBefore: 'even.txt',
      responseCenterBefore: 'dull.txt',
      responseRightBefore: 'even.txt',
    };
    const chart = toneChart(system({ ...now, ...before }).ask);
    expect(chart?.says).toMatch(/ louder than the mains near 1 kHz/);
    expect(chart?.curves[0]?.name).toBe('equalization off');
    expect(chart?.curves[0]?.points.at(-1)?.[1]).toBeLessThan(-1);
    expect(toneChart(system({ ...now, responseRight: 'peak-at-1k.txt' }).ask)?.curves[0]?.name).toBe('now');
  });
  it('is left out where nothing was measured', () => {
    expect(toneChart(answering())).toBeUndefined();
    expect(toneChart(system({}).ask)).toBeUndefined();
  });
});
