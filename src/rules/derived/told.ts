/** Holes and peaks that were measured, and where the mechanisms of this case put theirs. */

import { derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';
import { BAY_NOTE_FACTS, bayNotesHz } from './bay.js';
import { LAYOUT_FACTS, layoutHoleHz } from './layout.js';
import { SURFACE_HOLE_FACTS, surfaceHolesHz } from './placement.js';

const HOLE_FACTS = ['measuredHoleHz', 'measuredHoleDb', 'correctionBoostHz'] as const;
/** A correction boosts about where it sees a hole, as log-sd of the frequency. Our own estimate. */
const BOOST_DOUBT = 0.12;

function toldHoleHz(r: Reader<(typeof HOLE_FACTS)[number]>): number {
  const depthDb = r.toldNumber('measuredHoleDb');
  // What is hardly a hole asks for no mechanism.
  if (depthDb !== undefined && Math.abs(depthDb) < LIMITS.dipDb.clear) return r.stop();
  const measuredHz = r.toldNumber('measuredHoleHz');
  if (measuredHz !== undefined) return measuredHz;
  const boostHz = r.toldNumber('correctionBoostHz');
  if (boostHz === undefined) return r.stop('measuredHoleHz');
  r.doubt(BOOST_DOUBT);
  return boostHz;
}

/** Of several places, the one that lies nearest to what was measured; the first where nothing was. */
function nearest(places: readonly (number | undefined)[], toldHz: number | undefined): number | undefined {
  const known = places.filter((hz): hz is number => hz !== undefined && hz > 0);
  if (toldHz === undefined) return known[0];
  const off = (hz: number): number => Math.abs(Math.log(hz / toldHz));
  return known.reduce<number | undefined>(
    (best, hz) => (best === undefined || off(hz) < off(best) ? hz : best),
    undefined,
  );
}

export const told = {
  toldHoleHz: derive(
    number('Hz', 'hole that was measured, or that a correction tries to fill'),
    HOLE_FACTS,
    (r) => r.from(toldHoleHz),
  ),
  toldPeakHz: derive(number('Hz', 'peak that was measured'), ['measuredPeakHz'], (r) =>
    r.number('measuredPeakHz'),
  ),
  surfaceHoleHz: derive(
    number('Hz', 'hole of the center from floor, ceiling or wall, the one nearest to what was measured'),
    [...SURFACE_HOLE_FACTS, 'measuredHoleHz', 'correctionBoostHz'],
    (r) =>
      nearest(r.from(surfaceHolesHz), r.toldNumber('measuredHoleHz') ?? r.toldNumber('correctionBoostHz')),
  ),
  layoutHoleHz: derive(
    number('Hz', 'hole from the driver layout at the seat where one was measured'),
    [...LAYOUT_FACTS, 'measuredHoleSeat'],
    (r) => r.from(layoutHoleHz),
  ),
  bayNoteHz: derive(
    number('Hz', 'note of the gaps or of the recess of the bay, the one nearest to what was measured'),
    [...BAY_NOTE_FACTS, 'measuredPeakHz'],
    (r) => nearest(r.from(bayNotesHz), r.toldNumber('measuredPeakHz')),
  ),
};
