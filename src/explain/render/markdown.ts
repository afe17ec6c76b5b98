/** The report in Markdown for forges and notes: the verdict first. */
import { heading, withoutEmpty } from '../document.js';
import { documentMarkdown } from '../document-markdown.js';
import {
  assumedSection,
  contradictionSection,
  fineSection,
  glossarySection,
  leadingSection,
  openSection,
  planSection,
  possibleSection,
  rankingSection,
  seamlessSection,
  seatsSection,
  sourcesSection,
  titleLine,
  toldSection,
  unknownSection,
  verdictSection,
} from '../report-sections.js';
import type { Report } from '../report-types.js';

export function renderMarkdown(report: Report): string {
  const blocks = [
    heading(1, titleLine(report)),
    ...verdictSection(report),
    ...rankingSection(report),
    ...leadingSection(report),
    ...planSection(report),
    ...possibleSection(report),
    ...toldSection(report),
    ...contradictionSection(report),
    ...seatsSection(report),
    ...unknownSection(report),
    ...assumedSection(report),
    ...seamlessSection(report),
    ...fineSection(report),
    ...openSection(report),
    ...sourcesSection(report),
    ...glossarySection(report),
  ];
  return documentMarkdown(withoutEmpty(blocks));
}
