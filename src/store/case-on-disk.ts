/**
 * The file of a case as an interview last read or wrote it. Writing is atomic: a new file is filled, flushed and
 * only then put in the place of the old one, so that a fault at any moment leaves one whole case. The case as it
 * was found is kept beside it under its name with a tilde. What was written there from outside since is never replaced.
 */
import { copyFileSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import writeFileAtomic from 'write-file-atomic';
import { plainLine } from '../lib/sanitize.js';

interface CaseOnDisk {
  /** Why the file must not be replaced, in words, or undefined. */
  changed(): string | undefined;
  /** Returns what went wrong, in words, or undefined. */
  write(text: string): string | undefined;
}

/**
 * @param name path of the case as its owner gave it, for words
 * @param place where it really lies
 * @param found what was read there; left out where there was no file
 */
export function caseOnDisk(name: string, place: string, found?: Uint8Array): CaseOnDisk {
  let known = found;
  let hasBackup = false;

  const changed = (): string | undefined => {
    try {
      return isKnown(place, known) ? undefined : `${plainLine(name)}: ${CHANGED}`;
    } catch (error) {
      return troubleText(name, error);
    }
  };
  const write = (text: string): string | undefined => {
    const trouble = changed();
    if (trouble !== undefined) return trouble;
    try {
      if (known !== undefined && !hasBackup) backUp(place);
      hasBackup = true;
      // Looked at once more when the new file is ready: an editor may have saved in the meantime.
      writeWhole(place, text, () => {
        if (!isKnown(place, known)) throw new Error(CHANGED);
      });
    } catch (error) {
      return troubleText(name, error);
    }
    known = Buffer.from(text);
    return undefined;
  };
  return { changed, write };
}

const CHANGED = 'this file was changed outside this interview, and that change is not overwritten';

/** A file that is gone holds nothing that could be lost. */
function isKnown(place: string, known: Uint8Array | undefined): boolean {
  try {
    const { size } = statSync(place);
    return known !== undefined && size === known.length && readFileSync(place).equals(known);
  } catch (error) {
    if (isGone(error)) return true;
    throw error;
  }
}

function backUp(place: string): void {
  try {
    copyFileSync(place, `${place}~`);
  } catch (error) {
    if (!isGone(error)) throw error;
  }
}

function isGone(error: unknown): boolean {
  const { code } = error as NodeJS.ErrnoException;
  return code === 'ENOENT' || code === 'ENOTDIR';
}

/**
 * The library writes once and does not look at how much was taken: on a disk that is nearly full half a file
 * would replace the whole one. So the new file is filled completely first, which fails with an error if it does not fit.
 */
function writeWhole(path: string, text: string, check: () => void): void {
  writeFileAtomic.sync(path, text, {
    tmpfileCreated: (file) => {
      writeFileSync(file, text);
      check();
    },
  });
}

const TROUBLES: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the quota of the disk is used up',
  EROFS: 'the disk is read-only',
  EACCES: 'the folder may not be written to',
  EPERM: 'the folder may not be written to',
  ENOENT: 'the folder does not exist',
  ENOTDIR: 'a part of the path is no folder',
  EISDIR: 'there is a folder of that name',
  ENAMETOOLONG: 'the name is too long',
};

function troubleText(path: string, error: unknown): string {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return `${plainLine(path)}: ${TROUBLES[code] ?? plainLine(message)}`;
}
