/**
 * A small document model: reports, balance sheets and reference pages are built once and written as text,
 * Markdown, HTML or BBCode. Every string in it is plain text that the writer escapes; there is no raw markup.
 */
import type { RangeBar } from './report-types.js';

export type Inline =
  | string
  | { readonly strong: string }
  | { readonly code: string }
  /** A link to another reference page, by its key; writers without pages show the text alone. */
  | { readonly page: string; readonly text: string };
/** One line of text, of one piece or several. */
export type Line = Inline | readonly Inline[];

export interface Item {
  readonly line: Line;
  /** What stands below the item: steps, a caution, what to expect. */
  readonly below?: readonly Line[];
}

export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly kind: 'paragraph'; readonly line: Line }
  | { readonly kind: 'list'; readonly style: 'bullet' | 'number' | 'check'; readonly items: readonly Item[] }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  /** `label: value` lines. */
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [string, Line])[] }
  | { readonly kind: 'code'; readonly text: string }
  /** Ranking: `share` from 0 to 1 draws a bar where bars are drawn. */
  | { readonly kind: 'bars'; readonly rows: readonly { share: number; label: string; value: string }[] }
  | { readonly kind: 'gauge'; readonly bar: RangeBar }
  /** A stranger's words, quoted. */
  | { readonly kind: 'quote'; readonly text: string };

export const heading = (level: 1 | 2 | 3, text: string): Block => ({ kind: 'heading', level, text });
export const paragraph = (...line: Inline[]): Block => ({ kind: 'paragraph', line });
export const bullets = (lines: readonly Line[]): Block => list('bullet', lines);
export const numbered = (lines: readonly Line[]): Block => list('number', lines);
const list = (style: 'bullet' | 'number', lines: readonly Line[]): Block => ({
  kind: 'list',
  style,
  items: lines.map((line) => ({ line })),
});
export const pairs = (rows: readonly (readonly [string, Line])[]): Block => ({ kind: 'pairs', rows });
export const table = (head: readonly string[], rows: readonly (readonly string[])[]): Block => ({
  kind: 'table',
  head,
  rows,
});

/** The pieces of a line. */
export function pieces(line: Line): readonly Inline[] {
  return typeof line === 'string' || !Array.isArray(line) ? [line as Inline] : line;
}
export function pieceText(piece: Inline): string {
  if (typeof piece === 'string') return piece;
  if ('strong' in piece) return piece.strong;
  return 'code' in piece ? piece.code : piece.text;
}
/** A line without its emphasis. */
export const lineText = (line: Line): string => pieces(line).map(pieceText).join('');

/** A list or table without rows says nothing and is left out together with the heading before it. */
export function withoutEmpty(blocks: readonly Block[]): Block[] {
  const filled = blocks.filter((block) => !isEmpty(block));
  return filled.filter((block, i) => {
    const following = filled[i + 1];
    if (block.kind !== 'heading') return true;
    return following !== undefined && !(following.kind === 'heading' && following.level <= block.level);
  });
}

function isEmpty(block: Block): boolean {
  if (block.kind === 'list') return block.items.length === 0;
  if (block.kind === 'table' || block.kind === 'pairs' || block.kind === 'bars')
    return block.rows.length === 0;
  return (
    (block.kind === 'paragraph' && lineText(block.line) === '') ||
    (block.kind === 'quote' && block.text === '')
  );
}

/** The value of a gauge among its grades, as a sentence: the twin of every drawn range bar. */
export function gaugeText(bar: RangeBar): string {
  const { valueText, grade, noticeableText, clearText } = bar;
  const good = bar.lowIsBad ? `good from ${noticeableText} up` : `good below ${noticeableText}`;
  const poor = bar.lowIsBad ? `poor at ${clearText} and less` : `poor from ${clearText} on`;
  return `${bar.label}: ${valueText}, ${grade} (${good}, ${poor})`;
}
