/** Response files named on the command line: what is read, what is refused, and what the owner is told of it. */
import { chmodSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MAX_RESPONSE_BYTES, readResponseFile } from '../../../src/disk/response-files.js';
import { readResponses } from '../../../src/explain/calculators/response-files.js';
import { UserError } from '../../../src/lib/user-error.js';

const GOOD = '* measured\n1000 80\n2000 81.5\n';
/** User id of nobody on Debian. */
const NOBODY = 65_534;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'responses-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const read = (paths: Record<string, string>) => {
  const notices: string[] = [];
  const port = { tell: (notice: string) => notices.push(notice), readResponse: readResponseFile };
  const found = readResponses(paths, port);
  return { found, notices };
};
/** What is wrong with the files. */
const problems = (paths: Record<string, string>): UserError['problems'] => {
  try {
    read(paths);
  } catch (error) {
    if (error instanceof UserError) return error.problems;
    throw error;
  }
  throw new Error('nothing was refused');
};
const refused = (path: string) => problems({ left: path })[0];

describe('response files', () => {
  it('are read channel by channel', () => {
    const { found, notices } = read({
      left: file('left.txt', GOOD),
      center: file('center.txt', '500 70\n1000 71\n'),
    });
    expect(found).toEqual({
      left: { frequencyHz: [1000, 2000], levelDb: [80, 81.5], warnings: [] },
      center: { frequencyHz: [500, 1000], levelDb: [70, 71], warnings: [] },
    });
    expect(notices).toEqual([]);
  });
  it('tell what was put right in them, with file and line', () => {
    const { found, notices } = read({ left: file('order.txt', '2000 81\n1000 80\n') });
    expect(found.left?.frequencyHz).toEqual([1000, 2000]);
    expect(notices).toEqual([expect.stringMatching(/^".*order\.txt", line 2: .*out of order.*\.$/)]);
  });
  it('keep what is no UTF-8 in a comment from spoiling the numbers', () => {
    const bytes = Buffer.concat([Buffer.from('* caf'), Buffer.from([0xe9, 10]), Buffer.from(GOOD)]);
    const { found } = read({ left: file('latin.txt', bytes) });
    expect(found.left?.levelDb).toEqual([80, 81.5]);
  });
  it('may have two MiB, read to the last byte, and not a byte more', () => {
    const end = '1000 80\n2000 81.5';
    const padded = (bytes: number) => `*${'x'.repeat(bytes - end.length - 2)}\n${end}`;
    const { found } = read({ left: file('full.txt', padded(MAX_RESPONSE_BYTES)) });
    expect(found.left).toMatchObject({ frequencyHz: [1000, 2000], levelDb: [80, 81.5] });
    expect(refused(file('over.txt', padded(MAX_RESPONSE_BYTES + 1)))).toMatchObject({
      what: `is ${MAX_RESPONSE_BYTES + 1} bytes`,
      accepted: expect.stringMatching(/at most 2 MiB/),
    });
  });
});

describe('a response file that cannot be used', () => {
  it('is named with its channel, what is wrong and what is accepted', () => {
    const path = join(folder, 'nowhere.txt');
    expect(problems({ left: file('good.txt', GOOD), right: path })).toEqual([
      {
        where: `calc tonal-match, right, "${path}"`,
        what: 'is not there',
        accepted: 'a text file of at most 2 MiB with frequency in Hz and level in dB on each line',
      },
    ]);
  });
  it('does not hide the next one', () => {
    const found = problems({
      left: join(folder, 'no-1'),
      center: file('fine.txt', GOOD),
      right: join(folder, 'no-2'),
    });
    expect(found.map(({ where }) => where?.split(', ')[1])).toEqual(['left', 'right']);
  });
  it.each([
    ['a folder', () => folder, 'is a folder'],
    ['a device', () => '/dev/null', 'is no plain file'],
    ['below a file', () => join(file('plain.txt', GOOD), 'x.txt'), 'is not there'],
    ['binary', () => file('binary.txt', new Uint8Array([49, 0, 50])), 'holds zero bytes and is no text'],
  ])('is %s', (_, path, what) => {
    expect(refused(path())).toMatchObject({ what, accepted: expect.stringMatching(/^a text file/) });
  });
  it('is a link that leads to itself', () => {
    const path = join(folder, 'loop.txt');
    symlinkSync(path, path);
    expect(refused(path)?.what).toBe('cannot be read');
  });
  it('may not be read by who runs the program', () => {
    const path = file('shut.txt', GOOD);
    chmodSync(path, 0);
    chmodSync(folder, 0o755);
    // The superuser may read everything, so for this he is nobody.
    const isRoot = process.geteuid?.() === 0;
    if (isRoot) process.seteuid?.(NOBODY);
    try {
      expect(refused(path)?.what).toBe('may not be read');
    } finally {
      if (isRoot) process.seteuid?.(0);
    }
  });
  it('has a line that is no measurement: its line, and what a line looks like', () => {
    const found = refused(file('bad.txt', '1000 80\n2000\n3000 80\n'));
    expect(found?.what).toMatch(/^line 2: "2000"/);
    expect(found?.what).not.toContain('accepted');
    expect(found?.accepted).toBe('frequency in Hz and level in dB, for example "1000 84.2"');
  });
  it('has the marks in its name quoted', () => {
    expect(refused('a\u001b[31m.txt')?.where).not.toContain('\u001b');
  });
});
