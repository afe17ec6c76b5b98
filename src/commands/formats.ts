/** Formats of a report, by the name that is typed. Only the renderer that is asked for is loaded. */
import type { Report } from '../explain/report-types.js';
import type { TextOptions } from '../explain/terminal.js';
import type { Audit } from '../reasoning/audit.js';

export const FORMATS = ['text', 'markdown', 'html', 'bbcode', 'ticket', 'json'] as const;
export type Format = (typeof FORMATS)[number];

export interface Rendering {
  readonly report: Report;
  /** The page draws its plots from it. */
  readonly audit: Audit;
  readonly text: TextOptions;
  /** The case as it stands on the command line, for the next command. */
  readonly caseName: string;
  /** The text report with all its parts. */
  readonly long?: boolean;
}

export async function render(
  format: Format,
  { report, audit, text, caseName, long = false }: Rendering,
): Promise<string> {
  switch (format) {
    case 'text':
      return (await import('../explain/render/text.js')).renderText(report, { ...text, caseName, long });
    case 'markdown':
      return (await import('../explain/render/markdown.js')).renderMarkdown(report);
    case 'html':
      return pageOf(report, audit);
    case 'bbcode':
      return (await import('../explain/render/bbcode.js')).renderBbcode(report);
    case 'ticket':
      return (await import('../explain/render/ticket.js')).renderTicket(report, text);
    case 'json':
      return (await import('../explain/render/json.js')).renderJson(report);
  }
}

async function pageOf(report: Report, audit: Audit): Promise<string> {
  const { renderHtml } = await import('../explain/render/html.js');
  const { buildCharts } = await import('../explain/plots/index.js');
  return renderHtml(report, { charts: buildCharts(audit, report) });
}
