/**
 * Questions in a terminal: the text is printed once and stays, only the line that is typed is redrawn. The one
 * importer of inquirer, of which only the `input` prompt is used: it takes every mark in every kind of question.
 *
 * Esc and the end of input are heard beside that prompt. At the end of input (Ctrl-D) it would reject while the
 * process is already exiting, too late to say anything; `beforeExit` comes earlier, and the process lives on
 * while the abort is handled.
 */
import { createPromptModule } from 'inquirer';
import { drawLines, drawPrompt, type Style } from '../interview/draw.js';
import type { Terminal, Typed } from '../interview/port.js';
import { BRACKETS_OFF, BRACKETS_ON, pasteGate } from './paste.js';

type End = 'escape' | 'end-of-input';

export function fullTerminal(style: () => Style, write: (text: string) => void): Terminal {
  const gate = pasteGate(process.stdin);
  write(BRACKETS_ON);
  return {
    tell: (lines) => write(drawLines(lines, style())),
    ask: async (prompt, isAgain) => {
      write(drawPrompt(prompt, style(), isAgain));
      const redraw = (line: string): void =>
        write(`${BRACKETS_ON}\n${drawPrompt(prompt, style(), isAgain)} > ${line}`);
      const typed = await readLine(gate.stream, redraw);
      if (!('text' in typed)) return typed;
      write(` > ${typed.text}\n`);
      return { text: gate.whole(typed.text) };
    },
    close: () => {
      gate.close();
      write(BRACKETS_OFF);
    },
  };
}

const ANSWERED_WITHIN_MS = 50;
const same = (text: string): string => text;
const THEME = { prefix: '', style: { message: same, answer: same, defaultAnswer: same } };

/** @param redraw puts the question again, with what is typed so far, after the program was stopped (Ctrl-Z, fg) */
async function readLine(input: NodeJS.ReadStream, redraw: (line: string) => void): Promise<Typed> {
  const abort = new AbortController();
  let end: End | undefined;
  const stop = (reason: End): void => {
    end = reason;
    abort.abort();
  };
  const onKey = (_: unknown, key: { readonly name?: string } | undefined): void => {
    if (key?.name === 'escape') stop('escape');
  };
  const onEmpty = (): void => stop('end-of-input');
  // Ctrl-D closes the line, and a line that is closed pauses its input; one that is answered is over by then.
  let closing: NodeJS.Timeout | undefined;
  const onPause = (): void => {
    closing = setTimeout(onEmpty, ANSWERED_WITHIN_MS);
  };
  let line = '';
  // The line pauses its input when the program goes on, too; it is to be resumed once that is done.
  const onContinue = (): void =>
    void setImmediate(() => {
      clearTimeout(closing);
      input.setRawMode(true);
      input.resume();
      redraw(line);
    });
  input.on('keypress', onKey);
  input.on('pause', onPause);
  process.once('beforeExit', onEmpty);
  process.on('SIGCONT', onContinue);
  const prompt = createPromptModule({
    input,
    output: process.stderr,
    clearPromptOnDone: true,
    signal: abort.signal,
  });
  try {
    const transformer = (typed: string): string => {
      line = typed;
      return typed;
    };
    const { v } = await prompt<{ v: string }>([
      { type: 'input', name: 'v', message: '>', theme: THEME, transformer },
    ]);
    return { text: v };
  } catch (error) {
    if (end === 'escape') return { escape: true };
    if (end === 'end-of-input') return { ended: 'end-of-input' };
    if (error instanceof Error && error.name === 'ExitPromptError') return { ended: 'interrupt' };
    throw error;
  } finally {
    input.off('keypress', onKey);
    input.off('pause', onPause);
    clearTimeout(closing);
    process.off('beforeExit', onEmpty);
    process.off('SIGCONT', onContinue);
  }
}
