/** Bytes of a file that a person named, of limited size, with errors that say what to do instead. */
import { closeSync, fstatSync, openSync, readdirSync, readSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { nearest } from '../lib/nearest.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { quietly } from './quietly.js';

const CHUNK_BYTES = 64 * 1024;
/** Files of a folder that are looked through for a near miss. */
const MOST_NAMES = 1000;

/** Reads at most `limitBytes`. Throws a UserError for anything that cannot be read or is larger. */
export function readLimited(path: string, limitBytes: number, help: Help = CASE_FILE): Uint8Array {
  const name = plainLine(path);
  let file: number;
  try {
    file = openSync(path, 'r');
  } catch (error) {
    throw new UserError({ where: name, what: reasonOf(error, path), ...help });
  }
  try {
    if (fstatSync(file).isDirectory()) {
      throw new UserError({
        where: name,
        what: 'this is a folder',
        ...(help === CASE_FILE ? CASE_FOLDER : help),
      });
    }
    return readBounded(file, limitBytes, name);
  } finally {
    closeSync(file);
  }
}

/** What would have been right. */
type Help = { readonly accepted: string; readonly example: string };
const CASE_FILE: Help = {
  accepted: 'the path of a case file, or - for standard input',
  example: 'center-audit audit case.json',
};
const CASE_FOLDER: Help = {
  accepted: 'case files; name several at once with a pattern',
  example: 'center-audit audit cases/*.json',
};

/** Pipes and devices have no size, so the bytes are counted as they come. */
function readBounded(file: number, limitBytes: number, name: string): Uint8Array {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const chunk = new Uint8Array(CHUNK_BYTES);
    const got = readSync(file, chunk);
    if (got === 0) return Buffer.concat(chunks);
    size += got;
    if (size > limitBytes) {
      throw new UserError({
        where: name,
        what: `the file is larger than ${limitBytes / 2 ** 20} MiB`,
        accepted: `a file of at most ${limitBytes / 2 ** 20} MiB`,
      });
    }
    chunks.push(chunk.subarray(0, got));
  }
}

/** Why a file cannot be read, in words. */
function reasonOf(error: unknown, path: string): string {
  switch (codeOf(error)) {
    case 'ENOENT':
    case 'ENOTDIR': {
      const near = nearMiss(path);
      return `there is no such file${near === undefined ? '' : `; did you mean ${plainLine(near)}?`}`;
    }
    case 'EACCES':
    case 'EPERM':
      return 'this file may not be read';
    case 'ELOOP':
      return 'this link leads around in a circle';
    default:
      return `this file cannot be opened (${codeOf(error) ?? 'unknown reason'})`;
  }
}

export function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
}

function nearMiss(path: string): string | undefined {
  // A link that leads nowhere has the very name that was typed.
  const names = (quietly(() => readdirSync(dirname(path))) ?? []).filter((name) => name !== basename(path));
  const near = nearest(basename(path), names.slice(0, MOST_NAMES));
  if (near === undefined) return undefined;
  const meant = path.slice(0, path.length - basename(path).length) + near;
  return meant.startsWith('-') ? `./${meant}` : meant;
}
