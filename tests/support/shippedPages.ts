/** The shipped cases as pages, made once for all tests that look at them. */
import { loadCases } from '../../eval/load-cases.js';
import { buildCharts, type Chart } from '../../src/explain/plots/index.js';
import { renderHtml } from '../../src/explain/render/html.js';
import { buildReport } from '../../src/explain/report.js';
import type { Report } from '../../src/explain/report-types.js';
import type { FactBook } from '../../src/facts/book.js';
import { type Audit, auditSync } from '../../src/reasoning/audit.js';
import type { Cause } from '../../src/rules/cause.js';
import { CAUSES } from '../../src/rules/index.js';

export interface ShippedPage {
  readonly name: string;
  readonly audit: Audit;
  readonly report: Report;
  readonly charts: readonly Chart[];
  readonly html: string;
}

export function pageOf(name: string, book: FactBook, causes: readonly Cause[] = CAUSES): ShippedPage {
  const audit = auditSync(book, undefined, { causes });
  const report = buildReport(audit);
  const charts = buildCharts(audit, report);
  return { name, audit, report, charts, html: renderHtml(report, { charts }) };
}

let pages: readonly ShippedPage[] | undefined;
export function shippedPages(): readonly ShippedPage[] {
  pages ??= loadCases().map(({ name, book }) => pageOf(name, book));
  return pages;
}

export function shippedPage(name: string): ShippedPage {
  const page = shippedPages().find((each) => each.name === name);
  if (!page) throw new Error(`no shipped case is called ${name}`);
  return page;
}

/** Six that show every section and every picture between them: decided and not, with and without plots. */
export const SHOWN_CASES = [
  'demo',
  'delay-never-set',
  'spread-off-few-facts',
  'screen-loss-center-only',
  'correction-mismatch-measured',
  'undecidable-mumble',
] as const;
