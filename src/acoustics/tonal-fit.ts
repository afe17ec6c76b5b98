/**
 * A correction for the center: at most two shelves and three peaking filters, within bounds, found by a greedy
 * start at the largest difference and a joint least-squares fit. Boosts nothing below the loudspeaker's limit or
 * above what was measured, and is dropped where it does not help.
 */
import { type Filter, filterResponse } from './filter.js';
import { positive } from './input.js';
import { leastSquares, type Parameter } from './minimize.js';
import { GRID_PER_OCTAVE, gridHz } from './response.js';

/** Bounds of the contract of this project (common practice, no source): cuts go deeper than boosts. */
const DEEPEST_CUT_DB = -9;
const MOST_BOOST_DB = 4;
const LEAST_Q = 0.4;
const MOST_Q = 5;
const SHELF_Q = 0.7;
const LOW_SHELF_HZ = { min: 100, max: 500, start: 250 };
const HIGH_SHELF_HZ = { min: 2000, max: 12_000, start: 4000 };
const PEAK_START_Q = 1.4;
const MOST_PEAKS = 3;
/** Fit range, Hz. Above 8 kHz a curve from one microphone place says more about the place than the speaker. */
const FIT_FROM_HZ = 150;
const FIT_TO_HZ = 8000;
/** Range in which the correction must do no harm although it is not fitted there, Hz. */
const AUDIBLE_FROM_HZ = 20;
const AUDIBLE_TO_HZ = 20_000;
/** Every how many grid points the fit looks: twelve points an octave. */
const FIT_STRIDE = GRID_PER_OCTAVE / 12;
/** Where a measurement ends that reaches the end of the range. */
const LAST_POINT_HZ = AUDIBLE_TO_HZ * 2 ** (-FIT_STRIDE / GRID_PER_OCTAVE);
/** Weights of a boost that is not allowed, and of harm done outside the fit range. Our own choice. */
const FORBIDDEN_WEIGHT = 5;
const HARM_WEIGHT = 0.5;
/** Boost that counts as none, dB. Our own choice: the skirt of a filter never ends. */
const NEGLIGIBLE_BOOST_DB = 0.25;
/** A filter must better the rms by this to be worth setting, dB; below the second value there is nothing to do. */
const WORTHWHILE_DB = 0.03;
const GOOD_ENOUGH_DB = 0.25;
/** All bands within this: indistinguishable for practical purposes (recommended thresholds), no correction. */
const MATCHED_BAND_DB = 1;

export type FitInput = {
  /** Number of the first grid point, and the wanted correction from there on, dB. */
  readonly first: number;
  readonly wantedDb: Float64Array;
  readonly lowLimitHz: number;
  /** Band differences now, and what they become with filters. */
  readonly before: readonly number[];
  readonly after: (filters: readonly Filter[]) => readonly number[];
};

/** Response of all filters together, dB. */
export function responseOfFilters(filters: readonly Filter[]): (frequencyHz: number) => number {
  const each = filters.map((filter) => filterResponse(filter));
  return (hz) => each.reduce((sum, response) => sum + response(hz), 0);
}

type Spot = {
  readonly hz: number;
  readonly wantedDb: number;
  readonly kind: 'fit' | 'spare' | 'unmeasured' | 'edge';
  readonly allowedDb: number;
};

/** Where the correction is judged: to be fitted, to be spared from harm, or unmeasured and not to be boosted. */
function spots({ first, wantedDb, lowLimitHz }: FitInput): Spot[] {
  const last = first + wantedDb.length - 1;
  const list: Spot[] = [];
  for (let n = 0; gridHz(n) <= AUDIBLE_TO_HZ; n += FIT_STRIDE) {
    const hz = gridHz(n);
    const measured = n >= first && n <= last;
    const fit = measured && hz >= Math.max(FIT_FROM_HZ, lowLimitHz) && hz <= FIT_TO_HZ;
    list.push({
      hz,
      wantedDb: wantedDb[n - first] ?? 0,
      kind: fit ? 'fit' : measured ? 'spare' : 'unmeasured',
      allowedDb: measured && hz >= lowLimitHz ? MOST_BOOST_DB : 0,
    });
  }
  // The very edges of what may be boosted: the points above may lie a twelfth of an octave away from them.
  for (const hz of [lowLimitHz, gridHz(first - 1), gridHz(last + 1)]) {
    if (hz <= AUDIBLE_FROM_HZ || hz > AUDIBLE_TO_HZ) continue;
    list.push({ hz, wantedDb: 0, kind: 'edge', allowedDb: 0 });
  }
  return list;
}

function penalized(spot: Spot, addedDb: number): number {
  const forbidden = FORBIDDEN_WEIGHT * Math.max(0, addedDb - spot.allowedDb);
  if (spot.kind === 'fit') return addedDb - spot.wantedDb + Math.sign(addedDb - spot.wantedDb) * forbidden;
  const harm = Math.abs(addedDb - spot.wantedDb) - Math.abs(spot.wantedDb);
  return (spot.kind === 'spare' ? HARM_WEIGHT * Math.max(0, harm) : 0) + forbidden;
}

type Bounds = { readonly fromHz: number; readonly toHz: number; readonly low: number; readonly high: number };

/** Least and largest values of a filter's free parameters: log frequency, gain, and q for a peak. */
function parametersOf({ type, frequencyHz, gainDb, q }: Filter, bounds: Bounds): Parameter[] {
  const logHz = (min: number, max: number): Parameter => ({
    start: Math.log(frequencyHz),
    min: Math.log(min),
    max: Math.log(Math.max(min, max)),
  });
  const gain = (max: number): Parameter => ({ start: gainDb, min: DEEPEST_CUT_DB, max });
  if (type === 'lowShelf') return [logHz(LOW_SHELF_HZ.min, LOW_SHELF_HZ.max), gain(bounds.low)];
  if (type === 'highShelf') {
    return [logHz(HIGH_SHELF_HZ.min, Math.min(HIGH_SHELF_HZ.max, bounds.toHz)), gain(bounds.high)];
  }
  return [logHz(bounds.fromHz, bounds.toHz), gain(MOST_BOOST_DB), { start: q, min: LEAST_Q, max: MOST_Q }];
}

/** Filters of the given types with values taken from a flat list of parameters. */
function filtersFrom(types: readonly Filter['type'][], values: readonly number[]): Filter[] {
  let next = 0;
  return types.map((type) => {
    const frequencyHz = Math.exp(values[next] ?? 0);
    const gainDb = values[next + 1] ?? 0;
    const q = type === 'peaking' ? (values[next + 2] ?? PEAK_START_Q) : SHELF_Q;
    next += type === 'peaking' ? 3 : 2;
    return { type, frequencyHz, gainDb, q };
  });
}

/** Fits `moving` filters while `fixed` ones stay. */
function fitFilters(
  moving: readonly Filter[],
  fixed: readonly Filter[],
  where: readonly Spot[],
  bounds: Bounds,
): { filters: Filter[]; cost: number } {
  const settled = responseOfFilters(fixed);
  const base = where.map(({ hz }) => settled(hz));
  const types = moving.map(({ type }) => type);
  const { values, cost } = leastSquares(
    (trial) => {
      const added = responseOfFilters(filtersFrom(types, trial));
      return Float64Array.from(where, (spot, i) => penalized(spot, (base[i] ?? 0) + added(spot.hz)));
    },
    moving.flatMap((filter) => parametersOf(filter, bounds)),
  );
  return { filters: filtersFrom(types, values), cost };
}

/** First guesses for one more filter: a peak at the largest remainder, and each shelf not yet used. */
function candidates(filters: readonly Filter[], where: readonly Spot[]): Filter[] {
  const added = responseOfFilters(filters);
  const fitted = where.filter(({ kind }) => kind === 'fit');
  const left = fitted.map((spot) => ({ hz: spot.hz, db: spot.wantedDb - added(spot.hz) }));
  const clip = (gain: number) => Math.min(MOST_BOOST_DB, Math.max(DEEPEST_CUT_DB, gain));
  const meanOf = (part: typeof left) => part.reduce((sum, { db }) => sum + db, 0) / Math.max(1, part.length);
  const used = (type: Filter['type']) => filters.filter((filter) => filter.type === type).length;
  const worst = left.reduce((a, b) => (Math.abs(b.db) > Math.abs(a.db) ? b : a), { hz: 1000, db: 0 });
  const list: Filter[] = [];
  if (used('peaking') < MOST_PEAKS) {
    list.push({ type: 'peaking', frequencyHz: worst.hz, gainDb: clip(worst.db), q: PEAK_START_Q });
  }
  if (used('lowShelf') === 0) {
    const gainDb = clip(meanOf(left.filter(({ hz }) => hz < LOW_SHELF_HZ.max)));
    list.push({ type: 'lowShelf', frequencyHz: LOW_SHELF_HZ.start, gainDb, q: SHELF_Q });
  }
  if (used('highShelf') === 0) {
    const gainDb = clip(meanOf(left.filter(({ hz }) => hz > HIGH_SHELF_HZ.start)));
    list.push({ type: 'highShelf', frequencyHz: HIGH_SHELF_HZ.start, gainDb, q: SHELF_Q });
  }
  return list;
}

/** Values as menus take them; computed results hold for exactly these. */
const rounded = ({ type, frequencyHz, gainDb, q }: Filter): Filter => ({
  type,
  frequencyHz: Number(frequencyHz.toPrecision(3)),
  gainDb: Math.round(gainDb * 10) / 10,
  q: Math.round(q * 100) / 100,
});

/** Takes boosts back until nothing forbidden is left. */
function withinLimits(filters: readonly Filter[], where: readonly Spot[]): Filter[] {
  const excess = (list: readonly Filter[]) => {
    const added = responseOfFilters(list);
    return Math.max(...where.map(({ hz, allowedDb }) => added(hz) - allowedDb));
  };
  let list = filters.map(rounded);
  while (excess(list) > NEGLIGIBLE_BOOST_DB) {
    list = list.map((filter) =>
      filter.gainDb > 0 ? { ...filter, gainDb: Math.floor(filter.gainDb * 8) / 10 } : filter,
    );
  }
  return list.filter(({ gainDb }) => gainDb !== 0);
}

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
const worst = (values: readonly number[]): number => Math.max(...values.map(Math.abs));

/** Proposes filters for the center; an empty list when it matches already or nothing helps. */
export function proposeFilters(input: FitInput): Filter[] {
  positive('lowLimitHz', input.lowLimitHz);
  if (worst(input.before) <= MATCHED_BAND_DB) return [];
  const where = spots(input);
  const fitted = where.filter(({ kind }) => kind === 'fit').length;
  if (fitted === 0) return [];
  const measured = where.filter(({ kind }) => kind === 'fit' || kind === 'spare');
  const bounds: Bounds = {
    fromHz: where.find(({ kind }) => kind === 'fit')?.hz ?? FIT_FROM_HZ,
    toHz: where.findLast(({ kind }) => kind === 'fit')?.hz ?? FIT_TO_HZ,
    // A shelf that lifts goes on lifting to the end of the range: only where the end itself may be lifted.
    low: Math.max(input.lowLimitHz, measured[0]?.hz ?? AUDIBLE_TO_HZ) <= AUDIBLE_FROM_HZ ? MOST_BOOST_DB : 0,
    high: (measured.at(-1)?.hz ?? 0) < LAST_POINT_HZ ? 0 : MOST_BOOST_DB,
  };
  const rmsOf = (cost: number) => Math.sqrt(cost / fitted);
  let filters: Filter[] = [];
  let cost = where.reduce((sum, spot) => sum + penalized(spot, 0) ** 2, 0);
  const stages: Filter[][] = [];
  while (rmsOf(cost) > GOOD_ENOUGH_DB) {
    const tries = candidates(filters, where).map((candidate) =>
      fitFilters([candidate], filters, where, bounds),
    );
    const best = tries.reduce((a, b) => (b.cost < a.cost ? b : a), { filters: [] as Filter[], cost });
    if (best.filters.length === 0) break;
    const joint = fitFilters([...filters, ...best.filters], [], where, bounds);
    if (rmsOf(cost) - rmsOf(joint.cost) < WORTHWHILE_DB) break;
    filters = joint.filters;
    cost = joint.cost;
    stages.push(withinLimits(filters, where));
  }
  // The richest stage that leaves the bands no worse, in the mean and at the worst, than doing nothing.
  const helps = (list: readonly Filter[]) => {
    const after = input.after(list);
    return rms(after) < rms(input.before) && worst(after) <= worst(input.before);
  };
  return stages.findLast(helps) ?? [];
}
