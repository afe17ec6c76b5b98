/**
 * Bass management: how center and subwoofer add around the crossover, given what the box does by itself.
 * H = HP_e(f) box(f) +- LP(f) sub(f) e^(-j omega tau), LP the LR4 low-pass of the processor (common practice:
 * 24 dB per octave). Box and sub are minimum-phase models, room and placement are left out.
 *
 * For checks only: `bassSumCurve` proves the hole that is found.
 */

import { logGrid } from './bands.js';
import { type Complex, mul } from './complex.js';
import { butterworthHighPass, highPass, lowPass } from './crossover.js';
import { oneOf, positive, within } from './input.js';
import { goldenMinimum } from './minimize.js';

export const ENCLOSURES = ['sealed', 'vented'] as const;
/** `sealed`: second order, Q 0.707. `vented`: fourth-order Butterworth. Both from memory (textbook). */
export type Enclosure = (typeof ENCLOSURES)[number];
export const BASS_HIGH_PASSES = ['LR4', 'BW2'] as const;
/** Electrical high-pass of the processor; BW2 counts on the second order of a sealed box. From memory. */
export type BassHighPass = (typeof BASS_HIGH_PASSES)[number];

/** Lower limit of the subwoofer, second-order Butterworth, Hz. Common practice, no source. */
const SUB_LIMIT_HZ = 15;
/** Range in which a hole is looked for, Hz. */
const HOLE_FROM_HZ = 40;
const HOLE_TO_HZ = 300;
const HOLE_HZ = logGrid(HOLE_FROM_HZ, HOLE_TO_HZ, 120);
const LONGEST_DELAY_MS = 1000;

export type BassInput = {
  readonly crossoverHz: number;
  readonly enclosure: Enclosure;
  /** -3 dB point of the box, Hz. */
  readonly lowLimitHz: number;
  readonly highPass?: BassHighPass | undefined;
  /** Delay of the sub against the center, ms, positive: sub late. */
  readonly subDelayMs?: number | undefined;
  readonly subInverted?: boolean | undefined;
};

function checked(input: BassInput): Required<{ [K in keyof BassInput]: Exclude<BassInput[K], undefined> }> {
  positive('crossoverHz', input.crossoverHz);
  positive('lowLimitHz', input.lowLimitHz);
  return {
    crossoverHz: within('crossoverHz', input.crossoverHz, 10, 1000),
    lowLimitHz: within('lowLimitHz', input.lowLimitHz, 1, 1000),
    enclosure: oneOf('enclosure', input.enclosure, ENCLOSURES),
    highPass: oneOf('highPass', input.highPass ?? 'LR4', BASS_HIGH_PASSES),
    subDelayMs: within('subDelayMs', input.subDelayMs ?? 0, -LONGEST_DELAY_MS, LONGEST_DELAY_MS),
    subInverted: input.subInverted ?? false,
  };
}

/** Roll-off of the box alone. */
export function boxResponse(enclosure: Enclosure, lowLimitHz: number, frequencyHz: number): Complex {
  return butterworthHighPass(enclosure === 'sealed' ? 2 : 4, lowLimitHz, frequencyHz);
}

type Branches = { readonly main: Complex; readonly sub: Complex };

/** The two branches before the sub's delay and polarity. */
function branches(input: ReturnType<typeof checked>, frequencyHz: number): Branches {
  const { crossoverHz, enclosure, lowLimitHz, highPass: electrical } = input;
  return {
    main: mul(
      highPass(electrical, crossoverHz, frequencyHz),
      boxResponse(enclosure, lowLimitHz, frequencyHz),
    ),
    sub: mul(lowPass('LR4', crossoverHz, frequencyHz), butterworthHighPass(2, SUB_LIMIT_HZ, frequencyHz)),
  };
}

/** Squared magnitude of main + sign * sub turned by the delay. */
function sumPower({ main, sub }: Branches, frequencyHz: number, subDelayMs: number, sign: 1 | -1): number {
  const angle = (-2 * Math.PI * frequencyHz * subDelayMs) / 1000;
  const cos = sign * Math.cos(angle);
  const sin = sign * Math.sin(angle);
  const re = main.re + sub.re * cos - sub.im * sin;
  const im = main.im + sub.re * sin + sub.im * cos;
  return re * re + im * im;
}

const signOf = (inverted: boolean): 1 | -1 => (inverted ? -1 : 1);

/** Level of the sum in dB at each frequency (0: neither lost nor gained). */
export function bassSumCurve(input: BassInput, frequenciesHz: readonly number[]): { levelDb: number[] } {
  const known = checked(input);
  return {
    levelDb: frequenciesHz.map(
      (hz) =>
        10 *
        Math.log10(
          sumPower(
            branches(known, positive('frequenciesHz', hz)),
            hz,
            known.subDelayMs,
            signOf(known.subInverted),
          ),
        ),
    ),
  };
}

export type BassHole = { readonly dipDb: number | null; readonly dipHz: number };
type Known = ReturnType<typeof checked>;
type Setting = { readonly subDelayMs: number; readonly subInverted: boolean };
/** What center and sub do at one frequency, whatever the sub is set to. */
type GridPoint = { readonly hz: number; readonly parts: Branches };

function holeGrid(known: Known): GridPoint[] {
  return [...HOLE_HZ].map((hz) => ({ hz, parts: branches(known, hz) }));
}

/** Deepest point of the sum between 40 and 300 Hz. `dipDb` is null when the two cancel completely. */
export function bassSum(input: BassInput): BassHole {
  const known = checked(input);
  return holeAt(known, known, holeGrid(known));
}

function holeAt(known: Known, { subDelayMs, subInverted }: Setting, grid: readonly GridPoint[]): BassHole {
  const sign = signOf(subInverted);
  const power = (hz: number): number => sumPower(branches(known, hz), hz, subDelayMs, sign);
  const powers = grid.map(({ hz, parts }) => sumPower(parts, hz, subDelayMs, sign));
  const least = Math.min(...powers);
  const lowest = powers.indexOf(least);
  const gridHz = grid[lowest]?.hz ?? HOLE_FROM_HZ;
  // A grid alone would miss the bottom of a narrow null between its points.
  const bottomHz = goldenMinimum(
    power,
    grid[lowest - 1]?.hz ?? HOLE_FROM_HZ,
    grid[lowest + 1]?.hz ?? HOLE_TO_HZ,
  );
  const bottom = power(bottomHz);
  const [dipHz, deepest] = bottom < least ? [bottomHz, bottom] : [gridHz, least];
  return { dipDb: deepest > 0 ? Math.min(0, 10 * Math.log10(deepest)) : null, dipHz };
}

/** Delays tried when the sub is aligned, ms, and their step: what menus offer on either side. Common practice. */
const ALIGN_FROM_MS = -15;
const ALIGN_TO_MS = 15;
const ALIGN_STEP_MS = 0.25;

/** Everything a menu can set the sub to. */
const SETTINGS: readonly Setting[] = [false, true].flatMap((subInverted) =>
  Array.from({ length: Math.round((ALIGN_TO_MS - ALIGN_FROM_MS) / ALIGN_STEP_MS) + 1 }, (_, i) => ({
    subDelayMs: ALIGN_FROM_MS + i * ALIGN_STEP_MS,
    subInverted,
  })),
);

/**
 * The least power of the sum on the whole grid at a setting, where it stays above a given one. Settings in turn
 * fail near the same frequency, so the one that failed the last is tried first.
 */
function leastPowers(grid: readonly GridPoint[]): (setting: Setting, above: number) => number | undefined {
  let weakest = grid[0];
  return ({ subDelayMs, subInverted }, above) => {
    const sign = signOf(subInverted);
    const powerAt = ({ hz, parts }: GridPoint): number => sumPower(parts, hz, subDelayMs, sign);
    if (weakest && powerAt(weakest) <= above) return undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const point of grid) {
      const here = powerAt(point);
      if (here <= above) {
        weakest = point;
        return undefined;
      }
      least = Math.min(least, here);
    }
    return least;
  };
}

export type AlignedHole = BassHole & Setting;

/** The shallowest hole that the sub's delay and polarity can bring about, and the setting that does. */
export function alignedHole(input: Omit<BassInput, 'subDelayMs' | 'subInverted'>): AlignedHole {
  const known = checked(input);
  const grid = holeGrid(known);
  const leastPower = leastPowers(grid);
  let best = { power: -1, subDelayMs: 0, subInverted: false };
  for (const setting of SETTINGS) {
    const power = leastPower(setting, best.power);
    if (power !== undefined) best = { power, ...setting };
  }
  const { subDelayMs, subInverted } = best;
  return { ...holeAt(known, best, grid), subDelayMs, subInverted };
}

/** Whether some delay and polarity of the sub keeps the hole within `maxHoleDb`; stops at the first that does. */
function alignsWithin(input: Omit<BassInput, 'subDelayMs' | 'subInverted'>, maxHoleDb: number): boolean {
  const known = checked(input);
  const grid = holeGrid(known);
  const leastPower = leastPowers(grid);
  const allowed = 10 ** (-maxHoleDb / 10);
  return SETTINGS.some((setting) => {
    if (leastPower(setting, allowed) === undefined) return false;
    const { dipDb } = holeAt(known, setting, grid);
    return dipDb !== null && -dipDb <= maxHoleDb;
  });
}

/** Crossovers processors offer, Hz. From memory (common practice). */
export const CROSSOVER_CHOICES_HZ: readonly number[] = [40, 60, 80, 90, 100, 110, 120, 150, 200, 250];

/**
 * Lowest crossover of the usual choices from which on the hole stays within `maxHoleDb` (positive), Hz. Null
 * when none does. `aligned`: the sub's delay and polarity are set for the best; otherwise as given by default.
 */
export function lowestCrossoverHz(input: {
  enclosure: Enclosure;
  lowLimitHz: number;
  highPass?: BassHighPass;
  maxHoleDb: number;
  aligned?: boolean;
}): number | null {
  const { maxHoleDb, aligned = false, ...box } = input;
  positive('maxHoleDb', maxHoleDb);
  let lowest: number | null = null;
  for (const crossoverHz of [...CROSSOVER_CHOICES_HZ].reverse()) {
    const input = { ...box, crossoverHz };
    const passes = ({ dipDb }: BassHole): boolean => dipDb !== null && -dipDb <= maxHoleDb;
    // What passes without alignment passes with it: the search is much slower.
    if (!passes(bassSum(input)) && !(aligned && alignsWithin(input, maxHoleDb))) break;
    lowest = crossoverHz;
  }
  return lowest;
}
