/** The report as parts of a document. Renderers choose the parts and their order; the words are the same everywhere. */
import { nothingOwnText, sureSentence } from './confidence.js';
import {
  type Block,
  bullets,
  heading,
  type Item,
  type Line,
  numbered,
  pairs,
  paragraph,
  table,
} from './document.js';
import { askAgainLines } from './report-plan.js';
import type { Report, ReportCause, ReportEvidence, ReportStep, ReportTold } from './report-types.js';
import { seatTable } from './seat-table.js';
import { capital, listText, minutesText, named, plural, sentence } from './words.js';

/** Answers shown as `what you told us` where space is short. */
const TOLD_SHOWN = 10;
/** Steps of the plan told in full; later ones are named. */
const FULL_STEPS = 6;
const UNKNOWN_SHOWN = 8;
const RANKED_SHOWN = 6;

export function titleLine(report: Report): string {
  return report.title ? `Center loudspeaker audit: ${report.title}` : 'Center loudspeaker audit';
}

/** Verdict, how sure, and what tells the rest apart: the beginning of a page. */
export function verdictSection(report: Report): Block[] {
  const { headline, because, first, separatedBy } = report.verdict;
  return [
    paragraph({ strong: sentence(headline) }, ` ${sureSentence(report.verdict)} ${because}`),
    ...(first ? [paragraph({ strong: 'Do first: ' }, sentence(first))] : []),
    ...(separatedBy.length > 0
      ? [paragraph('What tells them apart:'), bullets(separatedBy.map((each) => each.text))]
      : []),
  ];
}

export function toldSection(report: Report): Block[] {
  const used = new Set(
    report.causes.filter((c) => c.place !== 'aside').flatMap((c) => c.evidence.flatMap((e) => e.facts)),
  );
  const telling = report.told.filter((fact) => used.has(fact.fact));
  const rest = report.told.length - Math.min(TOLD_SHOWN, telling.length);
  const answers = telling.slice(0, TOLD_SHOWN).map(toldLine);
  return [
    heading(2, 'What you told us'),
    ...(report.words ? [{ kind: 'quote', text: report.words } as const] : []),
    bullets([
      ...report.complaints.map((complaint) => `You hear: ${complaint.title}.`),
      ...report.notHeard.map((complaint) => `You do not hear: ${complaint.title}.`),
      ...answers,
      ...(rest > 0 ? [`And ${rest === 1 ? 'one more answer' : `${rest} more answers`}.`] : []),
      ...report.tried.map((title) => `Tried already: ${title}.`),
    ]),
  ];
}

export const toldLine = ({ label, value, how }: ReportTold): string =>
  value === how ? `${capital(label)}: ${value}` : `${capital(label)}: ${value} (${how})`;

export function contradictionSection(report: Report): Block[] {
  return [
    heading(2, 'What does not fit together'),
    bullets([...report.contradictions.map(({ text }) => text), ...report.remarks.map(sentence)]),
  ];
}

export function rankingSection(report: Report): Block[] {
  const shown = report.causes.filter((cause) => cause.verdict !== 'not-applicable').slice(0, RANKED_SHOWN);
  return [
    heading(2, 'Ranking'),
    {
      kind: 'bars',
      rows: shown.map((cause) => ({ share: cause.probability, label: cause.title, value: cause.confidence })),
    },
    paragraph('Several causes can be true at once, so the figures need not add up to 100%.'),
  ];
}

export function seatsSection(report: Report): Block[] {
  const { head, rows, notes } = seatTable(report);
  return [heading(2, 'Seats'), table(head, rows), ...notes.map((note) => paragraph(note))];
}

/** Found, computed, against, why, do, check. */
export function causeSection(cause: ReportCause, place: number): Block[] {
  const said = (items: readonly ReportEvidence[]): Line[] => items.map((item) => evidenceLine(item));
  const forIt = cause.evidence.filter((item) => item.speaks === 'for');
  const against = cause.evidence.filter((item) => item.speaks === 'against');
  const found = said(forIt.filter((item) => item.value === null));
  const computed = said(forIt.filter((item) => item.value !== null));
  const near = [...forIt, ...against].flatMap((item) => (item.range?.near ? [item.range] : []));
  const rows: [string, Line][] = [
    ['Sure', `${capital(cause.confidence)}.`],
    ['If true', `${capital(cause.severity)}: ${cause.severityText}.`],
    ...labeled('Found', found),
    ...labeled('Computed', computed),
    ...labeled('Against', said(against)),
    ...(forIt.length === 0 ? [['Found', nothingOwnText(cause)] as [string, Line]] : []),
    ['Why', whyLine(cause, forIt)],
  ];
  return [
    heading(3, `${place}. ${cause.title}`),
    pairs(rows),
    ...near.map((bar): Block => ({ kind: 'gauge', bar })),
    pairs(doRows(cause)),
  ];
}

/** One row a line, the label on the first alone. */
function labeled(label: string, lines: readonly Line[]): [string, Line][] {
  return lines.map((line, i): [string, Line] => [i === 0 ? label : '', line]);
}

export function evidenceLine(item: ReportEvidence): string {
  const assumed = item.assumed ? ', with assumptions' : '';
  return `${item.text} (${item.weightText}${assumed})`;
}

function whyLine(cause: ReportCause, forIt: readonly ReportEvidence[]): string {
  const reason = forIt[0]?.because;
  return reason ? `${cause.story} ${sentence(reason)}` : cause.story;
}

function doRows(cause: ReportCause): [string, Line][] {
  const open = cause.remedies.filter((remedy) => !remedy.tried);
  const first = open[0];
  const test = cause.confirm.find((confirm) => confirm.confirmed === null);
  return [
    ...labeled(
      'Do',
      open.map((remedy, i) => `${i + 1}. ${remedy.title} (${remedy.effort})`),
    ),
    ...(first ? [['Expect', first.expect] as [string, Line], ['Check', first.verify] as [string, Line]] : []),
    ...(test
      ? [
          [
            'Confirm',
            `${capital(test.label)} (${minutesText(test.minutes)}): ${listText(test.outcomes, 'or')}.`,
          ] as [string, Line],
        ]
      : []),
  ];
}

export function leadingSection(report: Report): Block[] {
  const leading = report.causes.filter((cause) => cause.place === 'leading');
  return [
    heading(2, leading.length === 1 ? 'The leading cause' : 'The leading causes'),
    ...leading.flatMap((cause, i) => causeSection(cause, i + 1)),
  ];
}

export function possibleSection(report: Report): Block[] {
  const possible = report.causes.filter((cause) => cause.place === 'possible');
  return [
    heading(2, 'Also possible'),
    bullets(possible.map((cause) => [{ strong: cause.title }, `: ${cause.confidence}. ${reasonOf(cause)}`])),
  ];
}

function reasonOf(cause: ReportCause): string {
  const best = cause.evidence.find((item) => item.speaks === 'for');
  return best?.text ?? 'Nothing of its own is known yet; the complaint fits.';
}

export function planSection(report: Report): Block[] {
  const full = report.plan.slice(0, FULL_STEPS);
  const rest = report.plan.slice(FULL_STEPS);
  return [
    heading(2, 'What to do, in this order'),
    { kind: 'list', style: 'check', items: full.map(stepItem) },
    ...(rest.length > 0
      ? [paragraph('If that does not help:'), bullets(rest.map((step) => `${step.title} (${step.effort}).`))]
      : []),
    ...askAgainLines(report).map((line) => paragraph(line)),
  ];
}

/** One step of the plan with its cautions right beside it. */
export function stepItem(step: ReportStep): Item {
  return {
    line: [{ strong: step.title }, ` (${step.effort})`],
    below: [
      sentence(step.because),
      ...step.cautions.map((caution) => `Caution: ${caution}`),
      ...(step.steps.length > 0 ? [stepsLine(step)] : []),
      ...(step.expect ? [`Expect: ${step.expect}`] : []),
      ...(step.verify ? [`Check: ${step.verify}`] : []),
    ],
  };
}

const stepsLine = (step: ReportStep): string =>
  `${step.kind === 'question' ? 'How to find out' : 'How'}: ${step.steps.join(' ')}`;

export function unknownSection(report: Report, most = UNKNOWN_SHOWN): Block[] {
  const titles = new Map(report.causes.map((cause) => [cause.id, cause.title]));
  const shown = report.unknown.slice(0, most);
  const later = report.unknown.slice(most).filter((each) => each.asked);
  const rest = report.unknown.length - shown.length - later.length;
  return [
    heading(2, 'Not known yet, and how to find out'),
    {
      kind: 'list',
      style: 'bullet',
      items: [...shown, ...later].map((each) => ({
        line: [{ strong: capital(each.label) }, ` (${minutesText(each.minutes)}): ${each.howToFindOut}`],
        below: [
          ...(each.settles.length > 0 ? [settlesLine(each.settles.map((id) => titles.get(id) ?? id))] : []),
          ...each.cautions.map((caution) => `Caution: ${caution}`),
        ],
      })),
    },
    ...(rest > 0 ? [paragraph(`${plural(rest, 'more answer')} could be given; they weigh less.`)] : []),
  ];
}

function settlesLine(titles: readonly string[]): string {
  const shown = titles.slice(0, 2).map(named);
  const rest = titles.length - shown.length;
  return `It helps to settle ${listText(rest > 0 ? [...shown, `${plural(rest, 'more cause')}`] : shown)}.`;
}

export function assumedSection(report: Report): Block[] {
  return [
    heading(2, 'Assumed, since it was not told'),
    ...(report.assumed.length > 0
      ? [paragraph('What rests on one of these counts no more than a guess.')]
      : []),
    bullets(
      report.assumed.map((each) => `${capital(each.label)}: ${each.value} (${each.note}). ${each.effect}`),
    ),
  ];
}

export function seamlessSection(report: Report): Block[] {
  const { summary, steps, note, checks } = report.seamlessSwitch;
  return [
    heading(2, 'The seamless switch: how to hear that it is right'),
    paragraph(summary),
    bullets(checks.filter((check) => check.passes !== null).map((check) => sentence(check.text))),
    numbered(steps),
    paragraph(note),
  ];
}

export function fineSection(report: Report): Block[] {
  const causes = new Map(report.causes.map((cause) => [cause.id, cause]));
  return [
    heading(2, 'Looked at, and fine or unlikely'),
    bullets(
      report.fine.map((each): Line => {
        const sure = causes.get(each.cause)?.confidence ?? '';
        return [{ strong: each.title }, `: ${sure}. ${each.text}`];
      }),
    ),
  ];
}

export function openSection(report: Report): Block[] {
  const names = (list: Report['cannotTell']): string => list.map((each) => each.title).join('; ');
  return [
    heading(2, 'Not judged'),
    pairs([
      ...(report.cannotTell.length > 0
        ? [
            ['Open', `Nothing that was told speaks for or against these: ${names(report.cannotTell)}.`] as [
              string,
              Line,
            ],
          ]
        : []),
      ...(report.notApplicable.length > 0
        ? [['No part', `They do not arise in this system: ${names(report.notApplicable)}.`] as [string, Line]]
        : []),
    ]),
  ];
}

export function sourcesSection(report: Report): Block[] {
  return [
    heading(2, 'Where the numbers come from'),
    bullets(report.sources.map((source) => `${capital(source.cite)} [${source.markText}].`)),
  ];
}

export function glossarySection(report: Report): Block[] {
  return [
    heading(2, 'Words'),
    bullets(report.glossary.map(({ term, meaning }) => `${capital(term)}: ${meaning}.`)),
  ];
}
