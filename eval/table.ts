/** Markdown tables and shares as the evaluation prints them. */
import { mean } from './metrics.js';

export type Row = readonly (string | number)[];

export const percent = (part: number): string => (Number.isNaN(part) ? '-' : `${(100 * part).toFixed(1)} %`);
export const share = (list: readonly boolean[]): number => mean(list.map((yes) => (yes ? 1 : 0)));

export function table(head: Row, rows: readonly Row[]): string {
  const line = (row: Row): string => `| ${row.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}
