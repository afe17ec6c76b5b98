/**
 * Six shipped cases as pages, kept as files: no change of a word, a number or a line goes unseen.
 * `npm run golden` writes them anew; read the difference before it is committed.
 */
import { describe, expect, it } from 'vitest';
import { loadCases } from '../../eval/load-cases.js';
import { KEPT_CAUSES } from '../support/formats.js';
import { pageOf, SHOWN_CASES } from '../support/shippedPages.js';

describe('the page of a shipped case is the one that was kept', () => {
  const cases = loadCases();
  it.each(SHOWN_CASES)(
    '%s',
    async (name) => {
      const found = cases.find((each) => each.name === name);
      expect(found).toBeDefined();
      if (found) await expect(pageOf(name, found.book, KEPT_CAUSES).html).toMatchFileSnapshot(`./pages/${name}.html`);
    },
    60_000,
  );
});
