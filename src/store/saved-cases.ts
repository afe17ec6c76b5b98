/** The cases of this machine: those in the state folder, and those elsewhere whose interview is unfinished. */
import { existsSync, readdirSync, renameSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { quietly } from '../disk/quietly.js';
import { readLimited } from '../disk/read-file.js';
import { decodeCase, MAX_CASE_BYTES, readCase } from '../facts/case-file.js';
import { plainLine } from '../lib/sanitize.js';
import { forgetUnfinished, listUnfinished } from './unfinished.js';

export interface SavedCase {
  /** File name without its ending. */
  readonly name: string;
  readonly path: string;
  /** Title, or the owner's first words; may be empty. */
  readonly about: string;
  /** ISO time of the last change. */
  readonly updated: string;
  /** Questions asked in an interview that is not finished; absent when it is. */
  readonly asked?: number;
}

/** The latest first. */
export function listCases(folder: string): SavedCase[] {
  const open = listUnfinished(folder);
  const known = new Set(open.map(({ casePath }) => casePath));
  const names = quietly(() => readdirSync(folder)) ?? [];
  const finished = names
    .filter((name) => name.endsWith('.json') && !known.has(join(folder, name)))
    .flatMap((name): SavedCase[] => {
      const path = join(folder, name);
      const updated = quietly(() => statSync(path).mtime.toISOString());
      return updated === undefined ? [] : [{ ...named(path), about: aboutOf(path), updated }];
    });
  const unfinished = open.map(
    ({ casePath, about, updated, order }): SavedCase => ({
      ...named(casePath),
      about,
      updated,
      asked: order.length,
    }),
  );
  return [...unfinished, ...finished].sort((a, b) => b.updated.localeCompare(a.updated));
}

/** What a case is about; empty where it cannot be read. */
function aboutOf(path: string): string {
  const book = quietly(() => readCase(decodeCase(readLimited(path, MAX_CASE_BYTES))).book);
  return plainLine(book?.title ?? book?.words ?? '');
}

const named = (path: string) => ({ name: basename(path, '.json'), path });

/** Takes a case off the list; a copy under its name with a tilde is left. Returns its path. */
export function removeCase(folder: string, path: string): string {
  const kept = `${path}~`;
  if (existsSync(path)) renameSync(path, kept);
  forgetUnfinished(folder, path);
  return kept;
}
