/** What stands between the center and the seats. */
import {
  BARRIER_CAP_DB,
  barrierLossAtSeat,
  headLossAtSeat,
  objectLossAtSeat,
  type SightlineInput,
  sightline,
} from '../../acoustics/barrier.js';
import { HEAD_TOP_ABOVE_EAR_M } from '../../acoustics/head.js';
import { tableEffect } from '../../acoustics/shelf.js';
import { SPEECH_BANDS_HZ, speechLoss } from '../../acoustics/speech.js';
import { derive, number, type Reader, seatsIn } from '../../compute/reader.js';
import type { Seat } from '../../facts/book.js';
import { BEARING_FACTS, bearings, headAt, mainBearing, mainHead, requireCenter } from './places.js';
import { clothLossDb } from './tone.js';

export const PATH_FACTS = [
  ...BEARING_FACTS,
  'centerCount',
  'centerTweeterHeight',
  'obstacle',
  'obstacleMake',
  'obstacleFrom',
  'obstacleWidth',
  'obstacleHeight',
  'obstacleDistance',
] as const;
type PathFact = (typeof PATH_FACTS)[number];

interface Crossing {
  readonly line: SightlineInput;
  /** A single head lets sound pass around it, a wide edge does not; an object does by its width, m. */
  readonly what: 'head' | 'edge' | { readonly widthM: number };
}

/**
 * A head farther from the line than this is out of the way, m: its half width and half the first Fresnel zone at
 * 1 kHz. Our own estimate.
 */
const HEAD_ASIDE_M = 0.35;
/** A row of seat backs ends so far beyond its outermost heads, m. Common practice, no source. */
const ROW_END_M = 0.4;

/** The heads before a seat that are in the way: of each row the one nearest to the line between center and seat. */
function seatsInLine(
  seats: readonly Seat[],
  behind: Seat,
  { sideM, behindM, wide }: { readonly sideM: number; readonly behindM: number; readonly wide: boolean },
): readonly Seat[] {
  const asideM = (seat: Seat): number => {
    const share = (seat.yM + behindM) / (behind.yM + behindM);
    return seat.xM - (sideM + share * (behind.xM - sideM));
  };
  const before = seats.filter(
    (seat) => seat.row < behind.row && seat.yM < behind.yM && seat.yM + behindM > 0,
  );
  return [...new Set(before.map(({ row }) => row))].flatMap((rowNumber) => {
    const row = before.filter((seat) => seat.row === rowNumber);
    const nearest = [...row].sort((a, b) => Math.abs(asideM(a)) - Math.abs(asideM(b)))[0] as Seat;
    const places = row.map(asideM);
    // The line goes through a row where seats stand on both sides of it.
    const crossed = Math.min(...places) - ROW_END_M <= 0 && Math.max(...places) + ROW_END_M >= 0;
    return (wide ? crossed : Math.abs(asideM(nearest)) <= HEAD_ASIDE_M) ? [nearest] : [];
  });
}

/** Lines of sight that something crosses; none where nothing is in the way. */
function crossings(r: Reader<PathFact>): readonly Crossing[] {
  requireCenter(r);
  const obstacle = r.toldChoice('obstacle');
  if (obstacle === 'none') return [];
  const sourceHeightM = r.number('centerTweeterHeight');
  const [sideM, behindM] = r.numbers('centerSideOffset', 'centerBehindMains');
  const seats = seatsIn(r);
  const rows = seats.flatMap((seat): Crossing[] => {
    // The owner who sees seat backs sees something wide up to the ears; heads alone are not.
    const wide = obstacle === 'seat-row';
    const ends = { sourceHeightM, earHeightM: headAt(r, seat).earHeightM, earDistanceM: seat.yM + behindM };
    return seatsInLine(seats, seat, { sideM, behindM, wide }).map((before) => {
      const headTopM = headAt(r, before).earHeightM + (wide ? 0 : HEAD_TOP_ABOVE_EAR_M);
      return {
        line: { ...ends, headDistanceM: before.yM + behindM, headTopM },
        what: wide ? 'edge' : 'head',
      } as const;
    });
  });
  if (obstacle === undefined) return rows.length > 0 ? rows : r.stop('obstacle');
  if (obstacle === 'seat-row' && r.toldNumber('obstacleHeight') === undefined && rows.length > 0) return rows;
  const [headTopM, headDistanceM] = r.numbers('obstacleHeight', 'obstacleDistance');
  const what = obstacle === 'object' ? { widthM: r.number('obstacleWidth') } : 'edge';
  const hangs = obstacle === 'object' && r.choice('obstacleFrom') === 'above';
  return r.from(bearings).flatMap(({ seat, aheadM }): Crossing[] => {
    if (headDistanceM >= aheadM) return [];
    const ends = { sourceHeightM, earHeightM: headAt(r, seat).earHeightM, earDistanceM: aheadM };
    const line = { ...ends, headDistanceM, headTopM };
    return [{ line: hangs ? upsideDown(line) : line, what }];
  });
}

/** What hangs into the line is what stands in it, seen upside down. */
function upsideDown(line: SightlineInput): SightlineInput {
  const { sourceHeightM, earHeightM, headTopM } = line;
  const topM = Math.max(sourceHeightM, earHeightM, headTopM);
  return {
    ...line,
    sourceHeightM: topM - sourceHeightM,
    earHeightM: topM - earHeightM,
    headTopM: topM - headTopM,
  };
}

/** Cloth that air goes through, as a grille or a cabinet door of fabric, Pa s/m. From memory: a fine weave. */
const CLOTH_PA_S_PER_M = 40;
/** Speech lost in it. */
function clothLoss(): number {
  const bandLossDb = clothLossDb(CLOTH_PA_S_PER_M, SPEECH_BANDS_HZ);
  return Math.max(0, speechLoss({ bandLossDb }).lossDb);
}

/** Coffee tables: depth and width of the top, m. Common practice, no source. */
const TABLE_DEPTH_M = 0.6;
const TABLE_WIDTH_M = 1.1;
/** What such a top may be off from that, as log-sd of the dip. Our own estimate. */
const TABLE_DOUBT = 0.3;

/** The table as seen from the center at the main seat; undefined where none mirrors. */
function tableInLine(r: Reader<PathFact>) {
  requireCenter(r);
  if (r.choice('obstacle') !== 'table') return undefined;
  const [sourceM, tableM, nearEdgeM] = r.numbers('centerTweeterHeight', 'obstacleHeight', 'obstacleDistance');
  const { aheadM: distanceM } = r.from(mainBearing);
  const earAboveShelfM = r.from(mainHead).earHeightM - tableM;
  const heightAboveShelfM = sourceM - tableM;
  const farEdgeM = Math.min(distanceM, nearEdgeM + TABLE_DEPTH_M);
  // A center at or below the top is not mirrored by it.
  if (heightAboveShelfM <= 0 || earAboveShelfM <= 0 || nearEdgeM >= farEdgeM) return undefined;
  r.doubt(TABLE_DOUBT);
  return { heightAboveShelfM, earAboveShelfM, distanceM, nearEdgeM, farEdgeM, widthM: TABLE_WIDTH_M };
}

/** Deepest third-octave dip that the table leaves at the main seat; 0 where it does not. */
export function table(r: Reader<PathFact>): Readonly<Record<'dipDb' | 'dipHz', number>> {
  const geometry = r.from(tableInLine);
  if (!geometry) return { dipDb: 0, dipHz: 0 };
  const { dipDb, dipHz } = tableEffect(geometry, r.sketchGrid()?.stepDecades);
  return { dipDb: -Math.min(0, dipDb), dipHz };
}

/** Speech lost behind what is in the way, at the worst seat, dB. */
export function blockedSpeechLoss(r: Reader<PathFact>): number {
  if (r.toldChoice('obstacle') === 'object' && r.toldChoice('obstacleMake') === 'cloth') return clothLoss();
  const found = r.from(crossings);
  if (found.length === 0) return 0;
  const loss = ({ line, what }: Crossing): number =>
    typeof what === 'object'
      ? objectLossAtSeat({ ...line, ...what }).speechLossDb
      : (what === 'edge' ? barrierLossAtSeat : headLossAtSeat)(line).speechLossDb;
  return Math.max(0, r.worst(found, loss).badness);
}

export const path = {
  tableDipDb: derive(
    number('dB', 'dip from what a table below the line of sight mirrors to the main seat'),
    PATH_FACTS,
    (r) => r.from(table).dipDb,
  ),
  sightClearanceM: derive(
    number('m', 'clearance of the line of sight at the worst seat (negative: cut)'),
    PATH_FACTS,
    (r) => {
      const found = r.from(crossings);
      if (found.length === 0) return undefined;
      return -r.worst(found, ({ line }) => -sightline(line).clearanceM).badness;
    },
  ),
  blockedSpeechLossDb: derive(
    number('dB', 'speech lost behind what is in the way, at the worst seat', { atMost: BARRIER_CAP_DB }),
    PATH_FACTS,
    blockedSpeechLoss,
  ),
};
