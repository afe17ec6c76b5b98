/** The world of a command kept in memory: what it prints, and what it is given. */
import type { StreamIo } from '../../src/commands/io.js';

export interface MemoryIo extends StreamIo {
  readonly printed: { out: string; err: string };
}

export function memoryIo(
  given: { stdin?: string; terminal?: boolean } & Partial<Omit<StreamIo, 'stdin'>> = {},
): MemoryIo {
  const { stdin = '', terminal = false, ...rest } = given;
  const printed = { out: '', err: '' };
  const bytes = new TextEncoder().encode(stdin);
  return {
    printed,
    out: (text) => {
      printed.out += text;
    },
    err: (text) => {
      printed.err += text;
    },
    env: {},
    stdinIsTerminal: terminal,
    stdoutIsTerminal: terminal,
    stderrIsTerminal: terminal,
    columns: 80,
    readStdin: async () => bytes,
    stdin: () =>
      (async function* () {
        if (bytes.length > 0) yield bytes;
      })(),
    flush: async () => {},
    ...rest,
  };
}
