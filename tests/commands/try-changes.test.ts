/** What `try` understands: facts as they are typed at a prompt, unknown again, and the places of seats. */
import { describe, expect, it } from 'vitest';
import { withChanges } from '../../src/commands/try-changes.js';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { seatsOf } from '../../src/facts/seats.js';
import { UserError } from '../../src/lib/user-error.js';

const book: FactBook = withAnswer(
  withAnswer({ ...EMPTY_BOOK, units: 'imperial' }, 'seatDistance', { value: 3, how: 'guessed' }),
  'seatCount',
  { value: 3, how: 'read' },
);
const changed = (...words: string[]) => withChanges(book, words);

describe('facts', () => {
  it('take values as people write them, in the units of the case, and say what was taken', () => {
    expect(changed('seatDistance=9\' 6"').book.answers.get('seatDistance')).toEqual({
      value: expect.closeTo(2.8956, 9),
      how: 'guessed',
    });
    const bare = changed('seatDistance=9');
    expect(bare.book.answers.get('seatDistance')).toMatchObject({ value: expect.closeTo(2.7432, 9) });
    expect(bare.echoes[0]).toMatch(/seatDistance: a number without a unit is taken as ft: 9 ft/);
  });

  it('several change at once, and the first book stays as it was', () => {
    const { book: after } = changed('centerLayout=coaxial', 'seatDistance=?');
    expect(after.answers.get('centerLayout')).toMatchObject({ value: 'coaxial' });
    expect(after.answers.has('seatDistance')).toBe(false);
    expect(book.answers.has('seatDistance')).toBe(true);
    expect(book.answers.has('centerLayout')).toBe(false);
  });

  it('a value may hold an equals sign of its own', () => {
    expect(changed('responseCenter=a=b.txt').book.answers.get('responseCenter')).toMatchObject({
      value: 'a=b.txt',
    });
  });

  it('everything that is wrong is told at once', () => {
    try {
      changed('seatDistance=3 kg', 'nonsense', '=3', 'seatDistanse=3', 'seats.9.xM=1');
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(UserError);
      const { problems } = error as UserError;
      expect(problems).toHaveLength(5);
      expect(problems[0]).toMatchObject({ where: 'seatDistance', what: expect.stringMatching(/mass/) });
      expect(problems[3]?.what).toMatch(/did you mean seatDistance/);
    }
  });
});

describe('seats', () => {
  it('that follow from count and spacing are laid out first, then one of them moves', () => {
    const before = seatsOf(book).seats;
    const { book: after } = changed('seats.2.xM=2.5');
    expect(after.seats.map((seat) => seat.xM)).toEqual([before[0]?.xM, before[1]?.xM, 2.5]);
    expect(after.seats.filter((seat) => seat.main)).toHaveLength(1);
  });

  it('take lengths with units and sides, and forget an ear height', () => {
    const { book: after } = changed('seats.0.xM=3 ft left', 'seats.0.earHeightM=1.2', 'seats.1.yM=320 cm');
    expect(after.seats[0]).toMatchObject({ xM: expect.closeTo(-0.9144, 9), earHeightM: 1.2 });
    expect(after.seats[1]?.yM).toBe(3.2);
    const { book: forgotten } = withChanges(after, ['seats.0.earHeightM=?']);
    expect(forgotten.seats[0]).not.toHaveProperty('earHeightM');
  });

  it.each([
    ['seats.3.xM=1', /there is no seat "3"/],
    ['seats.x.xM=1', /there is no seat "x"/],
    ['seats.1.zM=1', /a seat has no "zM"/],
    ['seats.1.xM.more=1', /a seat has no/],
    ['seats.1.xM=90', /cannot be right for a seat/],
    ['seats.1.xM=3 kg', /mass/],
    ['seats.1.xM=?', /./],
  ])('%s is refused', (word, told) => {
    expect(() => changed(word)).toThrow(told);
  });
});
