/** The real streams of this process. */
import { fstatSync, writeSync } from 'node:fs';
import { isatty } from 'node:tty';
import { quietly } from '../disk/quietly.js';
import { codeOf } from '../disk/read-file.js';
import { UserError } from '../lib/user-error.js';
import { OutputLost } from './failure.js';
import type { StreamIo } from './io.js';

/** Where there is no terminal, text is set for the width of an old one. */
const USUAL_COLUMNS = 80;

export function processIo(): StreamIo {
  const { stdin, stdout, stderr, env } = process;
  const outIsFile = isFile(stdout.fd);
  const errIsFile = isFile(stderr.fd);
  // Beyond a size limit the system sends this signal, whose default is a death without a word; heard, it is an error.
  if (outIsFile || errIsFile) process.on('SIGXFSZ', () => {});
  // Where nobody can be told any more, the exit code still holds.
  stderr.on('error', () => {});
  return {
    out: (text) => {
      if (outIsFile) writeToEnd(stdout.fd, text);
      else stdout.write(text);
    },
    err: (text) => {
      if (errIsFile) quietly(() => writeToEnd(stderr.fd, text));
      else stderr.write(text);
    },
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

/** A file or a device such as /dev/full: written at once, and without a queue. */
const isFile = (fd: number): boolean => {
  const there = quietly(() => fstatSync(fd));
  return there !== undefined && (there.isFile() || (there.isCharacterDevice() && !isatty(fd)));
};

/** The stream of Node writes once and does not look at how much was taken: half a result would look like a whole one. */
function writeToEnd(fd: number, text: string): void {
  let rest = Buffer.from(text);
  try {
    while (rest.length > 0) rest = rest.subarray(writeSync(fd, rest));
  } catch (error) {
    throw new OutputLost(codeOf(error));
  }
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
