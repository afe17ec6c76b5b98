/** The balance of the first cause: each step begins where the one before ended, printed figures add up. */
import { describe, expect, it } from 'vitest';
import { balanceChart } from '../../../src/explain/plots/balance.js';
import type { BalanceChart } from '../../../src/explain/plots/chart.js';
import { reportOf } from './small.js';

const group = (title: string, decibans: number) => ({ id: title, title, decibans, rules: [], note: '' });
const chartOf = (priorDb: number, groups: readonly (readonly [string, number])[], sharedDb: number) =>
  balanceChart(
    reportOf({
      causes: [
        {
          title: 'wrong delay',
          confidence: 'likely, about 85%',
          priorDb,
          sharedDb,
          groups: groups.map(([title, decibans]) => group(title, decibans)),
          decibans: priorDb + sharedDb + groups.reduce((sum, [, decibans]) => sum + decibans, 0),
        },
        { title: 'another', groups: [group('other', 99)] },
      ],
    }),
  ) as BalanceChart;

describe('the balance', () => {
  const GROUPS = [
    ['where heard', 6],
    ['what was tried', -2.5],
  ] as const;
  it('goes from the prior over each line of evidence and the complaints to the total from zero', () => {
    expect(chartOf(-8, GROUPS, 1).steps).toEqual([
      { label: 'before anything was told', from: 0, to: -8, text: '−8.0', total: false },
      { label: 'where heard', from: -8, to: -2, text: '+6.0', total: false },
      { label: 'what was tried', from: -2, to: -4.5, text: '−2.5', total: false },
      { label: 'the complaints', from: -4.5, to: -3.5, text: '+1.0', total: false },
      { label: 'together', from: 0, to: -3.5, text: '−3.5', total: true },
    ]);
  });
  it('is rounded so that the printed figures add up', () => {
    const texts = chartOf(-8, [['where heard', 6.04]], 1.04).steps.map(({ text }) => text);
    const tenths = texts.map((text) => Math.round(10 * Number(text.replace('−', '-'))));
    expect(tenths.slice(0, -1).reduce((sum, tenth) => sum + tenth, 0)).toBe(tenths.at(-1));
    expect(texts.at(-1)).toBe('−0.9');
  });
  it('says where it begins, where it ends and what that means', () => {
    expect(chartOf(-8, GROUPS, 1).says).toBe(
      'It begins at −8.0 decibans before anything was told and ends at −3.5: likely, about 85%.',
    );
    expect(chartOf(-8, GROUPS, 1).title).toContain('“wrong delay”');
  });
  it('has an axis on whole steps that holds every step of the way, and five decibans to each side at least', () => {
    const ends = ({ x }: BalanceChart) => [x.from, x.to];
    expect(ends(chartOf(0, [['where heard', 0]], 0))).toEqual([-5, 5]);
    expect(ends(chartOf(-8, GROUPS, 1))).toEqual([-10, 5]);
    expect(ends(chartOf(-8, [['where heard', 20.1]], -6))).toEqual([-10, 15]);
    expect(ends(chartOf(-30, [['where heard', 40]], 0))).toEqual([-30, 10]);
    expect(chartOf(-30, [['where heard', 40]], 0).x.ticks.map(({ at }) => at)).toEqual([
      -30, -20, -10, 0, 10,
    ]);
  });
  it('is told in a table line by line', () => {
    expect(chartOf(-8, GROUPS, 1).table.head).toEqual(['line', 'decibans']);
    expect(chartOf(-8, GROUPS, 1).table.rows).toEqual([
      ['before anything was told', '−8.0'],
      ['where heard', '+6.0'],
      ['what was tried', '−2.5'],
      ['the complaints', '+1.0'],
      ['together', '−3.5'],
    ]);
  });
  it('is left out where nothing speaks for or against the first cause, or there is none', () => {
    expect(chartOf(-8, [], 1)).toBeUndefined();
    expect(balanceChart(reportOf())).toBeUndefined();
  });
});
