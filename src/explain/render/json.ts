/** The report for other programs. The keys of the contract stand first in every object. */
import type { Report } from '../report-types.js';

/** One line, for JSON lines, or indented. What is not a finite number is null. */
export function renderJson(report: Report, options: { readonly indent?: boolean } = {}): string {
  return `${JSON.stringify(report, null, options.indent === false ? 0 : 2)}\n`;
}
