/** What the computed facts know of one book, for charts: the same models that the rules are judged by. */

import { createCore } from '../../compute/core.js';
import type { Reader } from '../../compute/reader.js';
import type { FactBook, UnitSystem } from '../../facts/book.js';
import { type FactId, factSpec } from '../../facts/catalog.js';
import { factText, listText } from '../words.js';

export interface Known<T> {
  readonly value: T;
  /** Facts that stand at what is usual, with the value taken. */
  readonly assumed: ReadonlyMap<FactId, number | string>;
}

/** undefined where facts are missing, or where the thing does not exist in this system. */
export type Ask = <T>(model: (r: Reader<FactId>) => T) => Known<T> | undefined;

export function knownIn(book: FactBook): Ask {
  const core = createCore(book);
  return <T>(model: (r: Reader<FactId>) => T) => {
    const outcome = core.evaluate(model);
    if (outcome.value === undefined) return undefined;
    const assumed = [...outcome.uses].flatMap(([id, { value, doubt }]) =>
      'spread' in doubt ? [[id, value] as const] : [],
    );
    return { value: outcome.value as T, assumed: new Map(assumed) };
  };
}

/** "Assumed: ear height 1.05 m (3 ft 5 in), …"; nothing where all was told. */
export function assumedNotes(units: UnitSystem, ...known: readonly (Known<unknown> | undefined)[]): string[] {
  const all = new Map(known.flatMap((each) => [...(each?.assumed ?? [])]));
  if (all.size === 0) return [];
  const parts = [...all].map(([id, value]) => `${factSpec(id).label} ${factText(id, value, units)}`);
  return [`Not told and taken as usual: ${listText(parts)}.`];
}
