/** Questions for a screen reader or a simple console: lines in, lines out; nothing is drawn twice. */
import { createInterface } from 'node:readline';
import { drawLines, drawPrompt, type Style } from '../interview/draw.js';
import type { Terminal, Typed } from '../interview/port.js';
import { BRACKETS_OFF, BRACKETS_ON, pasteReader } from './paste.js';

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
  // The line ends of a paste answer nothing: it is handed over as one piece once its closing bracket has come.
  const isTerminal = 'isTTY' in input && input.isTTY === true;
  if (isTerminal) write(BRACKETS_ON);
  const pieces = pasteReader();
  let before = '';
  lines.on('line', (line) => {
    before += pieces
      .read(pieces.isPasting() ? `\n${line}` : line)
      .map((piece) => ('typed' in piece ? piece.typed : piece.pasted))
      .join('');
    if (pieces.isPasting()) return;
    deliver({ text: before });
    before = '';
  });
  lines.on('close', () => deliver({ ended: 'end-of-input' }));
  process.on('SIGINT', onInterrupt);
  return {
    tell: (told) => write(drawLines(told, style())),
    ask: (prompt, isAgain) => {
      write(`${drawPrompt(prompt, style(), isAgain)}> `);
      const ready = early.shift();
      return ready ? Promise.resolve(ready) : new Promise((resolve) => waiting.push(resolve));
    },
    close: () => {
      process.off('SIGINT', onInterrupt);
      if (isTerminal) write(BRACKETS_OFF);
      lines.close();
    },
  };
}
