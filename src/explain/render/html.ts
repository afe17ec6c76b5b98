/** The report as one page that an owner opens on a phone: the verdict first, then what to do, then the reasons. */
import { documentHtml, type HtmlDocument, type Markup } from '../document-html.js';
import { escapeHtml } from '../escape-html.js';
import { htmlPage } from '../html/shell.js';
import type { Chart } from '../plots/chart.js';
import type { Report } from '../report-types.js';
import { headlineOf, type PartId, type Section, sectionsOf } from '../sections/index.js';

interface HtmlOptions {
  /** From the same audit as the report; a page without them has words and numbers only. */
  readonly charts?: readonly Chart[];
  /** Everything that folds stands open, and is printed too. */
  readonly long?: boolean;
}

const NAME = 'Center loudspeaker audit';
const PARTS: readonly PartId[] = [
  'plan',
  'why',
  'clash',
  'seats',
  'pictures',
  'switch',
  'ranking',
  'causes',
  'told',
  'unknown',
  'assumed',
  'others',
  'sources',
  'words',
];

export function renderHtml(report: Report, { charts = [], long = false }: HtmlOptions = {}): string {
  const title = report.title ?? 'Untitled case';
  const options: HtmlDocument = { open: long };
  const sections = sectionsOf(report, PARTS, { charts });
  const body = [
    `<header class="top"><p>${NAME} · <strong>${escapeHtml(title)}</strong></p></header>`,
    '<main id="main">',
    firstScreen(report, options),
    contents(sections),
    ...sections.map(({ id, title: name, blocks }) =>
      section(id, `<h2 id="${id}-h">${escapeHtml(name)}</h2>`, documentHtml(blocks, options)),
    ),
    '</main>',
    '<footer><p>Computed from the answers given. This page is one file: it loads nothing, runs nothing and sends nothing. What is folded is not printed; open it first.</p></footer>',
  ].join('\n');
  return htmlPage({ title: `${NAME}: ${title}`, body });
}

const section = (id: string, head: Markup, inner: Markup, className = ''): Markup =>
  `<section id="${id}"${className} aria-labelledby="${id}-h">\n${head}\n${inner}</section>`;

/** What is wrong, how sure, and the one thing to do: it stands alone, decided or not. */
function firstScreen(report: Report, options: HtmlDocument): Markup {
  const [apart] = report.verdict.separatedBy;
  const step: PartId = apart && report.plan[0]?.id === apart.fact ? 'apart' : 'first';
  const blocks = sectionsOf(report, ['verdict', step]).flatMap((part) => part.blocks);
  const head = `<p class="eyebrow">Verdict</p>\n<h1 id="verdict-h">${escapeHtml(headlineOf(report))}</h1>`;
  return section('verdict', head, documentHtml(blocks, options), ' class="verdict"');
}

function contents(sections: readonly Section[]): Markup {
  const links = sections.map(({ id, title }) => `<li><a href="#${id}">${escapeHtml(title)}</a></li>`);
  return `<nav class="toc" aria-label="On this page"><ul>${links.join('')}</ul></nav>`;
}
