/** What --output writes to: links, devices and pipes stay what they are, and nothing half done is left behind. */
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { CLI, program, type Ran, runProcess, workFolder } from '../support/program.js';

const work = workFolder();
afterAll(() => work.remove());
const DEMO = '{"facts":{"centerLayout":"coaxial"}}';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(work.path, 'output-'));
  writeFileSync(join(folder, 'case.json'), DEMO);
});
const at = (name: string): string => join(folder, name);
const read = (name: string): string => readFileSync(at(name), 'utf8');
const left = (): string[] => readdirSync(folder).sort();
const audit = (output: string): Promise<Ran> =>
  program(['audit', 'case.json', '--format', 'ticket', '--output', output], { cwd: folder });
/** A command line that must end within the time. */
const shell = (line: string): Promise<Ran> =>
  runProcess('timeout', ['-k', '1', '20', 'bash', '-c', line], {
    cwd: folder,
    env: { PATH: `${work.bin}:${process.env.PATH}` },
  });
/** As a report of ours begins: only such files are replaced. */
const EARLIER = 'Center loudspeaker audit\nearlier\n';
const TO_PIPE = 'center-audit audit case.json --format ticket --output pipe';

describe('a link given to --output', () => {
  it.each([true, false])('stays, and what it leads to is written (there before: %s)', async (isThere) => {
    mkdirSync(at('inner'));
    if (isThere) writeFileSync(at('inner/report.txt'), EARLIER);
    symlinkSync('inner/report.txt', at('link'));
    symlinkSync('link', at('second-link'));
    expect(await audit('second-link')).toMatchObject({ code: 0, out: '' });
    expect(lstatSync(at('link')).isSymbolicLink()).toBe(true);
    expect(lstatSync(at('second-link')).isSymbolicLink()).toBe(true);
    expect(read('inner/report.txt')).toContain('Verdict');
    expect(readdirSync(at('inner'))).toEqual(['report.txt']);
  });

  it('is refused where it leads to a case or to a folder, and told where it leads in a circle', async () => {
    writeFileSync(at('other.json'), DEMO);
    symlinkSync('other.json', at('to-case'));
    symlinkSync('.', at('to-folder'));
    symlinkSync('circle', at('circle'));
    expect(await audit('to-case')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/ever overwritten/),
    });
    expect(await audit('to-folder')).toMatchObject({ code: 2, err: expect.stringMatching(/is a folder/) });
    expect(await audit('circle')).toMatchObject({ code: 2, err: expect.stringMatching(/ELOOP/) });
    expect(read('other.json')).toBe(DEMO);
  });
});

describe('a pipe given to --output', () => {
  beforeEach(() => void execFileSync('mkfifo', [at('pipe')]));

  it('brings its reader the whole result, whoever of them comes first', async () => {
    expect((await audit('report.txt')).code).toBe(0);
    for (const line of [`cat pipe & ${TO_PIPE}; wait`, `(sleep 1; cat pipe) & ${TO_PIPE}; wait`]) {
      expect(await shell(line)).toMatchObject({ code: 0, out: read('report.txt') });
    }
    expect(lstatSync(at('pipe')).isFIFO()).toBe(true);
    expect(left()).toEqual(['case.json', 'pipe', 'report.txt']);
  }, 60_000);

  it('waits for a reader that is slower than the results', async () => {
    // One report alone is more than a pipe holds.
    const cases = Array(4).fill('case.json').join(' ');
    const line = `(exec 3< pipe; sleep 1; wc -l <&3) & center-audit audit ${cases} --json --output pipe; wait`;
    const { code, out } = await shell(line);
    expect({ code, lines: Number(out) }).toEqual({ code: 0, lines: 4 });
  }, 60_000);

  it('can be given up with Ctrl-C while nobody reads it', async () => {
    const child = spawn(process.execPath, [CLI, 'audit', 'case.json', '--output', 'pipe'], { cwd: folder });
    const ended = new Promise((resolve) => child.on('exit', (code, signal) => resolve(code ?? signal)));
    // The signal must meet the program waiting, not still loading: it is late, and repeated until it is answered.
    const again = setInterval(() => child.kill('SIGINT'), 1500);
    const hung = setTimeout(() => child.kill('SIGKILL'), 20_000);
    expect([130, 'SIGINT']).toContain(await ended);
    clearInterval(again);
    clearTimeout(hung);
  }, 40_000);
});

/** Devices of our own: where the test fails, those of the machine are not what is replaced. */
const canMakeDevices = ((): boolean => {
  const path = join(work.path, 'probe');
  const made = spawnSync('mknod', [path, 'c', '1', '3']).status === 0;
  const works = made && spawnSync('sh', ['-c', `echo > '${path}'`]).status === 0;
  rmSync(path, { force: true });
  return works;
})();

describe.runIf(canMakeDevices)('a device given to --output', () => {
  it('takes the result and stays a device', async () => {
    execFileSync('mknod', [at('null'), 'c', '1', '3']);
    expect((await audit('null')).code).toBe(0);
    expect(lstatSync(at('null')).isCharacterDevice()).toBe(true);
    expect(left()).toEqual(['case.json', 'null']);
  });

  it('that takes nothing more is told', async () => {
    execFileSync('mknod', [at('full'), 'c', '1', '7']);
    expect(await audit('full')).toMatchObject({ code: 2, err: expect.stringMatching(/ENOSPC/) });
    expect(left()).toEqual(['case.json', 'full']);
  });
});

const STDOUT = '/proc/self/fd/1';

describe.skipIf(!existsSync(STDOUT))('standard output given by its path', () => {
  const TO_STDOUT = 'center-audit audit case.json --format ticket --output stdout';
  // As /dev/stdout is made.
  beforeEach(() => symlinkSync(STDOUT, at('stdout')));

  it('takes the result over a pipe', async () => {
    expect(await shell(`${TO_STDOUT} | cat`)).toMatchObject({ out: expect.stringMatching(/Verdict/) });
  });

  it('takes it where it is a file, after what stands there', async () => {
    await shell(`echo first > log; ${TO_STDOUT} >> log; echo last >> log`);
    expect(read('log')).toMatch(/^first\n[\s\S]*Verdict[\s\S]*\nlast\n$/);
    expect(left()).toEqual(['case.json', 'log', 'stdout']);
  });
});

describe('a program that is ended before its results are whole', () => {
  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 'SIGTERM'],
    ['SIGHUP', 'SIGHUP'],
  ] as const)(
    'by %s leaves the earlier report and no part of a new one',
    async (signal, status) => {
      writeFileSync(at('report.txt'), EARLIER);
      const child = spawn(process.execPath, [CLI, 'audit', '-', '--output', 'report.txt'], { cwd: folder });
      const ended = new Promise((resolve) => child.on('exit', (code, by) => resolve(code ?? by)));
      child.stdin.write('{');
      await expect.poll(left, { timeout: 20_000 }).toHaveLength(3);
      child.kill(signal);
      expect(await ended).toBe(status);
      expect(left()).toEqual(['case.json', 'report.txt']);
      expect(read('report.txt')).toBe(EARLIER);
    },
    40_000,
  );
});
