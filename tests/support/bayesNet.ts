/** Small networks of yes/no variables: enumerated exactly, slow, obvious, independent of the program. */
import { type Heard, likelihoods, type NoisyOr } from '../../src/reasoning/noisy-or.js';

export type State = Readonly<Record<string, boolean>>;
export interface Node {
  readonly name: string;
  /** P(yes | the variables before it). */
  readonly p: (state: State) => number;
}

/** P(evidence) and P(query yes | evidence). */
export function enumerateNet(
  nodes: readonly Node[],
  evidence: State,
  query: string,
): { evidence: number; posterior: number } {
  let [total, yes] = [0, 0];
  const walk = (k: number, state: State, weight: number): void => {
    const node = nodes[k];
    if (!node) {
      total += weight;
      if (state[query]) yes += weight;
      return;
    }
    for (const value of [true, false]) {
      const given = evidence[node.name];
      if (given !== undefined && given !== value) continue;
      const p = node.p(state);
      walk(k + 1, { ...state, [node.name]: value }, weight * (value ? p : 1 - p));
    }
  };
  walk(0, {}, 1);
  return { evidence: total, posterior: yes / total };
}

/** P(cause i | F+, F-). */
export function posteriors(net: NoisyOr, heard: Heard): number[] {
  const { ifTrue, ifFalse } = likelihoods(net, heard);
  return net.p.map((p, i) => {
    const [yes, no] = [p * (ifTrue[i] ?? 0), (1 - p) * (ifFalse[i] ?? 0)];
    return yes + no > 0 ? yes / (yes + no) : p;
  });
}

/** Decibans of a probability: minus infinity at 0, infinity at 1. */
export const decibansOf = (probability: number): number => 10 * Math.log10(probability / (1 - probability));
