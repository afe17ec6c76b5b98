/** What a person reads when a command fails, and the exit code that goes with it. */
import { type Problem, problemsText, UserError } from '../lib/user-error.js';
import { EXIT, type ExitCode } from './io.js';

/** Set to anything, it adds the stack to an internal fault. */
const DEBUG_VARIABLE = 'CENTER_AUDIT_DEBUG';

const LOST: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the quota of the disk is used up',
  EFBIG: 'the file may not grow any larger',
  EIO: 'the device does not answer',
};

/** Standard output did not take everything: what stands there is not whole. */
export class OutputLost extends Error {
  constructor(code: string | undefined) {
    super(
      `standard output: ${LOST[code ?? ''] ?? `it cannot be written (${code ?? 'unknown reason'})`}; the result is not whole`,
    );
    this.name = 'OutputLost';
  }
}

export function failure(
  error: unknown,
  env: Readonly<Record<string, string | undefined>>,
): { readonly code: ExitCode; readonly text: string } {
  if (error instanceof UserError) return { code: EXIT.input, text: `${problemsText(error.problems)}\n` };
  if (error instanceof OutputLost) return { code: EXIT.fault, text: `${error.message}\n` };
  const message = error instanceof Error ? error.message : String(error);
  const [first = ''] = message.split('\n');
  const text = [
    `Something went wrong inside center-audit: ${first}`,
    'This is a fault of the program, not of your case. Your files were not changed.',
    ...(env[DEBUG_VARIABLE]
      ? [error instanceof Error ? (error.stack ?? '') : '']
      : [`Set ${DEBUG_VARIABLE}=1 and run it again to see where.`]),
  ];
  return { code: EXIT.fault, text: `${text.join('\n')}\n` };
}

/** The same error with a name in front of every place. */
export function inFile(name: string, error: unknown): unknown {
  if (!(error instanceof UserError)) return error;
  const [first, ...rest] = error.problems.map(
    (problem): Problem => ({
      ...problem,
      where: problem.where === undefined ? name : `${name}: ${problem.where}`,
    }),
  );
  return first === undefined ? error : new UserError(first, ...rest);
}
