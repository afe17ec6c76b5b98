/** Where a path leads: one file has one real place, whatever links lead to it. */
import { readlinkSync, realpathSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { quietly } from './quietly.js';

/** The system follows as many links before it gives up. */
const MOST_LINKS = 40;

/**
 * The path without links at which a file is, or would be made by writing to `path`: a link may lead to a file that
 * is not there yet. A path that leads nowhere comes back as it is, so that using it tells what is wrong.
 */
export function realPlace(path: string): string {
  let at = resolve(path);
  for (let links = 0; links < MOST_LINKS; links++) {
    const real = quietly(() => realpathSync(at));
    if (real !== undefined) return real;
    const target = quietly(() => readlinkSync(at));
    const folder = quietly(() => realpathSync(dirname(at)));
    if (folder === undefined) return at;
    if (target === undefined) return join(folder, basename(at));
    at = resolve(folder, target);
  }
  return resolve(path);
}
