import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { MAX_RESPONSE_BYTES, readResponseFile } from '../../src/facts/response-file.js';

let root = '';
let folder = '';
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'center-audit-'));
  folder = join(root, 'case');
  mkdirSync(join(folder, 'sub'), { recursive: true });
  writeFileSync(join(root, 'secret.txt'), 'secret');
  mkdirSync(join(root, 'case-other'));
  writeFileSync(join(root, 'case-other', 'near.txt'), 'secret');
  writeFileSync(join(folder, 'center.txt'), '20 70.1\n');
  writeFileSync(join(folder, 'sub', 'left.txt'), '20 70.2\n');
  writeFileSync(join(folder, 'latin.txt'), new Uint8Array([0x2a, 0x20, 0xb0, 0x0a, 0x32]));
  writeFileSync(join(folder, 'zero.txt'), new Uint8Array([0x32, 0x00]));
  writeFileSync(join(folder, 'large.txt'), 'x'.repeat(MAX_RESPONSE_BYTES + 1));
  symlinkSync(join(root, 'secret.txt'), join(folder, 'link-out.txt'));
  symlinkSync(join(folder, 'center.txt'), join(folder, 'link-in.txt'));
  symlinkSync(root, join(folder, 'up'));
  symlinkSync(join(folder, 'loop.txt'), join(folder, 'loop.txt'));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

function read(path: string, inFolder: string | undefined = folder): unknown {
  const book: FactBook = withAnswer(EMPTY_BOOK, 'responseCenter', { value: path, how: 'measured' });
  const result = readResponseFile(
    inFolder === undefined ? book : { ...book, folder: inFolder },
    'responseCenter',
  );
  return result && 'refused' in result ? result.refused.what : result?.text;
}

describe('response files', () => {
  it('are read from the folder of the case and below', () => {
    expect(read('center.txt')).toBe('20 70.1\n');
    expect(read('./sub/left.txt')).toBe('20 70.2\n');
    expect(read('link-in.txt')).toBe('20 70.1\n');
  });

  it('may hold letters of another encoding in their comments', () => {
    expect(read('latin.txt')).toMatch(/^\* .\n2$/);
  });

  it('are nothing where none was told', () => {
    expect(readResponseFile({ ...EMPTY_BOOK, folder }, 'responseLeft')).toBeUndefined();
  });

  it.each([
    ['../secret.txt', /climbs out/],
    ['sub/../../secret.txt', /climbs out/],
    ['/etc/passwd', /absolute/],
    ['link-out.txt', /leads out/],
    ['up/secret.txt', /leads out/],
    ['up/case-other/near.txt', /leads out/],
    ['up', /leads out/],
    ['sub', /no plain file/],
    ['none.txt', /is not there/],
    ['center.txt/x', /is not there/],
    ['loop.txt', /cannot be read/],
    ['zero.txt', /zero bytes/],
    ['large.txt', /is 2097153 bytes/],
  ])('%s is refused', (path, words) => {
    expect(read(path)).toMatch(words);
  });

  it('are not waited for when they are no plain files', () => {
    execFileSync('mkfifo', [join(folder, 'pipe.txt')]);
    expect(read('pipe.txt')).toMatch(/no plain file/);
  });

  it('cannot be looked for when the case has no folder', () => {
    const book = withAnswer(EMPTY_BOOK, 'responseCenter', { value: 'center.txt', how: 'measured' });
    expect(readResponseFile(book, 'responseCenter')).toMatchObject({
      refused: { what: expect.stringMatching(/standard input/) },
    });
  });
});
