/** The numbers to type: the best compromise over the seats, what each entry becomes, and what it does at every seat. */
import { distanceM, entryDelaysMs, type Triple } from '../acoustics/arrival.js';
import type { Filter } from '../acoustics/filter.js';
import { METERS_PER_FOOT } from '../acoustics/practice.js';
import type { Response } from '../acoustics/response.js';
import type { FactBook } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import { type Choice, type Harms, harmsAt, playedBy, type SeatModel, seatModels } from './cost.js';
import {
  type Correction,
  correctionFor,
  crossoverFor,
  invertedIn,
  type Subwoofer,
  subwooferFor,
} from './extras.js';
import { bestChoice, costOfChoice, type Grid } from './search.js';
import { type EntryUnit, type System, systemOf } from './system.js';

interface SheetSeat {
  readonly name: string;
  readonly weight: number;
  /** As it is set now; null where that was not told. */
  readonly before: Harms | null;
  readonly after: Harms;
  /** What this seat would have if all were set for it alone. */
  readonly alone: Harms;
}

export interface Sheet {
  readonly entries: Triple<number> & { readonly unit: EntryUnit; readonly step: number };
  readonly before: { readonly entries: Triple<number> | null };
  /** Trim of the center; relative to what is set now where that was not told. */
  readonly trimDb: { readonly center: number; readonly relative: boolean };
  readonly levelMeasured: boolean;
  readonly latencyMeasured: boolean;
  readonly tiltDeg: number | null;
  /** Height of a wedge under the front edge for that tilt, m. */
  readonly wedgeM: number | null;
  readonly spread: number | null;
  readonly crossoverHz: number | null;
  readonly filters: readonly Filter[];
  /** What the filters do; null where no tone was measured. */
  readonly toneRmsDb: Correction['rmsDb'] | null;
  readonly subwoofer: Subwoofer | null;
  /** Connected in reverse by a recording: to be put right before anything is typed. */
  readonly inverted: keyof Triple<number> | null;
  readonly seats: readonly SheetSeat[];
  readonly cost: { readonly before: number | null; readonly after: number };
  readonly assumed: readonly FactId[];
}

/** How the seats count. */
export type Weighting = 'main' | 'equal' | ReadonlyMap<string, number> | undefined;
/** Without a word the main seat counts as much as two others. Our own choice. */
const MAIN_WEIGHT = 2;

const TRIM_STEP_DB = 0.5;
const MOST_TRIM_DB = 12;
const SPREAD_STEPS = 10;
const MOST_TILT_DEG = 30;
/** The entry of the center is looked through so far to each side of being in step at the seat that counts most, ms. */
const REACH_MS = 1.5;
/** Beyond the directions of the ears a tilt only turns the box away, degrees. */
const PAST_EARS_DEG = 2;
/** A tilt must win by this much of the cost to be worth a wedge. */
const WORTH_A_WEDGE = 0.02;

export function weightsOf(system: System, weighting: Weighting): number[] {
  return system.seats.map(({ seat }) => {
    if (weighting === 'main') return seat.main ? 1 : 0;
    if (weighting === 'equal') return 1;
    if (weighting === undefined) return seat.main ? MAIN_WEIGHT : 1;
    return weighting.get(seat.name) ?? 0;
  });
}

interface Options {
  readonly weighting?: Weighting;
  /** Speed of sound that the processor reckons with, m/s. */
  readonly processorSpeed?: number;
  /** Tone of the center against the mains by a recording, dB; instead of the responses that the case names. */
  readonly tone?: Response;
}

export function settingsFor(book: FactBook, { weighting, processorSpeed, tone }: Options = {}): Sheet {
  const system = systemOf(book, processorSpeed);
  const models = seatModels(system);
  const weights = weightsOf(system, weighting);
  const best = bestChoice(system, models, weights, gridOf(system, models, weights));
  const now = presentChoice(system);
  const harms = (model: SeatModel, choice: Choice): Harms =>
    harmsAt(model, system, choice, playedBy(system, choice.spread));
  const choice = worthTilting(system, models, weights, best.choice);
  const trim = (system.trimDb ?? 0) + choice.trimChangeDb;
  const entries = entriesOf(system, choice.delaysMs);
  const entered = enteredNow(system);
  const correction = correctionFor(book, tone);
  return {
    entries: { ...entries, unit: system.unit, step: system.step },
    before: { entries: entered },
    trimDb: { center: trim, relative: system.trimDb === undefined },
    levelMeasured: system.levelDb !== undefined,
    latencyMeasured: system.latencyMeasured,
    tiltDeg: system.drivers === undefined ? null : choice.tiltDeg,
    wedgeM:
      system.drivers === undefined || system.centerDepthM === undefined
        ? null
        : system.centerDepthM * Math.tan((choice.tiltDeg * Math.PI) / 180),
    spread: choice.spread ?? null,
    crossoverHz: crossoverFor(system),
    filters: correction?.filters ?? [],
    toneRmsDb: correction?.rmsDb ?? null,
    subwoofer: subwooferFor(book, system, entered, entries),
    inverted: invertedIn(book),
    seats: models.map((model, i) => {
      const only = models.map((each) => (each === model ? 1 : 0));
      return {
        name: model.seat.seat.name,
        weight: weights[i] ?? 0,
        before: now === undefined ? null : harms(model, now),
        after: harms(model, choice),
        alone: harms(model, bestChoice(system, models, only, gridOf(system, models, only)).choice),
      };
    }),
    cost: {
      before: now === undefined ? null : costOfChoice(system, models, weights, now),
      after: costOfChoice(system, models, weights, choice),
    },
    assumed: system.assumed,
  };
}

/**
 * Every setting that the menu has near being in step. Left and right are in step at the seat that counts most, as the
 * stage of two channels asks; the center is free.
 */
export function gridOf(system: System, models: readonly SeatModel[], weights: readonly number[]): Grid {
  const most = Math.max(...weights);
  const heaviest = models.filter((_, i) => weights[i] === most);
  const anchor = heaviest.find(({ seat }) => seat === system.main) ?? heaviest[0];
  if (anchor === undefined) throw new RangeError('no seat');
  const stepMs =
    system.unit === 'ms'
      ? system.step
      : ((system.unit === 'ft' ? system.step * METERS_PER_FOOT : system.step) / system.processorSpeed) * 1000;
  const around = (wantedMs: number, count: number): number[] => {
    const middle = Math.round(wantedMs / stepMs);
    return Array.from({ length: 2 * count + 1 }, (_, i) => (middle + i - count) * stepMs);
  };
  const trims = Math.round(MOST_TRIM_DB / TRIM_STEP_DB);
  // What serves the main seat is looked at as well: a compromise is made from both.
  const main = models.find(({ seat }) => seat === system.main) ?? anchor;
  const both = (wantedMs: (model: SeatModel) => number, count: number): number[] => [
    ...new Set([anchor, main].flatMap((model) => around(wantedMs(model), count))),
  ];
  return {
    centerMs: both(({ wayMs }) => wayMs.left - wayMs.center, Math.ceil(REACH_MS / stepMs)),
    rightMs: both(({ wayMs }) => wayMs.left - wayMs.right, 0),
    // Without a measured level nothing is known that a trim could better.
    trimChangeDb:
      system.levelDb === undefined
        ? [0]
        : Array.from(
            { length: 2 * trims + 1 },
            (_, i) => i * TRIM_STEP_DB - MOST_TRIM_DB - (system.trimDb ?? 0),
          ),
    spread:
      system.spread === undefined
        ? [undefined]
        : Array.from({ length: SPREAD_STEPS + 1 }, (_, i) => i / SPREAD_STEPS),
    tiltDeg: [...new Set([system.tiltDeg ?? 0, ...tiltsOf(models)])],
  };
}

/** Whole degrees from the lowest to the highest ears. */
function tiltsOf(models: readonly SeatModel[]): number[] {
  const up = models.map(({ earsUpDeg }) => earsUpDeg);
  const from = Math.max(-MOST_TILT_DEG, Math.floor(Math.min(...up) - PAST_EARS_DEG));
  const to = Math.min(MOST_TILT_DEG, Math.ceil(Math.max(...up) + PAST_EARS_DEG));
  return Array.from({ length: Math.max(1, to - from + 1) }, (_, i) => from + i);
}

/** As it is set now. */
function presentChoice(system: System): Choice | undefined {
  if (system.now === undefined) return undefined;
  const added = entryDelaysMs(system.now.entered, system.processorSpeed);
  const at = (side: keyof Triple<number>): number => added[side] + (system.now?.delaysMs[side] ?? 0);
  return {
    delaysMs: { left: at('left'), center: at('center'), right: at('right') },
    trimChangeDb: 0,
    spread: system.spread?.now,
    tiltDeg: system.tiltDeg ?? 0,
  };
}

/** The present tilt stays unless another is clearly better. */
function worthTilting(
  system: System,
  models: readonly SeatModel[],
  weights: readonly number[],
  best: Choice,
): Choice {
  const kept = { ...best, tiltDeg: system.tiltDeg ?? 0 };
  const gain = costOfChoice(system, models, weights, kept) - costOfChoice(system, models, weights, best);
  return gain < WORTH_A_WEDGE ? kept : best;
}

const SIDES = ['left', 'center', 'right'] as const;

/** Distances that make the processor add these delays, anchored at the true distance of left; or the delays themselves. */
function entriesOf(system: System, delaysMs: Triple<number>): Triple<number> {
  const { unit, step, processorSpeed } = system;
  const rounded = (value: number): number => Math.max(0, Math.round(value / step)) * step;
  const exact = (value: number): number => Number(value.toFixed(4));
  if (unit === 'ms') return sides((side) => exact(rounded(delaysMs[side])));
  const metersPerUnit = unit === 'ft' ? METERS_PER_FOOT : 1;
  const units = (ms: number): number => ((ms / 1000) * processorSpeed) / metersPerUnit;
  const least = Math.max(...SIDES.map((side) => units(delaysMs[side] - delaysMs.left)));
  const left = Math.max(
    rounded(distanceM(system.points.left, system.main.at) / metersPerUnit),
    rounded(least),
  );
  return sides((side) =>
    exact(
      left -
        rounded(Math.abs(units(delaysMs[side] - delaysMs.left))) * Math.sign(delaysMs[side] - delaysMs.left),
    ),
  );
}

const sides = (of: (side: (typeof SIDES)[number]) => number): Triple<number> => ({
  left: of('left'),
  center: of('center'),
  right: of('right'),
});

/** What the menu shows now, in its unit. */
function enteredNow({ now, unit }: System): Triple<number> | null {
  if (now === undefined) return null;
  if (now.entered) return inUnit(now.entered, unit);
  return unit === 'ms' ? now.delaysMs : null;
}

const inUnit = (meters: Triple<number>, unit: EntryUnit): Triple<number> =>
  sides((side) => Number((meters[side] / (unit === 'ft' ? METERS_PER_FOOT : 1)).toFixed(2)));
