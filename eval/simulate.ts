/**
 * Simulated owners: a system drawn with real geometry, one or two things wrong with it, the complaints that
 * follow from the physics with noise, and what the owner would answer to every question and home test, with
 * the errors and gaps people have. Imports nothing of the rules or the reasoning, so that scores are not circular.
 */
import { type Answer, EMPTY_BOOK, type FactBook } from '../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec, TEST_IDS } from '../src/facts/catalog.js';
import { COMPLAINT_IDS, type ComplaintId } from '../src/facts/complaints.js';
import type { How } from '../src/facts/spec.js';
import { type Random, randomFrom } from './random.js';
import { troublesFromCases } from './simulate/from-cases.js';
import { type Heard, TROUBLES, type Trouble } from './simulate/troubles.js';
import { healthyWorld, type World } from './simulate/world.js';

export interface Owner {
  readonly truths: readonly TroubleId[];
  readonly complaints: readonly ComplaintId[];
  /** What he would say to every question; a fact that is not here is not applicable to his system. */
  readonly sheet: ReadonlyMap<FactId, Answer>;
}

/** Part of the owners with a second thing wrong (judgement). */
const SECOND_CAUSE = 0.15;
/** Chance that he tells a complaint that has nothing to do with it (judgement). */
const STRAY_COMPLAINT = 0.05;
/** Chance of a wrong choice, and spread of a number as a share of it, by how it was obtained (design of the answers). */
const WRONG: Readonly<Record<How, number>> = {
  measured: 0.02,
  read: 0.04,
  seen: 0.04,
  recalled: 0.08,
  guessed: 0.2,
};
const SPREAD: Readonly<Record<How, number>> = {
  measured: 0.02,
  read: 0.01,
  seen: 0.01,
  recalled: 0.1,
  guessed: 0.25,
};
/** Kept absolute, as a meter or a menu gives them: spread in the unit of the fact. */
const ABSOLUTE: Partial<Record<FactId, number>> = {
  measuredCenterLevel: 0.7,
  measuredLeftLevel: 0.7,
  measuredRightLevel: 0.7,
  centerTilt: 1.5,
  mainSeatOffset: 0.05,
  centerSideOffset: 0.04,
  centerBehindMains: 0.05,
  tapedCenter: 0.02,
  tapedMains: 0.02,
  enteredLeft: 0,
  enteredCenter: 0,
  enteredRight: 0,
  seatCount: 0,
  subDelay: 0.5,
};
/** Facts that only a data sheet or a measurement tells: most owners do not know them (judgement). */
const HARD_TO_KNOW: Partial<Record<FactId, number>> = {
  centerCrossover: 0.45,
  centerLowCrossover: 0.5,
  centerMidSize: 0.2,
  highPassSlope: 0.85,
  centerLowLimitDrop: 0.6,
  reverberationTime: 0.9,
  subDelay: 0.9,
  screenHoleDiameter: 0.5,
  screenHolesPerArea: 0.6,
  screenThickness: 0.7,
  screenFlowResistance: 0.8,
  measuredCenterLevel: 0.4,
  measuredLeftLevel: 0.4,
  measuredRightLevel: 0.4,
  centerLatency: 0.4,
};

/** One owner; the same seed gives the same owner. */
export function simulateOwner(seed: number): Owner {
  const random = randomFrom(seed * 7919 + 17);
  for (;;) {
    const world = healthyWorld(random);
    world.troubleSeats = 'everywhere';
    const truths = drawTruths(random);
    // The leading trouble is brought about last, so that its story is the one that is told.
    if (![...truths].reverse().every((id) => trouble(id).inflict(world, random))) continue;
    const complaints = hear(truths, world, random);
    if (complaints.length === 0) continue;
    setRemarks(world, truths, complaints);
    const outcomes = testOutcomes(truths, world);
    return { truths, complaints, sheet: answerSheet({ ...world, ...outcomes }, random) };
  }
}

/** Owners looked through for the facts that the simulator knows of. */
const LOOKED_THROUGH = 300;
let simulated: ReadonlySet<FactId> | undefined;

/** The facts that some simulated owner has, known or not: newer ones of the catalog have no model yet. */
export function simulatedFacts(): ReadonlySet<FactId> {
  simulated ??= new Set(
    Array.from({ length: LOOKED_THROUGH }, (_, seed) => [...simulateOwner(seed + 1).sheet.keys()]).flat(),
  );
  return simulated;
}

/** A book with only the complaints: where a call begins. */
export const callOf = (owner: Owner): FactBook => ({ ...EMPTY_BOOK, complaints: owner.complaints });

/** What the owner says when asked. */
export const answerOf = (owner: Owner, id: FactId): Answer => owner.sheet.get(id) ?? { how: 'unknown' };

const ALL: Readonly<Record<string, Trouble>> = { ...TROUBLES, ...troublesFromCases(Object.keys(TROUBLES)) };
/** By the id of the cause that it is. */
const trouble = (id: TroubleId): Trouble => ALL[id] as Trouble;
type TroubleId = string;

function drawTruths(random: Random): TroubleId[] {
  const common = Object.fromEntries(Object.entries(ALL).map(([id, { common }]) => [id, common]));
  const first = random.weighted(common);
  const alone = ['preference', 'listener', 'routing', 'programme'];
  if (alone.includes(first) || !random.chance(SECOND_CAUSE)) return [first];
  const second = random.weighted(common);
  const oneOfAKind = new Set([
    'spread-off',
    'fixed-extraction',
    'ambience-setting',
    'delay',
    'polarity',
    'mains-layout',
  ]);
  const clash =
    second === first ||
    alone.includes(second) ||
    (oneOfAKind.has(first) && oneOfAKind.has(second)) ||
    (PLACES.has(first) && PLACES.has(second)) ||
    (LAYOUTS.has(first) && LAYOUTS.has(second));
  return clash ? [first] : [first, second];
}
/** Troubles that decide where the center stands or which drivers it has: one of each kind at a time. */
const PLACES = new Set<TroubleId>([
  'height',
  'cabinet-bay',
  'set-back',
  'near-surface',
  'blocked-path',
  'screen-loss',
  'aim',
  'driver-layout',
]);
const LAYOUTS = new Set<TroubleId>(['driver-layout', 'outer-tweeters', 'aim', 'twin-centers']);

function hear(truths: readonly TroubleId[], world: World, random: Random): ComplaintId[] {
  const chances: Heard = {};
  for (const id of truths) {
    for (const [complaint, p] of Object.entries(trouble(id).heard(world)) as [ComplaintId, number][]) {
      chances[complaint] = 1 - (1 - (chances[complaint] ?? 0)) * (1 - p);
    }
  }
  const heard = COMPLAINT_IDS.filter((id) => random.chance(chances[id] ?? 0));
  const stray = random.pick(COMPLAINT_IDS);
  return random.chance(STRAY_COMPLAINT) && heard.length > 0 && !heard.includes(stray)
    ? [...heard, stray]
    : heard;
}

/** What follows from hearing rather than from the system. */
function setRemarks(world: World, truths: readonly TroubleId[], complaints: readonly ComplaintId[]): void {
  const unclear = complaints.some(
    (id) => id.startsWith('voice-unclear') || id === 'dull' || id === 'voice-too-quiet',
  );
  if (!truths.includes('programme')) world.speechOrder = unclear ? 'both-unclear' : 'both-clear';
}

const NOTHING_CHANGES: Partial<Record<FactId, string>> = {
  testSitMiddle: 'same-everywhere',
  testNearCenter: 'still-bad',
  testPhantom: 'gone',
  testUpmixOff: 'same',
  testSpreadOn: 'same',
  testEqBypass: 'same',
  testTape: 'agrees',
  testSwapAtAmplifier: 'stays',
  testSwapAtLoudspeakers: 'stays-with-cable',
  testMainInPlace: 'wrong',
  testNoiseEach: 'alike',
  testPolarity: 'fuller-as-wired',
  testEarToDrivers: 'all',
  testTilt: 'same',
  testLift: 'same',
  testPullForward: 'same',
  testCoverShelf: 'same',
  testCoverTweeter: 'same',
  testMuteDisplay: 'same',
  testOtherSource: 'same',
};

function testOutcomes(truths: readonly TroubleId[], world: World): World {
  const outcomes: Partial<Record<FactId, string>> = { ...NOTHING_CHANGES };
  const content =
    world.upmixUse === 'off' || world.sourceFormat === 'multichannel' ? 'voice-gone' : undefined;
  outcomes.testUnplugged =
    content ??
    (world.upmixCommonPart === 'leaves'
      ? 'voice-full'
      : world.upmixCommonPart === 'shares'
        ? 'voice-weaker'
        : 'voice-gone');
  for (const id of [...truths].reverse()) {
    const { tests } = trouble(id);
    Object.assign(outcomes, typeof tests === 'function' ? tests(world) : tests);
  }
  return outcomes;
}

function answerSheet(world: World, random: Random): Map<FactId, Answer> {
  const sheet = new Map<FactId, Answer>();
  for (const id of FACT_IDS) {
    const value = world[id];
    if (value === undefined) continue;
    sheet.set(id, random.chance(unknownChance(id)) ? { how: 'unknown' } : said(id, value, random));
  }
  return sheet;
}

/** Chance that the owner cannot tell, by the work it takes (judgement). */
function unknownChance(id: FactId): number {
  const known = HARD_TO_KNOW[id];
  if (known !== undefined) return known;
  const { minutes, usually } = factSpec(id);
  const test = (TEST_IDS as readonly FactId[]).includes(id);
  return Math.min(0.5, (test ? 0.08 : usually === 'recalled' ? 0.08 : 0.05) + 0.02 * minutes);
}

function said(id: FactId, value: number | string, random: Random): Answer {
  const spec = factSpec(id);
  const how = howOf(spec.usually, random);
  if (spec.kind === 'choice') {
    const others = Object.keys(spec.choices).filter((choice) => choice !== value);
    return { how, value: random.chance(WRONG[how]) ? random.pick(others) : value };
  }
  if (spec.kind !== 'number' || typeof value !== 'number') return { how, value };
  const spread = ABSOLUTE[id] ?? SPREAD[how] * Math.abs(value);
  const [low, high] = spec.possible;
  const told = Math.min(high, Math.max(low, value + spread * random.normal()));
  return { how, value: spec.whole ? Math.round(told) : Number(told.toPrecision(4)) };
}

/** What is usual for the fact; now and then only recalled or guessed. */
function howOf(usually: How, random: Random): How {
  const lapse = random.next();
  if (lapse < 0.05) return 'guessed';
  return lapse < 0.15 && usually !== 'guessed' ? 'recalled' : usually;
}
