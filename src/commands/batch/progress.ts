/** How far a long batch has come: one line on a terminal, redrawn in place and gone at the end. */
import type { Io } from '../io.js';

const REDRAW_MS = 200;
/** Shorter batches are over before anybody reads it. */
const FROM_MS = 500;

interface Progress {
  count(): void;
  end(): void;
}

/**
 * @param total undefined for a stream
 * @param now a clock in milliseconds
 */
export function progressOn(
  io: Io,
  total: number | undefined,
  accessible: boolean,
  now: () => number = Date.now,
): Progress {
  // Redrawn lines among printed results would only garble them.
  if (!io.stderrIsTerminal || io.stdoutIsTerminal || accessible) return { count: () => {}, end: () => {} };
  const begun = now();
  let cases = 0;
  let drawn = 0;
  return {
    count: () => {
      cases += 1;
      const time = now();
      if (time - begun < FROM_MS || time - drawn < REDRAW_MS) return;
      drawn = time;
      io.err(`\r${cases}${total === undefined ? '' : ` of ${total}`} cases`);
    },
    end: () => {
      if (drawn > 0) io.err('\r\u001b[K');
    },
  };
}
