/** The table of seats in words: what each place hears. A column without any value is left out and said so. */
import type { Report, ReportSeat, SeatsAssumed } from './report-types.js';
import { capital, listText, quantityText } from './words.js';

export interface SeatTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What the marked columns rest on that nobody told. */
  readonly marks: readonly string[];
  /** Columns that could not be computed. */
  readonly missing: readonly string[];
}

interface Column {
  readonly of: keyof SeatsAssumed;
  readonly head: string;
  /** What the column would need. */
  readonly needs: string;
  readonly cell: (seat: ReportSeat) => string | null;
}

const COLUMNS: readonly Column[] = [
  {
    of: 'azimuthDeg',
    head: 'angle',
    needs: 'the angle',
    cell: ({ azimuthDeg }) => (azimuthDeg === null ? null : angleText(azimuthDeg)),
  },
  {
    of: 'dipDb',
    head: 'voice dip',
    needs: 'the dip of the driver layout',
    cell: ({ dipDb, dipHz }) =>
      dipDb === null
        ? null
        : `${quantityText(dipDb, 'dB', 'metric')}${dipHz === null ? '' : ` at ${quantityText(dipHz, 'Hz', 'metric')}`}`,
  },
  {
    of: 'speechLossDb',
    head: 'speech lost',
    needs: 'the speech lost',
    cell: ({ speechLossDb }) => (speechLossDb === null ? null : quantityText(speechLossDb, 'dB', 'metric')),
  },
  {
    of: 'centerMinusMainsMs',
    head: 'center arrives',
    needs: 'the arrival of the center',
    cell: ({ centerMinusMainsMs }) => (centerMinusMainsMs === null ? null : arrivalText(centerMinusMainsMs)),
  },
];

/** An angle below this is straight ahead. */
const STRAIGHT_DEG = 0.05;
export function angleText(azimuthDeg: number): string {
  if (Math.abs(azimuthDeg) < STRAIGHT_DEG) return 'straight';
  return `${quantityText(Math.abs(azimuthDeg), 'deg', 'metric')} ${azimuthDeg > 0 ? 'right' : 'left'}`;
}

/** Smaller differences, in ms, print as zero. */
const TOGETHER_MS = 0.005;
export function arrivalText(centerMinusMainsMs: number): string {
  if (Math.abs(centerMinusMainsMs) < TOGETHER_MS) return 'together';
  const late = centerMinusMainsMs > 0;
  return `${quantityText(Math.abs(centerMinusMainsMs), 'ms', 'metric')} ${late ? 'late' : 'early'}`;
}

/** Beside the head of a column that rests on values nobody told. */
const MARK = '*';

export function seatTable({
  seats,
  seatsAssumed = {},
}: Pick<Report, 'seats'> & Partial<Pick<Report, 'seatsAssumed'>>): SeatTable {
  const known = COLUMNS.filter(({ cell }) => seats.some((seat) => cell(seat) !== null));
  const missing = COLUMNS.filter((column) => !known.includes(column)).map(({ needs }) => needs);
  const isAssumed = ({ of }: Column): boolean => (seatsAssumed[of] ?? []).length > 0;
  const assumed = known.some(isAssumed);
  return {
    head: ['seat', ...known.map((column) => (isAssumed(column) ? column.head + MARK : column.head))],
    rows: seats.map((seat) => [
      seat.main ? `${seat.name} (main)` : seat.name,
      ...known.map(({ cell }) => cell(seat) ?? '–'),
    ]),
    marks: assumed ? [`${MARK} Rests on values taken as usual, since they were not told.`] : [],
    missing: missing.length > 0 ? [`${capital(listText(missing))}.`] : [],
  };
}
