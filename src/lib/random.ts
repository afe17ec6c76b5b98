/**
 * Uniform numbers from 0 up to, not including, 1 from a seed: the mulberry32 generator (public domain), 32 bits of
 * state. The same on every machine.
 */
export function uniformFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A normal deviate, mean 0 and standard deviation 1 (Box and Muller, textbook). */
export const normalBy = (uniform: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
