/**
 * Weights of evidence in decibans, 10 log10 of a likelihood ratio (Good 1985). Pure formulas: no fact,
 * rule or cause is known here.
 */
import type { How } from '../facts/spec.js';

/** Slope s of the psychometric function in ln r: 2 gives 6 dB a doubling (judgement of this project). */
const SLOPE = 2;
/** No computed deviation weighs more than this, in decibans (judgement: odds of 100 to 1). */
export const CLAMP_DB = 20;

/**
 * Chance that an answer obtained in this way is wrong (judgement, coarse grid, no source): taped or read
 * by laser, read off a menu or data sheet, recalled or what it sounds like, guessed.
 */
export const ERROR_RATE: Readonly<Record<How, number>> = {
  measured: 0.02,
  read: 0.05,
  seen: 0.05,
  recalled: 0.1,
  guessed: 0.2,
};

const decibans = (likelihoodRatio: number): number => 10 * Math.log10(likelihoodRatio);
const within = (value: number, bound: number): number => Math.min(bound, Math.max(-bound, value));

/** The most that evidence resting on such an answer can weigh: 10 log10((1 - e) / e) decibans. */
export function capDb(how: How): number {
  const e = ERROR_RATE[how];
  return decibans((1 - e) / e);
}

/**
 * Slope left when the deviation itself is uncertain: s / sqrt(1 + pi s^2 sigma^2 / 8), the probit-style
 * approximation to the average of a logistic function (within 0.04 dB of the integral up to sigma 0.6).
 * `spread` is one standard deviation of ln r, 0 or more.
 */
export function effectiveSlope(spread: number, slope = SLOPE): number {
  return slope / Math.sqrt(1 + (Math.PI * slope ** 2 * spread ** 2) / 8);
}

/**
 * Decibans of a deviation that is `ratio` times its threshold: 10 s_eff log10(ratio), so a fair coin at 1.
 * Not bounded: 0 gives minus infinity. `ratio` 0 or more, `spread` as above.
 */
export function psychometricDb(ratio: number, spread = 0, slope = SLOPE): number {
  return effectiveSlope(spread, slope) * decibans(ratio);
}

/** How many times its threshold a deviation is, from 0 to infinity. Magnitudes: a negative value counts as 0. */
export function deviationRatio(value: number, limit: number, lowIsBad: boolean): number {
  const [over, under] = lowIsBad ? [limit, Math.max(0, value)] : [Math.max(0, value), limit];
  return under === 0 ? Number.POSITIVE_INFINITY : over / under;
}

/** The largest spread that is stated: beyond a factor of 4.5 either way nothing is known anyway. */
export const MOST_SPREAD = 1.5;

/**
 * The bounded weight of a computed deviation: within 20 dB, the cap of the weakest answer, and `maxDb`. The
 * spread is asked for only where it can tell: some deviations reach the bound even with the largest one.
 */
export function deviationDb(
  ratio: number,
  options: { readonly spread: () => number; readonly how: How; readonly maxDb?: number },
): number {
  const bound = Math.min(CLAMP_DB, capDb(options.how), options.maxDb ?? Number.POSITIVE_INFINITY);
  const leastDb = psychometricDb(ratio, MOST_SPREAD);
  if (Math.abs(leastDb) >= bound) return Math.sign(leastDb) * bound;
  return within(psychometricDb(ratio, options.spread()), bound);
}

/** Chance of hearing an answer whose true chance is `p` (0 to 1), with the errors of answers obtained in this way. */
export function reported(p: number, how: How): number {
  const e = ERROR_RATE[how];
  return p * (1 - e) + (1 - p) * e;
}

/**
 * Weight of an answer that was given: tp is its chance if the cause is true, fp otherwise (0 to 1), and
 * the error rate follows from how it was obtained. Bounded by the cap of `how` by construction.
 */
export function givenDb(tp: number, fp: number, how: How): number {
  return decibans(reported(tp, how) / reported(fp, how));
}

/** Weight of the same answer known not to hold: an absent sign speaks too. */
export function absentDb(tp: number, fp: number, how: How): number {
  return decibans((1 - reported(tp, how)) / (1 - reported(fp, how)));
}

/**
 * Chance that one sibling, a cause of which at most one of them is at work, gives the same answer (judgement: an answer
 * that fits several of them is heard in one home of five on account of each other one).
 */
const SIBLING_SHARE = 0.2;

/**
 * What is left of a weight that speaks for several causes alike while it is open which of them applies: without this
 * cause the answer may come from one of `siblings`, so LR' = LR / (1 - q + q LR). It keeps its sign and never grows.
 */
export function sharedAmongDb(db: number, siblings: number): number {
  const q = Math.min(0.5, SIBLING_SHARE * siblings);
  const ratio = 10 ** (db / 10);
  return db - decibans(1 - q + q * ratio);
}

/** How a told number is held against a computed one: frequencies and times by their ratio, levels by their difference. */
export const MATCHING = {
  /** Doubt: what models and reading a curve leave open, log-sd, half a third octave. By chance anywhere from 80 Hz to 8 kHz. */
  ratio: { doubt: 0.115, chanceRange: Math.log(8000 / 80) },
  /** Doubt: two readings of a phone or meter against a weighted loss, dB. By chance anywhere within 12 dB. */
  difference: { doubt: 1.5, chanceRange: 12 },
} as const;
/** Chance that what somebody measured is the work of the cause, if the cause is true. With the above, judgment. */
const IS_THE_ONE = 0.7;

/**
 * Decibans of a told number that is `off` a computed one (0 or more: natural logarithm of their ratio, or dB), both
 * together uncertain by `spread` in the same unit: a normal curve about the computed one against an even chance over
 * the range in which such numbers lie. Bounded by the cap of the weakest answer behind the two.
 */
export function matchDb(
  off: number,
  spread: number,
  how: How,
  { doubt, chanceRange }: (typeof MATCHING)[keyof typeof MATCHING] = MATCHING.ratio,
): number {
  const sd = Math.hypot(spread, doubt);
  const density = Math.exp(-((off / sd) ** 2) / 2) / (sd * Math.sqrt(2 * Math.PI));
  return within(decibans(IS_THE_ONE * chanceRange * density + 1 - IS_THE_ONE), capDb(how));
}
