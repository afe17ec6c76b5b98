/** How far a long batch has come: one line on a terminal, redrawn in place and gone at the end. */
import type { Io } from '../io.js';

const REDRAW_MS = 200;
/** Shorter batches are over before anybody reads it. */
const FROM_MS = 500;

export interface Progress {
  count(): void;
  end(): void;
}

/** @param total undefined for a stream */
export function progressOn(io: Io, total: number | undefined, accessible: boolean): Progress {
  // Redrawn lines among printed results would only garble them.
  if (!io.stderrIsTerminal || io.stdoutIsTerminal || accessible) return { count: () => {}, end: () => {} };
  const begun = Date.now();
  let cases = 0;
  let drawn = 0;
  return {
    count: () => {
      cases += 1;
      const now = Date.now();
      if (now - begun < FROM_MS || now - drawn < REDRAW_MS) return;
      drawn = now;
      io.err(`\r${cases}${total === undefined ? '' : ` of ${total}`} cases`);
    },
    end: () => {
      if (drawn > 0) io.err('\r\u001b[K');
    },
  };
}
