/** Reads a reference page as people do: what stands beside a label, and what under a heading. */
import { type Block, lineText, pieces } from '../../../src/explain/document.js';
import type { Page } from '../../../src/explain/pages/page.js';

/** What stands beside each label. */
export function labeled({ blocks }: Page): Readonly<Record<string, string>> {
  const rows = blocks.flatMap((block) => (block.kind === 'pairs' ? block.rows : []));
  return Object.fromEntries(rows.map(([label, line]) => [label, lineText(line)]));
}

export const headings = ({ blocks }: Page): string[] =>
  blocks.flatMap((block) => (block.kind === 'heading' ? [block.text] : []));

/** The blocks under a heading; without one those before the first. */
export function under({ blocks }: Page, heading?: string): readonly Block[] {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.text === heading) + 1;
  const length = blocks.slice(start).findIndex((block) => block.kind === 'heading');
  return blocks.slice(start, length < 0 ? undefined : start + length);
}

/** Lists item by item, paragraphs and rows of tables one a line. */
export const linesUnder = (page: Page, heading?: string): string[] =>
  under(page, heading).flatMap((block) => {
    if (block.kind === 'list') return block.items.map(({ line }) => lineText(line));
    if (block.kind === 'paragraph') return [lineText(block.line)];
    if (block.kind === 'table') return block.rows.map((row) => row.join(' | '));
    return block.kind === 'code' ? [block.text] : [];
  });

const blockLines = (block: Block): string[] =>
  block.kind === 'paragraph'
    ? [lineText(block.line)]
    : block.kind === 'caution'
      ? block.texts.map((text) => `Caution: ${text}`)
      : [];

/** What stands below each item of the lists under a heading. */
export const belowItems = (page: Page, heading: string): string[][] =>
  under(page, heading).flatMap((block) =>
    block.kind === 'list' ? block.items.map(({ below = [] }) => below.flatMap(blockLines)) : [],
  );

/** Keys of the pages that the lists under a heading lead to. */
export const linksUnder = (page: Page, heading: string): string[] =>
  under(page, heading).flatMap((block) =>
    block.kind === 'list'
      ? block.items.flatMap(({ line }) =>
          pieces(line).flatMap((piece) => (typeof piece === 'object' && 'page' in piece ? [piece.page] : [])),
        )
      : [],
  );
