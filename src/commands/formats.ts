/** Formats of a report, by the name that is typed. Only the renderer that is asked for is loaded. */
import type { Report } from '../explain/report-types.js';
import type { TextOptions } from '../explain/terminal.js';
import type { Audit } from '../reasoning/audit.js';

export const FORMATS = [
  'text',
  'markdown',
  'html',
  'bbcode',
  'forum',
  'forum-markdown',
  'ticket',
  'json',
] as const;
export type Format = (typeof FORMATS)[number];

interface Rendering {
  readonly report: Report;
  /** The page draws its plots from it. */
  readonly audit: Audit;
  readonly text: TextOptions;
  /** The case as it stands on the command line, for the next command. */
  readonly caseName: string;
  /** With all its parts. */
  readonly long?: boolean;
  /** Day of the audit, for a ticket. */
  readonly date?: string;
  /** One of several: its JSON is one line with its name in it. */
  readonly several?: boolean;
}

export async function render(
  format: Format,
  { report, audit, text, caseName, long = false, date, several = false }: Rendering,
): Promise<string> {
  switch (format) {
    case 'text':
      return (await import('../explain/render/text.js')).renderText(report, { ...text, caseName, long });
    case 'markdown':
      return (await import('../explain/render/markdown.js')).renderMarkdown(report, { long });
    case 'html':
      return pageOf(report, audit, long);
    case 'bbcode':
    case 'forum':
    case 'forum-markdown':
      return (await import('../explain/render/bbcode.js')).renderPost(report, {
        markup: MARKUPS[format],
        long,
      });
    case 'ticket':
      return (await import('../explain/render/ticket.js')).renderTicket(report, {
        ...text,
        reference: caseName,
        ...(date === undefined ? {} : { date }),
      });
    case 'json':
      return (await import('../explain/render/json.js')).renderJson(
        report,
        several ? { indent: false, caseName } : {},
      );
  }
}

/** A forum post in the markup of most boards, in Markdown, or in no markup at all. */
const MARKUPS = { bbcode: 'bbcode', 'forum-markdown': 'markdown', forum: 'plain' } as const;

async function pageOf(report: Report, audit: Audit, long: boolean): Promise<string> {
  const { renderHtml } = await import('../explain/render/html.js');
  const { buildCharts } = await import('../explain/plots/index.js');
  return renderHtml(report, { charts: buildCharts(audit, report), long });
}
