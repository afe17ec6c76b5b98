/** Small pieces of the page. Every string that comes in is escaped here, unless it is called markup. */
import { escapeHtml as esc } from '../document-html.js';

export { esc };
export type Markup = string;

export const p = (text: string, className?: string): Markup =>
  text === '' ? '' : `<p${className ? ` class="${className}"` : ''}>${esc(text)}</p>`;

export function list(items: readonly Markup[], tag: 'ul' | 'ol' = 'ul'): Markup {
  return items.length === 0 ? '' : `<${tag}>${items.map((item) => `<li>${item}</li>`).join('')}</${tag}>`;
}
export const texts = (items: readonly string[], tag: 'ul' | 'ol' = 'ul'): Markup => list(items.map(esc), tag);

/** A section of the page with its heading; nothing where there is nothing in it. */
export function section(id: string, title: string, ...parts: readonly Markup[]): Markup {
  const inner = parts.filter((part) => part !== '').join('\n');
  if (inner === '') return '';
  return `<section id="${id}" aria-labelledby="${id}-h">\n<h2 id="${id}-h">${esc(title)}</h2>\n${inner}\n</section>`;
}

export interface TableParts {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The first cell of each row is its heading. Wide tables scroll inside their frame, also by keyboard. */
export function dataTable({ caption, head, rows }: TableParts, className = ''): Markup {
  if (rows.length === 0) return '';
  const top = head.map((cell) => `<th scope="col">${esc(cell)}</th>`).join('');
  const body = rows.map(([first = '', ...rest]) => {
    const cells = rest.map((cell) => `<td>${esc(cell)}</td>`).join('');
    return `<tr><th scope="row">${esc(first)}</th>${cells}</tr>`;
  });
  const table = `<table${className ? ` class="${className}"` : ''}><caption>${esc(caption)}</caption><thead><tr>${top}</tr></thead><tbody>${body.join('')}</tbody></table>`;
  return `<div class="scroll" tabindex="0" role="group" aria-label="${esc(caption)}">${table}</div>`;
}

export const details = (summary: string, inner: Markup): Markup =>
  inner === '' ? '' : `<details><summary>${esc(summary)}</summary>${inner}</details>`;

/** A bar from 0 to 1; the words beside it say the same. */
export function meter(share: number): Markup {
  const width = Math.round(Math.min(1, Math.max(0, share)) * 1000) / 10;
  return `<svg class="meter" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true" focusable="false"><rect class="track" width="100" height="6"/><rect class="fill" width="${width}" height="6"/></svg>`;
}

/** All that is to be minded at one step, in one box. */
export const cautionBox = (cautions: readonly string[]): Markup =>
  cautions.length === 0 ? '' : `<p class="caution"><strong>Caution:</strong> ${esc(cautions.join(' '))}</p>`;
