/** The handbook: all pages as linked files, Markdown or HTML, with an index. */
import { createHash } from 'node:crypto';
import { bullets, heading, type Line, paragraph } from '../document.js';
import { documentHtml, escapeHtml } from '../document-html.js';
import { documentMarkdown } from '../document-markdown.js';
import { allPages, pageBlocks } from './index.js';
import { KIND_WORDS, linkTo, type Page, type PageKind, pageKey } from './page.js';

export type HandbookFormat = 'markdown' | 'html';

/** File name -> content. Every link leads to a file of the handbook. */
export async function handbook(format: HandbookFormat): Promise<ReadonlyMap<string, string>> {
  const pages = await allPages();
  const known = new Set(pages.map((page) => pageKey(page.kind, page.id)));
  const link = (key: string): string | undefined => (known.has(key) ? fileName(key, format) : undefined);
  const write = (title: string, blocks: Parameters<typeof documentMarkdown>[0]): string =>
    format === 'markdown' ? documentMarkdown(blocks, link) : htmlPage(title, documentHtml(blocks, link));
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

const STYLE =
  'body{max-width:46rem;margin:1.5rem auto;padding:0 1rem;font:1rem/1.5 system-ui,sans-serif;color:#1a1a1a;background:#fff}' +
  'a{color:#0060a0}table{border-collapse:collapse}th,td{border:1px solid #767676;padding:.25rem .5rem;text-align:left;vertical-align:top}' +
  'dt{font-weight:600}dd{margin:0 0 .5rem 1rem}pre{white-space:pre-wrap}' +
  '@media (prefers-color-scheme:dark){body{color:#eee;background:#161616}a{color:#7cc4ff}}';
const STYLE_HASH = createHash('sha256').update(STYLE).digest('base64');

function htmlPage(title: string, body: string): string {
  const policy = `default-src 'none'; style-src 'sha256-${STYLE_HASH}'; base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)}</title>
<style>${STYLE}</style>
</head>
<body>
<main>
${body}</main>
</body>
</html>
`;
}
