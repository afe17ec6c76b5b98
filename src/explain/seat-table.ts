/** The table of seats in words: what each place hears. A column without any value is left out and said so. */
import type { Report, ReportSeat } from './report-types.js';
import { capital, listText, quantityText } from './words.js';

export interface SeatTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What the marked columns rest on that nobody told. */
  readonly marks: readonly string[];
  /** Columns that could not be computed. */
  readonly missing: readonly string[];
}

/** An angle below this is straight ahead. */
const STRAIGHT_DEG = 0.05;
/** Smaller differences, in ms, print as zero. */
const TOGETHER_MS = 0.005;

const decibelText = (db: number): string => quantityText(db, 'dB', 'metric');
function angleText(azimuthDeg: number): string {
  if (Math.abs(azimuthDeg) < STRAIGHT_DEG) return 'straight';
  return `${quantityText(Math.abs(azimuthDeg), 'deg', 'metric')} ${azimuthDeg > 0 ? 'right' : 'left'}`;
}
export function arrivalText(centerMinusMainsMs: number): string {
  if (Math.abs(centerMinusMainsMs) < TOGETHER_MS) return 'together';
  const late = centerMinusMainsMs > 0;
  return `${quantityText(Math.abs(centerMinusMainsMs), 'ms', 'metric')} ${late ? 'late' : 'early'}`;
}

/** The numbers of a seat as people read them, and what a column without any would need. */
export const SEAT_NUMBERS = [
  { of: 'azimuthDeg', head: 'angle', needs: 'the angle', text: angleText },
  { of: 'dipDb', head: 'voice dip', needs: 'the dip of the driver layout', text: decibelText },
  { of: 'speechLossDb', head: 'speech lost', needs: 'the speech lost', text: decibelText },
  { of: 'centerMinusMainsMs', head: 'center arrives', needs: 'the arrival of the center', text: arrivalText },
] as const;
type Column = (typeof SEAT_NUMBERS)[number];

function cell({ of, text }: Column, seat: ReportSeat): string {
  const value = seat[of];
  if (value === null) return '–';
  const where =
    of === 'dipDb' && seat.dipHz !== null ? ` at ${quantityText(seat.dipHz, 'Hz', 'metric')}` : '';
  return text(value) + where;
}

/** Beside the head of a column that rests on values nobody told. */
const MARK = '*';

export function seatTable({
  seats,
  seatsAssumed = {},
}: Pick<Report, 'seats'> & Partial<Pick<Report, 'seatsAssumed'>>): SeatTable {
  const known = SEAT_NUMBERS.filter(({ of }) => seats.some((seat) => seat[of] !== null));
  const missing = SEAT_NUMBERS.filter((column) => !known.includes(column)).map(({ needs }) => needs);
  const isAssumed = ({ of }: Column): boolean => (seatsAssumed[of] ?? []).length > 0;
  const assumed = known.some(isAssumed);
  return {
    head: ['seat', ...known.map((column) => (isAssumed(column) ? column.head + MARK : column.head))],
    rows: seats.map((seat) => [
      seat.main ? `${seat.name} (main)` : seat.name,
      ...known.map((column) => cell(column, seat)),
    ]),
    marks: assumed ? [`${MARK} Rests on values taken as usual, since they were not told.`] : [],
    missing: missing.length > 0 ? [`${capital(listText(missing))}.`] : [],
  };
}
