/** Everything that is wrong with a case file, each with its place, what is accepted and an example. */
import { type Problem, problemsText, UserError } from '../lib/user-error.js';

export interface CaseProblem extends Problem {
  /** `facts.seatDistance`, `seats.1.xM`; '' for the file as a whole. */
  readonly path: string;
  readonly accepted: string;
  readonly example: string;
  readonly line?: number;
  readonly column?: number;
}

/** Something told along the way: the case is sound. */
export interface CaseWarning {
  readonly path: string;
  readonly text: string;
  /** The unit that was taken for a number without one. */
  readonly bareUnit?: string;
}

/** Collects what is wrong and what is worth telling while a case is read. */
export interface Findings {
  readonly problems: CaseProblem[];
  readonly warnings: CaseWarning[];
}

export class CaseError extends UserError {
  override readonly problems: readonly [CaseProblem, ...CaseProblem[]];

  constructor(first: CaseProblem, ...rest: CaseProblem[]) {
    super(first, ...rest);
    this.name = 'CaseError';
    this.problems = [first, ...rest];
    this.message = problemsText(this.problems);
  }

  /** The parts of the first problem, for callers that show one. */
  get path(): string {
    return this.problems[0].path;
  }
  get what(): string {
    return this.problems[0].what;
  }
  get accepted(): string {
    return this.problems[0].accepted;
  }
  get example(): string {
    return this.problems[0].example;
  }
}

export function problem(path: string, what: string, accepted: string, example = ''): CaseProblem {
  return placed({ path, what, accepted, example });
}

/** A problem with its place in words: the path, and line and column where they are known. */
export function placed(
  each: CaseProblem,
  place?: { readonly line: number; readonly column: number },
): CaseProblem {
  const spot = place === undefined ? '' : `line ${place.line}, column ${place.column}`;
  const where = [each.path, spot].filter((part) => part !== '').join(', ');
  return { ...each, ...place, ...(where === '' ? {} : { where }) };
}
