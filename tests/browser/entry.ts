/** What a page in a browser does with a case, as one script: read, audit, report, converse. */

import { buildCharts } from '../../src/explain/plots/index.js';
import { renderHtml } from '../../src/explain/render/html.js';
import { renderText } from '../../src/explain/render/text.js';
import { buildReport } from '../../src/explain/report.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { responseFrom } from '../../src/facts/responses.js';
import { begin, reply } from '../../src/interview/conversation.js';
import { promptOf } from '../../src/interview/screens.js';
import { audit } from '../../src/reasoning/audit.js';

export async function reports(caseText: string, files: Readonly<Record<string, string>>) {
  const { book } = readCase(caseText, { readResponse: (path) => responseFrom(files[path] ?? '') });
  const audited = await audit(book);
  const report = buildReport(audited);
  return {
    json: JSON.stringify(report),
    html: renderHtml(report, { charts: buildCharts(audited, report) }),
    text: renderText(report),
    again: writeCase(book),
  };
}

export function talk(lines: readonly string[]): string {
  const start = begin(EMPTY_BOOK, { full: false, now: () => 0 });
  return promptOf(lines.reduce((state, line) => reply(state, line), start)).ask;
}
