/** A case changed by a command and kept: under the lock of interviews, whole or not at all, the old one beside it. */
import { resolve } from 'node:path';
import { realPlace } from '../disk/real-place.js';
import type { FactBook } from '../facts/book.js';
import { writeCase } from '../facts/case-file.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { caseOnDisk } from './case-on-disk.js';
import { locked, readFound } from './case-store.js';

/**
 * @param change what becomes of the book; the same book writes nothing
 * Throws a UserError when the case cannot be read or written, or an interview is at work on it.
 */
export function changeCase(named: string, change: (book: FactBook) => FactBook): void {
  const path = resolve(named);
  const lock = locked(path, new Date());
  try {
    const { book, expect, bytes } = readFound(path, () => {}, false);
    const changed = change(book);
    if (changed === book) return;
    const text = writeCase(changed, expect === undefined ? {} : { expect });
    const trouble = caseOnDisk(named, realPlace(path), bytes).write(text);
    if (trouble !== undefined) throw new UserError({ where: plainLine(named), what: trouble });
  } finally {
    lock.release();
  }
}
