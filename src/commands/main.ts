/** The program: real streams, signals and exit codes around the tree of commands. */
import { failure, OutputLost } from './failure.js';
import { EXIT, type ExitCode } from './io.js';
import { processIo } from './process-io.js';
import { buildProgram, runProgram } from './program.js';

/** Set when the program is bundled. */
declare const __VERSION__: string | undefined;
const version = typeof __VERSION__ === 'string' ? __VERSION__ : '0.0.0-source';

const io = processIo();
const finish = (code: ExitCode): void => {
  process.exitCode = code;
};

// The reader of a pipe may leave early, as `head` does; that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(EXIT.done);
  io.err(failure(new OutputLost(error.code), io.env).text);
  process.exit(EXIT.fault);
});
process.on('SIGINT', () => {
  // An interview saves first and says how to go on.
  if (process.listenerCount('SIGINT') > 1) return;
  io.err('\nInterrupted.\n');
  process.exit(EXIT.interrupted);
});

try {
  await runProgram(buildProgram(io, version, finish), process.argv.slice(2));
} catch (error) {
  const { code, text } = failure(error, io.env);
  io.err(text);
  finish(code);
}
