/** The report as one page that an owner opens on a phone: the verdict first, then what to do, then the reasons. */
import { leadingPart, possiblePart } from '../html/causes.js';
import { figure } from '../html/figure.js';
import { esc, type Markup, section } from '../html/markup.js';
import { planPart } from '../html/plan.js';
import {
  assumedPart,
  clashPart,
  glossaryPart,
  judgedPart,
  seamlessPart,
  seatsPart,
  sourcesPart,
  toldPart,
  unknownPart,
} from '../html/rest.js';
import { htmlPage } from '../html/shell.js';
import { rankingPart, verdictPart } from '../html/verdict.js';
import type { Chart } from '../plots/chart.js';
import type { Report } from '../report-types.js';

export interface HtmlOptions {
  /** From the same audit as the report; a page without them has words and numbers only. */
  readonly charts?: readonly Chart[];
}

const NAME = 'Center loudspeaker audit';

export function renderHtml(report: Report, { charts = [] }: HtmlOptions = {}): string {
  const title = report.title ?? 'Untitled case';
  const leading = leadingPart(report, charts);
  const rest = charts.filter(({ id }) => !leading.used.has(id)).map(figure);
  const one = report.causes.filter(({ place }) => place === 'leading').length === 1;
  const parts: readonly Part[] = [
    ['clash', 'What does not fit together', 'Contradictions', clashPart(report)],
    ['plan', 'What to do, in this order', 'What to do', planPart(report)],
    ['ranking', 'What it could be', 'What it could be', rankingPart(report)],
    ['causes', one ? 'The leading cause' : 'The leading causes', 'The cause', leading.markup],
    ['possible', 'Also possible', 'Also possible', possiblePart(report)],
    ['seats', 'Seats', 'Seats', seatsPart(report)],
    [
      'pictures',
      'The room and the sound',
      'Pictures',
      rest.length > 0 ? `<div class="two">${rest.join('\n')}</div>` : '',
    ],
    ['seamless', 'The seamless switch: how to hear that it is right', 'The test', seamlessPart(report)],
    ['told', 'What you told us', 'Answers', toldPart(report)],
    ['unknown', 'Not known yet, and how to find out', 'Not known', unknownPart(report)],
    ['assumed', 'Assumed', 'Assumed', assumedPart(report)],
    ['judged', 'Other causes', 'Other causes', judgedPart(report)],
    ['sources', 'Where the numbers come from', 'Sources', sourcesPart(report)],
    ['words', 'Words', 'Words', glossaryPart(report)],
  ];
  const filled = parts.filter(([, , , inner]) => inner !== '');
  const body = [
    `<header class="top"><p>${NAME} · <strong>${esc(title)}</strong></p></header>`,
    '<main id="main">',
    verdictPart(report),
    contents(filled),
    ...filled.map(([id, heading, , inner]) => section(id, heading, inner)),
    '</main>',
    '<footer><p>Computed from the answers given. This page is one file: it loads nothing, runs nothing and sends nothing.</p></footer>',
  ].join('\n');
  return htmlPage({ title: `${NAME}: ${title}`, body });
}

type Part = readonly [id: string, title: string, short: string, inner: Markup];

function contents(parts: readonly Part[]): Markup {
  const links = parts.map(([id, , short]) => `<li><a href="#${id}">${esc(short)}</a></li>`);
  return `<nav class="toc" aria-label="On this page"><ul>${links.join('')}</ul></nav>`;
}
