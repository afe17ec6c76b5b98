/**
 * Does the center sound like the mains? Three measured responses on one grid, level-aligned by the median
 * (a mean is biased by the very hole one is looking for), compared by third-octave bands, and a bounded
 * correction where one helps. Method: acoustic model of this project, computed there against a synthetic case.
 * `levelOffset` is its first step by itself, as published rows hold it.
 */
import { thirdOctaveCenterHz, thirdOctaveEdgesHz } from './bands.js';
import type { Filter } from './filter.js';
import { type GridResponse, gridHz, type Response, resample, smooth } from './response.js';
import { proposeFilters, responseOfFilters } from './tonal-fit.js';

/** Range of the level alignment, Hz: where voices are and rooms and limits are not. Common practice, no source. */
const ALIGN_FROM_HZ = 300;
const ALIGN_TO_HZ = 3000;
/** Mean and median further apart than this mean a broad hole or hump inside the range, dB. Our own choice. */
const ALIGN_DOUBT_DB = 0.5;
/** Judged bands, 200 Hz to 8 kHz, with the names people use. */
const FIRST_BAND = -7;
const BAND_NAMES_HZ: readonly number[] = [
  200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000,
];
/** Clearly another voice, dB in a band (recommended thresholds of this project). */
const CLEAR_BAND_DB = 3;
/** Smoothing for fits, parts of an octave. */
const FIT_SMOOTHING = 6;
/** Fewer measured points per octave than this leave bands to interpolation. Our own choice. */
const COARSE_PER_OCTAVE = 6;
/** Lower limit of a center that nobody stated, Hz: the usual crossover. From memory (common practice). */
const USUAL_LOW_LIMIT_HZ = 80;
/** Corrections that leave this much more or less, dB rms over the bands, are equally good. Our own choice. */
const SAME_RESULT_DB = 0.15;

type TonalBand = { readonly hz: number; readonly diffDb: number; readonly afterDb: number };

export type TonalMatch = {
  /** Center minus power mean of left and right, median over 300 to 3000 Hz. */
  readonly levelOffsetDb: number;
  /** Of the third-octave differences 200 Hz to 8 kHz that are left when the offset is taken out. */
  readonly rmsDb: number;
  readonly worstBandHz: number;
  readonly worstBandDb: number;
  readonly bandsOver3Db: number;
  /** Correction for the center (digital filters at 48 kHz); empty when none is needed or none helps. */
  readonly filters: readonly Filter[];
  /** What is left with the filters, when the level is set once more after them. */
  readonly residualRmsDb: number;
  /** Largest difference left, with its sign. */
  readonly residualWorstDb: number;
  readonly bands: readonly TonalBand[];
  readonly warnings: readonly string[];
};

type TonalInput = {
  readonly left: Response;
  readonly center: Response;
  readonly right: Response;
  /** Where the center's bass ends, Hz: nothing is boosted below it. 80 when unknown. */
  readonly lowLimitHz?: number | undefined;
};

type Common = { readonly first: number; readonly center: Float64Array; readonly mains: Float64Array };

/** The three on the part of the grid that all cover; mains as the power mean of left and right. */
function onCommonGrid({ left, center, right }: TonalInput): Common {
  const [l, c, r] = [resample(left), resample(center), resample(right)] as const;
  const first = Math.max(l.first, c.first, r.first);
  const end = Math.min(...[l, c, r].map((curve) => curve.first + curve.levelDb.length));
  if (end <= first || gridHz(first - 1) >= ALIGN_FROM_HZ || gridHz(end) <= ALIGN_TO_HZ) {
    const span = end > first ? `${gridHz(first).toFixed(0)} to ${gridHz(end - 1).toFixed(0)} Hz` : 'nowhere';
    throw new RangeError(
      `left, center and right overlap ${end > first ? 'from ' : ''}${span}; accepted: at least ${ALIGN_FROM_HZ} to ${ALIGN_TO_HZ} Hz, better 20 to 20000 Hz`,
    );
  }
  const cut = ({ first: start, levelDb }: GridResponse) => levelDb.subarray(first - start, end - start);
  const rightDb = cut(r);
  const mains = cut(l).map(
    (level, i) => 10 * Math.log10((10 ** (level / 10) + 10 ** ((rightDb[i] ?? 0) / 10)) / 2),
  );
  return { first, center: cut(c), mains };
}

function meanAndMedian(values: readonly number[]): { mean: number; median: number } {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const median = ((sorted[Math.ceil(half) - 1] ?? 0) + (sorted[Math.floor(half)] ?? 0)) / 2;
  return { mean: sorted.reduce((sum, value) => sum + value, 0) / sorted.length, median };
}

/** Level offset of the center against the mains over 300 to 3000 Hz, by mean and by median, dB. */
export function levelOffset(input: TonalInput): { meanDb: number; medianDb: number } {
  return offsetOf(onCommonGrid(input));
}

function offsetOf({ first, center, mains }: Common): { meanDb: number; medianDb: number } {
  const differences: number[] = [];
  for (let i = 0; i < center.length; i += 1) {
    const hz = gridHz(first + i);
    if (hz >= ALIGN_FROM_HZ && hz <= ALIGN_TO_HZ) differences.push((center[i] ?? 0) - (mains[i] ?? 0));
  }
  const { mean, median } = meanAndMedian(differences);
  return { meanDb: mean, medianDb: median };
}

/**
 * The level that most of a difference curve shares: the middle of the narrowest half of its values over the range
 * of alignment (the shorth). A hump leaves it alone, while the median moves toward the hump.
 */
function sharedLevel(differenceDb: Float64Array, first: number): number {
  const sorted = differenceDb
    .filter((_, i) => gridHz(first + i) >= ALIGN_FROM_HZ && gridHz(first + i) <= ALIGN_TO_HZ)
    .sort();
  const half = Math.ceil(sorted.length / 2);
  const width = (from: number) => (sorted[from + half - 1] ?? 0) - (sorted[from] ?? 0);
  let best = 0;
  for (let from = 1; from + half <= sorted.length; from += 1) if (width(from) < width(best)) best = from;
  return (sorted[best] ?? 0) + width(best) / 2;
}

type Proposal = { readonly filters: readonly Filter[]; readonly residual: readonly number[] };

/** The proposal that leaves least; fewer filters win where what is left differs by nothing one could hear. */
function fewest(proposals: readonly Proposal[]): Proposal {
  const least = Math.min(...proposals.map(({ residual }) => rms(residual)));
  const close = proposals.filter(({ residual }) => rms(residual) <= least + SAME_RESULT_DB);
  return close.reduce((a, b) => (b.filters.length < a.filters.length ? b : a));
}

/** Difference of band levels (power means) center minus mains, dB, offset not taken out; null where not covered. */
function bandDifferences({ first, center, mains }: Common): (number | null)[] {
  return BAND_NAMES_HZ.map((_, band) => {
    const { lowerHz, upperHz } = thirdOctaveEdgesHz(thirdOctaveCenterHz(FIRST_BAND + band));
    if (gridHz(first - 1) >= lowerHz || gridHz(first + center.length) < upperHz) return null;
    let ofCenter = 0;
    let ofMains = 0;
    for (let i = 0; i < center.length; i += 1) {
      const hz = gridHz(first + i);
      if (hz < lowerHz || hz >= upperHz) continue;
      ofCenter += 10 ** ((center[i] ?? 0) / 10);
      ofMains += 10 ** ((mains[i] ?? 0) / 10);
    }
    return 10 * Math.log10(ofCenter / ofMains);
  });
}

/** Third-octave differences center minus mains after an alignment, by the names of the bands. */
export function thirdOctaveDifferences(
  input: TonalInput,
  alignment: 'mean' | 'median' = 'median',
): Map<number, number> {
  const common = onCommonGrid(input);
  const { meanDb, medianDb } = offsetOf(common);
  const offsetDb = alignment === 'mean' ? meanDb : medianDb;
  return new Map(
    bandDifferences(common).flatMap((difference, i) =>
      difference === null ? [] : [[BAND_NAMES_HZ[i] ?? 0, difference - offsetDb] as const],
    ),
  );
}

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
const largest = (values: readonly number[]): number =>
  values.reduce((worst, value) => (Math.abs(value) > Math.abs(worst) ? value : worst), 0);

function warningsFor(input: TonalInput, bandsMissing: readonly number[], doubtDb: number): string[] {
  const warnings: string[] = [];
  if (Math.abs(doubtDb) > ALIGN_DOUBT_DB) {
    warnings.push(
      `Mean and median level offset differ by ${Math.abs(doubtDb).toFixed(1)} dB: a broad hole or hump lies between ${ALIGN_FROM_HZ} and ${ALIGN_TO_HZ} Hz. The median is used.`,
    );
  }
  if (bandsMissing.length > 0) {
    warnings.push(`Not measured by all three, so left out: ${bandsMissing.join(', ')} Hz.`);
  }
  for (const [name, { frequencyHz }] of [
    ['left', input.left],
    ['center', input.center],
    ['right', input.right],
  ] as const) {
    const octaves = Math.log2((frequencyHz.at(-1) ?? 1) / (frequencyHz[0] ?? 1));
    if ((frequencyHz.length - 1) / octaves < COARSE_PER_OCTAVE) {
      warnings.push(
        `The response of ${name} has few points (${frequencyHz.length}); bands between them are interpolated.`,
      );
    }
  }
  return warnings;
}

/** Compares the center with the mains and proposes a correction. Throws RangeError where they do not overlap. */
export function tonalMatch(input: TonalInput): TonalMatch {
  const common = onCommonGrid(input);
  const { meanDb, medianDb: levelOffsetDb } = offsetOf(common);
  const before = bandDifferences(common);
  const covered = before.flatMap((difference, i) => (difference === null ? [] : [i]));
  const aligned = (differences: readonly (number | null)[], offsetDb = levelOffsetDb) =>
    covered.map((i) => (differences[i] ?? 0) - offsetDb);
  const after = (filters: readonly Filter[]) => {
    const added = responseOfFilters(filters);
    const center = common.center.map((level, i) => level + added(gridHz(common.first + i)));
    const corrected = { ...common, center };
    return aligned(bandDifferences(corrected), offsetOf(corrected).medianDb);
  };
  const differences = aligned(before);
  const smoothedMains = smooth(common.mains, FIT_SMOOTHING);
  const smoothed = smooth(common.center, FIT_SMOOTHING).map((level, i) => level - (smoothedMains[i] ?? 0));
  const { filters, residual } = fewest(
    [levelOffsetDb, sharedLevel(smoothed, common.first)].map((trimDb): Proposal => {
      const proposed = proposeFilters({
        first: common.first,
        wantedDb: smoothed.map((difference) => trimDb - difference),
        lowLimitHz: input.lowLimitHz ?? USUAL_LOW_LIMIT_HZ,
        before: differences,
        after,
      });
      return { filters: proposed, residual: after(proposed) };
    }),
  );
  const worstBandDb = largest(differences);
  return {
    levelOffsetDb,
    rmsDb: rms(differences),
    worstBandHz: BAND_NAMES_HZ[covered[differences.indexOf(worstBandDb)] ?? covered[0] ?? 0] ?? 0,
    worstBandDb,
    bandsOver3Db: differences.filter((difference) => Math.abs(difference) > CLEAR_BAND_DB).length,
    filters,
    residualRmsDb: rms(residual),
    residualWorstDb: largest(residual),
    bands: covered.map((band, i) => ({
      hz: BAND_NAMES_HZ[band] ?? 0,
      diffDb: differences[i] ?? 0,
      afterDb: residual[i] ?? 0,
    })),
    warnings: warningsFor(
      input,
      BAND_NAMES_HZ.filter((_, i) => !covered.includes(i)),
      meanDb - levelOffsetDb,
    ),
  };
}
