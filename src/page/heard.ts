/**
 * What colors the voice on its way to one seat: the dip of the driver layout, the comb of what center and mains
 * share, the loss of a screen, the boom of a bay, the hole at the crossover. The curves are those of the plots.
 */
import { arrival } from '../acoustics/arrival.js';
import { logGrid } from '../acoustics/bands.js';
import { sharedCombAtSeat } from '../acoustics/comb.js';
import { analogFilterDb } from '../acoustics/filter.js';
import { offAxisCurve } from '../acoustics/offaxis.js';
import { interpolateLog } from '../acoustics/reflection.js';
import { type Reader, seatsIn } from '../compute/reader.js';
import { knownIn } from '../explain/plots/known.js';
import type { FactBook } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import { seatsOf } from '../facts/seats.js';
import { arrivalsAtSeats } from '../rules/derived/arrivals.js';
import { drivers } from '../rules/derived/drivers.js';
import { layoutAtSeats } from '../rules/derived/layout.js';
import { headAt, pointOf, points } from '../rules/derived/places.js';
import { voiceGains } from '../rules/derived/sharing.js';
import { lossOf } from '../rules/derived/tone.js';
import { viewOf } from '../rules/derived/view.js';
import type { Heard, HeardPart } from './protocol.js';

const FROM_HZ = 60;
const TO_HZ = 16_000;
const POINTS = 161;
/** Played no deeper and no higher than this, dB: the room fills holes, and no ear needs more. Our own bound. */
const MOST_DB = 20;
/** A later copy is an echo, which a curve cannot play, ms. */
const LONGEST_COMB_MS = 10;
/** Width of a resonance of gap and cavity, and of the hole of two crossover slopes. Our own choice for listening. */
const BAY_Q = 3;
const HOLE_Q = 2;

type Level = (hz: number) => number;
type Model = (r: Reader<FactId>) => Level;

export function heardAt(book: FactBook, seat: number): Heard {
  const ask = knownIn(book);
  const view = viewOf(book);
  const read = (id: Parameters<typeof view.read>[0]): number | undefined => {
    const { value } = view.read(id);
    return typeof value === 'number' ? value : undefined;
  };
  const bell = (hz: number | undefined, gainDb: number | undefined, q: number): Level | undefined =>
    hz === undefined || gainDb === undefined || gainDb === 0
      ? undefined
      : (at) => analogFilterDb({ type: 'peaking', frequencyHz: hz, gainDb, q }, at);
  const holeDb = read('bassHoleDb');
  const levels: readonly (readonly [name: string, level: Level | undefined])[] = [
    ['the drivers, seen from this seat', ask(layoutAt(seat))?.value],
    ['what center and mains share', ask(combAt(seat))?.value],
    ['the screen', ask(screenLoss)?.value],
    ['the bay', bell(read('bayResonanceHz'), read('cavityPeakDb'), BAY_Q)],
    ['the bass crossover', bell(read('bassHoleHz'), holeDb === undefined ? undefined : -holeDb, HOLE_Q)],
  ];
  const grid = [...logGrid(FROM_HZ, TO_HZ, POINTS)];
  const parts = levels.flatMap(([name, level]): HeardPart[] =>
    level === undefined ? [] : [{ name, points: grid.map((hz) => [hz, bounded(level(hz))] as const) }],
  );
  const total = grid.map(
    (hz, i) => [hz, bounded(parts.reduce((sum, { points: at }) => sum + (at[i]?.[1] ?? 0), 0))] as const,
  );
  return { seat: seatsOf(book).seats[seat]?.name ?? '', parts, total };
}

const bounded = (db: number): number => Math.min(MOST_DB, Math.max(-MOST_DB, db));

/** Level over frequency from a computed curve; beyond its ends it keeps its last value. */
function along(frequencyHz: ArrayLike<number>, levelDb: ArrayLike<number>): Level {
  const table = Array.from(frequencyHz, (hz, i) => [hz, levelDb[i] ?? 0] as const);
  return (hz) => interpolateLog(table, hz);
}

const layoutAt =
  (seat: number): Model =>
  (r) => {
    const dip = r.from(layoutAtSeats).find(({ bearing }) => bearing.seat === seatsIn(r)[seat]);
    if (dip === undefined) return r.stop();
    const { azimuthDeg, distanceM } = dip.bearing;
    const { frequencyHz, smoothedDb } = offAxisCurve({ drivers: r.from(drivers), azimuthDeg, distanceM });
    return along(frequencyHz, smoothedDb);
  };

const combAt =
  (seat: number): Model =>
  (r) => {
    const { side, center } = r.from(voiceGains);
    if (side === 0 || center === 0) return r.stop();
    const place = seatsIn(r)[seat];
    const main = seatsIn(r).find((each) => each.main) ?? place;
    const now = r.from(arrivalsAtSeats)[seat];
    if (place === undefined || main === undefined || now === undefined) return r.stop();
    const spread = [now.centerMinusLeftMs, now.centerMinusRightMs, now.leftMinusRightMs].map(Math.abs);
    if (Math.max(...spread) > LONGEST_COMB_MS) return r.stop();
    const places = r.from(points);
    const at = pointOf(headAt(r, place));
    const byDistance = arrival({ ...places, seat: at });
    const { curve } = sharedCombAtSeat({
      ...places,
      seat: at,
      mainSeat: pointOf(headAt(r, main)),
      centerGain: center,
      sideGain: side,
      delaysMs: {
        left: byDistance.centerMinusLeftMs - now.centerMinusLeftMs,
        center: 0,
        right: byDistance.centerMinusRightMs - now.centerMinusRightMs,
      },
    });
    return along(curve.frequencyHz, curve.smoothedDb);
  };

const screenLoss: Model = (r) => {
  const kind = r.choice('screenKind');
  if (kind === 'none') return r.stop();
  const loss = lossOf(r, kind);
  return (hz) => -(loss([hz])[0] ?? 0);
};
