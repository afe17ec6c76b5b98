/** `center-audit compare`: two audits of the same system, before and after. */
import { changeReport, renderChanges } from '../explain/change-words.js';
import { UserError } from '../lib/user-error.js';
import { audit } from '../reasoning/audit.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { loadCase, STDIN, warningsText } from './load-case.js';
import { type FormatOptions, wantsJson } from './options.js';
import { printResult } from './print.js';
import { auditOptions, priorsInUse } from './priors-in-use.js';

export async function run(
  io: Io,
  before: string,
  after: string,
  options: GlobalOptions & FormatOptions,
): Promise<ExitCode> {
  wantsJson(options);
  if (before === STDIN && after === STDIN) {
    throw new UserError({
      where: 'compare',
      what: 'standard input can be read only once',
      accepted: 'a file for at least one of the two cases',
      example: 'center-audit compare before.json -',
    });
  }
  const first = await loadCase(io, before);
  const second = await loadCase(io, after);
  io.err(warningsText(first) + warningsText(second));
  const base = auditOptions(priorsInUse(io, options));
  const report = changeReport('compare', await audit(first.book, base), await audit(second.book, base));
  printResult(io, options, report, renderChanges);
  return EXIT.done;
}
