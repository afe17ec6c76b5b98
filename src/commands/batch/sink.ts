/** Where results go: standard output, a file that appears only when it is whole, or a device or pipe. */
import { closeSync, fstatSync, openSync, readSync, type Stats, statSync } from 'node:fs';
import { quietly } from '../../disk/quietly.js';
import { codeOf } from '../../disk/read-file.js';
import { realPlace } from '../../disk/real-place.js';
import { CASE_FORMAT } from '../../facts/case-limits.js';
import { plainLine } from '../../lib/sanitize.js';
import { UserError } from '../../lib/user-error.js';
import type { StreamIo } from '../io.js';
import { directSink } from './direct.js';
import { partSink } from './part.js';

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
const STDOUT = 1;

/**
 * A file is replaced as a whole; into what is there and no file (a device, a pipe) is written directly.
 * @param cases paths that are read: none of them is ever written to
 */
export async function fileSink(io: StreamIo, path: string, cases: readonly string[]): Promise<Sink> {
  const guarded = guardOf(plainLine(path));
  const there = guarded(() => statSync(path, { throwIfNoEntry: false }));
  if (there !== undefined) {
    guarded(() => refuseCase(path, there, cases));
    // What the shell has opened already is the reader's own choice, whatever stands in it.
    if (isSame(there, stdoutThere())) return stdoutSink(io);
    guarded(() => refuseForeign(path, there));
  }
  return there === undefined || there.isFile()
    ? partSink(realPlace(path), guarded, there && there.mode & 0o7777)
    : directSink(path, there.isFIFO(), guarded);
}

/** Tells of a step that failed what a person can do about it. */
export type Guard = <T>(step: () => T) => T;

function guardOf(name: string): Guard {
  return (step) => {
    try {
      return step();
    } catch (error) {
      if (error instanceof UserError) throw error;
      throw new UserError({
        where: name,
        what: `this file cannot be written (${codeOf(error) ?? 'unknown reason'})`,
        accepted: 'a path in a folder that may be written to',
        example: '--output report.html',
      });
    }
  };
}

/** Looks only into files: what a pipe holds would be lost, and an empty one would never answer. */
function refuseCase(path: string, there: Stats, cases: readonly string[]): void {
  if (there.isDirectory()) refuse(path, 'this is a folder');
  if (there.isFile() && cases.some((each) => isSame(there, statOf(each))))
    refuse(path, 'this is a case file, which is never overwritten');
}

function refuseForeign(path: string, there: Stats): void {
  if (there.isFile() && !isOurs(path))
    refuse(path, 'this file is no report of this program, and nothing else is ever overwritten');
}

function refuse(path: string, what: string): never {
  throw new UserError({
    where: plainLine(path),
    what,
    accepted: 'a new file, or an earlier report',
    example: '--output report.html',
  });
}

/** Also a path such as /dev/stdout means the file, pipe or terminal that the shell has opened already. */
const stdoutThere = (): Stats | undefined => quietly(() => fstatSync(STDOUT));
/** What is wrong with a case is told when it is read. */
const statOf = (path: string): Stats | undefined => quietly(() => statSync(path));

const isSame = (a: Stats, b: Stats | undefined): boolean => a.ino === b?.ino && a.dev === b.dev;

/** How reports for people begin: a heading, a divider, a page with our title, a post with its marks. */
const REPORT_BEGINS =
  /^(?:#? ?Center loudspeaker audit|=== .* ===|Causes over all cases|[^{]*<title>(?:[^<]*: )?Center loudspeaker audit|[^{<]*\[(?:b|list|quote)\])/;

/** A report of ours says so, or begins as one does; an empty file holds nothing that could be lost. */
function isOurs(path: string): boolean {
  const file = openSync(path, 'r');
  try {
    const head = new Uint8Array(HEAD_BYTES);
    const text = Buffer.from(head.subarray(0, readSync(file, head))).toString('utf8');
    const [, format] = /"format"\s*:\s*"([^"]*)"/.exec(text) ?? [];
    if (/^\s*\{/.test(text))
      return format !== undefined && format !== CASE_FORMAT && format.startsWith('center-audit/');
    return text === '' || REPORT_BEGINS.test(text);
  } finally {
    closeSync(file);
  }
}
