/** The geometry that cases state really makes, or does not make, the trouble they are about. */
import { describe, expect, it } from 'vitest';
import { loadCases } from '../../eval/load-cases.js';
import { bassSum } from '../../src/acoustics/bass.js';
import { elevation } from '../../src/acoustics/elevation.js';
import { offAxis } from '../../src/acoustics/offaxis.js';
import { shelfEffect } from '../../src/acoustics/shelf.js';
import { tonalMatch } from '../../src/acoustics/tonal.js';
import { told } from '../../src/facts/book.js';
import type { FileFactId, NumberFactId } from '../../src/facts/catalog.js';
import { responseOf } from '../../src/facts/responses.js';
import { seatsOf } from '../../src/facts/seats.js';

const cases = new Map(loadCases().map((each) => [each.name, each]));
const bookOf = (name: string) => {
  const shipped = cases.get(name);
  if (!shipped) throw new Error(`no case ${name}`);
  return shipped.book;
};
const number = (name: string, id: NumberFactId): number => {
  const value = told(bookOf(name), id);
  if (typeof value !== 'number') throw new Error(`${name} tells no ${id}`);
  return value;
};
const DEGREES = 180 / Math.PI;
const widestDeg = (name: string): number =>
  Math.max(...seatsOf(bookOf(name)).seats.map(({ xM, yM }) => Math.atan(Math.abs(xM) / yM) * DEGREES));
const heightDeg = (name: string): number =>
  elevation({
    sourceHeightM: number(name, 'centerTweeterHeight'),
    earHeightM: number(name, 'earHeight'),
    distanceM: number(name, 'seatDistance'),
  }).elevationDeg;

describe('what the cases state', () => {
  it('loses more than 6 dB at the ends of the near sofa of the demo', () => {
    const dip = offAxis({
      layout: 'mid-tweeter-mid',
      spacingM: number('demo', 'centerDriverSpacing'),
      crossoverHz: number('demo', 'centerCrossover'),
      azimuthDeg: widestDeg('demo'),
    });
    expect(dip.dipDb).toBeLessThan(-6);
  });

  it('lets a three-way fail at wide recliners when its woofers play too high, and not on the accused sofa', () => {
    const dipOf = (name: string): number =>
      offAxis({
        layout: 'woofer-mid-tweeter-woofer',
        spacingM: number(name, 'centerDriverSpacing'),
        lowCrossoverHz: number(name, 'centerLowCrossover'),
        azimuthDeg: widestDeg(name),
      }).dipDb;
    expect(dipOf('driver-layout-high-woofer-crossover')).toBeLessThan(-8);
    expect(dipOf('suspect-three-way-layout')).toBeGreaterThan(-2);
  });

  it('puts the center on the hearth and the one above the picture beyond the clear grade of height, 10 degrees', () => {
    expect(heightDeg('height-on-the-floor')).toBeLessThan(-15);
    expect(heightDeg('height-above-the-picture')).toBeGreaterThan(15);
  });

  it('turns the stand that looks at the ceiling more than 15 degrees past the ears', () => {
    const name = 'aim-steep-stand';
    const offAxisDeg = -heightDeg(name) - number(name, 'centerTilt');
    expect(Math.abs(offAxisDeg)).toBeGreaterThan(15);
    const vertical = offAxis({
      layout: 'vertical-two-way',
      crossoverHz: number(name, 'centerCrossover'),
      azimuthDeg: 0,
      elevationDeg: offAxisDeg,
    });
    expect(vertical.dipDb).toBeLessThan(-6);
  });

  it.each(['set-back-deep-shelf', 'suspect-single-seat-mtm', 'two-set-back-and-height'])(
    'leaves a dip of more than 4 dB from the bare shelf of %s',
    (name) => {
      const aboveShelf = number(name, 'centerAboveShelf');
      const effect = shelfEffect({
        heightAboveShelfM: aboveShelf,
        earAboveShelfM: number(name, 'earHeight') - number(name, 'centerTweeterHeight') + aboveShelf,
        distanceM: number(name, 'seatDistance'),
        exposedDepthM: number(name, 'shelfSetback'),
      });
      expect(Math.max(-effect.dipDb, effect.riseDb)).toBeGreaterThan(4);
    },
  );

  it('cancels the chest of male voices where a ported center meets its crossover', () => {
    const hole = bassSum({
      crossoverHz: number('bass-management-hole', 'centerBassCrossover'),
      enclosure: 'vented',
      lowLimitHz: number('bass-management-hole', 'centerLowLimit'),
    });
    expect(hole.dipDb).toBeLessThan(-10);
  });

  it('measures a mismatch where the tone is at fault and none where only the level is', () => {
    const matchOf = (name: string) => {
      const response = (id: FileFactId) => {
        const found = responseOf(bookOf(name), id);
        if (!found || 'refused' in found) throw new Error(`${name} has no ${id}`);
        return found;
      };
      return tonalMatch({
        left: response('responseLeft'),
        center: response('responseCenter'),
        right: response('responseRight'),
      });
    };
    expect(matchOf('timbre-measured').rmsDb).toBeGreaterThan(3);
    expect(matchOf('correction-mismatch-measured').rmsDb).toBeGreaterThan(3);
    const level = matchOf('level-measured-matched');
    expect(level.rmsDb).toBeLessThan(1);
    expect(level.levelOffsetDb).toBeLessThan(-5);
  });
});
