/** A file that appears only when it is whole: filled under a name of its own, which goes with the process. */
import { closeSync, fchmodSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import type { Guard, Sink } from './sink.js';

/** Signals that end the process without an exit of its own. Ctrl-C is answered with one by the program. */
const DEADLY = ['SIGTERM', 'SIGHUP'] as const;

/**
 * @param place where the file comes to lie; no link
 * @param mode permissions of the report that is replaced, which are kept
 */
export function partSink(place: string, guarded: Guard, mode?: number): Sink {
  const part = `${place}.${process.pid}.part`;
  // Before the file is there: a signal may come at any moment after, and then waits for what runs now.
  const unhook = atEnd(() => drop());
  const file = guarded(() => {
    try {
      return openSync(part, 'wx');
    } catch (error) {
      unhook();
      throw error;
    }
  });
  let open = true;
  const close = (): void => {
    if (open) closeSync(file);
    open = false;
  };
  const drop = (): void => {
    close();
    rmSync(part, { force: true });
    unhook();
  };
  const step: Guard = (run) => {
    try {
      return guarded(run);
    } catch (error) {
      drop();
      throw error;
    }
  };
  return {
    write: async (text) => {
      step(() => writeFileSync(file, text));
    },
    keep: () => {
      step(() => {
        if (mode !== undefined) fchmodSync(file, mode);
        fsyncSync(file);
        close();
        renameSync(part, place);
      });
      unhook();
    },
    drop,
  };
}

/** Runs this when the process ends in any way that it hears of. Returns how to call that off. */
function atEnd(run: () => void): () => void {
  const killed = (signal: NodeJS.Signals): void => {
    run();
    // The hook is gone by now, so this ends the process as the sender meant it.
    process.kill(process.pid, signal);
  };
  process.on('exit', run);
  for (const signal of DEADLY) process.on(signal, killed);
  return () => {
    process.off('exit', run);
    for (const signal of DEADLY) process.off(signal, killed);
  };
}
