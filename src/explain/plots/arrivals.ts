/** When left, center and right arrive at each seat, and the comb that their common part makes there. */
import { type Arrival, arrival } from '../../acoustics/arrival.js';
import { sharedCombAtSeat } from '../../acoustics/comb.js';
import type { Reader } from '../../compute/reader.js';
import type { FactId } from '../../facts/catalog.js';
import { arrivalAtMainSeat, arrivalsAtSeats } from '../../rules/derived/arrivals.js';
import { mainHead, pointOf, points } from '../../rules/derived/places.js';
import { voiceGains } from '../../rules/derived/sharing.js';
import { LIMITS } from '../../rules/limits.js';
import type { Report } from '../report-types.js';
import { arrivalText } from '../seat-table.js';
import { quantityText } from '../words.js';
import {
  curvesTable,
  frequencyAxis,
  levelAxis,
  linearAxis,
  pairsBetween,
  signedText,
  VOICE_BANDS_HZ,
} from './axes.js';
import type { BarChart, LineChart } from './chart.js';
import { type Ask, assumedNotes } from './known.js';

/** Seats with bars of their own; more would not fit a page. */
const MOST_SEATS = 6;
/** A later copy is an echo more than a comb, and the points of the curve would not follow it, ms. */
const LONGEST_COMB_MS = 10;
const FROM_HZ = 200;
const TO_HZ = 8000;

/** Milliseconds after the first of the three. */
function afterFirst({ centerMinusLeftMs, centerMinusRightMs }: Arrival) {
  const times = { left: -centerMinusLeftMs, center: 0, right: -centerMinusRightMs };
  const first = Math.min(times.left, times.center, times.right);
  return { left: times.left - first, center: times.center - first, right: times.right - first };
}

export function arrivalChart(ask: Ask, report: Report): BarChart | undefined {
  const known = ask(arrivalsAtSeats);
  if (!known) return undefined;
  const all = known.value.map((at, i) => ({
    at,
    late: afterFirst(at),
    name: report.seats[i]?.name ?? '',
    main: report.seats[i]?.main ?? false,
  }));
  const main = all.find((seat) => seat.main) ?? all[0];
  if (!main) return undefined;
  const seats = [main, ...all.filter((seat) => seat !== main)].slice(0, MOST_SEATS);
  const longest = Math.max(0.5, ...seats.flatMap(({ late }) => Object.values(late)));
  const step = niceStep(longest);
  return {
    kind: 'bars',
    id: 'arrivals',
    title: 'When the three arrive',
    says: `At the seat “${main.name}” the center arrives ${arrivalText(main.at.centerMinusMeanMs) === 'together' ? 'together with' : `${quantityText(Math.abs(main.at.centerMinusMeanMs), 'ms', 'metric')} ${main.at.centerMinusMeanMs > 0 ? 'after' : 'before'}`} the mean of the mains.`,
    notes: [
      'With the entries as told. At each seat the first to arrive begins at zero; a voice shared by two of them is colored where they differ.',
      ...assumedNotes(report.units, known),
    ],
    x: linearAxis('after the first to arrive (ms)', 0, Math.ceil(longest / step) * step, step),
    groups: seats.map(({ name, late }) => ({
      label: name,
      bars: (['left', 'center', 'right'] as const).map((channel) => ({
        label: channel,
        value: late[channel],
        text: `${signedText(Number(late[channel].toFixed(2)))} ms`,
      })),
    })),
    thresholds: [{ at: LIMITS.delayMs.clear, name: 'clearly heard' }],
    table: {
      caption: 'Arrival after the first of the three, and center against the mean of the mains, in ms',
      head: ['seat', 'left', 'center', 'right', 'center − mains'],
      rows: all.map(({ name, late, at }) => [
        name,
        ...[late.left, late.center, late.right, at.centerMinusMeanMs].map((ms) => ms.toFixed(2)),
      ]),
    },
  };
}

/** A whole step of 1, 2 or 5 that cuts a length into at most six. */
export function niceStep(length: number): number {
  const decade = 10 ** Math.floor(Math.log10(length / 6));
  return [1, 2, 5, 10].map((n) => n * decade).find((step) => length / step <= 6) ?? 10 * decade;
}

/** Which of the three is told to be connected the wrong way round; of the mains either one, where it is not told. */
function crossed(r: Reader<FactId>): 'left' | 'center' | 'right' | undefined {
  const marks = r.toldChoice('polarityMarks');
  if (marks === 'center-crossed' || r.toldChoice('testPolarity') === 'fuller-swapped') return 'center';
  if (marks !== 'main-crossed') return undefined;
  return r.toldChoice('faultyMain') === 'right' ? 'right' : 'left';
}

/** The direct sound of what center and mains share: as set now, with arrivals made equal, and with wires put right. */
const combAtMainSeat = (r: Reader<FactId>) => {
  const { side, center } = r.from(voiceGains);
  if (side === 0 || center === 0) return r.stop();
  const places = r.from(points);
  const seat = pointOf(r.from(mainHead));
  const byDistance = arrival({ ...places, seat });
  const now = r.from(arrivalAtMainSeat);
  if (Math.max(...Object.values(afterFirst(now))) > LONGEST_COMB_MS) return r.stop();
  const equal = { left: byDistance.centerMinusLeftMs, center: 0, right: byDistance.centerMinusRightMs };
  const reversed = crossed(r);
  const right = { ...places, seat, centerGain: center, sideGain: side };
  const shared = reversed === undefined ? right : { ...right, reversed };
  return {
    now: sharedCombAtSeat({
      ...shared,
      delaysMs: {
        left: equal.left - now.centerMinusLeftMs,
        center: 0,
        right: equal.right - now.centerMinusRightMs,
      },
    }),
    equal: sharedCombAtSeat({ ...shared, delaysMs: equal }),
    uncrossed: reversed === undefined ? undefined : sharedCombAtSeat({ ...right, delaysMs: equal }),
  };
};

export function combChart(ask: Ask, report: Report): LineChart | undefined {
  const known = ask(combAtMainSeat);
  if (!known) return undefined;
  const { now, equal, uncrossed } = known.value;
  const curve = (name: string, { curve: { frequencyHz, smoothedDb } }: typeof now) => ({
    name,
    points: pairsBetween(frequencyHz, smoothedDb, FROM_HZ, TO_HZ),
    marked: false,
  });
  const curves = [
    curve('as set now', now),
    curve('arrivals equal', equal),
    ...(uncrossed ? [curve('wires right too', uncrossed)] : []),
  ];
  const ripple = ({ ripplePeakToPeakDb }: typeof now): string =>
    quantityText(ripplePeakToPeakDb, 'dB', 'metric');
  const wires = uncrossed
    ? ` The crossed wires stay: only once they are put right too does it vary by ${ripple(uncrossed)}.`
    : '';
  const levels = curves.flatMap(({ points: all }) => all.map(([, level]) => level));
  const main = report.seats.find((seat) => seat.main)?.name ?? 'main seat';
  return {
    kind: 'lines',
    id: 'comb',
    title: 'What this does to a voice that center and mains share',
    says: `At the seat “${main}” the shared voice varies by ${ripple(now)} from peak to dip as set now, and by ${ripple(equal)} once all three arrive together.${wires}`,
    notes: [
      'Direct sound at one ear, smoothed to a third octave from 1,200 points; the room fills the holes a little.',
      ...assumedNotes(report.units, known),
    ],
    x: frequencyAxis(FROM_HZ, TO_HZ),
    y: levelAxis('level of the shared voice (dB)', levels, { step: 3, atLeast: [-6, 3] }),
    curves,
    thresholds: [],
    table: curvesTable('Level of the shared voice, in dB', VOICE_BANDS_HZ, curves),
  };
}
