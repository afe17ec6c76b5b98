import { normalBy, uniformFrom } from '../src/lib/random.js';

/** Random numbers from a seed, the same on every machine: what is drawn from them can be drawn again. */
export interface Random {
  /** Uniform from 0 up to, not including, 1. */
  next(): number;
  between(low: number, high: number): number;
  chance(p: number): boolean;
  /** Normal deviate, mean 0, standard deviation 1. */
  normal(): number;
  pick<T>(list: readonly T[]): T;
  /** One of the keys, in proportion to its weight. */
  weighted<K extends string>(weights: Readonly<Record<K, number>>): K;
  shuffled<T>(list: readonly T[]): T[];
}

export function randomFrom(seed: number): Random {
  const next = uniformFrom(seed);
  const pick = <T>(list: readonly T[]): T => {
    const drawn = list[Math.floor(next() * list.length)];
    if (drawn === undefined) throw new RangeError('nothing to pick from');
    return drawn;
  };
  return {
    next,
    pick,
    between: (low, high) => low + (high - low) * next(),
    chance: (p) => next() < p,
    normal: () => normalBy(next),
    weighted: (weights) => {
      const entries = Object.entries(weights) as [keyof typeof weights, number][];
      const total = entries.reduce((sum, [, weight]) => sum + weight, 0);
      let left = next() * total;
      for (const [key, weight] of entries) {
        left -= weight;
        if (left < 0) return key;
      }
      return pick(entries)[0];
    },
    shuffled: (list) => {
      const out = [...list];
      for (let i = out.length - 1; i > 0; i -= 1) {
        const j = Math.floor(next() * (i + 1));
        [out[i], out[j]] = [out[j] as (typeof out)[number], out[i] as (typeof out)[number]];
      }
      return out;
    },
  };
}
