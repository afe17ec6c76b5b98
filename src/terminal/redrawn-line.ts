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

type End = 'escape' | 'end-of-input';

export function fullTerminal(style: () => Style, write: (text: string) => void): Terminal {
  return {
    tell: (lines) => write(drawLines(lines, style())),
    ask: async (prompt, isAgain) => {
      write(drawPrompt(prompt, style(), isAgain));
      const typed = await readLine(prompt.draft);
      if ('text' in typed) write(` > ${typed.text}\n`);
      return typed;
    },
    close: () => {},
  };
}

const same = (text: string): string => text;
const THEME = { prefix: '', style: { message: same, answer: same, defaultAnswer: same } };

async function readLine(draft: string): Promise<Typed> {
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
  process.stdin.on('keypress', onKey);
  process.once('beforeExit', onEmpty);
  const prompt = createPromptModule({
    input: process.stdin,
    output: process.stderr,
    clearPromptOnDone: true,
    signal: abort.signal,
  });
  const preset = draft === '' ? {} : { default: draft, prefill: 'editable' as const };
  try {
    const { v } = await prompt<{ v: string }>([
      { type: 'input', name: 'v', message: '>', theme: THEME, ...preset },
    ]);
    return { text: v };
  } catch (error) {
    if (end === 'escape') return { escape: true };
    if (end === 'end-of-input') return { ended: 'end-of-input' };
    if (error instanceof Error && error.name === 'ExitPromptError') return { ended: 'interrupt' };
    throw error;
  } finally {
    process.stdin.off('keypress', onKey);
    process.off('beforeExit', onEmpty);
  }
}
