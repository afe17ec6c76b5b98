/** Where results go: standard output, or a file that appears only when it is whole. */
import {
  closeSync,
  fsyncSync,
  openSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { CASE_FORMAT } from '../../facts/case-limits.js';
import { plainLine } from '../../facts/sanitize.js';
import { UserError } from '../../facts/user-error.js';
import type { StreamIo } from '../io.js';
import { codeOf } from '../read-file.js';

export interface Sink {
  write(text: string): Promise<void>;
  /** Everything went well: the file takes its place. */
  keep(): void;
  /** It did not: nothing is left behind. */
  drop(): void;
}

export function stdoutSink(io: StreamIo): Sink {
  return {
    write: (text) => {
      io.out(text);
      return io.flush();
    },
    keep: () => {},
    drop: () => {},
  };
}

/** Bytes in which a case file says what it is. */
const HEAD_BYTES = 4096;

/** @param cases paths that are read: none of them is ever written to */
export function fileSink(path: string, cases: readonly string[]): Sink {
  const name = plainLine(path);
  refuseCase(path, name, cases);
  const part = `${path}.${process.pid}.part`;
  const guarded = <T>(step: () => T): T => {
    try {
      return step();
    } catch (error) {
      rmSync(part, { force: true });
      throw new UserError({
        where: name,
        what: `this file cannot be written (${codeOf(error) ?? 'unknown reason'})`,
        accepted: 'a path in a folder that may be written to',
        example: '--output report.html',
      });
    }
  };
  const file = guarded(() => openSync(part, 'wx'));
  let open = true;
  const close = (): void => {
    if (open) closeSync(file);
    open = false;
  };
  return {
    write: async (text) => {
      guarded(() => writeFileSync(file, text));
    },
    keep: () =>
      guarded(() => {
        fsyncSync(file);
        close();
        renameSync(part, path);
      }),
    drop: () => {
      close();
      rmSync(part, { force: true });
    },
  };
}

function refuseCase(path: string, name: string, cases: readonly string[]): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return;
  const refuse = (what: string): never => {
    throw new UserError({
      where: name,
      what,
      accepted: 'a new file, or an earlier report',
      example: '--output report.html',
    });
  };
  if (there.isDirectory()) refuse('this is a folder');
  const isRead = cases.some((each) => {
    const read = statSync(each, { throwIfNoEntry: false });
    return read?.ino === there.ino && read.dev === there.dev;
  });
  if (isRead || looksLikeCase(path)) refuse('this is a case file, which is never overwritten');
}

function looksLikeCase(path: string): boolean {
  const file = openSync(path, 'r');
  try {
    const head = new Uint8Array(HEAD_BYTES);
    const text = Buffer.from(head.subarray(0, readSync(file, head))).toString('utf8');
    const [, format] = /"format"\s*:\s*"([^"]*)"/.exec(text) ?? [];
    return format === undefined
      ? /^\s*\{[\s\S]*"(?:facts|complaints)"\s*:/.test(text)
      : format === CASE_FORMAT;
  } finally {
    closeSync(file);
  }
}
