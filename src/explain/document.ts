/**
 * A small document model: reports, balance sheets and reference pages are built once and written as text,
 * Markdown, HTML or board markup. Every string in it is plain text that the writer escapes; there is no raw markup.
 */
import type { Chart } from './plots/chart.js';
import type { RangeBar } from './report-types.js';

export type Inline =
  | string
  | { readonly strong: string }
  | { readonly code: string }
  /** A link to another reference page, by its key; writers without pages show the text alone. */
  | { readonly page: string; readonly text: string }
  /** A link to another place of the same document; writers of one column show the text alone. */
  | { readonly to: string; readonly text: string };
/** One line of text, of one piece or several. */
export type Line = Inline | readonly Inline[];

export interface Item {
  readonly line: Line;
  /** What stands below the item: steps, a caution, a list of its own. */
  readonly below?: readonly Block[];
  /** Name of the place, for links to it. */
  readonly id?: string;
}

export type ListStyle = 'bullet' | 'number' | 'check';

export interface Meter {
  /** 0 to 1: draws a bar where bars are drawn. */
  readonly share: number;
  readonly label: string;
  readonly value: string;
}

export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly kind: 'paragraph'; readonly line: Line; readonly quiet?: boolean }
  | {
      readonly kind: 'list';
      readonly style: ListStyle;
      readonly items: readonly Item[];
      /** Number of the first item; 1 when left out. */
      readonly from?: number;
    }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      readonly caption?: string;
    }
  /** `label: value` lines; a row without a label goes on with the one before. */
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [string, Line])[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'meters'; readonly rows: readonly Meter[] }
  | { readonly kind: 'gauge'; readonly bar: RangeBar; readonly id: string }
  /** A stranger's words, quoted. */
  | { readonly kind: 'quote'; readonly text: string }
  /** A note in Markdown, written by whoever keeps the case. */
  | { readonly kind: 'note'; readonly markdown: string }
  /** What to mind at one step, so that nobody and nothing comes to harm. */
  | { readonly kind: 'caution'; readonly texts: readonly string[] }
  /** What stands out: one thing to do before all else. */
  | { readonly kind: 'callout'; readonly label: string; readonly blocks: readonly Block[] }
  /** Folded where a reader can unfold it; the long form of the others. */
  | { readonly kind: 'details'; readonly summary: string; readonly blocks: readonly Block[] }
  | { readonly kind: 'figure'; readonly chart: Chart };

export const heading = (level: 1 | 2 | 3, text: string): Block => ({ kind: 'heading', level, text });
export const paragraph = (...line: Inline[]): Block => ({ kind: 'paragraph', line });
/** Several lines below each other. */
export const lines = (...all: readonly Line[]): Block[] =>
  all.map((line): Block => ({ kind: 'paragraph', line }));
export const bullets = (lines: readonly Line[]): Block => list('bullet', lines);
export const numbered = (lines: readonly Line[]): Block => list('number', lines);
const list = (style: 'bullet' | 'number', lines: readonly Line[]): Block => ({
  kind: 'list',
  style,
  items: lines.map((line) => ({ line })),
});
export const itemList = (items: readonly Item[], style: ListStyle = 'bullet', from = 1): Block => ({
  kind: 'list',
  style,
  items,
  ...(from === 1 ? {} : { from }),
});
export const pairs = (rows: readonly (readonly [string, Line])[]): Block => ({ kind: 'pairs', rows });
export const table = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
  caption?: string,
): Block => ({ kind: 'table', head, rows, ...(caption === undefined ? {} : { caption }) });
export const caution = (texts: readonly string[]): Block => ({ kind: 'caution', texts });
export const details = (summary: string, ...blocks: readonly Block[]): Block => ({
  kind: 'details',
  summary,
  blocks,
});
/** Several rows under one label. */
export const labeled = (label: string, lines: readonly Line[]): (readonly [string, Line])[] =>
  lines.map((line, i) => [i === 0 ? label : '', line] as const);

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
  const filled = blocks.map(emptied).filter((block) => !isEmpty(block));
  return filled.filter((block, i) => {
    const following = filled[i + 1];
    if (block.kind !== 'heading') return true;
    return following !== undefined && !(following.kind === 'heading' && following.level <= block.level);
  });
}

/** The same inside blocks that hold others. */
function emptied(block: Block): Block {
  if (block.kind === 'details' || block.kind === 'callout')
    return { ...block, blocks: withoutEmpty(block.blocks) };
  if (block.kind !== 'list') return block;
  return {
    ...block,
    items: block.items.map((item) => (item.below ? { ...item, below: withoutEmpty(item.below) } : item)),
  };
}

function isEmpty(block: Block): boolean {
  switch (block.kind) {
    case 'list':
      return block.items.length === 0;
    case 'table':
    case 'pairs':
    case 'meters':
      return block.rows.length === 0;
    case 'paragraph':
      return lineText(block.line) === '';
    case 'quote':
      return block.text === '';
    case 'caution':
      return block.texts.length === 0;
    case 'details':
    case 'callout':
      return block.blocks.length === 0;
    default:
      return false;
  }
}

/** The short form: what folds is left out, at every depth. */
export function withoutDetails(blocks: readonly Block[]): Block[] {
  return blocks.flatMap((block): Block[] => {
    if (block.kind === 'details') return [];
    if (block.kind === 'callout') return [{ ...block, blocks: withoutDetails(block.blocks) }];
    if (block.kind !== 'list') return [block];
    const items = block.items.map((item) =>
      item.below ? { ...item, below: withoutDetails(item.below) } : item,
    );
    return [{ ...block, items }];
  });
}

/** A figure without its drawing: what is to be seen in it. */
export const figureLine = ({ title, says }: Chart): Line => [{ strong: `${title}. ` }, says];

/** The value of a gauge among its grades, as a sentence: the twin of every drawn range bar. */
export function gaugeText(bar: RangeBar): string {
  const { valueText, grade, noticeableText, clearText } = bar;
  const good = bar.lowIsBad ? `good from ${noticeableText} up` : `good below ${noticeableText}`;
  const poor = bar.lowIsBad ? `poor at ${clearText} and less` : `poor from ${clearText} on`;
  return `${bar.label}: ${valueText}, ${grade} (${good}, ${poor})`;
}
