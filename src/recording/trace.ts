/** The envelope of a response around its direct sound, for a picture. */
import type { Arrival } from './arrival.js';
import type { Trace } from './measurement.js';
import type { Side } from './polarities.js';

/** Drawn from shortly before to some time after the first arrival, ms. */
const TRACE_BEFORE_MS = 5;
const TRACE_AFTER_MS = 40;
const TRACE_STEP_MS = 0.1;

export function traceOf(side: Side, arrival: Arrival, arrivalMs: number): Trace {
  const rate = arrival.near.sampleRateHz;
  const origin = arrival.s * rate - arrival.first;
  const width = Math.max(1, Math.round((TRACE_STEP_MS / 1000) * rate));
  const count = Math.round((TRACE_BEFORE_MS + TRACE_AFTER_MS) / TRACE_STEP_MS);
  const times = Array.from({ length: count }, (_, i) => i * TRACE_STEP_MS - TRACE_BEFORE_MS);
  return {
    side,
    timesMs: times.map((time) => time + arrivalMs),
    levelsDb: times.map((time) => {
      const at = Math.round(origin + (time / 1000) * rate);
      let largest = 1e-9;
      for (let i = at; i < at + width; i += 1) largest = Math.max(largest, arrival.envelope[i] ?? 0);
      return 20 * Math.log10(largest);
    }),
  };
}
