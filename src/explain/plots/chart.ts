/**
 * What a chart shows, as data: numbers in the units of its axes, words and a table. How it is drawn is the
 * business of `svg/`. Every number comes from the acoustics or from the report; nothing is computed twice.
 */
import type { Picture } from '../../rules/cause.js';

export type ChartId = Picture | 'recorded-arrivals' | 'recorded-tone' | 'recorded-clarity';

export interface ChartTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

interface ChartBase {
  readonly id: ChartId;
  readonly title: string;
  /** What is to be seen, in one or two sentences computed from the same numbers. */
  readonly says: string;
  /** How it was made and what it leaves out; what was assumed. Empty when there is nothing to say. */
  readonly notes: readonly string[];
  readonly table: ChartTable;
}

/** x and y in the units of the axes. */
export type XY = readonly [x: number, y: number];

export interface Tick {
  readonly at: number;
  /** Empty for a line without a number. */
  readonly text: string;
}

export interface Axis {
  /** With its unit: "frequency (Hz)". */
  readonly label: string;
  readonly scale: 'log' | 'linear';
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly Tick[];
}

export interface Curve {
  readonly name: string;
  readonly points: readonly XY[];
  /** A mark at each point: for values that are bands and no continuous curve. */
  readonly marked: boolean;
}

/** A value that means something, drawn across the plot and named. */
export interface Threshold {
  readonly at: number;
  readonly name: string;
}

export interface LineChart extends ChartBase {
  readonly kind: 'lines';
  readonly x: Axis;
  readonly y: Axis;
  readonly curves: readonly Curve[];
  readonly thresholds: readonly Threshold[];
}

interface Bar {
  readonly label: string;
  readonly value: number;
  readonly text: string;
}

/** Horizontal bars in groups, from zero. */
export interface BarChart extends ChartBase {
  readonly kind: 'bars';
  readonly x: Axis;
  readonly groups: readonly { readonly label: string; readonly bars: readonly Bar[] }[];
  readonly thresholds: readonly Threshold[];
}

/** Meters. From above x is to the right and y back from the picture; from the side x is back and y is up. */
export type RoomItem =
  | { readonly kind: 'seat'; readonly at: XY; readonly name: string; readonly main: boolean }
  | { readonly kind: 'loudspeaker'; readonly at: XY; readonly name: string; readonly center: boolean }
  | { readonly kind: 'picture'; readonly from: XY; readonly to: XY; readonly name: string }
  | { readonly kind: 'obstacle'; readonly from: XY; readonly to: XY; readonly name: string }
  | {
      readonly kind: 'line';
      readonly role: 'sight' | 'axis' | 'bounce' | 'floor';
      readonly points: readonly XY[];
      readonly name: string;
    };

export interface RoomChart extends ChartBase {
  readonly kind: 'room';
  /** Up on the page is forward, or up in the room. */
  readonly view: 'above' | 'side';
  readonly items: readonly RoomItem[];
  readonly scaleBar: { readonly lengthM: number; readonly text: string };
}

export type Chart = LineChart | BarChart | RoomChart;
