/** Writes into what is there and no file: a device, a pipe with a name. */
import { closeSync, constants, openSync, writeSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { codeOf } from '../../disk/read-file.js';
import type { Guard, Sink } from './sink.js';

const TRY_AGAIN_MS = 20;
/** A pipe is opened without waiting for its reader, and a full one left to be emptied: so Ctrl-C is always heard. */
const FLAGS = constants.O_WRONLY | (constants.O_NONBLOCK ?? 0);
const NO_READER_YET = 'ENXIO';
const FULL = 'EAGAIN';

/** @param isPipe it may have no reader yet; of anything else that answer is final */
export async function directSink(path: string, isPipe: boolean, guarded: Guard): Promise<Sink> {
  const openNow = (): number => openSync(path, FLAGS);
  const file = isPipe ? await insistently(NO_READER_YET, guarded, openNow) : guarded(openNow);
  let open = true;
  const close = (): void => {
    if (open) closeSync(file);
    open = false;
  };
  return {
    write: async (text) => {
      let rest = Buffer.from(text);
      while (rest.length > 0) {
        const taken = await insistently(FULL, guarded, () => writeSync(file, rest));
        rest = rest.subarray(taken);
      }
    },
    keep: close,
    drop: close,
  };
}

/** Takes the step again for as long as it fails for this reason. */
async function insistently<T>(reason: string, guarded: Guard, step: () => T): Promise<T> {
  for (;;) {
    const done = guarded(() => {
      try {
        return { value: step() };
      } catch (error) {
        if (codeOf(error) !== reason) throw error;
        return undefined;
      }
    });
    if (done) return done.value;
    await sleep(TRY_AGAIN_MS);
  }
}
