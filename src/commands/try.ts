/** `center-audit try`: what would change if some facts were different. The case file is not touched. */
import { changeReport, renderChanges } from '../explain/change-words.js';
import { audit } from '../reasoning/audit.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { loadCase, warningsText } from './load-case.js';
import { type FormatOptions, wantsJson } from './options.js';
import { printResult } from './print.js';
import { auditOptions, priorsInUse } from './priors-in-use.js';
import { withChanges } from './try-changes.js';

/** @param changes `FACT=VALUE` words */
export async function run(
  io: Io,
  path: string,
  changes: readonly string[],
  options: GlobalOptions & FormatOptions,
): Promise<ExitCode> {
  wantsJson(options);
  const loaded = await loadCase(io, path);
  const { book, echoes } = withChanges(loaded.book, changes, loaded.readResponse);
  io.err(warningsText(loaded) + echoes.map((echo) => `${echo}\n`).join(''));
  const base = auditOptions(priorsInUse(io, options));
  const report = changeReport('try', await audit(loaded.book, base), await audit(book, base));
  printResult(io, options, report, renderChanges);
  return EXIT.done;
}
