/** A document in the markup that boards share: b, url, code, quote, list with [*]. No tables, no nested lists. */
import {
  type Block,
  figureLine,
  gaugeText,
  type Inline,
  type Item,
  type Line,
  pieces,
  pieceText,
} from './document.js';
import { padded } from './wrap.js';

/** Blocks one below the other, a blank line between them. */
export const documentBbcode = (blocks: readonly Block[]): string =>
  `${blocks.map(blockBbcode).join('\n\n')}\n`;

export function blockBbcode(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `[b]${inert(block.text)}[/b]`;
    case 'paragraph':
      return lineBbcode(block.line);
    case 'list':
      return listBbcode(block.items.map(itemBbcode), block.style !== 'bullet');
    case 'table':
      return tableBbcode(block.head, block.rows);
    case 'pairs':
      return block.rows.map(([label, line]) => pairBbcode(label, line)).join('\n');
    case 'code':
      return `[code]${inert(block.text)}[/code]`;
    case 'meters':
      return listBbcode(
        block.rows.map((row) => `${inert(row.label)}: ${inert(row.value)}`),
        true,
      );
    case 'gauge':
      return inert(gaugeText(block.bar));
    case 'quote':
      return `[quote]${inert(block.text)}[/quote]`;
    case 'note':
      return `[quote]${inert(block.markdown)}[/quote]`;
    case 'caution':
      return lineBbcode([{ strong: 'Caution:' }, ` ${block.texts.join(' ')}`]);
    case 'callout':
      return `[b]${inert(block.label)}:[/b]\n${block.blocks.map(blockBbcode).join('\n')}`;
    case 'details':
      return `[b]${inert(block.summary)}[/b]\n\n${block.blocks.map(blockBbcode).join('\n\n')}`;
    case 'figure':
      return lineBbcode(figureLine(block.chart));
  }
}

const listBbcode = (items: readonly string[], ordered: boolean): string =>
  `[list${ordered ? '=1' : ''}]\n${items.map((item) => `[*]${item}`).join('\n')}\n[/list]`;

/** What belongs to an item follows on lines of its own; a list in a list becomes numbered or dashed lines. */
function itemBbcode(item: Item): string {
  return [lineBbcode(item.line), ...(item.below ?? []).flatMap(insideBbcode)].join('\n');
}

function insideBbcode(block: Block): string[] {
  if (block.kind === 'details')
    return [`[b]${inert(block.summary)}[/b]`, ...block.blocks.flatMap(insideBbcode)];
  if (block.kind !== 'list') return [blockBbcode(block)];
  return block.items.flatMap((item, i) => [
    `${block.style === 'bullet' ? '–' : `${i + 1}.`} ${lineBbcode(item.line)}`,
    ...(item.below ?? []).flatMap(insideBbcode),
  ]);
}

const pairBbcode = (label: string, line: Line): string =>
  label === '' ? lineBbcode(line) : `[b]${inert(label)}:[/b] ${lineBbcode(line)}`;

function lineBbcode(line: Line): string {
  return pieces(line).map(pieceBbcode).join('');
}

function pieceBbcode(piece: Inline): string {
  const text = inert(pieceText(piece));
  return typeof piece !== 'string' && 'strong' in piece && text.trim() !== '' ? `[b]${text}[/b]` : text;
}

/** Widest line of a code block that boards show without scrolling. */
const CODE_WIDTH = 60;

/** Aligned columns in a code block, or a list where they do not fit. */
function tableBbcode(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => padded(row[column] ?? '', 0).length)));
  const total = widths.reduce((sum, width) => sum + width + 2, -2);
  if (total > CODE_WIDTH) {
    const items = rows.map(([first = '', ...rest]) =>
      inert(`${first}: ${rest.map((cell, i) => `${head[i + 1] ?? ''} ${cell}`).join(', ')}`),
    );
    return listBbcode(items, false);
  }
  const lines = all.map((row) =>
    row
      .map((cell, i) => padded(inert(cell), widths[i] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  return `[code]${lines.join('\n')}[/code]`;
}

/** Brackets of another width: no board takes them for a tag, however lenient its parser is. */
const WIDE_OPEN = '\uff3b';
const WIDE_CLOSE = '\uff3d';

/** A space without width: it parts what a board would read as a smiley, a link or a mention. */
const ZERO_WIDTH = '\u200b';

/** Plain text that opens no tag, draws no smiley, and becomes no link or mention. */
export function inert(text: string): string {
  return text
    .replaceAll('[', WIDE_OPEN)
    .replaceAll(']', WIDE_CLOSE)
    .replace(/([:;=])(?=-?[)(DpPoOxX|/\\*?!$@3])/g, `$1${ZERO_WIDTH}`)
    .replace(/([8B])(?=-?\))/g, `$1${ZERO_WIDTH}`)
    .replace(/:(?=\w+:)/g, `:${ZERO_WIDTH}`)
    .replace(/\b(www)\./gi, `$1${ZERO_WIDTH}.`)
    .replace(/@/g, `@${ZERO_WIDTH}`);
}
