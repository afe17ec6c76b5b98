/** A document as text for a terminal: wrapped, aligned, right without color, plain on request. */
import pc from 'picocolors';
import {
  type Block,
  figureLine,
  gaugeText,
  type Inline,
  type Item,
  type Line,
  type ListStyle,
  lineText,
  type Meter,
  pieces,
  pieceText,
} from './document.js';
import type { RangeBar } from './report-types.js';
import type { TextOptions } from './terminal.js';
import { hanging, padded, unbroken, widthOf, wrapped } from './wrap.js';

interface Pen {
  readonly options: TextOptions;
  readonly bold: (text: string) => string;
  readonly dim: (text: string) => string;
}

export function documentText(blocks: readonly Block[], options: TextOptions): string {
  const colors = pc.createColors(options.color);
  const pen: Pen = { options, bold: colors.bold, dim: colors.dim };
  return `${apart(blocks, pen)
    .map((line) => line.replaceAll('\u00a0', ' ').trimEnd())
    .join('\n')}\n`;
}

/** Blocks below each other, a blank line between those that do not belong together. */
const apart = (blocks: readonly Block[], pen: Pen): string[] =>
  blocks.flatMap((block, i) => {
    const before = blocks[i - 1];
    const gap = before === undefined || isTight(before, block) ? [] : [''];
    return [...gap, ...blockLines(block, pen)];
  });

/** Headings stand right above what they head, gauges and cautions right below what they belong to. */
const isTight = (before: Block, block: Block): boolean =>
  (before.kind === 'heading' && before.level > 1) ||
  (before.kind === 'paragraph' &&
    (block.kind === 'pairs' || block.kind === 'list' || block.kind === 'code')) ||
  block.kind === 'gauge' ||
  block.kind === 'caution' ||
  (before.kind === 'pairs' && block.kind === 'pairs');

function blockLines(block: Block, pen: Pen): string[] {
  const { width } = pen.options;
  switch (block.kind) {
    case 'heading':
      return headingLines(block.text, block.level, pen);
    case 'paragraph':
      return wrapped(styled(block.line, pen), width);
    case 'list':
      return block.items.flatMap((item, i) => itemLines(item, i + (block.from ?? 1), block.style, pen));
    case 'table':
      return tableLines(block.head, block.rows, pen);
    case 'pairs':
      return pairLines(block.rows, pen);
    case 'code':
      // Never wrapped: a command is copied as it stands.
      return block.text.split('\n').map((line) => `  ${line}`);
    case 'meters':
      return block.rows.flatMap((row, i) => meterLines(row, i, pen));
    case 'gauge':
      return gaugeLines(block.bar, pen);
    case 'quote':
      return quoteLines(block.text, pen);
    case 'note':
      return quoteLines(block.markdown, pen);
    case 'caution':
      return wrapped(styled([{ strong: 'Caution:' }, ` ${block.texts.join(' ')}`], pen), width);
    case 'callout':
      return [...wrapped(pen.bold(`${block.label}:`), width), ...nested(block.blocks, '  ', pen)];
    case 'details':
      return [...headingLines(block.summary, 3, pen), ...apart(block.blocks, pen)];
    case 'figure':
      return wrapped(styled(figureLine(block.chart), pen), width);
  }
}

/** Blocks below an item, close together and indented. */
function nested(blocks: readonly Block[], indent: string, pen: Pen): string[] {
  const inner = { ...pen, options: { ...pen.options, width: pen.options.width - widthOf(indent) } };
  return blocks.flatMap((block) => blockLines(block, inner)).map((line) => indent + line);
}

/** A rule on the left; in quotation marks where nothing is drawn. */
function quoteLines(text: string, pen: Pen): string[] {
  const { accessible, ascii, width } = pen.options;
  if (accessible) return text.split('\n').flatMap((line) => wrapped(`“${line}”`, width));
  const bar = `  ${ascii ? '|' : '│'} `;
  return text.split('\n').flatMap((line) => wrapped(line, width - widthOf(bar)).map((part) => bar + part));
}

function headingLines(text: string, level: 1 | 2 | 3, pen: Pen): string[] {
  const lines = wrapped(level === 2 ? text.toUpperCase() : text, pen.options.width);
  if (level > 1 || pen.options.accessible) return lines.map(pen.bold);
  const rule = (pen.options.ascii ? '-' : '─').repeat(
    Math.min(pen.options.width, ...[Math.max(...lines.map(widthOf))]),
  );
  return [...lines.map(pen.bold), pen.dim(rule)];
}

function styled(line: Line, pen: Pen): string {
  return plainFor(
    pieces(line)
      .map((piece) => pieceStyled(piece, pen))
      .join(''),
    pen,
  );
}
function pieceStyled(piece: Inline, pen: Pen): string {
  if (typeof piece === 'string') return piece;
  if ('strong' in piece) return pen.bold(piece.strong);
  // A page is named by its id, so that `explain` can be asked for it.
  if ('page' in piece)
    return `${piece.text} ${pen.dim(`[${piece.page.slice(piece.page.indexOf('/') + 1)}]`)}`;
  return pieceText(piece);
}

const ASCII_TWINS: Readonly<Record<string, string>> = {
  '“': '"',
  '”': '"',
  '’': "'",
  '°': ' deg',
  '–': '-',
  '—': '-',
  '−': '-',
  '…': '...',
};
/** Typographic marks in plain letters where only those can be shown; a stranger's letters stay. */
function plainFor(text: string, pen: Pen): string {
  const whole = unbroken(text);
  return pen.options.ascii ? whole.replace(/[“”’°–—−…]/g, (mark) => ASCII_TWINS[mark] ?? mark) : whole;
}

function itemLines(item: Item, number: number, style: ListStyle, pen: Pen): string[] {
  const mark = markOf(number, style, pen);
  const first = hanging(mark, styled(item.line, pen), pen.options.width);
  return [...first, ...nested(item.below ?? [], ' '.repeat(widthOf(mark)), pen)];
}

function markOf(number: number, style: ListStyle, pen: Pen): string {
  const { accessible } = pen.options;
  if (style === 'bullet') return accessible ? '  ' : '  - ';
  return `  ${style === 'check' && !accessible ? '[ ] ' : ''}${number}. `;
}

/** Columns two spaces apart; where they do not fit, or on request, each row as lines of `label: value`. */
function tableLines(head: readonly string[], rows: readonly (readonly string[])[], pen: Pen): string[] {
  const cells = [head, ...rows].map((row) => row.map((cell) => plainFor(cell, pen)));
  const widths = head.map((_, column) => Math.max(...cells.map((row) => widthOf(row[column] ?? ''))));
  const total = widths.reduce((sum, width) => sum + width + 2, 0);
  if (pen.options.accessible || total > pen.options.width) return tableAsPairs(head, rows, pen);
  return cells.map((row, i) => {
    const line = `  ${row.map((cell, column) => padded(cell, widths[column] ?? 0)).join('  ')}`;
    return i === 0 ? pen.dim(line) : line;
  });
}

function tableAsPairs(head: readonly string[], rows: readonly (readonly string[])[], pen: Pen): string[] {
  return rows.flatMap((row) => {
    const [first = '', ...rest] = row;
    const values = rest.map((cell, i) => `${head[i + 1] ?? ''}: ${cell}`).join('; ');
    return hanging('  ', plainFor(`${first}: ${values}`, pen), pen.options.width);
  });
}

/** Widest label of a row of pairs; longer ones push their value on. */
const LABEL_WIDTH = 10;

function pairLines(rows: readonly (readonly [string, Line])[], pen: Pen): string[] {
  if (pen.options.accessible)
    return rows.flatMap(([label, value]) =>
      wrapped(label === '' ? lineText(value) : `${label}: ${lineText(value)}`, pen.options.width),
    );
  const widest = Math.min(LABEL_WIDTH, Math.max(...rows.map(([label]) => widthOf(label))));
  return rows.flatMap(([label, value]) => {
    const fits = widthOf(label) <= widest;
    const first = `  ${padded(label, widest)}  `;
    return fits
      ? hanging(first, styled(value, pen), pen.options.width)
      : hanging('  ', `${label}: ${styled(value, pen)}`, pen.options.width);
  });
}

const BAR_WIDTH = 12;
function meterLines({ share, label, value }: Meter, index: number, pen: Pen): string[] {
  const { accessible, ascii, width } = pen.options;
  if (accessible) return wrapped(`${index + 1}. ${label}: ${value}`, width);
  const full = Math.round(Math.min(1, Math.max(0, share)) * BAR_WIDTH);
  const [on, off] = ascii ? ['#', '.'] : ['█', '░'];
  const bar = on.repeat(full) + off.repeat(BAR_WIDTH - full);
  return hanging(`${`${index + 1}.`.padStart(4)} ${bar}  `, plainFor(`${label}: ${value}`, pen), width);
}

/** Columns of one of the three segments of a range bar, on a terminal as wide as most and on a narrow one. */
const SEGMENT = 10;
const NARROW_SEGMENT = 6;
const NARROW_BELOW = 50;

/** Good, borderline and poor side by side with the value among them, and the numbers in words. */
function gaugeLines(bar: RangeBar, pen: Pen): string[] {
  const { accessible, ascii, width } = pen.options;
  const words = plainFor(gaugeText(bar), pen);
  const indent = ' '.repeat(4);
  if (accessible) return hanging('', words, width);
  const segment = width < NARROW_BELOW ? NARROW_SEGMENT : SEGMENT;
  const [dash, mark, edge] = ascii ? ['-', '^', '|'] : ['─', '▲', '┼'];
  const place = Math.min(3 * segment - 1, Math.floor(gaugePlace(bar) * segment));
  const cells = Array.from({ length: 3 * segment }, (_, i) => (i === place ? mark : dash));
  const segments = [0, 1, 2].map((i) => cells.slice(i * segment, (i + 1) * segment).join(''));
  return [`${indent}good ${segments.join(edge)} poor`, ...hanging(indent, words, width)];
}

/** Place of a value on the bar: 0 to 1 good, 1 to 2 borderline, 2 to 3 poor. */
export function gaugePlace({ value, noticeable, clear, severe, lowIsBad }: RangeBar): number {
  const part = (from: number, to: number): number => (to === from ? 0 : (value - from) / (to - from));
  const reaches = (grade: number): boolean => (lowIsBad ? value <= grade : value >= grade);
  const within = (x: number): number => Math.min(0.999, Math.max(0, x));
  if (reaches(clear)) return 2 + within(part(clear, severe));
  if (reaches(noticeable)) return 1 + within(part(noticeable, clear));
  // Below the first grade the scale runs from zero, or from as far above it as the next grade is below.
  return within(lowIsBad ? part(2 * noticeable - clear, noticeable) : part(0, noticeable));
}
