/** What the numbers to type depend on, read from a book with the same models that the rules are judged by. */
import { C_AIR } from '../acoustics/air.js';
import { distanceM, type Point, type Triple } from '../acoustics/arrival.js';
import type { Driver } from '../acoustics/layouts.js';
import { METERS_PER_FOOT } from '../acoustics/practice.js';
import { createCore } from '../compute/core.js';
import { type Reader, seatsIn } from '../compute/reader.js';
import { type FactBook, type Seat, told } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { UserError } from '../lib/user-error.js';
import { distancesAtMainSeat, latenciesMs, shownLatenciesMs } from '../rules/derived/arrivals.js';
import { drivers } from '../rules/derived/drivers.js';
import { type Entries, entries } from '../rules/derived/entries.js';
import { headAt, mainHead, pointOf, points } from '../rules/derived/places.js';
import { voiceBy, voiceGains } from '../rules/derived/sharing.js';

export type EntryUnit = 'ft' | 'm' | 'ms';

export interface SettingSeat {
  readonly seat: Seat;
  readonly at: Point;
}

export interface System {
  readonly points: Triple<Point>;
  readonly seats: readonly SettingSeat[];
  readonly main: SettingSeat;
  /** What comes on top of the way through the air, ms; measured where a recording told it. */
  readonly latencyMs: Triple<number>;
  /** The latency of the center follows from a recording. */
  readonly latencyMeasured: boolean;
  /** Undefined where nobody told what is set now. */
  readonly now: Entries | undefined;
  readonly unit: EntryUnit;
  /** One step of the menu, in its unit. */
  readonly step: number;
  readonly processorSpeed: number;
  /** Center against mains at the main seat as it is, dB; undefined where it was not measured. */
  readonly levelDb: number | undefined;
  readonly trimDb: number | undefined;
  /** Amplitudes of the voice as it is set. */
  readonly gains: { readonly side: number; readonly center: number };
  /** Part of the middle that the upmix leaves in the mains; undefined where there is nothing to set. */
  readonly spread: { readonly now: number | undefined } | undefined;
  readonly drivers: readonly Driver[] | undefined;
  readonly tiltDeg: number | undefined;
  readonly centerDepthM: number | undefined;
  readonly lowLimitHz: number | undefined;
  readonly crossoverHz: number | undefined;
  /** Facts taken as usual. */
  readonly assumed: readonly FactId[];
}

/** Distances away from the true ones that a menu is searched through, m: rooms and latencies of common size. */
const DEFAULT_STEP_M = 0.03;
const STEP_MS = 0.1;
/** Steps of menus in feet, ft. */
const FOOT_STEPS = [0.1, 0.5, 1];

/** Throws a UserError that names what has to be told first. */
export function systemOf(book: FactBook, processorSpeed = C_AIR): System {
  const core = createCore(book);
  const assumed = new Set<FactId>();
  const ask = <T>(model: (r: Reader<FactId>) => T): T | undefined => {
    const outcome = core.evaluate(model);
    for (const [id, { doubt }] of outcome.uses) if ('spread' in doubt) assumed.add(id);
    return outcome.value as T | undefined;
  };
  const missing = core.evaluate((r: Reader<FactId>) => [r.from(points), r.from(mainHead)]);
  const places = ask((r) => r.from(points));
  const mainAt = ask((r) => pointOf(r.from(mainHead)));
  if (places === undefined || mainAt === undefined) throw tellFirst(book, [...missing.uses.keys()]);
  const lacking = (['mainsBase', 'seatDistance'] as const).filter((id) => assumed.has(id));
  if (lacking.length > 0 && apartTold(book) < ENOUGH_TAPED) throw tellFirst(book, lacking);
  const seats = ask((r) => seatsIn(r).map((seat): SettingSeat => ({ seat, at: pointOf(headAt(r, seat)) })));
  const main = seats?.find(({ seat }) => seat.main);
  if (seats === undefined || main === undefined) throw tellFirst(book, []);
  const number = (id: FactId): number | undefined => ask((r) => r.toldNumber(id as 'centerTilt'));
  const now = ask((r) => r.from(entries));
  const ownMs = ask((r) =>
    now === undefined ? r.from(latenciesMs) : shownLatenciesMs(r, now, processorSpeed),
  ) ?? { left: 0, center: 0, right: 0 };
  const apart = ask((r) => r.from(distancesAtMainSeat));
  // A tape at the main seat is nearer the truth than the geometry; what it differs by counts at every seat.
  const tapedMs = (side: keyof Triple<number>): number =>
    apart === undefined
      ? 0
      : ((distanceM(apart[side], apart.seat) - distanceM(places[side], mainAt)) / C_AIR) * 1000;
  return {
    points: places,
    seats,
    main,
    latencyMs: {
      left: ownMs.left + tapedMs('left'),
      center: ownMs.center + tapedMs('center'),
      right: ownMs.right + tapedMs('right'),
    },
    latencyMeasured: number('arrivalMeasuredMs') !== undefined && now !== undefined,
    now,
    ...menuOf(book, ask),
    processorSpeed,
    levelDb: number('centerAgainstMainsDb') ?? levelByMeter(number),
    trimDb: number('centerTrim'),
    gains: ask((r) => r.from(voiceGains)) ?? { side: 0, center: 1 },
    spread: ask(spreadOf),
    drivers: ask((r) => r.from(drivers)),
    tiltDeg: number('centerTilt'),
    centerDepthM: number('centerDepth'),
    lowLimitHz: number('centerLowLimit'),
    crossoverHz: number('centerBassCrossover'),
    assumed: [...assumed],
  };
}

/** Taped center and main stand for the geometry at the main seat. */
const ENOUGH_TAPED = 2;
const apartTold = (book: FactBook): number =>
  (['tapedCenter', 'tapedMains', 'tapedLeft', 'tapedRight'] as const).filter(
    (id) => told(book, id) !== undefined,
  ).length;

function tellFirst(book: FactBook, needed: readonly FactId[]): UserError {
  const open = needed.filter((id) => !book.answers.has(id)).slice(0, 5);
  const names = open.length === 0 ? ['mainsBase', 'seatDistance'] : open;
  return new UserError({
    what: `the numbers need distances that were not told: ${names.map((id) => `${factSpec(id as FactId).label} (${id})`).join(', ')}`,
    accepted: 'a case that tells where loudspeakers and seats are',
    example: "center-audit set case.json mainsBase='2.4 m' seatDistance='3 m'",
  });
}

function levelByMeter(number: (id: FactId) => number | undefined): number | undefined {
  const [center, left, right] = (
    ['measuredCenterLevel', 'measuredLeftLevel', 'measuredRightLevel'] as const
  ).map(number);
  if (center === undefined || (left === undefined && right === undefined)) return undefined;
  return center - ((left ?? right ?? 0) + (right ?? left ?? 0)) / 2;
}

function menuOf(
  { units }: FactBook,
  ask: <T>(model: (r: Reader<FactId>) => T) => T | undefined,
): { unit: EntryUnit; step: number } {
  if (ask((r) => r.toldChoice('entryKind')) === 'delays') return { unit: 'ms', step: STEP_MS };
  const stepM = ask((r) => r.toldNumber('entryStep')) ?? DEFAULT_STEP_M;
  if (units === 'metric') return { unit: 'm', step: Math.max(0.01, Math.round(stepM * 100) / 100) };
  const feet = stepM / METERS_PER_FOOT;
  const step = FOOT_STEPS.reduce((near, each) =>
    Math.abs(each - feet) < Math.abs(near - feet) ? each : near,
  );
  return { unit: 'ft', step };
}

/** There is something to set where an upmix plays and its center can be adjusted. */
function spreadOf(r: Reader<FactId>): System['spread'] {
  const by = r.from(voiceBy);
  if (by === 'center' || by === 'mains') return undefined;
  const state = r.toldChoice('centerSpread');
  if (state === undefined && r.toldChoice('upmixCenterControl') !== 'present') return undefined;
  const now = state === undefined ? undefined : state === 'on' ? r.number('centerSpreadAmount') : 0;
  return { now };
}

/** What the menu shows for a distance or delay, in meters or milliseconds of the processor. */
export function metersOf(value: number, unit: EntryUnit): number {
  return unit === 'ft' ? value * METERS_PER_FOOT : value;
}
