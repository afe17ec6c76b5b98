/** Where the cases of a batch are worked on: in this thread while they are few, on all cores when they are many. */
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { auditOne, type Job, type Outcome, type Task } from './one.js';

/**
 * Cases done in this thread before workers are started. Measured on two cores: a worker takes some 0.3 s of
 * processor time to load the rules and warm up, a warm case 0.01 s (ranking alone) to 0.07 s (report), so with
 * two workers starting them pays from ten to sixty cases on; this lies between.
 */
export const ALONE_UP_TO = 24;
/** Tasks waiting for each worker: enough that none idles, few enough that memory stays flat. */
const WAITING_EACH = 4;

interface Workers {
  start(task: Task): { readonly result: Promise<Outcome>; readonly window: number };
  close(): Promise<void>;
}

/** @param jobs worker threads; as many as there are cores where it is left out, none for 1 */
export function workersFor(job: Job, jobs: number = availableParallelism()): Workers {
  // Built beside the program; from source there is no such file and everything runs in this thread.
  const file = fileURLToPath(new URL('./batch-worker.js', import.meta.url));
  const threads = jobs > 1 && existsSync(file) ? jobs : 0;
  let begun = 0;
  let pool: Promise<{ run(input: unknown): Promise<Outcome>; destroy(): Promise<void> }> | undefined;
  return {
    start(task) {
      begun += 1;
      if (threads === 0 || begun <= ALONE_UP_TO) return { result: auditOne(task, job), window: 1 };
      pool ??= openPool(file, threads);
      return { result: pool.then((open) => open.run({ task, job })), window: threads * WAITING_EACH };
    },
    close: async () => (await pool)?.destroy(),
  };
}

async function openPool(filename: string, threads: number) {
  const { Piscina } = await import('piscina');
  return new Piscina<{ task: Task; job: Job }, Outcome>({
    filename,
    minThreads: threads,
    maxThreads: threads,
    recordTiming: false,
  });
}
