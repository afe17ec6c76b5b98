/** A real terminal for tests: a tmux of its own, lines typed into it, its screen read back. */
import { execFileSync, spawnSync } from 'node:child_process';
import { setTimeout as sleep } from 'node:timers/promises';

export const hasTmux = spawnSync('tmux', ['-V']).status === 0;

export interface TerminalOptions {
  readonly columns?: number;
  readonly rows?: number;
  readonly env?: Readonly<Record<string, string>>;
}

export interface TmuxTerminal {
  /** Types a line once the program waits for one, and waits until `next` is shown below it. */
  type(line: string, next: RegExp | string): Promise<string>;
  /** Pastes text as a terminal does, presses Enter, and waits until `next` is shown. */
  paste(text: string, next: RegExp | string): Promise<string>;
  /** Presses a key (tmux name: Escape, C-c, C-d, Enter) likewise. */
  press(key: string, next: RegExp | string): Promise<string>;
  /** Waits until the text is shown below what was last waited for. */
  see(text: RegExp | string): Promise<string>;
  /** Everything shown so far, lines as they stand on the screen. */
  all(): string;
  /** The same with the sequences that color it. */
  allWithColors(): string;
  resize(columns: number, rows: number): void;
  /** Closes the window, as somebody who is done with it. */
  hangUp(): void;
  /** Process id of the program. */
  pid(): number;
  close(): void;
}

const PATIENCE_MS = 20_000;
const GLANCE_MS = 40;
let count = 0;

/** The program ends with a line `exit code N`. */
export function openTmux(command: readonly string[], options: TerminalOptions = {}): TmuxTerminal {
  const socket = `center-audit-test-${process.pid}-${++count}`;
  const { columns = 80, rows = 24, env = {} } = options;
  const tmux = (...args: string[]): string =>
    execFileSync('tmux', ['-L', socket, ...args], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  const words = command.map((word) => `'${word.replaceAll("'", "'\\''")}'`).join(' ');
  const variables = Object.entries({ LC_ALL: 'C.UTF-8', ...env }).flatMap(([key, value]) => [
    '-e',
    `${key}=${value}`,
  ]);
  const size = ['-x', String(columns), '-y', String(rows)];
  const shell = `${words}; echo "exit code $?"; sleep 600`;
  const start = ['new-session', '-d', '-s', 't', ...size, ...variables, shell];
  tmux('-f', '/dev/null', 'set-option', '-g', 'history-limit', '20000', ';', ...start);
  let seen = 0;

  const lines = (): string[] => {
    const text = tmux('capture-pane', '-p', '-S', '-', '-t', 't').replace(/\s+$/, '');
    return text.split('\n');
  };
  const see = async (wanted: RegExp | string): Promise<string> => {
    const isThere = (text: string): boolean =>
      typeof wanted === 'string' ? text.includes(wanted) : wanted.test(text);
    for (let waited = 0; waited < PATIENCE_MS; waited += GLANCE_MS) {
      const shown = lines();
      const fresh = shown.slice(seen).join('\n');
      if (isThere(fresh.replace(/\n\s*/g, ' '))) {
        seen = shown.length;
        return fresh;
      }
      if (/^exit code \d+$/m.test(fresh)) break;
      await sleep(GLANCE_MS);
    }
    throw new Error(`never saw ${String(wanted)} in:\n${lines().join('\n')}`);
  };
  /** The line to type on stands below what was waited for; it is part of it for the next wait. */
  const ready = async (): Promise<void> => {
    for (let waited = 0; waited < PATIENCE_MS; waited += GLANCE_MS) {
      const shown = lines();
      if (/^ ?>/.test(shown.at(-1) ?? '')) {
        seen = shown.length - 1;
        return;
      }
      if (/^exit code \d+$/m.test(shown.at(-1) ?? '')) break;
      await sleep(GLANCE_MS);
    }
    throw new Error(`never waits for a line:\n${lines().join('\n')}`);
  };
  return {
    type: async (line, next) => {
      await ready();
      if (line !== '') tmux('send-keys', '-t', 't', '-l', '--', line);
      tmux('send-keys', '-t', 't', 'Enter');
      return see(next);
    },
    paste: async (text, next) => {
      await ready();
      execFileSync('tmux', ['-L', socket, 'load-buffer', '-b', 'paste', '-'], { input: text });
      tmux('paste-buffer', '-p', '-d', '-b', 'paste', '-t', 't');
      tmux('send-keys', '-t', 't', 'Enter');
      return see(next);
    },
    press: async (key, next) => {
      await ready();
      tmux('send-keys', '-t', 't', key);
      return see(next);
    },
    see,
    all: () => lines().join('\n'),
    allWithColors: () => tmux('capture-pane', '-p', '-e', '-S', '-', '-t', 't'),
    resize: (x, y) => void tmux('resize-window', '-t', 't', '-x', String(x), '-y', String(y)),
    hangUp: () => void tmux('kill-session', '-t', 't'),
    pid: () => {
      const shellPid = tmux('display-message', '-p', '-t', 't', '#{pane_pid}').trim();
      return Number(execFileSync('pgrep', ['-P', shellPid], { encoding: 'utf8' }).trim().split('\n')[0]);
    },
    close: () => void spawnSync('tmux', ['-L', socket, 'kill-server']),
  };
}
