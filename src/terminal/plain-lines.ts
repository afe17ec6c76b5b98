/** Questions for a screen reader or a simple console: lines in, lines out; nothing is drawn twice. */
import { createInterface } from 'node:readline';
import { drawLines, drawPrompt, type Style } from '../interview/draw.js';
import type { Terminal, Typed } from '../interview/port.js';

export function plainTerminal(
  style: () => Style,
  write: (text: string) => void,
  input: NodeJS.ReadableStream = process.stdin,
): Terminal {
  const lines = createInterface({ input, terminal: false });
  const waiting: ((typed: Typed) => void)[] = [];
  const early: Typed[] = [];
  const deliver = (typed: Typed): void => {
    const take = waiting.shift();
    if (take) take(typed);
    else early.push(typed);
  };
  const onInterrupt = (): void => deliver({ ended: 'interrupt' });
  lines.on('line', (text) => deliver({ text }));
  lines.on('close', () => deliver({ ended: 'end-of-input' }));
  process.on('SIGINT', onInterrupt);
  return {
    tell: (told) => write(drawLines(told, style())),
    ask: (prompt, isAgain) => {
      const kept = prompt.draft === '' ? '' : drawLines([`You typed: ${prompt.draft}`], style());
      write(`${drawPrompt(prompt, style(), isAgain)}${kept}> `);
      const ready = early.shift();
      return ready ? Promise.resolve(ready) : new Promise((resolve) => waiting.push(resolve));
    },
    close: () => {
      process.off('SIGINT', onInterrupt);
      lines.close();
    },
  };
}
