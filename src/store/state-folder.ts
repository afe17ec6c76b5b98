/** Where unfinished interviews live: the state folder of the platform. */
import { createHash } from 'node:crypto';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import envPaths from 'env-paths';
import { realPlace } from '../disk/real-place.js';

/** On Linux the XDG state folder (a relative one is ignored, as its specification asks), else the data folder. */
export function stateFolder(): string {
  const paths = envPaths('center-audit', { suffix: '' });
  if (process.platform === 'darwin' || process.platform === 'win32') return paths.data;
  const isOdd = process.env.XDG_STATE_HOME !== undefined && !isAbsolute(paths.log);
  return isOdd ? join(homedir(), '.local', 'state', 'center-audit') : paths.log;
}

/** Where settings of the user are looked for. */
export const configFolder = (): string => envPaths('center-audit', { suffix: '' }).config;

/** A new case without a name of its own, named by the time it began. */
export function newCasePath(folder: string, now: Date): string {
  const stamp = now.toISOString().slice(0, 19).replace('T', '-').replaceAll(':', '');
  return join(folder, `interview-${stamp}-${process.pid}.json`);
}

/** Records of unfinished interviews, one a case. */
export const unfinishedFolder = (folder: string): string => join(folder, 'unfinished');

/**
 * How far the interview on this case has come: kept apart, since a case file holds facts alone. One record a file,
 * whatever links lead to it.
 */
export function progressPath(folder: string, casePath: string): string {
  const name = createHash('sha256').update(realPlace(casePath)).digest('hex').slice(0, 16);
  return join(unfinishedFolder(folder), `${name}.json`);
}
