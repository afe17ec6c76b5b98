/** Everything that is wrong with a case file, each with place, what is accepted and an example. */

export interface Problem {
  /** `facts.seatDistance`, `seats.1.xM`; '' for the file as a whole. */
  readonly path: string;
  readonly what: string;
  readonly accepted: string;
  readonly example: string;
  readonly line?: number;
  readonly column?: number;
}

/** Something told along the way: the case is sound. */
export interface CaseWarning {
  readonly path: string;
  readonly text: string;
}

/** Collects what is wrong and what is worth telling while a case is read. */
export interface Findings {
  readonly problems: Problem[];
  readonly warnings: CaseWarning[];
}

/** Problems told one by one before the rest is only counted. */
const TOLD = 20;

export class CaseError extends Error {
  readonly problems: readonly Problem[];
  /** The first problem's parts, for callers that show one. */
  readonly path: string;
  readonly what: string;
  readonly accepted: string;
  readonly example: string;

  constructor(problems: readonly [Problem, ...Problem[]]) {
    const told = problems.slice(0, TOLD).map(problemText);
    const more = problems.length - told.length;
    super([...told, ...(more > 0 ? [`and ${more} more`] : [])].join('\n'));
    this.name = 'CaseError';
    this.problems = problems;
    [{ path: this.path, what: this.what, accepted: this.accepted, example: this.example }] = problems;
  }
}

/** One problem in one or two lines. */
export function problemText({ path, what, accepted, example, line, column }: Problem): string {
  const place = [path, line === undefined ? '' : `line ${line}, column ${column ?? 1}`]
    .filter(Boolean)
    .join(', ');
  const start = place === '' ? '' : `${place}: `;
  const such = example === '' ? '' : `, for example ${example}`;
  return `${start}${what}\n  accepted: ${accepted}${such}`;
}

export function problem(path: string, what: string, accepted: string, example = ''): Problem {
  return { path, what, accepted, example };
}
