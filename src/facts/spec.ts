/**
 * What a fact is. The catalog (one file a family) is data of this shape; types, schema, questions,
 * help pages and listings all follow from it.
 */
import type { ComplaintId } from './complaints.js';

/** SI units a number fact is kept in. `1` is a plain ratio or count. */
export type Unit = 'm' | 'ms' | 'Hz' | 'dB' | 'deg' | '1' | 'kg/m2' | 'Pa s/m' | '1/m2' | 'W';

/** How an answer was obtained, from the most to the least trustworthy; `seen` is plain to see and weighs as `read`. */
export const HOWS = ['measured', 'read', 'seen', 'recalled', 'guessed'] as const;
export type How = (typeof HOWS)[number];

/** Topics of the conversation, in the order in which an adviser would take them. */
export const FAMILIES = [
  'complaint',
  'source',
  'speakers',
  'geometry',
  'placement',
  'upmix',
  'entries',
  'tone',
  'bass',
  'wiring',
  'room',
  'recording',
  'history',
  'tests',
] as const;
export type Family = (typeof FAMILIES)[number];

/** Facts that must hold before a question makes sense: id -> accepted choice values. */
type AskedWhen = Readonly<Record<string, readonly string[]>>;

interface BaseSpec {
  readonly family: Family;
  /** Two to four words for tables and review screens: "center driver layout". */
  readonly label: string;
  /** The question, read aloud in one breath: at most 25 words, one fact. */
  readonly ask: string;
  /** One short line under the question, at most 80 characters. */
  readonly hint: string;
  /** Why it is asked, in plain words. */
  readonly why: string;
  /** How an owner finds out, step by step. */
  readonly findOut: readonly string[];
  /** Minutes it takes a typical owner to answer well. */
  readonly minutes: number;
  /** How an unqualified answer was most likely obtained. */
  readonly usually: How;
  /** The question is asked only where every one of these facts is known to have one of the values. */
  readonly askedWhen?: AskedWhen;
  /** The question speaks of something that must exist: these are put before it where they can be, and it is not put where nobody knows them. */
  readonly presupposes?: readonly string[];
  /**
   * The question is never put, though an answer still counts, once one of these facts is known to have one of the values;
   * `unknown` where that nobody could tell it says that he cannot tell this either.
   */
  readonly pointlessWhen?: AskedWhen;
  /** The question is put only where one of these is complained of, or nothing yet. */
  readonly bearsOn?: readonly ComplaintId[];
}

export interface ChoiceSpec extends BaseSpec {
  readonly kind: 'choice';
  /** Value -> plain words. */
  readonly choices: Readonly<Record<string, string>>;
  /** Value -> words of the trade for it, understood wherever the value is; case, dashes and spaces do not count. */
  readonly alsoCalled?: Readonly<Record<string, readonly string[]>>;
  /** Value used when the answer is not known. */
  readonly assume?: { readonly value: string; readonly note: string };
  /** Value -> what it tells of other facts: the value of each. */
  readonly implies?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export interface NumberSpec extends BaseSpec {
  readonly kind: 'number';
  readonly unit: Unit;
  /** How the number is written for people; `length`, in meters unless told, follows the owner's unit system. */
  readonly written: 'length' | 'small-length' | 'plain';
  /** Anything outside cannot be right and is refused. */
  readonly possible: readonly [number, number];
  /** Anything outside is asked again, and told as a remark in a case file. */
  readonly plausible: readonly [number, number];
  /** Values that stand for the answers people give: used to weigh the question and to look for flips. */
  readonly typical: readonly number[];
  /** A count: fractions are refused. */
  readonly whole?: true;
  /** Words that stand for the sign, as in "30 cm left". */
  readonly sides?: { readonly plus: string; readonly minus: string };
  /**
   * Value used when unknown; `spread` is one standard deviation of its natural logarithm, and where it is 0, of the
   * value itself in its own unit.
   */
  readonly assume?: { readonly value: number; readonly spread: number; readonly note: string };
}

/** A measured response: the path of a plain text file beside the case. */
interface FileSpec extends BaseSpec {
  readonly kind: 'file';
}

export type FactSpec = ChoiceSpec | NumberSpec | FileSpec;

/** What is written of a fact: its family is said once a file, its kind and how it is written follow. */
type Written<Spec extends FactSpec> = Omit<Spec, 'family' | 'kind' | 'written'> &
  Partial<Pick<NumberSpec, 'written'>>;
type Completed<Spec> = Spec &
  (Spec extends { readonly choices: unknown }
    ? { readonly kind: 'choice' }
    : Spec extends { readonly unit: unknown }
      ? { readonly kind: 'number'; readonly written: NumberSpec['written'] }
      : { readonly kind: 'file' });

/** The facts of one topic. Keeps literal keys and choice values while checking the shape. */
export function family<
  const Name extends Family,
  const Facts extends Readonly<Record<string, Written<ChoiceSpec> | Written<NumberSpec> | Written<FileSpec>>>,
>(
  name: Name,
  facts: Facts,
): { readonly [Id in keyof Facts]: Completed<Facts[Id]> & { readonly family: Name } } {
  const completed = Object.entries(facts).map(([id, fact]) => {
    if ('choices' in fact) return [id, { family: name, kind: 'choice', ...fact }];
    const written = 'unit' in fact && fact.unit === 'm' ? 'length' : 'plain';
    if ('unit' in fact) return [id, { family: name, kind: 'number', written, ...fact }];
    return [id, { family: name, kind: 'file', ...fact }];
  });
  return Object.fromEntries(completed);
}
