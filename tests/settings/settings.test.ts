/** The numbers to type: the least of all settings of the menu by the stated cost, and what they do at each seat. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../eval/random.js';
import { C_AIR } from '../../src/acoustics/air.js';
import { sharedRippleDb } from '../../src/acoustics/comb.js';
import { type FactBook, withAnswer } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import type { FactId } from '../../src/facts/catalog.js';
import { type Choice, costOf, harmsAt, playedBy, seatModels } from '../../src/settings/cost.js';
import { POINTS, rippleDb } from '../../src/settings/ripple.js';
import { bestChoice, costOfChoice, delaysOf } from '../../src/settings/search.js';
import { gridOf, settingsFor, weightsOf } from '../../src/settings/sheet.js';
import { systemOf } from '../../src/settings/system.js';

const told = (book: FactBook, facts: Partial<Record<FactId, number | string>>): FactBook =>
  Object.entries(facts).reduce(
    (all, [id, value]) => withAnswer(all, id as FactId, { value, how: 'measured' }),
    book,
  );
const demo = readCase(readFileSync(new URL('../../cases/demo.json', import.meta.url), 'utf8')).book;
/** A couch of three seats, an upmix with a spread control, entries and levels as nobody set them. */
const couch = told(demo, {
  mainsBase: 2.4,
  playedContent: 'two-channel-music',
  upmixUse: 'on',
  upmixCommonPart: 'shares',
  upmixCenterControl: 'present',
  centerSpread: 'on',
  centerSpreadAmount: 0.5,
  entryKind: 'distances',
  enteredLeft: 3,
  enteredCenter: 3,
  enteredRight: 3,
  centerAgainstMainsDb: -4,
  centerTrim: 1,
});

describe('the search', () => {
  const system = systemOf(couch);
  const models = seatModels(system);
  const weights = weightsOf(system, undefined);
  const grid = gridOf(system, models, weights);
  const best = bestChoice(system, models, weights, grid);

  it('beats ten thousand random settings of the menu', () => {
    const random = randomFrom(11);
    for (let i = 0; i < 10_000; i += 1) {
      const choice: Choice = {
        delaysMs: delaysOf(random.pick(grid.centerMs), random.pick(grid.rightMs)),
        trimChangeDb: random.pick(grid.trimChangeDb),
        spread: random.pick(grid.spread),
        tiltDeg: random.pick(grid.tiltDeg),
      };
      expect(costOfChoice(system, models, weights, choice)).toBeGreaterThanOrEqual(best.cost - 1e-9);
    }
  });

  it('finds what going through every setting finds', () => {
    const few = {
      ...grid,
      centerMs: grid.centerMs.filter((_, i) => i % 4 === 0),
      trimChangeDb: grid.trimChangeDb.filter((_, i) => i % 3 === 0),
      spread: [0, 0.3, 0.7, 1],
      tiltDeg: grid.tiltDeg.slice(0, 3),
    };
    const all = few.spread.flatMap((spread) =>
      few.trimChangeDb.flatMap((trimChangeDb) =>
        few.tiltDeg.flatMap((tiltDeg) =>
          few.centerMs.flatMap((centerMs) =>
            few.rightMs.map((rightMs) =>
              costOfChoice(system, models, weights, {
                delaysMs: delaysOf(centerMs, rightMs),
                trimChangeDb,
                spread,
                tiltDeg,
              }),
            ),
          ),
        ),
      ),
    );
    expect(bestChoice(system, models, weights, few).cost).toBeCloseTo(Math.min(...all), 9);
  });

  it('never makes a system worse, and no seat is better off in the compromise than alone', () => {
    const sheet = settingsFor(couch);
    expect(sheet.cost.after).toBeLessThanOrEqual(sheet.cost.before ?? 0);
    for (const { after, alone } of sheet.seats) {
      expect(costOf(alone)).toBeLessThanOrEqual(costOf(after) + 1e-9);
    }
  });
});

describe('the comb of a setting', () => {
  it('is that of the acoustics', () => {
    const at = { left: [-1.2, 0], center: [0, 0], right: [1.2, 0], seat: [0.4, 2.8] };
    for (const [centerMs, side] of [
      [0.3, 0.4],
      [-0.7, 0.2],
      [1.4, 0.7],
    ] as const) {
      const way = (point: readonly number[]): number =>
        Math.hypot((point[0] ?? 0) - 0.4, (point[1] ?? 0) - 2.8);
      const ray = (point: readonly number[], amplitude: number, addedMs: number) => ({
        amplitude,
        timeMs: (way(point) / C_AIR) * 1000 + addedMs,
      });
      const own = rippleDb(ray(at.left, side, 0), ray(at.center, 1, centerMs), ray(at.right, side, 0));
      const theirs = sharedRippleDb({
        ...at,
        delaysMs: { left: 0, center: centerMs, right: 0 },
        centerGain: 1,
        sideGain: side,
        points: POINTS,
      });
      expect(Math.abs(own - theirs)).toBeLessThan(0.1);
    }
  });
});

describe('the sheet', () => {
  it('sets a center in step at the main seat when only that seat counts and nothing is shared', () => {
    const film = told(couch, { playedContent: 'multichannel-film', sourceFormat: 'multichannel' });
    const { seats, entries } = settingsFor(film, { weighting: 'main' });
    const main = seats.find(({ weight }) => weight > 0);
    // Half a step of the menu, 3 cm, is 0.05 ms.
    expect(Math.abs(main?.after.arrivalMs ?? 9)).toBeLessThan(0.06);
    expect(entries.step).toBeGreaterThan(0);
  });

  it('types in what a recording found: a center 2 ms late gets an entry longer by 0.69 m', () => {
    const film = told(couch, { playedContent: 'multichannel-film', sourceFormat: 'multichannel' });
    const [plain, measured] = [film, told(film, { arrivalMeasuredMs: 2 })].map((book) =>
      settingsFor(book, { weighting: 'main' }),
    );
    const system = systemOf(film);
    const model = seatModels(system).find(({ seat }) => seat === system.main);
    const byTape = (model?.wayMs.center ?? 0) - ((model?.wayMs.left ?? 0) + (model?.wayMs.right ?? 0)) / 2;
    const feet = 1 / 0.3048;
    const change =
      (measured?.entries.center ?? 0) -
      (measured?.entries.left ?? 0) -
      ((plain?.entries.center ?? 0) - (plain?.entries.left ?? 0));
    const unit = measured?.entries.unit === 'ft' ? feet : 1;
    expect(Math.abs(change / unit - (2 - byTape) * 0.3432)).toBeLessThan(0.07);
    expect(measured?.latencyMeasured).toBe(true);
  });

  it('makes a center that was measured weak as loud as the mains at the main seat', () => {
    const { seats, trimDb } = settingsFor(
      told(couch, { playedContent: 'multichannel-film', sourceFormat: 'multichannel' }),
      { weighting: 'main' },
    );
    expect(trimDb.center).toBe(5);
    expect(seats.find(({ weight }) => weight > 0)?.after.levelDb).toBeCloseTo(0, 6);
  });

  it('leaves a trim alone where the level was not measured', () => {
    const { trimDb, levelMeasured } = settingsFor(demo);
    expect(levelMeasured).toBe(false);
    expect(trimDb.center).toBe(0);
  });

  it('tilts toward the ears and no further', () => {
    const low = told(demo, { centerTweeterHeight: 0.4, centerTilt: 0, centerDepth: 0.3 });
    const { tiltDeg, wedgeM } = settingsFor(low);
    const system = systemOf(low);
    const up = seatModels(system).map(({ earsUpDeg }) => earsUpDeg);
    expect(tiltDeg).toBeGreaterThanOrEqual(0);
    expect(tiltDeg).toBeLessThanOrEqual(Math.ceil(Math.max(...up) + 2));
    expect(wedgeM).toBeCloseTo(0.3 * Math.tan(((tiltDeg ?? 0) * Math.PI) / 180), 9);
  });

  it('weighs the seats as asked', () => {
    const system = systemOf(couch);
    expect(weightsOf(system, 'main').filter((weight) => weight > 0)).toEqual([1]);
    expect(new Set(weightsOf(system, 'equal'))).toEqual(new Set([1]));
    const [first] = system.seats;
    const name = first?.seat.name ?? '';
    expect(weightsOf(system, new Map([[name, 3]])).filter((weight) => weight > 0)).toEqual([3]);
  });

  it('says what has to be told first', () => {
    const bare = { ...demo, answers: new Map(), seats: [] };
    expect(() => settingsFor(bare)).toThrow(/not told/);
  });
});

describe('what the harms mean', () => {
  const system = systemOf(couch);
  const models = seatModels(system);
  const choice: Choice = { delaysMs: delaysOf(0, 0), trimChangeDb: 0, spread: 0, tiltDeg: 0 };

  it('a voice from the center alone has no comb, and a stage drawn together', () => {
    for (const model of models) {
      const harms = harmsAt(model, system, choice, playedBy(system, 0));
      expect(harms.combDb).toBe(0);
      expect(harms.imageDeg).toBeGreaterThan(0);
    }
  });

  it('with all of the middle in the mains the stage is whole', () => {
    expect(playedBy(system, 1).width).toBeCloseTo(1, 6);
  });
});
