/** The charts of a page: those whose data is known, in one order. */
import { describe, expect, it } from 'vitest';
import { buildCharts } from '../../../src/explain/plots/index.js';
import { drawChart } from '../../../src/explain/plots/svg/index.js';
import { auditOf, small } from '../../reasoning/smallCauses.js';
import type { TestFacts } from '../../support/causeClaims.js';
import { reportOf } from './small.js';

const ROOM: TestFacts = { seatDistance: 3, mainsBase: 2.6, centerCount: 'one', centerTweeterHeight: 0.5 };
const LAYOUT: TestFacts = { centerLayout: 'mid-tweeter-mid', centerOrientation: 'level' };
const REST: TestFacts = {
  ...{ enteredLeft: 3.3, enteredCenter: 2.9, enteredRight: 3.3 },
  ...{ playedContent: 'two-channel-music', upmixUse: 'on', upmixCommonPart: 'shares', screenKind: 'solid' },
  ...{ responseLeft: 'even.txt', responseCenter: 'dull.txt', responseRight: 'even.txt' },
};
const chartsOf = (facts: TestFacts, report = reportOf()) =>
  buildCharts(auditOf([small('delay')], facts), report);

describe('the charts', () => {
  it('are all of them where all is known, each drawn under its own name', () => {
    const seats = ['left end', 'middle', 'right end'].map((name) => ({
      name,
      main: name === 'middle',
      yM: 3,
    }));
    const cause = {
      ...{ title: 'delay', confidence: 'likely', priorDb: 0, sharedDb: 0, decibans: 3 },
      groups: [{ id: 'g', title: 'g', decibans: 3, rules: [], note: '' }],
    };
    const charts = chartsOf(
      { ...ROOM, ...LAYOUT, ...REST },
      reportOf({ seats, told: ['centerLayout'], causes: [cause] }),
    );
    expect(charts.map(({ id }) => id)).toEqual([
      'room-above',
      'room-side',
      'off-axis',
      'arrivals',
      'comb',
      'stage',
      'screen',
      'tone',
    ]);
    for (const chart of charts) expect(drawChart(chart)).toContain(`<title id="${chart.id}-title">`);
  });
  it('are none where nothing is known', () => {
    expect(chartsOf({})).toEqual([]);
  });
  it('are those of what is known alone', () => {
    expect(chartsOf(ROOM).map(({ id }) => id)).toEqual(['room-above', 'room-side']);
  });
});
