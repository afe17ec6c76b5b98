/** The real streams of this process. */
import { UserError } from '../lib/user-error.js';
import type { StreamIo } from './io.js';

/** Where there is no terminal, text is set for the width of an old one. */
const USUAL_COLUMNS = 80;

export function processIo(): StreamIo {
  const { stdin, stdout, stderr, env } = process;
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    env,
    stdinIsTerminal: stdin.isTTY === true,
    stdoutIsTerminal: stdout.isTTY === true,
    stderrIsTerminal: stderr.isTTY === true,
    columns: stdout.columns ?? USUAL_COLUMNS,
    stdin: () => stdin,
    readStdin: (limitBytes) => readAll(stdin, limitBytes),
    flush: () =>
      stdout.writableNeedDrain
        ? new Promise((resolve) => void stdout.once('drain', resolve))
        : Promise.resolve(),
  };
}

async function readAll(stream: AsyncIterable<Uint8Array>, limitBytes: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += chunk.length;
    if (size > limitBytes) {
      throw new UserError({
        where: 'standard input',
        what: `more than ${limitBytes} bytes arrived`,
        accepted: `at most ${limitBytes} bytes`,
      });
    }
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
