/** Exact enumeration of a small network of yes/no variables: slow, obvious, independent of the program. */
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
