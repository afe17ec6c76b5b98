/** The built program run as a process of its own. It is built first where the sources are newer. */
import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const ROOT = join(import.meta.dirname, '..', '..');
export const CLI = join(ROOT, 'dist', 'cli.js');

if (!isFresh()) execFileSync(process.execPath, [join(ROOT, 'scripts', 'build.mjs')]);

function isFresh(): boolean {
  if (!existsSync(CLI)) return false;
  const built = statSync(CLI).mtimeMs;
  const sources = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' });
  return ['scripts/build.mjs', 'package.json', ...sources.map((name) => `src/${name}`)].every(
    (name) => statSync(join(ROOT, name)).mtimeMs <= built,
  );
}

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  /** Piped in; without it standard input is empty. */
  readonly stdin?: string | Uint8Array;
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs the program with these arguments. */
export const program = (args: readonly string[], options: RunOptions = {}): Promise<Ran> =>
  runProcess(process.execPath, [CLI, ...args], options);

export function runProcess(command: string, args: readonly string[], options: RunOptions = {}): Promise<Ran> {
  const { stdin = '', cwd = ROOT, env = {} } = options;
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd, env: { ...process.env, NO_COLOR: '', ...env } });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text) => {
      err += text;
    });
    // A program that refuses early does not read what is piped in.
    child.stdin.on('error', () => {});
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    child.stdin.end(stdin);
  });
}

/** A folder that goes with the test file, with `center-audit` as a command in `bin`. */
export function workFolder(): { readonly path: string; readonly bin: string; remove(): void } {
  const path = mkdtempSync(join(tmpdir(), 'center-audit-'));
  const bin = mkdtempSync(join(tmpdir(), 'center-audit-bin-'));
  symlinkSync(CLI, join(bin, 'center-audit'));
  return {
    path,
    bin,
    remove: () => {
      rmSync(path, { recursive: true });
      rmSync(bin, { recursive: true });
    },
  };
}
