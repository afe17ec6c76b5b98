/** Standard output holds the result and nothing else; pipes, signals and terminals behave as shells expect. */
import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CLI, program, runProcess, workFolder } from '../support/program.js';
import { hasTmux, openTmux } from '../support/tmux.js';

const folder = workFolder();
const CASE = JSON.stringify({
  title: 'long sofa',
  units: 'metric',
  complaints: ['voice-unclear-off-side'],
  facts: { centerLayout: 'mid-tweeter-mid', seatDistance: 2.8 },
});
writeFileSync(join(folder.path, 'case.json'), CASE);
afterAll(() => folder.remove());

const run = (...args: string[]) => program(args, { cwd: folder.path });
const shell = (line: string, env: Record<string, string> = {}) =>
  runProcess('bash', ['-c', line], {
    cwd: folder.path,
    env: { PATH: `${folder.bin}:${process.env.PATH}`, ...env },
  });

describe('standard output', () => {
  it('holds JSON alone, notes go to standard error', async () => {
    const { code, out, err } = await run('audit', 'case.json', '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ format: 'center-audit/report', version: 1 });
    expect(err).toMatch(/numbers without a unit were taken as m: facts\.seatDistance/);
  });

  it('holds no escape sequence when it is no terminal, whatever the variables say', async () => {
    const { out } = await shell('center-audit audit case.json', {
      FORCE_COLOR: '1',
      CI: '1',
      COLORTERM: 'truecolor',
    });
    expect(out).toContain('VERDICT');
    expect(out).not.toContain('\u001b');
  });

  it('takes a case from a pipe', async () => {
    const { out, code } = await program(['audit', '-', '--json'], { stdin: CASE });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ title: 'long sofa' });
  });

  it.each(['why - driver-layout', 'next -', "try - 'seatDistance=3 m'", 'compare case.json -'])(
    '%s takes a case from a pipe, and prints JSON on request',
    async (line) => {
      const { out, code } = await shell(`center-audit ${line} --json < case.json`);
      expect(code).toBe(0);
      expect(JSON.parse(out)).toMatchObject({ version: 1 });
    },
  );

  it('may be left early by its reader without a word', async () => {
    const { out, err, code } = await shell(
      'set -o pipefail; center-audit facts --json | head -n 1; center-audit explain delay | head -n 1',
    );
    expect(code).toBe(0);
    expect(out).toContain('{');
    expect(err).toBe('');
  });
});

describe('signals and terminals', () => {
  it('Ctrl-C while a case is awaited ends with 130', async () => {
    const child = spawn(process.execPath, [CLI, 'audit', '-'], { stdio: ['pipe', 'pipe', 'pipe'] });
    child.stdin.write('{');
    // The signal must meet the program reading, not still loading: it is repeated until it is answered.
    const code = await new Promise((resolve) => {
      const again = setInterval(() => child.kill('SIGINT'), 300);
      child.on('exit', (status, signal) => {
        clearInterval(again);
        resolve(status ?? signal);
      });
    });
    expect([130, 'SIGINT']).toContain(code);
  });

  it('an interview without a terminal lists what it would ask and ends with 3', async () => {
    const { code, err, out } = await run('interview', 'case.json');
    expect(code).toBe(3);
    expect(err).toMatch(/needs a terminal/);
    expect(out).toMatch(/\?/);
    const bare = await run();
    expect(bare.code).toBe(3);
  });

  it('start without a terminal audits a case that comes with the program, from any folder', async () => {
    const { code, out, err } = await run('start');
    expect(code).toBe(0);
    expect(err).toMatch(/comes with the program/);
    expect(out).toContain('VERDICT');
  });

  it.skipIf(!hasTmux)('awaiting a case at the keyboard is told', async () => {
    const terminal = openTmux([process.execPath, CLI, 'audit', '-']);
    try {
      await terminal.see('Reading the case from the keyboard');
    } finally {
      terminal.close();
    }
  });

  it.skipIf(!hasTmux)(
    'color shows on a terminal and yields to NO_COLOR, --no-color and --accessible',
    async () => {
      const shown = async (args: string[], env: Record<string, string>): Promise<string> => {
        const terminal = openTmux([process.execPath, CLI, 'audit', join(folder.path, 'case.json'), ...args], {
          env,
        });
        try {
          await terminal.see('exit code 0');
          return terminal.allWithColors();
        } finally {
          terminal.close();
        }
      };
      expect(await shown([], { NO_COLOR: '' })).toContain('\u001b[1m');
      expect(await shown([], { NO_COLOR: '1' })).not.toContain('\u001b[1m');
      expect(await shown(['--no-color'], {})).not.toContain('\u001b[1m');
      expect(await shown(['--accessible'], {})).not.toContain('\u001b[1m');
    },
  );
});
