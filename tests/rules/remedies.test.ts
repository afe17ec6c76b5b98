/** Which remedies suit a system, first one first: those that cannot help it are not offered. */
import { describe, expect, it } from 'vitest';
import type { Cause } from '../../src/rules/cause.js';
import { aim } from '../../src/rules/causes/aim.js';
import { cabinetBay } from '../../src/rules/causes/cabinet-bay.js';
import { delay } from '../../src/rules/causes/delay.js';
import { driverLayout } from '../../src/rules/causes/driver-layout.js';
import { level } from '../../src/rules/causes/level.js';
import { routing } from '../../src/rules/causes/routing.js';
import { setBack } from '../../src/rules/causes/set-back.js';
import { viewOf } from '../../src/rules/derived/view.js';
import { offered as offeredTo } from '../../src/rules/gain.js';
import { bookOf, type TestFacts } from '../support/causeClaims.js';

function offered(cause: Cause, facts: TestFacts): string[] {
  return offeredTo(cause, viewOf(bookOf(facts))).map(({ id }) => id);
}

describe('level', () => {
  const mains = { measuredLeftLevel: 75, measuredRightLevel: 75 } as const;
  it('comes right by test noise first, whether a boost is on or not known', () => {
    expect(offered(level, {})[0]).toBe('trim-to-the-mains');
    expect(offered(level, { voiceBoost: 'on' }).slice(0, 2)).toEqual(['trim-to-the-mains', 'boost-off']);
  });
  it.each<TestFacts>([
    { ...mains, measuredCenterLevel: 72 },
    { measuredLeftLevel: 75, measuredCenterLevel: 72 },
    { voiceLoudness: 'softer' },
    { testNoiseEach: 'softer' },
    // The meter sees less than it tells apart, the ear more.
    { ...mains, measuredCenterLevel: 74.5, voiceLoudness: 'softer' },
  ])('no boost is taken from a center that is too soft already: %o', (facts) => {
    expect(offered(level, facts)).not.toContain('boost-off');
    expect(offered(level, { ...facts, voiceBoost: 'on' })).not.toContain('boost-off');
  });
  it.each<TestFacts>([
    { ...mains, measuredCenterLevel: 79, voiceLoudness: 'softer' },
    { voiceLoudness: 'louder' },
    { testNoiseEach: 'louder' },
    { testNoiseEach: 'alike' },
    { ...mains, measuredCenterLevel: 75 },
  ])('a boost may go where the center is not too soft: %o', (facts) => {
    expect(offered(level, { ...facts, voiceBoost: 'on' })).toContain('boost-off');
    expect(offered(level, { ...facts, voiceBoost: 'off' })).not.toContain('boost-off');
  });
});

describe('cabinet-bay', () => {
  const bay = {
    centerPlacement: 'bay',
    bayWidth: 0.673,
    bayHeight: 0.248,
    bayDepth: 0.406,
    centerWidth: 0.476,
    centerHeight: 0.175,
    centerDepth: 0.254,
  } as const;
  it('is filled first where a flush face would make the gaps sing louder', () => {
    expect(offered(cabinetBay, { ...bay, bayRecess: 0.076 })[0]).toBe('try-filling');
    expect(offered(cabinetBay, { ...bay, bayRecess: 0.076 })).not.toContain('pull-forward');
  });
  it('has nothing to pull forward where the face is flush, whatever else is known', () => {
    expect(offered(cabinetBay, { ...bay, bayRecess: 0 })).not.toContain('pull-forward');
    expect(offered(cabinetBay, { centerPlacement: 'bay', bayRecess: 0 })).not.toContain('pull-forward');
  });
  it('comes forward first out of a deep recess, whose tunnel makes the note', () => {
    const deep = { ...bay, bayRecess: 0.2, bayDepth: 0.55, bayStuffing: 'filled' } as const;
    expect(offered(cabinetBay, deep)[0]).toBe('pull-forward');
    expect(offered(cabinetBay, deep)).not.toContain('try-filling');
  });
  it('may have to be pulled forward or filled while its sizes are not told', () => {
    expect(offered(cabinetBay, { centerPlacement: 'bay' }).slice(0, 2)).toEqual([
      'pull-forward',
      'try-filling',
    ]);
  });
});

describe('a tilt', () => {
  it('comes from a wedge under the box, and on a wall from the mount', () => {
    const onWall = offered(aim, { centerPlacement: 'wall' });
    expect(onWall).toContain('tilt-on-wall');
    expect(onWall).not.toContain('wedge');
    expect(aim.remedies.find((r) => r.id === 'tilt-on-wall')?.cautions).toContain('lifting');
    for (const facts of [{ centerPlacement: 'shelf-top' }, {}] as const) {
      expect(offered(aim, facts)[0]).toBe('wedge');
      expect(offered(aim, facts)).not.toContain('tilt-on-wall');
    }
  });
  it('is not offered where the box points at the ears already', () => {
    const level = {
      centerLayout: 'vertical-two-way',
      centerTweeterHeight: 1.05,
      earHeight: 1.05,
      centerTilt: 0,
    } as const;
    expect(offered(aim, { ...level, seatDistance: 3 })).not.toContain('wedge');
    expect(offered(aim, { ...level, centerTweeterHeight: 0.3, seatDistance: 2 })).toContain('wedge');
  });
});

describe('set-back', () => {
  const shelf = {
    centerPlacement: 'shelf-top',
    earHeight: 1.05,
    seatDistance: 3,
    shelfSetback: 0.3,
  } as const;
  it('is not mended by blocks under the box, which make the wave no smaller', () => {
    for (const aboveM of [0.1, 0.15, 0.18])
      expect(
        offered(setBack, { ...shelf, centerAboveShelf: aboveM, centerTweeterHeight: 0.5 + aboveM }),
      ).not.toContain('raise-and-tilt');
  });
  it('has nothing to pull forward at the edge', () => {
    const flush = { ...shelf, shelfSetback: 0, centerAboveShelf: 0.1, centerTweeterHeight: 0.6 } as const;
    expect(offered(setBack, flush)).not.toContain('pull-forward');
    expect(offered(setBack, { ...flush, shelfSetback: 0.3 })[0]).toBe('pull-forward');
  });
});

describe('driver-layout', () => {
  const pair = {
    centerLayout: 'mid-tweeter-mid',
    centerDriverSpacing: 0.26,
    centerCrossover: 2500,
    centerMidSize: 0.133,
    centerOrientation: 'level',
    seatCount: 3,
    seatSpacing: 0.6,
  } as const;
  it('brings seats inside its angle only where one of them is outside', () => {
    expect(offered(driverLayout, { ...pair, seatDistance: 2.2 })).toContain('sit-inside-its-angle');
    expect(offered(driverLayout, { ...pair, seatDistance: 6 })).not.toContain('sit-inside-its-angle');
  });
});

describe('routing', () => {
  it('sets the center to present only where the menu may say none', () => {
    expect(offered(routing, { centerMode: 'none', channelCheck: 'right' })).toContain('set-center-present');
    expect(offered(routing, {})).toContain('set-center-present');
    expect(offered(routing, { channelCheck: 'silent' })).toContain('set-center-present');
  });
  it('has no menu to change where the center plays its own test noise, or is read as present', () => {
    expect(offered(routing, { channelCheck: 'right' })).not.toContain('set-center-present');
    expect(offered(routing, { centerMode: 'present' })).not.toContain('set-center-present');
  });
});

describe('delay', () => {
  const late = {
    centerPowered: 'yes',
    seatDistance: 3,
    enteredLeft: 3,
    enteredCenter: 3,
    enteredRight: 3,
  } as const;
  it('of 150 ms is lowered at its cause, since no menu takes the 54 m that would make up for it', () => {
    const ids = offered(delay, { ...late, centerLatency: 150 });
    expect(ids.slice(0, 2)).toEqual(['lower-latency', 'enter-the-longest']);
    expect(ids).not.toContain('enter-taped-distances');
  });
  it('of 40 ms, or of a latency that nobody told, is entered', () => {
    for (const facts of [{ ...late, centerLatency: 40 }, late, {}]) {
      expect(offered(delay, facts)).toContain('enter-taped-distances');
      expect(offered(delay, facts)).not.toContain('lower-latency');
    }
  });
});
