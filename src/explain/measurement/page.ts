/** Recordings in words and pictures, as a page of their own. */
import type { Trace } from '../../recording/measurement.js';
import type { Block } from '../document.js';
import { documentHtml } from '../document-html.js';
import { htmlPage } from '../html/shell.js';
import { recordingCharts } from './charts.js';
import { measurementBlocks, type NamedMeasurement } from './words.js';

export function measurementPage(
  list: readonly (NamedMeasurement & { readonly traces: readonly Trace[] })[],
): string {
  const parts = list.map((named, i) => {
    const charts = recordingCharts(named.measurement, named.traces);
    const html = documentHtml([
      ...measurementBlocks(named),
      ...charts.map((chart): Block => ({ kind: 'figure', chart })),
    ]);
    // Several recordings stand on one page: the ids of their drawings must differ.
    return i === 0 ? html : charts.reduce((text, { id }) => text.replaceAll(`${id}`, `${id}-${i + 1}`), html);
  });
  return htmlPage({
    title: 'Measured at the seat',
    body: `<main id="main">\n${parts.join('\n')}\n</main>`,
  });
}
