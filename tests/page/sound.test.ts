/** What is played is what is drawn: the rendered sound measured against the curve. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readCase } from '../../src/facts/case-file.js';
import { type Curve, equalLoudnessDb } from '../../src/page/audio/filter-taps.js';
import { VOICE_SPECTRUM_DB } from '../../src/page/audio/speech-sound.js';
import { heardAt } from '../../src/page/heard.js';
import { ROOT } from '../support/program.js';

const LONG_MS = 60_000;
/** Frequencies at which the rendered sound is looked at, Hz. */
const LOOKED_AT_HZ = [125, 200, 400, 800, 1250, 2000, 2160, 3150, 5000, 8000, 11_000];

/** An impulse through the very chain that is played, and its level at each frequency; source text for the page. */
const RENDERED = `async (curve, frequencies) => {
  const rate = 48000, length = 2 * player.TAPS;
  const context = new OfflineAudioContext(1, length, rate);
  const sound = new AudioBuffer({ length, sampleRate: rate });
  sound.getChannelData(0)[0] = 0.01;
  const { source } = player.chain(context, sound, curve);
  source.loop = false;
  source.start();
  const out = (await context.startRendering()).getChannelData(0);
  return frequencies.map((hz) => {
    let re = 0, im = 0;
    out.forEach((value, n) => { re += value * Math.cos(2 * Math.PI * hz * n / rate); im += value * Math.sin(2 * Math.PI * hz * n / rate); });
    return 20 * Math.log10(Math.hypot(re, im) / 0.01);
  });
}`;

let browser: Browser;
let code: string;
beforeAll(async () => {
  const { outputFiles } = await build({
    absWorkingDir: ROOT,
    stdin: {
      contents:
        "export { chain } from '../../src/page/audio/player.js'; export { TAPS } from '../../src/page/audio/filter-taps.js';",
      resolveDir: import.meta.dirname,
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'player',
    logLevel: 'silent',
  });
  code = outputFiles[0]?.text ?? '';
  browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  });
}, LONG_MS);
afterAll(() => browser?.close());

const rendered = async (curve: Curve): Promise<number[]> => {
  const page = await browser.newPage();
  await page.evaluate(code.replace('var player', 'globalThis.player'));
  const levels = await page.evaluate<number[]>(
    `(${RENDERED})(${JSON.stringify(curve)}, ${JSON.stringify(LOOKED_AT_HZ)})`,
  );
  await page.close();
  return levels;
};

const { book } = readCase(readFileSync(join(ROOT, 'cases', 'demo.json'), 'utf8'));

describe('the played filter', () => {
  it(
    'is the drawn curve within 0.5 dB, moved to equal loudness',
    async () => {
      const { total } = heardAt(book, 0);
      const gainDb = equalLoudnessDb(total, VOICE_SPECTRUM_DB);
      const levels = await rendered(total);
      const drawn = (hz: number): number => {
        const above = total.findIndex(([at]) => at >= hz);
        const [lowHz, low] = total[above - 1] ?? [hz, 0];
        const [highHz, high] = total[above] ?? [hz, 0];
        return low + ((high - low) * Math.log(hz / lowHz)) / Math.log(highHz / lowHz);
      };
      for (const [i, hz] of LOOKED_AT_HZ.entries())
        expect(Math.abs((levels[i] ?? 0) - gainDb - drawn(hz)), `${hz} Hz`).toBeLessThan(0.5);
    },
    LONG_MS,
  );

  it(
    'changes nothing where nothing is wrong',
    async () => {
      const levels = await rendered([
        [20, 0],
        [20_000, 0],
      ]);
      for (const level of levels) expect(Math.abs(level)).toBeLessThan(0.1);
    },
    LONG_MS,
  );
});

describe('equal loudness', () => {
  it('is the gain back where everything is weaker by as much', () => {
    const down: Curve = [
      [20, -6],
      [20_000, -6],
    ];
    expect(equalLoudnessDb(down, VOICE_SPECTRUM_DB)).toBeCloseTo(6, 9);
  });
});
