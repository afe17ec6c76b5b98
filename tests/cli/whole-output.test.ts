/** Nothing is lost without a word: full disks, streams of any number of lines, files of others, an old Node. */
import { execFileSync } from 'node:child_process';
import { chmodSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { program, ROOT, runProcess, workFolder } from '../support/program.js';

const folder = workFolder();
afterAll(() => folder.remove());
const CASE = JSON.stringify({ complaints: ['dull'], facts: { seatDistance: '3 m', testTilt: 'clearer' } });
const at = (name: string, content: string): string => {
  writeFileSync(join(folder.path, name), content);
  return name;
};
at('case.json', CASE);
const run = (...args: string[]) => program(args, { cwd: folder.path });
const shell = (line: string) =>
  runProcess('bash', ['-c', line], {
    cwd: folder.path,
    env: { PATH: `${folder.bin}:${process.env.PATH}` },
  });

describe('a result that does not fit', () => {
  it('into a full device is told, with exit code 1', async () => {
    const { code, err } = await shell('center-audit audit case.json --json > /dev/full');
    expect(code).toBe(1);
    expect(err).toMatch(/standard output: the disk is full; the result is not whole/);
  });
  it('under a size limit is told, with exit code 1', async () => {
    const { code, err } = await shell('ulimit -f 8; center-audit audit case.json --json > half.json');
    expect(code).toBe(1);
    expect(err).toMatch(/may not grow any larger/);
  });
  it('keeps its exit code where standard error is full as well', async () => {
    expect((await shell('center-audit audit nowhere.json 2> /dev/full')).code).toBe(2);
    expect((await shell('center-audit audit case.json > /dev/full 2> /dev/full')).code).toBe(1);
  });
});

describe('audit - --json is a filter: one line in, one line out', () => {
  const linesOf = async (stdin: string, ...more: string[]) => {
    const { out, code } = await program(['audit', '-', '--json', ...more], { stdin });
    return {
      code,
      formats: out
        .split('\n')
        .filter(Boolean)
        .map((line) => JSON.parse(line).format),
    };
  };
  const REPORT = 'center-audit/report';
  const ERROR = 'center-audit/error';
  it.each([
    ['no line', '', []],
    ['one', `${CASE}\n`, [REPORT]],
    ['one broken among three', `${CASE}\n{oops\n${CASE}\n`, [REPORT, ERROR, REPORT]],
    ['two broken before three', `x\ny\n${CASE}\n${CASE}\n${CASE}\n`, [ERROR, ERROR, REPORT, REPORT, REPORT]],
    ['broken ones alone', '{a\n{b\n', [ERROR, ERROR]],
  ])('%s', async (_, stdin, formats) => {
    expect(await linesOf(stdin)).toEqual({ code: formats.includes(ERROR) ? 2 : 0, formats });
  });
  it('--jsonl takes every line for a case, whatever it is', async () => {
    expect(await linesOf('nothing\n', '--jsonl')).toEqual({ code: 2, formats: [ERROR] });
  });
  it('a single case may still be written over several lines', async () => {
    const { out } = await program(['audit', '-', '--json'], {
      stdin: JSON.stringify(JSON.parse(CASE), null, 1),
    });
    expect(JSON.parse(out)).toMatchObject({ format: REPORT });
  });
  it('runs under GNU parallel, and gives the same lines whatever the split', async (context) => {
    if ((await shell('command -v parallel')).code !== 0) return context.skip();
    at('cases.jsonl', Array.from({ length: 7 }, () => `${CASE}\n`).join(''));
    const whole = await shell('center-audit audit - --jsonl < cases.jsonl');
    const split = await shell(
      "parallel --will-cite --pipe -N 2 -k -j 2 'center-audit audit - --jsonl' < cases.jsonl",
    );
    const bare = (text: string) => text.replaceAll(/"case":"[^"]*",/g, '');
    expect(whole.out.trim().split('\n')).toHaveLength(7);
    expect(bare(split.out)).toBe(bare(whole.out));
  });
});

describe('--output replaces reports alone', () => {
  it.each([
    ['a case without a format line', '{ "complaints": ["dull"] }'],
    ['a measurement', '20 70.1\n40 71.2\n'],
    ['notes', 'what the owner said\n'],
    ['a page of somebody else', '<!DOCTYPE html><title>Recipes</title>'],
  ])('not %s', async (_, content) => {
    at('theirs.txt', content);
    const { code, err } = await run('audit', 'case.json', '--output', 'theirs.txt');
    expect(code).toBe(2);
    expect(err).toMatch(/nothing else is ever overwritten/);
    expect(readFileSync(join(folder.path, 'theirs.txt'), 'utf8')).toBe(content);
  });
  it.each(['text', 'markdown', 'html', 'bbcode', 'ticket', 'json'])(
    '%s of before, which keeps its permissions',
    async (format) => {
      const write = () => run('audit', 'case.json', '--format', format, '--output', `report.${format}`);
      expect((await write()).code).toBe(0);
      const path = join(folder.path, `report.${format}`);
      chmodSync(path, 0o640);
      expect((await write()).code).toBe(0);
      expect(statSync(path).mode & 0o777).toBe(0o640);
    },
  );
});

describe('words of errors', () => {
  it('hold nothing that steers a terminal, in JSON either', async () => {
    at('steers.json', '{ "a\\u009b31mb": 1, "a\\u009b31mb": 2 }');
    at('stray.json', '{ "facts": {} } \u202e');
    for (const name of ['steers.json', 'stray.json']) {
      const { out, err } = await run('audit', name, 'case.json', '--json');
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
      expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
    }
    expect((await run('audit', 'stray.json')).err).toContain('U+202E stands after the end');
  });
  it('never suggest the very name that was typed, nor one that looks like an option', async () => {
    symlinkSync('gone.json', join(folder.path, 'dangling.json'));
    expect((await run('audit', 'dangling.json')).err).not.toContain('did you mean');
    at('-rf.json', CASE);
    expect((await run('audit', '--', '-rg.json')).err).toContain('did you mean ./-rf.json');
  });
  it('name a response file that cannot be read', async () => {
    at('measured.json', JSON.stringify({ complaints: ['dull'], facts: { responseCenter: 'none.txt' } }));
    expect((await run('audit', 'measured.json')).err).toMatch(
      /facts\.responseCenter: "none\.txt" is not there/,
    );
  });
});

describe('an old Node', () => {
  it('is told which version is needed before anything else is loaded', () => {
    const door = readFileSync(join(ROOT, 'dist', 'cli.js'), 'utf8');
    expect(door.length).toBeLessThan(2000);
    const old = "Object.defineProperty(process.versions, 'node', { value: '18.20.0' });";
    const script = at('old.mjs', `${old}\nawait import(${JSON.stringify(join(ROOT, 'dist', 'cli.js'))});\n`);
    expect(() => execFileSync(process.execPath, [script], { cwd: folder.path, stdio: 'pipe' })).toThrow(
      /needs Node 20\.19 or newer; this is Node 18\.20\.0/,
    );
  });
});
