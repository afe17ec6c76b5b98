/** `center-audit interview`: holds the conversation, saves it, prints the report. */
import { shellWord } from '../explain/shell-word.js';
import { textOptions } from '../explain/terminal.js';
import type { Ending, Style, Terminal, Written } from '../interview/index.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import type { Audit } from '../reasoning/audit.js';
import type { Store } from '../store/case-store.js';
import { type Format, render } from './formats.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { refuseInterview } from './no-terminal.js';
import { type FormatOptions, formatOf, textFlags, wantsJson } from './options.js';
import { auditOptions, priorsInUse } from './priors-in-use.js';

export interface InterviewOptions extends GlobalOptions, FormatOptions {
  readonly full?: boolean;
  readonly minutes?: number;
  readonly call?: boolean;
}

/** A shell reports a death by signal n as 128 + n. */
const TERMINATED = 128 + 15;

/** Throws a UserError when the case cannot be read or another interview is at work on it. */
export async function run(
  io: Io,
  casePath: string | undefined,
  options: InterviewOptions,
): Promise<ExitCode> {
  if (casePath === '-') throw keyboardNeeded();
  if (!io.stdinIsTerminal || !io.stderrIsTerminal) {
    return refuseInterview(io, casePath, wantsJson(options));
  }
  const interview = await import('../interview/index.js');
  const store = await import('../store/index.js');
  const folder = store.stateFolder();
  const terminal = await openTerminal(io, options);
  try {
    const chosen =
      casePath === undefined
        ? await interview.chooseUnfinished(terminal, store.listUnfinished(folder))
        : { casePath };
    if (chosen === 'left') return EXIT.interrupted;
    const opened = store.openStore({ ...chosen, stateFolder: folder, now: () => new Date() });
    return await holdOn(io, terminal, opened, folder, options);
  } finally {
    terminal.close();
  }
}

async function holdOn(
  io: Io,
  terminal: Terminal,
  store: Store,
  folder: string,
  options: InterviewOptions,
): Promise<ExitCode> {
  const { begin, goingOnLines, hold, openingLines } = await import('../interview/index.js');
  const unhook = onSignals(io, store, folder);
  try {
    const settings = {
      full: options.full === true,
      call: options.call === true,
      now: Date.now,
      rules: auditOptions(priorsInUse(io, options)),
      ...(options.minutes === undefined ? {} : { minutes: options.minutes }),
      ...(store.readResponse && { readResponse: store.readResponse }),
    };
    const start = begin(store.book, settings, store.before);
    const warnings = store.warnings.map(({ path, text }) => `${path}: ${text}`);
    const isNew = start.history.length === 0 && store.book.answers.size === 0;
    terminal.tell(isNew ? openingLines() : goingOnLines(start, warnings));
    // Loaded before the first question: the program may be replaced by a newer one while somebody is on the call.
    await Promise.all([import('../explain/report.js'), import('../explain/render/text.js')]);
    const report = (audit: Audit): Promise<void> => print(io, audit, store.path(), options);
    const ending = await hold(
      { terminal, store, report, write: writerOf(io, store.path), isLive: isLive(io, options) },
      start,
    );
    return end(io, ending, store, folder);
  } catch (error) {
    io.err(goOnText(store, folder));
    throw error;
  } finally {
    unhook();
    store.release();
  }
}

function keyboardNeeded(): UserError {
  return new UserError({
    where: 'interview',
    what: 'the keyboard is needed for the answers, so the case cannot come from standard input',
    accepted: 'the path of a case file, which may be a new one',
    example: 'center-audit interview case.json',
  });
}

async function openTerminal(io: Io, options: InterviewOptions): Promise<Terminal> {
  const look = (): ReturnType<typeof textOptions> =>
    textOptions(
      { env: io.env, stdoutIsTerminal: true, columns: process.stderr.columns ?? io.columns },
      textFlags(options),
    );
  const style = (): Style => {
    const { width, color } = look();
    return { columns: Math.min(width, process.stderr.columns ?? width), color };
  };
  const write = (text: string): void => io.err(text);
  if (look().accessible) return (await import('../terminal/plain-lines.js')).plainTerminal(style, write);
  return (await import('../terminal/redrawn-line.js')).fullTerminal(style, write);
}

/** Read by the same eyes as the questions: then it is shown whenever there is a new one. */
const isLive = (io: Io, options: InterviewOptions): boolean =>
  io.stdoutIsTerminal && formatOf<Format>(options) === 'text';

async function print(io: Io, audit: Audit, casePath: string, options: InterviewOptions): Promise<void> {
  const { buildReport } = await import('../explain/report.js');
  const text = textOptions(io, textFlags(options));
  const report = buildReport(audit);
  io.out(await render(formatOf<Format>(options), { report, audit, text, caseName: casePath }));
}

const ENDS: Readonly<Record<Written, { readonly format: Format; readonly end: string }>> = {
  ticket: { format: 'ticket', end: '.ticket.txt' },
  forum: { format: 'forum', end: '.forum.txt' },
  page: { format: 'html', end: '.html' },
};

/** Writes a report beside the case, under its name; an earlier one gives way. */
function writerOf(io: Io, casePath: () => string): (written: Written, audit: Audit) => Promise<string> {
  return async (written, audit) => {
    const { format, end } = ENDS[written];
    const path = `${casePath().replace(/\.json$/, '')}${end}`;
    const [{ buildReport }, { writeFileSync }] = await Promise.all([
      import('../explain/report.js'),
      import('node:fs'),
    ]);
    const text = { ...textOptions(io, {}), color: false };
    const content = await render(format, { report: buildReport(audit), audit, text, caseName: casePath() });
    try {
      writeFileSync(path, content);
      return `= written:\n${path}`;
    } catch (error) {
      return `It could not be written. ${plainLine((error as Error).message)}.`;
    }
  };
}

/**
 * Every answer is on disk already: what is left is to say so, at once, and to give the lock back. Of a terminal
 * that is closed Node may hear by signal or by an error of its streams, and it cannot end in peace any more
 * (it fails while setting the terminal back), so the process is ended hard.
 */
function onSignals(io: Io, store: Store, folder: string): () => void {
  const gone = (): void => {
    store.release();
    process.kill(process.pid, 'SIGKILL');
  };
  const terminated = (): void => {
    store.release();
    process.exit(TERMINATED);
  };
  const interrupted = (): void => {
    io.err(goOnText(store, folder));
    store.release();
    process.exit(EXIT.interrupted);
  };
  const streams = [process.stdin, process.stderr];
  process.on('SIGHUP', gone).on('SIGTERM', terminated).on('SIGINT', interrupted);
  for (const stream of streams) stream.on('error', gone);
  return () => {
    process.off('SIGHUP', gone).off('SIGTERM', terminated).off('SIGINT', interrupted);
    for (const stream of streams) stream.off('error', gone);
  };
}

function end(io: Io, ending: Ending, store: Store, folder: string): ExitCode {
  const text = shellWord(store.path());
  if (!store.isSaved()) {
    io.err(`\nThe case could not be saved. Here it is; copy it into a file to keep it:\n${store.text()}\n`);
  } else if (ending.kind === 'finished') {
    store.finished();
    io.err(
      `\nThe case is saved:\n${store.path()}\nAudit it again:\ncenter-audit audit ${text}\nAs a page:\ncenter-audit audit ${text} --format html --output report.html\n`,
    );
  }
  if (ending.kind !== 'finished') io.err(goOnText(store, folder));
  return ending.kind === 'interrupted' ? EXIT.interrupted : EXIT.done;
}

/** How to take the interview up again. */
function goOnText(store: Store, folder: string): string {
  if (!store.isSaved()) return '\nStopped.\n';
  if (!store.isOnDisk()) return '\nStopped. Nothing was answered yet, so nothing was saved.\n';
  const isOurs = store.path().startsWith(folder);
  const command = isOurs ? 'center-audit' : `center-audit interview ${shellWord(store.path())}`;
  // Each on a line of its own: a path that runs over the edge of the terminal is copied whole.
  return `\nStopped. Every answer is saved:\n${store.path()}\nGo on with:\n${command}\n`;
}
