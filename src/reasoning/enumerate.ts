/**
 * The noisy-OR network by brute force over a few causes: for many present complaints, or such unlikely
 * ones that inclusion-exclusion loses its digits. Only sums of positive terms, so nothing cancels.
 */
import type { Likelihoods, NoisyOr } from './noisy-or.js';

/** The `count` likeliest causes among those that can make one of the present complaints. */
export function bestCauses(net: NoisyOr, present: readonly number[], count: number): number[] {
  const reach = (i: number): number =>
    (net.p[i] ?? 0) * Math.max(0, ...present.map((j) => net.links[i]?.[j] ?? 0));
  return net.p
    .map((_, i) => i)
    .filter((i) => reach(i) > 0)
    .sort((a, b) => reach(b) - reach(a) || a - b)
    .slice(0, count);
}

/**
 * Likelihoods of the present complaints. The states of the chosen causes are summed; every other cause is
 * folded into the leaks at its own probability (they can still explain, but not compete exactly), and its
 * own two likelihoods are found by holding it true or false within that.
 */
export function enumerate(net: NoisyOr, present: readonly number[], chosen: readonly number[]): Likelihoods {
  const count = net.p.length;
  const stays = (i: number): number[] => present.map((j) => 1 - (net.links[i]?.[j] ?? 0));
  const inside = new Set(chosen);
  const outside = net.p.flatMap((p, i) => {
    const stay = stays(i);
    return !inside.has(i) && stay.some((v) => v < 1) ? [{ i, p, stay }] : [];
  });
  /** P(complaint stays away) with no chosen cause true. */
  const quiet = present.map((j, c) =>
    outside.reduce((q, o) => q * (1 - o.p + o.p * (o.stay[c] ?? 1)), 1 - (net.leaks[j] ?? 0)),
  );
  const folded = outside.map((o) =>
    o.stay.map((s) => ({ yes: s / (1 - o.p + o.p * s), no: 1 / (1 - o.p + o.p * s) })),
  );
  let evidence = 0;
  const yes = new Array<number>(count).fill(0);
  const no = new Array<number>(count).fill(0);
  const state = new Array<boolean>(chosen.length).fill(false);

  const leaf = (weight: number, silent: readonly number[]): void => {
    const likelihood = silent.reduce((product, q) => product * (1 - q), weight);
    evidence += likelihood;
    chosen.forEach((i, k) => {
      const side = state[k] ? yes : no;
      const p = net.p[i] ?? 0;
      side[i] = (side[i] ?? 0) + likelihood / (state[k] ? p : 1 - p);
    });
    outside.forEach((o, k) => {
      let [withIt, withoutIt] = [weight, weight];
      silent.forEach((q, c) => {
        const factor = folded[k]?.[c];
        withIt *= 1 - q * (factor?.yes ?? 1);
        withoutIt *= 1 - q * (factor?.no ?? 1);
      });
      yes[o.i] = (yes[o.i] ?? 0) + withIt;
      no[o.i] = (no[o.i] ?? 0) + withoutIt;
    });
  };
  const walk = (k: number, weight: number, silent: readonly number[]): void => {
    const i = chosen[k];
    if (i === undefined) {
      leaf(weight, silent);
      return;
    }
    const p = net.p[i] ?? 0;
    state[k] = false;
    walk(k + 1, weight * (1 - p), silent);
    state[k] = true;
    const stay = stays(i);
    walk(
      k + 1,
      weight * p,
      silent.map((q, c) => q * (stay[c] ?? 1)),
    );
  };
  walk(0, 1, quiet);
  const linked = new Set([...chosen, ...outside.map((o) => o.i)]);
  const spread = (side: readonly number[]): number[] =>
    side.map((value, i) => (linked.has(i) ? value : evidence));
  return { evidence, ifTrue: spread(yes), ifFalse: spread(no), exact: outside.length === 0 };
}
