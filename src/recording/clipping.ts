/** Flat tops: runs of samples at the largest value. */

/** Part of the largest value that counts as it, and the length of a run. */
const NEAR_TOP = 0.985;
const RUN = 3;
/** So many samples in runs are an accident of loud music, more are clipping. */
export const MOST_FLAT_SAMPLES = 60;

export function flatSamples(samples: Float32Array): number {
  let largest = 0;
  for (let i = 0; i < samples.length; i += 1) largest = Math.max(largest, Math.abs(samples[i] ?? 0));
  if (largest === 0) return 0;
  const top = NEAR_TOP * largest;
  let run = 0;
  let flat = 0;
  for (let i = 0; i < samples.length; i += 1) {
    run = Math.abs(samples[i] ?? 0) > top ? run + 1 : 0;
    if (run >= RUN) flat += 1;
  }
  return flat;
}
