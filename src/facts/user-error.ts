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

/** A problem as lines of plain text. */
export function problemText(problem: Problem): string {
  return [
    problem.where ? `${problem.where}: ${problem.what}` : problem.what,
    ...(problem.accepted ? [`  accepted: ${problem.accepted}`] : []),
    ...(problem.example ? [`  example: ${problem.example}`] : []),
  ].join('\n');
}
