/** Sets of facts as bits: an audit joins and compares them thousands of times. */
import { FACT_IDS, type FactId } from '../facts/catalog.js';

export type FactSet = number[];

/** Bits of one number. */
const WORD_BITS = 32;
const WORDS = Math.ceil(FACT_IDS.length / WORD_BITS);
const PLACES = new Map(FACT_IDS.map((id, place) => [id, place]));

export function factSet(ids: readonly FactId[] = []): FactSet {
  const set = new Array<number>(WORDS).fill(0);
  for (const id of ids) {
    const place = PLACES.get(id) ?? 0;
    const word = Math.floor(place / WORD_BITS);
    set[word] = (set[word] as number) | (1 << (place % WORD_BITS));
  }
  return set;
}

/** Adds all of `more` to `set`. */
export function addAll(set: FactSet, more: FactSet): void {
  for (let word = 0; word < WORDS; word += 1) set[word] = (set[word] as number) | (more[word] as number);
}

/** True where the two have a fact in common. */
export function overlap(a: FactSet, b: FactSet): boolean {
  for (let word = 0; word < WORDS; word += 1)
    if (((a[word] as number) & (b[word] as number)) !== 0) return true;
  return false;
}
