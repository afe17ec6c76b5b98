/** All reference pages, and finding the one that was meant. */
import { nearest } from '../../lib/nearest.js';
import { quoted } from '../../lib/sanitize.js';
import { UserError } from '../../lib/user-error.js';
import { type Block, heading } from '../document.js';
import { documentMarkdown } from '../document-markdown.js';
import { documentText } from '../document-text.js';
import { PLAIN_TEXT, type TextOptions } from '../terminal.js';
import { calculatorPages } from './calculators.js';
import { complaintPages, computedPages, factPages, sourcePages, thresholdPages } from './facts.js';
import { KIND_WORDS, type Page, pageKey } from './page.js';
import { causePages, type Learned, rulePages } from './rules.js';

/** Every page, in the order of a handbook. */
export async function allPages(learned?: Learned): Promise<Page[]> {
  return [
    ...causePages(learned),
    ...complaintPages(),
    ...factPages(),
    ...rulePages(),
    ...thresholdPages(),
    ...computedPages(),
    ...(await calculatorPages()),
    ...sourcePages(),
  ];
}

/**
 * The pages of an id, most often one; a calculator and a source may share a name, and both are shown.
 * `calculator/comb` names one of them. Throws a UserError with near ids where there is none.
 */
export async function pagesOf(id: string, learned?: Learned): Promise<Page[]> {
  const pages = await allPages(learned);
  const found = pages.filter((page) => page.id === id || pageKey(page.kind, page.id) === id);
  if (found.length > 0) return found;
  const near = suggestions(id, [...new Set(pages.map((page) => page.id))]);
  throw new UserError({
    where: 'explain',
    what: `there is no page for ${quoted(id)}${near.length > 0 ? `; did you mean ${near.join(', ')}?` : ''}`,
    accepted:
      'the id of a cause, complaint, fact, home test, rule (cause/rule), threshold, calculator or source',
    example: 'center-audit explain driver-layout',
  });
}

const MOST_SUGGESTIONS = 3;

/** The nearest id by spelling first, then ids that hold what was typed. */
export function suggestions(typed: string, ids: readonly string[]): string[] {
  const bare = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');
  const wanted = bare(typed.slice(0, 60));
  const spelled = nearest(typed, ids);
  const holding = wanted.length < 3 ? [] : ids.filter((id) => bare(id).includes(wanted));
  const shortest = [...holding].sort((a, b) => a.length - b.length);
  return [...new Set([...(spelled ? [spelled] : []), ...shortest])].slice(0, MOST_SUGGESTIONS);
}

/** A page as a document with its title, kind and id on top. */
export function pageBlocks(page: Page): Block[] {
  return [
    heading(1, page.title),
    { kind: 'paragraph', line: [`${KIND_WORDS[page.kind]} `, { code: page.id }] },
    ...page.blocks,
  ];
}

export function renderPagesText(pages: readonly Page[], options: Partial<TextOptions> = {}): string {
  return pages.map((page) => documentText(pageBlocks(page), { ...PLAIN_TEXT, ...options })).join('\n');
}
export const renderPagesMarkdown = (pages: readonly Page[]): string =>
  pages.map((page) => documentMarkdown(pageBlocks(page))).join('\n');
