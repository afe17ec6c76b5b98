/**
 * The 30 causes as things that happen to a healthy system: how common each is (prior of the trade, judgement),
 * what it changes physically, which complaints follow with which chance (from a computed deviation where there
 * is one), and how home tests come out. Written from the physics and the trade; no rule or weight is known here.
 */

import { barrierLossAtSeat } from '../../src/acoustics/barrier.js';
import { bassSum } from '../../src/acoustics/bass.js';
import { bayResponse, recess } from '../../src/acoustics/bay.js';
import { screen } from '../../src/acoustics/screen.js';
import { shelfEffect } from '../../src/acoustics/shelf.js';
import type { FactId } from '../../src/facts/catalog.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import type { Random } from '../random.js';
import {
  heightErrorDeg,
  layoutAt,
  numberOf,
  seatsIn,
  setEntries,
  setHealthyUpmix,
  setLayout,
  type World,
} from './world.js';

export type Heard = Partial<Record<ComplaintId, number>>;

export interface Trouble {
  /** How common it is, relative to the others. */
  readonly common: number;
  /** Changes the world; says no where it could not be brought about in this one. */
  readonly inflict: (world: World, random: Random) => boolean;
  /** Chance of each complaint, from the physics of the changed world. */
  readonly heard: (world: World) => Heard;
  /** Outcomes of home tests that differ from "nothing changes". */
  readonly tests?: Partial<Record<FactId, string>> | ((world: World) => Partial<Record<FactId, string>>);
}

/** Chance that a deviation is noticed: one half at the clear grade, 0.85 at twice that. */
const noticed = (ratio: number): number => (ratio <= 0 ? 0 : 1 / (1 + ratio ** -2.5));
/** Clear grades, as in the published-thresholds table: dip, height, side, treble, level. */
const CLEAR = { dipDb: 4, heightDeg: 10, sideDeg: 6, trebleDb: 3, levelDb: 3, speechDb: 2 } as const;
const DRAWS = 60;

const worstDip = (world: World): number => Math.max(...seatsIn(world).map((s) => -layoutAt(world, s).dipDb));
const mainOf = (world: World) => {
  const seats = seatsIn(world);
  return seats.find((s) => s.main) ?? (seats[0] as (typeof seats)[number]);
};
const mainDip = (world: World): number => -layoutAt(world, mainOf(world)).dipDb;
const sharing = (world: World): boolean => world.upmixUse !== 'off' && world.upmixCommonPart !== 'takes-out';

/** Two-channel music through an upmix: what spread, delay and polarity need to be heard. */
function playMusic(world: World, random: Random, common: 'shares' | 'leaves' | 'takes-out'): void {
  world.playedContent = random.weighted({ 'two-channel-music': 7, everything: 3 });
  world.sourceFormat = 'two-channel';
  world.upmixUse = random.weighted({ on: 8, sometimes: 2 });
  world.upmixCommonPart = common;
}
const changed = (world: World, random: Random, what: string, chance = 0.6): void => {
  if (random.chance(chance)) Object.assign(world, { onset: 'with-change', lastChange: what });
  else Object.assign(world, { onset: 'always', lastChange: 'nothing' });
};
const redraw = (random: Random, attempt: () => boolean): boolean => {
  for (let n = 0; n < DRAWS; n += 1) if (attempt()) return true;
  return random.chance(0);
};

export const TROUBLES = {
  'driver-layout': {
    common: 8,
    inflict: (world, random) =>
      redraw(random, () => {
        const kinds = {
          'mid-tweeter-mid': 7,
          'two-and-a-half-way': 1,
          'horizontal-two-way': 1,
          'woofer-mid-tweeter-woofer': 1,
        };
        setLayout(world, random.weighted(kinds), random);
        world.seating = 'one-row';
        world.seatCount = random.pick([3, 3, 4, 5]);
        world.seatSpacing = random.between(0.58, 0.85);
        world.mainSeatOffset =
          numberOf(world, 'seatCount') % 2 === 0 ? numberOf(world, 'seatSpacing') / 2 : 0;
        world.seatDistance = random.between(1.9, 3);
        world.mainsBase = numberOf(world, 'seatDistance') * random.between(0.9, 1.1);
        world.centerTilt = 0;
        setEntries(world);
        Object.assign(world, { troubleSeats: 'off-middle', whoHears: 'one-place', onset: 'always' });
        return worstDip(world) > 5.5 && mainDip(world) < 3;
      }),
    heard: (world) => ({
      'voice-unclear-off-side': noticed(worstDip(world) / CLEAR.dipDb),
      'voice-changes-tone': 0.2,
      hollow: 0.15,
    }),
    tests: {
      testSitMiddle: 'clear-in-middle',
      testMainInPlace: 'right',
      testSwapSeats: 'stays-with-seat',
      testSwapAtLoudspeakers: 'follows-box',
    },
  },
  'outer-tweeters': {
    common: 2,
    inflict: (world, random) => {
      setLayout(
        world,
        random.pick(['tweeter-mid-mid-tweeter', 'tweeter-mid-tweeter', 'paired-boxes']),
        random,
      );
      if (world.centerLayout === 'paired-boxes') world.centerCount = 'two';
      Object.assign(world, {
        onset: 'always',
        troubleSeats: random.weighted({ everywhere: 5, 'off-middle': 5 }),
      });
      return true;
    },
    heard: (world) => ({
      'swishes-with-head-movement': 0.65,
      'voice-unclear-off-side': noticed((worstDip(world) - 10) / CLEAR.dipDb) * 0.6,
      dull: 0.2,
      'voice-changes-tone': 0.2,
    }),
    tests: {
      testCoverTweeter: 'steadier',
      testSitMiddle: 'clear-in-middle',
      testMainInPlace: 'right',
      testSwapAtLoudspeakers: 'follows-box',
    },
  },
  height: {
    common: 6,
    inflict: (world, random) =>
      redraw(random, () => {
        const low = random.chance(0.7);
        world.centerTweeterHeight = low ? random.between(0.15, 0.5) : random.between(1.7, 2.1);
        world.displayMiddleHeight = low ? random.between(1.1, 1.5) : random.between(1, 1.2);
        world.seatDistance = random.between(2, 3.2);
        world.centerPlacement = low ? random.pick(['floor', 'stand']) : 'wall';
        const angle = Math.atan(
          (numberOf(world, 'earHeight') - numberOf(world, 'centerTweeterHeight')) /
            numberOf(world, 'seatDistance'),
        );
        world.centerTilt = Math.round((angle * 180) / Math.PI);
        if (low) world.floorCover = 'carpet';
        world.voiceDirection = low ? 'low' : 'high';
        world.troubleSeats = 'everywhere';
        setEntries(world);
        return Math.abs(heightErrorDeg(world)) > 11;
      }),
    heard: (world) => ({
      'voice-low-or-high': noticed(Math.abs(heightErrorDeg(world)) / CLEAR.heightDeg) * 0.5 + 0.45,
      'image-collapses-to-center': 0.08,
    }),
    tests: { testLift: 'improves' },
  },
  aim: {
    common: 4,
    inflict: (world, random) =>
      redraw(random, () => {
        setLayout(
          world,
          random.weighted({ 'vertical-two-way': 6, 'mid-tweeter-mid': 3, 'woofer-mid-tweeter-woofer': 1 }),
          random,
        );
        world.centerOrientation = world.centerLayout === 'vertical-two-way' ? 'level' : 'upright';
        world.centerTilt = Math.round(random.between(-20, 24));
        world.troubleSeats = 'everywhere';
        return mainDip(world) > 5.5;
      }),
    heard: (world) => ({
      'voice-unclear-everywhere': noticed(mainDip(world) / CLEAR.dipDb) * 0.8,
      dull: 0.4,
      hollow: 0.2,
      'voice-changes-tone': 0.2,
    }),
    tests: { testTilt: 'clearer', testLift: 'tone-only' },
  },
  'cabinet-bay': {
    common: 7,
    inflict: (world, random) => {
      Object.assign(world, {
        centerPlacement: 'bay',
        bayWidth: numberOf(world, 'centerWidth') + random.between(0.06, 0.25),
        bayHeight: numberOf(world, 'centerHeight') + random.between(0.03, 0.1),
        bayRecess: random.between(0.07, 0.2),
        bayStuffing: 'open',
        toneAcrossPan: random.weighted({ boxier: 8, duller: 2 }),
        troubleSeats: 'everywhere',
      });
      world.bayDepth =
        numberOf(world, 'centerDepth') + numberOf(world, 'bayRecess') + random.between(0.05, 0.2);
      changed(world, random, 'furniture', 0.3);
      return true;
    },
    heard: (world) => {
      const size = {
        bayWidthM: numberOf(world, 'bayWidth'),
        bayHeightM: numberOf(world, 'bayHeight'),
        bayDepthM: numberOf(world, 'bayDepth'),
        recessM: numberOf(world, 'bayRecess'),
        speakerWidthM: numberOf(world, 'centerWidth'),
        speakerHeightM: numberOf(world, 'centerHeight'),
        speakerDepthM: numberOf(world, 'centerDepth'),
      };
      const peak = Math.max(
        bayResponse(size).peakDb,
        recess({ recessM: size.recessM, mouthWidthM: size.bayWidthM, mouthHeightM: size.bayHeightM }).peakDb,
      );
      const p = noticed(peak / CLEAR.levelDb);
      return {
        boomy: 0.8 * p,
        hollow: 0.4 * p,
        'voice-changes-tone': 0.3,
        'voice-unclear-everywhere': 0.3 * p,
      };
    },
    tests: {
      testPullForward: 'clearer',
      testNoiseEach: 'boxy',
      testMainInPlace: 'wrong',
      testNearCenter: 'better',
      testLift: 'tone-only',
    },
  },
  'set-back': {
    common: 6,
    inflict: (world, random) => {
      Object.assign(world, {
        centerPlacement: 'shelf-top',
        shelfSetback: random.between(0.3, 0.6),
        centerAboveShelf: random.between(0.08, 0.13),
        centerTweeterHeight: random.between(0.55, 0.8),
        toneAcrossPan: random.weighted({ boxier: 5, 'no-change': 3, duller: 2 }),
        troubleSeats: 'everywhere',
      });
      changed(world, random, 'furniture', 0.3);
      setEntries(world);
      return true;
    },
    heard: (world) => {
      const { dipDb, riseDb } = shelfEffect({
        heightAboveShelfM: numberOf(world, 'centerAboveShelf'),
        earAboveShelfM:
          numberOf(world, 'earHeight') -
          numberOf(world, 'centerTweeterHeight') +
          numberOf(world, 'centerAboveShelf'),
        distanceM: numberOf(world, 'seatDistance'),
        exposedDepthM: numberOf(world, 'shelfSetback'),
      });
      const p = noticed(Math.max(-dipDb / CLEAR.dipDb, riseDb / CLEAR.levelDb));
      return {
        hollow: 0.7 * p,
        'voice-unclear-everywhere': 0.5 * p,
        'voice-changes-tone': 0.35,
        boomy: 0.15,
      };
    },
    tests: {
      testPullForward: 'clearer',
      testCoverShelf: 'clearer',
      testMainInPlace: 'wrong',
      testNearCenter: 'better',
    },
  },
  'near-surface': {
    common: 3,
    inflict: (world, random) => {
      Object.assign(world, {
        floorCover: 'bare',
        centerPlacement: random.weighted({ floor: 5, stand: 5 }),
        centerTweeterHeight: random.between(0.35, 0.6),
        seatDistance: random.between(3.2, 4.2),
        displayMiddleHeight: 0.9,
        troubleSeats: 'everywhere',
        toneAcrossPan: random.weighted({ 'no-change': 3, thinner: 3, boxier: 4 }),
      });
      changed(world, random, 'furniture', 0.4);
      setEntries(world);
      return true;
    },
    heard: () => ({ hollow: 0.65, 'voice-changes-tone': 0.4, boomy: 0.2, 'voice-unclear-everywhere': 0.2 }),
    tests: {
      testCoverShelf: 'clearer',
      testLift: 'tone-only',
      testMainInPlace: 'wrong',
      testNearCenter: 'good-near',
    },
  },
  'blocked-path': {
    common: 4,
    inflict: (world, random) =>
      redraw(random, () => {
        const kind = random.weighted({ 'seat-row': 3, object: 4, table: 3 });
        world.obstacle = kind;
        if (kind === 'seat-row') {
          Object.assign(world, {
            seating: 'several-rows',
            rowSpacing: random.between(1.2, 1.7),
            rowRiser: 0,
          });
          if (world.seatCount === 1)
            Object.assign(world, { seatCount: 3, seatSpacing: 0.65, mainSeatOffset: 0 });
          Object.assign(world, {
            obstacleHeight: random.between(0.95, 1.2),
            obstacleDistance: numberOf(world, 'seatDistance') - 0.05,
          });
          Object.assign(world, { troubleSeats: 'one-seat', whoHears: 'one-place' });
          world.centerTweeterHeight = random.between(0.5, 0.75);
        } else if (kind === 'object') {
          Object.assign(world, {
            obstacleDistance: random.between(0.05, 0.4),
            obstacleHeight: numberOf(world, 'centerTweeterHeight') + random.between(0.1, 0.25),
          });
          world.troubleSeats = 'everywhere';
        } else {
          Object.assign(world, {
            obstacleHeight: random.between(0.42, 0.5),
            obstacleDistance: random.between(0.4, 0.8),
            centerTweeterHeight: random.between(0.52, 0.62),
          });
          world.troubleSeats = 'everywhere';
        }
        changed(world, random, 'furniture', 0.5);
        setEntries(world);
        return kind === 'table' || blockLoss(world) > 2.5;
      }),
    heard: (world) => {
      const back = world.obstacle === 'seat-row';
      const p = world.obstacle === 'table' ? 0.7 : noticed(blockLoss(world) / CLEAR.speechDb);
      const unclear = world.obstacle === 'table' ? 0.3 * p : 0.6 * p;
      return {
        [back ? 'voice-unclear-off-side' : 'voice-unclear-everywhere']: unclear,
        ...(world.obstacle === 'table' ? { hollow: 0.6 * p } : { dull: 0.7 * p }),
      };
    },
    tests: (world) =>
      world.obstacle === 'seat-row'
        ? {
            testLift: 'tone-only',
            testSwapSeats: 'stays-with-seat',
            testNearCenter: 'good-near',
            testMainInPlace: 'wrong',
          }
        : {
            testLift: 'tone-only',
            testCoverShelf: world.obstacle === 'table' ? 'clearer' : 'same',
            testNearCenter: 'good-near',
            testMainInPlace: 'wrong',
          },
  },
  'off-midline': {
    common: 3,
    inflict: (world, random) => {
      const side = random.pick([-1, 1]);
      world.centerSideOffset =
        side * numberOf(world, 'seatDistance') * Math.tan((random.between(7, 15) * Math.PI) / 180);
      Object.assign(world, {
        mainSeatOffset: 0,
        voiceDirection: 'aside',
        troubleSeats: 'everywhere',
        onset: 'always',
      });
      setEntries(world);
      return true;
    },
    heard: (world) => {
      const angle =
        (Math.atan(Math.abs(numberOf(world, 'centerSideOffset')) / numberOf(world, 'seatDistance')) * 180) /
        Math.PI;
      return { 'voice-pulled-aside': 0.4 + 0.6 * noticed(angle / CLEAR.sideDeg) };
    },
  },
  delay: {
    common: 6,
    inflict: (world, random) => {
      playMusic(world, random, random.pick(['shares', 'leaves']));
      setHealthySpread(world, random);
      setEntries(world);
      Object.assign(world, { troubleSeats: 'everywhere', calibrationSpot: 'elsewhere' });
      const kind = random.weighted({ wrong: 5, nobody: 3, latency: 2 });
      if (kind === 'latency') {
        Object.assign(world, {
          centerPowered: 'yes',
          centerLatency: random.between(1.5, 8),
          alignmentBy: 'by-hand',
        });
      } else if (kind === 'nobody') {
        Object.assign(world, {
          alignmentBy: 'nobody',
          enteredLeft: 3.6,
          enteredCenter: 3.6,
          enteredRight: 3.6,
        });
        world.mainsBase = numberOf(world, 'seatDistance') * random.between(1.05, 1.25);
        const { tapedMains: _, ...rest } = world;
        setTaped(world, rest);
      } else {
        world.alignmentBy = 'by-hand';
        world.enteredCenter =
          numberOf(world, 'enteredCenter') + random.pick([-1, 1]) * random.between(0.35, 1.4);
      }
      changed(world, random, 'settings', 0.5);
      return true;
    },
    heard: (world) => {
      const ms =
        Math.abs(
          numberOf(world, 'enteredCenter') -
            numberOf(world, 'enteredLeft') -
            (numberOf(world, 'tapedCenter') - numberOf(world, 'tapedMains')),
        ) /
          0.3432 +
        numberOf(world, 'centerLatency');
      const p = noticed(ms / 0.25) * (sharing(world) ? 1 : 0.1);
      return {
        hollow: 0.65 * p,
        'voice-changes-tone': 0.35 * p,
        echo: ms > 5 ? 0.5 : 0.05,
        'no-middle': 0.15 * p,
        'voice-pulled-aside': 0.1 * p,
      };
    },
    tests: (world) => ({
      testTape: world.centerPowered === 'yes' ? 'agrees' : 'off',
      testUpmixOff: 'gone',
      testUnplugged: world.upmixCommonPart === 'leaves' ? 'voice-full' : 'voice-weaker',
      testPolarity: 'no-difference',
    }),
  },
  level: {
    common: 8,
    inflict: (world, random) => {
      const soft = random.chance(0.7);
      world.measuredCenterLevel = 75 + (soft ? -1 : 1) * random.between(4, 8);
      Object.assign(world, { voiceLoudness: soft ? 'softer' : 'louder', troubleSeats: 'everywhere' });
      if (soft) world.triedTrim = random.weighted({ cured: 6, 'not-tried': 4 });
      if (!soft) world.voiceDirection = random.weighted({ 'center-box': 7, picture: 3 });
      world.alignmentBy = random.weighted({ 'by-hand': 5, nobody: 3, automatic: 2 });
      changed(world, random, 'settings', 0.5);
      return true;
    },
    heard: (world) => {
      const error = numberOf(world, 'measuredCenterLevel') - 75;
      const p = noticed(Math.abs(error) / CLEAR.levelDb);
      return error < 0
        ? { 'voice-too-quiet': p, 'voice-unclear-everywhere': 0.3 * p }
        : { 'voice-too-loud': p, 'image-collapses-to-center': 0.4 * p };
    },
    tests: { testSwapAtAmplifier: 'moves-left' },
  },
  'spread-off': {
    common: 5,
    inflict: (world, random) => {
      playMusic(world, random, 'takes-out');
      Object.assign(world, {
        upmixCenterControl: 'present',
        centerSpread: 'off',
        upmixAmbience: 'no',
        voiceDirection: 'center-box',
        troubleSeats: 'everywhere',
      });
      delete world.centerSpreadAmount;
      changed(world, random, 'settings', 0.3);
      return true;
    },
    heard: () => ({ 'image-collapses-to-center': 0.92, 'voice-too-loud': 0.1 }),
    tests: { testUpmixOff: 'gone', testSpreadOn: 'opens', testUnplugged: 'voice-gone', testPhantom: 'gone' },
  },
  'fixed-extraction': {
    common: 4,
    inflict: (world, random) => {
      playMusic(world, random, 'takes-out');
      Object.assign(world, {
        upmixCenterControl: 'none',
        upmixAmbience: 'no',
        voiceDirection: 'center-box',
        troubleSeats: 'everywhere',
      });
      for (const id of ['centerSpread', 'centerSpreadAmount'] as const) delete world[id];
      return true;
    },
    heard: () => ({ 'image-collapses-to-center': 0.92, 'no-middle': 0.03, 'voice-too-loud': 0.1 }),
    tests: { testUpmixOff: 'gone', testUnplugged: 'voice-gone', testPhantom: 'gone' },
  },
  'ambience-setting': {
    common: 2,
    inflict: (world, random) => {
      playMusic(world, random, 'takes-out');
      Object.assign(world, {
        upmixCenterControl: 'none',
        upmixAmbience: 'yes',
        ambienceSize: 'small',
        voiceDirection: 'center-box',
        troubleSeats: 'everywhere',
      });
      for (const id of ['centerSpread', 'centerSpreadAmount'] as const) delete world[id];
      changed(world, random, 'settings', 0.5);
      return true;
    },
    heard: () => ({ 'image-collapses-to-center': 0.88, hollow: 0.1 }),
    tests: { testUpmixOff: 'gone', testUnplugged: 'voice-gone', testPhantom: 'gone' },
  },
  timbre: {
    common: 6,
    inflict: (world, random) => {
      const tone = random.pick(['duller', 'brighter', 'thinner', 'boxier'] as const);
      Object.assign(world, {
        centerFamily: random.weighted({ unrelated: 8, 'same-maker': 2 }),
        toneAcrossPan: tone,
        equalization: random.weighted({ none: 6, automatic: 4 }),
        troubleSeats: 'everywhere',
      });
      if (random.chance(0.3)) world.mainsKind = 'panel-or-horn';
      if (random.chance(0.6)) world.centerSizeAgainstMains = 'smaller';
      changed(world, random, 'loudspeaker', 0.4);
      return true;
    },
    heard: (world) => ({
      'voice-changes-tone': 0.88,
      dull: world.toneAcrossPan === 'duller' ? 0.4 : 0,
      harsh: world.toneAcrossPan === 'brighter' ? 0.35 : 0,
      boomy: world.toneAcrossPan === 'boxier' ? 0.2 : 0,
    }),
    tests: (world) => ({
      testMainInPlace: 'right',
      testSwapAtAmplifier: 'stays',
      testSwapAtLoudspeakers: 'follows-box',
      testNoiseEach: noiseWord(world),
    }),
  },
  'correction-mismatch': {
    common: 4,
    inflict: (world, random) => {
      Object.assign(world, {
        equalization: random.weighted({ automatic: 8, 'by-hand': 2 }),
        equalizationReach: random.weighted({ 'center-only': 5, 'mains-only': 2, 'all-alike': 3 }),
        toneAcrossPan: random.pick(['duller', 'brighter', 'thinner']),
        troubleSeats: 'everywhere',
      });
      if (random.chance(0.4)) world.calibrationSpot = 'elsewhere';
      changed(world, random, 'calibration', 0.6);
      return true;
    },
    heard: (world) => ({
      'voice-changes-tone': 0.85,
      dull: world.toneAcrossPan === 'duller' ? 0.35 : 0,
      harsh: world.toneAcrossPan === 'brighter' ? 0.4 : 0,
    }),
    tests: (world) => ({
      testEqBypass: 'better',
      testSwapAtAmplifier: 'moves-left',
      testNoiseEach: noiseWord(world),
    }),
  },
  'screen-loss': {
    common: 2,
    inflict: (world, random) => {
      Object.assign(world, {
        centerPlacement: 'behind-screen',
        screenKind: 'perforated',
        screenCovers: 'center-only',
        screenHoleDiameter: random.between(0.0008, 0.0013),
        screenHolesPerArea: random.between(38_000, 62_000),
        screenThickness: 0.0003,
        screenCompensation: 0,
        displayDiagonal: 2.54,
        toneAcrossPan: 'duller',
        troubleSeats: 'everywhere',
      });
      delete world.screenFlowResistance;
      changed(world, random, 'screen', 0.5);
      return true;
    },
    heard: (world) => {
      const [at8k = 0] = screen({
        kind: 'perforated',
        holeDiameterM: numberOf(world, 'screenHoleDiameter'),
        thicknessM: 0.0003,
        holesPerM2: numberOf(world, 'screenHolesPerArea'),
        frequenciesHz: [8000],
      }).lossDb;
      const p = noticed(at8k / CLEAR.trebleDb);
      return { dull: 0.85 * p, 'voice-changes-tone': 0.6 * p };
    },
    tests: { testNoiseEach: 'duller', testSwapAtAmplifier: 'stays', testMainInPlace: 'wrong' },
  },
  polarity: {
    common: 4,
    inflict: (world, random) => {
      const main = random.chance(0.3);
      if (main) world.upmixUse = 'off';
      else playMusic(world, random, random.pick(['shares', 'leaves']));
      if (!main) setHealthySpread(world, random);
      Object.assign(world, {
        polarityMarks: main ? 'main-crossed' : 'center-crossed',
        polarityMessage: random.chance(0.6) ? (main ? 'main' : 'center') : 'none',
        voiceDirection: random.weighted({ nowhere: 8, picture: 2 }),
        troubleSeats: 'everywhere',
      });
      if (main) Object.assign(world, { playedContent: 'two-channel-music', sourceFormat: 'two-channel' });
      changed(world, random, 'wiring', 0.6);
      return true;
    },
    heard: () => ({ 'no-middle': 0.7, hollow: 0.55, 'voice-changes-tone': 0.15 }),
    tests: (world) =>
      world.polarityMarks === 'main-crossed'
        ? { testPhantom: 'worse', testNoiseEach: 'alike', testUpmixOff: 'same' }
        : { testPolarity: 'fuller-swapped', testUpmixOff: 'gone', testPhantom: 'gone' },
  },
  'bass-management': {
    common: 4,
    inflict: (world, random) => {
      world.subwoofer = 'one';
      const kind = random.weighted({ hole: 6, corner: 2, large: 2 });
      if (kind === 'hole')
        Object.assign(world, {
          centerBassCrossover: random.pick([60, 80]),
          centerLowLimit: random.between(80, 105),
          centerEnclosure: 'vented',
          highPassSlope: '24',
          subTiming: 'untouched',
          subPolarity: 'fuller-other-way',
          subDelay: random.between(0, 3),
          toneAcrossPan: 'thinner',
        });
      else if (kind === 'corner')
        Object.assign(world, {
          centerBassCrossover: random.pick([180, 200]),
          mainsBassCrossover: 80,
          voiceDirection: 'subwoofer',
        });
      else
        Object.assign(world, {
          centerBassSize: 'large',
          centerLowLimit: random.between(90, 120),
          toneAcrossPan: 'boxier',
        });
      world.troubleSeats = 'everywhere';
      return true;
    },
    heard: (world) => {
      if (world.voiceDirection === 'subwoofer') return { 'voice-pulled-aside': 0.6, boomy: 0.6 };
      if (world.centerBassSize === 'large')
        return { boomy: 0.5, 'distorts-when-loud': 0.5, 'voice-changes-tone': 0.4 };
      const { dipDb } = bassSum({
        crossoverHz: numberOf(world, 'centerBassCrossover'),
        enclosure: 'vented',
        lowLimitHz: numberOf(world, 'centerLowLimit'),
        subDelayMs: numberOf(world, 'subDelay'),
      });
      const p = noticed(-(dipDb ?? -30) / CLEAR.dipDb);
      return { 'voice-changes-tone': 0.7 * p, hollow: 0.3 * p, boomy: 0.15 };
    },
    tests: (world) => ({
      testNoiseEach: world.toneAcrossPan === 'thinner' ? 'thin' : 'boxy',
      testSwapAtAmplifier: 'moves-left',
    }),
  },
  'driver-fault': {
    common: 4,
    inflict: (world, random) => {
      const kind = random.weighted({ 'tweeter-silent': 4, 'cone-silent': 2, rattles: 3, crackles: 2 });
      Object.assign(world, {
        driversHeard: kind,
        jumpers:
          kind === 'crackles'
            ? 'loose'
            : kind === 'tweeter-silent' && random.chance(0.25)
              ? 'loose'
              : 'tight',
        troubleSeats: 'everywhere',
        onset: random.weighted({ sudden: 7, gradual: 2, 'with-change': 1 }),
        lastChange: random.weighted({ nothing: 8, wiring: 2 }),
      });
      if (world.onset === 'with-change') world.lastChange = 'wiring';
      world.toneAcrossPan =
        kind === 'tweeter-silent' ? 'duller' : kind === 'cone-silent' ? 'thinner' : 'no-change';
      return true;
    },
    heard: (world) => {
      if (world.driversHeard === 'tweeter-silent')
        return { dull: 0.85, 'voice-changes-tone': 0.5, 'voice-unclear-everywhere': 0.3 };
      if (world.driversHeard === 'cone-silent') return { 'voice-changes-tone': 0.7, 'voice-too-quiet': 0.4 };
      if (world.driversHeard === 'rattles') return { rattles: 0.95 };
      return { rattles: 0.6, 'voice-missing': 0.3, dull: 0.3 };
    },
    tests: (world) => ({
      testEarToDrivers:
        world.driversHeard === 'rattles' || world.driversHeard === 'crackles' ? 'rattles' : 'silent',
      testSwapAtAmplifier: 'stays',
      testSwapAtLoudspeakers: 'follows-box',
      testMainInPlace: 'right',
      testNoiseEach: noiseWord(world),
    }),
  },
  routing: {
    common: 8,
    inflict: (world, random) => {
      const kind = random.weighted({ none: 3, swapped: 2, folded: 4, silent: 1 });
      world.troubleSeats = 'everywhere';
      if (kind === 'none') Object.assign(world, { centerMode: 'none', channelCheck: 'silent' });
      else if (kind === 'swapped') Object.assign(world, { channelCheck: 'swapped', voiceDirection: 'aside' });
      else if (kind === 'folded') {
        Object.assign(world, {
          playedContent: random.pick(['multichannel-film', 'television']),
          sourceFormat: 'two-channel',
          upmixUse: 'off',
          troubleTitles: 'one-source',
          voiceDirection: 'nowhere',
        });
      } else world.channelCheck = 'several-at-once';
      changed(world, random, kind === 'folded' ? 'source' : kind === 'swapped' ? 'wiring' : 'settings', 0.7);
      return true;
    },
    heard: (world) => {
      if (world.centerMode === 'none')
        return { 'voice-missing': 0.5, 'no-middle': 0.3, 'voice-too-quiet': 0.3 };
      if (world.channelCheck === 'swapped') return { 'voice-pulled-aside': 0.9 };
      if (world.troubleTitles === 'one-source')
        return { 'voice-too-quiet': 0.6, 'voice-missing': 0.3, 'no-middle': 0.3 };
      return { 'no-middle': 0.4, 'voice-pulled-aside': 0.3, 'voice-changes-tone': 0.3 };
    },
    tests: (world) => ({
      testOtherSource: world.troubleTitles === 'one-source' ? 'gone' : 'same',
      testSwapAtAmplifier: 'moves-left',
      testPhantom: 'same',
    }),
  },
  programme: {
    common: 9,
    inflict: (world, random) => {
      Object.assign(world, {
        playedContent: random.weighted({ 'multichannel-film': 6, everything: 2, television: 2 }),
        troubleTitles: 'some',
        speechOrder: 'news-clear-film-buried',
        dynamicCompression: random.weighted({ off: 9, on: 1 }),
        troubleSeats: 'everywhere',
        onset: 'always',
      });
      world.sourceFormat = 'multichannel';
      return true;
    },
    heard: () => ({ 'voice-unclear-everywhere': 0.65, 'voice-too-quiet': 0.6 }),
    tests: { testNearCenter: 'still-bad', testPhantom: 'same', testSwapAtAmplifier: 'moves-left' },
  },
  'twin-centers': {
    common: 2,
    inflict: (world, random) => {
      world.centerCount = 'two';
      world.troubleSeats = random.pick(['everywhere', 'off-middle']);
      changed(world, random, 'loudspeaker', 0.6);
      return true;
    },
    heard: () => ({
      'swishes-with-head-movement': 0.4,
      hollow: 0.5,
      'voice-unclear-off-side': 0.4,
      'voice-unclear-everywhere': 0.2,
    }),
    tests: { testNearCenter: 'good-near', testMainInPlace: 'right' },
  },
  'mains-layout': {
    common: 4,
    inflict: (world, random) => {
      const wide = random.chance(0.5);
      Object.assign(world, {
        playedContent: 'two-channel-music',
        sourceFormat: 'two-channel',
        upmixUse: 'off',
        onset: 'always',
      });
      if (wide) {
        world.mainsBase = numberOf(world, 'seatDistance') * random.between(1.6, 2.1);
        Object.assign(world, { voiceDirection: 'nowhere', troubleSeats: 'everywhere' });
      } else {
        world.mainSeatOffset = random.pick([-1, 1]) * random.between(0.7, 1.3);
        Object.assign(world, {
          voiceDirection: 'aside',
          troubleSeats: 'one-seat',
          seating: 'single-seat',
          seatCount: 1,
        });
        delete world.seatSpacing;
      }
      setEntries(world);
      return true;
    },
    heard: (world) =>
      world.voiceDirection === 'nowhere'
        ? { 'no-middle': 0.85 }
        : { 'voice-pulled-aside': 0.9, 'no-middle': 0.2 },
    tests: (world) => ({
      testPhantom: 'same',
      testUpmixOff: 'same',
      testSitMiddle: world.voiceDirection === 'aside' ? 'clear-in-middle' : 'same-everywhere',
      ...(world.voiceDirection === 'aside' ? { testSwapSeats: 'stays-with-seat' } : {}),
    }),
  },
  'room-acoustics': {
    common: 6,
    inflict: (world, random) => {
      const noise = random.chance(0.35);
      if (noise)
        Object.assign(world, { backgroundNoise: 'loud', listeningLevel: random.pick(['soft', 'normal']) });
      else
        Object.assign(world, {
          clapRing: 'long',
          reverberationTime: random.between(750, 1300),
          floorCover: 'rug',
        });
      Object.assign(world, { troubleSeats: 'everywhere', speechOrder: 'both-unclear' });
      return true;
    },
    heard: (world) => ({
      'voice-unclear-everywhere': 0.85,
      echo: world.clapRing === 'long' ? 0.3 : 0,
      'voice-too-quiet': world.backgroundNoise === 'loud' ? 0.4 : 0.1,
    }),
    tests: { testNearCenter: 'good-near', testMainInPlace: 'wrong', testPhantom: 'same' },
  },
  'double-playback': {
    common: 3,
    inflict: (world, random) => {
      Object.assign(world, {
        displaySpeakers: 'playing',
        troubleSeats: 'everywhere',
        playedContent: random.pick(['television', 'everything', 'multichannel-film']),
      });
      changed(world, random, 'screen', 0.4);
      return true;
    },
    heard: () => ({ echo: 0.8, 'voice-unclear-everywhere': 0.3, hollow: 0.15 }),
    tests: { testMuteDisplay: 'gone', testPhantom: 'same', testNearCenter: 'better' },
  },
  'surround-spill': {
    common: 3,
    inflict: (world, random) => {
      Object.assign(world, {
        channelCheck: random.weighted({ 'center-elsewhere-too': 7, right: 3 }),
        voiceDirection: 'behind',
        upmixUse: random.weighted({ on: 8, off: 2 }),
        troubleSeats: 'everywhere',
      });
      changed(world, random, 'settings', 0.6);
      return true;
    },
    heard: () => ({ 'voice-from-behind': 0.92, echo: 0.15 }),
    tests: (world) => ({ testUpmixOff: world.upmixUse === 'on' ? 'gone' : 'same', testPhantom: 'same' }),
  },
  overload: {
    common: 4,
    inflict: (world, random) => {
      Object.assign(world, {
        troubleWhenLoud: 'yes',
        listeningLevel: 'loud',
        centerSizeAgainstMains: 'smaller',
        troubleSeats: 'everywhere',
      });
      if (random.chance(0.4)) world.centerTrim = random.between(5, 10);
      return true;
    },
    heard: () => ({ 'distorts-when-loud': 0.85, harsh: 0.45, rattles: 0.1 }),
    tests: { testSwapAtLoudspeakers: 'follows-box', testMainInPlace: 'right' },
  },
  listener: {
    common: 3,
    inflict: (world, random) => {
      Object.assign(world, {
        whoHears: 'one-person',
        troubleSeats: 'everywhere',
        onset: random.weighted({ gradual: 6, always: 4 }),
        lastChange: 'nothing',
      });
      if (world.seating === 'single-seat')
        Object.assign(world, { seating: 'one-row', seatCount: 3, seatSpacing: 0.6 });
      return true;
    },
    heard: () => ({ 'voice-unclear-everywhere': 0.85, 'voice-too-quiet': 0.3, dull: 0.15 }),
    tests: { testSwapSeats: 'goes-with-person', testPhantom: 'same', testNearCenter: 'better' },
  },
  preference: {
    common: 4,
    inflict: (world, random) => {
      Object.assign(world, {
        likesTwoChannel: random.weighted({ 'like-two': 8, both: 2 }),
        playedContent: 'two-channel-music',
        sourceFormat: 'two-channel',
        onset: 'always',
        troubleSeats: 'everywhere',
      });
      setHealthyUpmix(world, random);
      return true;
    },
    heard: () => ({ 'just-prefer-two-channels': 0.85, 'image-collapses-to-center': 0.15 }),
  },
} as const satisfies Record<string, Trouble>;

export type TroubleId = keyof typeof TROUBLES;
export const TROUBLE_IDS = Object.keys(TROUBLES) as TroubleId[];

/** Speech lost behind what stands in the way, dB, at the seat that suffers most. */
function blockLoss(world: World): number {
  const rear = Math.max(...seatsIn(world).map((seat) => seat.yM));
  const ear =
    world.obstacle === 'seat-row'
      ? numberOf(world, 'earHeight') + numberOf(world, 'rowRiser')
      : numberOf(world, 'earHeight');
  return barrierLossAtSeat({
    sourceHeightM: numberOf(world, 'centerTweeterHeight'),
    earHeightM: ear,
    earDistanceM: rear,
    headDistanceM: Math.min(rear - 0.1, numberOf(world, 'obstacleDistance')),
    headTopM: numberOf(world, 'obstacleHeight'),
  }).speechLossDb;
}

function setHealthySpread(world: World, random: Random): void {
  world.upmixCenterControl = random.weighted({ present: 6, none: 4 });
  for (const id of ['centerSpread', 'centerSpreadAmount'] as const) delete world[id];
  if (world.upmixCenterControl === 'present')
    Object.assign(world, { centerSpread: 'on', centerSpreadAmount: random.between(0.4, 0.8) });
  world.upmixAmbience = 'no';
  delete world.ambienceSize;
}

/** Only the taped distances follow the geometry; the entries stay as nobody set them. */
function setTaped(world: World, entered: World): void {
  setEntries(world);
  for (const id of ['enteredLeft', 'enteredCenter', 'enteredRight'] as const) {
    const value = entered[id];
    if (value !== undefined) world[id] = value;
  }
}

function noiseWord(world: World): string {
  const words: Record<string, string> = {
    duller: 'duller',
    brighter: 'brighter',
    thinner: 'thin',
    boxier: 'boxy',
  };
  return words[String(world.toneAcrossPan)] ?? 'alike';
}
