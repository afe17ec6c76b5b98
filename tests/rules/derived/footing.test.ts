import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { responsesIn } from '../../../src/disk/response-files.js';
import { type FactBook, withAnswer } from '../../../src/facts/book.js';
import { withResponses } from '../../../src/facts/responses.js';
import { atLeast, is } from '../../../src/rules/condition.js';
import { factsBehind, viewOf } from '../../../src/rules/derived/view.js';
import { bookOf, type TestFacts } from '../../support/causeClaims.js';
import { numberOf, read, withHow } from './support.js';

const ROOM = {
  mainsBase: 3,
  seatDistance: 3,
  seatCount: 3,
  seatSpacing: 0.6,
  mainSeatOffset: 0,
  centerSideOffset: 0,
  centerBehindMains: 0,
  earHeight: 1,
  centerTweeterHeight: 1,
  mainsTweeterHeight: 1,
} as const satisfies TestFacts;

describe('an asked fact', () => {
  it('reads as told', () => {
    expect(read('seatDistance', { seatDistance: { value: 2.8, how: 'recalled' } })).toMatchObject({
      value: 2.8,
      how: 'recalled',
      assumed: [],
      missing: [],
      facts: ['seatDistance'],
    });
  });
  it('reads as assumed, marked, where the catalog has a default', () => {
    expect(read('seatDistance', {})).toMatchObject({ value: 3, how: 'guessed', assumed: ['seatDistance'] });
  });
  it('is missing where it has none', () => {
    expect(read('centerTweeterHeight', {})).toMatchObject({
      value: undefined,
      missing: ['centerTweeterHeight'],
    });
  });
  it('does not fall back on a default while it is open whether it is asked at all', () => {
    expect(read('bayStuffing', {})).toMatchObject({
      value: undefined,
      missing: ['centerPlacement', 'bayStuffing'],
    });
    expect(read('bayStuffing', { centerPlacement: 'bay' })).toMatchObject({
      value: 'open',
      assumed: ['bayStuffing'],
    });
  });
  it('that no longer applies is history, through several steps', () => {
    const facts = { upmixCenterControl: 'none', centerSpread: 'on', centerSpreadAmount: 0.5 } as const;
    expect(read('centerSpreadAmount', facts)).toMatchObject({ value: undefined, missing: [] });
  });
  it('told without the fact that decides it stands', () => {
    expect(read('delayCenter', { delayCenter: 2 }).value).toBe(2);
    expect(read('delayCenter', { delayCenter: 2, entryKind: 'distances' }).value).toBeUndefined();
  });
  it('whose question hangs on an assumption names what would settle that', () => {
    expect(read('delayCenter', {}).missing).toEqual(['entryKind']);
  });
});

describe('how well a value is founded', () => {
  it('paced is less certain than taped, guessed less than paced', () => {
    const spread = (how: 'measured' | 'recalled' | 'guessed') =>
      viewOf(withHow({ ...ROOM, centerTweeterHeight: 0.5 }, how)).read('heightMismatchDeg').spread;
    expect(spread('recalled')).toBeGreaterThan(2 * spread('measured'));
    expect(spread('guessed')).toBeGreaterThan(spread('recalled'));
  });
  it('1 percent and a centimeter of a taped height near half a meter are a few percent of the angle', () => {
    // 0.5 m below the ear at 3 m: an error of 11 mm is 2 % of the drop, the other heights and lengths add some.
    const { spread } = read('centerElevationDeg', { ...ROOM, centerTweeterHeight: 0.5 });
    expect(spread).toBeGreaterThan(0.015);
    expect(spread).toBeLessThan(0.06);
  });
  it('a value of nothing has a finite spread', () => {
    const { value, spread } = read('centerOffsetDeg', ROOM);
    expect(value).toBe(0);
    expect(spread).toBeGreaterThan(0);
    expect(spread).toBeLessThanOrEqual(1.5);
  });
  it('the weakest answer that matters counts, one that hardly moves the value does not', () => {
    const known = { ...ROOM, centerTweeterHeight: 0.4 } as const;
    expect(read('centerElevationDeg', known).how).toBe('measured');
    const guessedEar = { ...known, earHeight: { value: 1, how: 'guessed' } } as const;
    expect(read('centerElevationDeg', guessedEar).how).toBe('guessed');
    // Half a meter of side offset hardly changes the distance, and so the elevation.
    const guessedSide = { ...known, centerSideOffset: { value: 0.1, how: 'guessed' } } as const;
    expect(read('centerElevationDeg', guessedSide).how).toBe('measured');
  });
  it('a weak choice always counts', () => {
    expect(read('layoutKind', { centerLayout: { value: 'coaxial', how: 'recalled' } }).how).toBe('recalled');
  });
  it('a method that is rough itself adds its own doubt', () => {
    expect(read('reverbClarityMs', { clapRing: 'long' }).spread).toBeGreaterThan(
      read('reverbClarityMs', { reverberationTime: 900 }).spread,
    );
  });
});

describe('a later view', () => {
  it('takes over what the change does not touch and computes the rest', () => {
    const book = bookOf({ ...ROOM, centerLayout: 'mid-tweeter-mid', floorCover: 'bare' });
    const view = viewOf(book);
    const before = view.read('layoutDipDb').value;
    const carpet = withAnswer(book, 'floorCover', { value: 'carpet', how: 'read' });
    const later = viewOf(carpet, { view, changed: ['floorCover'] });
    expect(later.read('layoutDipDb').value).toBe(before);
    expect(later.read('floorRippleDb').value).toBe(viewOf(carpet).read('floorRippleDb').value);
    expect(later.read('floorRippleDb').value).not.toBe(view.read('floorRippleDb').value);
  });
  it('with other seats takes over nothing', () => {
    const book = bookOf(ROOM);
    const view = viewOf(book);
    view.read('seatAngleMaxDeg');
    const moved = { ...book, seats: [{ name: 'a', xM: 3, yM: 3, row: 1, main: true }] };
    expect(viewOf(moved, { view, changed: [] }).read('seatAngleMaxDeg').value).toBeCloseTo(45, 6);
  });
  it('knows what stands behind a value, the facts that decide whether others are asked included', () => {
    expect(factsBehind('bayPeakDb')).toEqual(expect.arrayContaining(['centerPlacement', 'bayWidth']));
    expect(factsBehind('centerSpreadAmount')).toEqual(
      expect.arrayContaining(['centerSpreadAmount', 'centerSpread', 'upmixCenterControl']),
    );
    expect(factsBehind('layoutFailDeg')).not.toContain('seatDistance');
  });
});

describe('what cannot be', () => {
  it('is told as a remark, and the value stays open', () => {
    const view = viewOf(
      bookOf({
        ...ROOM,
        centerPlacement: 'bay',
        bayWidth: 0.4,
        bayHeight: 0.2,
        bayDepth: 0.4,
        centerWidth: 0.6,
      }),
    );
    expect(view.read('bayPeakDb')).toMatchObject({ value: undefined, missing: [] });
    expect(view.remarks().join()).toContain('speaker width is 0.6 m');
  });
  it('a box of unknown size fits its bay', () => {
    const bay = { ...ROOM, centerPlacement: 'bay', bayWidth: 0.4, bayHeight: 0.15, bayDepth: 0.3 } as const;
    expect(numberOf('bayPeakDb', bay)).toBeGreaterThanOrEqual(0);
  });
  it('a sound system has no remarks', () => {
    expect(viewOf(bookOf(ROOM)).remarks()).toEqual([]);
  });
});

describe('response files', () => {
  const folder = mkdtempSync(join(tmpdir(), 'center-audit-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  /** Flat at 80 dB, a broad step above 3 kHz in dB. */
  const curve = (stepDb: number): string =>
    Array.from({ length: 200 }, (_, i) => 50 * 2 ** (i / 24))
      .map((hz) => `${hz.toFixed(2)} ${hz > 3500 ? 80 + stepDb : 80}`)
      .join('\n');
  writeFileSync(join(folder, 'flat.txt'), curve(0));
  writeFileSync(join(folder, 'dull.txt'), curve(-5));
  writeFileSync(join(folder, 'broken.txt'), 'no numbers here\n12 x');
  const files = (center: string, more: Record<string, string> = {}): FactBook => {
    const paths = { responseLeft: 'flat.txt', responseRight: 'flat.txt', responseCenter: center, ...more };
    const { responses: _, ...book } = bookOf(paths as TestFacts);
    return withResponses(book, responsesIn(folder));
  };
  it('show a dull center as its treble deficit and worst band', () => {
    const view = viewOf(files('dull.txt'));
    expect(view.read('trebleDeficitDb').value).toBeCloseTo(5, 1);
    expect(view.read('toneTrebleDb').value).toBeCloseTo(-5, 1);
    expect(view.read('toneWorstBandDb').value).toBeCloseTo(5, 1);
    expect(view.read('toneWorstBandDb').how).toBe('measured');
  });
  it('like ones show no difference', () => {
    const view = viewOf(files('flat.txt'));
    expect(view.read('toneWorstBandDb').value).toBeCloseTo(0, 6);
    expect(view.read('toneRmsDb').value).toBeCloseTo(0, 6);
  });
  it('before and after tell what the equalization did', () => {
    const before = {
      responseLeftBefore: 'flat.txt',
      responseCenterBefore: 'flat.txt',
      responseRightBefore: 'flat.txt',
    };
    expect(viewOf(files('dull.txt', before)).read('eqDamageDb').value).toBeCloseTo(5, 1);
  });
  it('that cannot be read leave the value open and say why', () => {
    const view = viewOf(files('broken.txt'));
    expect(view.read('toneWorstBandDb')).toMatchObject({ value: undefined, missing: [] });
    expect(view.remarks().join()).toContain('line 2');
    expect(viewOf(files('absent.txt')).remarks().join()).toContain('is not there');
  });
  it('that nobody has are missing by name', () => {
    expect(viewOf(bookOf({})).read('toneWorstBandDb').missing).toEqual([
      'responseLeft',
      'responseCenter',
      'responseRight',
    ]);
  });
});

describe('a computed word', () => {
  const feet = { enteredLeft: 3.2, enteredCenter: 9.5, enteredRight: 3.2, tapedCenter: 2.9, tapedMains: 3.2 };
  it('is as sure as what was told where no assumed number can turn it', () => {
    expect(read('unitSlip', feet)).toMatchObject({ value: 'feet-as-meters', how: 'read' });
  });
  it('is a guess where an assumed number decides it', () => {
    // Whether an entry is longer than an assumed way by 30 cm.
    const longer = {
      alignmentBy: 'automatic',
      enteredLeft: 3.3,
      enteredCenter: 3.35,
      enteredRight: 3.3,
    } as const;
    expect(read('automaticLatency', longer).how).toBe('guessed');
  });
});

describe('the types of derived facts', () => {
  it('stay literal: a wrong choice or a limit of another unit does not compile', () => {
    // @ts-expect-error not a value of layoutKind
    is('layoutKind', 'sideways');
    // @ts-expect-error a dip is no time
    atLeast('layoutDipDb', 'delayMs');
    // @ts-expect-error no such derived fact
    atLeast('layoutDip', 'dipDb');
    expect(is('layoutKind', 'point').value).toBe('point');
  });
});
