/** A listener who has one seat only: what he says is understood so, and no seats are compared with him. */
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, withAnswer } from '../../src/facts/book.js';
import { TEST_IDS } from '../../src/facts/catalog.js';
import { promptOf } from '../../src/interview/screens.js';
import { bookOf } from '../../src/interview/state.js';
import { canBeAsked } from '../../src/reasoning/hypotheses.js';
import { answer, asking, inHand, type } from './talk.js';

const LONE = withAnswer(EMPTY_BOOK, 'seating', { value: 'single-seat', how: 'seen' });

describe('a lone listener', () => {
  it.each(['I have only the one chair', "I'm the only listener"])(
    'says %j to the seats, and is heard',
    (typed) => {
      const put = type(asking('troubleSeats'), typed);
      expect(promptOf(put).choices).toContain('seating: one seat only, as told');
      const kept = type(put, '');
      expect(answer(kept, 'seating')).toBe('single-seat');
      expect(bookOf(kept).answers.has('troubleSeats')).toBe(false);
      expect(inHand(kept)).not.toBe('troubleSeats');
    },
  );
  it('is not meant by the one seat of several that has the trouble', () => {
    expect(answer(type(asking('troubleSeats'), 'just my seat, the others are fine'), 'troubleSeats')).toBe(
      'one-seat',
    );
  });
  it('is asked nothing, and set to no test, that compares seats', () => {
    for (const id of [
      'troubleSeats',
      'seatCount',
      'seatSpacing',
      'testSwapSeats',
      'testSitMiddle',
    ] as const) {
      expect(canBeAsked(EMPTY_BOOK, id)).toBe(true);
      expect(canBeAsked(LONE, id)).toBe(false);
    }
    expect(TEST_IDS.some((id) => canBeAsked(LONE, id))).toBe(true);
  });
});
