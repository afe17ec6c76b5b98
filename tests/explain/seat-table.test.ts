/** What each place hears, as a table: words for sides and arrivals, and columns without a value left out. */
import { describe, expect, it } from 'vitest';
import type { Report, ReportSeat } from '../../src/explain/report-types.js';
import { arrivalText, seatTable } from '../../src/explain/seat-table.js';

const seat = (changes: Partial<ReportSeat> = {}): ReportSeat => ({
  name: 'sofa',
  azimuthDeg: null,
  dipDb: null,
  dipHz: null,
  speechLossDb: null,
  centerMinusMainsMs: null,
  main: false,
  row: 1,
  xM: 0,
  yM: 3,
  distanceM: null,
  phantomPullDeg: null,
  ...changes,
});
const table = (...seats: readonly ReportSeat[]) => seatTable({ seats } as Partial<Report> as Report);
const column = (changes: readonly Partial<ReportSeat>[]) =>
  table(...changes.map(seat)).rows.map((row) => row[1]);

describe('the table of seats', () => {
  it('names the main seat as such', () => {
    expect(table(seat({ main: true }), seat({ name: 'end' })).rows).toEqual([['sofa (main)'], ['end']]);
  });
  it('leaves out columns without any value, and says which', () => {
    const found = table(seat({ dipDb: -6 }), seat());
    expect(found.head).toEqual(['seat', 'voice dip']);
    expect(found.rows.map((row) => row[1])).toEqual(['−6 dB', '–']);
    expect(found.missing).toEqual(['The angle, the speech lost and the arrival of the center.']);
    const full = seat({ azimuthDeg: 1, dipDb: -1, speechLossDb: 1, centerMinusMainsMs: 1 });
    expect(table(full).head).toHaveLength(5);
    expect(table(full)).toMatchObject({ missing: [], marks: [] });
  });
  it('marks a column that rests on values nobody told, and no other', () => {
    const found = seatTable({
      seats: [seat({ azimuthDeg: 1, dipDb: -6 })],
      seatsAssumed: { azimuthDeg: [], dipDb: ['cone size'] },
    });
    expect(found.head).toEqual(['seat', 'angle', 'voice dip*']);
    expect(found.marks).toEqual([expect.stringMatching(/^\* .*not told/)]);
  });
  it('tells sides in words, and straight ahead where an angle prints as none', () => {
    expect(
      column([{ azimuthDeg: 12 }, { azimuthDeg: -12 }, { azimuthDeg: 0.049 }, { azimuthDeg: -0.05 }]),
    ).toEqual(['12° right', '12° left', 'straight', expect.stringMatching(/left$/)]);
  });
  it('tells a dip with its frequency where that is known, and the speech lost', () => {
    expect(column([{ dipDb: -6, dipHz: 1500 }, { dipDb: -6 }])).toEqual([
      expect.stringMatching(/^−6 dB at /),
      '−6 dB',
    ]);
    expect(column([{ speechLossDb: 2 }])).toEqual(['2 dB']);
  });
  it('tells who comes late', () => {
    expect([2, -2, 0.0049, -0.0049].map(arrivalText)).toEqual([
      '2 ms late',
      '2 ms early',
      'together',
      'together',
    ]);
    expect(arrivalText(0.005)).toMatch(/late$/);
    expect(column([{ centerMinusMainsMs: -2 }])).toEqual(['2 ms early']);
  });
});
