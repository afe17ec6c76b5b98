/**
 * One interview at a time on one case: a small file beside it says who is at work. It keeps one person from opening a
 * case in two windows; a lock that names nobody who lives is taken away.
 */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { quietly } from '../disk/quietly.js';

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
  const there = readText(file);
  const before = holderIn(there);
  if (before && isAlive(before)) return { heldBy: before, file };
  try {
    if (there !== undefined) rmSync(file, { force: true });
    writeFileSync(file, text, { flag: 'wx' });
    return { release: () => releaseLock(file, text) };
  } catch (error) {
    const left = readText(file);
    const faster = holderIn(left);
    if (faster) return { heldBy: faster, file };
    // A full disk leaves an empty one.
    if (left === '') quietly(() => rmSync(file));
    return { impossible: (error as Error).message };
  }
}

const readText = (file: string): string | undefined => quietly(() => readFileSync(file, 'utf8'));

function holderIn(text: string | undefined): Holder | undefined {
  const found = quietly(() => JSON.parse(text ?? '') as Record<string, unknown>);
  const { pid, host, born, since } = found ?? {};
  if (typeof pid !== 'number' || typeof host !== 'string' || typeof since !== 'string') return undefined;
  return { pid, host, born: typeof born === 'string' ? born : '', since };
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

function releaseLock(file: string, text: string): void {
  if (readText(file) === text) rmSync(file, { force: true });
}
