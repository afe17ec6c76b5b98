/** A recording brought to the page: decoded by the browser, measured, and into the case. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import { DEMO_TAKE, record } from '../../src/recording/invented.js';
import { measure } from '../../src/recording/measure.js';
import { wavOf } from '../support/wav.js';
import { type Browsing, browse, until, violations } from './opened.js';

const LONG_MS = 120_000;
const samples = record(DEMO_TAKE);

let browsing: Browsing;
beforeAll(async () => {
  browsing = await browse();
}, LONG_MS);
afterAll(() => browsing?.close());

it(
  'tells the same arrival as the command line, and the case holds it as measured',
  async () => {
    const { measurement } = measure(samples, DEMO_TAKE.rateHz);
    const { centerMinusLeft } = measurement.delayMs;
    await browsing.open(async ({ page, complaints }) => {
      await page.setInputFiles('#record-file', {
        name: 'seat.wav',
        mimeType: 'audio/wav',
        buffer: wavOf(samples, DEMO_TAKE.rateHz),
      });
      await until(page, "document.querySelector('.c-measured') !== null");
      await until(
        page,
        'document.querySelector(".c-answers").textContent.includes("lateness of the center")',
      );
      const text = (await page.textContent('.c-measured')) ?? '';
      expect(centerMinusLeft).not.toBeNull();
      expect(text).toContain((centerMinusLeft ?? 0).toFixed(1));
      expect(await violations(page)).toEqual([]);
      expect(complaints).toEqual([]);
    });
  },
  LONG_MS,
);

it(
  'is refused in words where it is no sound or another one',
  async () => {
    await browsing.open(async ({ page }) => {
      await page.setInputFiles('#record-file', {
        name: 'x.wav',
        mimeType: 'audio/wav',
        buffer: Buffer.from('no sound at all'),
      });
      await until(page, "document.querySelector('.c-record [role=alert]') !== null");
      const silence = wavOf(new Float32Array(48_000), 48_000);
      await page.setInputFiles('#record-file', { name: 'y.wav', mimeType: 'audio/wav', buffer: silence });
      await until(page, "document.querySelector('.c-measured')?.textContent.includes('not found') ?? false");
    });
  },
  LONG_MS,
);
