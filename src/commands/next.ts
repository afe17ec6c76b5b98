/** `center-audit next`: the question or home test worth most now, and why. */
import { nextWords, renderNext } from '../explain/next-words.js';
import { audit } from '../reasoning/audit.js';
import { next } from '../reasoning/next.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { loadCase, warningsText } from './load-case.js';
import { type FormatOptions, wantsJson } from './options.js';
import { printResult } from './print.js';
import { auditOptions, priorsInUse } from './priors-in-use.js';

interface NextCommandOptions extends GlobalOptions, FormatOptions {
  readonly minutes?: number;
}

export async function run(io: Io, path: string, options: NextCommandOptions): Promise<ExitCode> {
  wantsJson(options);
  const loaded = await loadCase(io, path);
  io.err(warningsText(loaded));
  const audited = await audit(loaded.book, auditOptions(priorsInUse(io, options)));
  const proposed = next(audited, options.minutes === undefined ? {} : { minutesLeft: options.minutes });
  printResult(io, options, nextWords(audited, proposed), renderNext);
  return EXIT.done;
}
