/** Angles between seats, loudspeakers and picture. */
import { azimuthDeg, elevation } from '../../acoustics/elevation.js';
import { choice, derive, mainSeatIn, number, type Reader, SEAT_FACTS } from '../../compute/reader.js';
import { BEARING_FACTS, bearings, mainBearing, mainHead, requireCenter } from './places.js';

const HEIGHT_FACTS = [...BEARING_FACTS, 'centerCount', 'centerTweeterHeight'] as const;

function centerElevation(r: Reader<(typeof HEIGHT_FACTS)[number]>): number {
  requireCenter(r);
  const sourceHeightM = r.number('centerTweeterHeight');
  const { distanceM } = r.from(mainBearing);
  const { earHeightM } = r.from(mainHead);
  return elevation({ sourceHeightM, earHeightM, distanceM }).elevationDeg;
}

const AGAINST_MAINS_FACTS = [...HEIGHT_FACTS, 'mainsBase', 'mainsTweeterHeight'] as const;
function heightMismatch(r: Reader<(typeof AGAINST_MAINS_FACTS)[number]>): number {
  const centerDeg = r.from(centerElevation);
  const [baseM, sourceHeightM] = r.numbers('mainsBase', 'mainsTweeterHeight');
  const { xM, yM, earHeightM } = r.from(mainHead);
  const mainDeg = (sideM: number) =>
    elevation({ sourceHeightM, earHeightM, distanceM: Math.hypot(sideM - xM, yM) }).elevationDeg;
  return Math.abs(centerDeg - (mainDeg(-baseM / 2) + mainDeg(baseM / 2)) / 2);
}

const PICTURE_FACTS = ['displayMiddleHeight', 'displayTopHeight', 'displayDiagonal'] as const;
/** Height of a picture of 16 to 9 over its diagonal: plain geometry. */
const HEIGHT_OF_DIAGONAL = 9 / Math.hypot(16, 9);
/** As told, or from its top edge and its diagonal. */
function pictureMiddle(r: Reader<(typeof PICTURE_FACTS)[number]>): number {
  const topM = r.toldNumber('displayTopHeight');
  if (r.toldNumber('displayMiddleHeight') !== undefined || topM === undefined)
    return r.number('displayMiddleHeight');
  return topM - (HEIGHT_OF_DIAGONAL * r.number('displayDiagonal')) / 2;
}

const AGAINST_PICTURE_FACTS = [...HEIGHT_FACTS, ...PICTURE_FACTS] as const;
function pictureMismatch(r: Reader<(typeof AGAINST_PICTURE_FACTS)[number]>): number {
  const centerDeg = r.from(centerElevation);
  const sourceHeightM = r.from(pictureMiddle);
  const { distanceM } = r.from(mainBearing);
  const { earHeightM } = r.from(mainHead);
  return Math.abs(centerDeg - elevation({ sourceHeightM, earHeightM, distanceM }).elevationDeg);
}

/** Mains that point farther past the seat than this lose treble there, degrees. Common practice, no source. */
const MAINS_PAST_DEG = 30;

export const geometry = {
  mainsPointed: derive(
    choice('mains pointed at the main seat', ['at-seat', 'past-seat'] as const),
    [...SEAT_FACTS, 'mainsBase', 'toeIn'],
    (r) => {
      const [baseM, toeInDeg] = r.numbers('mainsBase', 'toeIn');
      const { xM, yM } = mainSeatIn(r);
      const past = [baseM / 2 + xM, baseM / 2 - xM].map((offsetM) =>
        Math.abs(azimuthDeg({ offsetM, distanceM: yM }) - toeInDeg),
      );
      return Math.max(...past) > MAINS_PAST_DEG ? 'past-seat' : 'at-seat';
    },
  ),
  seatAngleMaxDeg: derive(
    number('deg', 'angle of the outermost seat from the axis of the center'),
    [...BEARING_FACTS, 'centerCount'],
    (r) => {
      requireCenter(r);
      return Math.max(...r.from(bearings).map((b) => Math.abs(b.azimuthDeg)));
    },
  ),
  seatAngleMainDeg: derive(
    number('deg', 'angle of the main seat from the axis of the center'),
    [...BEARING_FACTS, 'centerCount'],
    (r) => {
      requireCenter(r);
      return Math.abs(r.from(mainBearing).azimuthDeg);
    },
  ),
  mainsBaseDeg: derive(
    number('deg', 'base angle of the mains at the main seat'),
    [...SEAT_FACTS, 'mainsBase'],
    (r) => {
      const halfM = r.number('mainsBase') / 2;
      const { xM, yM } = mainSeatIn(r);
      return (
        azimuthDeg({ offsetM: halfM + xM, distanceM: yM }) +
        azimuthDeg({ offsetM: halfM - xM, distanceM: yM })
      );
    },
  ),
  centerElevationDeg: derive(
    number('deg', 'elevation of the center seen from the ear (negative: below)'),
    HEIGHT_FACTS,
    (r) => r.from(centerElevation),
  ),
  heightMismatchDeg: derive(
    number('deg', 'height difference of center and mains seen from the ear'),
    AGAINST_MAINS_FACTS,
    heightMismatch,
  ),
  pictureMismatchDeg: derive(
    number('deg', 'height difference of center and picture seen from the ear'),
    AGAINST_PICTURE_FACTS,
    pictureMismatch,
  ),
  heightApartDeg: derive(
    number(
      'deg',
      'height difference of the center against mains or picture, the larger (mains alone for two-channel music)',
    ),
    [...AGAINST_MAINS_FACTS, ...AGAINST_PICTURE_FACTS, 'playedContent'],
    (r) => {
      const fromMainsDeg = r.from(heightMismatch);
      // Two-channel music has no picture to be at.
      if (r.toldChoice('playedContent') === 'two-channel-music') return fromMainsDeg;
      return Math.max(fromMainsDeg, r.from(pictureMismatch));
    },
  ),
  centerOffsetDeg: derive(
    number('deg', 'sideways offset of the center from the middle (or the picture), seen from the main seat'),
    [...BEARING_FACTS, 'centerCount', 'pictureSideOffset', 'playedContent'],
    (r) => {
      requireCenter(r);
      // That most centers stand in the middle is in the prior already; only a told place is evidence.
      if (r.toldNumber('centerSideOffset') === undefined) return r.stop('centerSideOffset');
      const { seat, azimuthDeg: ofSeat, aheadM } = r.from(mainBearing);
      const offDeg = (sideM: number): number =>
        Math.abs(ofSeat - azimuthDeg({ offsetM: seat.xM - sideM, distanceM: aheadM }));
      const pictureM = r.toldNumber('pictureSideOffset');
      // Right under its picture a voice is where it belongs, wherever the mains have their middle.
      if (pictureM === undefined || r.toldChoice('playedContent') === 'two-channel-music') return offDeg(0);
      return Math.min(offDeg(0), offDeg(pictureM));
    },
  ),
  tiltToEarsDeg: derive(
    number('deg', 'tilt up that points the center at the ears of the main seat (negative: down)'),
    HEIGHT_FACTS,
    (r) => -r.from(centerElevation),
  ),
  aimErrorDeg: derive(
    number('deg', 'angle between the axis of the center and the ears, vertically'),
    [...HEIGHT_FACTS, 'centerTilt'],
    (r) => {
      requireCenter(r);
      const [sourceHeightM, tiltUpDeg] = r.numbers('centerTweeterHeight', 'centerTilt');
      const { distanceM } = r.from(mainBearing);
      const { earHeightM } = r.from(mainHead);
      return Math.abs(elevation({ sourceHeightM, earHeightM, distanceM, tiltUpDeg }).offAxisDeg);
    },
  ),
};
