/** `center-audit learn`: solved cases counted into priors. */
import { plural } from '../explain/words.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { NOTHING_SOLVED, withSolved } from '../reasoning/priors.js';
import { fileSink, stdoutSink } from './batch/sink.js';
import { EXIT, type ExitCode, type GlobalOptions, type StreamIo } from './io.js';
import { loadCase } from './load-case.js';
import { priorsText } from './priors-file.js';
import { usualPriorsPath } from './priors-in-use.js';

/** Causes named in the summary. */
const MOST_NAMED = 5;

export async function run(
  io: StreamIo,
  paths: readonly string[],
  { output }: GlobalOptions & { readonly output?: string },
): Promise<ExitCode> {
  let solved = NOTHING_SOLVED;
  let code: ExitCode = EXIT.done;
  const without: string[] = [];
  for (const path of paths) {
    try {
      const { book, name } = await loadCase(io, path);
      const before = solved;
      solved = withSolved(before, book);
      if (solved === before) without.push(name);
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      io.err(`${error.message}\n`);
      code = EXIT.input;
    }
  }
  if (without.length > 0) io.err(`${skipped(without)}\n`);
  if (solved.cases === 0)
    throw new UserError({
      where: 'learn',
      what: `none of ${plural(paths.length, 'case')} tells what cured it`,
      accepted: 'cases with a trial that left the trouble gone',
      example: '"trials": [{ "act": "delay/enter-taped-distances", "outcome": "gone", "stays": true }]',
    });
  const sink = output === undefined ? stdoutSink(io) : await fileSink(io, output, paths);
  await sink.write(priorsText(solved));
  sink.keep();
  const named = Object.entries(solved.byCause)
    .filter(([, counted]) => counted.solved > 0)
    .sort(([, a], [, b]) => b.solved - a.solved)
    .slice(0, MOST_NAMED)
    .map(([id, counted]) => `${id} ${countText(counted.solved)} (${countText(counted.expected)} expected)`);
  io.err(`${plural(solved.cases, 'solved case')} counted: ${named.join(', ')}.\n`);
  if (output !== undefined)
    io.err(
      `Written to ${plainLine(output)}. Use it with --priors ${plainLine(output)}, or keep it as ${usualPriorsPath()} to have it in use always.\n`,
    );
  return code;
}

const countText = (count: number): string => String(Number(count.toFixed(1)));

function skipped(names: readonly string[]): string {
  const [first] = names;
  const more = names.length === 1 ? '' : ` and ${plural(names.length - 1, 'other case')}`;
  return `Not counted, as nothing tells what cured it: ${first}${more}.`;
}
