/** `center-audit audit`: saved cases audited, one or a thousand. */
import { textOptions } from '../explain/terminal.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { inOrder } from './batch/in-order.js';
import { casesOf } from './batch/json-lines.js';
import { onePage, type Task } from './batch/one.js';
import { progressOn } from './batch/progress.js';
import { fileSink, type Sink, stdoutSink } from './batch/sink.js';
import { workersFor } from './batch/workers.js';
import type { Format } from './formats.js';
import { EXIT, type ExitCode, type GlobalOptions, type StreamIo } from './io.js';
import { STDIN, STDIN_NAME, tellWaiting } from './load-case.js';
import { formatOf, textFlags } from './options.js';
import { priorsInUse } from './priors-in-use.js';

export interface AuditOptions extends GlobalOptions {
  readonly format?: Format;
  readonly json?: boolean;
  /** One line in, one line out. */
  readonly jsonl?: boolean;
  readonly output?: string;
  readonly summary?: boolean;
  readonly long?: boolean;
  readonly jobs?: number;
}

/** @param paths case files; `-` is standard input with one case or with JSON lines */
export async function run(io: StreamIo, paths: readonly string[], options: AuditOptions): Promise<ExitCode> {
  const format = formatOf<Format>(options.jsonl ? { ...options, json: true } : options);
  if (format === 'html' && paths.length > 1 && !options.summary) throw onePage();
  if (paths.filter((path) => path === STDIN).length > 1) {
    throw new UserError({
      where: STDIN,
      what: 'standard input can be read only once',
      accepted: 'a single -',
    });
  }
  const { output } = options;
  const text = textOptions(io, { ...textFlags(options), toFile: output !== undefined });
  const sink = output === undefined ? stdoutSink(io) : await fileSink(io, output, paths);
  const workers = workersFor(
    {
      format: options.summary ? 'ranking' : format,
      text,
      long: options.long ?? false,
      debug: io.env.CENTER_AUDIT_DEBUG,
      priors: priorsInUse(io, options),
    },
    options.jobs,
  );
  const progress = progressOn(io, paths.includes(STDIN) ? undefined : paths.length, text.accessible);
  const codes = new Set<ExitCode>();
  const overall = options.summary ? await import('./batch/summary.js') : undefined;
  const summary = overall?.emptySummary();
  let printed = 0;
  try {
    for await (const outcome of inOrder(
      tasksOf(io, paths, options.jsonl ? 'lines' : format === 'json' ? 'filter' : 'any'),
      workers.start,
    )) {
      progress.count();
      codes.add(outcome.code);
      if (summary) overall?.addEntry(summary, outcome.entry);
      if (outcome.err !== '') {
        progress.end();
        io.err(outcome.err);
      }
      if (outcome.out !== '') {
        await sink.write(divider(format, outcome.name, outcome.several, printed) + outcome.out);
        printed += 1;
      }
    }
    if (overall && summary) {
      await sink.write(format === 'json' ? overall.summaryJson(summary) : overall.summaryText(summary, text));
    }
    progress.end();
    finish(io, sink, output, options.summary ? 1 : printed);
  } catch (error) {
    sink.drop();
    throw error;
  } finally {
    progress.end();
    await workers.close();
  }
  return codes.has(EXIT.fault) ? EXIT.fault : codes.has(EXIT.input) ? EXIT.input : EXIT.done;
}

/** A file in which nothing would stand is not begun. */
function finish(io: StreamIo, sink: Sink, output: string | undefined, printed: number): void {
  if (printed === 0) {
    sink.drop();
    return;
  }
  sink.keep();
  if (output !== undefined) io.err(`Written to ${plainLine(output)}.\n`);
}

async function* tasksOf(
  io: StreamIo,
  paths: readonly string[],
  want: 'lines' | 'filter' | 'any',
): AsyncGenerator<Task> {
  const several = paths.length > 1 || want === 'lines';
  for (const path of paths) {
    if (path !== STDIN) yield { name: plainLine(path), path, several };
    else {
      tellWaiting(io);
      for await (const task of casesOf(io.stdin(), STDIN_NAME, want))
        yield { ...task, several: several || task.several };
    }
  }
}

/** What stands between the reports of several cases. */
function divider(format: Format, name: string, several: boolean, printed: number): string {
  if (!several || format === 'json') return '';
  const gap = printed === 0 ? '' : '\n';
  return format === 'text' || format === 'ticket'
    ? `${gap}=== ${name} ===\n\n`
    : printed === 0
      ? ''
      : '\n-----\n\n';
}
