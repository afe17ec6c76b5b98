/** What each seat hears of the center alone, against straight ahead. */
import { DEEPEST_DB } from '../../acoustics/holes.js';
import { offAxisCurve } from '../../acoustics/offaxis.js';
import type { Reader } from '../../compute/reader.js';
import { seatsIn } from '../../compute/reader.js';
import type { FactId } from '../../facts/catalog.js';
import { drivers } from '../../rules/derived/drivers.js';
import { layoutAtSeats, type SeatDip } from '../../rules/derived/layout.js';
import { LIMITS } from '../../rules/limits.js';
import type { Report } from '../report-types.js';
import { listText, quantityText } from '../words.js';
import { curvesTable, frequencyAxis, levelAxis, nearHz, pairsBetween, VOICE_BANDS_HZ } from './axes.js';
import type { Curve, LineChart, XY } from './chart.js';
import { type Ask, assumedNotes } from './known.js';

/** The range of the model and of the voice, Hz. */
const FROM_HZ = 200;
const TO_HZ = 8000;
/** Curves that can be told apart in one plot. */
const MOST_CURVES = 4;
/** Seats whose curves are nowhere further apart than this, dB, share one line. */
const SAME_DB = 0.05;

interface Heard {
  readonly name: string;
  readonly main: boolean;
  readonly dip: SeatDip;
  readonly points: readonly XY[];
}

const curvesAtSeats = (r: Reader<FactId>) => {
  const box = r.from(drivers);
  const seats = seatsIn(r);
  return r.from(layoutAtSeats).map((dip) => {
    const { azimuthDeg, distanceM } = dip.bearing;
    const { frequencyHz, smoothedDb } = offAxisCurve({ drivers: box, azimuthDeg, distanceM });
    return {
      dip,
      place: seats.indexOf(dip.bearing.seat),
      points: pairsBetween(frequencyHz, smoothedDb, FROM_HZ, TO_HZ),
    };
  });
};

export function offAxisChart(ask: Ask, report: Report): LineChart | undefined {
  const known = ask(curvesAtSeats);
  if (!known || report.told.every(({ fact }) => fact !== 'centerLayout')) return undefined;
  const heard = known.value.map(
    (seat): Heard => ({
      ...seat,
      name: report.seats[seat.place]?.name ?? `seat ${seat.place + 1}`,
      main: report.seats[seat.place]?.main ?? false,
    }),
  );
  const curves = chosen(heard);
  // Where every seat is straight ahead there is nothing to compare.
  if (curves.every(({ points }) => points.every(([, level]) => Math.abs(level) < SAME_DB))) return undefined;
  // The room fills what is deeper.
  const lowest = Math.max(-DEEPEST_DB, Math.min(...curves.flatMap(({ points }) => points.map(([, y]) => y))));
  return {
    kind: 'lines',
    id: 'off-axis',
    title: 'What each seat hears of the center',
    says: offAxisSays(heard),
    notes: [
      'Direct sound of the drivers alone, smoothed to a third octave; the room is left out and fills deep holes a little.',
      ...assumedNotes(report.units, known),
    ],
    x: frequencyAxis(FROM_HZ, TO_HZ),
    y: levelAxis('level against straight ahead (dB)', [lowest], { step: 3, atLeast: [-9, 3] }),
    curves,
    thresholds: [
      { at: -LIMITS.dipDb.clear, name: 'clear' },
      { at: -LIMITS.dipDb.severe, name: 'severe' },
    ],
    table: curvesTable('Level against straight ahead, in dB', VOICE_BANDS_HZ, curves),
  };
}

/** Main seat first, then the worst; seats that hear the same share a line. */
function chosen(heard: readonly Heard[]): Curve[] {
  const order = [...heard].sort((a, b) => Number(b.main) - Number(a.main) || b.dip.dipDb - a.dip.dipDb);
  const groups: Heard[][] = [];
  for (const seat of order) {
    const twin = groups.find(([first]) => first !== undefined && same(first.points, seat.points));
    if (twin) twin.push(seat);
    else groups.push([seat]);
  }
  return groups.slice(0, MOST_CURVES).map((group) => ({
    name: namesOf(group.map(({ name }) => name)),
    points: group[0]?.points ?? [],
    marked: false,
  }));
}

const same = (a: readonly XY[], b: readonly XY[]): boolean =>
  a.every(([, level], i) => Math.abs(level - (b[i]?.[1] ?? level)) < SAME_DB);

const namesOf = (names: readonly string[]): string =>
  names.length <= 2 ? listText(names) : `${names[0]} and ${names.length - 1} more`;

/** "The right end loses 9 dB near 1.7 kHz; the middle loses nothing to speak of." */
function offAxisSays(heard: readonly Heard[]): string {
  const worst = heard.reduce((a, b) => (b.dip.dipDb > a.dip.dipDb ? b : a));
  const main = heard.find((seat) => seat.main) ?? worst;
  const parts = worst === main ? [main] : [worst, main];
  return `${parts.map((seat, i) => lossText(seat, i === 0)).join('; ')}.`;
}

function lossText({ name, dip }: Heard, first: boolean): string {
  const seat = `${first ? 'The' : 'the'} seat “${name}”`;
  if (dip.dipHz === undefined) return `${seat} loses nothing to speak of`;
  const depth = quantityText(dip.dipDb, 'dB', 'metric');
  return `${seat} loses ${depth} near ${nearHz(dip.dipHz)}`;
}
