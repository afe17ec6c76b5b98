/** What an error of arrival between center and mains does to content they share, and where it comes from. */

import { C_AIR } from '../../acoustics/air.js';
import {
  arrival,
  distanceM,
  LEAST_ENTRY_M,
  stepError,
  type UnitSlip,
  unitErrorRatio,
  unitSlip,
} from '../../acoustics/arrival.js';
import { sharedRippleDb, smoothedRippleDb } from '../../acoustics/comb.js';
import { choice, derive, number, type Reader, seatsIn } from '../../compute/reader.js';
import type { Seat } from '../../facts/book.js';
import { LIMITS } from '../limits.js';
import {
  ARRIVAL_FACTS,
  type ArrivalFact,
  arrivalAtMainSeat,
  automaticLatencyMs,
  distancesAtMainSeat,
  mainsArrivalMs,
  TAPED_FACTS,
} from './arrivals.js';
import { headAt, mainHead, POINT_FACTS, pointOf, points } from './places.js';
import { SHARING_FACTS, voiceGains } from './sharing.js';

function delayError(r: Reader<ArrivalFact>): number {
  const { centerMinusLeftMs, centerMinusRightMs } = r.from(arrivalAtMainSeat);
  return Math.max(Math.abs(centerMinusLeftMs), Math.abs(centerMinusRightMs));
}

/** Deeper combs are not told apart, dB: the room fills them. */
const MOST_RIPPLE_DB = 20;
/** Highest frequency at which a comb is judged, Hz: the end of the voice range. */
const VOICE_TO_HZ = 8000;
const VOICE_FROM_HZ = 200;
/** Beyond this a copy is an echo and combs no more, ms. Our own bound. */
const LONGEST_COMB_MS = 1000;

export const COMB_FACTS = [...ARRIVAL_FACTS, ...SHARING_FACTS] as const;
/** First and widest notch of the comb in what center and mains share, Hz; 0 where there is none in the voice. */
export function combHoleHz(r: Reader<(typeof COMB_FACTS)[number]>): number {
  const { side, center } = r.from(voiceGains);
  if (side === 0 || center === 0) return 0;
  const delayMs = r.from(delayError);
  const notchHz = 500 / delayMs;
  return notchHz > VOICE_TO_HZ || delayMs > LONGEST_COMB_MS ? 0 : notchHz;
}

/**
 * Judged where the first notch falls, since there the ear's filter is narrowest against it; a notch above the
 * voice range is none.
 */
function delayComb(r: Reader<(typeof COMB_FACTS)[number]>): number {
  const notchHz = r.from(combHoleHz);
  if (notchHz === 0) return 0;
  const { side, center } = r.from(voiceGains);
  const delayMs = r.from(delayError);
  const ripple = smoothedRippleDb({
    delayMs,
    relativeLevelDb: 20 * Math.log10((2 * side) / center),
    frequencyHz: Math.max(VOICE_FROM_HZ, notchHz),
  });
  return Math.min(MOST_RIPPLE_DB, ripple ?? MOST_RIPPLE_DB);
}

/** Points of the comb curve: enough for the short delays between seats, and for what a small shift changes. */
const COMB_POINTS = 400;
const SKETCH_POINTS = 200;
const OFF_SEAT_FACTS = [...POINT_FACTS, ...SHARING_FACTS] as const;
/** With arrivals and levels made right for the main seat. */
function offSeatComb(r: Reader<(typeof OFF_SEAT_FACTS)[number]>): number {
  const { side, center } = r.from(voiceGains);
  if (side === 0 || center === 0) return 0;
  const places = r.from(points);
  const main = pointOf(r.from(mainHead));
  const { centerMinusLeftMs, centerMinusRightMs } = arrival({ ...places, seat: main });
  const delaysMs = { left: centerMinusLeftMs, center: 0, right: centerMinusRightMs };
  const curvePoints = r.sketchGrid() ? SKETCH_POINTS : COMB_POINTS;
  const ripple = (seat: Seat): number =>
    sharedRippleDb({
      ...places,
      seat: pointOf(headAt(r, seat)),
      mainSeat: main,
      delaysMs,
      centerGain: center,
      sideGain: side,
      points: curvePoints,
    });
  return r.worst(seatsIn(r), ripple).badness;
}

const RATIO_FACTS = [
  ...POINT_FACTS,
  'entryKind',
  'enteredLeft',
  'enteredCenter',
  'enteredRight',
  ...TAPED_FACTS,
] as const;

/** Entered over true distance of the center, as a multiple of the same for the mains where they are entered. */
function entryRatio(r: Reader<(typeof RATIO_FACTS)[number]>): number | undefined {
  const enteredM = r.toldNumber('enteredCenter');
  if (enteredM === undefined) {
    return r.choice('entryKind') === 'delays' ? undefined : r.stop('enteredCenter');
  }
  const { seat, left, center, right } = r.from(distancesAtMainSeat);
  const own = unitErrorRatio(enteredM, distanceM(center, seat));
  const mains = [
    [r.toldNumber('enteredLeft'), left],
    [r.toldNumber('enteredRight'), right],
  ] as const;
  const ratios = mains.flatMap(([entry, point]) =>
    entry === undefined || entry < LEAST_ENTRY_M ? [] : [unitErrorRatio(entry, distanceM(point, seat))],
  );
  return ratios.length === 0 ? own : own / (ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length);
}

const SLIP_FACTS = [...RATIO_FACTS, ...ARRIVAL_FACTS] as const;
/** A ratio near that of foot and meter is a slip only where the center is out of step: a latency gives the same ratio. */
function slipOf(r: Reader<(typeof SLIP_FACTS)[number]>): UnitSlip | 'none' {
  const ratio = entryRatio(r);
  if (ratio === undefined) return r.stop();
  const slip = unitSlip(ratio);
  if (slip === null) return 'none';
  return r.from(delayError) >= LIMITS.delayMs.clear ? slip : 'none';
}

const TAPE_FACTS = ['alignmentBy', 'calibrationSpot', 'centerPowered', 'mainsPowered', 'testTape'] as const;
/** A tape sees no latency; after an automatic run a difference may be just that, and where there is none there is no latency. */
function tapeTells(r: Reader<(typeof TAPE_FACTS)[number]>): 'yes' | 'no' {
  const center = r.toldChoice('centerPowered');
  if (center === 'powered-mains-too') return 'yes';
  const automatic = r.toldChoice('alignmentBy') === 'automatic';
  if (automatic && r.toldChoice('testTape') === 'agrees') return 'yes';
  if (center === 'yes' || r.toldChoice('mainsPowered') === 'yes') return 'no';
  // What has moved since the run is another reason for a difference.
  const isOld = r.toldChoice('calibrationSpot') === 'changed-since';
  return center === undefined && automatic && !isOld ? r.stop('centerPowered') : 'yes';
}

/** What the automatic setup wrote stands as long as the entry is within one coarse step of it, m. Common practice. */
const KEPT_WITHIN_M = 0.1;

type MainsLength = 'enteredLeft' | 'enteredRight' | 'tapedMains' | 'tapedLeft' | 'tapedRight';

const ENTRY_TAPE_FACTS = ['enteredCenter', 'enteredLeft', 'enteredRight', ...TAPED_FACTS] as const;
function entryAgainstTape(r: Reader<(typeof ENTRY_TAPE_FACTS)[number]>): number {
  const [entered, taped] = r.numbers('enteredCenter', 'tapedCenter');
  const toldM = (...ids: readonly MainsLength[]): number | undefined => {
    const all = ids.flatMap((id) => r.toldNumber(id) ?? []);
    return all.length === 0 ? undefined : all.reduce((sum, m) => sum + m, 0) / all.length;
  };
  const enteredM = toldM('enteredLeft', 'enteredRight');
  const tapedM = toldM('tapedMains') ?? toldM('tapedLeft', 'tapedRight');
  const mainsOffM = enteredM === undefined || tapedM === undefined ? 0 : enteredM - tapedM;
  return (1000 * Math.abs(entered - taped - mainsOffM)) / C_AIR;
}

export const time = {
  arrivalMeasured: derive(
    number('ms', 'center against the mains as measured, magnitude'),
    ['arrivalMeasuredMs'],
    (r) => Math.abs(r.number('arrivalMeasuredMs')),
  ),
  automaticEntry: derive(
    choice('entry of the center against what the automatic setup wrote', ['kept', 'changed'] as const),
    ['enteredCenter', 'automaticDistanceCenter'],
    (r) => {
      const [entered, written] = r.numbers('enteredCenter', 'automaticDistanceCenter');
      return Math.abs(entered - written) <= KEPT_WITHIN_M ? 'kept' : 'changed';
    },
  ),
  unitSlip: derive(
    choice('unit slip in the entry of the center', ['feet-as-meters', 'meters-as-feet', 'none'] as const),
    SLIP_FACTS,
    slipOf,
  ),
  automaticLatency: derive(
    choice('whose automatic entry is longer than the tape', ['center', 'mains', 'none'] as const),
    ARRIVAL_FACTS,
    (r) =>
      automaticLatencyMs(r, 'center') > 0 ? 'center' : automaticLatencyMs(r, 'mains') > 0 ? 'mains' : 'none',
  ),
  setBy: derive(
    choice('what the entries come from, people unless told otherwise', ['microphone', 'people'] as const),
    ['alignmentBy'],
    (r) => (r.toldChoice('alignmentBy') === 'automatic' ? 'microphone' : 'people'),
  ),
  tapeTells: derive(
    choice('whether a tape can tell the arrival', ['yes', 'no'] as const),
    TAPE_FACTS,
    tapeTells,
  ),
  entryRatio: derive(
    number('1', 'entered distance of the center over its true distance, against the mains'),
    RATIO_FACTS,
    entryRatio,
  ),
  delayErrorMs: derive(
    number('ms', 'largest delay error of the center against left or right at the seat of the entries'),
    ARRIVAL_FACTS,
    delayError,
  ),
  entryAgainstTapeMs: derive(
    number(
      'ms',
      'entry of the center beyond its tape, less the same of the mains where both are told, magnitude',
    ),
    ENTRY_TAPE_FACTS,
    entryAgainstTape,
  ),
  entryMistake: derive(
    choice('whether the entry of the center is plainly false', ['yes', 'no'] as const),
    ENTRY_TAPE_FACTS,
    (r) => (r.from(entryAgainstTape) >= LIMITS.grossDelayMs.noticeable ? 'yes' : 'no'),
  ),
  delayGross: derive(
    choice('whether a gross delay error is known', ['yes', 'no'] as const),
    ARRIVAL_FACTS,
    (r) => (r.canTell(delayError) && r.from(delayError) >= LIMITS.grossDelayMs.clear ? 'yes' : 'no'),
  ),
  delaySignedMs: derive(
    number('ms', 'center against the mean of left and right (positive: center late)'),
    ARRIVAL_FACTS,
    (r) => r.from(arrivalAtMainSeat).centerMinusMeanMs,
  ),
  mainsArrivalErrorMs: derive(
    number('ms', 'left against right arrival at the main seat'),
    ARRIVAL_FACTS,
    (r) => Math.abs(r.from(mainsArrivalMs)),
  ),
  delayCombDb: derive(
    number('dB', 'ripple that this delay error makes in shared content, as the ear resolves it', {
      atMost: MOST_RIPPLE_DB,
    }),
    COMB_FACTS,
    delayComb,
  ),
  offSeatCombDb: derive(
    number(
      'dB',
      'ripple of shared content at the worst seat with perfect alignment, smoothed to a third octave',
    ),
    OFF_SEAT_FACTS,
    offSeatComb,
  ),
  entryStepErrorMs: derive(
    number('ms', 'largest error that the step of the entries can leave'),
    ['entryKind', 'entryStep'],
    (r) =>
      r.choice('entryKind') === 'delays' ? undefined : stepError({ stepM: r.number('entryStep') }).maxPairMs,
  ),
};
