/** How likely it is that an owner can answer a question, by how people come to know such a thing. */
import type { FactBook } from '../facts/book.js';
import { type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { HOWS, type How } from '../facts/spec.js';
import { isTest } from './hypotheses.js';
import { KNOWS } from './knows-data.js';

/** A thing is heard or remembered, read off, measured or guessed; or somebody must get up and try it. */
type KnownKind = How | 'test';
export const KIND_IDS: readonly KnownKind[] = [...HOWS, 'test'];

/** What must be at hand to answer a number that nobody sees or hears. */
type Means = 'tape' | 'meter' | 'microphone';

/** A length takes a tape and a level a meter or a phone; what is measured besides is known to whoever has a microphone and looks at curves. */
function meansOf(id: FactId): Means | undefined {
  const spec = factSpec(id);
  if (
    spec.kind === 'file' ||
    spec.presupposes?.some((other) => isFactId(other) && meansOf(other) === 'microphone')
  )
    return 'microphone';
  if (spec.kind !== 'number' || spec.usually !== 'measured' || spec.unit === 'deg') return undefined;
  return spec.unit === 'm' ? 'tape' : spec.unit === 'dB' ? 'meter' : 'microphone';
}

/** False where it takes what this owner seems not to have: a meter that he could not read, a microphone of which nothing was told. */
export function isWithinReach({ answers }: FactBook, id: FactId): boolean {
  const means = meansOf(id);
  if (means === undefined || means === 'tape') return true;
  const tried = [...answers].filter(([other]) => meansOf(other) === means);
  return tried.some(([, answer]) => 'value' in answer) || (means === 'meter' && tried.length === 0);
}

/** It takes the very thing that the last question took in vain: something else is asked first. */
export function isTiring({ answers }: FactBook, id: FactId): boolean {
  const [last, answer] = [...answers].at(-1) ?? [];
  const means = meansOf(id);
  return last !== undefined && answer?.how === 'unknown' && means !== undefined && means === meansOf(last);
}

type Count = readonly [known: number, asked: number];

export interface KnowsCounts {
  readonly facts: Readonly<Partial<Record<FactId, Count>>>;
  readonly kinds: Readonly<Record<KnownKind, Count>>;
}

export const kindOf = (id: FactId): KnownKind => (isTest(id) ? 'test' : factSpec(id).usually);

/** What its kind tells about a fact counts as so many owners asked about it (judgement). */
const KIND_COUNTS_AS = 10;

/** What is usual counts as so many questions put to this very owner (judgement: owners differ much). */
const USUAL_COUNTS_AS = 3;

/**
 * Chance, 0 to 1, that this owner can answer. What is usual for the fact is the prior of a Beta distribution, and what
 * he could and could not answer so far of the same kind moves it: who has no tape at hand will not have one later.
 */
export function knownChance(book: FactBook, id: FactId): number {
  const kind = kindOf(id);
  let [known, asked] = [0, 0];
  for (const [other, answer] of book.answers) {
    if (kindOf(other) !== kind) continue;
    asked += 1;
    if ('value' in answer) known += 1;
  }
  return (USUAL_COUNTS_AS * usualChance(id) + known) / (USUAL_COUNTS_AS + asked);
}

/**
 * Chance that an owner can answer: the mean of a Beta distribution whose prior is the kind of the fact (Gelman et al.,
 * Bayesian Data Analysis, section 2.4, from memory). A fact never counted has the chance of its kind.
 */
export function usualChance(id: FactId, counts: KnowsCounts = KNOWS): number {
  const [kindKnown, kindAsked] = counts.kinds[kindOf(id)];
  const ofKind = kindAsked > 0 ? kindKnown / kindAsked : 0.5;
  const [known, asked] = counts.facts[id] ?? [0, 0];
  return (known + KIND_COUNTS_AS * ofKind) / (asked + KIND_COUNTS_AS);
}
