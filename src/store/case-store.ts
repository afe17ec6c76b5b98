/**
 * Keeps the case of an interview on disk after every answer, under a lock, with a record of how far the interview
 * has come. Lock and file are those of the place to which links lead; words and record keep the path as it was given.
 */
import { existsSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { quietly } from '../disk/quietly.js';
import { realPlace } from '../disk/real-place.js';
import { responsesIn } from '../disk/response-files.js';
import { EMPTY_BOOK, type FactBook } from '../facts/book.js';
import type { CaseWarning } from '../facts/case-error.js';
import { decodeCase, type Expectation, MAX_CASE_BYTES, readCase, writeCase } from '../facts/case-file.js';
import type { ReadResponse } from '../facts/responses.js';
import type { Earlier, Keeper, Saved } from '../interview/port.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { caseOnDisk } from './case-on-disk.js';
import { lockFile, takeLock } from './lock.js';
import { newCasePath } from './state-folder.js';
import { forgetUnfinished, readUnfinished, writeUnfinished } from './unfinished.js';

export interface Store extends Keeper {
  /** Absolute path of the case. */
  path(): string;
  readonly book: FactBook;
  /** Reads response files beside the case; undefined for a case that has no name of its own. */
  readonly readResponse: ReadResponse | undefined;
  /** Where an earlier interview on this case stopped. */
  readonly before: Earlier | undefined;
  readonly warnings: readonly CaseWarning[];
  /** The case as it should stand there. */
  text(): string;
  /** There is a file. */
  isOnDisk(): boolean;
  /** True once the present state of the case is on disk. */
  isSaved(): boolean;
  /** The interview came to its end: it is no longer listed as unfinished. */
  finished(): void;
  release(): void;
}

interface StoreOptions {
  /** The case to work on; a new one in the state folder when left out. */
  readonly casePath?: string;
  readonly stateFolder: string;
  readonly now: () => Date;
}

/** Throws a UserError when the case cannot be read or another interview is at work on it. */
export function openStore({ casePath, stateFolder, now }: StoreOptions): Store {
  let path = casePath === undefined ? newCasePath(stateFolder, now()) : resolve(casePath);
  // The first save tells what is wrong with the folder and offers another place.
  if (casePath === undefined) quietly(() => mkdirSync(stateFolder, { recursive: true, mode: 0o700 }));
  let lock = locked(path, now());
  const found = readFound(path, lock.release, casePath === undefined);
  let file = caseOnDisk(path, realPlace(path), found.bytes);
  let written = found.text;
  let isSaved = true;
  let wanted = found.text ?? '';

  const save = ({ book, order, put, parked }: Saved): string | undefined => {
    const text = writeCase(book, found.expect === undefined ? {} : { expect: found.expect });
    wanted = text;
    isSaved =
      text === written || (written === undefined && text === writeCase({ ...EMPTY_BOOK, units: book.units }));
    if (!isSaved) {
      const trouble = file.write(text);
      if (trouble !== undefined) return trouble;
      written = text;
      isSaved = true;
    }
    if (written !== undefined) {
      const about = book.title ?? book.words ?? '';
      const record = { casePath: path, about, updated: now().toISOString(), order, put };
      // Without it the next interview still finds every answer; only the order of asking is lost.
      quietly(() => writeUnfinished(stateFolder, { ...record, ...(parked ? { parked } : {}) }));
    }
    return undefined;
  };

  /** The same place is no other one: what stands in the way there is told, or it is tried again. */
  const moveTo = (typed: string): string | undefined => {
    const target = resolve(typed);
    if (!target.endsWith('.json')) return `${plainLine(target)}: the name of a case ends in .json`;
    if (target === path) return file.changed();
    if (existsSync(target)) return `${plainLine(target)}: there is something of that name already`;
    try {
      const next = locked(target, now());
      lock.release();
      lock = next;
    } catch (error) {
      if (error instanceof UserError) return error.message;
      throw error;
    }
    path = target;
    file = caseOnDisk(path, realPlace(path));
    written = undefined;
    isSaved = false;
    return undefined;
  };

  return {
    path: () => path,
    book: found.book,
    readResponse: casePath === undefined ? undefined : responsesIn(dirname(path)),
    before: found.text === undefined ? undefined : readUnfinished(stateFolder, path),
    warnings: found.warnings,
    text: () => wanted,
    isOnDisk: () => written !== undefined,
    isSaved: () => isSaved,
    save,
    moveTo,
    finished: () => forgetUnfinished(stateFolder, path),
    release: () => lock.release(),
  };
}

interface Found {
  readonly book: FactBook;
  readonly expect?: Expectation;
  readonly warnings: readonly CaseWarning[];
  /** The file as it stands; undefined where there is none yet. */
  readonly bytes?: Uint8Array;
  readonly text?: string;
}

/** The case as it lies there, with what a rewrite must keep. */
export function readFound(path: string, release: () => void, isNameless: boolean): Found {
  if (isNameless || !existsSync(path)) return { book: EMPTY_BOOK, warnings: [] };
  try {
    const stat = statSync(path);
    if (!stat.isFile())
      throw new UserError({
        where: plainLine(path),
        what: 'this is no file',
        accepted: 'the path of a case file',
      });
    if (stat.size > MAX_CASE_BYTES) decodeCase(new Uint8Array(MAX_CASE_BYTES + 1));
    const bytes = readFileSync(path);
    const text = decodeCase(bytes);
    return { ...readCase(text, { readResponse: responsesIn(dirname(path)) }), bytes, text };
  } catch (error) {
    release();
    throw error;
  }
}

/** One at a time works on a case. Throws a UserError that names who does. */
export function locked(path: string, now: Date): { release: () => void } {
  const place = realPlace(path);
  const result = takeLock(place, now.toISOString());
  if ('heldBy' in result) {
    const { pid, since, host } = result.heldBy;
    throw new UserError({
      where: plainLine(path),
      what: `another interview on this case is open (process ${pid} on ${plainLine(host)}, since ${timeText(since)})`,
      accepted: 'one interview at a time on one case: end the other one, or work on a copy',
      example: `if no other is open, delete ${plainLine(lockFile(place))}`,
    });
  }
  return 'release' in result ? result : { release: () => {} };
}

const timeText = (iso: string): string => plainLine(iso).replace('T', ' ').slice(0, 16);
