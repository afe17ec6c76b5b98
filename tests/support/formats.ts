/** The report of a book and every format of it, for tests that look at whole reports. */
import { buildReport } from '../../src/explain/report.js';
import type { Report } from '../../src/explain/report-types.js';
import type { FactBook } from '../../src/facts/book.js';
import { auditSync } from '../../src/reasoning/audit.js';
import type { Cause } from '../../src/rules/cause.js';
import { CAUSES } from '../../src/rules/index.js';

export { renderJson } from '../../src/explain/render/json.js';
export { renderMarkdown } from '../../src/explain/render/markdown.js';
export { renderText } from '../../src/explain/render/text.js';
export { renderTicket } from '../../src/explain/render/ticket.js';

export const reportOn = (book: FactBook, causes: readonly Cause[] = CAUSES): Report =>
  buildReport(auditSync(book, undefined, { causes }));

/** Reports that are kept whole list every cause; they are made from these, so that a new cause does not touch them. */
export const KEPT_CAUSES: readonly Cause[] = CAUSES.slice(0, 30);
