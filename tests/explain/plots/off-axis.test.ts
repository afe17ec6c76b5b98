/** What each seat hears of the center: the main seat first, seats that hear the same in one curve. */
import { describe, expect, it } from 'vitest';
import type { LineChart, XY } from '../../../src/explain/plots/chart.js';
import { offAxisChart } from '../../../src/explain/plots/off-axis.js';
import { LIMITS } from '../../../src/rules/limits.js';
import { answering, level, reportOf, system } from './small.js';

interface Hears {
  readonly name: string;
  readonly main?: boolean;
  readonly dipDb: number;
  readonly dipHz?: number;
  readonly points?: readonly XY[];
}
const HZ = [200, 1000, 8000] as const;
/** By default a curve that lies as deep as the dip. */
const chartOf = (...seats: readonly Hears[]): LineChart | undefined =>
  offAxisChart(
    answering(
      seats.map(({ dipDb, dipHz, points }, place) => ({
        place,
        dip: { dipDb, dipHz, speechLossDb: 0, bearing: {} },
        points: points ?? level(-dipDb, ...HZ),
      })),
    ),
    reportOf({
      told: ['seatDistance', 'centerLayout'],
      seats: seats.map(({ name, main = false }) => ({ name, main })),
    }),
  );
const MAIN: Hears = { name: 'middle', main: true, dipDb: 0 };
const END: Hears = { name: 'end', dipDb: 6, dipHz: 2160 };
const namesOf = (chart: LineChart | undefined) => chart?.curves.map(({ name }) => name);

describe('off the axis', () => {
  it('the main seat has the first curve, then the seats come by what they lose', () => {
    expect(namesOf(chartOf({ name: 'near', dipDb: 2 }, END, MAIN))).toEqual(['middle', 'end', 'near']);
    expect(chartOf(END, MAIN)?.curves[1]?.points).toEqual(level(-6, ...HZ));
    expect(chartOf(END, MAIN)?.curves.every(({ marked }) => !marked)).toBe(true);
  });
  it('seats that hear the same share a curve, named after two or counted', () => {
    const twin = { ...END, name: 'window' };
    expect(namesOf(chartOf(MAIN, END, twin))).toEqual(['middle', 'end and window']);
    expect(namesOf(chartOf(MAIN, END, twin, { ...END, name: 'door' }))).toEqual(['middle', 'end and 2 more']);
    const like = (db: number): Hears => ({ ...END, name: 'like', points: level(db, ...HZ) });
    expect(namesOf(chartOf(MAIN, END, like(-6.04)))).toHaveLength(2);
    expect(namesOf(chartOf(MAIN, END, like(-6.06)))).toHaveLength(3);
    const elsewhere: Hears = { ...END, name: 'odd', points: [...level(-6, 200, 1000), [8000, -1]] };
    expect(namesOf(chartOf(MAIN, END, elsewhere))).toHaveLength(3);
  });
  it('four curves at most are drawn', () => {
    const others = [1, 2, 3, 4, 5].map((dipDb): Hears => ({ name: `seat ${dipDb}`, dipDb }));
    expect(namesOf(chartOf(MAIN, ...others))).toEqual(['middle', 'seat 5', 'seat 4', 'seat 3']);
  });
  it('the sentence tells of the worst seat, then of the main one, or of that alone', () => {
    expect(chartOf(MAIN, END)?.says).toBe(
      'The seat “end” loses 6 dB near 2.2 kHz; the seat “middle” loses nothing to speak of.',
    );
    expect(chartOf({ ...MAIN, dipDb: 7, dipHz: 1000 }, END)?.says).toBe(
      'The seat “middle” loses 7 dB near 1 kHz.',
    );
    expect(chartOf({ ...END, name: 'a' }, { ...END, name: 'b' })?.says).toBe(
      'The seat “a” loses 6 dB near 2.2 kHz.',
    );
  });
  it('the axis holds the lowest curve, though no deeper than rooms let it be', () => {
    const from = (dipDb: number) => chartOf(MAIN, { ...END, dipDb })?.y.from;
    expect([6, 9.5, 15.5, 40].map(from)).toEqual([-9, -12, -18, -21]);
    expect(chartOf(MAIN, END)?.y.to).toBe(3);
    expect([chartOf(MAIN, END)?.x.from, chartOf(MAIN, END)?.x.to]).toEqual([200, 8000]);
  });
  it('the borders are those of the rules, below the line', () => {
    expect(chartOf(MAIN, END)?.thresholds.map(({ at }) => at)).toEqual([
      -LIMITS.dipDb.clear,
      -LIMITS.dipDb.severe,
    ]);
  });
  it('the table tells each curve at third octaves', () => {
    const table = chartOf(MAIN, END)?.table;
    expect(table?.head).toEqual(['Hz', 'middle', 'end']);
    expect(table?.rows).toHaveLength(17);
    expect(table?.rows.find(([hz]) => hz === '1000')).toEqual(['1000', '0', '−6']);
  });
  it('a seat the report has no name for is counted', () => {
    const heard = [{ place: 0, dip: { dipDb: 6, dipHz: 1000 }, points: level(-6, ...HZ) }];
    const chart = offAxisChart(answering(heard), reportOf({ told: ['centerLayout'] }));
    expect(chart?.says).toContain('“seat 1”');
  });
  it('is not drawn where all is even, the layout was not told, or nothing can be computed', () => {
    expect(chartOf(MAIN, { name: 'end', dipDb: 0.04 })).toBeUndefined();
    expect(chartOf(MAIN, { name: 'end', dipDb: 0.06 })).toBeDefined();
    expect(chartOf({ ...MAIN, points: [...level(0, 200, 1000), [8000, -3]] })).toBeDefined();
    const heard = [{ dip: { dipDb: 6 }, points: level(-6, ...HZ) }];
    expect(
      offAxisChart(answering(heard), reportOf({ told: ['seatDistance'], seats: ['a'] })),
    ).toBeUndefined();
    expect(offAxisChart(answering(), reportOf({ told: ['centerLayout'] }))).toBeUndefined();
  });
  it('drivers side by side cancel for the end of the sofa and not in the middle', () => {
    const { ask } = system(
      {
        ...{ centerCount: 'one', centerLayout: 'mid-tweeter-mid', centerOrientation: 'level' },
        ...{ centerDriverSpacing: 0.34, centerCrossover: 2500 },
      },
      [
        { xM: 0, yM: 2.2 },
        { xM: 0.75, yM: 2.2 },
      ],
    );
    const chart = offAxisChart(ask, reportOf({ told: ['centerLayout'], seats: ['middle', 'end'] }));
    const [middle, end] = chart?.curves.map(({ points }) => Math.min(...points.map(([, db]) => db))) ?? [];
    expect(middle).toBeGreaterThan(-0.1);
    expect(end).toBeLessThan(-4);
    expect(chart?.curves[0]?.points.at(0)?.[0]).toBe(200);
    expect(chart?.curves[0]?.points.at(-1)?.[0]).toBe(8000);
    expect(chart?.notes[1]).toMatch(/^Not told and taken as usual: /);
  });
});
