/**
 * The report: plain JSON, the only input of every renderer. The keys that stand first in each object are the
 * contract with other programs; what follows under "for renderers" may grow. All texts are finished words in the
 * owner's units; text of the owner himself (`title`, `words`, `notes`, seat names) is free of control characters
 * but not escaped for any format: each renderer escapes it. No number is NaN or infinite; what is not known is null.
 *
 * Charts are not part of it: they are drawn from the audit and go to the HTML renderer beside the report.
 */
import type { UnitSystem } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { ComplaintId } from '../facts/complaints.js';
import type { Unit } from '../facts/spec.js';
import type { PlanStep } from '../reasoning/plan.js';
import type { Verdict } from '../reasoning/rank.js';
import type { Remedy, Severity } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { Outcome } from '../rules/evidence.js';
import type { Limit, LimitId } from '../rules/limits.js';
import type { Mark, Source, SourceId } from '../rules/sources.js';
import type { seamlessSwitch } from './seamless.js';

export interface Report {
  readonly format: 'center-audit/report';
  readonly version: 1;
  readonly verdict: ReportVerdict;
  /** Every cause, most probable first. */
  readonly causes: readonly ReportCause[];
  readonly plan: readonly ReportStep[];
  readonly seats: readonly ReportSeat[];
  /** What the owner hears. */
  readonly complaints: readonly ReportComplaint[];
  readonly seamlessSwitch: ReturnType<typeof seamlessSwitch>;
  readonly unknown: readonly ReportUnknown[];
  readonly assumed: readonly ReportAssumed[];
  readonly contradictions: readonly ReportContradiction[];
  /** Every caution of the plan once; each also stands beside its step. */
  readonly cautions: readonly string[];

  // for renderers
  readonly title: string | null;
  /** The complaint in the owner's own words. */
  readonly words: string | null;
  readonly notes: readonly string[];
  readonly units: UnitSystem;
  readonly told: readonly ReportTold[];
  /** Complaints asked about and not heard. */
  readonly notHeard: readonly { readonly id: ComplaintId; readonly title: string }[];
  /** What was done, and what it did, in the order told. */
  readonly trials: readonly ReportTrial[];
  /** The trouble is gone: what settled it, empty when that was not told; null while it is not gone. */
  readonly solvedBy: readonly string[] | null;
  /** Labels of the values taken as usual behind each column of the seats. */
  readonly seatsAssumed: SeatsAssumed;
  /** What a change that stands made different since the trouble was heard; null where nothing did. */
  readonly since: ReportSince | null;
  readonly next: ReportNext;
  /** Answers that a remedy already tried may have changed. */
  readonly askAgain: readonly { readonly fact: FactId; readonly label: string }[];
  /** Checked and fine: each with the strongest argument against it. */
  readonly fine: readonly ReportAside[];
  /** Does not exist in this system. */
  readonly notApplicable: readonly ReportAside[];
  /** Could not be judged: own facts are all unknown. */
  readonly cannotTell: readonly ReportAside[];
  /** What could not be computed because the facts cannot be true together. */
  readonly remarks: readonly string[];
  readonly sources: readonly ReportSource[];
  readonly glossary: readonly { readonly term: string; readonly meaning: string }[];
}

export interface ReportVerdict {
  /** What is wrong, without advice. */
  readonly headline: string;
  /** Word and nearest 5 %: "likely, about 85%". */
  readonly confidence: string;
  readonly leader: CauseId;
  readonly undecided: boolean;

  // for renderers
  /** Plain sentence on how sure this is and why. */
  readonly because: string;
  /** What to do first, as one sentence; null when there is nothing to do. */
  readonly first: string | null;
  /** Two or three causes that remain when undecided, leader first; the leader alone when decided. */
  readonly contenders: readonly Pick<ReportCause, 'id' | 'title' | 'probability' | 'confidence'>[];
  /** Answers and tests that tell the contenders apart, best first; empty when decided. */
  readonly separatedBy: readonly ReportSeparator[];
}

export interface ReportSeparator {
  readonly kind: 'question' | 'test';
  readonly fact: FactId;
  readonly label: string;
  readonly causes: readonly [CauseId, ...CauseId[]];
  readonly minutes: number;
  /** "It tells A and B apart." */
  readonly text: string;
  /** The question, or the name of the home test. */
  readonly title: string;
  /** How it is done, in one paragraph. */
  readonly how: string;
  readonly cautions: readonly string[];
}

export interface ReportCause {
  readonly id: CauseId;
  readonly title: string;
  /** Never above 0.99. */
  readonly probability: number;
  /** After the temperature, not capped: priorDb + groups + sharedDb, exactly. */
  readonly decibans: number;
  readonly verdict: Verdict;
  readonly severity: Severity;
  /** Every rule that bears on the case, strongest first, unknown ones last. */
  readonly evidence: readonly ReportEvidence[];
  readonly remedies: readonly ReportRemedy[];

  // for renderers
  /** "likely, about 85%" */
  readonly confidence: string;
  readonly severityText: string;
  /** What happens and what the owner hears. */
  readonly story: string;
  /** Why its most telling finding counts; empty where nothing speaks for it. */
  readonly because: string;
  /** The one or two things that carry the figure. */
  readonly carriedBy: string;
  readonly priorDb: number;
  /** The prior in words: "before anything was told: unlikely, about 10%". */
  readonly priorText: string;
  readonly groups: readonly ReportGroup[];
  readonly sharedDb: number;
  readonly sharedText: string;
  /** Open facts that would settle its unknown rules. */
  readonly open: readonly FactId[];
  readonly confirm: readonly ReportConfirm[];
  /** Shown in full by renderers: the leader, the contenders and whatever is possible. */
  readonly place: CausePlace;
}

/** One line of the balance sheet: what the items of a group add together, after the temperature. */
export interface ReportGroup {
  readonly id: string;
  readonly title: string;
  readonly decibans: number;
  /** Ids of the rules in it. */
  readonly rules: readonly string[];
  /** Why the line is not the plain sum of its items; empty when it is. */
  readonly note: string;
}

export interface ReportEvidence {
  readonly rule: string;
  /** After the temperature, on its own: positive speaks for the cause. Within a group items are not added. */
  readonly decibans: number;
  readonly text: string;
  readonly facts: readonly FactId[];
  readonly value: number | null;
  readonly threshold: number | null;
  readonly unit: Unit | null;
  readonly source: string;
  readonly assumed: boolean;

  // for renderers
  readonly outcome: Outcome;
  /** A rule may fire and still speak against the cause: show this, not the outcome. */
  readonly speaks: 'for' | 'against' | 'neither';
  /** "strong, for", "a hint, against", "says nothing yet". */
  readonly weightText: string;
  readonly because: string;
  readonly group: string;
  readonly ratio: number | null;
  /** What the value is: "deepest dip of the voice range at the worst seat". */
  readonly valueLabel: string | null;
  readonly valueText: string | null;
  readonly thresholdText: string | null;
  readonly sourceId: SourceId;
  readonly mark: Mark;
  /** Labels of assumed facts. */
  readonly assumedLabels: readonly string[];
  /** Facts that would settle it, when unknown. */
  readonly open: readonly FactId[];
  readonly range: RangeBar | null;
}

/** A value among its grades: good up to `noticeable`, borderline up to `clear`, poor beyond. */
export interface RangeBar extends Pick<Limit, 'label' | 'unit' | 'noticeable' | 'clear' | 'severe'> {
  readonly limit: LimitId;
  readonly value: number;
  readonly lowIsBad: boolean;
  readonly grade: 'good' | 'borderline' | 'poor';
  readonly valueText: string;
  readonly noticeableText: string;
  readonly clearText: string;
  /** Between `noticeable` and `severe`: a bar is worth drawing. */
  readonly near: boolean;
}

export interface ReportRemedy
  extends Pick<Remedy, 'id' | 'title' | 'minutes' | 'cost' | 'expect' | 'verify'> {
  readonly steps: readonly string[];
  readonly cautions: readonly string[];

  // for renderers
  /** How often it puts the cause right if that is the cause. */
  readonly helps: Helps;
  /** "5 minutes, free" */
  readonly effort: string;
  readonly tried: boolean;
  /** Its condition is not settled yet. */
  readonly maybe: boolean;
}

/** Everything else in a report is of when the trouble was heard: that is what is explained. */
export interface ReportSince {
  /** Answers as they were then and as they are; "not told" where the new one was not told. */
  readonly facts: readonly {
    readonly fact: FactId;
    readonly label: string;
    readonly heard: string;
    readonly today: string;
  }[];
  /** The seats of today; empty where they get what they got. */
  readonly seats: readonly ReportSeat[];
  readonly seatsAssumed: SeatsAssumed;
}

export interface ReportTrial {
  /** What was done: "center turned up". */
  readonly title: string;
  /** "Center turned up: no change" */
  readonly text: string;
  /** It helped and still stands. */
  readonly keep: boolean;
}

/** Chances of a cure are judgment: no finer than a word. */
type Helps = 'often' | 'sometimes' | 'rarely';

export interface ReportConfirm {
  readonly test: FactId;
  readonly label: string;
  readonly minutes: number;
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  /** Outcomes in plain words that confirm the cause. */
  readonly outcomes: readonly string[];
  /** null: not done yet. */
  readonly confirmed: boolean | null;
  /** The result as told, in plain words. */
  readonly result: string | null;
}

/** One thing to do, told as a remedy is, whatever it is; questions expect and verify nothing. */
export interface ReportStep
  extends Pick<PlanStep, 'kind' | 'id' | 'cause' | 'minutes' | 'because'>,
    Pick<ReportRemedy, 'title' | 'steps' | 'cost' | 'effort' | 'expect' | 'verify' | 'cautions'> {
  readonly causeTitle: string;
  /** null for questions and tests. */
  readonly helps: Helps | null;
}

export interface ReportSeat {
  readonly name: string;
  /** Positive to the right. */
  readonly azimuthDeg: number | null;
  /** Zero or negative. */
  readonly dipDb: number | null;
  readonly dipHz: number | null;
  readonly speechLossDb: number | null;
  /** Positive: the center comes late. */
  readonly centerMinusMainsMs: number | null;

  // for renderers
  readonly main: boolean;
  readonly row: number;
  readonly xM: number;
  readonly yM: number;
  readonly distanceM: number | null;
  readonly phantomPullDeg: number | null;
}

export type SeatsAssumed = Readonly<
  Partial<Record<'azimuthDeg' | 'dipDb' | 'speechLossDb' | 'centerMinusMainsMs', readonly string[]>>
>;

export interface ReportComplaint {
  readonly id: ComplaintId;
  /** Chance that nothing listed explains it. */
  readonly leakShare: number;

  // for renderers
  readonly title: string;
  readonly text: string;
}

export interface ReportUnknown {
  readonly fact: FactId;
  readonly howToFindOut: string;
  /** Causes whose open rules it would help to settle, most probable first. */
  readonly settles: readonly CauseId[];

  // for renderers
  readonly label: string;
  readonly kind: 'question' | 'test';
  readonly ask: string;
  readonly minutes: number;
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  /** Asked, and the owner could not tell. */
  readonly asked: boolean;
}

export interface ReportAssumed {
  readonly fact: FactId;
  readonly value: string;
  readonly effect: string;

  // for renderers
  readonly label: string;
  readonly note: string;
}

interface ReportContradiction {
  readonly facts: readonly FactId[];
  readonly text: string;

  // for renderers
  readonly kind: 'hard' | 'soft';
}

export interface ReportTold {
  readonly fact: FactId;
  readonly label: string;
  /** In plain words with units; "not known" where it was asked and could not be told. */
  readonly value: string;
  /** "measured", "read", "recalled", "guessed", "not known" */
  readonly how: string;
}

export interface ReportNext {
  readonly kind: 'question' | 'test' | 'stop';
  readonly fact: FactId | null;
  /** The question, or the test's name; for a stop what it means. */
  readonly text: string;
  readonly because: string;
  readonly minutes: number | null;
}

export interface ReportAside {
  readonly cause: CauseId;
  readonly title: string;
  readonly text: string;
}

export interface ReportSource extends Source {
  readonly id: SourceId;
  /** "read", "computed here", "common practice, no source", "from memory". */
  readonly markText: string;
}

/** `leading` and `possible` causes are told in full, the others in one line. */
export type CausePlace = 'leading' | 'possible' | 'aside';
