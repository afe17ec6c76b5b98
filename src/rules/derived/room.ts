/** The room's own sound. */
import { derive, number } from '../../compute/reader.js';

/** What a hand clap suggests, ms. Judgement, common practice without a source. */
const BY_CLAP_MS = { dry: 300, some: 500, long: 900 } as const;
/** A clap tells the reverberation time to about a third, as log-sd. Judgement. */
const CLAP_DOUBT = 0.3;

export const room = {
  reverbClarityMs: derive(
    number('ms', 'reverberation time measured, or as the clap suggests'),
    ['reverberationTime', 'clapRing'],
    (r) => {
      const measuredMs = r.toldNumber('reverberationTime');
      if (measuredMs !== undefined) return measuredMs;
      r.doubt(CLAP_DOUBT);
      return BY_CLAP_MS[r.choice('clapRing')];
    },
  ),
};
