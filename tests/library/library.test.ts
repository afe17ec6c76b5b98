/** The package as a library: what stands in the README runs under the package's own name, and says what commands say. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { caseJsonSchema } from '../../src/facts/json-schema.js';
import * as library from '../../src/library.js';
import type * as Public from '../../src/library-types.js';
import { program, ROOT, runProcess } from '../support/program.js';

/** Held by the compiler: everything declared is there, as declared. */
const { auditCase, CaseError, calculate, next, readCase, readWords, report, reportAs, UserError, writeCase } =
  library satisfies typeof Public;

const EXAMPLES = ['ticket', 'question', 'comb'];
const example = (name: string): string => join('examples', 'library', `${name}.mjs`);
const textOf = (path: string): string => readFileSync(join(ROOT, path), 'utf8');
const demo = () => auditCase(readCase(textOf('cases/demo.json')));

describe('the package by its name', () => {
  const shown: Readonly<Record<string, RegExp>> = {
    ticket: /Reference {2}T-1042\n[\s\S]*Drivers side by side cancel for the outer seats/,
    question: /9 ft away” tells seatDistance\n[\s\S]*\?/,
    // Two arrivals half a period apart cancel: f = (2n + 1) / (2 * 0.5 ms); 20 lg(1 - 10^(-6/20)) = -6.04 dB.
    comb: /^1000,3000,5000 Hz, -6\.0 dB\n$/,
  };
  it.each(EXAMPLES)('runs the example %s', async (name) => {
    const { code, out, err } = await runProcess(process.execPath, [example(name)]);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toMatch(shown[name] as RegExp);
  });

  it.each(EXAMPLES)('shows the example %s in the README as it stands', (name) => {
    expect(textOf('README.md')).toContain(`\`\`\`js\n${textOf(example(name))}\`\`\``);
  });

  it('gives types by which the examples compile, strictly', async () => {
    const { code, out } = await runProcess(process.execPath, [
      join('node_modules', 'typescript', 'bin', 'tsc'),
      ...'--ignoreConfig --noEmit --strict --allowJs --checkJs --target es2023 --module nodenext --types node'.split(
        ' ',
      ),
      ...EXAMPLES.map(example),
      join('dist', 'library.d.ts'),
    ]);
    expect(out).toBe('');
    expect(code).toBe(0);
  });

  it('exports the functions that its types declare, and nothing else', async () => {
    const names = "console.log(Object.keys(await import('center-audit')).join())";
    const { out } = await runProcess(process.execPath, ['--input-type=module', '-e', names]);
    const declared = [...textOf('dist/library.d.ts').matchAll(/^export declare (?:function|class) (\w+)/gm)];
    expect(out.trim().split(',').sort()).toEqual(declared.map(([, name]) => name).sort());
  });

  it('ships the JSON Schema of a case', () => {
    const path = createRequire(join(ROOT, 'package.json')).resolve('center-audit/case.schema.json');
    expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual(JSON.parse(JSON.stringify(caseJsonSchema())));
  });
});

describe('the library', () => {
  it('says what the commands say', async () => {
    const audit = await demo();
    const printed = async (...args: string[]) => (await program(args)).out;
    const json = await printed('audit', 'cases/demo.json', '--json');
    expect(await reportAs(audit, 'json')).toBe(json);
    expect(report(audit)).toEqual(JSON.parse(json));
    expect(next(audit, { minutesLeft: 5 })).toEqual(
      JSON.parse(await printed('next', 'cases/demo.json', '--minutes', '5', '--json')),
    );
    expect(calculate('comb', { delayMs: 1 })).toEqual(
      JSON.parse(await printed('calc', 'comb', 'delayMs=1', '--json')),
    );
    for (const format of ['text', 'html', 'forum'] as const)
      expect(await reportAs(audit, format, { caseName: 'cases/demo.json' })).toBe(
        await printed('audit', 'cases/demo.json', '--format', format),
      );
  });

  it('reads words into a case that goes the way of every other', async () => {
    const { draft, taken } = await readWords(textOf('examples/post.txt'));
    expect(taken).toContainEqual(expect.objectContaining({ fact: 'seatDistance', value: 9 * 0.3048 }));
    const again = readCase(writeCase(draft));
    expect(report(await auditCase(again)).verdict).toEqual(report(await auditCase(draft)).verdict);
  });

  it('tells every problem of a case with its place', () => {
    const bad = '{\n "facts": {\n  "seatDistance": "9 parsecs",\n  "centerLayout": "round"\n }\n}';
    const problems = (() => {
      try {
        readCase(bad);
      } catch (error) {
        return error instanceof CaseError ? error.problems : undefined;
      }
      return undefined;
    })();
    expect(problems?.map(({ path, line }) => [path, line])).toEqual([
      ['facts.seatDistance', 3],
      ['facts.centerLayout', 4],
    ]);
    expect(() => readCase(new Uint8Array([0xff, 0xfe]))).toThrow(CaseError);
  });

  it('warns of a remedy that nothing is called by, and looks for response files only in the folder named', () => {
    const tried = '{"trials": [{ "act": "delay/unheard-of", "outcome": "same" }]}';
    expect(readCase(tried).warnings).toEqual([expect.objectContaining({ path: 'trials.0.act' })]);
    const measured = textOf('cases/correction-mismatch-measured.json');
    const told = (folder?: string) => readCase(measured, folder === undefined ? {} : { folder }).warnings;
    expect(told(join(ROOT, 'cases'))).toEqual([]);
    expect(told(join(ROOT, 'tests')).length).toBeGreaterThan(0);
  });

  it('refuses with a UserError what it cannot use', async () => {
    const audit = await demo();
    expect(() => calculate('comb', {})).toThrow(UserError);
    expect(() => calculate('combs', {})).toThrow(/did you mean comb/);
    await expect(reportAs(audit, 'pdf' as 'text')).rejects.toThrow(/markdown/);
    await expect(auditCase({ title: null, warnings: [] })).rejects.toThrow(UserError);
    expect(() => next({ leader: 'delay', undecided: false })).toThrow(UserError);
  });
});
