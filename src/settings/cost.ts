/**
 * What a set of entries costs at each seat. Four harms, each against the limit at which it is clearly heard, squared and
 * added: a voice off its place or a stage drawn together (degrees), level of the center against the mains, the comb of
 * what both play, speech lost off the axis. A small fifth keeps what is shared in step where nothing else does.
 */
import { C_AIR } from '../acoustics/air.js';
import { distanceM, type Triple } from '../acoustics/arrival.js';
import { azimuthDeg, elevation } from '../acoustics/elevation.js';
import { offAxis } from '../acoustics/offaxis.js';
import { precedenceImage, sharedContent, widthRetained } from '../acoustics/upmix.js';
import { LIMITS } from '../rules/limits.js';
import { rippleDb } from './ripple.js';
import type { SettingSeat, System } from './system.js';

/** A choice that can be made: the delays that the processor adds, the trim against now, spread, tilt. */
export interface Choice {
  readonly delaysMs: Triple<number>;
  readonly trimChangeDb: number;
  /** Part of the middle that the mains keep; undefined leaves it as it is. */
  readonly spread: number | undefined;
  readonly tiltDeg: number;
}

export interface Harms {
  /** Voice in the middle off its place, and the stage drawn together, degrees. */
  readonly imageDeg: number;
  /** Center against mains, dB. */
  readonly levelDb: number;
  readonly combDb: number;
  readonly speechLossDb: number;
  /** Center late against the mean of the mains, ms. */
  readonly arrivalMs: number;
}

/** Ripple of shared content that is clearly heard, dB: the limit of a third-octave band to both sides. */
const CLEAR_RIPPLE_DB = 2 * LIMITS.bandDb.clear;
const CLEAR = {
  imageDeg: LIMITS.pullDeg.clear,
  levelDb: LIMITS.levelDb.clear,
  combDb: CLEAR_RIPPLE_DB,
  speechLossDb: LIMITS.speechLossDb.clear,
} as const;
/** Pans and effects are shared whatever the voice does; a tenth of the weight of the four (our own choice). */
const ARRIVAL_WEIGHT = 0.1;

export const CRITERION =
  'for each seat the squares of image shift, level, comb and lost speech, each over the value at which it is clearly heard, and a tenth of the arrival; weighted and averaged over the seats';

/** Everything of a seat that does not hang on the choice. */
export interface SeatModel {
  readonly seat: SettingSeat;
  readonly wayMs: Triple<number>;
  /** Amplitude against the main seat. */
  readonly gain: Triple<number>;
  /** Center against mains at trim 0, dB. */
  readonly levelDb: number;
  readonly halfAngleDeg: number;
  readonly speechLossDb: (tiltDeg: number) => number;
  /** Direction of the ears over the center, degrees. */
  readonly earsUpDeg: number;
}

const SIDES = ['left', 'center', 'right'] as const;
const triple = (of: (side: (typeof SIDES)[number]) => number): Triple<number> => ({
  left: of('left'),
  center: of('center'),
  right: of('right'),
});

export function seatModels(system: System): SeatModel[] {
  return system.seats.map((seat) => {
    const far = triple((side) => distanceM(system.points[side], seat.at));
    const main = triple((side) => distanceM(system.points[side], system.main.at));
    const gain = triple((side) => main[side] / Math.max(far[side], 0.1));
    const mains = 10 * Math.log10((gain.left ** 2 + gain.right ** 2) / 2);
    return {
      seat,
      wayMs: triple((side) => (far[side] / C_AIR) * 1000 + system.latencyMs[side]),
      gain,
      levelDb: (system.levelDb ?? 0) + 20 * Math.log10(gain.center) - mains,
      halfAngleDeg:
        (Math.atan2(Math.abs(system.points.right[0] ?? 0), Math.max(0.3, seat.seat.yM)) * 180) / Math.PI,
      speechLossDb: lossOf(system, seat),
      earsUpDeg: earsUp(system, seat),
    };
  });
}

function earsUp({ points }: System, { at }: SettingSeat): number {
  const [x = 0, y = 0, z = 0] = points.center;
  const [seatX = 0, seatY = 0, earM = 0] = at;
  return (Math.atan2(earM - z, Math.max(0.3, Math.hypot(seatX - x, seatY - y))) * 180) / Math.PI;
}

/** By tilt, in whole degrees; nothing where the drivers are not known. */
function lossOf({ drivers, points }: System, { at }: SettingSeat): (tiltDeg: number) => number {
  if (drivers === undefined) return () => 0;
  const [x = 0, y = 0, z = 0] = points.center;
  const [seatX = 0, seatY = 0, earM = 0] = at;
  const away = Math.max(0.3, Math.hypot(seatX - x, seatY - y));
  const sideDeg = azimuthDeg({ offsetM: seatX - x, distanceM: Math.max(0.1, seatY - y) });
  const known = new Map<number, number>();
  return (tiltDeg) => {
    const found = known.get(tiltDeg);
    if (found !== undefined) return found;
    const { offAxisDeg } = elevation({
      sourceHeightM: Math.max(0.01, z),
      earHeightM: earM,
      distanceM: away,
      tiltUpDeg: tiltDeg,
    });
    const loss = offAxis({
      drivers,
      azimuthDeg: sideDeg,
      elevationDeg: offAxisDeg,
      distanceM: away,
    }).speechLossDb;
    known.set(tiltDeg, loss);
    return loss;
  };
}

/** What the spread does whatever the seat: amplitudes, and how much of the stage is kept. */
export interface Played {
  readonly side: number;
  readonly center: number;
  readonly width: number;
}

export function playedBy(system: System, spread: number | undefined): Played {
  if (spread === undefined) return { ...system.gains, width: 1 };
  const setting = { extraction: 1 - spread };
  const { sideGain, centerGain } = sharedContent(setting);
  return { side: sideGain, center: centerGain, width: Math.min(1, widthRetained(setting).energy) };
}

/** Mean way by which sources over the whole stage move inward, degrees: half of the angle that is lost. */
const narrowingDeg = ({ halfAngleDeg }: SeatModel, { width }: Played): number =>
  ((1 - width) * halfAngleDeg) / 2;

export function harmsAt(model: SeatModel, system: System, choice: Choice, played: Played): Harms {
  const timeMs = triple((side) => model.wayMs[side] + choice.delaysMs[side]);
  const levelDb = model.levelDb + choice.trimChangeDb;
  const trim = 10 ** (((system.levelDb ?? 0) + choice.trimChangeDb) / 20);
  const amplitude = {
    left: played.side * model.gain.left,
    center: played.center * trim * model.gain.center,
    right: played.side * model.gain.right,
  };
  const ray = (side: keyof Triple<number>) => ({ amplitude: amplitude[side], timeMs: timeMs[side] });
  const shared = played.side > 0 && played.center > 0;
  return {
    imageDeg: Math.hypot(voiceShiftDeg(model, system, amplitude, timeMs), narrowingDeg(model, played)),
    levelDb,
    combDb: shared ? rippleDb(ray('left'), ray('center'), ray('right')) : 0,
    speechLossDb: model.speechLossDb(choice.tiltDeg),
    arrivalMs: timeMs.center - (timeMs.left + timeMs.right) / 2,
  };
}

/** How far a voice in the middle is heard from its place, seen from the seat. */
function voiceShiftDeg(
  { seat: { at } }: SeatModel,
  { points }: System,
  amplitude: Triple<number>,
  timeMs: Triple<number>,
): number {
  const [seatX = 0, seatY = 0] = at;
  const rays = SIDES.filter((side) => amplitude[side] > 1e-9).map((side) => {
    const [xM = 0, yM = 0] = points[side];
    return {
      acrossM: xM - seatX,
      aheadM: Math.max(0.05, seatY - yM),
      strength: amplitude[side] ** 2,
      timeMs: timeMs[side],
    };
  });
  if (rays.length === 0) return 0;
  const degrees = (x: number, y: number): number => (Math.atan2(x, y) * 180) / Math.PI;
  const { across, ahead } = precedenceImage(rays);
  return Math.abs(degrees(across, ahead) - degrees((points.center[0] ?? 0) - seatX, seatY));
}

export function costOf(harms: Harms): number {
  const four = (['imageDeg', 'levelDb', 'combDb', 'speechLossDb'] as const).reduce(
    (sum, harm) => sum + (harms[harm] / CLEAR[harm]) ** 2,
    0,
  );
  return four + ARRIVAL_WEIGHT * (harms.arrivalMs / LIMITS.delayMs.clear) ** 2;
}

/** A part of the cost that no delay can lower: what a search may cut off by. */
export function leastCost(model: SeatModel, choice: Choice, played: Played): number {
  return (
    ((model.levelDb + choice.trimChangeDb) / CLEAR.levelDb) ** 2 +
    (narrowingDeg(model, played) / CLEAR.imageDeg) ** 2 +
    (model.speechLossDb(choice.tiltDeg) / CLEAR.speechLossDb) ** 2
  );
}

export const speechCost = (model: SeatModel, tiltDeg: number): number =>
  (model.speechLossDb(tiltDeg) / CLEAR.speechLossDb) ** 2;
