/** The lock of a case: one holder at a time, and nothing left behind. */
import { execFileSync } from 'node:child_process';
import * as fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type LockResult, lockFile, takeLock } from '../../src/store/lock.js';

let folder: string;
let path: string;
beforeEach(() => {
  folder = fs.mkdtempSync(join(tmpdir(), 'lock-'));
  path = join(folder, 'case.json');
});
afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));

const taken = (result: LockResult): boolean => 'release' in result;

describe('a lock', () => {
  it('has one holder, and leaves nothing behind once it is given back', () => {
    const mine = takeLock(path, 'mine');
    expect(takeLock(path, 'the other')).toMatchObject({ heldBy: { since: 'mine' } });
    if ('release' in mine) mine.release();
    expect(fs.readdirSync(folder)).toEqual([]);
  });

  it.each(['', '{}', '[1', 'null'])('that names nobody is taken over (%s)', (text) => {
    fs.writeFileSync(lockFile(path), text);
    expect(taken(takeLock(path, 'mine'))).toBe(true);
  });

  it('cannot be taken in a folder that is not there', () => {
    expect(takeLock(join(folder, 'none', 'case.json'), 'mine')).toHaveProperty('impossible');
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
