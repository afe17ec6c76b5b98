/** A chart on the page: what is to be seen, the drawing, and its numbers. */
import type { Chart } from '../plots/chart.js';
import { drawChart, drawRange } from '../plots/svg/index.js';
import type { RangeBar } from '../report-types.js';
import { capital } from '../words.js';
import { dataTable, details, esc, type Markup, p } from './markup.js';

export function figure(chart: Chart): Markup {
  return [
    `<figure id="figure-${chart.id}">`,
    `<figcaption><strong>${esc(chart.title)}</strong> ${esc(chart.says)}</figcaption>`,
    drawChart(chart),
    details(`The numbers`, `${chart.notes.map((note) => p(note, 'note')).join('')}${dataTable(chart.table)}`),
    '</figure>',
  ].join('\n');
}

export function rangeFigure(bar: RangeBar, id: string): Markup {
  return `<div class="range"><p>${esc(`${capital(bar.label)}: ${bar.valueText}, ${bar.grade}`)}</p>${drawRange(bar, id)}</div>`;
}
