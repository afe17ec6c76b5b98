/** A terminal that types a list of lines and remembers everything it was shown. */
import type { Prompt, Terminal, Typed } from '../../src/interview/port.js';

export interface Scripted extends Terminal {
  readonly told: readonly string[];
  readonly prompts: readonly Prompt[];
}

/** After the last line the terminal is at its end of input. */
export function scriptedTerminal(typed: readonly (string | Typed)[]): Scripted {
  const told: string[] = [];
  const prompts: Prompt[] = [];
  return {
    told,
    prompts,
    tell: (lines) => void told.push(...lines),
    ask: (prompt) => {
      const next = typed[prompts.length] ?? ({ ended: 'end-of-input' } as const);
      prompts.push(prompt);
      return Promise.resolve(typeof next === 'string' ? { text: next } : next);
    },
    close: () => {},
  };
}
