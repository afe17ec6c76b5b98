/** An error for people: what was wrong, where, what is accepted, an example. Ends a command with exit code 2. */
export interface Problem {
  readonly what: string;
  readonly where?: string;
  readonly accepted?: string;
  readonly example?: string;
}

export class UserError extends Error {
  readonly problems: readonly [Problem, ...Problem[]];

  constructor(first: Problem, ...rest: Problem[]) {
    super([first, ...rest].map(problemText).join('\n'));
    this.name = 'UserError';
    this.problems = [first, ...rest];
  }
}

/** Problems told one by one before the rest is only counted. */
const TOLD = 20;

/** Problems as lines of plain text: the first ones in full, then how many more there are. */
export function problemsText(problems: readonly Problem[]): string {
  const more = problems.length - TOLD;
  const told = problems.slice(0, TOLD).map(problemText);
  return [...told, ...(more > 0 ? [`and ${more} more`] : [])].join('\n');
}

/** A problem as lines of plain text. */
export function problemText(problem: Problem): string {
  return [
    problem.where ? `${problem.where}: ${problem.what}` : problem.what,
    ...(problem.accepted ? [`  accepted: ${problem.accepted}`] : []),
    ...(problem.example ? [`  example: ${problem.example}`] : []),
  ].join('\n');
}
