/** The page as its users have it: in a browser, without a network, by keyboard, pointer and file. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { offAxis } from '../../src/acoustics/offaxis.js';
import { renderJson } from '../../src/explain/render/json.js';
import { buildReport } from '../../src/explain/report.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { begin, reply } from '../../src/interview/conversation.js';
import { HOSTILE } from '../explain/hostile.js';
import { SCROLL_WIDTH, TEXT_COLOR, touchOne } from '../support/inBrowser.js';
import { program, ROOT, workFolder } from '../support/program.js';
import {
  type Browsing,
  browse,
  openCase,
  PAGE,
  PHONE,
  say,
  until,
  violations,
  WIDE,
  written,
} from './opened.js';

const LONG_MS = 120_000;
const demo = readFileSync(join(ROOT, 'cases', 'demo.json'), 'utf8');

let browsing: Browsing;
beforeAll(async () => {
  browsing = await browse();
}, LONG_MS);
afterAll(() => browsing?.close());

describe('the file', () => {
  it('weighs at most 1.5 MB and names its own script and styles in its policy, nothing else', () => {
    const html = readFileSync(PAGE, 'utf8');
    expect(Buffer.byteLength(html)).toBeLessThanOrEqual(1_500_000);
    const policy = /Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(html).not.toMatch(/<script[^>]+src=|<link /);
  });
});

describe('the command', () => {
  it('writes the page out and says what to do with it', async () => {
    const folder = workFolder();
    try {
      const { code, out, err } = await program(['page', 'room.html'], { cwd: folder.path });
      expect({ code, out }).toEqual({ code: 0, out: '' });
      expect(err).toContain('room.html');
      expect(readFileSync(join(folder.path, 'room.html'), 'utf8')).toBe(readFileSync(PAGE, 'utf8'));
    } finally {
      folder.remove();
    }
  });
});

describe('a conversation', () => {
  const lines = [
    'The voice is unclear at the end of the sofa',
    '1',
    'imperial',
    '?',
    '1',
    '?',
    '?',
    '?',
    '2',
    'f',
  ];

  it(
    'by keyboard alone ends in the same report as in the terminal',
    async () => {
      let state = begin(EMPTY_BOOK, { full: false, now: () => 0 });
      for (const line of lines) state = reply(state, line);
      await browsing.open(async ({ page, complaints }) => {
        for (const line of lines) await say(page, line);
        expect(await written(page, 'For programs (JSON)')).toBe(renderJson(buildReport(state.audit)));
        expect(complaints).toEqual([]);
      });
    },
    LONG_MS,
  );

  it(
    'takes a pasted post of many lines whole',
    async () => {
      const post = [
        'Hello all,',
        '',
        'my center sounds like a box.',
        'We sit 10 ft away.',
        'Any ideas?',
      ].join('\n');
      await browsing.open(async ({ page }) => {
        await say(page, post);
        expect(await page.textContent('.c-answers')).toContain('my center sounds like a box.');
      });
    },
    LONG_MS,
  );

  it(
    'lets an earlier answer be changed beside it, and goes back at Esc',
    async () => {
      await browsing.open(async ({ page }) => {
        await openCase(page, 'demo.json', demo);
        const [change] = await page.getByRole('button', { name: /^Change: seat distance/ }).all();
        await change?.click();
        await until(page, "document.querySelector('.c-ask').textContent.includes('far')");
        await say(page, '12 ft');
        expect(await page.textContent('.c-answers')).toContain('12 ft');
        await page.focus('#line');
        const before = await page.textContent('.c-ask');
        await page.keyboard.press('Escape');
        await until(page, `document.querySelector('.c-ask').textContent !== ${JSON.stringify(before)}`);
      });
    },
    LONG_MS,
  );
});

describe('the same engine', () => {
  it(
    'gives the same JSON as the command line, to the last digit',
    async () => {
      await browsing.open(async ({ page }) => {
        for (const name of ['demo', 'delay-feet-as-meters', 'screen-loss-center-only']) {
          const path = join(ROOT, 'cases', `${name}.json`);
          const { out } = await program(['audit', path, '--json']);
          await openCase(page, `${name}.json`, readFileSync(path, 'utf8'));
          expect(await written(page, 'For programs (JSON)')).toBe(out);
        }
      });
    },
    LONG_MS,
  );

  it(
    'saves a case that opens again, here and on the command line',
    async () => {
      await browsing.open(async ({ page }) => {
        await openCase(page, 'demo.json', demo);
        const json = await written(page, 'For programs (JSON)');
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          page.getByRole('button', { name: 'Save as a file' }).click(),
        ]);
        const text = readFileSync(await download.path(), 'utf8');
        await page.reload();
        await page.waitForSelector('.c-ask');
        await openCase(page, 'saved.json', text);
        expect(await written(page, 'For programs (JSON)')).toBe(json);
        const { out } = await program(['audit', '-', '--json'], { stdin: text });
        expect(out).toBe(json);
      });
    },
    LONG_MS,
  );

  it(
    'keeps a case in the browser only when asked, and deletes it',
    async () => {
      await browsing.open(async ({ page }) => {
        await openCase(page, 'demo.json', demo);
        expect(await page.evaluate('localStorage.length')).toBe(0);
        await page.getByRole('button', { name: 'Keep in this browser' }).click();
        await until(page, 'localStorage.length > 0');
        await page.reload();
        await page.getByRole('button', { name: 'Open what is kept' }).click();
        await until(page, "document.querySelector('.c-answers').textContent.includes('window end')");
        await page.getByRole('button', { name: 'Delete what is kept' }).click();
        expect(await page.evaluate('localStorage.length')).toBe(0);
      });
    },
    LONG_MS,
  );
});

describe('the room', () => {
  it(
    'tells the dip of a dragged seat as the calculator does, and takes it over or drops it',
    async () => {
      await browsing.open(async ({ page }) => {
        await openCase(page, 'demo.json', demo);
        const seat = page.getByRole('button', { name: /^window end/ });
        await seat.scrollIntoViewIfNeeded();
        const box = await seat.boundingBox();
        if (!box) throw new Error('the seat is not drawn');
        await page.mouse.move(box.x + box.width / 2, box.y + 8);
        await page.mouse.down();
        await page.mouse.move(box.x + box.width / 2 - 12, box.y + 8, { steps: 8 });
        await page.mouse.up();
        await until(page, "document.querySelectorAll('.c-room-panel table').length === 2");
        await page.waitForTimeout(300);
        const [, azimuth = '', dip = ''] = await page
          .locator('.c-room-panel table')
          .nth(1)
          .locator('tbody tr')
          .first()
          .locator('th, td')
          .allTextContents();
        const { book } = readCase(demo);
        const value = (
          id: 'centerDriverSpacing' | 'centerCrossover' | 'seatDistance',
        ): number | undefined => {
          const answer = book.answers.get(id);
          return answer && 'value' in answer ? Number(answer.value) : undefined;
        };
        const [x = 0, y = 0] =
          ((await seat.getAttribute('aria-label')) ?? '').match(/[\d.]+(?= m)/g)?.map(Number) ?? [];
        const azimuthDeg = (Math.atan2(x, y) * 180) / Math.PI;
        expect(azimuthDeg).toBeGreaterThan(17);
        expect(Math.abs(Number.parseFloat(azimuth) - azimuthDeg)).toBeLessThan(0.3);
        const spacingM = value('centerDriverSpacing');
        const crossoverHz = value('centerCrossover');
        const { dipDb } = offAxis({
          layout: 'mid-tweeter-mid',
          azimuthDeg,
          distanceM: Math.hypot(x, y),
          ...(spacingM === undefined ? {} : { spacingM }),
          ...(crossoverHz === undefined ? {} : { crossoverHz }),
        });
        // Printed to a tenth of a dB, from a place printed to a centimeter.
        expect(Math.abs(Number.parseFloat(dip.replace('−', '-')) - dipDb)).toBeLessThan(0.4);
        await page.getByRole('button', { name: 'Drop it' }).click();
        expect(await page.locator('.c-room-panel table').count()).toBe(1);
      });
    },
    LONG_MS,
  );

  it(
    'moves by arrow keys and is taken over into the case',
    async () => {
      await browsing.open(async ({ page }) => {
        await openCase(page, 'demo.json', demo);
        await page.getByRole('button', { name: /^right,/ }).focus();
        await page.keyboard.press('Shift+ArrowRight');
        await page.getByRole('button', { name: 'Take it over' }).click();
        await until(page, "document.querySelectorAll('.c-room-panel table').length === 1");
        expect(await page.textContent('.c-said')).toContain('taken over');
      });
    },
    LONG_MS,
  );
});

describe('the best compromise', () => {
  it(
    'is one button, and its entries can be tried in the room',
    async () => {
      await browsing.open(async ({ page, complaints }) => {
        await openCase(page, 'demo.json', demo);
        await page.getByRole('button', { name: 'The best compromise over all seats' }).click();
        await until(page, "document.querySelector('.c-sheet') !== null");
        await page.getByRole('button', { name: 'Try its entries here' }).click();
        await until(page, "document.querySelectorAll('.c-room-panel table').length >= 2");
        expect(complaints).toEqual([]);
      });
    },
    LONG_MS,
  );
});

describe('on every screen', () => {
  it.each([
    ['a phone, light', PHONE, 'light'],
    ['a phone, dark', PHONE, 'dark'],
    ['a desk, light', WIDE, 'light'],
    ['a desk, dark', WIDE, 'dark'],
  ] as const)(
    'on %s nothing is cut off and axe finds nothing, at five moments',
    async (_, viewport, colorScheme) => {
      await browsing.open(
        async ({ page, complaints }) => {
          const judge = async (moment: string): Promise<void> => {
            expect(await violations(page), moment).toEqual([]);
            expect(Number(await page.evaluate(SCROLL_WIDTH)), moment).toBeLessThanOrEqual(viewport.width);
          };
          await judge('at the start');
          await say(page, 'unclear at the side');
          await judge('at the list of complaints');
          await openCase(page, 'demo.json', demo);
          await judge('with a case');
          await page.getByRole('button', { name: /^center,/ }).focus();
          await page.keyboard.press('ArrowRight');
          await page.waitForSelector('text=As moved here');
          await judge('with the room moved');
          // A sure case is at its result already.
          const now = page.getByRole('button', { name: 'Result now' });
          if (await now.isVisible()) await now.click();
          await page.getByRole('button', { name: 'Show the report' }).click();
          await page.waitForSelector('iframe');
          await judge('with the report');
          expect(complaints).toEqual([]);
        },
        { viewport, colorScheme },
      );
    },
    LONG_MS,
  );

  it(
    'is light on dark where that is wished',
    async () => {
      const colors: unknown[] = [];
      for (const colorScheme of ['light', 'dark'] as const)
        await browsing.open(async ({ page }) => void colors.push(await page.evaluate(TEXT_COLOR)), {
          colorScheme,
        });
      expect(new Set(colors).size).toBe(2);
    },
    LONG_MS,
  );
});

describe('hostile texts and files', () => {
  it(
    'stay text',
    async () => {
      await browsing.open(async ({ page, complaints }) => {
        await say(page, HOSTILE.join(' '));
        const evil = JSON.stringify({ complaints: ['dull'], title: HOSTILE[1], words: HOSTILE.join('\n') });
        await openCase(page, 'evil.json', evil);
        await page.getByRole('button', { name: 'Show the report' }).click();
        await page.waitForSelector('iframe');
        await page.waitForTimeout(300);
        expect(complaints).toEqual([]);
      });
    },
    LONG_MS,
  );

  it.each([
    ['no JSON', '{"facts": '],
    ['another program’s', '{"hello": 1}'],
    ['nothing', ''],
  ])(
    'that are no case (%s) are told and change nothing',
    async (_, text) => {
      await browsing.open(async ({ page, complaints }) => {
        await openCase(page, 'demo.json', demo);
        const before = await page.textContent('.c-answers');
        await page.setInputFiles('input[type=file][accept^=".json"]', {
          name: 'bad.json',
          mimeType: 'application/json',
          buffer: Buffer.from(text),
        });
        await page.waitForSelector('[role=alert]');
        expect(await page.textContent('.c-answers')).toBe(before);
        expect(complaints).toEqual([]);
      });
    },
    LONG_MS,
  );
});

describe('whatever is done', () => {
  it(
    'two hundred actions at random leave the console empty',
    async () => {
      let seed = 20_260;
      const draw = (n: number): number => {
        seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
        return Math.floor((seed / 2 ** 32) * n);
      };
      const typed = ['1', '2', '?', '<', 'h', 'w', '10 ft', '1 2', 'xyzzy', 'f', ''];
      await browsing.open(async ({ page, complaints }) => {
        await openCase(page, 'demo.json', demo);
        for (let i = 0; i < 200; i += 1) {
          switch (draw(4)) {
            case 0:
              await page.focus('#line');
              await page.keyboard.insertText(typed[draw(typed.length)] ?? '');
              await page.keyboard.press('Enter');
              break;
            case 1:
              await page.evaluate(touchOne(draw(2 ** 20), 'focus'));
              await page.keyboard.press(['ArrowLeft', 'ArrowUp', 'Shift+ArrowRight'][draw(3)] ?? 'ArrowLeft');
              break;
            default:
              await page.evaluate(touchOne(draw(2 ** 20), 'click'));
          }
        }
        await page.waitForTimeout(500);
        expect(complaints).toEqual([]);
      });
    },
    2 * LONG_MS,
  );
});
