/** A document as a fragment of HTML: no script, no style, every string escaped. */
import { type Block, gaugeText, type Inline, type Item, type Line, pieces, pieceText } from './document.js';
import type { PageLink } from './document-markdown.js';

export function documentHtml(blocks: readonly Block[], linkTo: PageLink = () => undefined): string {
  return `${blocks.map((block) => blockHtml(block, linkTo)).join('\n')}\n`;
}

function blockHtml(block: Block, linkTo: PageLink): string {
  const line = (each: Line): string => lineHtml(each, linkTo);
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${escapeHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p>${line(block.line)}</p>`;
    case 'list': {
      const tag = block.style === 'bullet' ? 'ul' : 'ol';
      return `<${tag}>${block.items.map((item) => itemHtml(item, line)).join('')}</${tag}>`;
    }
    case 'table':
      return tableHtml(block.head, block.rows);
    case 'pairs':
      return pairsHtml(block.rows, line);
    case 'code':
      return `<pre><code>${escapeHtml(block.text)}</code></pre>`;
    case 'bars':
      return tableHtml(
        ['cause', 'how sure'],
        block.rows.map((row) => [row.label, row.value]),
      );
    case 'gauge':
      return `<p>${escapeHtml(gaugeText(block.bar))}</p>`;
    case 'quote':
      return `<blockquote><p>${block.text.split('\n').map(escapeHtml).join('<br>')}</p></blockquote>`;
  }
}

function lineHtml(line: Line, linkTo: PageLink): string {
  return pieces(line)
    .map((piece) => pieceHtml(piece, linkTo))
    .join('');
}

function pieceHtml(piece: Inline, linkTo: PageLink): string {
  const text = escapeHtml(pieceText(piece));
  if (typeof piece === 'string') return text;
  if ('strong' in piece) return `<strong>${text}</strong>`;
  if ('code' in piece) return `<code>${text}</code>`;
  const target = linkTo(piece.page);
  return target === undefined ? text : `<a href="${escapeHtml(target)}">${text}</a>`;
}

function itemHtml(item: Item, line: (l: Line) => string): string {
  const below = (item.below ?? []).map((each) => `<br>${line(each)}`).join('');
  return `<li>${line(item.line)}${below}</li>`;
}

function tableHtml(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const top = head.map((cell) => `<th scope="col">${escapeHtml(cell)}</th>`).join('');
  const body = rows
    .map((row) => `<tr>${row.map((cell) => `<td>${escapeHtml(cell)}</td>`).join('')}</tr>`)
    .join('');
  return `<table><thead><tr>${top}</tr></thead><tbody>${body}</tbody></table>`;
}

/** A label with one value or, where the labels after it are empty, several. */
function pairsHtml(rows: readonly (readonly [string, Line])[], line: (l: Line) => string): string {
  const parts = rows.map(
    ([label, value]) => `${label === '' ? '' : `<dt>${escapeHtml(label)}</dt>`}<dd>${line(value)}</dd>`,
  );
  return `<dl>${parts.join('')}</dl>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => ENTITIES[mark] ?? mark);
}
