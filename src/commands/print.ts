/** A result printed for people or for programs. */
import { type TextOptions, textOptions } from '../explain/terminal.js';
import type { GlobalOptions, Io } from './io.js';
import { type FormatOptions, textFlags, wantsJson } from './options.js';

export function printResult<T extends object>(
  io: Io,
  options: GlobalOptions & FormatOptions,
  result: T,
  inWords: (result: T, text: TextOptions) => string,
): void {
  io.out(
    wantsJson(options)
      ? `${JSON.stringify(result, null, 2)}\n`
      : inWords(result, textOptions(io, textFlags(options))),
  );
}
