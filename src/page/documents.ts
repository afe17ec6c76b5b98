/** What can be taken along: the same documents as the command line writes, from the same audit. */
import { buildCharts } from '../explain/plots/index.js';
import { renderPost } from '../explain/render/bbcode.js';
import { renderHtml } from '../explain/render/html.js';
import { renderJson } from '../explain/render/json.js';
import { renderText } from '../explain/render/text.js';
import { renderTicket } from '../explain/render/ticket.js';
import { buildReport } from '../explain/report.js';
import type { Audit } from '../reasoning/audit.js';
import type { DocumentKind } from './protocol.js';

const COLUMNS = 80;
const TEXT = { width: COLUMNS, color: false, accessible: false } as const;
/** What a command line would call the case; the page has no files. */
const CASE_NAME = 'case.json';

export function documentOf(kind: Exclude<DocumentKind, 'case'>, audit: Audit, date: string): string {
  const report = buildReport(audit);
  switch (kind) {
    case 'page':
      return renderHtml(report, { charts: buildCharts(audit, report) });
    case 'forum':
      return renderPost(report, { markup: 'bbcode' });
    case 'forum-markdown':
      return renderPost(report, { markup: 'markdown' });
    case 'ticket':
      return renderTicket(report, { ...TEXT, date });
    case 'text':
      return renderText(report, { ...TEXT, caseName: CASE_NAME });
    case 'json':
      return renderJson(report);
  }
}
