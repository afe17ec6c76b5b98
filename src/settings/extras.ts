/** What the sheet says beside times and levels: crossover, subwoofer and a correction of the tone. */
import type { Triple } from '../acoustics/arrival.js';
import type { Filter } from '../acoustics/filter.js';
import { METERS_PER_FOOT } from '../acoustics/practice.js';
import type { Response } from '../acoustics/response.js';
import { tonalMatch } from '../acoustics/tonal.js';
import { createCore } from '../compute/core.js';
import type { Reader } from '../compute/reader.js';
import { type FactBook, told } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { System } from './system.js';

/** Steps that menus have, Hz. */
const CROSSOVERS_HZ = [40, 50, 60, 70, 80, 90, 100, 110, 120, 150, 180, 200, 250];
/** A crossover lies so far over the lowest tone that a box can play. Common practice, no source. */
const OVER_LIMIT = 1.3;
const USUAL_HZ = 80;

export function crossoverFor({ lowLimitHz }: System): number | null {
  if (lowLimitHz === undefined) return null;
  return CROSSOVERS_HZ.find((hz) => hz >= Math.max(USUAL_HZ, OVER_LIMIT * lowLimitHz)) ?? null;
}

export interface Subwoofer {
  /** Of its entry against what is set now, in the unit of the entries; null where no entry of now is known. */
  readonly change: number | null;
  /** How late it was measured against the center, ms; null where nobody measured it. */
  readonly lateMs: number | null;
}

/**
 * A subwoofer stays in step with the center: its entry follows that of the center, and a measured lateness is taken
 * out. A tape does not tell its entry, since its own processing is most of it.
 * @param now entries of today in the unit of the menu
 */
export function subwooferFor(
  book: FactBook,
  { unit, step, processorSpeed }: System,
  now: Triple<number> | null,
  then: Triple<number>,
): Subwoofer | null {
  const sort = told(book, 'subwoofer');
  if (sort === undefined || sort === 'none') return null;
  const late = told(book, 'subDelay');
  const lateMs = typeof late === 'number' ? late : null;
  if (now === null) return { change: null, lateMs };
  const perMs = unit === 'ms' ? -1 : processorSpeed / 1000 / (unit === 'ft' ? METERS_PER_FOOT : 1);
  const wanted = then.center - now.center + (lateMs ?? 0) * perMs;
  return { change: Number((Math.round(wanted / step) * step).toFixed(4)) + 0, lateMs };
}

export interface Correction {
  readonly filters: readonly Filter[];
  /** Difference of center and mains over the third octaves, dB rms, as it is and with the filters. */
  readonly rmsDb: { readonly before: number; readonly after: number };
}

/**
 * A correction for a measured mismatch; null where nothing was measured.
 * @param tone center against mains by a recording; without it the responses of the case count
 */
export function correctionFor(book: FactBook, tone: Response | undefined): Correction | null {
  const { value } = createCore(book).evaluate((r: Reader<FactId>) => {
    const lowLimitHz = r.toldNumber('centerLowLimit');
    if (tone !== undefined) {
      const flat = { ...tone, levelDb: tone.levelDb.map(() => 0) };
      return tonalMatch({ left: flat, center: tone, right: flat, lowLimitHz });
    }
    const [left, center, right] = r.responses('responseLeft', 'responseCenter', 'responseRight');
    return tonalMatch({ left, center, right, lowLimitHz });
  });
  const match = value as ReturnType<typeof tonalMatch> | undefined;
  if (match === undefined) return null;
  return { filters: match.filters, rmsDb: { before: match.rmsDb, after: match.residualRmsDb } };
}

const INVERTED = { 'left-inverted': 'left', 'center-inverted': 'center', 'right-inverted': 'right' } as const;

/** The loudspeaker that a recording found reversed. */
export function invertedIn(book: FactBook): keyof Triple<number> | null {
  const sort = told(book, 'polarityMeasured');
  return typeof sort === 'string' && sort in INVERTED ? INVERTED[sort as keyof typeof INVERTED] : null;
}
