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

/** The same for commands that read and write without end. */
export interface StreamIo extends Io {
  /** Standard input as it comes. */
  stdin(): AsyncIterable<Uint8Array>;
  /** Settles when what was written to standard output has gone out. */
  flush(): Promise<void>;
}

/** Exit codes of the contract. */
export const EXIT = { done: 0, fault: 1, input: 2, needsInterview: 3, interrupted: 130 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Options that stand at every command. */
export interface GlobalOptions {
  /** False after --no-color. */
  readonly color: boolean;
  readonly accessible?: boolean;
  /** A file of priors from solved cases. */
  readonly priors?: string;
}
