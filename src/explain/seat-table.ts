/** The table of seats in words: what each place hears. A column without any value is left out and said so. */
import type { Report, ReportSeat } from './report-types.js';
import { listText, quantityText } from './words.js';

export interface SeatTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

interface Column {
  readonly head: string;
  /** What the column would need. */
  readonly needs: string;
  readonly cell: (seat: ReportSeat) => string | null;
}

const COLUMNS: readonly Column[] = [
  {
    head: 'angle',
    needs: 'the angle',
    cell: ({ azimuthDeg }) => (azimuthDeg === null ? null : angleText(azimuthDeg)),
  },
  {
    head: 'voice dip',
    needs: 'the dip of the driver layout',
    cell: ({ dipDb, dipHz }) =>
      dipDb === null
        ? null
        : `${quantityText(dipDb, 'dB', 'metric')}${dipHz === null ? '' : ` at ${quantityText(dipHz, 'Hz', 'metric')}`}`,
  },
  {
    head: 'speech lost',
    needs: 'the speech lost',
    cell: ({ speechLossDb }) => (speechLossDb === null ? null : quantityText(speechLossDb, 'dB', 'metric')),
  },
  {
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

export function seatTable({ seats }: Pick<Report, 'seats'>): SeatTable {
  const known = COLUMNS.filter((column) => seats.some((seat) => column.cell(seat) !== null));
  const missing = COLUMNS.filter((column) => !known.includes(column)).map((column) => column.needs);
  return {
    head: ['seat', ...known.map((column) => column.head)],
    rows: seats.map((seat) => [
      seat.main ? `${seat.name} (main)` : seat.name,
      ...known.map((column) => column.cell(seat) ?? '-'),
    ]),
    notes: missing.length > 0 ? [`Not computed yet: ${listText(missing)}.`] : [],
  };
}
