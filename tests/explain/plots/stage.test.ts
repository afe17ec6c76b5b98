/** The stage: where sounds are heard straight, with the upmix as it is, and as advised where that is wider. */
import { describe, expect, it } from 'vitest';
import { widthRetained } from '../../../src/acoustics/upmix.js';
import type { LineChart } from '../../../src/explain/plots/chart.js';
import { stageChart } from '../../../src/explain/plots/stage.js';
import type { TestFacts } from '../../support/causeClaims.js';
import { reportOf, system } from './small.js';

const UPMIX: TestFacts = {
  centerCount: 'one',
  playedContent: 'two-channel-music',
  upmixUse: 'on',
  upmixCommonPart: 'takes-out',
  upmixCenterControl: 'present',
  upmixAmbience: 'no',
};
const chartOf = (facts: TestFacts): LineChart | undefined => {
  const { ask, view } = system({ ...UPMIX, ...facts });
  return stageChart(ask, view, reportOf());
};
const namesOf = (facts: TestFacts) => chartOf(facts)?.curves.map(({ name }) => name);
const percent = (extraction: number): number => Math.round(100 * widthRetained({ extraction }).energy);

describe('the stage', () => {
  it('of two channels straight goes from 30 degrees left to 30 degrees right', () => {
    const [straight] = chartOf({})?.curves ?? [];
    const at = (pan: number) => straight?.points.find(([x]) => x === pan)?.[1];
    expect([at(0), at(45), at(90)]).toEqual([30, undefined, -30].map((deg) => deg && expect.closeTo(deg, 9)));
    expect([at(44), at(46)].map((deg) => Math.sign(deg ?? 0))).toEqual([1, -1]);
    expect(straight?.points.map(([x]) => x)).toEqual(Array.from({ length: 46 }, (_, i) => 2 * i));
  });
  it('with all of the middle taken out is narrower, and a row is advised to put a fifth back', () => {
    const chart = chartOf({});
    expect(chart?.curves.map(({ name, marked }) => [name, marked])).toEqual([
      ['two channels straight', false],
      ['upmix now', false],
      ['a fifth of spread (advised)', false],
    ]);
    expect(chart?.says).toBe(
      `The upmix as it is keeps ${percent(1)}% of the width of two channels; with a fifth of spread ${percent(0.8)}%.`,
    );
    const heard = chart?.curves.map(({ points }) => points.find(([x]) => x === 20)?.[1] ?? 0) ?? [];
    expect(heard[0]).toBeGreaterThan(heard[2] ?? 0);
    expect(heard[2]).toBeGreaterThan(heard[1] ?? 0);
  });
  it('of a single seat is advised half of the spread', () => {
    const chart = chartOf({ seating: 'single-seat' });
    expect(chart?.curves.at(-1)?.name).toBe('half spread (advised)');
    expect(chart?.says).toContain(`; with half spread ${percent(0.5)}%.`);
  });
  it('has no advice where the control is missing, or where now is as wide or wider', () => {
    const two = ['two channels straight', 'upmix now'];
    expect(namesOf({ upmixCenterControl: 'none' })).toEqual(two);
    expect(chartOf({ upmixCenterControl: 'none' })?.says).toBe(
      `The upmix as it is keeps ${percent(1)}% of the width of two channels.`,
    );
    const spread = { upmixCommonPart: 'shares', centerSpread: 'on', upmixCenterControl: 'present' } as const;
    expect(namesOf({ ...spread, centerSpreadAmount: 0.1 })).toHaveLength(3);
    expect(namesOf({ ...spread, centerSpreadAmount: 1 - 0.8 })).toEqual(two);
    expect(namesOf({ ...spread, centerSpreadAmount: 0.4 })).toEqual(two);
  });
  it('is not drawn where no upmix carries the voice, or nobody knows', () => {
    expect(chartOf({ upmixUse: 'off' })).toBeUndefined();
    expect(chartOf({ playedContent: 'multichannel-film' })).toBeUndefined();
    const { ask, view } = system({});
    expect(stageChart(ask, view, reportOf())).toBeUndefined();
  });
  it('is told in a table at every tenth degree of the pan', () => {
    const { table, x, y } = chartOf({}) as LineChart;
    expect(table.head).toEqual([
      'place',
      'two channels straight',
      'upmix now',
      'a fifth of spread (advised)',
    ]);
    expect(table.rows.map(([pan]) => pan)).toEqual([
      '0',
      '10',
      '20',
      '30',
      '40',
      '50',
      '60',
      '70',
      '80',
      '90',
    ]);
    expect(table.rows[0]).toEqual(['0', '30', '30', '30']);
    expect(table.rows.at(-1)).toEqual(['90', '−30', '−30', '−30']);
    expect([x.from, x.to, y.from, y.to]).toEqual([0, 90, -30, 30]);
  });
  it('says what was assumed', () => {
    const spread = { upmixCommonPart: 'shares', centerSpread: 'on' } as const;
    expect(chartOf(spread)?.notes.at(-1)).toMatch(/^Not told and taken as usual: .* 0\.5\.$/);
    expect(chartOf({})?.notes).toHaveLength(1);
  });
});
