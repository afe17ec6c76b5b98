/** What a cause is: one file of data with its rules, confirming tests and remedies. */
import type { Choice, ChoiceFactId, FactId, NumberFactId, TestId } from '../facts/catalog.js';
import type { ComplaintId } from '../facts/complaints.js';
import type { ConstraintId } from '../facts/constraints.js';
import { actRules, type CuringAct } from './acts-cure.js';
import type { CauseId } from './cause-ids.js';
import type { CautionId } from './cautions.js';
import { type Bound, clearingRules } from './cleared.js';
import {
  atLeast,
  atMost,
  type Condition,
  type LimitVar,
  type NumberVar,
  type VarId,
  variablesOf,
} from './condition.js';
import type { DerivedNumberId } from './derived/table.js';
import type { LimitId } from './limits.js';
import { LIMITS } from './limits.js';
import type { SourceId } from './sources.js';
import { type AnswerWeight, answerWeight, type Strength, type Tells } from './strength.js';

/** How bad it is if true: defined once, printed with the word. */
export const SEVERITIES = {
  taste: 'nothing is broken; a matter of liking',
  mild: 'noticed in direct comparison',
  clear: 'noticed by everyone who listens for it',
  severe: 'speech or image is lost at one or more seats',
  broken: 'something does not work at all',
} as const;
export type Severity = keyof typeof SEVERITIES;

/**
 * How strongly items of one evidence group repeat each other (rho): the same quantity 1, the same
 * mechanism 0.7, remarks of one session 0.3, independent measurements 0.
 */
export const KINSHIP = {
  'same-quantity': 1,
  'same-mechanism': 0.7,
  'same-session': 0.3,
  independent: 0,
} as const;
export type Kinship = keyof typeof KINSHIP;

/** The weight comes from a computed deviation: r = value / clear limit, W = 20 log10 r, clamped. */
export interface Deviation {
  readonly kind: 'deviation';
  readonly of: NumberVar;
  readonly limit: LimitVar | DerivedNumberId;
  /** True when small values are bad: r = limit / value. */
  readonly lowIsBad: boolean;
  /** Count only what speaks for, or only what speaks against, the cause. */
  readonly only?: 'for' | 'against';
  /** Scales the deviation by how much of it can be heard (0 to 1), e.g. the shared content. */
  readonly heard?: NumberVar;
  /** Bound of |weight| in decibans when less than the general 20 dB is justified. */
  readonly maxDb?: number;
}
/**
 * The weight comes from a told number against the one that a mechanism makes in this very case: for the cause where
 * they agree within what both may be off, against it where they do not, or where it makes none (0).
 */
export interface Match {
  readonly kind: 'match';
  readonly of: NumberVar;
  readonly with: DerivedNumberId;
  /** Disagreement says nothing where what was measured need not show the cause. */
  readonly only?: 'for';
}
type Weigh = Deviation | AnswerWeight | Match;

/**
 * Two outcomes in words; where it cannot be told, the program names what is missing. Templates may name any variable of the rule in braces: `{layoutDipDb}` or
 * `{limit}` (the limit with unit); the renderer fills value and unit in the owner's units.
 */
interface Says {
  readonly yes: string;
  readonly no: string;
}

export interface Rule {
  /** Unique within its cause, kebab-case. */
  readonly id: string;
  /** Evidence group: the same quantity, measurement or remark. */
  readonly group: string;
  /** Where this is settled no, the rule does not bear on the case at all. */
  readonly applies?: Condition;
  readonly when: Condition;
  readonly weigh: Weigh;
  readonly says: Says;
  /** The physics or the reason of the trade, one or two sentences. */
  readonly because: string;
  readonly source: SourceId;
  /** Not written in the file of its cause as it is, but made: of a tell-tale, of an act, or as for every cause. */
  readonly madeFrom?: 'telltale' | 'act' | 'listening';
}

/** A remark that is typical of a cause, or that speaks against it; that it was not made says nothing. */
export interface Telltale<G extends string = string> extends Says {
  readonly id: string;
  readonly when: Condition;
  readonly telling: Strength;
  readonly speaks?: 'against';
  readonly because: string;
  /** The group of a rule of the same remark; otherwise the remarks on one fact are a group of their own. */
  readonly group?: G;
}

/** A fact after a remedy: as set, moved by so much, times so much, or like another value. Numbers in SI units. */
export type Setting =
  | number
  | string
  | { readonly by: number }
  | { readonly times: number }
  | { readonly like: NumberVar };
/** What a remedy makes smaller, and the facts as they stand after it: it is offered only where this gains. */
interface Gain {
  readonly of: DerivedNumberId;
  readonly to: { readonly [Id in ChoiceFactId]?: Choice<Id> } & {
    readonly [Id in NumberFactId]?: Exclude<Setting, string>;
  };
}

export type Cost = 'free' | 'low' | 'medium' | 'high';
export interface Remedy {
  readonly id: string;
  /** The act that it is, when owners do it as well without being told: doing it says what the remedy would. */
  readonly act?: CuringAct;
  /** Not proposed where one of these must not be done; what costs something needs a purchase anyway. */
  readonly forbiddenBy?: readonly ConstraintId[];
  readonly title: string;
  /** The title where the fault was seen, with its numbers; templates as in `Says`. */
  readonly now?: string;
  /** Shown only where this holds (or is unknown). */
  readonly when?: Condition;
  readonly gain?: Gain;
  /** Where this holds the fault itself was seen, not inferred: it is mended first, whatever else leads. */
  readonly seen?: Condition;
  readonly steps: readonly [string, ...string[]];
  readonly minutes: number;
  readonly cost: Cost;
  /** It cannot be undone. */
  readonly final?: true;
  /** What will change; templates as in `Says`, and `{after}` for the value of `gain` after it. */
  readonly expect: string;
  /** How to hear or measure that it worked. */
  readonly verify: string;
  readonly cautions: readonly CautionId[];
  /** Facts whose answers may be out of date after this remedy. */
  readonly changes: readonly FactId[];
  /** How sure the advice cures the cause if the cause is true, 0 to 1. */
  readonly cures: number;
}

/** As it is written in the file of a cause: free, where no cost is told. */
export type WrittenRemedy = Omit<Remedy, 'cost'> & Partial<Pick<Remedy, 'cost'>>;

export interface Confirm {
  readonly test: TestId;
  /** Outcomes that confirm the cause; the others speak against it or leave it open. */
  readonly outcomes: readonly string[];
  /** Answers with which the test can show nothing of this cause: a tape sees no latency. */
  readonly unless?: Readonly<Partial<Record<ChoiceFactId, readonly string[]>>>;
}
/** Typed so that a test's outcome must be one of its choices. */
export const confirmedBy = <T extends TestId & ChoiceFactId>(test: T, ...outcomes: Choice<T>[]): Confirm => ({
  test,
  outcomes,
});

/** What an adviser asks in one go: the first thing first, each only while it can still settle the group. */
export interface Block {
  readonly group: string;
  readonly facts: readonly FactId[];
}

/** Drawings that a page can set beside a cause. */
const PICTURES = [
  'room-above',
  'room-side',
  'off-axis',
  'arrivals',
  'comb',
  'stage',
  'screen',
  'tone',
] as const;
export type Picture = (typeof PICTURES)[number];

export interface Cause {
  readonly id: CauseId;
  readonly title: string;
  readonly severity: Severity;
  /** Prior in decibans (10 log10 of the odds) where the cause can exist at all, judgement on a 3 dB grid. */
  readonly priorDb: number;
  /** Why so common, in a sentence. */
  readonly priorBecause: string;
  /** Where it was counted; our judgment unless told. */
  readonly priorSource?: SourceId;
  /** What happens and what the owner hears, in plain words. */
  readonly story: string;
  /** When it is wrongly blamed. */
  readonly notWhen: string;
  /** What people try for it that does not help, and why; told so that nobody has to find out again. */
  readonly inVain?: string;
  /** Settled no: the cause is not applicable to this system. */
  readonly applies?: Condition;
  /** Share of home systems in which `applies` holds, 0 to 1 (judgement): counts while nobody has told. */
  readonly appliesIn?: number;
  /** Chance that the cause, if true, makes this complaint. */
  readonly links: Partial<Record<ComplaintId, number>>;
  /** The drawings that tell most about it, best first. */
  readonly pictures?: readonly Picture[];
  readonly groups: Readonly<Record<string, Kinship>>;
  /** Questions that settle one group together: asked one after the other while the cause stands among the first. */
  readonly block?: Block;
  readonly rules: readonly [Rule, ...Rule[]];
  readonly confirm: readonly [Confirm, ...Confirm[]];
  /** Acts that are no remedy of it, with how surely they cure it, 0 to 1: they tell of the cause all the same. */
  readonly acts?: Readonly<Partial<Record<CuringAct, number>>>;
  /** A matter of one listener, or of what one player sends, so that it may well go along with that. */
  readonly boundTo?: Bound;
  /** In order: free and reversible first. */
  readonly remedies: readonly [Remedy, ...Remedy[]];
}

/** A cause whose rules may only use its own groups; its tell-tales become rules like the others. */
export function defineCause<const G extends Readonly<Record<string, Kinship>>>({
  telltales = [],
  ...cause
}: Omit<Cause, 'groups' | 'rules' | 'remedies'> & {
  readonly groups: G;
  readonly rules: readonly [Rule & { group: keyof G & string }, ...(Rule & { group: keyof G & string })[]];
  readonly telltales?: readonly Telltale<keyof G & string>[];
  readonly remedies: readonly [WrittenRemedy, ...WrittenRemedy[]];
}): Cause {
  const told = telltales.map(remarkRule);
  const written = [...cause.rules, ...told];
  const read = new Set(written.flatMap((rule) => variablesOf(rule.when)));
  const remarks = [...told, ...actRules(cause, written), ...clearingRules(read, cause.boundTo)];
  const own = remarks.filter(({ group }) => !Object.hasOwn(cause.groups, group));
  const groups = Object.fromEntries(own.map(({ group }) => [group, 'same-quantity' as const]));
  const [remedy, ...remedies] = cause.remedies.map((each): Remedy => ({ cost: 'free', ...each }));
  return {
    ...cause,
    groups: { ...cause.groups, ...groups },
    rules: [...cause.rules, ...remarks],
    remedies: [remedy as Remedy, ...remedies],
  };
}

function remarkRule({ telling, speaks, ...words }: Telltale): Rule {
  return answers({
    group: variablesOf(words.when)[0] as string,
    ...words,
    tells: { yes: telling, ...(speaks ? { against: true } : {}) },
    madeFrom: 'telltale',
  });
}

type Written<G extends string> = Omit<Rule, 'when' | 'weigh' | 'says' | 'group'> &
  Says & { readonly group: G };
/** A rule whose condition and weight are one computed deviation against the clear grade of a limit. */
export function deviates<const G extends string>({
  of,
  limit: bound,
  only,
  heard,
  maxDb,
  yes,
  no,
  ...rule
}: Written<G> &
  Pick<Deviation, 'of' | 'only' | 'heard' | 'maxDb'> & {
    readonly limit: LimitId | { readonly computed: DerivedNumberId; readonly lowIsBad?: boolean };
  }): Rule & { readonly group: G } {
  const isTable = typeof bound === 'string';
  const lowIsBad = isTable ? 'lowIsBad' in LIMITS[bound] : (bound.lowIsBad ?? false);
  const limit = isTable ? (`limit.${bound}.clear` as const) : bound.computed;
  const side = (isTable ? bound : { other: bound.computed }) as never;
  const when = lowIsBad ? atMost(of, side) : atLeast(of, side);
  const options = { ...(only && { only }), ...(heard && { heard }), ...(maxDb !== undefined && { maxDb }) };
  return { ...rule, says: { yes, no }, when, weigh: { kind: 'deviation', of, limit, lowIsBad, ...options } };
}
/** A rule that weighs an answer, by how telling each of its outcomes is; common practice where no source is told. */
export function answers<const G extends string>({
  when,
  tells,
  yes,
  no,
  ...rule
}: Omit<Written<G>, 'source'> &
  Pick<Partial<Rule>, 'source'> &
  Pick<Rule, 'when'> & { readonly tells: Tells }): Rule & { readonly group: G } {
  return { source: 'practice', ...rule, says: { yes, no }, when, weigh: answerWeight(tells) };
}

export function ruleVariables(rule: Rule): VarId[] {
  const weigh = rule.weigh;
  if (weigh.kind === 'match') return [weigh.of, weigh.with];
  return weigh.kind === 'deviation' ? [weigh.of, ...(weigh.heard ? [weigh.heard] : [])] : [];
}
