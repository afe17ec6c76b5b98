/** One case of a batch, from bytes to the text that is printed. Runs in the main thread or in a worker. */
import type { TextOptions } from '../../explain/terminal.js';
import { type Problem, UserError } from '../../lib/user-error.js';
import type { CauseId } from '../../rules/cause-ids.js';
import { failure } from '../failure.js';
import { type Format, render } from '../formats.js';
import { EXIT, type ExitCode } from '../io.js';
import { caseFrom, type LoadedCase, loadFile, warningsText } from '../load-case.js';
import { auditOptions, type PriorsInUse } from '../priors-in-use.js';

/** Where a case comes from: a file, bytes that were read already, or what made it unreadable. */
export type Task = {
  readonly name: string;
  /** One of several: its JSON is one line with its name in it. */
  readonly several: boolean;
} & ({ readonly path: string } | { readonly bytes: Uint8Array } | { readonly problem: Problem });

export interface Job {
  /** `ranking` prints nothing: only the entry for a summary is wanted. */
  readonly format: Format | 'ranking';
  readonly text: TextOptions;
  readonly long: boolean;
  readonly debug: string | undefined;
  /** Priors of solved cases. */
  readonly priors?: PriorsInUse | undefined;
}

/** What a summary needs to know of one case. */
export interface Entry {
  readonly leader: CauseId;
  readonly undecided: boolean;
  readonly likely: readonly CauseId[];
  readonly possible: readonly CauseId[];
}

export interface Outcome {
  readonly name: string;
  readonly several: boolean;
  readonly code: ExitCode;
  /** For standard output. */
  readonly out: string;
  /** For standard error. */
  readonly err: string;
  /** Absent for a case that could not be audited. */
  readonly entry?: Entry;
}

/** Stands in the commands of a report for a case that has no path. */
const STDIN_CASE = 'CASE';

/** Audits one case. Never throws: a bad case is an outcome as well. */
export async function auditOne(task: Task, job: Job): Promise<Outcome> {
  const { name, several } = task;
  try {
    if (job.format === 'html' && several) throw onePage();
    const loaded = load(task);
    const { audit } = await import('../../reasoning/audit.js');
    const audited = await audit(loaded.book, auditOptions(job.priors));
    const { causes, leader, undecided } = audited.ranking;
    const withVerdict = (verdict: string): CauseId[] =>
      causes.filter((ranked) => ranked.verdict === verdict).map((ranked) => ranked.cause);
    const entry: Entry = {
      leader,
      undecided,
      likely: withVerdict('likely'),
      possible: withVerdict('possible'),
    };
    // What was noticed along the way is read for one case and only in the way for a thousand.
    const done = { name, several, code: EXIT.done, err: several ? '' : warningsText(loaded), entry };
    if (job.format === 'ranking') return { ...done, out: '' };
    const { buildReport } = await import('../../explain/report.js');
    const report = buildReport(audited);
    const out = await render(job.format, {
      report,
      audit: audited,
      text: job.text,
      caseName: 'path' in task || (several && job.format === 'json') ? name : STDIN_CASE,
      long: job.long,
      several,
      date: today(),
    });
    return { ...done, out };
  } catch (error) {
    const { code, text } = failure(error, { CENTER_AUDIT_DEBUG: job.debug });
    return {
      name,
      several,
      code,
      out: job.format === 'json' && several ? errorLine(name, error) : '',
      err: error instanceof UserError ? text : `${name}: ${text}`,
    };
  }
}

function load(task: Task): LoadedCase {
  if ('path' in task) return loadFile(task.path);
  if ('problem' in task) throw new UserError({ where: task.name, ...task.problem });
  return caseFrom(task.name, task.bytes);
}

export const onePage = (): UserError =>
  new UserError({
    where: '--format html',
    what: 'a page holds one case, and there are several',
    accepted: 'one case at a time for html; text, markdown, bbcode, ticket and json take several',
    example: 'center-audit audit case.json --format html --output report.html',
  });

/** The day by the clock of whoever audits. */
const today = (): string => {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((n) => String(n).padStart(2, '0'))
    .join('-');
};

/** A bad case keeps its line, so that line n of the output is still case n of the input. */
function errorLine(name: string, error: unknown): string {
  const problems = error instanceof UserError ? error.problems : [{ what: 'a fault inside the program' }];
  return `${JSON.stringify({ case: name, format: 'center-audit/error', version: 1, problems })}\n`;
}
