/** The page in a real browser: nothing refused, nothing for a screen reader to stumble over, nothing cut off. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadCases } from '../../../eval/load-cases.js';
import { handbook } from '../../../src/explain/pages/handbook.js';
import {
  ADDRESS_END,
  AXE_FINDINGS,
  FOCUS_OUTLINE,
  FOCUSED,
  NAMES_AT_FAULT,
  OPEN_ALL,
  SCROLL_WIDTH,
  TEXT_COLOR,
} from '../../support/inBrowser.js';
import { pageOf, SHOWN_CASES, type ShippedPage, shippedPages } from '../../support/shippedPages.js';
import { LOBING } from '../books.js';
import { HOSTILE } from '../hostile.js';

const CHROMIUM = '/usr/bin/chromium';
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const LONG_MS = 180_000;
const PHONE = { width: 360, height: 740 };
const WIDE = { width: 1600, height: 1000 };

let browser: Browser;
let profile: string;
let pages: readonly ShippedPage[] = [];
beforeAll(async () => {
  expect(existsSync(CHROMIUM), 'npm test installs chromium').toBe(true);
  profile = mkdtempSync(join(tmpdir(), 'center-audit-browser-'));
  browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: FLAGS,
    env: { ...process.env, HOME: profile },
  });
  const cases = loadCases();
  pages = SHOWN_CASES.map((name) => {
    const found = cases.find((each) => each.name === name);
    if (!found) throw new Error(`no case ${name}`);
    return pageOf(name, found.book);
  });
}, LONG_MS);
afterAll(async () => {
  await browser?.close();
  rmSync(profile, { recursive: true, force: true });
});

type Look = NonNullable<Parameters<Browser['newContext']>[0]>;

/** Opens markup and hands over what the browser complained about or asked the network for. */
async function open(
  html: string,
  look: Look,
  claim: (page: Page, complaints: readonly string[]) => Promise<void>,
): Promise<void> {
  const context: BrowserContext = await browser.newContext({ viewport: PHONE, ...look });
  try {
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('dialog', (dialog) => {
      complaints.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    await page.route('**/*', (route) => {
      complaints.push(`asked for ${route.request().url()}`);
      return route.abort();
    });
    await page.setContent(html);
    await claim(page, complaints);
  } finally {
    await context.close();
  }
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate<string[]>(AXE_FINDINGS);
}

describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  it(
    'axe finds nothing, and the browser has nothing to refuse',
    async () => {
      for (const { name, html } of pages) {
        await open(html, { colorScheme, viewport: PHONE }, async (page, complaints) => {
          // Closed parts are judged too.
          await page.evaluate(OPEN_ALL);
          expect(await violations(page), name).toEqual([]);
          expect(complaints, name).toEqual([]);
        });
      }
    },
    LONG_MS,
  );
});

describe('the policy of the page', () => {
  it('is enforced: an inline style and a picture from elsewhere are refused', async () => {
    const [{ html } = { html: '' }] = pages;
    const bad = html.replace(
      '<main',
      '<p style="color:red">x</p><img src="https://evil.example/x.png" alt="x"><main',
    );
    await open(bad, {}, async (_, complaints) => {
      expect(complaints.filter((each) => each.includes('Content Security Policy'))).toHaveLength(2);
    });
  }, 60_000);
});

describe('on a phone of 360 px', () => {
  it('the first screen says what is wrong, how sure that is, and what to do first', async () => {
    for (const { name, html, report } of pages) {
      await open(html, {}, async (page) => {
        const bottomOf = (selector: string) =>
          page
            .locator(selector)
            .first()
            .evaluate((element) => element.getBoundingClientRect().bottom);
        expect(await bottomOf('h1'), name).toBeLessThan(PHONE.height);
        if (report.plan.length > 0)
          expect(await bottomOf('.callout .eyebrow + p'), name).toBeLessThan(PHONE.height);
      });
    }
  }, 60_000);

  it('nothing is wider than the screen, also with everything opened', async () => {
    for (const { name, html } of pages) {
      await open(html, {}, async (page) => {
        await page.evaluate(OPEN_ALL);
        expect(await page.evaluate(SCROLL_WIDTH), name).toBeLessThanOrEqual(PHONE.width);
      });
    }
  }, 60_000);
});

describe('every shipped case', () => {
  const looked: { name: string; sheets: number; atFault: string[] }[] = [];
  beforeAll(async () => {
    await open('', { viewport: { width: 390, height: 800 } }, async (page) => {
      for (const { name, html } of shippedPages()) {
        await page.setContent(html);
        const pdf = await page.pdf({ preferCSSPageSize: true });
        const sheets = pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
        await page.evaluate(OPEN_ALL);
        looked.push({ name, sheets, atFault: await page.evaluate<string[]>(NAMES_AT_FAULT) });
      }
    });
  }, LONG_MS);
  it('has pictures whose names can be read on a phone, inside the drawing, off the lines and off each other', () => {
    expect(looked.length).toBeGreaterThan(80);
    expect(looked.filter(({ atFault }) => atFault.length > 0)).toEqual([]);
  });

  it('fits three sheets of paper', () => {
    expect(looked.filter(({ sheets }) => sheets === 0 || sheets > 3)).toEqual([]);
  });
});

describe('by keyboard', () => {
  it('the first tab reaches the skip link, and everything that takes part shows where it is', async () => {
    const [{ html } = { html: '' }] = pages;
    await open(html, { viewport: WIDE }, async (page) => {
      await page.keyboard.press('Tab');
      expect(await page.evaluate(FOCUSED)).toBe('Skip to the content');
      expect(await page.evaluate(FOCUS_OUTLINE)).toBe('solid');
      await page.keyboard.press('Enter');
      expect(await page.evaluate(ADDRESS_END)).toBe('#main');
    });
  }, 60_000);

  it('a step of the plan ticks without a script', async () => {
    const [{ html } = { html: '' }] = pages;
    await open(html, { javaScriptEnabled: false }, async (page) => {
      await page.locator('label[for="step-1-done"]').click();
      expect(await page.locator('#step-1-done').isChecked()).toBe(true);
      expect(await page.locator('#step-1 .body').isVisible()).toBe(false);
    });
  }, 60_000);
});

describe('on paper', () => {
  it('what is folded is left out, and so is the contents list', async () => {
    const [{ html } = { html: '' }] = pages;
    await open(html, { viewport: WIDE }, async (page) => {
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('nav.toc').isVisible()).toBe(false);
      expect(await page.locator('details:not([open])').first().isVisible()).toBe(false);
      expect(await page.evaluate(TEXT_COLOR)).toBe('rgb(28, 35, 38)');
    });
  }, 60_000);
});

describe('text of strangers', () => {
  it('does nothing in a browser, all of it at once', async () => {
    const text = HOSTILE.join('\n');
    const { html } = pageOf('hostile', { ...LOBING, title: text.slice(0, 400), words: text, notes: HOSTILE });
    await open(html, {}, async (page, complaints) => {
      expect(complaints).toEqual([]);
      expect(
        await page.locator('script, iframe, img, form, a[href^="http"], a[href^="javascript"]').count(),
      ).toBe(0);
      expect(await page.locator('h1').count()).toBe(1);
      expect(await violations(page)).toEqual([]);
    });
  }, 60_000);
});

describe('the handbook', () => {
  it('wears the same style without a complaint', async () => {
    const files = await handbook('html');
    for (const name of ['index.html', 'cause--driver-layout.html', 'calculator--comb.html']) {
      await open(files.get(name) ?? '', {}, async (page, complaints) => {
        expect(await violations(page), name).toEqual([]);
        expect(complaints, name).toEqual([]);
        expect(await page.evaluate(SCROLL_WIDTH), name).toBeLessThanOrEqual(PHONE.width);
      });
    }
  }, 60_000);
});
