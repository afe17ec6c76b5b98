/** The room from the side as data: heights, the bounce off the floor, one seat of each row behind. */
import { describe, expect, it } from 'vitest';
import { knownIn } from '../../../src/explain/plots/known.js';
import { sideChart } from '../../../src/explain/plots/room.js';
import { bookOf, type TestSeat } from '../../support/causeClaims.js';
import { answering, reportOf } from './small.js';
import { drawer, FACTS, linesOf, of, SEATS } from './smallRoom.js';

const side = drawer(sideChart);

describe('the room from the side', () => {
  it('counts back from the front of the center: mains, floor, the main seat with its line of sight', () => {
    const chart = side();
    expect(of(chart, 'loudspeaker')).toEqual([
      { kind: 'loudspeaker', at: [0.2, 1], name: 'mains', center: false },
      { kind: 'loudspeaker', at: [0, 0.5], name: 'center', center: true },
    ]);
    expect(of(chart, 'seat')).toEqual([{ kind: 'seat', at: [3.2, 1], name: 'main seat', main: true }]);
    expect(linesOf(chart, 'sight')).toEqual([
      [
        [0, 0.5],
        [3.2, 1],
      ],
    ]);
    expect(linesOf(chart, 'floor')).toEqual([
      [
        [-0.3, 0],
        [expect.closeTo(3.6, 9), 0],
      ],
    ]);
  });
  it('bounces the sound off the floor where both angles are the same', () => {
    // The center is half as high as the ears: a third of the way.
    expect(linesOf(side(), 'bounce')).toEqual([
      [
        [0, 0.5],
        [expect.closeTo(3.2 / 3, 9), 0],
        [3.2, 1],
      ],
    ]);
    const low = side({ centerTweeterHeight: 0, earHeight: 0.0 });
    expect(linesOf(low, 'bounce')).toEqual([]);
    expect(low?.items).toHaveLength(5);
    expect(low?.table.rows).toHaveLength(3);
    expect(low?.table.rows.map(([what]) => what)).not.toContain('spot on the floor, from the center');
  });
  it('has of each other row the seat nearest to the middle', () => {
    const chart = side({}, [
      ...SEATS,
      { name: 'a', xM: -1, yM: 4, row: 2, earHeightM: 1.2 },
      { name: 'b', xM: 0.2, yM: 4.1, row: 2, earHeightM: 1.3 },
      { name: 'c', xM: 0.4, yM: 4.2, row: 2, earHeightM: 1.4 },
    ]);
    expect(of(chart, 'seat')?.slice(1)).toEqual([
      { kind: 'seat', at: [expect.closeTo(4.3, 9), 1.3], name: 'row 2', main: false },
    ]);
    expect(linesOf(chart, 'sight')?.[1]).toEqual([
      [0, 0.5],
      [expect.closeTo(4.3, 9), 1.3],
    ]);
    expect(linesOf(chart, 'floor')?.[0]?.[1]?.[0]).toBeCloseTo(4.2 + 0.2 + 0.4, 9);
    expect(chart?.table.rows[3]).toEqual(['ears, row 2', '1.30 m (4 ft 3 in)']);
  });
  it('has nobody else of the main row, nor a second seat at the place of the main one', () => {
    const beside: TestSeat = { name: 'beside', xM: -0.5, yM: 2.9 };
    const main: TestSeat = { name: 'main', xM: 0.6, yM: 3, main: true };
    const level: TestSeat = { name: 'level', xM: 0, yM: 3, row: 2 };
    const chart = side({}, [main, beside, level]);
    expect(of(chart, 'seat')).toHaveLength(1);
    expect(linesOf(chart, 'sight')).toHaveLength(1);
  });
  it('has the picture and what is in the way only where height and size or place are told', () => {
    const told = { displayMiddleHeight: 1.1, displayDiagonal: 1.5 };
    expect(of(side(told), 'picture')).toEqual([
      {
        kind: 'picture',
        from: [-0.05, expect.closeTo(0.732, 3)],
        to: [-0.05, expect.closeTo(1.468, 3)],
        name: 'picture',
      },
    ]);
    expect(side()?.items.map(({ kind }) => kind)).toEqual([
      ...['line', 'line', 'line', 'loudspeaker', 'loudspeaker', 'seat'],
    ]);
    const way = { obstacleHeight: 0.45, obstacleDistance: 1.5 };
    expect(of(side(way), 'obstacle')).toEqual([
      { kind: 'obstacle', from: [1.5, 0], to: [1.5, 0.45], name: 'in the way' },
    ]);
    for (const part of [
      { displayMiddleHeight: 1.1 },
      { displayDiagonal: 1.4 },
      { obstacleHeight: 0.45 },
      { obstacleDistance: 1 },
    ])
      expect(side(part)?.items).toEqual(side()?.items);
    const what = side({ ...told, ...way })?.table.rows.map(([name]) => name);
    expect(what?.slice(3, 5)).toEqual(['middle of the picture', 'what is in the way']);
  });
  it('says how high the center stands against ears and mains, and where the floor makes its first hole', () => {
    expect(side()?.says).toMatch(
      /^The center is 50 cm \(.+\) below the ears and 50 cm \(.+\) below the mains\. Off the floor it comes once more, and the first hole is near \d+ Hz\.$/,
    );
    expect(side({ centerTweeterHeight: 1.3 })?.says).toContain('is 30 cm (1 ft) above the ears');
    expect(side({ centerTweeterHeight: 1.01 })?.says).toContain(
      'is as high as the ears and as high as the mains.',
    );
    expect(side({ centerTweeterHeight: 1.03 })?.says).toContain('is 3 cm');
    for (const centerTweeterHeight of [0, 0.01])
      expect(side({ centerTweeterHeight })?.says, 'no hole that can be heard').not.toContain('floor');
  });
  it('has the heights in a table, and says what was assumed', () => {
    const { earHeight: _, ...rest } = FACTS;
    const book = bookOf(rest, SEATS);
    expect(sideChart(knownIn(book), book, reportOf())?.notes[1]).toContain('ear height 1.05 m');
    expect(side()?.notes).toHaveLength(1);
    expect(side()?.table.rows.slice(0, 3)).toEqual([
      ['center, tweeter', '50 cm (1 ft 7 1/2 in)'],
      ['mains, tweeter', '1.00 m (3 ft 3 1/2 in)'],
      ['ears, main seat', '1.00 m (3 ft 3 1/2 in)'],
    ]);
    expect(side()?.table.rows.at(-1)?.[1]).toMatch(/^1\.07 m/);
  });
  it('is left out without a center, its height or a place to sit', () => {
    const { centerTweeterHeight: _, ...rest } = FACTS;
    const book = bookOf(rest, SEATS);
    expect(sideChart(knownIn(book), book, reportOf())).toBeUndefined();
    expect(side({ centerCount: 'none' })).toBeUndefined();
    expect(side({}, [])).toBeUndefined();
    expect(side({ seatDistance: 3 }, [])?.id).toBe('room-side');
    expect(sideChart(answering(), bookOf(FACTS, SEATS), reportOf())).toBeUndefined();
  });
});
