/**
 * A sound system as it really is: the true value of every fact, drawn from distributions of the trade (judgement
 * of the author of the simulator; no source). Nothing here knows about rules or weights.
 */
import { offAxis } from '../../src/acoustics/offaxis.js';
import { EMPTY_BOOK, type FactBook, type Seat } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { seatsOf } from '../../src/facts/seats.js';
import type { Random } from '../random.js';

export type World = Partial<Record<FactId, number | string>>;

export const numberOf = (world: World, id: FactId, otherwise = 0): number => {
  const value = world[id];
  return typeof value === 'number' ? value : otherwise;
};

/** The world as a book of facts measured without error. */
export function truthBook(world: World): FactBook {
  const answers = new Map(
    (Object.entries(world) as [FactId, number | string][]).map(([id, value]) => [
      id,
      { value, how: 'measured' as const },
    ]),
  );
  return { ...EMPTY_BOOK, answers };
}

export const seatsIn = (world: World): readonly Seat[] => seatsOf(truthBook(world)).seats;

const DEGREES = 180 / Math.PI;

/** What the center's own drivers do at a seat, by the acoustic model. */
export function layoutAt(world: World, seat: Seat, tiltCounts = true) {
  const layout = String(world.centerLayout ?? 'coaxial');
  const azimuthDeg =
    Math.atan((seat.xM - numberOf(world, 'centerSideOffset')) / Math.max(0.5, seat.yM)) * DEGREES;
  const riseM =
    (seat.earHeightM ?? numberOf(world, 'earHeight', 1.05)) - numberOf(world, 'centerTweeterHeight', 0.9);
  const elevationDeg =
    Math.atan(riseM / Math.max(0.5, seat.yM)) * DEGREES - (tiltCounts ? numberOf(world, 'centerTilt') : 0);
  const upright = world.centerOrientation === 'upright';
  const spacingM = world.centerDriverSpacing;
  const tweeterSpacingM = world.centerTweeterSpacing;
  const crossoverHz = world.centerCrossover;
  const lowCrossoverHz = world.centerLowCrossover;
  return offAxis({
    layout: layout as Extract<Parameters<typeof offAxis>[0], { layout: unknown }>['layout'],
    azimuthDeg: upright ? elevationDeg : azimuthDeg,
    elevationDeg: upright ? azimuthDeg : elevationDeg,
    distanceM: Math.hypot(seat.xM, seat.yM),
    ...(typeof spacingM === 'number' ? { spacingM } : {}),
    ...(typeof tweeterSpacingM === 'number' ? { tweeterSpacingM } : {}),
    ...(typeof crossoverHz === 'number' ? { crossoverHz } : {}),
    ...(typeof lowCrossoverHz === 'number' ? { lowCrossoverHz } : {}),
  });
}

/** Height of the center against the picture and the mains as the ear sees them, degrees, the smaller of the two. */
export function heightErrorDeg(world: World): number {
  const distance = numberOf(world, 'seatDistance', 3);
  const angle = (id: FactId, otherwise: number): number =>
    Math.atan((numberOf(world, id, otherwise) - numberOf(world, 'earHeight', 1.05)) / distance) * DEGREES;
  const center = angle('centerTweeterHeight', 0.9);
  const picture = center - angle('displayMiddleHeight', 1.1);
  const mains = center - angle('mainsTweeterHeight', 1);
  return Math.abs(picture) < Math.abs(mains) ? picture : mains;
}

/** Sets the center's drivers with the dimensions that go with a layout. */
export function setLayout(world: World, layout: string, random: Random): void {
  for (const id of ['centerDriverSpacing', 'centerTweeterSpacing', 'centerLowCrossover'] as const)
    delete world[id];
  world.centerLayout = layout;
  world.centerCrossover = 100 * Math.round(random.between(18, 34));
  const spacing: Record<string, [number, number]> = {
    'mid-tweeter-mid': [0.2, 0.36],
    'nested-mid-tweeter-mid': [0.115, 0.19],
    'two-and-a-half-way': [0.18, 0.32],
    'woofer-mid-tweeter-woofer': [0.33, 0.52],
    'tweeter-mid-mid-tweeter': [0.15, 0.22],
    'paired-boxes': [0.26, 0.36],
    'horizontal-two-way': [0.13, 0.18],
    'vertical-two-way': [0.12, 0.18],
  };
  const range = spacing[layout];
  if (range) world.centerDriverSpacing = random.between(...range);
  if (layout === 'tweeter-mid-mid-tweeter') world.centerTweeterSpacing = random.between(0.34, 0.6);
  if (layout === 'tweeter-mid-tweeter') world.centerTweeterSpacing = random.between(0.22, 0.4);
  if (layout === 'paired-boxes') world.centerTweeterSpacing = random.between(0.5, 0.8);
  if (layout === 'woofer-mid-tweeter-woofer')
    world.centerLowCrossover = 50 * Math.round(random.between(6, 18));
  if (layout === 'two-and-a-half-way') world.centerLowCrossover = 50 * Math.round(random.between(8, 16));
  if (layout === 'two-and-a-half-way') world.fullRangeMidSide = random.pick(['left', 'right']);
  if (layout === 'full-range') world.centerCrossover = 8000;
}

/** Distances that a careful owner enters: the true ones, to the step of the menu. */
export function setEntries(world: World): void {
  const seat = seatsIn(world).find((each) => each.main) ?? seatsIn(world)[0];
  if (!seat) return;
  const ear = numberOf(world, 'earHeight', 1.05);
  const to = (xM: number, yM: number, zM: number): number => Math.hypot(seat.xM - xM, seat.yM - yM, ear - zM);
  const half = numberOf(world, 'mainsBase', 2.8) / 2;
  const mainsZ = numberOf(world, 'mainsTweeterHeight', 1);
  const center = to(
    numberOf(world, 'centerSideOffset'),
    -numberOf(world, 'centerBehindMains'),
    numberOf(world, 'centerTweeterHeight', 0.9),
  );
  world.tapedCenter = center;
  world.tapedMains = to(-half, 0, mainsZ);
  world.enteredLeft = step(to(-half, 0, mainsZ));
  world.enteredRight = step(to(half, 0, mainsZ));
  world.enteredCenter = step(center);
}

const step = (meters: number): number => 0.03 * Math.round(meters / 0.03);

/** Deepest dip that still counts as a healthy layout at every seat, dB (below the clear grade of 4). */
const HEALTHY_DIP_DB = 2.6;
/** Height error of a healthy system, degrees (clear grade 10). */
const HEALTHY_HEIGHT_DEG = 6;
const MOST_DRAWS = 400;

/** A system with nothing wrong in it. */
export function healthyWorld(random: Random): World {
  for (let n = 0; n < MOST_DRAWS; n += 1) {
    const world = anyWorld(random);
    const dip = Math.max(...seatsIn(world).map((seat) => -layoutAt(world, seat).dipDb));
    if (dip <= HEALTHY_DIP_DB && Math.abs(heightErrorDeg(world)) <= HEALTHY_HEIGHT_DEG) return world;
  }
  throw new Error('no healthy system was drawn');
}

function anyWorld(random: Random): World {
  const played = random.weighted({
    everything: 4,
    'multichannel-film': 2.5,
    television: 2,
    'two-channel-music': 1.5,
  });
  const seating = random.weighted({ 'one-row': 7.5, 'single-seat': 1.5, 'several-rows': 1 });
  const distance = random.between(2.1, 4.4);
  const world: World = {
    playedContent: played,
    troubleTitles: 'all',
    troubleWhenLoud: 'no',
    voiceDirection: 'picture',
    toneAcrossPan: 'no-change',
    centerCount: 'one',
    centerOrientation: 'level',
    centerMidSize: random.pick([0.1, 0.133, 0.165]),
    centerFamily: random.weighted({ 'identical-box': 1, 'same-series': 6, 'same-maker': 1 }),
    mainsKind: random.weighted({ tower: 5, compact: 4, 'in-wall': 1 }),
    centerSizeAgainstMains: random.weighted({ similar: 7, smaller: 3 }),
    centerPowered: random.weighted({ no: 9, 'powered-mains-too': 1 }),
    seating,
    seatDistance: distance,
    mainsBase: 2 * distance * Math.tan(random.between(22, 30) / DEGREES),
    earHeight: random.between(0.92, 1.12),
    mainsTweeterHeight: random.between(0.85, 1.08),
    displayMiddleHeight: random.between(0.95, 1.3),
    displayDiagonal: random.pick([1.4, 1.65, 1.9, 2.54]),
    ceilingHeight: random.between(2.3, 2.8),
    centerTweeterHeight: random.between(0.6, 1.05),
    centerSideOffset: 0,
    centerBehindMains: random.between(-0.05, 0.25),
    centerPlacement: random.weighted({ 'shelf-top': 5, stand: 4, wall: 1 }),
    centerWidth: random.between(0.42, 0.62),
    centerHeight: random.between(0.16, 0.22),
    centerDepth: random.between(0.24, 0.34),
    wallDistance: random.between(0.25, 0.7),
    floorCover: random.weighted({ rug: 4, carpet: 6 }),
    obstacle: 'none',
    alignmentBy: random.weighted({ automatic: 7, 'by-hand': 3 }),
    calibrationSpot: 'main-seat',
    entryKind: 'distances',
    entryStep: 0.03,
    centerTrim: Math.round(random.between(-8, 8)) / 2,
    measuredCenterLevel: 75 + 0.5 * random.normal(),
    measuredLeftLevel: 75 + 0.3 * random.normal(),
    measuredRightLevel: 75 + 0.3 * random.normal(),
    voiceLoudness: 'equal',
    equalization: random.weighted({ automatic: 6, none: 3, 'by-hand': 1 }),
    equalizationReach: 'all-alike',
    screenKind: 'none',
    centerMode: 'present',
    channelCheck: 'right',
    displaySpeakers: 'muted',
    lipSync: 'in-step',
    voiceBoost: random.weighted({ off: 8, on: 2 }),
    dynamicCompression: random.weighted({ off: 7, on: 3 }),
    sourceFormat:
      played === 'two-channel-music' || (played === 'television' && random.chance(0.6))
        ? 'two-channel'
        : 'multichannel',
    clapRing: random.weighted({ dry: 5, some: 5 }),
    reverberationTime: random.between(280, 480),
    backgroundNoise: random.weighted({ quiet: 7, some: 3 }),
    listeningLevel: random.weighted({ soft: 3, normal: 5, loud: 2 }),
    whoHears: random.weighted({ everyone: 7, 'only-me': 3 }),
    likesTwoChannel: 'something-wrong',
    onset: random.weighted({ always: 5, gradual: 1, 'with-change': 3 }),
    lastChange: random.weighted({ nothing: 5, settings: 1, furniture: 1, loudspeaker: 1, source: 1 }),
    triedTrim: random.weighted({ 'not-tried': 5, louder: 5 }),
    subwoofer: random.weighted({ one: 6, none: 2.5, several: 1.5 }),
    centerBassSize: 'small',
    centerLowLimit: random.between(50, 75),
    centerLowLimitDrop: random.pick([3, 6]),
    centerEnclosure: random.weighted({ vented: 6, sealed: 4 }),
    highPassSlope: '12',
    subTiming: random.weighted({ automatic: 7, 'by-ear': 3 }),
    subDelay: 0.5 * random.normal(),
    subPolarity: random.weighted({ 'fuller-as-set': 7, 'no-difference': 3 }),
    polarityMarks: 'all-match',
    polarityMessage: 'none',
    driversHeard: 'all',
    jumpers: 'tight',
  };
  if (world.onset === 'with-change' && world.lastChange === 'nothing') world.lastChange = 'settings';
  if (seating !== 'single-seat') {
    world.seatCount = random.pick([2, 3, 3, 3, 4]);
    world.seatSpacing = random.between(0.55, 0.78);
  } else world.seatCount = 1;
  const even = numberOf(world, 'seatCount') % 2 === 0;
  world.mainSeatOffset = (even ? numberOf(world, 'seatSpacing') / 2 : 0) + 0.03 * random.normal();
  if (seating === 'several-rows')
    Object.assign(world, { rowSpacing: random.between(1.3, 1.9), rowRiser: 0.35 });
  world.centerBassCrossover = 10 * Math.ceil(numberOf(world, 'centerLowLimit') * 0.14 + 1);
  world.mainsBassCrossover = random.pick([60, 80]);
  if (world.centerPlacement === 'shelf-top')
    Object.assign(world, {
      shelfSetback: random.between(0, 0.05),
      centerAboveShelf: random.between(0.08, 0.14),
    });
  const layouts = {
    'mid-tweeter-mid': 4,
    'nested-mid-tweeter-mid': 1,
    'two-and-a-half-way': 1,
    'woofer-mid-tweeter-woofer': 3,
    coaxial: 1.2,
    'vertical-two-way': 1.2,
    'horizontal-two-way': 0.4,
    'full-range': 0.3,
  };
  setLayout(world, random.weighted(layouts), random);
  const idealTilt =
    Math.atan((numberOf(world, 'earHeight') - numberOf(world, 'centerTweeterHeight')) / distance) * DEGREES;
  world.centerTilt = random.chance(0.5) ? Math.round(idealTilt) : 0;
  if (random.chance(0.07)) {
    Object.assign(world, {
      screenKind: 'woven',
      screenCovers: 'all-three',
      screenFlowResistance: random.between(12, 35),
    });
    Object.assign(world, { screenCompensation: 0, centerPlacement: 'behind-screen' });
  }
  setHealthyUpmix(world, random);
  setEntries(world);
  return world;
}

/** An upmix, where one is used, that shares the middle between center and mains. */
export function setHealthyUpmix(world: World, random: Random): void {
  world.upmixUse = random.weighted({ on: 4, off: 4, sometimes: 2 });
  world.upmixCommonPart = random.weighted({ shares: 8, leaves: 2 });
  world.upmixCenterControl = random.weighted({ present: 6, none: 4 });
  if (world.upmixCenterControl === 'present')
    Object.assign(world, { centerSpread: 'on', centerSpreadAmount: random.between(0.35, 0.8) });
  world.upmixAmbience = random.weighted({ no: 8.5, yes: 1.5 });
  if (world.upmixAmbience === 'yes') world.ambienceSize = random.pick(['medium', 'large']);
}
