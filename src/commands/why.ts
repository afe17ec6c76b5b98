/** `center-audit why`: the evidence for and against one cause, or what tells two causes apart. */
import { documentText } from '../explain/document-text.js';
import { whyBlocks, whyOf } from '../explain/why.js';
import { didYouMean, nearest } from '../lib/nearest.js';
import { quoted } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { audit } from '../reasoning/audit.js';
import { CAUSE_IDS, type CauseId } from '../rules/cause-ids.js';
import { isCauseId } from '../rules/index.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { loadCase, warningsText } from './load-case.js';
import { type FormatOptions, wantsJson } from './options.js';
import { printResult } from './print.js';
import { auditOptions, priorsInUse } from './priors-in-use.js';

interface WhyOptions extends GlobalOptions, FormatOptions {
  readonly against?: string;
}

export async function run(io: Io, path: string, typed: string, options: WhyOptions): Promise<ExitCode> {
  wantsJson(options);
  const id = causeId(typed, 'CAUSE');
  const other = options.against === undefined ? undefined : causeId(options.against, '--against');
  if (id === other) {
    throw new UserError({
      where: '--against',
      what: 'a cause cannot be put beside itself',
      accepted: 'the id of another cause',
    });
  }
  const loaded = await loadCase(io, path);
  io.err(warningsText(loaded));
  const why = whyOf(await audit(loaded.book, auditOptions(priorsInUse(io, options))), id, other);
  printResult(io, options, why, (found, text) => documentText(whyBlocks(found), text));
  return EXIT.done;
}

function causeId(typed: string, where: string): CauseId {
  if (isCauseId(typed)) return typed;
  const near = nearest(typed, CAUSE_IDS);
  throw new UserError({
    where,
    what: `there is no cause ${quoted(typed)}${didYouMean(near)}`,
    accepted: CAUSE_IDS.join(', '),
    example: `center-audit why case.json ${near ?? 'delay'}`,
  });
}
