/**
 * Complaints that several causes share: a leaky noisy-OR network of two layers (as in QMR-DT).
 * P(complaint j absent | causes) = (1 - leak_j) prod_i (1 - link_ij)^(c_i). Causes are independent before
 * the complaints are known, each with its own probability; after that they compete to explain them.
 */
import { bestCauses, enumerate } from './enumerate.js';

export interface NoisyOr {
  /** Probability of each cause before the complaints, 0 to 1. */
  readonly p: readonly number[];
  /** `links[i][j]`: chance that cause i, if true, makes complaint j, 0 to 1. */
  readonly links: readonly (readonly number[])[];
  /** Chance that complaint j appears with none of the causes, 0 to 1. */
  readonly leaks: readonly number[];
}

export interface Heard {
  readonly present: readonly number[];
  readonly absent: readonly number[];
}

/** Chances of what is heard: on the whole, and with each cause true or false. */
export interface Likelihoods {
  /** P(F+, F-). */
  readonly evidence: number;
  /** P(F+, F- | cause i true). */
  readonly ifTrue: readonly number[];
  /** P(F+, F- | cause i false). */
  readonly ifFalse: readonly number[];
  /** False where the sum was enumerated over the likeliest causes only. */
  readonly exact: boolean;
}

/** Inclusion-exclusion costs 2^|F+| and loses digits to cancellation: beyond these it gives way. */
const MOST_PRESENT = 10;
const LEAST_EVIDENCE = 1e-8;
/** A single likelihood may be smaller than the whole by the odds of the cause; below this its digits are gone. */
const LEAST_LIKELIHOOD = 1e-11;
/** How many causes are enumerated then: 2^12 states. */
const ENUMERATED = 12;
/** A cause is never held quite certain inside the sums, so that no likelihood is divided by zero. */
const MOST_SURE = 1 - 1e-12;

/**
 * Likelihoods of what is heard. Absent complaints are exact and cheap: they multiply the odds of cause i
 * by prod (1 - link_ij), and are taken first; the present ones follow by quickscore (Heckerman 1989) on
 * the probabilities so changed.
 */
export function likelihoods(net: NoisyOr, heard: Heard): Likelihoods {
  const silent = net.links.map((row) => product(heard.absent, (j) => 1 - at(row, j)));
  const quiet = product(heard.absent, (j) => 1 - at(net.leaks, j));
  const before = net.p.map((q) => Math.min(MOST_SURE, q));
  const survive = before.map((q, i) => 1 - q + q * at(silent, i));
  const p = before.map((q, i) => (q * at(silent, i)) / at(survive, i));
  const rest = presentLikelihoods({ ...net, p }, heard.present);
  const all = quiet * survive.reduce((a, b) => a * b, 1);
  return {
    evidence: all * rest.evidence,
    ifTrue: rest.ifTrue.map((v, i) => (all / at(survive, i)) * at(silent, i) * v),
    ifFalse: rest.ifFalse.map((v, i) => (all / at(survive, i)) * v),
    exact: rest.exact,
  };
}

function presentLikelihoods(net: NoisyOr, present: readonly number[]): Likelihoods {
  if (present.length <= MOST_PRESENT) {
    const quick = quickscore(net, present);
    const least = Math.min(...quick.ifTrue, ...quick.ifFalse);
    if (quick.evidence >= LEAST_EVIDENCE && least >= LEAST_LIKELIHOOD) return quick;
  }
  return enumerate(net, present, bestCauses(net, present, ENUMERATED));
}

/**
 * P(F+) = sum over subsets S of F+ of (-1)^|S| prod_{j in S} (1 - leak_j) prod_i [1 - p_i + p_i s_iS],
 * s_iS = prod_{j in S} (1 - link_ij). Causes without a link to F+ drop out.
 */
export function quickscore(net: NoisyOr, present: readonly number[]): Likelihoods {
  const linked = net.p.flatMap((_, i) => (present.some((j) => link(net, i, j) > 0) ? [i] : []));
  const size = 2 ** present.length;
  const signed = new Float64Array(size).fill(1);
  const stay = linked.map(() => new Float64Array(size).fill(1));
  for (let s = 1; s < size; s++) {
    const bit = 31 - Math.clz32(s);
    const [before, j] = [s - 2 ** bit, at(present, bit)];
    signed[s] = -at(signed, before) * (1 - at(net.leaks, j));
    linked.forEach((i, k) => {
      const row = at(stay, k);
      row[s] = at(row, before) * (1 - link(net, i, j));
    });
  }
  let evidence = 0;
  const yes = new Float64Array(linked.length);
  const no = new Float64Array(linked.length);
  const after = new Float64Array(linked.length + 1);
  for (let s = 0; s < size; s++) {
    after[linked.length] = 1;
    for (let k = linked.length - 1; k >= 0; k--) after[k] = at(after, k + 1) * bracket(k, s);
    evidence += at(signed, s) * at(after, 0);
    let before = at(signed, s);
    for (let k = 0; k < linked.length; k++) {
      const others = before * at(after, k + 1);
      yes[k] = at(yes, k) + others * at(at(stay, k), s);
      no[k] = at(no, k) + others;
      before *= bracket(k, s);
    }
  }
  const place = new Map(linked.map((i, k) => [i, k]));
  const spread = (of: Float64Array): number[] =>
    net.p.map((_, i) => {
      const k = place.get(i);
      return k === undefined ? evidence : at(of, k);
    });
  return { evidence, ifTrue: spread(yes), ifFalse: spread(no), exact: true };

  function bracket(k: number, s: number): number {
    const p = at(net.p, at(linked, k));
    return 1 - p + p * at(at(stay, k), s);
  }
}

/** What the complaints add to each cause, in decibans: 10 log10 of P(heard | true) / P(heard | false). */
export function sharedDb(net: NoisyOr, heard: Heard): number[] {
  const { ifTrue, ifFalse } = likelihoods(net, heard);
  return ifTrue.map((yes, i) => 10 * Math.log10(yes / at(ifFalse, i)));
}

/**
 * Chance that none of the causes makes present complaint j, given all that is heard: the leak did it while
 * every cause kept silent on j, so leak_j / (1 - leak_j) P(F+ without j, F- with j) / P(F+, F-).
 */
export function leakShare(net: NoisyOr, heard: Heard, j: number): number {
  const leak = at(net.leaks, j);
  const without = {
    present: heard.present.filter((k) => k !== j),
    absent: [...heard.absent, j],
  };
  const odds = leak / (1 - leak);
  return Math.min(1, (odds * likelihoods(net, without).evidence) / likelihoods(net, heard).evidence);
}

function link(net: NoisyOr, i: number, j: number): number {
  return at(at(net.links, i), j);
}
function product(indices: readonly number[], of: (j: number) => number): number {
  return indices.reduce((all, j) => all * of(j), 1);
}
/** An entry that must be there: indices here come from the arrays themselves. */
function at<T>(list: ArrayLike<T>, index: number): T {
  return list[index] as T;
}
