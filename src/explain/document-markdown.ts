/** A document as Markdown that common forges render alike. Every string is escaped: no markup, HTML or link gets through. */
import {
  type Block,
  figureLine,
  gaugeText,
  type Inline,
  type Item,
  type Line,
  type ListStyle,
  pieces,
  pieceText,
} from './document.js';

/** Where a link to another page leads; undefined shows its text alone. */
export type PageLink = (page: string) => string | undefined;

export function documentMarkdown(blocks: readonly Block[], linkTo: PageLink = () => undefined): string {
  return `${blocksMarkdown(blocks, linkTo)}\n`;
}

const blocksMarkdown = (blocks: readonly Block[], linkTo: PageLink): string =>
  blocks.map((block) => blockMarkdown(block, linkTo)).join('\n\n');

function blockMarkdown(block: Block, linkTo: PageLink): string {
  const line = (each: Line): string => lineMarkdown(each, linkTo);
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${escaped(block.text)}`;
    case 'paragraph':
      return line(block.line);
    case 'list':
      return block.items
        .map((item, i) => itemMarkdown(item, i + (block.from ?? 1), block.style, linkTo))
        .join('\n');
    case 'table':
      return tableMarkdown(block.head, block.rows);
    case 'pairs':
      return block.rows.map(([label, value]) => pairMarkdown(label, line(value))).join('\n');
    case 'code':
      return codeBlock(block.text);
    case 'meters':
      return tableMarkdown(
        ['', 'cause', 'how sure'],
        block.rows.map((row, i) => [`${i + 1}`, row.label, row.value]),
      );
    case 'gauge':
      return `- ${escaped(gaugeText(block.bar))}`;
    case 'quote':
      return quoteMarkdown(block.text);
    case 'note':
      return quoteMarkdown(block.markdown);
    case 'caution':
      return line([{ strong: 'Caution:' }, ` ${block.texts.join(' ')}`]);
    case 'callout':
      return `${strong(`${block.label}:`)}\n\n${blocksMarkdown(block.blocks, linkTo)}`;
    case 'details':
      return `${strong(block.summary)}\n\n${blocksMarkdown(block.blocks, linkTo)}`;
    case 'figure':
      return line(figureLine(block.chart));
  }
}

const quoteMarkdown = (text: string): string =>
  text
    .split('\n')
    .map((each) => `> ${escaped(each)}`)
    .join('\n');

function lineMarkdown(line: Line, linkTo: PageLink): string {
  return pieces(line)
    .map((piece, i) => pieceMarkdown(piece, linkTo, i === 0))
    .join('');
}

function pieceMarkdown(piece: Inline, linkTo: PageLink, first: boolean): string {
  const text = pieceText(piece);
  if (typeof piece === 'string') return first ? escaped(text) : escapedInside(text);
  if ('strong' in piece) return text === '' ? '' : strong(text);
  if ('code' in piece) return codeSpan(text);
  const target = 'page' in piece ? linkTo(piece.page) : undefined;
  return target === undefined ? escaped(text) : `[${escapedInside(text)}](${target})`;
}

/** Emphasis may not touch blanks on its inside. */
function strong(text: string): string {
  const [, before = '', inner = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(text) ?? [];
  return `${before}**${escapedInside(inner)}**${after}`;
}

/** What belongs to an item is indented to its text: only so do forges keep it inside the list. */
function itemMarkdown(item: Item, number: number, style: ListStyle, linkTo: PageLink): string {
  const mark = style === 'number' ? `${number}. ` : style === 'check' ? '- [ ] ' : '- ';
  const indent = ' '.repeat(style === 'number' ? mark.length : 2);
  const below = (item.below ?? []).map((block) => {
    const gap = block.kind === 'list' ? '\n' : '\n\n';
    return gap + blockMarkdown(block, linkTo).replace(/^(?=.)/gm, indent);
  });
  return mark + lineMarkdown(item.line, linkTo) + below.join('');
}

const pairMarkdown = (label: string, value: string): string =>
  label === '' ? `  - ${value}` : `- ${strong(label)}: ${value}`;

function tableMarkdown(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]): string => `| ${cells.map(escapedInside).join(' | ')} |`;
  return [row(head), `| ${head.map(() => '---').join(' | ')} |`, ...rows.map(row)].join('\n');
}

function codeBlock(text: string): string {
  const fence = '`'.repeat(Math.max(3, longestRun(text) + 1));
  return `${fence}\n${text}\n${fence}`;
}
function codeSpan(text: string): string {
  const clean = text.replace(/\s+/g, ' ');
  const ticks = '`'.repeat(longestRun(clean) + 1);
  const pad = clean.startsWith('`') || clean.endsWith('`') ? ' ' : '';
  return `${ticks}${pad}${clean}${pad}${ticks}`;
}
const longestRun = (text: string): number =>
  Math.max(0, ...[...text.matchAll(/`+/g)].map((match) => match[0].length));

/** Splits what a forge would turn into a link or a mention; nothing is seen of it. */
const ZERO_WIDTH = '&#8203;';

/** Text inside a line: every mark that could open markup is escaped, links and mentions are broken. */
function escapedInside(text: string): string {
  return (
    text
      .replace(/\s*\n\s*/g, ' ')
      .replace(/[\\`*_[\]<>|~&$^]/g, (mark) => (mark === '&' ? '&amp;' : mark === '<' ? '&lt;' : `\\${mark}`))
      // First, as what splits has such a mark of its own.
      .replace(/#(?=\d)/g, `#${ZERO_WIDTH}`)
      .replace(/:(?=\/\/)/g, `:${ZERO_WIDTH}`)
      .replace(/\b(www)\./gi, `$1${ZERO_WIDTH}.`)
      .replace(/@/g, `@${ZERO_WIDTH}`)
  );
}

/** The same at the beginning of a line, where more marks mean something. */
function escaped(text: string): string {
  return escapedInside(text)
    .replace(/^(\s*)([#+=-])/, '$1\\$2')
    .replace(/^(\s*\d{1,9})([.)])/, '$1\\$2');
}
