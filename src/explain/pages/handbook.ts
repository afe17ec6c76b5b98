/** The handbook: all pages as linked files, Markdown or HTML, with an index. */
import { bullets, heading, type Line, paragraph } from '../document.js';
import { documentHtml } from '../document-html.js';
import { documentMarkdown } from '../document-markdown.js';
import { prosePage } from '../html/shell.js';
import { allPages, pageBlocks } from './index.js';
import { KIND_WORDS, linkTo, type Page, type PageKind, pageKey } from './page.js';

export type HandbookFormat = 'markdown' | 'html';

/** File name -> content. Every link leads to a file of the handbook. */
export async function handbook(format: HandbookFormat): Promise<ReadonlyMap<string, string>> {
  const pages = await allPages();
  const known = new Set(pages.map((page) => pageKey(page.kind, page.id)));
  const link = (key: string): string | undefined => (known.has(key) ? fileName(key, format) : undefined);
  const write = (title: string, blocks: Parameters<typeof documentMarkdown>[0]): string =>
    format === 'markdown'
      ? documentMarkdown(blocks, link)
      : prosePage(title, documentHtml(blocks, { linkTo: link }));
  const entries = pages.map((page): [string, string] => [
    fileName(pageKey(page.kind, page.id), format),
    write(page.title, pageBlocks(page)),
  ]);
  return new Map([[`index.${extension(format)}`, write('Handbook', indexBlocks(pages))], ...entries]);
}

const extension = (format: HandbookFormat): string => (format === 'markdown' ? 'md' : 'html');
const fileName = (key: string, format: HandbookFormat): string =>
  `${key.replaceAll('/', '--')}.${extension(format)}`;

function indexBlocks(pages: readonly Page[]) {
  const kinds = [...new Set(pages.map((page) => page.kind))];
  return [
    heading(1, 'center-audit handbook'),
    paragraph(
      'Written from the data the program runs on. Marks: read, computed, common practice, from memory.',
    ),
    ...kinds.flatMap((kind: PageKind) => [
      heading(2, PLURALS[kind]),
      bullets(
        pages
          .filter((page) => page.kind === kind)
          .map((page): Line => [linkTo(kind, page.id, page.title), ' (', { code: page.id }, ')']),
      ),
    ]),
  ];
}

const PLURALS: Readonly<Record<PageKind, string>> = Object.fromEntries(
  (Object.entries(KIND_WORDS) as [PageKind, string][]).map(([kind, word]) => [kind, `${word}s`]),
) as Record<PageKind, string>;
