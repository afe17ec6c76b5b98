/** The page around a report or a reference page: self-contained, no script, nothing loaded, styles by hash. */
import { sha256Base64 } from '../../lib/sha256.js';
import { escapeHtml } from '../escape-html.js';
import { STYLE } from './style.js';

/** Longest title of a window or bookmark, characters. */
const LONGEST_TITLE = 70;

let styleHash: string | undefined;

/** Everything is refused but the one style sheet of the page and pictures inside it. */
export function policy(): string {
  styleHash ??= sha256Base64(STYLE);
  return [
    "default-src 'none'",
    `style-src 'sha256-${styleHash}'`,
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

interface Shell {
  readonly title: string;
  /** Finished markup: what stands between the body's tags, with one `main` whose id is `main`. */
  readonly body: string;
}

export function htmlPage({ title, body }: Shell): string {
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy()}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${escapeHtml(shortened(title))}</title>
<style>${STYLE}</style>
</head>
<body>
<a class="skip" href="#main">Skip to the content</a>
${body}
</body>
</html>
`;
}

function shortened(title: string): string {
  const letters = Array.from(title);
  return letters.length <= LONGEST_TITLE ? title : `${letters.slice(0, LONGEST_TITLE - 1).join('')}…`;
}

/** A page of reading text, such as a page of the handbook. */
export function prosePage(title: string, fragment: string): string {
  return htmlPage({ title, body: `<main id="main">\n<div class="prose">\n${fragment}</div>\n</main>` });
}
