/** Many cases at once: a pure filter, in the order of the input, whatever is wrong with single ones. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ALONE_UP_TO } from '../../src/commands/batch/workers.js';
import { program, ROOT, runProcess, workFolder } from '../support/program.js';

const folder = workFolder();
afterAll(() => folder.remove());

const SMALL = (title: string): string =>
  JSON.stringify({ title, complaints: ['dull'], facts: { centerLayout: 'coaxial' } });
const lines = (out: string): { case: string; format: string; title?: string; problems?: object[] }[] =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

describe('JSON lines', () => {
  const input = [SMALL('first'), '', '{"facts":{"seatDistance":"3 kg"}}', '{"half":', SMALL('last')].join(
    '\n',
  );

  it('come out in the order they came in, bad ones in their place, and the exit code says so', async () => {
    const { code, out, err } = await program(['audit', '-', '--json'], { stdin: input });
    expect(code).toBe(2);
    const results = lines(out);
    expect(results.map(({ format }) => format)).toEqual([
      'center-audit/report',
      'center-audit/error',
      'center-audit/error',
      'center-audit/report',
    ]);
    expect(results.map((each) => each.case)).toEqual([1, 3, 4, 5].map((n) => `standard input, line ${n}`));
    expect([results[0]?.title, results[3]?.title]).toEqual(['first', 'last']);
    expect(results[1]?.problems).toMatchObject([
      { path: 'facts.seatDistance', what: expect.stringMatching(/mass/) },
    ]);
    expect(err).toMatch(/standard input, line 3: facts\.seatDistance/);
    expect(err).toMatch(/standard input, line 4: line 1, column/);
  });

  it('are told from one case written over several lines', async () => {
    const pretty = JSON.stringify(JSON.parse(SMALL('pretty')), null, 2);
    const { code, out } = await program(['audit', '-', '--json'], { stdin: `\n${pretty}\n` });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ title: 'pretty' });
    expect(JSON.parse(out)).not.toHaveProperty('case');
  });

  it('a single line is answered at once, before it is known that none follows, and so by its place', async () => {
    const { out } = await program(['audit', '-', '--json'], { stdin: `${SMALL('one')}\n` });
    expect(JSON.parse(out)).toMatchObject({ case: 'standard input, line 1', title: 'one' });
  });

  it('give the same results on several threads as on one, in the same order', async () => {
    const many = Array.from({ length: ALONE_UP_TO + 16 }, (_, i) =>
      i === 7 ? '{"bad":1}' : SMALL(`case ${i}`),
    );
    const stdin = many.join('\n');
    const alone = await program(['audit', '-', '--json', '--jobs', '1'], { stdin });
    const together = await program(['audit', '-', '--json', '--jobs', '2'], { stdin });
    expect(together.out).toBe(alone.out);
    expect(lines(alone.out)).toHaveLength(many.length);
    expect([alone.code, together.code]).toEqual([2, 2]);
    expect([alone.err, together.err].map((err) => err.split('\n')[0])).toEqual([
      alone.err.split('\n')[0],
      alone.err.split('\n')[0],
    ]);
  }, 60_000);

  it('a line longer than a case may be is refused, and the next one is read', async () => {
    const stdin = `${SMALL('before')}\n{"title":"${'x'.repeat(2 ** 20 + 10)}"}\n${SMALL('after')}\n`;
    const { code, out } = await program(['audit', '-', '--json'], { stdin });
    expect(code).toBe(2);
    expect(lines(out).map(({ format }) => format.slice(13))).toEqual(['report', 'error', 'report']);
  });
});

describe('several files', () => {
  const cases = ['one', 'two', 'three'].map((name) => {
    writeFileSync(join(folder.path, `${name}.json`), SMALL(name));
    return `${name}.json`;
  });
  writeFileSync(join(folder.path, 'bad.json'), '[]');
  const run = (...args: string[]) => program(args, { cwd: folder.path });

  it('give JSON lines with their names', async () => {
    const { code, out, err } = await run(
      'audit',
      cases[0] as string,
      'bad.json',
      cases[1] as string,
      '--json',
    );
    expect(code).toBe(2);
    expect(lines(out).map((each) => each.case)).toEqual(['one.json', 'bad.json', 'two.json']);
    expect(err).toMatch(/^bad\.json: /);
  });

  it('give one report after the other for people, each under its name', async () => {
    const { code, out } = await run('audit', ...cases, '--format', 'ticket');
    expect(code).toBe(0);
    expect([...out.matchAll(/^=== (.+) ===$/gm)].map((match) => match[1])).toEqual(cases);
  });

  it('can be read together with standard input', async () => {
    const { out } = await program(['audit', 'one.json', '-', '--json'], {
      cwd: folder.path,
      stdin: SMALL('piped'),
    });
    expect(lines(out).map((each) => each.case)).toEqual(['one.json', 'standard input, line 1']);
  });

  it('go into one file', async () => {
    const { code, out } = await run('audit', ...cases, '--json', '--output', 'all.jsonl');
    expect({ code, out }).toEqual({ code: 0, out: '' });
    expect(lines(readFileSync(join(folder.path, 'all.jsonl'), 'utf8'))).toHaveLength(3);
  });
});

describe('the summary', () => {
  const shipped = readdirSync(join(ROOT, 'cases'))
    .filter((name) => name.endsWith('.json'))
    .map((name) => join('cases', name));

  it('counts the leading causes of a folder', async () => {
    const { code, out } = await program(['audit', ...shipped, '--summary', '--json']);
    expect(code).toBe(0);
    const summary = JSON.parse(out) as {
      cases: number;
      bad: number;
      causes: { id: string; leads: number }[];
    };
    expect(summary).toMatchObject({ format: 'center-audit/summary', cases: shipped.length, bad: 0 });
    expect(summary.causes.reduce((sum, cause) => sum + cause.leads, 0)).toBe(shipped.length);
  }, 60_000);

  it('says how many could not be read', async () => {
    const { code, out } = await program(['audit', '-', '--summary'], { stdin: `${SMALL('a')}\n[]\n` });
    expect(code).toBe(2);
    expect(out).toMatch(/1 case audited.*1 case could not be read/s);
  });
});

describe('a filter', () => {
  it('passes results on as they come, before its input has ended', async () => {
    // Eight lines are answered while the writer still holds the pipe open and waits for the first of them.
    const line = SMALL('streamed').replaceAll("'", '');
    const script = `
      coproc AUDIT { center-audit audit - --json; }
      for i in 1 2 3 4; do echo '${line}' >&"\${AUDIT[1]}"; done
      read -r answer <&"\${AUDIT[0]}"
      echo "\${answer:0:8}"
      exec {AUDIT[1]}>&-`;
    const { out } = await runProcess('bash', ['-c', script], {
      env: { PATH: `${folder.bin}:${process.env.PATH}` },
    });
    expect(out.trim()).toBe('{"case":');
  });
});
