/** The report for a terminal: details first; the verdict, what to do first and the next command last. */

import { briefAssumed, briefPlan, briefRest, briefSeamless, briefUnknown } from '../brief-sections.js';
import { sureSentence } from '../confidence.js';
import { type Block, heading, pairs, paragraph, withoutEmpty } from '../document.js';
import { documentText } from '../document-text.js';
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
} from '../report-sections.js';
import type { Report } from '../report-types.js';
import { shellWord } from '../shell-word.js';
import { PLAIN_TEXT, type TextOptions } from '../terminal.js';
import { sentence } from '../words.js';

export interface TextReportOptions extends Partial<TextOptions> {
  /** The case as it stands on the command line, for the next command. */
  readonly caseName?: string;
  /** Everything that is known, with how to find out, assumptions, sources and words; else what a call needs. */
  readonly long?: boolean;
}

export function renderText(report: Report, options: TextReportOptions = {}): string {
  const { caseName, long = false, ...text } = options;
  const blocks: Block[] = [
    heading(1, titleLine(report)),
    ...toldSection(report),
    ...contradictionSection(report),
    ...rankingSection(report),
    ...seatsSection(report),
    ...leadingSection(report),
    ...possibleSection(report),
    ...(long ? longRest(report) : briefly(report)),
    ...summary(report, caseName ?? 'CASE'),
  ];
  return documentText(withoutEmpty(blocks), { ...PLAIN_TEXT, ...text });
}

function longRest(report: Report): Block[] {
  return [
    ...planSection(report),
    ...unknownSection(report),
    ...assumedSection(report),
    ...seamlessSection(report),
    ...fineSection(report),
    ...openSection(report),
    ...sourcesSection(report),
    ...glossarySection(report),
  ];
}

function briefly(report: Report): Block[] {
  return [
    ...briefPlan(report),
    ...briefUnknown(report),
    ...briefAssumed(report),
    ...briefSeamless(report),
    ...briefRest(report),
  ];
}

/** Three lines where the eye rests, and the command that goes on from here. */
function summary(report: Report, caseName: string): Block[] {
  const { headline, first, separatedBy, leader } = report.verdict;
  const apart = separatedBy[0];
  return [
    heading(2, 'Verdict'),
    paragraph(
      { strong: sentence(headline) },
      ` ${sureSentence(report.verdict)}${apart ? ` ${apart.text}` : ''}`,
    ),
    pairs([
      ['First', sentence(first ?? 'There is nothing to do')],
      ['Next', [{ code: nextCommand(report, shellWord(caseName), leader) }]],
    ]),
  ];
}

/** What brings the owner on: the interview while it is open, the reasons once it is decided. */
function nextCommand(report: Report, caseName: string, leader: string): string {
  const open = report.verdict.undecided || report.next.kind === 'question';
  return open ? `center-audit interview ${caseName}` : `center-audit why ${caseName} ${leader}`;
}
