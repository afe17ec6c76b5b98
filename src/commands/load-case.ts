/** A case from a file or from standard input. */
import { dirname, resolve } from 'node:path';
import { readLimited } from '../disk/read-file.js';
import { responsesIn } from '../disk/response-files.js';
import { isActId } from '../facts/acts.js';
import type { FactBook } from '../facts/book.js';
import { type CaseWarning, decodeCase, MAX_CASE_BYTES, readCase } from '../facts/case-file.js';
import type { ReadResponse } from '../facts/responses.js';
import { nearest } from '../lib/nearest.js';
import { plainLine } from '../lib/sanitize.js';
import { remedyId } from '../reasoning/trials.js';
import { CAUSES } from '../rules/index.js';
import { inFile } from './failure.js';
import type { Io } from './io.js';

/** Stands for standard input wherever a case is named. */
export const STDIN = '-';
export const STDIN_NAME = 'standard input';

export interface LoadedCase {
  /** The path as it is told to people. */
  readonly name: string;
  readonly book: FactBook;
  readonly warnings: readonly CaseWarning[];
  /** Reads response files beside the case; undefined where it came from standard input. */
  readonly readResponse: ReadResponse | undefined;
}

/** Reads one case; `-` is standard input. Throws a UserError that names the file. */
export async function loadCase(io: Io, path: string): Promise<LoadedCase> {
  if (path !== STDIN) return loadFile(path);
  tellWaiting(io);
  return caseFrom(STDIN_NAME, await io.readStdin(MAX_CASE_BYTES));
}

export function loadFile(path: string): LoadedCase {
  return caseFrom(plainLine(path), readLimited(path, MAX_CASE_BYTES), dirname(resolve(path)));
}

/** @param folder where response files are looked for; absent for standard input */
export function caseFrom(name: string, bytes: Uint8Array, folder?: string): LoadedCase {
  try {
    const readResponse = folder === undefined ? undefined : responsesIn(folder);
    return { name, ...withAllWarnings(decodeCase(bytes), readResponse), readResponse };
  } catch (error) {
    throw inFile(name, error);
  }
}

/** A case with its warnings, those that only the rule base can give too. Throws CaseError. */
export function withAllWarnings(
  text: string,
  readResponse: ReadResponse | undefined,
): Pick<LoadedCase, 'book' | 'warnings'> {
  const { book, warnings } = readCase(text, readResponse && { readResponse });
  return { book, warnings: [...warnings, ...unknownRemedies(book)] };
}

/** A mistyped remedy counts for nothing, so it is told; it stays, since an earlier version may have known it. */
function unknownRemedies({ trials }: FactBook): CaseWarning[] {
  if (trials.length === 0) return [];
  const known = CAUSES.flatMap((cause) => cause.remedies.map((remedy) => remedyId(cause, remedy)));
  return trials.flatMap(({ act }, place) => {
    if (isActId(act) || known.includes(act)) return [];
    const meant = nearest(act, known);
    const hint = meant === undefined ? '' : `; did you mean “${meant}”?`;
    const text = `no remedy is called “${act}”, so it counts for nothing${hint}`;
    return [{ path: `trials.${place}.act`, text }];
  });
}

/** Nothing hangs without a word: a person who reads this knows how to go on. */
export function tellWaiting(io: Io): void {
  if (io.stdinIsTerminal)
    io.err('Reading the case from the keyboard; Ctrl-D on a line of its own ends it.\n');
}

/** What was noticed along the way, one line a case and kind. */
export function warningsText({ name, warnings }: Pick<LoadedCase, 'name' | 'warnings'>): string {
  const bare = warnings.filter((warning) => warning.bareUnit !== undefined);
  const other = warnings.filter((warning) => warning.bareUnit === undefined);
  const units = [...new Set(bare.map((warning) => warning.bareUnit))];
  const lines = [
    ...units.map((unit) => {
      const paths = bare.filter((warning) => warning.bareUnit === unit).map(({ path }) => path);
      return `${name}: numbers without a unit were taken as ${unit}: ${paths.join(', ')}`;
    }),
    ...other.map(({ path, text }) => `${name}: ${path === '' ? '' : `${path}: `}${text}`),
  ];
  return lines.map((line) => `${line}\n`).join('');
}
