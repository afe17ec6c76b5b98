/** The page around a report: its policy, its title, its one style sheet. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { htmlPage, policy, prosePage } from '../../../src/explain/html/shell.js';

const titleOf = (html: string): string => /<title>(.*)<\/title>/.exec(html)?.[1] ?? '';

describe('the page', () => {
  const html = htmlPage({ title: 'A < B', body: '<main id="main">here</main>' });
  it('refuses everything but its own style sheet and pictures inside it', () => {
    const style = /<style>(.*?)<\/style>/s.exec(html)?.[1] ?? '';
    const hash = createHash('sha256').update(style).digest('base64');
    expect(policy().split('; ')).toEqual([
      "default-src 'none'",
      `style-src 'sha256-${hash}'`,
      'img-src data:',
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    expect(html).toContain(`content="${policy()}"`);
  });
  it('says its language, fits a phone, and lets a keyboard skip to the content', () => {
    expect(html).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
    expect(html).toContain('content="width=device-width, initial-scale=1"');
    expect(html).toContain(
      '<a class="skip" href="#main">Skip to the content</a>\n<main id="main">here</main>\n</body>',
    );
  });
  it('has its title escaped, cut to seventy letters', () => {
    expect(titleOf(html)).toBe('A &lt; B');
    const titled = (title: string): string => titleOf(htmlPage({ title, body: '' }));
    expect(titled('x'.repeat(70))).toBe('x'.repeat(70));
    expect(titled('x'.repeat(71))).toBe(`${'x'.repeat(69)}…`);
    // A letter outside the basic plane counts as one and is never cut in half.
    expect(titled('𝄞'.repeat(70))).toBe('𝄞'.repeat(70));
    expect(titled('𝄞'.repeat(71))).toBe(`${'𝄞'.repeat(69)}…`);
  });
  it('of reading text has the fragment as its content', () => {
    const prose = prosePage('Words', '<p>text</p>\n');
    expect(titleOf(prose)).toBe('Words');
    expect(prose).toContain('<main id="main">\n<div class="prose">\n<p>text</p>\n</div>\n</main>');
  });
});
