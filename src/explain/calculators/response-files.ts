/** Response files named on the command line: plain files of limited size, relative to the working directory. */
import { open, stat } from 'node:fs/promises';
import { type ParsedResponse, parseResponse, ResponseError } from '../../acoustics/response.js';
import { MAX_RESPONSE_BYTES } from '../../facts/response-file.js';
import { quoted } from '../../lib/sanitize.js';
import { type Problem, UserError } from '../../lib/user-error.js';

const ACCEPTED = 'a text file of at most 2 MiB with frequency in Hz and level in dB on each line';

/** A problem with a file, thrown inside this module only. */
class Unreadable extends Error {}

async function readText(path: string): Promise<string> {
  // Asked before opening: a named pipe would wait for its other end.
  const stats = await stat(path);
  if (!stats.isFile()) throw new Unreadable(stats.isDirectory() ? 'is a folder' : 'is no plain file');
  if (stats.size > MAX_RESPONSE_BYTES) throw new Unreadable(`is ${stats.size} bytes`);
  const file = await open(path, 'r');
  try {
    // A file may grow while it is read: one byte more than allowed is enough to know.
    const { buffer, bytesRead } = await file.read({
      buffer: Buffer.alloc(MAX_RESPONSE_BYTES + 1),
      position: 0,
    });
    if (bytesRead > MAX_RESPONSE_BYTES) throw new Unreadable('is larger than 2 MiB');
    const bytes = buffer.subarray(0, bytesRead);
    if (bytes.includes(0)) throw new Unreadable('holds zero bytes and is no text');
    return new TextDecoder('utf-8').decode(bytes);
  } finally {
    await file.close();
  }
}

function reason(error: unknown): string {
  if (error instanceof Unreadable || error instanceof ResponseError) return error.message;
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === undefined) throw error;
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'is not there';
  if (code === 'EACCES' || code === 'EPERM') return 'may not be read';
  return 'cannot be read';
}

/** Reads the files of all channels. Throws a UserError that names every file that cannot be used. */
export async function readResponses<K extends string>(
  paths: Readonly<Record<K, string>>,
  tell: (notice: string) => void,
): Promise<Record<K, ParsedResponse>> {
  const problems: Problem[] = [];
  const read: [string, ParsedResponse][] = [];
  for (const [channel, path] of Object.entries<string>(paths)) {
    try {
      const response = parseResponse(await readText(path));
      for (const { line, message } of response.warnings) tell(`${quoted(path)}, line ${line}: ${message}.`);
      read.push([channel, response]);
    } catch (error) {
      const why = reason(error);
      const [what = why, accepted = ACCEPTED] = why.split('; accepted: ');
      problems.push({ where: `calc tonal-match, ${channel}, ${quoted(path)}`, what, accepted });
    }
  }
  const [first, ...rest] = problems;
  if (first !== undefined) throw new UserError(first, ...rest);
  return Object.fromEntries(read) as Record<K, ParsedResponse>;
}
