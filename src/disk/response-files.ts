/**
 * Response files on disk. A stranger's case must not make the program read anything else: its paths stay inside the
 * folder of the case, symbolic links included, and only a plain file of limited size is read.
 */
import { closeSync, openSync, readSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { filePathProblem } from '../facts/paths.js';
import {
  type MeasuredResponse,
  type ReadResponse,
  refusedResponse,
  responseFrom,
} from '../facts/responses.js';
import { quoted } from '../lib/sanitize.js';

/** A sweep saved at 1/96 octave has some 1000 lines of 40 letters; this is fifty times that. */
export const MAX_RESPONSE_BYTES = 2 * 1024 * 1024;

/** Why a file is not read; never leaves this module. */
class Unreadable extends Error {}

/** Reads files that a case names, below the folder of the case. */
export const responsesIn =
  (folder: string): ReadResponse =>
  (path) => {
    const problem = filePathProblem(path);
    if (problem !== undefined) return refusedResponse(problem);
    const found = readFrom(() => inside(folder, path));
    if (!('refused' in found)) return found;
    return { refused: { ...found.refused, what: `${quoted(path)} ${found.refused.what}` } };
  };

/** Reads a file that a person named, wherever it is. */
export const readResponseFile: ReadResponse = (path) => readFrom(() => path);

function inside(folder: string, path: string): string {
  const root = realpathSync(folder);
  const file = realpathSync(join(root, path));
  if (!file.startsWith(root.endsWith(sep) ? root : root + sep))
    throw new Unreadable('leads out of the folder of the case');
  return file;
}

function readFrom(locate: () => string): MeasuredResponse {
  try {
    return responseFrom(readText(locate()));
  } catch (error) {
    return refusedResponse(reason(error));
  }
}

/** Letters outside UTF-8 become replacement marks. */
function readText(path: string): string {
  // Asked before opening: a named pipe would wait for its other end.
  const stats = statSync(path);
  if (!stats.isFile()) throw new Unreadable(stats.isDirectory() ? 'is a folder' : 'is no plain file');
  if (stats.size > MAX_RESPONSE_BYTES) throw new Unreadable(`is ${stats.size} bytes`);
  // A file may grow while it is read: one byte more than allowed is enough to know.
  const buffer = Buffer.alloc(stats.size + 1);
  const file = openSync(path, 'r');
  let size = 0;
  try {
    for (let got = -1; got !== 0 && size < buffer.length; size += got)
      got = readSync(file, buffer, size, buffer.length - size, null);
  } finally {
    closeSync(file);
  }
  if (size > MAX_RESPONSE_BYTES) throw new Unreadable(`is larger than ${MAX_RESPONSE_BYTES} bytes`);
  const bytes = buffer.subarray(0, size);
  if (bytes.includes(0)) throw new Unreadable('holds zero bytes and is no text');
  return new TextDecoder('utf-8').decode(bytes);
}

function reason(error: unknown): string {
  if (error instanceof Unreadable) return error.message;
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === undefined) throw error;
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'is not there';
  if (code === 'EACCES' || code === 'EPERM') return 'may not be read';
  return 'cannot be read';
}
