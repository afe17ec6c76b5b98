/** One interview at a time on one case: a small file beside it says who is at work. */
import { randomUUID } from 'node:crypto';
import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';

interface Holder {
  readonly pid: number;
  readonly host: string;
  /** When the process began, as the system counts it; '' where that cannot be read. */
  readonly born: string;
  /** ISO time at which the lock was taken. */
  readonly since: string;
}

export type LockResult =
  | { readonly release: () => void }
  | { readonly heldBy: Holder; readonly file: string }
  /** No lock can be written there; the interview goes on without one. */
  | { readonly impossible: string };

export const lockFile = (casePath: string): string => join(dirname(casePath), `.${basename(casePath)}.lock`);

export function takeLock(casePath: string, since: string): LockResult {
  const file = lockFile(casePath);
  const mine: Holder = { pid: process.pid, host: hostname(), born: bornOf(process.pid), since };
  const text = `${JSON.stringify(mine)}\n`;
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      putLock(file, text);
      return { release: () => releaseLock(file, text) };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') return { impossible: (error as Error).message };
    }
    const found = readSettled(file);
    const holder = found === undefined ? undefined : parseHolder(found);
    if (holder && isAlive(holder)) return { heldBy: holder, file };
    if (found !== undefined) setAside(file, found);
  }
  return { impossible: 'the lock keeps changing hands' };
}

/** The lock gets its name when it is whole, so that nobody meets half of one. Throws EEXIST where there is one. */
function putLock(file: string, text: string): void {
  const whole = `${file}.${randomUUID()}`;
  try {
    writeFileSync(whole, text, { flag: 'wx' });
    if (!isLinked(whole, file)) writeFileSync(file, text, { flag: 'wx' });
  } finally {
    rmSync(whole, { force: true });
  }
}

/** False where the disk knows no links (those of cameras and sticks, some of networks). */
function isLinked(whole: string, file: string): boolean {
  try {
    linkSync(whole, file);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    return false;
  }
}

const LOOKS = 10;
const LOOK_AGAIN_MS = 20;

/** Without links a lock that names nobody may be one that is written just now: it is given a moment. */
function readSettled(file: string): string | undefined {
  let text = readText(file);
  for (let look = 0; look < LOOKS && text !== undefined && parseHolder(text) === undefined; look++) {
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, LOOK_AGAIN_MS);
    text = readText(file);
  }
  return text;
}

function readText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

function parseHolder(text: string): Holder | undefined {
  try {
    const { pid, host, born, since } = JSON.parse(text) as Record<string, unknown>;
    if (typeof pid !== 'number' || typeof host !== 'string' || typeof since !== 'string') return undefined;
    return { pid, host, born: typeof born === 'string' ? born : '', since };
  } catch {
    return undefined;
  }
}

/** A process of another machine counts as alive: it cannot be asked. A number given anew does not. */
function isAlive({ pid, host, born }: Holder): boolean {
  if (host !== hostname()) return true;
  try {
    process.kill(pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ESRCH') return false;
  }
  return born === '' || born === bornOf(pid);
}

/** Field 22 of /proc/PID/stat, the start of the process in ticks since boot; '' where there is no such file. */
function bornOf(pid: number): string {
  const stat = readText(`/proc/${pid}/stat`);
  return stat?.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? '';
}

/** Takes a stale lock away, unless somebody else put a fresh one there in the meantime. */
function setAside(file: string, stale: string): void {
  const aside = `${file}.${process.pid}`;
  try {
    renameSync(file, aside);
    const taken = readFileSync(aside, 'utf8');
    if (taken !== stale) putLock(file, taken);
  } catch {
    // Somebody else was faster; the next attempt looks again.
  } finally {
    rmSync(aside, { force: true });
  }
}

function releaseLock(file: string, text: string): void {
  if (readText(file) === text) rmSync(file, { force: true });
}
