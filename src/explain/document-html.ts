/**
 * A document as a fragment of HTML, for pages of a report and of the handbook alike: no script, no style, every
 * string escaped. Places that can be linked to are the ids of items; a figure is drawn where it stands.
 */
import { type Block, type Inline, type Item, type Line, type Meter, pieces, pieceText } from './document.js';
import type { PageLink } from './document-markdown.js';
import { escapeHtml } from './escape-html.js';
import { markdownHtml } from './html/markdown.js';
import type { Chart } from './plots/chart.js';
import { drawChart, drawRange } from './plots/svg/index.js';
import type { RangeBar } from './report-types.js';
import { capital } from './words.js';
import { unbroken } from './wrap.js';

export type Markup = string;

export interface HtmlDocument {
  readonly linkTo?: PageLink;
  /** What folds stands open from the beginning, and so is printed too. */
  readonly open?: boolean;
}

/** Words of the page: escaped, figures unbroken. */
const textHtml = (text: string): Markup => escapeHtml(unbroken(text));

export function documentHtml(blocks: readonly Block[], options: HtmlDocument = {}): Markup {
  return `${blocks.map((block) => blockHtml(block, options)).join('\n')}\n`;
}

function blockHtml(block: Block, options: HtmlDocument): Markup {
  const line = (each: Line): Markup => lineHtml(each, options);
  const inner = (blocks: readonly Block[]): Markup => blocks.map((each) => blockHtml(each, options)).join('');
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${escapeHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p${block.quiet ? ' class="soft"' : ''}>${line(block.line)}</p>`;
    case 'list':
      return listHtml(block, options);
    case 'table':
      return tableHtml(block);
    case 'pairs':
      return pairsHtml(block.rows, line);
    case 'code':
      return `<pre><code>${escapeHtml(block.text)}</code></pre>`;
    case 'meters':
      return `<ol class="rank">${block.rows.map(meterHtml).join('')}</ol>`;
    case 'gauge':
      return `<div class="range"><p>${escapeHtml(gaugeName(block.bar))}</p>${drawRange(block.bar, block.id)}</div>`;
    case 'quote':
      return `<blockquote><p>${block.text.split('\n').map(escapeHtml).join('<br>')}</p></blockquote>`;
    case 'note':
      return markdownHtml(block.markdown);
    case 'caution':
      return `<p class="caution"><strong>Caution:</strong> ${escapeHtml(block.texts.join(' '))}</p>`;
    case 'callout':
      return `<div class="callout"><p class="eyebrow">${escapeHtml(block.label)}</p>${inner(block.blocks)}</div>`;
    case 'details':
      return `<details${options.open ? ' open' : ''}><summary>${escapeHtml(block.summary)}</summary>${inner(block.blocks)}</details>`;
    case 'figure':
      return figureHtml(block.chart, options);
  }
}

function lineHtml(line: Line, options: HtmlDocument): Markup {
  return pieces(line)
    .map((piece) => pieceHtml(piece, options))
    .join('');
}

function pieceHtml(piece: Inline, { linkTo }: HtmlDocument): Markup {
  const text = textHtml(pieceText(piece));
  if (typeof piece === 'string') return text;
  if ('strong' in piece) return text === '' ? '' : `<strong>${text}</strong>`;
  if ('code' in piece) return `<code>${text}</code>`;
  const target = 'to' in piece ? `#${piece.to}` : linkTo?.(piece.page);
  return target === undefined ? text : `<a href="${escapeHtml(target)}">${text}</a>`;
}

function listHtml(
  { style, items, from = 1 }: Extract<Block, { kind: 'list' }>,
  options: HtmlDocument,
): Markup {
  if (style === 'check')
    return `<ol class="plan">${items.map((item, i) => stepHtml(item, i + from, options)).join('\n')}</ol>`;
  const tag = style === 'bullet' ? 'ul' : 'ol';
  const rows = items.map(
    (item) =>
      `<li${item.id ? ` id="${escapeHtml(item.id)}"` : ''}>${lineHtml(item.line, options)}${belowHtml(item, options)}</li>`,
  );
  return `<${tag}>${rows.join('')}</${tag}>`;
}

const belowHtml = ({ below = [] }: Item, options: HtmlDocument): Markup =>
  below.map((block) => blockHtml(block, options)).join('');

/** A step with a box that ticks without a script. */
function stepHtml(item: Item, number: number, options: HtmlDocument): Markup {
  const id = escapeHtml(item.id ?? `step-${number}`);
  const below = belowHtml(item, options);
  return [
    `<li id="${id}"><div class="head"><input type="checkbox" id="${id}-done">`,
    `<label for="${id}-done">${number}. ${lineHtml(item.line, options)}</label></div>`,
    below === '' ? '' : `<div class="body">${below}</div>`,
    '</li>',
  ].join('');
}

/** The first cell of each row is its heading. Wide tables scroll inside their frame, also by keyboard. */
function tableHtml({ head, rows, caption }: Extract<Block, { kind: 'table' }>): Markup {
  const top = head
    .map((cell) => (cell === '' ? '<td></td>' : `<th scope="col">${escapeHtml(cell)}</th>`))
    .join('');
  const body = rows.map(([first = '', ...rest]) => {
    const cells = rest.map((cell) => `<td>${textHtml(cell)}</td>`).join('');
    return `<tr><th scope="row">${escapeHtml(first)}</th>${cells}</tr>`;
  });
  const named = caption === undefined ? '' : `<caption>${escapeHtml(caption)}</caption>`;
  const made = `<table>${named}<thead><tr>${top}</tr></thead><tbody>${body.join('')}</tbody></table>`;
  const label = escapeHtml(caption ?? head.filter((cell) => cell !== '').join(', '));
  return `<div class="scroll" tabindex="0" role="group" aria-label="${label}">${made}</div>`;
}

/** A label with one value or, where the labels after it are empty, several. */
function pairsHtml(rows: readonly (readonly [string, Line])[], line: (l: Line) => Markup): Markup {
  const parts = rows.map(
    ([label, value]) => `${label === '' ? '' : `<dt>${escapeHtml(label)}</dt>`}<dd>${line(value)}</dd>`,
  );
  return `<dl>${parts.join('')}</dl>`;
}

/** A bar from 0 to 1; the words beside it say the same. */
function meterHtml({ share, label, value }: Meter): Markup {
  const width = Math.round(Math.min(1, Math.max(0, share)) * 1000) / 10;
  const bar = `<svg class="meter" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true" focusable="false"><rect class="track" width="100" height="6"/><rect class="fill" width="${width}" height="6"/></svg>`;
  const name = label === '' ? '' : `<span>${escapeHtml(label)}</span>`;
  return `<li>${name}<span class="how">${escapeHtml(value)}</span>${bar}</li>`;
}

const gaugeName = (bar: RangeBar): string => `${capital(bar.label)}: ${bar.valueText}, ${bar.grade}`;

function figureHtml(chart: Chart, options: HtmlDocument): Markup {
  const numbers: Block = {
    kind: 'details',
    summary: 'The numbers',
    blocks: [
      ...chart.notes.map((note): Block => ({ kind: 'paragraph', line: note, quiet: true })),
      { kind: 'table', ...chart.table },
    ],
  };
  return [
    `<figure id="figure-${chart.id}">`,
    `<figcaption><strong>${escapeHtml(chart.title)}</strong> ${textHtml(chart.says)}</figcaption>`,
    drawChart(chart),
    blockHtml(numbers, options),
    '</figure>',
  ].join('\n');
}
