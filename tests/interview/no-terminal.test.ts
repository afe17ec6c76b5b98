import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { run } from '../../src/commands/interview.js';
import type { Io } from '../../src/commands/io.js';
import { factSpec, isFactId } from '../../src/facts/catalog.js';

vi.mock('inquirer', () => {
  throw new Error('inquirer was loaded without a terminal');
});

const PLAIN = { color: true };
const folder = mkdtempSync(join(tmpdir(), 'no-terminal-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Shown {
  out: string;
  err: string;
}
function ioOf(shown: Shown, stdinIsTerminal: boolean, stderrIsTerminal: boolean): Io {
  return {
    out: (text) => {
      shown.out += text;
    },
    err: (text) => {
      shown.err += text;
    },
    env: {},
    stdinIsTerminal,
    stdoutIsTerminal: false,
    stderrIsTerminal,
    columns: 80,
    readStdin: () => Promise.resolve(new Uint8Array()),
  };
}

describe('an interview without a terminal', () => {
  for (const [stdin, stderr] of [
    [false, true],
    [true, false],
    [false, false],
  ] as const)
    it(`is refused with the missing facts (standard input ${stdin}, standard error ${stderr})`, async () => {
      const shown = { out: '', err: '' };
      expect(await run(ioOf(shown, stdin, stderr), undefined, PLAIN)).toBe(3);
      expect(shown.err).toContain('needs a terminal');
      const [fact = '', asked = ''] = (shown.out.split('\n')[0] ?? '').split(': ');
      expect(isFactId(fact) && factSpec(fact).ask.startsWith(asked.slice(0, 20)), shown.out).toBe(true);
    });

  it('lists them as JSON, each with how to find out and an example', async () => {
    const shown = { out: '', err: '' };
    const path = join(folder, 'case.json');
    writeFileSync(path, '{"complaints": ["dull"], "facts": {"playedContent": "television"}}');
    expect(await run(ioOf(shown, false, false), path, { ...PLAIN, json: true })).toBe(3);
    const { missing } = JSON.parse(shown.out) as { missing: { fact: string; howToFindOut: string }[] };
    expect(missing.length).toBeGreaterThan(3);
    for (const { fact, howToFindOut } of missing) {
      expect(isFactId(fact) && fact !== 'playedContent').toBe(true);
      expect(howToFindOut).not.toBe('');
    }
  });

  it('refuses a bad case as every command does, and standard input as a case', async () => {
    const shown = { out: '', err: '' };
    const path = join(folder, 'bad.json');
    writeFileSync(path, '{"facts": {"nope": 1}}');
    await expect(run(ioOf(shown, false, false), path, PLAIN)).rejects.toThrow('nope');
    await expect(run(ioOf(shown, true, true), '-', PLAIN)).rejects.toThrow('keyboard');
  });

  it('makes no file', async () => {
    const path = join(folder, 'new.json');
    await run(ioOf({ out: '', err: '' }, false, false), path, PLAIN);
    expect(existsSync(path)).toBe(false);
  });
});
