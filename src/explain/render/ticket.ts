/** Half a page for the next colleague: complaint, verdict, what was told and tried, next step, open questions. */
import { factSpec } from '../../facts/catalog.js';
import { sureSentence } from '../confidence.js';
import { type Block, heading, type Line, pairs, withoutEmpty } from '../document.js';
import { documentText } from '../document-text.js';
import { evidenceLine, titleLine, toldLine } from '../report-sections.js';
import type { Report, ReportTold } from '../report-types.js';
import { PLAIN_TEXT, type TextOptions } from '../terminal.js';
import { capital, howText, listText, minutesText, sentence } from '../words.js';

/** Lines of each kind that half a page has room for. */
const TOLD = 6;
const EVIDENCE = 3;
const STEPS = 2;
const OPEN = 3;
const NOT_KNOWN = howText('unknown');

export function renderTicket(report: Report, options: Partial<TextOptions> = {}): string {
  const { headline, leader } = report.verdict;
  const cause = report.causes.find((each) => each.id === leader);
  const speaking = (cause?.evidence ?? []).filter((item) => item.speaks !== 'neither').slice(0, EVIDENCE);
  const rows: [string, Line][] = [
    ...(report.words ? [row('In words', `“${report.words.replace(/\s+/g, ' ')}”`)] : []),
    row('Complaint', complaintText(report)),
    row('Verdict', [{ strong: sentence(headline) }, ` ${sureSentence(report.verdict)}`]),
    ...lines('Evidence', speaking.map(evidenceLine)),
    row('Told', toldText(report)),
    ...triedRows(report),
    ...lines(
      'Next',
      report.plan
        .slice(0, STEPS)
        .map((step) => [step.title, ` (${step.effort})`, ...cautionText(step.cautions)].join('')),
    ),
    ...lines(
      'Open',
      report.unknown.slice(0, OPEN).map((each) => `${capital(each.label)} (${minutesText(each.minutes)})`),
    ),
    ...lines(
      'Clash',
      report.contradictions.map(({ text }) => text),
    ),
    ...report.notes.slice(0, 2).map((note, i) => row(i === 0 ? 'Notes' : '', note.replace(/\s+/g, ' '))),
  ];
  const blocks: Block[] = [heading(1, titleLine(report)), pairs(rows)];
  return documentText(withoutEmpty(blocks), { ...PLAIN_TEXT, ...options });
}

/** Home tests that were done, and remedies that did not help: a colleague need not ask for either again. */
function triedRows(report: Report): [string, Line][] {
  const tests = report.told.filter((fact) => isTry(fact) && fact.how !== NOT_KNOWN).map(toldLine);
  const shown = tests.slice(0, TOLD).join('; ');
  const rest = tests.length > TOLD ? `; ${tests.length - TOLD} more` : '';
  const none = tests.length > 0 ? 'no remedy yet' : 'nothing yet';
  return [
    ...(tests.length > 0 ? [row('Tested', `${shown}${rest}.`)] : []),
    row('Tried', report.tried.length > 0 ? `${listText(report.tried)}.` : none),
  ];
}

/** Something the owner did and heard the result of. */
const isTry = ({ fact }: ReportTold): boolean => factSpec(fact).family === 'tests' || fact === 'triedTrim';

const row = (label: string, line: Line): [string, Line] => [label, line];
const lines = (label: string, list: readonly string[]): [string, Line][] =>
  list.map((text, i) => row(i === 0 ? label : '', text));

function complaintText(report: Report): string {
  if (report.complaints.length === 0) return 'none told';
  return `${capital(listText(report.complaints.map((complaint) => complaint.title)))}.`;
}

/** What was told, measured values first, then what the leader rests on. */
function toldText(report: Report): string {
  const used = new Set(
    report.causes.find((cause) => cause.id === report.verdict.leader)?.evidence.flatMap((item) => item.facts),
  );
  const known = report.told.filter((fact) => fact.how !== NOT_KNOWN && !isTry(fact));
  const first = known.filter((fact) => used.has(fact.fact));
  const shown = [...first, ...known.filter((fact) => !used.has(fact.fact))].slice(0, TOLD);
  const rest = report.told.filter((fact) => !isTry(fact)).length - shown.length;
  if (shown.length === 0) return 'nothing yet';
  return `${shown.map(toldLine).join('; ')}${rest > 0 ? `; ${rest} more` : ''}.`;
}

const cautionText = (cautions: readonly string[]): string[] =>
  cautions.length > 0 ? [` Caution: ${cautions.join(' ')}`] : [];
