/** Completion scripts are sound for their shells and know the words of the program. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { program } from '../support/program.js';

const folder = mkdtempSync(join(tmpdir(), 'center-audit-completion-'));
afterAll(() => rmSync(folder, { recursive: true }));

const script = async (shell: string): Promise<string> => {
  const { code, out, err } = await program(['completion', shell]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return out;
};
const has = (shell: string): boolean => spawnSync(shell, ['--version']).status === 0;

/** What bash offers for a line whose last word is being typed. */
async function offered(line: string): Promise<string[]> {
  const file = join(folder, 'completion.bash');
  writeFileSync(file, await script('bash'));
  writeFileSync(join(folder, 'case.json'), '{}');
  const words = line.split(' ');
  const typed = words.map((word) => `'${word}'`).join(' ');
  const { stdout, stderr } = spawnSync(
    'bash',
    [
      '--norc',
      '-c',
      `source ${file}; COMP_WORDS=(${typed}); COMP_CWORD=${words.length - 1}; _center_audit; printf '%s\\n' "\${COMPREPLY[@]}"`,
    ],
    { cwd: folder, encoding: 'utf8' },
  );
  expect(stderr).toBe('');
  return stdout.split('\n').filter((each) => each !== '');
}

describe('bash', () => {
  it('takes the script', async () => {
    const { status, stderr } = spawnSync('bash', ['-n'], { input: await script('bash'), encoding: 'utf8' });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });

  it.each([
    ['center-audit au', ['audit']],
    ['center-audit co', ['compare', 'completion']],
    ['center-audit --no', ['--no-color']],
    ['center-audit audit ca', ['case.json']],
    ['center-audit audit case.json --fo', ['--format']],
    ['center-audit audit case.json --format h', ['html']],
    ['center-audit next case.json --format ', ['text', 'json']],
    ['center-audit audit --format json --output ca', ['case.json']],
    ['center-audit why ca', ['case.json']],
    ['center-audit why case.json del', ['delay']],
    ['center-audit why --json case.json del', ['delay']],
    ['center-audit why case.json delay --against lev', ['level']],
    ['center-audit try case.json seatDist', ['seatDistance=', 'seatDistanceFrom=']],
    ['center-audit try case.json seatDistance=3 centerLay', ['centerLayout=']],
    ['center-audit explain voice-l', ['voice-low-or-high']],
    ['center-audit calc co', ['comb']],
    ['center-audit completion z', ['zsh']],
    ['center-audit help sta', []],
    ['center-audit help ca', ['cases', 'calc']],
    ['center-audit mea', ['measure']],
    ['center-audit set', ['set', 'settings']],
  ])('%s', async (line, words) => {
    expect(await offered(line)).toEqual(words);
  });
});

describe.skipIf(!has('zsh'))('zsh', () => {
  it('takes the script', async () => {
    const { status, stderr } = spawnSync('zsh', ['-n'], { input: await script('zsh'), encoding: 'utf8' });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });
});

describe.skipIf(!has('fish'))('fish', () => {
  it('takes the script', async () => {
    const { status, stderr } = spawnSync('fish', ['-n'], { input: await script('fish'), encoding: 'utf8' });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });
});

it('all three know every command and format', async () => {
  for (const shell of ['bash', 'zsh', 'fish']) {
    const text = await script(shell);
    for (const word of [
      'interview',
      'audit',
      'compare',
      'bbcode',
      'ticket',
      'driver-layout',
      'seatDistance',
    ]) {
      expect(text).toContain(word);
    }
    expect(text).not.toMatch(/undefined|\[object/);
  }
});
