import { beforeAll, describe, expect, it } from 'vitest';
import { loadCases } from '../../../eval/load-cases.js';
import { valueAt } from '../../../src/explain/plots/axes.js';
import type { BarChart, Chart, LineChart, RoomChart } from '../../../src/explain/plots/chart.js';
import { drawChart } from '../../../src/explain/plots/svg/index.js';
import { told } from '../../../src/facts/book.js';
import { calcJson } from '../../support/calc.js';
import { pageOf, type ShippedPage } from '../../support/shippedPages.js';
import { LOBING, SPARSE } from '../books.js';
import { curvesOf, scalesOf, tenthOfAPixel } from './readBack.js';

/** Between them they show every picture. */
const NAMES = [
  'demo',
  'delay-never-set',
  'delay-powered-center',
  'spread-off-few-facts',
  'screen-loss-center-only',
  'correction-mismatch-measured',
  'timbre-measured',
  'twin-centers-above-and-below',
  'near-surface-bare-tiles',
];
let pages: readonly ShippedPage[] = [];
beforeAll(() => {
  const cases = loadCases().filter(({ name }) => NAMES.includes(name));
  pages = [...cases.map(({ name, book }) => pageOf(name, book)), pageOf('lobing', LOBING)];
}, 120_000);

function each<T extends Chart>(
  id: Chart['id'],
  claim: (chart: T, page: ShippedPage, svg: string) => void,
): void {
  const found = pages.flatMap((page) =>
    page.charts.filter((chart) => chart.id === id).map((chart) => ({ page, chart: chart as T })),
  );
  expect(found.length, `no case shows ${id}`).toBeGreaterThan(0);
  for (const { page, chart } of found) claim(chart, page, drawChart(chart));
}

const deepest = (points: readonly (readonly [number, number])[]) =>
  points.reduce((least, point) => (point[1] < least[1] ? point : least), points[0] ?? [0, 0]);

describe('off axis: what is drawn is what the report says', () => {
  it('the deepest point of each curve is the dip of that seat', () => {
    each<LineChart>('off-axis', (chart, { report }, svg) => {
      const drawn = curvesOf(svg, true);
      chart.curves.forEach((curve, i) => {
        const seat = report.seats.find(({ name }) => curve.name.startsWith(name));
        if (!seat || seat.dipDb === null || seat.dipDb > -0.5 || seat.dipDb <= -20) return;
        const points = drawn[i] ?? [];
        const tolerance = 0.05 + tenthOfAPixel(svg);
        expect(Math.abs(deepest(points)[1] - seat.dipDb)).toBeLessThan(tolerance);
        expect(Math.abs((valueAt(points, seat.dipHz ?? 0) ?? 99) - seat.dipDb)).toBeLessThan(tolerance);
      });
    });
  });

  it('calc off-axis says the same', async () => {
    const { charts, report } = pageOf('lobing', LOBING);
    const chart = charts.find(({ id }) => id === 'off-axis') as LineChart;
    const end = report.seats[0];
    const { dipDb, dipHz } = await calcJson('off-axis', {
      layout: 'mid-tweeter-mid',
      spacingM: told(LOBING, 'centerDriverSpacing'),
      crossoverHz: 2500,
      azimuthDeg: Math.abs(end?.azimuthDeg ?? 0),
      distanceM: end?.distanceM ?? 3,
    });
    const worst = curvesOf(drawChart(chart), true)
      .map(deepest)
      .sort((a, b) => a[1] - b[1])[0] ?? [0, 0];
    expect(worst[1]).toBeCloseTo(Number(dipDb), 1);
    expect(worst[0] / Number(dipHz)).toBeCloseTo(1, 1);
  });

  it('the sentence names the worst seat with its dip', () => {
    const { charts } = pageOf('lobing', LOBING);
    expect(charts.find(({ id }) => id === 'off-axis')?.says).toMatch(
      /^The seat “left end” loses \d+(\.\d)? dB near \d(\.\d)? kHz; the seat “middle” loses nothing to speak of\.$/,
    );
  });
});

describe('arrival bars are the arrivals of the report', () => {
  it('center against the mean of the mains at every seat', () => {
    each<BarChart>('arrivals', (chart, { report }) => {
      for (const { label, bars } of chart.groups) {
        const [left = 0, center = 0, right = 0] = bars.map(({ value }) => value);
        const seat = report.seats.find(({ name }) => name === label);
        expect(center - (left + right) / 2).toBeCloseTo(seat?.centerMinusMainsMs ?? Number.NaN, 6);
        expect(Math.min(left, center, right)).toBe(0);
      }
    });
  });

  it('each bar is as long as its number', () => {
    each<BarChart>('arrivals', (chart, _, svg) => {
      const { x } = scalesOf(svg, false);
      const bars = [...svg.matchAll(/<rect class="c-bar[^"]*" x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g)];
      const values = chart.groups.flatMap((group) => group.bars.map(({ value }) => value));
      expect(bars.length).toBe(values.length);
      bars.forEach(([, start, width], i) => {
        const value = values[i] ?? 0;
        const drawn = x(Number(start) + Number(width)) - x(Number(start));
        // A bar of nothing is still seen: it is one unit wide.
        expect(Math.abs(drawn - value)).toBeLessThan((x(1) - x(0)) * 1.01);
        if (Number(width) > 1) expect(Math.abs(drawn - value)).toBeLessThan((x(1) - x(0)) * 0.11);
      });
    });
  });
});

describe('other curves are what the calculators say', () => {
  it('the stage: image angles of calc upmix', async () => {
    const page = pages.find(({ name }) => name === 'spread-off-few-facts');
    const chart = page?.charts.find(({ id }) => id === 'stage') as LineChart;
    const drawn = curvesOf(drawChart(chart), false);
    const [straight = [], now = []] = drawn;
    for (const panDeg of [0, 20, 40, 60, 90]) {
      const at = (points: readonly (readonly [number, number])[]): number =>
        points.find(([pan]) => Math.abs(pan - panDeg) < 0.5)?.[1] ?? Number.NaN;
      const full = await calcJson('upmix', { panDeg, extraction: 1 });
      const none = await calcJson('upmix', { panDeg, extraction: 0 });
      expect(at(now)).toBeCloseTo(Number(full.energyDeg), 1);
      expect(at(straight)).toBeCloseTo(Number(none.energyDeg), 1);
    }
  });

  it('the screen: losses of calc screen', async () => {
    const page = pages.find(({ name }) => name === 'screen-loss-center-only') as ShippedPage;
    const chart = page.charts.find(({ id }) => id === 'screen') as LineChart;
    const fact = (id: Parameters<typeof told>[1]): number | undefined =>
      told(page.audit.book, id) as number | undefined;
    expect(fact('screenHoleDiameter')).toBeTypeOf('number');
    const [lost = []] = curvesOf(drawChart(chart), true);
    const some = lost.filter((_, i) => i % 20 === 0);
    const { lossDb } = await calcJson('screen', {
      kind: 'perforated',
      holeDiameterM: fact('screenHoleDiameter'),
      holesPerM2: fact('screenHolesPerArea') ?? 59_200,
      thicknessM: fact('screenThickness') ?? 0.0003,
      frequenciesHz: some.map(([hz]) => hz),
    });
    some.forEach(([, db], i) => {
      expect(-db).toBeCloseTo((lossDb as number[])[i] ?? Number.NaN, 1);
    });
  });

  it('the tone: bands and worst band of the evidence', () => {
    each<LineChart>('tone', (chart, { audit }, svg) => {
      const now = chart.curves.findIndex(({ name }) => name === 'now');
      const drawn = curvesOf(svg, true)[now] ?? [];
      const worst = drawn.reduce(
        (most, point) => (Math.abs(point[1]) > Math.abs(most[1]) ? point : most),
        [0, 0],
      );
      expect(Math.abs(worst[1])).toBeCloseTo(Number(audit.view.read('toneWorstBandDb').value), 1);
      expect(worst[0] / Number(audit.view.read('toneWorstBandHz').value)).toBeCloseTo(1, 1);
    });
  });

  it('the comb: its ripple is what its sentence says', () => {
    each<LineChart>('comb', (chart) => {
      const levels = chart.curves[0]?.points.map(([, level]) => level) ?? [];
      const ripple = Math.max(...levels) - Math.min(...levels);
      expect(chart.says).toContain(` ${Number(ripple.toFixed(1))} dB from peak to dip as set now`);
      expect(chart.curves[0]?.points.length).toBeGreaterThan(700);
    });
  });
});

describe('the room is to scale', () => {
  it('the mains stand as far apart as told, by the scale bar', () => {
    each<RoomChart>('room-above', (chart, _, svg) => {
      const [, start = '0', end = '0'] =
        /class="c-scale" d="M([\d.]+),[\d.]+V[\d.]+H([\d.]+)/.exec(svg) ?? [];
      const perMeter = (Number(end) - Number(start)) / chart.scaleBar.lengthM;
      const boxes = [...svg.matchAll(/class="c-speaker" x="([\d.-]+)"/g)].map((match) => Number(match[1]));
      const places = chart.items.flatMap((item) =>
        item.kind === 'loudspeaker' && !item.center ? [item.at[0]] : [],
      );
      const baseM = Math.max(...places) - Math.min(...places);
      expect((Math.max(...boxes) - Math.min(...boxes)) / perMeter).toBeCloseTo(baseM, 1);
      const seats = [...svg.matchAll(/<circle class="c-seat[^"]*" cx="([\d.]+)" cy="([\d.]+)"/g)];
      expect(seats.length).toBe(chart.items.filter(({ kind }) => kind === 'seat').length);
    });
  });

  it('from the side the ray off the floor leaves as it came', () => {
    each<RoomChart>('room-side', ({ items }) => {
      const bounce = items.find((item) => item.kind === 'line' && item.role === 'bounce');
      if (bounce?.kind !== 'line') return;
      const [[x0, z0] = [0, 0], [x1] = [0, 0], [x2, z2] = [0, 0]] = bounce.points;
      expect(z0 / (x1 - x0)).toBeCloseTo(z2 / (x2 - x1), 9);
    });
  });
});

describe('every drawing', () => {
  it('has a name and a description first, a role, no style attribute, and one decimal at most', () => {
    for (const { charts } of pages) {
      for (const chart of charts) {
        const svg = drawChart(chart);
        expect(svg).toMatch(
          new RegExp(
            `^<svg class="c-plot" viewBox="0 0 400 [\\d.]+" role="img" aria-labelledby="${chart.id}-title ${chart.id}-desc"><title id="${chart.id}-title">[^<]+</title><desc id="${chart.id}-desc">[^<]+</desc>`,
          ),
        );
        expect(svg).not.toMatch(/ style=|NaN|Infinity|undefined/);
        expect(
          [...svg.matchAll(/ (?:x|y|x1|x2|y1|y2|cx|cy|r|width|height|d)="([^"]*)"/g)].join(' '),
        ).not.toMatch(/\d\.\d\d/);
        expect(chart.table.rows.length).toBeGreaterThan(0);
        for (const row of chart.table.rows) expect(row.length).toBe(chart.table.head.length);
        expect(JSON.stringify(chart.table)).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  it('tells its curves apart by dashes and names, not by color alone', () => {
    for (const { charts } of pages) {
      for (const chart of charts) {
        if (chart.kind !== 'lines') continue;
        const svg = drawChart(chart);
        const dashes = [...svg.matchAll(/<path class="c-line[^"]*"(?: stroke-dasharray="([^"]*)")?/g)].map(
          (match) => match[1] ?? 'solid',
        );
        expect(new Set(dashes).size).toBe(chart.curves.length);
        expect(svg.match(/class="c-name/g)).toHaveLength(chart.curves.length);
      }
    }
  });

  it('is left out where its data is not known', () => {
    expect(pageOf('sparse', SPARSE).charts.map(({ id }) => id)).toEqual([]);
    const alone = pageOf('lobing', {
      ...LOBING,
      answers: new Map([...LOBING.answers].filter(([id]) => id !== 'centerLayout')),
    });
    expect(alone.charts.map(({ id }) => id)).not.toContain('off-axis');
    expect(alone.charts.map(({ id }) => id)).toContain('room-above');
  });
});
