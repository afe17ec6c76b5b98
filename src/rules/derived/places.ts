/** Where everything is, as seen by the computations: shared intermediate results. */
import type { Point } from '../../acoustics/arrival.js';
import { azimuthDeg } from '../../acoustics/elevation.js';
import { mainSeatIn, type Reader, SEAT_FACTS, type SeatFact, seatsIn } from '../../compute/reader.js';
import type { Seat } from '../../facts/book.js';

/** Facts behind the direction of a seat from the center, sideways. */
export const BEARING_FACTS = [...SEAT_FACTS, 'centerSideOffset', 'centerBehindMains', 'centerToeIn'] as const;
export type BearingFact = (typeof BEARING_FACTS)[number];

/** Facts behind exact distances. */
export const POINT_FACTS = [
  ...BEARING_FACTS,
  'mainsBase',
  'mainsTweeterHeight',
  'centerTweeterHeight',
] as const;
export type PointFact = (typeof POINT_FACTS)[number];

export interface Head {
  readonly xM: number;
  readonly yM: number;
  readonly earHeightM: number;
}

/** A seat's ears: its own height where it has one, else that of the owner. */
export function headAt(r: Reader<'earHeight'>, seat: Seat): Head {
  const { xM, yM } = seat;
  return { xM, yM, earHeightM: seat.earHeightM ?? r.number('earHeight') };
}

/** The head at the seat all settings are made for. */
export function mainHead(r: Reader<SeatFact>): Head {
  return headAt(r, mainSeatIn(r));
}

export interface Bearing {
  readonly seat: Seat;
  /** To the right of the center. */
  readonly offsetM: number;
  /** From the axis of the center, which points straight ahead unless told otherwise; right positive. */
  readonly azimuthDeg: number;
  /** Straight ahead from the center, horizontal. */
  readonly aheadM: number;
  /** Horizontal distance from the center. */
  readonly distanceM: number;
}

function bearingOf(r: Reader<BearingFact>, seat: Seat): Bearing {
  const [sideM, behindM] = r.numbers('centerSideOffset', 'centerBehindMains');
  const offsetM = seat.xM - sideM;
  const aheadM = seat.yM + behindM;
  return {
    seat,
    offsetM,
    azimuthDeg: azimuthDeg({ offsetM, distanceM: aheadM }) - (r.toldNumber('centerToeIn') ?? 0),
    aheadM,
    distanceM: Math.hypot(offsetM, aheadM),
  };
}

/** A seat nearer to the plane of the center than this is beside it, m. */
const LEAST_AHEAD_M = 0.05;

/** Every seat as the center sees it. One beside or behind the center has no angle in front of it and drops out alone. */
export function bearings(r: Reader<BearingFact>): readonly Bearing[] {
  const seats = seatsIn(r);
  const behindM = r.number('centerBehindMains');
  const ahead = seats.filter(({ yM }) => yM + behindM >= LEAST_AHEAD_M);
  return (ahead.length > 0 ? ahead : seats).map((seat) => bearingOf(r, seat));
}

export function mainBearing(r: Reader<BearingFact>): Bearing {
  return bearingOf(r, mainSeatIn(r));
}

/** For distances only, where nobody told: a center under a picture on furniture. From memory, m. */
const USUAL_CENTER_HEIGHT = { value: 0.55, spread: 0.4 } as const;

export interface Points {
  readonly left: Point;
  readonly center: Point;
  readonly right: Point;
}

/** Tweeters in the room: x right of the midline, y back from the line between the mains, z up. */
export function points(r: Reader<PointFact>): Points {
  const [baseM, heightM, sideM, behindM] = r.numbers(
    'mainsBase',
    'mainsTweeterHeight',
    'centerSideOffset',
    'centerBehindMains',
  );
  return {
    left: [-baseM / 2, 0, heightM],
    center: [sideM, -behindM, r.numberOr('centerTweeterHeight', USUAL_CENTER_HEIGHT)],
    right: [baseM / 2, 0, heightM],
  };
}

export function pointOf({ xM, yM, earHeightM }: Head): Point {
  return [xM, yM, earHeightM];
}

/** A system without a center has no use for values about it. */
export function requireCenter(r: Reader<'centerCount'>): void {
  if (r.toldChoice('centerCount') === 'none') r.stop();
}
