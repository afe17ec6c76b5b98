/** What a saved case is about, for a list; empty where it cannot be read. */

import { quietly } from '../disk/quietly.js';
import { readLimited } from '../disk/read-file.js';
import { decodeCase, MAX_CASE_BYTES, readCase } from '../facts/case-file.js';
import { plainLine } from '../lib/sanitize.js';

export function loadTitle(path: string): string {
  const book = quietly(() => readCase(decodeCase(readLimited(path, MAX_CASE_BYTES))).book);
  return plainLine(book?.title ?? book?.words ?? '');
}
