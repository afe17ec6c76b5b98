/**
 * Evidence that repeats itself. Items of one group (the same quantity, mechanism or session) are not
 * independent, so they may not simply be added.
 */

/**
 * Sum of `count` weights with common correlation `rho` (0 to 1): sum / (1 + (count - 1) rho), exact for
 * equally informative Gaussian evidence.
 */
export function correlatedSum(sum: number, count: number, rho: number): number {
  return sum / (1 + (count - 1) * rho);
}

/**
 * One side of a group (all weights of one sign, as magnitudes). The formula above holds for equally
 * strong items; beside a strong item a weak one would lower the sum, as if support were an objection. So
 * the best of its values over the strongest 1, 2, ... items is taken: the formula itself for equal
 * items, the largest item for rho 1, the plain sum for rho 0.
 */
function sideDb(magnitudes: readonly number[], rho: number): number {
  let sum = 0;
  let best = 0;
  [...magnitudes]
    .sort((a, b) => b - a)
    .forEach((magnitude, index) => {
      sum += magnitude;
      best = Math.max(best, correlatedSum(sum, index + 1, rho));
    });
  return best;
}

/**
 * Weight of a group in decibans. Both sides are discounted on their own and netted; where the plain sum
 * is nearer to zero it bounds the result, and where the two disagree about the direction the group is in
 * conflict and says nothing. Order does not matter, signs are symmetric, and the result never exceeds
 * the plain sum.
 */
export function groupDb(weights: readonly number[], rho: number): number {
  if (weights.length === 1) return weights[0] as number;
  const sideOf = (sign: 1 | -1): number[] => weights.map((w) => sign * w).filter((w) => w > 0);
  const net = sideDb(sideOf(1), rho) - sideDb(sideOf(-1), rho);
  const plain = weights.reduce((sum, w) => sum + w, 0);
  if (net * plain <= 0) return 0;
  return Math.sign(net) * Math.min(Math.abs(net), Math.abs(plain));
}
