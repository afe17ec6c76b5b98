import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MAX_RESPONSE_BYTES, responsesIn } from '../../src/disk/response-files.js';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { responseOf, withResponses } from '../../src/facts/responses.js';

let root = '';
let folder = '';
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'center-audit-'));
  folder = join(root, 'case');
  mkdirSync(join(folder, 'sub'), { recursive: true });
  writeFileSync(join(root, 'secret.txt'), 'secret');
  mkdirSync(join(root, 'case-other'));
  writeFileSync(join(root, 'case-other', 'near.txt'), 'secret');
  writeFileSync(join(folder, 'center.txt'), '20 70.1\n40 71\n');
  writeFileSync(join(folder, 'sub', 'left.txt'), '20 70.2\n40 72\n');
  writeFileSync(
    join(folder, 'latin.txt'),
    Buffer.concat([Buffer.from([0x2a, 0x20, 0xb0, 0x0a]), Buffer.from('20 1\n40 2')]),
  );
  writeFileSync(join(folder, 'zero.txt'), new Uint8Array([0x32, 0x00]));
  writeFileSync(join(folder, 'large.txt'), 'x'.repeat(MAX_RESPONSE_BYTES + 1));
  symlinkSync(join(root, 'secret.txt'), join(folder, 'link-out.txt'));
  symlinkSync(join(folder, 'center.txt'), join(folder, 'link-in.txt'));
  symlinkSync(root, join(folder, 'up'));
  symlinkSync(join(folder, 'loop.txt'), join(folder, 'loop.txt'));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

const centerIn = (path: string): FactBook =>
  withAnswer(EMPTY_BOOK, 'responseCenter', { value: path, how: 'measured' });
/** Levels of the response, or why it is refused. */
function read(path: string): unknown {
  const book = withResponses(centerIn(path), responsesIn(folder));
  const found = responseOf(book, 'responseCenter');
  return found && 'refused' in found ? found.refused.what : found?.levelDb;
}

describe('response files', () => {
  it('are read from the folder of the case and below', () => {
    expect(read('center.txt')).toEqual([70.1, 71]);
    expect(read('./sub/left.txt')).toEqual([70.2, 72]);
    expect(read('link-in.txt')).toEqual([70.1, 71]);
  });

  it('may hold letters of another encoding in their comments', () => {
    expect(read('latin.txt')).toEqual([1, 2]);
  });

  it('are nothing where none was told', () => {
    expect(responseOf(withResponses(EMPTY_BOOK, responsesIn(folder)), 'responseLeft')).toBeUndefined();
  });

  it.each([
    ['../secret.txt', /climbs out/],
    ['sub/../../secret.txt', /climbs out/],
    ['/etc/passwd', /absolute/],
    ['link-out.txt', /leads out/],
    ['up/secret.txt', /leads out/],
    ['up/case-other/near.txt', /leads out/],
    ['up', /leads out/],
    ['sub', /is a folder/],
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

  it('that cannot be used are told when the case is read, and the case is sound', () => {
    const text = JSON.stringify({ facts: { responseCenter: 'none.txt', responseLeft: 'center.txt' } });
    const { book, warnings } = readCase(text, { readResponse: responsesIn(folder) });
    expect(warnings).toEqual([{ path: 'facts.responseCenter', text: '"none.txt" is not there' }]);
    expect(responseOf(book, 'responseLeft')).toMatchObject({ levelDb: [70.1, 71] });
  });

  it('cannot be looked for when the case has no folder', () => {
    expect(responseOf(centerIn('center.txt'), 'responseCenter')).toMatchObject({
      refused: { what: expect.stringMatching(/no folder/) },
    });
  });
});
