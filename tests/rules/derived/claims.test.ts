/**
 * Hand-checked numbers: the acoustic model of this project (computed there by an independent prototype, see the
 * checks of src/acoustics) or plain geometry worked out beside the value.
 */
import { describe, expect, it } from 'vitest';
import type { Arrival } from '../../../src/acoustics/arrival.js';
import { createCore } from '../../../src/compute/core.js';
import { arrivalsAtSeats } from '../../../src/rules/derived/arrivals.js';
import { bookOf, type TestFacts } from '../../support/causeClaims.js';
import { numberOf, read } from './support.js';

/** The example room: mains at 1.5 m to each side, main seat 3 m back, everything at ear height. */
const ROOM = {
  mainsBase: 3,
  seatDistance: 3,
  mainSeatOffset: 0,
  centerSideOffset: 0,
  centerBehindMains: 0,
  earHeight: 1,
  centerTweeterHeight: 1,
  mainsTweeterHeight: 1,
} as const satisfies TestFacts;
const SOFA = { ...ROOM, seatCount: 3, seatSpacing: 0.6 } as const satisfies TestFacts;
const PAIR = {
  ...SOFA,
  centerLayout: 'mid-tweeter-mid',
  centerDriverSpacing: 0.26,
  centerCrossover: 2500,
  centerMidSize: 0.133,
  centerOrientation: 'level',
} as const satisfies TestFacts;

describe('angles', () => {
  it('the ends of a three-seat sofa at 3 m sit 11.3 degrees off the axis: atan(0.6 / 3)', () => {
    expect(numberOf('seatAngleMaxDeg', SOFA)).toBeCloseTo(11.31, 2);
    expect(numberOf('seatAngleMainDeg', SOFA)).toBe(0);
  });
  it('a single seat has no side seats', () => {
    expect(numberOf('seatAngleMaxDeg', { ...ROOM, seating: 'single-seat' })).toBe(0);
  });
  it('a list of seats wins over counts', () => {
    expect(numberOf('seatAngleMaxDeg', SOFA, [{ xM: 1.5, yM: 3 }])).toBeCloseTo(26.57, 2);
  });
  it('mains 3 m apart seen from 3 m make 53 degrees: 2 atan(1.5 / 3)', () => {
    expect(numberOf('mainsBaseDeg', ROOM)).toBeCloseTo(53.13, 2);
  });
  it('a center at 0.30 m is seen 14 degrees below an ear at 1.05 m from 3 m', () => {
    const facts = { ...ROOM, earHeight: 1.05, centerTweeterHeight: 0.3 };
    expect(numberOf('centerElevationDeg', facts)).toBeCloseTo(-14.04, 2);
  });
  it('a tilt toward the ear takes the aim error away', () => {
    const low = { ...ROOM, centerTweeterHeight: 0.3 };
    const flat = numberOf('aimErrorDeg', { ...low, centerTilt: 0 });
    expect(flat).toBeCloseTo(13.13, 2);
    expect(numberOf('aimErrorDeg', { ...low, centerTilt: flat })).toBeCloseTo(0, 6);
  });
  it('a tilt that nobody told leaves an aim near zero uncertain by some degrees', () => {
    const { value, spread } = read('aimErrorDeg', { ...ROOM, centerTweeterHeight: 0.9 });
    expect(value).toBeCloseTo(1.91, 2);
    expect(spread).toBeGreaterThan(0.4);
  });
  it('a center 0.3 m to the side is 5.7 degrees off: atan(0.3 / 3)', () => {
    expect(numberOf('centerOffsetDeg', { ...ROOM, centerSideOffset: 0.3 })).toBeCloseTo(5.71, 2);
  });
});

describe('driver layout', () => {
  it('a level pair at the ends of the sofa dips about 3 dB and costs about 1.4 dB of speech', () => {
    expect(numberOf('layoutDipDb', PAIR)).toBeGreaterThan(2.9);
    expect(numberOf('layoutDipDb', PAIR)).toBeLessThan(3.5);
    expect(numberOf('layoutSpeechLossDb', PAIR)).toBeCloseTo(1.45, 1);
  });
  it('the same pair heard by one seat on its axis is innocent', () => {
    expect(numberOf('layoutDipDb', { ...PAIR, seatCount: 1, seating: 'single-seat' })).toBe(0);
    expect(numberOf('layoutDipMainDb', PAIR)).toBe(0);
  });
  it('distance decides: at 2.2 m the same sofa hears a clear dip', () => {
    expect(numberOf('layoutDipDb', { ...PAIR, seatDistance: 2.2 })).toBeGreaterThan(5.5);
  });
  it('turned upright the pair lobes up and down, not sideways', () => {
    const upright = { ...PAIR, centerOrientation: 'upright', centerTweeterHeight: 0.3 } as const;
    expect(read('layoutKind', upright).value).toBe('vertical');
    expect(numberOf('layoutDipDb', upright)).toBeLessThan(0.5);
    expect(numberOf('aimDipDb', upright)).toBeGreaterThan(3);
    expect(numberOf('aimDipDb', { ...upright, centerOrientation: 'level' })).toBeLessThan(0.6);
  });
  it('it reaches 3 dB at 11 and 6 dB at 15.5 degrees, so 4 dB in between', () => {
    expect(numberOf('layoutFailDeg', PAIR)).toBeGreaterThan(11);
    expect(numberOf('layoutFailDeg', PAIR)).toBeLessThan(15.5);
  });
  it('a coaxial never gets there', () => {
    expect(numberOf('layoutFailDeg', { ...PAIR, centerLayout: 'coaxial' })).toBeGreaterThan(53);
  });
  it('a low crossover makes the pair pass, a wide spacing fail early', () => {
    expect(numberOf('layoutFailDeg', { ...PAIR, centerCrossover: 1600 })).toBeGreaterThan(19);
    expect(numberOf('layoutFailDeg', { ...PAIR, centerDriverSpacing: 0.36 })).toBeLessThan(11.5);
  });
  it('the two ends of the sofa hear different halves of a 2.5-way', () => {
    const half = { ...PAIR, centerLayout: 'two-and-a-half-way', centerLowCrossover: 600 } as const;
    const right = [{ xM: 1.09, yM: 3 }];
    const full = numberOf('layoutSpeechLossDb', { ...half, fullRangeMidSide: 'right' }, right);
    const other = numberOf('layoutSpeechLossDb', { ...half, fullRangeMidSide: 'left' }, right);
    expect(full).toBeCloseTo(2.3, 1);
    expect(other).toBeCloseTo(0.3, 1);
  });
  it('twin tweeters comb for a head that moves a hand, though not on the exact axis', () => {
    const twins = { ...SOFA, centerLayout: 'tweeter-mid-mid-tweeter', centerTweeterSpacing: 0.46 } as const;
    expect(numberOf('layoutDipMainDb', twins)).toBe(0);
    expect(numberOf('tweeterDipMainDb', twins)).toBeGreaterThan(1);
    expect(numberOf('tweeterDipDb', twins)).toBeGreaterThan(10);
    expect(numberOf('tweeterDipDb', PAIR)).toBe(0);
  });
  it('usual dimensions stand in for what is not told, and are marked', () => {
    const { assumed, value, missing } = read('layoutDipDb', { ...SOFA, centerLayout: 'mid-tweeter-mid' });
    expect(assumed).toEqual(
      expect.arrayContaining(['centerDriverSpacing', 'centerCrossover', 'centerMidSize']),
    );
    expect(value).toBeCloseTo(numberOf('layoutDipDb', PAIR), 1);
    expect(missing).toEqual([]);
  });
  it('without the layout nothing can be told', () => {
    expect(read('layoutDipDb', SOFA)).toMatchObject({ value: undefined, missing: ['centerLayout'] });
  });
  it('a system without a center has no layout to ask for', () => {
    expect(read('layoutDipDb', { ...SOFA, centerCount: 'none' })).toMatchObject({
      value: undefined,
      missing: [],
    });
  });
  it('two boxes with one signal cancel for whoever is nearer to one of them', () => {
    const twins = {
      ...SOFA,
      twinArrangement: 'above-below',
      displayMiddleHeight: 1.2,
      centerTweeterHeight: 0.6,
    } as const;
    expect(numberOf('twinCenterDipDb', { ...twins, centerCount: 'two', earHeight: 1.2 })).toBeLessThan(
      0.3, // what is left is the beaming of small sources seen from the side
    );
    expect(numberOf('twinCenterDipDb', { ...twins, centerCount: 'two', earHeight: 1 })).toBeGreaterThan(6);
    expect(numberOf('twinCenterDipDb', { ...twins, centerCount: 'one' })).toBe(0);
  });
});

describe('time', () => {
  const nobody = { ...ROOM, alignmentBy: 'nobody' } as const;
  const exact = { ...ROOM, enteredLeft: 3.354, enteredCenter: 3, enteredRight: 3.354 } as const;
  it('equal entries leave the center 1.03 ms early', () => {
    expect(numberOf('delaySignedMs', nobody)).toBeCloseTo(-1.03, 2);
    expect(numberOf('delaySignedMs', { ...exact, enteredLeft: 3, enteredRight: 3 })).toBeCloseTo(-1.03, 2);
  });
  it('exact entries leave nothing', () => {
    expect(numberOf('delayErrorMs', exact)).toBeLessThan(0.01);
  });
  it('feet typed into a field of meters for the center alone make it 19.9 ms early', () => {
    const slip = { ...exact, enteredCenter: 9.84 };
    expect(numberOf('delaySignedMs', slip)).toBeCloseTo(-19.9, 1);
    expect(numberOf('entryRatio', slip)).toBeCloseTo(3.28, 2);
  });
  it('3 m typed into a field of feet make it 6.08 ms late', () => {
    const slip = { ...exact, enteredCenter: 3 * 0.3048 };
    expect(numberOf('delaySignedMs', slip)).toBeCloseTo(6.08, 2);
    expect(numberOf('entryRatio', slip)).toBeCloseTo(0.305, 3);
  });
  it('the same slip in all three shows no ratio against the mains', () => {
    const all = { ...ROOM, enteredLeft: 11, enteredCenter: 9.84, enteredRight: 11 };
    expect(numberOf('entryRatio', all)).toBeCloseTo(1, 2);
  });
  it('a tape beats the geometry', () => {
    const taped = { ...nobody, tapedCenter: 2, tapedMains: 3.3432 };
    expect(numberOf('delaySignedMs', taped)).toBeCloseTo(-1.3432 / 0.3432, 3);
  });
  it('a longer delay entry makes the center later', () => {
    const delays = { ...ROOM, entryKind: 'delays', delayLeft: 0, delayRight: 0, delayCenter: 1.03 } as const;
    expect(numberOf('delaySignedMs', delays)).toBeCloseTo(0, 2);
  });
  it('delay entries need not be announced as such', () => {
    const delays = { ...ROOM, delayLeft: 0, delayRight: 0, delayCenter: 1.03 };
    expect(numberOf('delayErrorMs', delays)).toBeLessThan(0.01);
  });
  it('a powered center is late by its latency, unless the mains are of the same kind', () => {
    const powered = { ...exact, centerPowered: 'yes', centerLatency: 3 } as const;
    expect(numberOf('delaySignedMs', powered)).toBeCloseTo(3, 2);
    expect(numberOf('delayErrorMs', { ...exact, centerPowered: 'powered-mains-too' })).toBeLessThan(0.01);
    expect(read('delayErrorMs', { ...exact, centerPowered: 'yes' }).missing).toEqual(['centerLatency']);
  });
  it('a measured arrival beats tape, entries and latency at the main seat, and the rest is geometry elsewhere', () => {
    const odd = { ...exact, enteredCenter: 4.4, centerPowered: 'yes', centerLatency: 30 } as const;
    const seats = [
      { xM: 0, yM: 3, main: true },
      { xM: 0.6, yM: 3 },
    ];
    expect(numberOf('delaySignedMs', { ...odd, arrivalMeasuredMs: 0.01 }, seats)).toBeCloseTo(0.01, 6);
    // Plain geometry: way of the center less the mean of the mains, at the side less the same in the middle.
    const sideMs = (Math.hypot(0.6, 3) - (Math.hypot(2.1, 3) + Math.hypot(0.9, 3)) / 2) / 0.3432;
    const middleMs = (3 - Math.hypot(1.5, 3)) / 0.3432;
    const arrivals = (facts: TestFacts): readonly Arrival[] =>
      createCore(bookOf(facts, seats)).evaluate(arrivalsAtSeats).value as readonly Arrival[];
    const [main, side] = arrivals({ ...odd, arrivalMeasuredMs: 0.01 });
    expect(main?.centerMinusMeanMs).toBeCloseTo(0.01, 6);
    expect(side?.centerMinusMeanMs).toBeCloseTo(0.01 + sideMs - middleMs, 3);
  });
  it('a measured arrival needs no entries, early or late', () => {
    for (const arrivalMeasuredMs of [-3, 0.01, 40]) {
      const { value, missing } = read('delayErrorMs', {
        ...ROOM,
        alignmentBy: 'automatic',
        arrivalMeasuredMs,
      });
      expect(value).toBeCloseTo(Math.abs(arrivalMeasuredMs), 6);
      expect(missing).toEqual([]);
    }
  });
  it('what is measured beyond tape and entries is latency, and no more of it than there is error', () => {
    const found = (facts: TestFacts): number => numberOf('latencyFoundMs', { ...exact, ...facts });
    expect(found({ arrivalMeasuredMs: 4 })).toBeCloseTo(4, 2);
    expect(found({ arrivalMeasuredMs: -4 })).toBeCloseTo(4, 2);
    // An entry 0.6864 m longer makes up for 2 ms of the 6.
    expect(found({ enteredCenter: 3.6864, arrivalMeasuredMs: 4 })).toBeCloseTo(4, 2);
    expect(found({ enteredCenter: 4.3728, arrivalMeasuredMs: 0 })).toBe(0);
    expect(found({ enteredCenter: 3.6864, arrivalMeasuredMs: -2 })).toBeLessThan(0.01);
  });
  it('entries by a microphone that nobody read are not known', () => {
    expect(read('delayErrorMs', { ...ROOM, alignmentBy: 'automatic' }).missing).toEqual([
      'enteredCenter',
      'enteredLeft',
      'enteredRight',
    ]);
  });
  it('a step of a foot leaves up to 0.89 ms', () => {
    expect(numberOf('entryStepErrorMs', { entryKind: 'distances', entryStep: 0.3048 })).toBeCloseTo(0.888, 3);
  });
  it('left against right needs no entry of the center', () => {
    const lopsided = { ...ROOM, enteredLeft: 3.354, enteredRight: 3.0108 };
    expect(numberOf('mainsArrivalErrorMs', lopsided)).toBeCloseTo(1, 2);
  });
});

describe('a screen in front', () => {
  it('follows from its kind, or from a center behind it', () => {
    expect(read('screenInFront', { screenKind: 'woven' }).value).toBe('yes');
    expect(read('screenInFront', { screenKind: 'none', centerPlacement: 'behind-screen' }).value).toBe('no');
    expect(read('screenInFront', { centerPlacement: 'behind-screen' }).value).toBe('yes');
    // A place in plain sight tells that no sheet is in front.
    expect(read('screenInFront', { centerPlacement: 'stand' }).value).toBe('no');
    expect(read('screenInFront', {}).missing).toEqual(['screenKind']);
  });
});

describe('who plays the voice', () => {
  const music = { playedContent: 'two-channel-music', upmixUse: 'on' } as const satisfies TestFacts;
  it('a film with its own center shares nothing with the mains, whatever the upmix would do', () => {
    const film = { ...music, playedContent: 'multichannel-film', upmixCommonPart: 'leaves' } as const;
    expect(numberOf('sharedContent', film)).toBe(0);
    expect(numberOf('widthLossPct', film)).toBe(0);
  });
  it('what a film shares is its pans, effects and score, and a reversed center costs those some decibels', () => {
    const film = { playedContent: 'multichannel-film' } as const;
    expect(numberOf('sharedSound', film)).toBeGreaterThan(0.1);
    expect(numberOf('sharedSound', film)).toBeLessThan(0.4);
    expect(numberOf('polarityLossDb', film)).toBeGreaterThan(3);
    expect(numberOf('polarityLossDb', film)).toBeLessThan(9);
    expect(numberOf('sharedSound', { ...film, centerCount: 'none' })).toBe(0);
  });
  it('of sound whose content nobody told, nobody can tell what is shared: it is not nothing', () => {
    expect(read('sharedSound', {}).value).toBeUndefined();
    expect(read('sharedSound', { playedContent: 'television' }).missing).toEqual(['sourceFormat']);
    expect(read('sharedSound', music).missing).toEqual(['upmixCommonPart']);
    expect(numberOf('sharedSound', { ...music, upmixUse: 'off' })).toBe(0);
  });
  it('where everything is played, music through an upmix may share more than the films do', () => {
    const all = { playedContent: 'everything', upmixUse: 'on' } as const;
    expect(numberOf('sharedSound', { ...all, upmixCommonPart: 'leaves' })).toBe(1);
    expect(numberOf('sharedSound', { ...all, upmixCommonPart: 'takes-out' })).toBeGreaterThan(0.15);
  });
  it('by what is set the voice is of the center, of the mains, or of both', () => {
    expect(read('voiceMeantFor', { ...music, upmixCommonPart: 'leaves' }).value).toBe('both');
    expect(read('voiceMeantFor', { ...music, upmixCommonPart: 'shares' }).value).toBe('both');
    expect(read('voiceMeantFor', { ...music, upmixCommonPart: 'takes-out' }).value).toBe('center');
    expect(read('voiceMeantFor', { ...music, upmixUse: 'off' }).value).toBe('mains');
    expect(read('voiceMeantFor', { playedContent: 'multichannel-film' }).value).toBe('center');
    expect(read('voiceMeantFor', {}).value).toBeUndefined();
  });
  it('a singer 12 dB softer in the mains is shared less than one 3 dB softer; untold, half of him is assumed', () => {
    const shares = { ...music, upmixCommonPart: 'shares' } as const;
    const soft = numberOf('sharedContent', { ...shares, upmixMainsDrop: 12 });
    const near = numberOf('sharedContent', { ...shares, upmixMainsDrop: 3 });
    expect(soft).toBeLessThan(near);
    expect(read('sharedContent', shares).assumed).toEqual(['upmixMainsDrop']);
    expect(numberOf('sharedContent', shares)).toBeGreaterThan(soft);
  });
  it('the low voice cancels with the subwoofer when the center is reversed, in any film', () => {
    const crossed = {
      playedContent: 'multichannel-film',
      subwoofer: 'one',
      centerBassSize: 'small',
      centerBassCrossover: 80,
      centerLowLimit: 50,
      centerEnclosure: 'sealed',
    } as const;
    expect(numberOf('reversedLossDb', crossed)).toBeGreaterThan(9);
    expect(numberOf('reversedLossDb', { ...crossed, subwoofer: 'none' })).toBeLessThan(9);
    const late = {
      ...ROOM,
      ...crossed,
      enteredLeft: 3.354,
      enteredCenter: 9.84,
      enteredRight: 3.354,
    } as const;
    expect(numberOf('entryBassHoleDb', late)).toBeGreaterThan(4);
    expect(numberOf('entryBassHoleDb', { ...late, centerBassSize: 'large' })).toBe(0);
  });
  it('two channels played straight leave the center silent', () => {
    expect(numberOf('sharedContent', { ...music, upmixUse: 'off' })).toBe(0);
  });
  it('an upmix that leaves the voice in the mains shares all of it', () => {
    expect(numberOf('sharedContent', { ...music, upmixCommonPart: 'leaves' })).toBe(1);
    expect(numberOf('extraction', { ...music, upmixCommonPart: 'leaves' })).toBe(0);
  });
  it('one that takes it out shares nothing and costs a third of the width by energy', () => {
    const out = { ...music, upmixCommonPart: 'takes-out' } as const;
    expect(numberOf('sharedContent', out)).toBeCloseTo(0, 6);
    expect(numberOf('widthLossPct', out)).toBeCloseTo(33, 0);
  });
  it('half a spread costs 18 percent', () => {
    const half = {
      ...music,
      upmixCenterControl: 'present',
      centerSpread: 'on',
      centerSpreadAmount: 0.5,
      upmixCommonPart: 'shares',
    } as const;
    expect(numberOf('widthLossPct', half)).toBeCloseTo(18, 0);
    expect(numberOf('sharedContent', half)).toBeGreaterThan(0.5);
  });
  it('whoever tells what the upmix leaves in the mains speaks of music, until he says that it is a film', () => {
    const heard = { upmixUse: 'on', upmixCommonPart: 'leaves' } as const;
    expect(numberOf('sharedContent', heard)).toBe(1);
    expect(numberOf('sharedContent', { ...heard, playedContent: 'multichannel-film' })).toBe(0);
    expect(read('sharedContent', heard).assumed).toEqual(['playedContent']);
    expect(read('upmixInUse', { upmixAmbience: 'yes' })).toMatchObject({
      value: 'yes',
      assumed: ['upmixUse'],
    });
    expect(read('upmixInUse', { upmixAmbience: 'no' }).missing).toEqual(['upmixUse']);
    expect(read('sharedContent', { upmixUse: 'on' }).missing).toEqual(['playedContent', 'sourceFormat']);
  });
  it('the center spread says what the upmix leaves in the mains where nobody has listened there', () => {
    const menu = { upmixUse: 'on', upmixCenterControl: 'present' } as const;
    expect(read('upmixMiddle', { ...menu, centerSpread: 'off' }).value).toBe('takes-out');
    expect(read('upmixMiddle', { ...menu, centerSpread: 'on' }).value).toBe('shares');
    expect(read('upmixMiddle', { ...menu, centerSpread: 'off', upmixCommonPart: 'shares' }).value).toBe(
      'shares',
    );
    expect(read('upmixMiddle', menu).missing).toEqual(['upmixCommonPart']);
    expect(numberOf('sharedContent', { ...menu, centerSpread: 'off' })).toBeCloseTo(0, 6);
  });
  it('an upmix works on two channels only: a film with its own center passes by it', () => {
    expect(read('upmixWorks', music).value).toBe('yes');
    expect(read('upmixWorks', { playedContent: 'multichannel-film' }).value).toBe('no');
    expect(read('upmixWorks', { upmixUse: 'off' }).value).toBe('no');
    expect(read('upmixInUse', { playedContent: 'multichannel-film' })).toMatchObject({ value: 'no' });
    expect(read('upmixInUse', { playedContent: 'multichannel-film', upmixUse: 'on' }).value).toBe('no');
    const folded = { playedContent: 'multichannel-film', sourceFormat: 'two-channel' } as const;
    expect(read('upmixInUse', { ...folded, upmixUse: 'on' }).value).toBe('yes');
    expect(read('upmixInUse', { sourceFormat: 'multichannel' }).missing).toEqual(['upmixUse']);
    expect(read('upmixWorks', { playedContent: 'two-channel-music' }).missing).toEqual(['upmixUse']);
  });
  it('without an upmix nothing is shared, whatever is played', () => {
    expect(numberOf('sharedContent', { upmixUse: 'off' })).toBe(0);
  });
  it('television needs the incoming format, music the upmix', () => {
    expect(read('sharedContent', { playedContent: 'television' }).missing).toEqual(['sourceFormat']);
    expect(read('sharedContent', { playedContent: 'two-channel-music' }).missing).toEqual(['upmixUse']);
    expect(read('sharedContent', music).missing).toEqual(['upmixCommonPart']);
  });
  it('a delay cannot comb what the center plays alone', () => {
    const late = { ...ROOM, alignmentBy: 'nobody' } as const;
    expect(numberOf('delayCombDb', { ...late, playedContent: 'multichannel-film' })).toBe(0);
    expect(numberOf('delayCombDb', { ...late, ...music, upmixCommonPart: 'leaves' })).toBeGreaterThan(6);
  });
  it('equal shares comb at side seats even with perfect alignment, a full extraction does not', () => {
    const shared = { ...SOFA, ...music, upmixCommonPart: 'leaves' } as const;
    expect(numberOf('offSeatCombDb', shared)).toBeGreaterThan(12);
    expect(numberOf('offSeatCombDb', { ...shared, upmixCommonPart: 'takes-out' })).toBe(0);
  });
  it('half extraction leaves a voice 82 percent of the way to the near main at 0.6 m', () => {
    const half = { ...SOFA, ...music, upmixCommonPart: 'shares' } as const;
    expect(numberOf('offSeatImageShare', half)).toBeCloseTo(0.82, 1);
    expect(numberOf('offSeatImageShare', { ...half, upmixCommonPart: 'takes-out' })).toBeCloseTo(0, 6);
  });
  it('a reversed center takes a shared voice away', () => {
    expect(numberOf('polarityLossDb', { ...music, upmixCommonPart: 'shares' })).toBeGreaterThan(6);
  });
  it('time and level of the mains add up where both favor one side, and help each other where not', () => {
    const set = { ...SOFA, tapedLeft: 3.3, tapedRight: 3.3, enteredRight: 3.3, enteredCenter: 3 };
    // A longer entry is delayed less: left comes 0.3 ms early.
    const early = { ...set, enteredLeft: 3.4 };
    const pull = (left: number, right: number): number =>
      numberOf('mainSeatPullDeg', { ...early, measuredLeftLevel: left, measuredRightLevel: right });
    expect(pull(75, 72)).toBeGreaterThan(pull(75, 75) + 3);
    expect(pull(72, 75)).toBeLessThan(pull(75, 75) - 3);
  });
  it('a phantom voice is pulled to the nearer main at side seats only', () => {
    const phantom = { ...SOFA, ...music, upmixUse: 'off', alignmentBy: 'nobody' } as const;
    expect(numberOf('mainsPullDeg', phantom)).toBeGreaterThan(20);
    expect(numberOf('mainSeatPullDeg', phantom)).toBeCloseTo(0, 6);
    expect(numberOf('mainsPullDeg', { ...phantom, playedContent: 'multichannel-film' })).toBe(0);
  });
});

describe('surfaces', () => {
  it('a center at 0.60 m over a bare floor has its first null near 440 Hz', () => {
    const facts = { ...ROOM, earHeight: 1.05, centerTweeterHeight: 0.6, floorCover: 'bare' } as const;
    expect(numberOf('floorNullHz', facts)).toBeCloseTo(440, -1);
    expect(numberOf('floorRippleDb', { ...facts, floorCover: 'carpet' })).toBeLessThan(
      numberOf('floorRippleDb', facts),
    );
  });
  it('a shelf 0.20 m deep in front does about 4 dB, a flush face nothing', () => {
    const shelf = {
      ...ROOM,
      centerPlacement: 'shelf-top',
      centerAboveShelf: 0.12,
      shelfSetback: 0.2,
    } as const;
    const seen = { ...shelf, earHeight: 1.05, centerTweeterHeight: 0.67 };
    expect(numberOf('shelfDipDb', seen)).toBeCloseTo(3.8, 0);
    expect(numberOf('shelfRiseDb', seen)).toBeCloseTo(4.1, 1);
    expect(numberOf('shelfDipDb', { ...seen, shelfSetback: 0 })).toBeCloseTo(0, 1);
  });
  it('what belongs to a shelf does not apply in a bay, and is not asked for', () => {
    const moved = { ...ROOM, centerPlacement: 'bay', shelfSetback: 0.2 } as const;
    expect(read('shelfDipDb', moved)).toMatchObject({ value: undefined, missing: [] });
    expect(read('shelfSetback', moved)).toMatchObject({ value: undefined, missing: [] });
  });
  it('where the place is not known, the place is asked before the bay', () => {
    expect(read('bayWidth', {}).missing[0]).toBe('centerPlacement');
    expect(read('bayResonanceHz', {}).missing).toEqual(['centerPlacement']);
  });
  const bay = {
    ...ROOM,
    centerPlacement: 'bay',
    bayWidth: 0.6,
    bayHeight: 0.22,
    bayDepth: 0.45,
    bayRecess: 0,
    bayStuffing: 'open',
    centerWidth: 0.5,
    centerHeight: 0.18,
    centerDepth: 0.3,
  } as const satisfies TestFacts;
  it('a bay with air behind the box rings at 109 Hz, and filling tames it', () => {
    expect(numberOf('bayResonanceHz', bay)).toBeCloseTo(109, 0);
    expect(numberOf('bayPeakDb', bay)).toBeCloseTo(7.8, 0);
    expect(numberOf('bayPeakDb', { ...bay, bayStuffing: 'filled' })).toBeLessThan(1);
  });
  it('a recess of 0.10 m speaks at 313 Hz', () => {
    expect(numberOf('recessResonanceHz', { ...bay, bayRecess: 0.1 })).toBeCloseTo(313, 0);
    expect(numberOf('recessPeakDb', { ...bay, bayRecess: 0.1 })).toBeCloseTo(4.8, 1);
  });
  it('pulled flush, open gaps with air behind the box sing louder than before', () => {
    const recessed = { ...bay, bayRecess: 0.1 } as const;
    expect(numberOf('bayPeakDb', bay)).toBeGreaterThan(numberOf('cavityPeakDb', recessed));
    expect(numberOf('flushGainDb', recessed)).toBe(0);
  });
  it('pulled flush, filled gaps lose the whole note of the recess', () => {
    const filled = { ...bay, bayRecess: 0.1, bayStuffing: 'filled' } as const;
    const left = numberOf('cavityPeakDb', { ...filled, bayRecess: 0 });
    expect(numberOf('flushGainDb', filled)).toBeCloseTo(4.8 - left, 1);
    expect(numberOf('flushGainDb', { ...filled, bayRecess: 0 })).toBe(0);
  });
  it('quiet gaps do not clear a bay while the recess is not told, loud ones condemn it', () => {
    const { bayRecess: _, ...untold } = bay;
    expect(read('cavityPeakDb', { ...untold, bayStuffing: 'sealed' })).toMatchObject({
      value: undefined,
      missing: ['bayRecess'],
    });
    expect(numberOf('cavityPeakDb', { ...untold, bayStuffing: 'open' })).toBeGreaterThan(6);
    expect(numberOf('cavityPeakDb', { ...bay, bayStuffing: 'sealed', bayRecess: 0.1 })).toBeCloseTo(4.8, 1);
  });
  it('all sizes of the bay that are missing are named at once', () => {
    expect(read('bayPeakDb', { centerPlacement: 'bay' }).missing).toEqual([
      'bayWidth',
      'bayHeight',
      'bayDepth',
    ]);
  });
  it('a wall 0.40 m behind the center cancels at 215 Hz', () => {
    expect(numberOf('wallNullHz', { ...ROOM, wallDistance: 0.4 })).toBeCloseTo(214.5, 1);
  });
  it('in two rows on a flat floor the line from a low center to the second is cut by 0.37 m', () => {
    const facts = { ...ROOM, earHeight: 1.05, centerTweeterHeight: 0.55 } as const;
    const rows = [
      { xM: 0, yM: 2.4, row: 1, earHeightM: 1.13 },
      { xM: 0, yM: 3.4, row: 2, earHeightM: 1.05 },
    ];
    expect(numberOf('sightClearanceM', facts, rows)).toBeCloseTo(-0.37, 2);
    // One head costs at most 0.6 dB of speech.
    expect(numberOf('blockedSpeechLossDb', facts, rows)).toBeLessThan(0.7);
    expect(numberOf('blockedSpeechLossDb', { ...facts, obstacle: 'seat-row' }, rows)).toBeGreaterThan(5);
  });
  it('a head half a meter beside the line shades nothing, one a hand width beside it does', () => {
    const facts = { ...ROOM, earHeight: 1.05, centerTweeterHeight: 0.55 } as const;
    const rows = (xM: number) => [
      { xM, yM: 2.5, row: 1, earHeightM: 1.13 },
      { xM: 0, yM: 3.8, row: 2, earHeightM: 1.05 },
    ];
    expect(numberOf('blockedSpeechLossDb', facts, rows(0.1))).toBeGreaterThan(0);
    expect(read('blockedSpeechLossDb', facts, rows(0.5)).missing).toEqual(['obstacle']);
  });
  it('a head far off the line is out of the way; a row of seat backs is in it as far as it reaches', () => {
    const facts = { ...ROOM, earHeight: 1.05, centerTweeterHeight: 0.55 } as const;
    const rows = (...frontXM: number[]) => [
      ...frontXM.map((xM) => ({ xM, yM: 2.5, row: 1, earHeightM: 1.13 })),
      { xM: 2, yM: 3.8, row: 2, earHeightM: 1.05 },
    ];
    // The line to the seat behind passes the front row 1.3 m to the right.
    expect(numberOf('blockedSpeechLossDb', facts, rows(1.3))).toBeGreaterThan(0);
    expect(
      numberOf('blockedSpeechLossDb', { ...facts, obstacle: 'seat-row' }, rows(0.7, 1.9)),
    ).toBeGreaterThan(3);
    // Whoever sees something in the way all the same has to tell where it is.
    for (const aside of [rows(-2), rows(-2, -1)]) {
      expect(read('blockedSpeechLossDb', facts, aside).missing).toEqual(['obstacle']);
      expect(read('blockedSpeechLossDb', { ...facts, obstacle: 'seat-row' }, aside).missing).toEqual([
        'obstacleHeight',
        'obstacleDistance',
      ]);
    }
  });
  it('a clear view blocks nothing', () => {
    expect(numberOf('blockedSpeechLossDb', { ...ROOM, obstacle: 'none' })).toBe(0);
    expect(read('blockedSpeechLossDb', ROOM).missing).toEqual(['obstacle']);
  });
});

describe('screens', () => {
  const vinyl = {
    screenKind: 'perforated',
    screenHoleDiameter: 0.001016,
    screenHolesPerArea: 59_200,
    screenThickness: 0.0003,
    screenCompensation: 0,
  } as const satisfies TestFacts;
  it('cinema vinyl costs about 5 dB of treble, a fine weave under 1', () => {
    // Table: 3.6, 5.0, 6.4, 7.9 dB at 6, 8, 10, 12.5 kHz, 0.3 dB at 1 kHz.
    expect(numberOf('screenLossDb', vinyl)).toBeCloseTo(4.9, 0);
    expect(numberOf('screenLossDb', { screenKind: 'woven', screenFlowResistance: 40 })).toBeLessThan(1);
  });
  it('in front of all three it dulls all alike: no mismatch', () => {
    expect(numberOf('screenMismatchDb', { ...vinyl, screenCovers: 'all-three' })).toBe(0);
    expect(numberOf('screenMismatchDb', { ...vinyl, screenCovers: 'center-only' })).toBeGreaterThan(4);
  });
  it('what is given back is no longer missing, and too much of it is a mismatch again', () => {
    const covered = { ...vinyl, screenCovers: 'center-only' } as const;
    const lossDb = numberOf('screenLossDb', vinyl);
    expect(numberOf('screenLossDb', { ...covered, screenCompensation: lossDb })).toBeCloseTo(0, 6);
    expect(numberOf('screenMismatchDb', { ...covered, screenCompensation: lossDb + 3 })).toBeCloseTo(3, 6);
  });
});

describe('bass', () => {
  const vented = {
    subwoofer: 'one',
    centerBassSize: 'small',
    centerBassCrossover: 80,
    centerLowLimit: 90,
    centerLowLimitDrop: 3,
    centerEnclosure: 'vented',
    highPassSlope: '24',
  } as const satisfies TestFacts;
  it('a vented center with its limit at 90 Hz crossed at 80 Hz leaves 2.5 dB aligned, a canyon untouched', () => {
    expect(numberOf('bassHoleDb', vented)).toBeCloseTo(2.5, 1);
    expect(numberOf('bassHoleDb', { ...vented, subTiming: 'untouched' })).toBeGreaterThan(19);
  });
  it('the polarity test says which of the two sums is the present one', () => {
    const late = { ...vented, subTiming: 'untouched' } as const;
    const fuller = numberOf('bassHoleDb', { ...late, subPolarity: 'fuller-as-set' });
    expect(fuller).toBeLessThan(numberOf('bassHoleDb', { ...late, subPolarity: 'fuller-other-way' }));
  });
  it('a told crossover tells that the center is set small', () => {
    const { centerBassSize: _, ...rest } = vented;
    expect(numberOf('bassHoleDb', rest)).toBe(numberOf('bassHoleDb', vented));
  });
  it('set large there is no crossover to have a hole', () => {
    expect(numberOf('bassHoleDb', { ...vented, centerBassSize: 'large' })).toBe(0);
  });
  it('the safe crossover lies above the low limit, higher without alignment', () => {
    const aligned = numberOf('safeCrossoverHz', vented);
    expect(aligned).toBeGreaterThanOrEqual(90);
    expect(numberOf('safeCrossoverHz', { ...vented, subTiming: 'untouched' })).toBeGreaterThan(aligned);
  });
  it('a limit stated at 10 dB down is really higher, more so for a closed box', () => {
    const holeAt = (drop: number) => numberOf('bassHoleDb', { ...vented, centerLowLimitDrop: drop });
    expect(holeAt(10)).toBeGreaterThan(holeAt(3));
  });
});

describe('levels', () => {
  it('the level at the seat is center against the mean of the mains', () => {
    const facts = { measuredCenterLevel: 71, measuredLeftLevel: 75, measuredRightLevel: 74 };
    expect(numberOf('levelSignedDb', facts)).toBeCloseTo(-3.5, 6);
    expect(numberOf('levelErrorDb', facts)).toBeCloseTo(3.5, 6);
    expect(numberOf('mainsLevelErrorDb', facts)).toBeCloseTo(1, 6);
  });
  it('a trim is no level', () => {
    expect(read('levelErrorDb', { centerTrim: 6 }).value).toBeUndefined();
  });
});
