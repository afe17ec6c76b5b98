/**
 * What a lexicon is: the words people use for a fact and its choices, kept beside the catalog and loaded only where
 * free words are read. Phrases are separated by semicolons; `reading/pattern.ts` says how one is written.
 */
import type { Outcome } from '../acts.js';
import type { Choice, ChoiceFactId, TestId } from '../catalog.js';
import type { ComplaintId } from '../complaints.js';

/** Phrases separated by semicolons. */
export type Phrases = string;

/** One frame around each of several things. */
export const framed = (things: readonly string[], frame: (thing: string) => Phrases): Phrases =>
  things.map(frame).join('; ');

export type ChoiceWords = {
  readonly [Id in ChoiceFactId]?: { readonly [Value in Choice<Id>]?: Phrases };
};

interface Heard {
  /** Said when it is heard. A denial in front of it makes it absent. */
  readonly heard: Phrases;
  /** Said when it is not heard. */
  readonly absent?: Phrases;
}
export type ComplaintWords = { readonly [Id in ComplaintId]?: Heard };

/** What came of an act; `idle` is said of something else, and passed over. */
export type Came = Outcome | 'idle';
type ActWords = Readonly<Record<string, Phrases>>;

/** A home test told as what was done and what came of it: the act in one phrase, the outcome before or behind it. */
type TestWords = {
  readonly [Id in TestId]?: {
    readonly act: Phrases;
    readonly outcome: { readonly [Result in Outcome]?: Choice<Id> };
    /** Outcomes of this very test, looked for behind the act before the general ones. */
    readonly after?: { readonly [Value in Choice<Id>]?: Phrases };
  };
};

export interface FamilyWords {
  readonly choices?: ChoiceWords;
  readonly complaints?: ComplaintWords;
  readonly tests?: TestWords;
  readonly acts?: ActWords;
}
