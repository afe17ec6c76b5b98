/**
 * What `import … from 'center-audit'` offers, whole and by itself: nothing is imported here, so that the build ships
 * this file as the types of the package. `library.ts` is held to it. Ids (facts, causes, complaints) are plain texts
 * here: `center-audit facts` and `center-audit explain` list them, and they may grow within a major version.
 */

/** What was wrong, where, what is accepted instead. */
export interface Problem {
  readonly what: string;
  readonly where?: string;
  readonly accepted?: string;
  readonly example?: string;
}

export interface CaseProblem extends Problem {
  /** `facts.seatDistance`, `seats.1.xM`; '' for the case as a whole. */
  readonly path: string;
  readonly accepted: string;
  readonly example: string;
  /** From 1, where the text of the case has such a place. */
  readonly line?: number;
  readonly column?: number;
}

/** Whatever was handed over cannot be used; everything else that is thrown is a fault of the library. */
export declare class UserError extends Error {
  constructor(first: Problem, ...rest: Problem[]);
  readonly problems: readonly [Problem, ...Problem[]];
}

/** A case that cannot be read, with every problem found. */
export declare class CaseError extends UserError {
  constructor(first: CaseProblem, ...rest: CaseProblem[]);
  override readonly problems: readonly [CaseProblem, ...CaseProblem[]];
}

/** Told along the way; the case is sound. */
export interface CaseWarning {
  readonly path: string;
  readonly text: string;
}

/** One system and the complaint about it. `writeCase` shows what stands in it. */
export interface Case {
  readonly title: string | null;
  readonly warnings: readonly CaseWarning[];
}

export interface ReadCaseOptions {
  /** Folder of the response files that the case names; without it they are not looked for. */
  readonly folder?: string;
}

/**
 * Reads a case file: its text, or its bytes in UTF-8, at most 1 MiB. Numbers without a unit take the unit system of
 * the case. Throws CaseError.
 */
export declare function readCase(text: string | Uint8Array, options?: ReadCaseOptions): Case;

/** The case as the text of a case file. */
export declare function writeCase(of: Case): string;

export interface Words {
  /** What was understood, as a case of its own. */
  readonly draft: Case;
  readonly taken: readonly Taken[];
  /** Said, but not for sure: each with the question that settles it. */
  readonly unsure: readonly {
    readonly phrase: string;
    readonly start: number;
    readonly fact: string;
    readonly question: string;
  }[];
  readonly left: readonly { readonly phrase: string; readonly start: number }[];
}

/** A fact, a complaint or an act found in an exact part of the text, which begins at `start` (UTF-16 units). */
export interface Taken {
  readonly phrase: string;
  readonly start: number;
  readonly fact: string;
  /** In SI units where it is a number. */
  readonly value: string | number | boolean;
  readonly how: 'measured' | 'read' | 'seen' | 'recalled' | 'guessed';
  readonly negated: boolean;
}

/** Reads an owner's own words, in English, into a draft case: by rules and a lexicon, without a network. */
export declare function readWords(text: string): Promise<Words>;

/** A case with its causes ranked. */
export interface Audit {
  /** Id of the most probable cause. */
  readonly leader: string;
  /** True while causes remain that only a further answer can tell apart. */
  readonly undecided: boolean;
}

export declare function auditCase(of: Case): Promise<Audit>;

export interface NextOptions {
  /** Minutes that the owner still has. */
  readonly minutesLeft?: number;
}

/** The question or home test worth most now; `stop` when none pays any more. */
export interface Next {
  readonly format: 'center-audit/next';
  readonly version: 1;
  readonly kind: 'question' | 'test' | 'stop';
  readonly fact: string | null;
  readonly text: string;
  readonly because: string;
  /** Why it stops. */
  readonly reason: string | null;
  readonly minutes: number | null;
  /** How it is found out, step by step. */
  readonly how: readonly string[];
  readonly choices: readonly string[];
  readonly cautions: readonly string[];
  readonly mayFollowAtMost: number;
  readonly others: readonly {
    readonly fact: string;
    readonly label: string;
    readonly minutes: number;
    readonly savesMinutes: number;
  }[];
  /** What to do when nothing more needs to be asked. */
  readonly todo: string | null;
}

export declare function next(of: Audit, options?: NextOptions): Next;

/** The report as `audit --json` prints it. What is not known is null; weights are decibans. */
export interface Report {
  readonly format: 'center-audit/report';
  readonly version: 1;
  readonly title: string | null;
  readonly verdict: {
    readonly headline: string;
    /** "likely, about 85%" */
    readonly confidence: string;
    readonly leader: string;
    readonly undecided: boolean;
  };
  /** Every cause, most probable first. */
  readonly causes: readonly ReportCause[];
  readonly plan: readonly {
    readonly kind: 'test' | 'remedy' | 'question';
    readonly id: string;
    readonly cause: string;
    readonly title: string;
    readonly minutes: number;
    readonly because: string;
  }[];
  readonly seats: readonly ReportSeat[];
  /** `leakShare`: chance that nothing listed explains it. */
  readonly complaints: readonly { readonly id: string; readonly leakShare: number }[];
  readonly seamlessSwitch: {
    readonly passes: boolean | null;
    readonly steps: readonly string[];
    readonly checks: readonly { readonly text: string; readonly passes: boolean | null }[];
  };
  readonly unknown: readonly {
    readonly fact: string;
    readonly howToFindOut: string;
    readonly settles: readonly string[];
  }[];
  readonly assumed: readonly { readonly fact: string; readonly value: string; readonly effect: string }[];
  readonly contradictions: readonly { readonly facts: readonly string[]; readonly text: string }[];
  readonly cautions: readonly string[];
  /** What settled the trouble; null while it is not gone. */
  readonly solvedBy: readonly string[] | null;
}

export interface ReportCause {
  readonly id: string;
  readonly title: string;
  /** From 0 to 0.99. */
  readonly probability: number;
  readonly decibans: number;
  readonly verdict: 'likely' | 'possible' | 'unlikely' | 'ruled-out' | 'cannot-tell' | 'not-applicable';
  readonly severity: string;
  readonly evidence: readonly {
    readonly rule: string;
    readonly decibans: number;
    readonly text: string;
    readonly facts: readonly string[];
    readonly value: number | null;
    readonly threshold: number | null;
    readonly unit: string | null;
    readonly source: string;
    readonly assumed: boolean;
    readonly outcome: 'yes' | 'no' | 'unknown' | 'not-applicable' | 'error';
  }[];
  readonly remedies: readonly {
    readonly id: string;
    readonly title: string;
    readonly steps: readonly string[];
    readonly minutes: number;
    readonly cost: 'free' | 'low' | 'medium' | 'high';
    readonly expect: string;
    readonly verify: string;
    readonly cautions: readonly string[];
  }[];
}

export interface ReportSeat {
  readonly name: string;
  readonly main: boolean;
  readonly row: number;
  /** To the right of the midline, and back from the line between the mains. */
  readonly xM: number;
  readonly yM: number;
  readonly distanceM: number | null;
  /** Positive to the right. */
  readonly azimuthDeg: number | null;
  /** Zero or negative. */
  readonly dipDb: number | null;
  readonly dipHz: number | null;
  readonly speechLossDb: number | null;
  /** Positive: the center comes late. */
  readonly centerMinusMainsMs: number | null;
  readonly phantomPullDeg: number | null;
}

export declare function report(of: Audit): Report;

export type Format = 'text' | 'markdown' | 'html' | 'bbcode' | 'forum' | 'forum-markdown' | 'ticket' | 'json';

export interface FormatOptions {
  /** With all its parts; else what a call needs. */
  readonly long?: boolean;
  /** Name by which the case is found again: in commands that are proposed, and on a ticket. */
  readonly caseName?: string;
  /** Day on a ticket: "2026-11-30". */
  readonly date?: string;
}

/** The report as a text of 80 columns, a page, a post, a ticket or JSON. Throws UserError for another format. */
export declare function reportAs(of: Audit, format: Format, options?: FormatOptions): Promise<string>;

/** A result: numbers, lists of numbers, or rows of them. What does not exist is null. */
export type Value = null | number | string | readonly Value[] | { readonly [key: string]: Value };

export interface CalculateOptions {
  /** Hears what was noticed along the way. */
  readonly tell?: (notice: string) => void;
}

/**
 * One acoustic calculation, as `center-audit calc NAME` makes it; `center-audit calc NAME --help` names its inputs,
 * outputs, units and source. Throws UserError for what is missing, unknown or out of range.
 */
export declare function calculate(
  name: string,
  values: Readonly<Record<string, unknown>>,
  options?: CalculateOptions,
): { readonly [key: string]: Value };
