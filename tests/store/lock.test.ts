/** The lock of a case at moments that other processes seldom meet. */
import { execFileSync, spawn } from 'node:child_process';
import * as fs from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type LockResult, lockFile, takeLock } from '../../src/store/lock.js';

/** What another caller does in the middle of a write: the file is there, and nothing is in it yet. */
let meanwhile: (() => void) | undefined;
let hasLinks = true;

vi.mock('node:fs', async (original) => {
  const real = await original<typeof fs>();
  const writeFileSync: typeof fs.writeFileSync = (path, data, options) => {
    const happens = meanwhile;
    if (happens === undefined) return real.writeFileSync(path, data, options);
    meanwhile = undefined;
    real.writeFileSync(path, '', options);
    happens();
    real.writeFileSync(path, data);
  };
  const linkSync: typeof fs.linkSync = (from, to) => {
    if (!hasLinks) throw Object.assign(new Error('no links here'), { code: 'EPERM' });
    real.linkSync(from, to);
  };
  return { ...real, writeFileSync, linkSync };
});

let folder: string;
let path: string;
beforeEach(() => {
  folder = fs.mkdtempSync(join(tmpdir(), 'lock-'));
  path = join(folder, 'case.json');
});
afterEach(() => {
  meanwhile = undefined;
  hasLinks = true;
  fs.rmSync(folder, { recursive: true, force: true });
});

const taken = (result: LockResult): boolean => 'release' in result;

describe('a lock that is being taken', () => {
  it('is never met half written: of two callers one gets it', () => {
    let other: LockResult | undefined;
    meanwhile = () => {
      other = takeLock(path, 'the other');
    };
    const mine = takeLock(path, 'mine');
    expect(other && taken(other)).toBe(true);
    expect(mine).toMatchObject({ heldBy: { since: 'the other' } });
    expect(fs.readdirSync(folder)).toEqual(['.case.json.lock']);
  });

  it.each([true, false])('leaves nothing behind once it is given back (disk with links: %s)', (links) => {
    hasLinks = links;
    const mine = takeLock(path, 'mine');
    expect(takeLock(path, 'the other')).toMatchObject({ heldBy: { since: 'mine' } });
    if ('release' in mine) mine.release();
    expect(fs.readdirSync(folder)).toEqual([]);
  });
});

describe('a lock that is there and still empty', () => {
  it('is given the time to be filled by its holder', async () => {
    fs.writeFileSync(lockFile(path), '');
    const text = JSON.stringify({ pid: process.pid, host: hostname(), born: '', since: 'the other' });
    const holder = spawn('sh', ['-c', `sleep 0.05; printf %s '${text}' > '${lockFile(path)}'`]);
    const ended = new Promise((resolve) => holder.on('exit', resolve));
    expect(takeLock(path, 'mine')).toMatchObject({ heldBy: { since: 'the other' } });
    await ended;
    expect(fs.readFileSync(lockFile(path), 'utf8')).toBe(text);
  });

  it('is taken over when nobody fills it', () => {
    fs.writeFileSync(lockFile(path), '');
    expect(taken(takeLock(path, 'mine'))).toBe(true);
  });
});

const isRoot = process.getuid?.() === 0;

describe.runIf(isRoot && process.platform === 'linux')('a full disk', () => {
  it('gets no empty lock that would stand there', () => {
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=16k', 'tmpfs', folder], { stdio: 'ignore' });
    } catch {
      return; // Mounting is not allowed here.
    }
    try {
      expect(() => fs.writeFileSync(join(folder, 'filler'), Buffer.alloc(64_000))).toThrow('ENOSPC');
      expect(takeLock(path, 'mine')).toHaveProperty('impossible');
      expect(fs.readdirSync(folder)).toEqual(['filler']);
    } finally {
      execFileSync('umount', [folder]);
    }
  });
});
