/** The handbook: a file a page, an index by kind, links only between its own files. */
import { describe, expect, it } from 'vitest';
import { handbook } from '../../../src/explain/pages/handbook.js';

describe('the handbook', () => {
  it('in Markdown has an index with every kind in the plural, and a link to every page', async () => {
    const files = await handbook('markdown');
    const index = files.get('index.md') ?? '';
    expect(index.match(/^## .*$/gm)).toEqual([
      '## Causes',
      '## Complaints',
      '## Questions',
      '## Home tests',
      '## Rules',
      '## Thresholds',
      '## Computed facts',
      '## Calculators',
      '## Sources',
    ]);
    const names = [...files.keys()].filter((name) => name !== 'index.md');
    for (const name of names) expect(index).toContain(`(${name})`);
    expect(index.match(/\]\(/g)).toHaveLength(names.length);
    const causes = index.slice(index.indexOf('## Causes'), index.indexOf('## Complaints'));
    expect(causes.match(/\]\(cause--/g)).toHaveLength((causes.match(/\]\(/g) ?? []).length);
    expect(causes).toContain('](cause--delay.md) (`delay`)');
  });
  it('links from page to page by the names of its files, dashes for slashes', async () => {
    const page = (await handbook('markdown')).get('cause--delay.md') ?? '';
    expect(page).toMatch(/^# /);
    expect(page).toContain('](rule--delay--arrival-error.md)');
    expect(page).toContain('](complaint--hollow.md)');
  });
  it('in HTML has whole pages with a title each', async () => {
    const files = await handbook('html');
    expect(files.get('index.html')).toMatch(/<title>[^<]*Handbook[^<]*<\/title>/i);
    const page = files.get('cause--delay.html') ?? '';
    expect(page).toMatch(/^<!doctype html>/i);
    expect(page).toContain('href="rule--delay--arrival-error.html"');
    expect(page).not.toContain('.md"');
  });
});
