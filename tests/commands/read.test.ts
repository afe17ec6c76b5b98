/** An owner's words into a draft case: what is printed where, and what is said where nothing was understood. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/commands/read.js';
import { readCase } from '../../src/facts/case-file.js';
import { memoryIo } from '../support/memoryIo.js';

const read = async (text: string) => {
  const path = join(mkdtempSync(join(tmpdir(), 'read-')), 'post.txt');
  writeFileSync(path, text);
  const io = memoryIo();
  await run(io, path, { color: false });
  return io.printed;
};

describe('read', () => {
  it('writes the draft case into a pipe', async () => {
    const { out, err } = await read('Voices are muffled. The center sits inside a cabinet.');
    expect(readCase(out).book.answers.get('centerPlacement')).toMatchObject({ value: 'bay' });
    expect(err).toBe('');
  });
  it('says where nothing was understood, and keeps the words', async () => {
    const { out, err } = await read('Bonjour, les voix sont sourdes chez nous.');
    expect(err).toContain('Nothing was understood');
    expect(readCase(out).book.words).toContain('Bonjour');
  });
  it('refuses a file without words', async () => {
    await expect(read(' \n')).rejects.toThrow(/no words/);
  });
});
