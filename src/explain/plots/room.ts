/** The room to scale: from above and from the side. */
import type { Point } from '../../acoustics/arrival.js';
import { display16x9, METERS_PER_FOOT } from '../../acoustics/practice.js';
import { floorBounce } from '../../acoustics/reflection.js';
import { type Reader, seatsIn } from '../../compute/reader.js';
import { type FactBook, told, type UnitSystem } from '../../facts/book.js';
import type { FactId } from '../../facts/catalog.js';
import { mainSeat, seatsOf } from '../../facts/seats.js';
import { bearings, type Head, headAt, mainHead, type Points, points } from '../../rules/derived/places.js';
import type { Report } from '../report-types.js';
import { capital, listText, quantityText } from '../words.js';
import { nearHz } from './axes.js';
import type { RoomChart, RoomItem, XY } from './chart.js';
import { type Ask, assumedNotes } from './known.js';

/** Angles smaller than this are straight ahead for people, deg. */
const STRAIGHT_DEG = 0.5;

const SCALE_BARS: Readonly<Record<UnitSystem, RoomChart['scaleBar']>> = {
  metric: { lengthM: 1, text: '1 m' },
  imperial: { lengthM: 3 * METERS_PER_FOOT, text: '3 ft' },
};

interface Scene {
  readonly places: Points;
  readonly heads: readonly Head[];
  /** Undefined for a seat beside or behind the center. */
  readonly azimuthsDeg: readonly (number | undefined)[];
}
const sceneOf = (r: Reader<FactId>): Scene => ({
  places: r.from(points),
  heads: seatsIn(r).map((seat) => headAt(r, seat)),
  azimuthsDeg: seatsIn(r).map((seat) => r.from(bearings).find((b) => b.seat === seat)?.azimuthDeg),
});

const hasCenter = (book: FactBook): boolean => told(book, 'centerCount') !== 'none';
/** A plan needs places that somebody told. */
const seatsTold = (book: FactBook): boolean =>
  book.seats.length > 0 || told(book, 'seatDistance') !== undefined;
const along = ([x = 0, y = 0]: Point): XY => [x, y];

export function planChart(ask: Ask, book: FactBook, report: Report): RoomChart | undefined {
  const known = ask(sceneOf);
  if (!known || !seatsTold(book)) return undefined;
  const { places, heads, azimuthsDeg } = known.value;
  const center = along(places.center);
  const farthestM = Math.max(...heads.map(({ yM }) => yM));
  const widthM = pictureWidthM(book);
  const withCenter = hasCenter(book);
  const items: RoomItem[] = [
    ...(widthM === undefined
      ? []
      : [
          {
            kind: 'picture',
            from: [-widthM / 2, Math.min(0, center[1])],
            to: [widthM / 2, Math.min(0, center[1])],
            name: 'picture',
          } as const,
        ]),
    ...(withCenter
      ? ([
          {
            kind: 'line',
            role: 'axis',
            points: [center, [center[0], farthestM]],
            name: '',
          },
          ...heads.map(
            ({ xM, yM }): RoomItem => ({ kind: 'line', role: 'sight', points: [center, [xM, yM]], name: '' }),
          ),
        ] as const)
      : []),
    { kind: 'loudspeaker', at: along(places.left), name: 'left', center: false },
    { kind: 'loudspeaker', at: along(places.right), name: 'right', center: false },
    ...(withCenter ? [{ kind: 'loudspeaker', at: center, name: 'center', center: true } as const] : []),
    ...heads.map(({ xM, yM }, i): RoomItem => {
      const seat = report.seats[i];
      return { kind: 'seat', at: [xM, yM], name: seat?.name ?? '', main: seat?.main ?? false };
    }),
  ];
  return {
    kind: 'room',
    id: 'room-above',
    title: 'The room from above',
    view: 'above',
    says: planSays(report, places, azimuthsDeg, withCenter),
    notes: [
      `To scale, facing the picture.${withCenter ? ' Dashed: the axis of the center.' : ''}`,
      ...assumedNotes(report.units, known),
    ],
    items,
    scaleBar: SCALE_BARS[report.units],
    table: {
      caption: 'Places, measured from the middle between the mains',
      head: ['what', 'to the right', 'back', 'from the axis of the center'],
      rows: [
        ...(['left', 'center', 'right'] as const)
          .filter((channel) => channel !== 'center' || withCenter)
          .map((channel) => {
            const [x, y] = along(places[channel]);
            return [channel, lengthText(x, report), lengthText(y, report), '−'];
          }),
        ...heads.map(({ xM, yM }, i) => [
          report.seats[i]?.name ?? '',
          lengthText(xM, report),
          lengthText(yM, report),
          withCenter && azimuthsDeg[i] !== undefined ? angleText(azimuthsDeg[i]) : '−',
        ]),
      ],
    },
  };
}

const lengthText = (meters: number, { units }: Report): string => quantityText(meters, 'm', units);
const angleText = (deg: number): string => {
  const size = quantityText(Math.round(Math.abs(deg)), 'deg', 'metric');
  return Math.abs(deg) < STRAIGHT_DEG ? 'straight ahead' : `${size} ${deg > 0 ? 'right' : 'left'}`;
};

function planSays(
  report: Report,
  places: Points,
  azimuthsDeg: readonly (number | undefined)[],
  withCenter: boolean,
): string {
  const baseM = (places.right[0] ?? 0) - (places.left[0] ?? 0);
  const main = report.seats.find((seat) => seat.main) ?? report.seats[0];
  const mains = `Left and right stand ${lengthText(baseM, report)} apart, and the main seat is ${lengthText(main?.yM ?? 0, report)} back`;
  const offAxis = azimuthsDeg.map((deg) => Math.abs(deg ?? 0));
  const worst = offAxis.indexOf(Math.max(...offAxis));
  const farDeg = azimuthsDeg[worst] ?? 0;
  if (!withCenter) return `${mains}.`;
  if (Math.abs(farDeg) < STRAIGHT_DEG) return `${mains}, straight in front of the center.`;
  return `${mains}. The seat farthest from the axis of the center is “${report.seats[worst]?.name ?? ''}”, ${angleText(farDeg)}.`;
}

function pictureWidthM(book: FactBook): number | undefined {
  const diagonal = told(book, 'displayDiagonal');
  return typeof diagonal === 'number' ? display16x9({ diagonalM: diagonal }).widthM : undefined;
}

const sideSceneOf = (r: Reader<FactId>) => {
  const sourceHeightM = r.number('centerTweeterHeight');
  const behindM = r.number('centerBehindMains');
  const head = r.from(mainHead);
  const distanceM = head.yM + behindM;
  return {
    sourceHeightM,
    behindM,
    head,
    heads: seatsIn(r).map((seat) => headAt(r, seat)),
    mainsHeightM: r.number('mainsTweeterHeight'),
    bounce: floorBounce({ sourceHeightM, earHeightM: head.earHeightM, distanceM }),
  };
};

/** From the side: x counts back from the front of the center, y up from the floor. */
export function sideChart(ask: Ask, book: FactBook, report: Report): RoomChart | undefined {
  const known = ask(sideSceneOf);
  if (!known || !seatsTold(book) || !hasCenter(book)) return undefined;
  const { sourceHeightM, behindM, head, heads, mainsHeightM, bounce } = known.value;
  const ear: XY = [head.yM + behindM, head.earHeightM];
  const source: XY = [0, sourceHeightM];
  const rows = onePerRow(book, heads).filter(({ head: each }) => each.yM !== head.yM);
  const backM = Math.max(...heads.map(({ yM }) => yM)) + behindM;
  const specular = bounce.specularM;
  const items: RoomItem[] = [
    {
      kind: 'line',
      role: 'floor',
      points: [
        [-0.3, 0],
        [backM + 0.4, 0],
      ],
      name: 'floor',
    },
    ...picture(book),
    ...obstacle(book),
    { kind: 'line', role: 'sight', points: [source, ear], name: '' },
    ...rows.map(
      ({ head: each }): RoomItem => ({
        kind: 'line',
        role: 'sight',
        points: [source, [each.yM + behindM, each.earHeightM]],
        name: '',
      }),
    ),
    ...(specular === null
      ? []
      : [
          {
            kind: 'line',
            role: 'bounce',
            points: [source, [specular, 0], ear],
            name: 'off the floor',
          } as const,
        ]),
    { kind: 'loudspeaker', at: [behindM, mainsHeightM], name: 'mains', center: false },
    { kind: 'loudspeaker', at: source, name: 'center', center: true },
    { kind: 'seat', at: ear, name: 'main seat', main: true },
    ...rows.map(
      ({ row, head: each }): RoomItem => ({
        kind: 'seat',
        at: [each.yM + behindM, each.earHeightM],
        name: `row ${row}`,
        main: false,
      }),
    ),
  ];
  return {
    kind: 'room',
    id: 'room-side',
    title: 'The room from the side',
    view: 'side',
    says: sideSays(sourceHeightM, head, mainsHeightM, bounce.firstNullHz, report),
    notes: ['To scale; the picture is at the left.', ...assumedNotes(report.units, known)],
    items,
    scaleBar: SCALE_BARS[report.units],
    table: {
      caption: 'Heights above the floor',
      head: ['what', 'height'],
      rows: [
        ['center, tweeter', lengthText(sourceHeightM, report)],
        ['mains, tweeter', lengthText(mainsHeightM, report)],
        ['ears, main seat', lengthText(head.earHeightM, report)],
        ...rows.map(({ row, head: each }) => [`ears, row ${row}`, lengthText(each.earHeightM, report)]),
        ...(['displayMiddleHeight', 'obstacleHeight'] as const).flatMap((id) => {
          const height = told(book, id);
          const what = id === 'obstacleHeight' ? 'what is in the way' : 'middle of the picture';
          return typeof height === 'number' ? [[what, lengthText(height, report)]] : [];
        }),
        ...(specular === null ? [] : [['spot on the floor, from the center', lengthText(specular, report)]]),
      ],
    },
  };
}

/** The seat of each row nearest to the middle. */
function onePerRow(book: FactBook, heads: readonly Head[]): { row: number; head: Head }[] {
  const plan = seatsOf(book);
  const main = mainSeat(plan);
  const found = new Map<number, Head>();
  plan.seats.forEach((seat, i) => {
    const head = heads[i];
    const before = found.get(seat.row);
    if (head && seat.row !== main.row && (!before || Math.abs(head.xM) < Math.abs(before.xM)))
      found.set(seat.row, head);
  });
  return [...found].map(([row, head]) => ({ row, head }));
}

function picture(book: FactBook): RoomItem[] {
  const middleM = told(book, 'displayMiddleHeight');
  const diagonalM = told(book, 'displayDiagonal');
  if (typeof middleM !== 'number' || typeof diagonalM !== 'number') return [];
  const halfM = display16x9({ diagonalM }).heightM / 2;
  return [{ kind: 'picture', from: [-0.05, middleM - halfM], to: [-0.05, middleM + halfM], name: 'picture' }];
}

function obstacle(book: FactBook): RoomItem[] {
  const heightM = told(book, 'obstacleHeight');
  const distanceM = told(book, 'obstacleDistance');
  if (typeof heightM !== 'number' || typeof distanceM !== 'number') return [];
  return [{ kind: 'obstacle', from: [distanceM, 0], to: [distanceM, heightM], name: 'in the way' }];
}

function sideSays(
  sourceM: number,
  head: Head,
  mainsM: number,
  nullHz: number | null,
  report: Report,
): string {
  const against = (otherM: number, what: string): string => {
    const rise = sourceM - otherM;
    return Math.abs(rise) < 0.02
      ? `as high as the ${what}`
      : `${lengthText(Math.abs(rise), report)} ${rise > 0 ? 'above' : 'below'} the ${what}`;
  };
  const floor =
    nullHz === null || nullHz > 20_000
      ? ''
      : ` Off the floor it comes once more, and the first hole is near ${nearHz(nullHz)}.`;
  return `${capital(listText([`the center is ${against(head.earHeightM, 'ears')}`, against(mainsM, 'mains')]))}.${floor}`;
}
