/** Measures of how good a ranking is. Probabilities are 0 to 1; every mean is over at least one case. */

/** True when a true cause stands first. */
export function topIsTrue<T>(ranked: readonly T[], truths: readonly T[]): boolean {
  return ranked[0] !== undefined && truths.includes(ranked[0]);
}

/** Hits among the first `k` over the most that could be hit: min(k, number of true causes). */
export function recallAt<T>(ranked: readonly T[], truths: readonly T[], k: number): number {
  const hits = ranked.slice(0, k).filter((id) => truths.includes(id)).length;
  return hits / Math.min(k, truths.length);
}

/** One over the rank of the first true cause; 0 where none is listed. */
export function reciprocalRank<T>(ranked: readonly T[], truths: readonly T[]): number {
  const place = ranked.findIndex((id) => truths.includes(id));
  return place < 0 ? 0 : 1 / (place + 1);
}

/** Brier score of one case: sum of squared differences between stated probability and what was true. */
export function brier(stated: readonly { readonly p: number; readonly hit: boolean }[]): number {
  return stated.reduce((sum, { p, hit }) => sum + (p - (hit ? 1 : 0)) ** 2, 0);
}

/** Log loss in nats of the probability given to what was true; bounded so that one zero is not infinite. */
export function logLoss(pOfTruth: number): number {
  return -Math.log(Math.max(1e-15, pOfTruth));
}

export function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length;
}

/** Middle value, the mean of the two middle ones for an even count. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}

/** By how many percent values exceed their optimum, on average. */
export function meanExcessPercent(values: readonly number[], optimal: readonly number[]): number {
  return mean(values.map((value, i) => 100 * (value / (optimal[i] ?? Number.NaN) - 1)));
}

export type Binning = 'equal-count' | 'equal-width';
export interface CalibrationBin {
  readonly count: number;
  /** Mean stated probability, and how often it was right. */
  readonly stated: number;
  readonly right: number;
}

export function calibrationBins(
  statements: readonly { readonly p: number; readonly hit: boolean }[],
  bins: number,
  binning: Binning,
): CalibrationBin[] {
  const sorted = [...statements].sort((a, b) => a.p - b.p);
  const binOf = (p: number, place: number): number =>
    binning === 'equal-count'
      ? Math.floor((place * bins) / sorted.length)
      : Math.min(bins - 1, Math.floor(p * bins));
  const lists = Array.from({ length: bins }, (): { p: number; hit: boolean }[] => []);
  sorted.forEach((statement, place) => {
    lists[binOf(statement.p, place)]?.push(statement);
  });
  return lists
    .filter((list) => list.length > 0)
    .map((list) => ({
      count: list.length,
      stated: mean(list.map((s) => s.p)),
      right: mean(list.map((s) => (s.hit ? 1 : 0))),
    }));
}

/** Expected calibration error: mean |stated - right| over the bins, weighted by their counts. */
export function calibrationError(
  statements: readonly { readonly p: number; readonly hit: boolean }[],
  bins = 10,
  binning: Binning = 'equal-count',
): number {
  return calibrationBins(statements, bins, binning).reduce(
    (sum, bin) => sum + (bin.count / statements.length) * Math.abs(bin.stated - bin.right),
    0,
  );
}
