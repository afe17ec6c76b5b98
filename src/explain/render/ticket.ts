/** Half a page for the next colleague: reference, the customer's words, verdict, what was done, next step, open points. */
import { factSpec } from '../../facts/catalog.js';
import { heading, type Line, labeled, pairs } from '../document.js';
import { documentText } from '../document-text.js';
import type { Report, ReportTold } from '../report-types.js';
import { headlineOf, titleOf } from '../sections/index.js';
import { effortOf } from '../sections/plan.js';
import { toldLine } from '../sections/rest.js';
import { evidenceText, leaderOf } from '../sections/verdict.js';
import { PLAIN_TEXT, type TextOptions } from '../terminal.js';
import { capital, howText, listText, sentence } from '../words.js';

export interface TicketOptions extends Partial<TextOptions> {
  /** Name of the case, by which it is found again. */
  readonly reference?: string;
  /** Day of the audit: "2026-11-30". */
  readonly date?: string;
}

/** What half a page has room for: lines of each kind, and characters of what a stranger wrote. */
const EVIDENCE = 2;
const DONE = 4;
const OPEN = 3;
const QUOTED = 220;
const NOTED = 160;
const NOT_KNOWN = howText('unknown');

export function renderTicket(report: Report, options: TicketOptions = {}): string {
  const { reference, date, ...text } = options;
  const [step] = report.plan;
  const rows: (readonly [string, Line])[] = [
    ...labeled(
      'Reference',
      [[reference, date].filter(Boolean).join(', ')].filter((each) => each !== ''),
    ),
    ...labeled('Customer', [report.words ? `“${cut(report.words, QUOTED)}”` : complaintText(report)]),
    ['Verdict', [{ strong: headlineOf(report) }, ` ${sureText(report)}`]],
    ...labeled('Because', evidenceLines(report)),
    ...labeled('Done', doneLines(report)),
    ...labeled(
      'Next',
      step && !report.solvedBy ? [`${step.title} (${effortOf(step)})`] : ['Nothing is left to do.'],
    ),
    ...labeled('Caution', report.solvedBy ? [] : (step?.cautions ?? [])),
    ...labeled('Open', report.solvedBy ? [] : openText(report)),
    ...labeled(
      'Conflict',
      report.solvedBy ? [] : report.contradictions.slice(0, 1).map(({ text: said }) => said),
    ),
    ...labeled(
      'Note',
      report.notes.slice(0, 1).map((note) => cut(note, NOTED)),
    ),
  ];
  return documentText([heading(1, titleOf(report)), pairs(rows)], { ...PLAIN_TEXT, ...text });
}

function cut(text: string, most: number): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length <= most ? line : `${line.slice(0, line.lastIndexOf(' ', most))} …`;
}

function sureText({ verdict, solvedBy, causes }: Report): string {
  if (solvedBy) {
    const leader = causes.find(({ id }) => id === verdict.leader);
    return leader ? `Most likely it was: ${sentence(leader.title)}` : '';
  }
  if (!verdict.undecided) return `${capital(verdict.confidence)}.`;
  return verdict.contenders.map(({ title, confidence }) => `${title} (${confidence})`).join('; ');
}

const evidenceLines = (report: Report): string[] =>
  report.verdict.undecided
    ? []
    : (leaderOf(report)?.evidence ?? [])
        .filter(({ speaks }) => speaks === 'for')
        .slice(0, EVIDENCE)
        .map(evidenceText);

/** Home tests with their results, and remedies that did not help: a colleague need not ask for either again. */
function doneLines({ told, trials }: Report): string[] {
  const tests = told.filter((fact) => isTry(fact) && fact.how !== NOT_KNOWN).map(toldLine);
  const done = [...trials.map(({ text }) => text), ...tests];
  if (done.length === 0) return ['Nothing yet.'];
  const rest = done.length - DONE;
  return [sentence([...done.slice(0, DONE), ...(rest > 0 ? [`${rest} more`] : [])].join('; '))];
}

/** Something the owner did and heard the result of. */
const isTry = ({ fact }: ReportTold): boolean => factSpec(fact).family === 'tests' || fact === 'triedTrim';

const complaintText = ({ complaints }: Report): string =>
  complaints.length === 0
    ? 'No complaint was told.'
    : sentence(listText(complaints.map(({ title }) => title)));

const openText = ({ unknown, plan }: Report): string[] => {
  const labels = unknown
    .filter(({ fact }) => fact !== plan[0]?.id)
    .slice(0, OPEN)
    .map(({ label }) => label);
  return labels.length === 0 ? [] : [`${capital(labels.join('; '))}.`];
};
