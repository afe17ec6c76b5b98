/**
 * Notes are Markdown, written by people or pasted from anywhere: the only place of the program that reads
 * Markdown. Emphasis, lists, quotes and code are kept. Whatever could load, run or lead somewhere becomes text:
 * raw HTML, links, pictures, tables and forms.
 */
import { Marked, type RendererObject } from 'marked';
import { escapeHtml } from '../escape-html.js';

const renderer: RendererObject = {
  // The library takes what follows a raw `<code>` or `<script>` as escaped already and would pass it on as it is.
  text(token) {
    return 'tokens' in token && token.tokens ? this.parser.parseInline(token.tokens) : escapeHtml(token.text);
  },
  html: ({ text }) => escapeHtml(text),
  link({ tokens, href, text }) {
    const shown = this.parser.parseInline(tokens);
    return text === href ? shown : `${shown} (${escapeHtml(href)})`;
  },
  image: ({ text, href }) => escapeHtml(text === '' ? href : `${text} (${href})`),
  // Headings of a note must not mix with those of the page.
  heading({ tokens }) {
    return `<p><strong>${this.parser.parseInline(tokens)}</strong></p>\n`;
  },
  table: ({ raw }) => `<pre>${escapeHtml(raw.trimEnd())}</pre>\n`,
  code: ({ text }) => `<pre>${escapeHtml(text)}</pre>\n`,
  checkbox: ({ checked }) => (checked ? '☑ ' : '☐ '),
  hr: () => '',
  del({ tokens }) {
    return this.parser.parseInline(tokens);
  },
};

const reader = new Marked({ gfm: true, breaks: true, async: false }, { renderer });

/** A fragment of HTML with text and simple structure only. */
export function markdownHtml(markdown: string): string {
  return reader.parse(markdown, { async: false });
}
