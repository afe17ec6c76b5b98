/** The world outside a command: streams, terminal, environment. Tests hand in their own. */
export interface Io {
  /** Results: standard output. */
  out(text: string): void;
  /** Notices, progress, questions, errors: standard error. */
  err(text: string): void;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdinIsTerminal: boolean;
  readonly stdoutIsTerminal: boolean;
  readonly stderrIsTerminal: boolean;
  /** Width of the terminal that shows the result; 80 where there is none. */
  readonly columns: number;
  /** All of standard input, at most `limitBytes`; throws a UserError beyond. */
  readStdin(limitBytes: number): Promise<Uint8Array>;
}

/** Exit codes of the contract. */
export const EXIT = { done: 0, fault: 1, input: 2, needsInterview: 3, interrupted: 130 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
