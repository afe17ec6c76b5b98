/** The pictures of recordings as a page of their own. */
import type { Trace } from '../../recording/measurement.js';
import { documentHtml } from '../document-html.js';
import { figure } from '../html/figure.js';
import { htmlPage } from '../html/shell.js';
import { recordingCharts } from './charts.js';
import { measurementBlocks, type NamedMeasurement } from './words.js';

export function measurementPage(
  list: readonly (NamedMeasurement & { readonly traces: readonly Trace[] })[],
): string {
  const parts = list.map((named, i) =>
    [
      `<div class="prose">${documentHtml(measurementBlocks(named))}</div>`,
      ...recordingCharts(named.measurement, named.traces).map((chart) =>
        // Several recordings on one page: the ids of their drawings must differ.
        figure(chart).replaceAll(chart.id, i === 0 ? chart.id : `${chart.id}-${i + 1}`),
      ),
    ].join('\n'),
  );
  return htmlPage({ title: 'Measured at the seat', body: `<main id="main">\n${parts.join('\n')}\n</main>` });
}
