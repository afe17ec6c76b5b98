/** Every chart whose data is known, in the order of a page. */
import type { Audit } from '../../reasoning/audit.js';
import type { Report } from '../report-types.js';
import { arrivalChart, combChart } from './arrivals.js';
import type { Chart } from './chart.js';
import { knownIn } from './known.js';
import { offAxisChart } from './off-axis.js';
import { planChart, sideChart } from './room.js';
import { screenChart } from './screen.js';
import { stageChart } from './stage.js';
import { toneChart } from './tone.js';

export type { Chart } from './chart.js';

/** @param report of the same audit: its words and units are those of the page around the charts */
export function buildCharts({ book, view }: Audit, report: Report): readonly Chart[] {
  const ask = knownIn(book);
  const charts = [
    planChart(ask, book, report),
    sideChart(ask, book, report),
    offAxisChart(ask, report),
    arrivalChart(ask, report),
    combChart(ask, report),
    stageChart(ask, view, report),
    screenChart(ask, view, report),
    toneChart(ask),
  ];
  return charts.filter((chart) => chart !== undefined);
}
