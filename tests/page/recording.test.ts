/** A recording brought to the page: decoded by the browser, measured, and into the case. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import { DEMO_TAKE, record } from '../../src/recording/invented.js';
import { measure } from '../../src/recording/measure.js';
import { type Browsing, browse, until, violations } from './opened.js';

const LONG_MS = 120_000;
const samples = record(DEMO_TAKE);

let browsing: Browsing;
beforeAll(async () => {
  browsing = await browse();
}, LONG_MS);
afterAll(() => browsing?.close());

/** 16-bit WAV of one channel, written here so that the reading is held to more than its own writer. */
function wav(sound: Float32Array, rateHz: number): Buffer {
  const bytes = Buffer.alloc(44 + 2 * sound.length);
  bytes.write('RIFF');
  bytes.writeUInt32LE(bytes.length - 8, 4);
  bytes.write('WAVEfmt ', 8);
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(rateHz, 24);
  bytes.writeUInt32LE(2 * rateHz, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36);
  bytes.writeUInt32LE(2 * sound.length, 40);
  for (const [i, value] of sound.entries())
    bytes.writeInt16LE(Math.round(32_767 * Math.max(-1, Math.min(1, value))), 44 + 2 * i);
  return bytes;
}

it(
  'tells the same arrival as the command line, and the case holds it as measured',
  async () => {
    const { measurement } = measure(samples, DEMO_TAKE.rateHz);
    const { centerMinusLeft } = measurement.delayMs;
    await browsing.open(async ({ page, complaints }) => {
      await page.setInputFiles('#record-file', {
        name: 'seat.wav',
        mimeType: 'audio/wav',
        buffer: wav(samples, DEMO_TAKE.rateHz),
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
      const silence = wav(new Float32Array(48_000), 48_000);
      await page.setInputFiles('#record-file', { name: 'y.wav', mimeType: 'audio/wav', buffer: silence });
      await until(page, "document.querySelector('.c-measured')?.textContent.includes('not found') ?? false");
    });
  },
  LONG_MS,
);
