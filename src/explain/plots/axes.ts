/** Axes that the charts share. */
import { quantityText } from '../words.js';
import type { Axis, ChartTable, Curve, Tick, XY } from './chart.js';

/** Numbers that audio people expect on a frequency axis, Hz. */
const NAMED_HZ: readonly number[] = [20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000];
const LINED_HZ: readonly number[] = [1, 10, 100, 1000, 10_000].flatMap((decade) =>
  [1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => n * decade),
);

const hertz = (hz: number): string => (hz < 1000 ? String(hz) : `${hz / 1000}k`);

export function frequencyAxis(from: number, to: number): Axis {
  const ticks = LINED_HZ.filter((hz) => hz >= from && hz <= to).map(
    (at): Tick => ({ at, text: NAMED_HZ.includes(at) || at === to ? hertz(at) : '' }),
  );
  return { label: 'frequency (Hz)', scale: 'log', from, to, ticks };
}

export function linearAxis(
  label: string,
  from: number,
  to: number,
  step: number,
  text: (at: number) => string = signedText,
): Axis {
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  const ticks = Array.from({ length: count }, (_, i): Tick => {
    const at = (first + i) * step;
    return { at, text: text(at) };
  });
  return { label, scale: 'linear', from, to, ticks };
}

/** A minus as long as a plus is wide. */
export function signedText(value: number): string {
  const text = String(Number(Math.abs(value).toFixed(2)));
  return value < 0 && text !== '0' ? `−${text}` : text;
}

/** Around all values and zero, at least `least` wide to each side given, on whole steps. */
export function levelAxis(
  label: string,
  values: readonly number[],
  { step, atLeast }: { step: number; atLeast: readonly [number, number] },
): Axis {
  const low = values.reduce((min, value) => Math.min(min, value), atLeast[0]);
  const high = values.reduce((max, value) => Math.max(max, value), atLeast[1]);
  return linearAxis(label, Math.floor(low / step) * step, Math.ceil(high / step) * step, step);
}

/** A curve of typed arrays between two x, both ends included: there straight between its points. */
export function pairsBetween(xs: ArrayLike<number>, ys: ArrayLike<number>, from: number, to: number): XY[] {
  const all = Array.from(xs, (x, i): XY => [x, ys[i] as number]);
  const at = (x: number): XY[] => {
    const y = valueAt(all, x);
    return y === undefined ? [] : [[x, y]];
  };
  return [...at(from), ...all.filter(([x]) => x > from && x < to), ...at(to)];
}

/** y of a curve at x, straight between its points. */
export function valueAt(points: readonly XY[], x: number): number | undefined {
  const next = points.findIndex(([at]) => at >= x);
  const after = points[next];
  if (after === undefined) return undefined;
  const before = points[next - 1];
  if (after[0] === x || before === undefined) return after[0] === x ? after[1] : undefined;
  return before[1] + ((x - before[0]) / (after[0] - before[0])) * (after[1] - before[1]);
}

/** Third octaves of the voice range by the names of the bands, Hz. */
export const VOICE_BANDS_HZ: readonly number[] = [
  200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000,
];

/** As exact as a curve is read: two figures. */
export const nearHz = (hz: number): string => quantityText(Number(hz.toPrecision(2)), 'Hz', 'metric');

export const tenth = (value: number): string => signedText(Number(value.toFixed(1)));

/** The curves as a table, a row for each of these frequencies; a curve that ends before one counts by its end. */
export const curvesTable = (
  caption: string,
  frequenciesHz: readonly number[],
  curves: readonly Curve[],
): ChartTable => ({
  caption,
  head: ['Hz', ...curves.map(({ name }) => name)],
  rows: frequenciesHz.map((hz) => [
    String(hz),
    ...curves.map(({ points }) =>
      tenth(valueAt(points, Math.min(hz, points.at(-1)?.[0] ?? hz)) ?? Number.NaN),
    ),
  ]),
});
