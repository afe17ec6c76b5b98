/** The README stays true: its example is what the program prints, its commands exist and run. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CLI } from './support/program.js';

const ROOT = join(import.meta.dirname, '..');
/** The schema of a case alone is larger than what a child process may print by default. */
const MOST_BYTES = 16 * 1024 * 1024;
const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const run = (...args: string[]): string =>
  execFileSync('node', [CLI, ...args], { cwd: ROOT, encoding: 'utf8', maxBuffer: MOST_BYTES });

describe('README', () => {
  const examples = [...readme.matchAll(/```\n\$ center-audit (.*)\n([\s\S]*?)```/g)].map(
    ([, words = '', block = '']) => ({ words, block }),
  );
  it('has the worked examples', () => {
    expect(examples.map(({ words }) => words)).toEqual(
      expect.arrayContaining([
        'audit cases/demo.json',
        'read examples/post.txt --explain',
        'audit examples/post.json --format forum',
      ]),
    );
  });
  it.each(examples)('shows $words as the program prints it', ({ words, block }) => {
    const printed = flat(run(...words.split(' ')));
    const parts = block
      .split('…')
      .map((part) => flat(part).trim())
      .filter((part) => part !== '');
    expect(parts.length).toBeGreaterThan(1);
    for (const part of parts) expect(printed).toContain(part);
  });
  it('names commands that run', () => {
    const commands = [...readme.matchAll(/\| `center-audit (.*?)` \|/g)].flatMap((match) =>
      (match[1] as string).split('`, `center-audit '),
    );
    expect(commands.length).toBeGreaterThan(5);
    // What changes a file or lists the reader's own cases is tried where those commands are.
    for (const command of commands.filter((each) => !/before\.json|^set |^cases/.test(each))) {
      const words = [...command.matchAll(/(?:[^\s']|'[^']*')+/g)].map(([word]) => word.replaceAll("'", ''));
      expect(run(...words).length, command).toBeGreaterThan(100);
    }
  });
  it('names scripts that exist, and the two commands of a fresh clone', () => {
    const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    for (const text of [readme, readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8')])
      for (const [, script] of text.matchAll(/npm run ([\w:]+)/g))
        expect(scripts, script).toHaveProperty(script as string);
    expect(readme).toContain('npm ci && npm start');
    expect(readme).toContain('npm ci && npm test');
  });
});
