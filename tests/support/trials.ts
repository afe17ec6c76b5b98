/** Trials as a case tells them. */
import type { RemedyRef, Trial } from '../../src/facts/acts.js';

/** Remedies carried out, with the trouble still there. */
export const inVain = (...acts: readonly RemedyRef[]): Trial[] =>
  acts.map((act) => ({ act, outcome: 'same' }));
