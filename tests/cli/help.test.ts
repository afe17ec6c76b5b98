/** Every command explains itself, and every example that a help shows does what it says. */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { StreamIo } from '../../src/commands/io.js';
import { buildProgram, runProgram } from '../../src/commands/program.js';
import { DEMO_TAKE, record } from '../../src/recording/invented.js';
import { ROOT, runProcess, workFolder } from '../support/program.js';
import { wavOf } from '../support/wav.js';

const folder = workFolder();
const demo = join(ROOT, 'cases', 'demo.json');
const inFolder = (name: string): string => join(folder.path, name);
for (const name of ['case.json', 'before.json', 'after.json'])
  writeFileSync(inFolder(name), readFileSync(demo, 'utf8').replaceAll('window end', 'left end'));
for (const name of ['post.txt', 'mail.txt']) copyFileSync(join(ROOT, 'examples', 'post.txt'), inFolder(name));
const heard = { ...DEMO_TAKE, rateHz: 32_000 };
const recording = wavOf(record(heard), heard.rateHz);
for (const name of ['recording.wav', 'middle.wav', 'end.wav']) writeFileSync(inFolder(name), recording);
mkdirSync(inFolder('solved'));
writeFileSync(
  inFolder('solved/one.json'),
  JSON.stringify({
    ...JSON.parse(readFileSync(demo, 'utf8')),
    version: 2,
    trials: [{ act: 'driver-layout/sit-inside-its-angle', outcome: 'gone', stays: true }],
    solved: true,
  }),
);
writeFileSync(
  inFolder('cases.jsonl'),
  '{"facts":{"centerLayout":"coaxial"}}\n{"facts":{"centerLayout":"mid-tweeter-mid"}}\n',
);
afterAll(() => folder.remove());

/** What a command line prints, without starting a process. */
async function printed(...words: string[]): Promise<string> {
  let out = '';
  const io: StreamIo = {
    out: (text) => {
      out += text;
    },
    err: () => {},
    env: {},
    stdinIsTerminal: false,
    stdoutIsTerminal: false,
    stderrIsTerminal: false,
    columns: 80,
    readStdin: async () => new Uint8Array(),
    stdin: () => (async function* () {})(),
    flush: async () => {},
  };
  await runProgram(
    buildProgram(io, '1.2.3', () => {}),
    words,
  );
  return out;
}

const commands = [...(await printed('--help')).matchAll(/^ {2}([a-z]+)[ \n]/gm)].map(
  (match) => match[1] ?? '',
);

describe('help', () => {
  it('lists the commands of the contract, examples and exit codes', async () => {
    expect(commands).toEqual(
      'interview audit read why next page try set cases compare explain signal measure settings learn calc facts completion help'.split(
        ' ',
      ),
    );
    const help = await printed('--help');
    for (const code of ['0', '1', '2', '3', '130'])
      expect(help).toMatch(new RegExp(`^ {2}${code} +[a-z]`, 'm'));
    expect(await printed('-h')).toBe(help);
    expect(await printed('help')).toBe(help);
    expect((await printed('--version')).trim()).toBe('1.2.3');
  });

  it.each(commands)('%s shows its use, options and examples, three ways', async (command) => {
    const help = await printed(command, '--help');
    expect(help).toContain(`Usage: center-audit ${command}`);
    expect(help).toMatch(/Options:/);
    expect(help).toMatch(/Examples:\n {2}\$ /);
    expect(await printed(command, '-h')).toBe(help);
    expect(await printed('help', command)).toBe(help);
    for (const line of help.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });
});

const examples = new Set<string>();
for (const command of ['', ...commands]) {
  const help = await printed(...(command === '' ? [] : [command]), '--help');
  for (const [, line] of help.matchAll(/^ {2}\$ (.+)$/gm)) examples.add(line ?? '');
}

describe('every example of every help runs', () => {
  it('there are many', () => expect(examples.size).toBeGreaterThanOrEqual(20));

  // Opening and removing need a case that was saved before: tests/store and tests/commands have them.
  it.each([...examples].filter((line) => !/ cases (open|remove)/.test(line)))('%s', async (line) => {
    const { code, err } = await runProcess('bash', ['-c', line], {
      cwd: folder.path,
      env: { PATH: `${folder.bin}:${process.env.PATH}` },
    });
    // An interview needs a terminal; there its examples end with the code for that.
    expect({ code, err: code === 0 || code === 3 ? '' : err }).toEqual({
      code: /^center-audit( interview.*)?$/.test(line) ? 3 : 0,
      err: '',
    });
  });
});
