/** The room from above as data: everything where it was told, the farthest seat named. */
import { describe, expect, it } from 'vitest';
import { knownIn } from '../../../src/explain/plots/known.js';
import { planChart } from '../../../src/explain/plots/room.js';
import { bookOf } from '../../support/causeClaims.js';
import { answering, reportOf } from './small.js';
import { drawer, FACTS, linesOf, of, SEATS } from './smallRoom.js';

const plan = drawer(planChart);

describe('the room from above', () => {
  it('has loudspeakers and seats where they were told', () => {
    expect(of(plan(), 'loudspeaker')).toEqual([
      { kind: 'loudspeaker', at: [-1.3, 0], name: 'left', center: false },
      { kind: 'loudspeaker', at: [1.3, 0], name: 'right', center: false },
      { kind: 'loudspeaker', at: [0, -0.2], name: 'center', center: true },
    ]);
    expect(of(plan(), 'seat')).toEqual([
      { kind: 'seat', at: [0, 3], name: 'middle', main: true },
      { kind: 'seat', at: [1, 3], name: 'end', main: false },
    ]);
  });
  it('has the axis of the center to the last seat, and a line from it to every seat', () => {
    const chart = plan({}, [...SEATS, { name: 'rear', xM: 0.5, yM: 4 }]);
    expect(linesOf(chart, 'axis')).toEqual([
      [
        [0, -0.2],
        [0, 4],
      ],
    ]);
    expect(linesOf(chart, 'sight')?.map(([from, to]) => [from, to])).toEqual(
      [
        [0, 3],
        [1, 3],
        [0.5, 4],
      ].map((to) => [[0, -0.2], to]),
    );
  });
  it('has the picture as wide as its diagonal makes it, before whichever is further front', () => {
    const picture = (centerBehindMains: number) =>
      of(plan({ displayDiagonal: 1.4, centerBehindMains }), 'picture');
    // 16 of 18.36 parts of the diagonal, half to each side.
    expect(picture(0.2)).toEqual([
      {
        kind: 'picture',
        from: [expect.closeTo(-0.61, 3), -0.2],
        to: [expect.closeTo(0.61, 3), -0.2],
        name: 'picture',
      },
    ]);
    expect(picture(-0.3)).toMatchObject([{ from: [expect.closeTo(-0.61, 3), 0] }]);
    expect(of(plan(), 'picture')).toEqual([]);
  });
  it('says how far apart the mains stand and which seat is farthest off the axis, on which side', () => {
    expect(plan()?.says).toBe(
      'Left and right stand 2.60 m (8 ft 6 1/2 in) apart, and the main seat is 3.00 m (9 ft 10 in) back. The seat farthest from the axis of the center is “end”, 17° right.',
    );
    const left = plan({}, [{ name: 'window', xM: -1.5, yM: 3 }, ...SEATS]);
    expect(left?.says).toMatch(/is “window”, 25° left\.$/);
    expect(plan({}, SEATS.slice(0, 1))?.says).toMatch(/ back, straight in front of the center\.$/);
    expect(plan({ mainsBase: 2 }, SEATS, 'imperial')?.says).toContain('stand 6 ft 6 1/2 in (2.00 m) apart');
  });
  it('tells of the main seat wherever it stands in the list', () => {
    const chart = plan({}, [
      { name: 'end', xM: 1, yM: 2, main: false },
      { name: 'middle', xM: 0, yM: 3.5, main: true },
    ]);
    expect(chart?.says).toContain('the main seat is 3.50 m');
    expect(of(chart, 'seat')?.map((item) => item.kind === 'seat' && item.main)).toEqual([false, true]);
  });
  it('has a table of places with the angle of each seat', () => {
    expect(plan()?.table.head).toEqual(['what', 'to the right', 'back', 'from the axis of the center']);
    expect(plan()?.table.rows.map((row) => row.map((cell) => cell.replace(/ \(.*\)/, '')))).toEqual([
      ['left', '−1.30 m', '0 cm', '−'],
      ['center', '0 cm', '−20 cm', '−'],
      ['right', '1.30 m', '0 cm', '−'],
      ['middle', '0 cm', '3.00 m', 'straight ahead'],
      ['end', '1.00 m', '3.00 m', '17° right'],
    ]);
  });
  it('without a center has mains and seats, and nothing of an axis', () => {
    const chart = plan({ centerCount: 'none' });
    expect(chart?.items.map(({ kind }) => kind)).toEqual(['loudspeaker', 'loudspeaker', 'seat', 'seat']);
    expect(of(chart, 'loudspeaker')?.map((item) => item.name)).toEqual(['left', 'right']);
    expect(chart?.says).toMatch(/3\.00 m \(9 ft 10 in\) back\.$/);
    expect(chart?.table.rows.map(([name, , , angle]) => [name, angle])).toEqual(
      ['left', 'right', 'middle', 'end'].map((name) => [name, '−']),
    );
  });
  it('has a scale bar in the units of the owner, and says what was assumed', () => {
    expect(plan()?.scaleBar).toEqual({ lengthM: 1, text: '1 m' });
    expect(plan({}, SEATS, 'imperial')?.scaleBar.lengthM).toBeCloseTo(0.914, 3);
    expect(plan()?.notes).toHaveLength(1);
    const { mainsBase: _, ...rest } = FACTS;
    const book = bookOf(rest, SEATS);
    expect(planChart(knownIn(book), book, reportOf())?.notes[1]).toMatch(/2\.60 m/);
  });
  it('is left out where nobody told a place to sit', () => {
    expect(plan({}, [])).toBeUndefined();
    expect(plan({ seatDistance: 3 }, [])?.id).toBe('room-above');
    expect(planChart(answering(), bookOf(FACTS, SEATS), reportOf())).toBeUndefined();
  });
});
