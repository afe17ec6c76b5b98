/** The built page in a real browser, without any network, and what it complained about. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { AXE_FINDINGS } from '../support/inBrowser.js';
import { ROOT } from '../support/program.js';

export const PAGE = join(ROOT, 'dist', 'center-audit.html');
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const FLAGS = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'];

export type Look = NonNullable<Parameters<Browser['newContext']>[0]>;
export const WIDE = { width: 1280, height: 900 };
export const PHONE = { width: 390, height: 844 };

export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console lines, errors, dialogs and requests other than for the page itself. */
  readonly complaints: readonly string[];
}

export interface Browsing {
  readonly open: (claim: (opened: Opened) => Promise<void>, look?: Look) => Promise<void>;
  readonly close: () => Promise<void>;
}

export async function browse(): Promise<Browsing> {
  const home = mkdtempSync(join(tmpdir(), 'center-audit-page-'));
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: FLAGS,
    env: { ...process.env, HOME: home },
  });
  return {
    open: async (claim, look = {}) => {
      const context = await browser.newContext({ viewport: WIDE, acceptDownloads: true, ...look });
      try {
        await context.setOffline(true);
        const page = await context.newPage();
        const complaints: string[] = [];
        page.on('console', (message) => complaints.push(message.text()));
        page.on('pageerror', (error) => complaints.push(String(error)));
        page.on('dialog', (dialog) => {
          complaints.push(`dialog: ${dialog.message()}`);
          void dialog.dismiss();
        });
        page.on('request', (request) => {
          const own = request.url().startsWith('file:') || request.url().startsWith('blob:');
          if (!own) complaints.push(`asked for ${request.url()}`);
        });
        await page.goto(pathToFileURL(PAGE).href);
        await page.waitForSelector('.c-ask');
        await claim({ page, context, complaints });
      } finally {
        await context.close();
      }
    },
    close: async () => {
      await browser.close();
      rmSync(home, { recursive: true, force: true });
    },
  };
}

const PATIENCE_MS = 20_000;
/** Waits for something to be true in the page; asked from outside, since its policy lets nothing be evaluated inside. */
export async function until(page: Page, expression: string): Promise<void> {
  for (const end = Date.now() + PATIENCE_MS; !(await page.evaluate<boolean>(expression)); ) {
    if (Date.now() > end) throw new Error(`never came true: ${expression}`);
    await page.waitForTimeout(20);
  }
}

/** What axe-core objects to in the page itself; the report in its frame is judged where reports are. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate<string[]>(AXE_FINDINGS.replace('axe.run()', 'axe.run(document, { iframes: false })'));
}

export const openCase = async (page: Page, name: string, text: string): Promise<void> => {
  await page.setInputFiles('input[type=file][accept^=".json"]', {
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await until(
    page,
    `document.querySelector('nav')?.textContent.includes(${JSON.stringify(`Opened ${name}.`)})`,
  );
};

/** Types a line and waits until the page has taken it. */
export async function say(page: Page, text: string): Promise<void> {
  const before = await page.textContent('.c-talk');
  await page.focus('#line');
  await page.keyboard.insertText(text);
  await page.keyboard.press((await page.getAttribute('#line', 'rows')) === null ? 'Enter' : 'Control+Enter');
  await until(page, `document.querySelector('.c-talk')?.textContent !== ${JSON.stringify(before)}`);
}

/** The text of a document that the page writes. */
export async function written(page: Page, label: string): Promise<string> {
  await page.getByRole('button', { name: label, exact: true }).click();
  await page.waitForSelector('#outcome-text');
  return page.inputValue('#outcome-text');
}
