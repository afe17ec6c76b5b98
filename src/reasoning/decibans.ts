/**
 * Decibans, odds and probabilities: 0 decibans is an even chance, 10 is ten to one (Good 1985).
 */

/** No probability is stated above this, however strong the evidence (design decision, judgement). */
export const MOST_CERTAIN = 0.99;

/** Odds of a number of decibans. */
export function oddsOf(decibans: number): number {
  return 10 ** (decibans / 10);
}

/** Probability, 0 to 1, of a number of decibans. Exact at both ends, never NaN. */
export function probabilityOf(decibans: number): number {
  return 1 / (1 + 10 ** (-decibans / 10));
}

/** The probability people are told: never above 99 %. */
export function statedProbability(decibans: number): number {
  return Math.min(MOST_CERTAIN, probabilityOf(decibans));
}

/** How telling a weight is, in one word: the bands of the balance sheet, in decibans. */
const WEIGHT_WORDS = [
  { below: 5, word: 'a hint' },
  { below: 10, word: 'substantial' },
  { below: 20, word: 'strong' },
] as const;
type WeightWord = (typeof WEIGHT_WORDS)[number]['word'] | 'decisive';

/** The word for a weight, whichever way it points. */
export function weightWord(decibans: number): WeightWord {
  return WEIGHT_WORDS.find(({ below }) => Math.abs(decibans) < below)?.word ?? 'decisive';
}

/** Words for probabilities (our own scale, judgement). */
const PROBABILITY_WORDS = [
  { from: 0.9, word: 'almost certain' },
  { from: 0.7, word: 'likely' },
  { from: 0.45, word: 'about even' },
  { from: 0.2, word: 'possible' },
  { from: 0.05, word: 'unlikely' },
] as const;
type ProbabilityWord = (typeof PROBABILITY_WORDS)[number]['word'] | 'very unlikely';

export function probabilityWord(probability: number): ProbabilityWord {
  return PROBABILITY_WORDS.find(({ from }) => probability >= from)?.word ?? 'very unlikely';
}

/** A probability as people read it: the nearest 5 %, and never 0 or 100 %. */
export function probabilityText(probability: number): string {
  const percent = 5 * Math.round((100 * probability) / 5);
  if (percent <= 0) return 'under 5%';
  return percent >= 100 ? 'over 95%' : `about ${percent}%`;
}
