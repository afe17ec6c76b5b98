/** Holds an interview in this process as the installed command does, for tests in a real terminal. */
import { failure } from '../../src/commands/failure.js';
import { run } from '../../src/commands/interview.js';
import type { Io } from '../../src/commands/io.js';

const { stdin, stdout, stderr, env, argv } = process;
const io: Io = {
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
  env,
  stdinIsTerminal: stdin.isTTY === true,
  stdoutIsTerminal: stdout.isTTY === true,
  stderrIsTerminal: stderr.isTTY === true,
  columns: stdout.columns ?? 80,
  readStdin: () => Promise.resolve(new Uint8Array()),
};
const words = argv.slice(2);
const casePath = words.find((word) => !word.startsWith('--'));
const options = {
  full: words.includes('--full'),
  accessible: words.includes('--accessible'),
  json: words.includes('--json'),
};
try {
  process.exitCode = await run(io, casePath, options);
} catch (error) {
  const { code, text } = failure(error, env);
  stderr.write(text);
  process.exitCode = code;
}
