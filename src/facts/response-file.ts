/**
 * Response files beside a case. A stranger's case must not make the program read anything else: the path stays
 * inside the folder of the case, symbolic links included, and only a plain file of limited size is read.
 */
import { readFileSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { quoted } from '../lib/sanitize.js';
import { type FactBook, told } from './book.js';
import type { FileFactId } from './catalog.js';
import { filePathProblem } from './paths.js';
import type { Refusal } from './units.js';

/** A sweep saved at 1/96 octave has some 1000 lines of 40 letters; this is fifty times that. */
export const MAX_RESPONSE_BYTES = 2 * 1024 * 1024;

export type ResponseText = { readonly text: string } | { readonly refused: Refusal };

/** The text of a response file, undefined where none was told. Letters outside UTF-8 become replacement marks. */
export function readResponseFile(book: FactBook, id: FileFactId): ResponseText | undefined {
  const path = told(book, id);
  if (typeof path !== 'string') return undefined;
  const refuse = (what: string): ResponseText => ({
    refused: {
      what,
      accepted: 'a text file of at most 2 MiB in the folder of the case',
      example: 'center.txt',
    },
  });
  const problem = filePathProblem(path);
  if (problem !== undefined) return refuse(problem);
  if (book.folder === undefined) {
    return refuse(
      `${quoted(path)} cannot be looked for: the case came from standard input and has no folder`,
    );
  }
  try {
    const folder = realpathSync(book.folder);
    const file = realpathSync(join(folder, path));
    if (!file.startsWith(folder.endsWith(sep) ? folder : folder + sep)) {
      return refuse(`${quoted(path)} leads out of the folder of the case`);
    }
    const { size, isFile } = describeFile(file);
    if (!isFile) return refuse(`${quoted(path)} is no plain file`);
    if (size > MAX_RESPONSE_BYTES) return refuse(`${quoted(path)} is ${size} bytes`);
    const bytes = readFileSync(file);
    if (bytes.length > MAX_RESPONSE_BYTES) return refuse(`${quoted(path)} is ${bytes.length} bytes`);
    if (bytes.includes(0)) return refuse(`${quoted(path)} holds zero bytes and is no text`);
    return { text: new TextDecoder('utf-8').decode(bytes) };
  } catch (error) {
    return refuse(`${quoted(path)} ${reason(error)}`);
  }
}

function describeFile(file: string): { size: number; isFile: boolean } {
  const stats = statSync(file);
  return { size: stats.size, isFile: stats.isFile() };
}

function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'is not there';
  if (code === 'EACCES' || code === 'EPERM') return 'may not be read';
  return 'cannot be read';
}
