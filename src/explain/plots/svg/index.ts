/** From chart data to markup. */
import type { Chart } from '../chart.js';
import { drawBars } from './bars.js';
import { drawLines } from './lines.js';
import { drawRoom } from './room.js';

export { drawRange } from './range.js';

export function drawChart(chart: Chart): string {
  switch (chart.kind) {
    case 'lines':
      return drawLines(chart);
    case 'bars':
      return drawBars(chart);
    case 'room':
      return drawRoom(chart);
  }
}
