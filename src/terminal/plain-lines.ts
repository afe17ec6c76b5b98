/** Questions for a screen reader or a simple console: what is typed is added to, nothing above it is drawn again. */
import { createInterface } from 'node:readline';
import { drawLines, drawPrompt, type Style } from '../interview/draw.js';
import type { Terminal, Typed } from '../interview/port.js';
import { BRACKETS_OFF, BRACKETS_ON, pasteGate } from './paste.js';

export function plainTerminal(style: () => Style, write: (text: string) => void): Terminal {
  const gate = pasteGate(process.stdin);
  // The line is read key by key: a console that edits lines itself shows the brackets of a paste, and cuts it at 4,095 letters.
  const lines = createInterface({ input: gate.stream, output: process.stderr, prompt: '> ', historySize: 0 });
  const waiting: ((typed: Typed) => void)[] = [];
  const early: Typed[] = [];
  const deliver = (typed: Typed): void => {
    const take = waiting.shift();
    if (take) take(typed);
    else early.push(typed);
  };
  const onInterrupt = (): void => deliver({ ended: 'interrupt' });
  lines.on('line', (line) => deliver({ text: gate.whole(line) }));
  lines.on('SIGINT', onInterrupt);
  // After Ctrl-Z and fg: the line has paused its input.
  lines.on('SIGCONT', () => {
    write(BRACKETS_ON);
    lines.prompt(true);
  });
  lines.on('close', () => deliver({ ended: 'end-of-input' }));
  process.on('SIGINT', onInterrupt);
  write(BRACKETS_ON);
  return {
    tell: (told) => write(drawLines(told, style())),
    ask: (prompt, isAgain) => {
      write(drawPrompt(prompt, style(), isAgain));
      lines.prompt();
      const ready = early.shift();
      return ready ? Promise.resolve(ready) : new Promise((resolve) => waiting.push(resolve));
    },
    close: () => {
      process.off('SIGINT', onInterrupt);
      lines.close();
      gate.close();
      write(BRACKETS_OFF);
    },
  };
}
