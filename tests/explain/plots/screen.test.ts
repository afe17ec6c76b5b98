/** The screen: what it takes, what a shelf gives back, and no plot where there is no sheet or it is not known. */
import { describe, expect, it } from 'vitest';
import { massLawDb } from '../../../src/acoustics/screen.js';
import { valueAt } from '../../../src/explain/plots/axes.js';
import type { LineChart } from '../../../src/explain/plots/chart.js';
import { screenChart } from '../../../src/explain/plots/screen.js';
import { quantityText } from '../../../src/explain/words.js';
import type { TestFacts } from '../../support/causeClaims.js';
import { reportOf, system } from './small.js';

const chartOf = (facts: TestFacts): LineChart | undefined => {
  const { ask, view } = system(facts);
  return screenChart(ask, view, reportOf());
};
/** Vinyl without holes weighs 0.4 kg/m2 and takes more with every octave. */
const solidDb = (frequencyHz: number): number => massLawDb({ massKgM2: 0.4, frequencyHz });
const SOLID: TestFacts = { screenKind: 'solid', screenCompensation: 0 };
const PERFORATED: TestFacts = { screenKind: 'perforated', screenCompensation: 0 };

describe('the plot of the screen', () => {
  it('shows the loss from 500 Hz to 16 kHz downward', () => {
    const [lost] = chartOf(SOLID)?.curves ?? [];
    expect(lost?.points).toHaveLength(121);
    expect([lost?.points[0]?.[0], lost?.points.at(-1)?.[0]]).toEqual([500, expect.closeTo(16_000, 6)]);
    expect(valueAt(lost?.points ?? [], 4000)).toBeCloseTo(-solidDb(4000), 1);
    expect(lost?.points.every(([hz, db]) => Math.abs(db + solidDb(hz)) < 1e-9)).toBe(true);
  });
  it('shows what is left with a shelf: treble given back, and at most what the sentence says left', () => {
    const { curves, says } = chartOf(PERFORATED) as LineChart;
    const [lost, restored] = curves.map(({ points }) => points);
    expect(curves.map(({ name, marked }) => [name, marked])).toEqual([
      ['through the screen', false],
      ['with a shelf', false],
    ]);
    expect(valueAt(restored ?? [], 10_000)).toBeGreaterThan((valueAt(lost ?? [], 10_000) ?? 0) + 1);
    const [, atMost] = /leaves at most ([\d.]+) dB of it\.$/.exec(says) ?? [];
    const judged = restored?.filter(([hz]) => hz >= 1000).map(([, db]) => Math.abs(db)) ?? [];
    expect(Math.max(...judged)).toBeCloseTo(Number(atMost), 1);
    const [, gain] = /A high shelf of ([\d.]+) dB around \d/.exec(says) ?? [];
    expect(Number(gain)).toBeLessThanOrEqual(6);
  });
  it('says what is lost at 4 and at 10 kHz', () => {
    const db = (hz: number): string => quantityText(solidDb(hz), 'dB', 'metric');
    expect(chartOf(SOLID)?.says).toContain(
      `The screen takes ${db(4000)} at 4 kHz and ${db(10_000)} at 10 kHz.`,
    );
  });
  it('tells a row of the table at every band, the last one within the curve', () => {
    const { table, x, y } = chartOf(SOLID) as LineChart;
    expect(table.head).toEqual(['Hz', 'through the screen', 'with a shelf']);
    expect(table.rows.map(([hz]) => Number(hz))).toEqual([
      500, 1000, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000, 10_000, 12_500, 16_000,
    ]);
    expect(table.rows.at(-1)?.[1]).toBe(`−${solidDb(16_000).toFixed(1).replace(/\.0$/, '')}`);
    expect([x.from, x.to]).toEqual([500, 16_000]);
    expect(y.from).toBeLessThan(-solidDb(16_000) + 1e-9);
    expect(y.to).toBeGreaterThanOrEqual(3);
  });
  it('speaks of what is given back already, and draws it not', () => {
    const back = (screenCompensation: number) => chartOf({ screenKind: 'solid', screenCompensation })?.notes;
    expect(back(2)?.[1]).toBe('2 dB are given back already; that is not drawn.');
    expect(back(0)).toHaveLength(1);
    expect(back(-2)).toHaveLength(1);
  });
  it('says what was assumed of the holes', () => {
    expect(chartOf(PERFORATED)?.notes.at(-1)).toMatch(/^Not told and taken as usual: .*1\.02 mm/);
  });
  it('is left out where there is no screen, none is known, or holes are told that cannot be', () => {
    expect(chartOf({ screenKind: 'none' })).toBeUndefined();
    expect(chartOf({})).toBeUndefined();
    expect(
      chartOf({ ...PERFORATED, screenHoleDiameter: 0.02, screenHolesPerArea: 1_000_000 }),
    ).toBeUndefined();
  });
});
