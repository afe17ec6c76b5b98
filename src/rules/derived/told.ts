/**
 * Holes, peaks, reflections and drops of level that were measured, and what the mechanisms of this case make of theirs:
 * 0 where one makes none.
 */

import { derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';
import { HOLE_FACTS as CROSSOVER_FACTS, crossoverHoleHz } from './bass.js';
import { BAY_NOTE_FACTS, bayNotesHz } from './bay.js';
import { LAYOUT_FACTS, layoutHoleHz, layoutSpeechLoss } from './layout.js';
import { blockedSpeechLoss, PATH_FACTS, table } from './path.js';
import { SHELF_FACTS, SURFACE_HOLE_FACTS, shelfHoleHz, surfaceHolesHz } from './placement.js';
import { COMB_FACTS, combHoleHz } from './time.js';

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

/** Of several places or times, the one that lies nearest to what was measured; the first where nothing was. */
function nearest(places: readonly (number | undefined)[], toldAs: number | undefined): number | undefined {
  const known = places.filter((place): place is number => place !== undefined && place > 0);
  if (toldAs === undefined) return known[0];
  const off = (place: number): number => Math.abs(Math.log(place / toldAs));
  return known.reduce<number | undefined>(
    (best, place) => (best === undefined || off(place) < off(best) ? place : best),
    undefined,
  );
}

const DROP_FACTS = ['centerAgainstMainsDb', 'centerAgainstMainsSideDb'] as const;
/** How much softer the center is against the mains at the side seat than at the main seat, as measured, dB. */
function sideDropDb(r: Reader<(typeof DROP_FACTS)[number]>): number {
  const [main, side] = r.numbers(...DROP_FACTS);
  return main - side;
}

/**
 * What a mechanism takes from the center at the side seat, dB. Where it takes nothing and nothing was measured either,
 * there is nothing to compare.
 */
function dropMade(r: Reader<(typeof DROP_FACTS)[number]>, madeDb: number): number {
  const least = LIMITS.levelDb.noticeable;
  return madeDb < least && r.from(sideDropDb) < least ? r.stop() : madeDb;
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
  shelfHoleHz: derive(
    number('Hz', 'hole from the strip of shelf in front (0: none)'),
    SHELF_FACTS,
    shelfHoleHz,
  ),
  tableHoleHz: derive(
    number('Hz', 'hole from what a table mirrors (0: none)'),
    PATH_FACTS,
    (r) => r.from(table).dipHz,
  ),
  crossoverHoleHz: derive(
    number('Hz', 'hole where center and subwoofer meet (0: none)'),
    CROSSOVER_FACTS,
    crossoverHoleHz,
  ),
  combHoleHz: derive(
    number('Hz', 'first hole of the comb of center and mains in what they share (0: none)'),
    COMB_FACTS,
    combHoleHz,
  ),
  surfaceDelayMs: derive(
    number('ms', 'reflection from floor, ceiling or wall, the one nearest to what was measured'),
    [...SURFACE_HOLE_FACTS, 'reflectionMeasuredMs'],
    (r) => {
      // A surface cancels where its way is half a wave longer.
      const delays = r.from(surfaceHolesHz).map((hz) => (hz === undefined ? hz : 500 / hz));
      return nearest(delays, r.toldNumber('reflectionMeasuredMs'));
    },
  ),
  sideDropDb: derive(
    number('dB', 'how much softer the center was measured at the side seat than at the main seat'),
    DROP_FACTS,
    sideDropDb,
  ),
  layoutDropDb: derive(
    number('dB', 'what the driver layout takes from the center at the side seat'),
    [...LAYOUT_FACTS, ...DROP_FACTS],
    (r) => dropMade(r, r.from(layoutSpeechLoss)),
  ),
  shadeDropDb: derive(
    number('dB', 'what is in the way takes from the center at the side seat'),
    [...PATH_FACTS, ...DROP_FACTS],
    (r) => dropMade(r, r.from(blockedSpeechLoss)),
  ),
  bayNoteHz: derive(
    number('Hz', 'note of the gaps or of the recess of the bay, the one nearest to what was measured'),
    [...BAY_NOTE_FACTS, 'measuredPeakHz'],
    (r) => nearest(r.from(bayNotesHz), r.toldNumber('measuredPeakHz')),
  ),
};
