/** Costs of troubleshooting on two or three made-up causes, worked out by hand. */
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import {
  cheapestTest,
  confirmed,
  confirmMinutes,
  faultProbabilities,
  minutesToFind,
} from '../../src/reasoning/suspects.js';
import { confirmedBy } from '../../src/rules/cause.js';
import { is } from '../../src/rules/condition.js';
import { bookOf } from '../support/causeClaims.js';
import { auditOf, mend, small } from './smallCauses.js';

describe('one fault among several', () => {
  it('two even causes leave a quarter for neither and share the rest', () => {
    const [a, b, none] = faultProbabilities(auditOf([small('delay'), small('level')]));
    expect([a, b, none]).toEqual([0.375, 0.375, 0.25]);
  });
  it('is shared by their odds, in the order of the causes', () => {
    // One in eleven, ten in eleven: neither 10/121, the first alone 1/121, the second alone 100/121.
    const p = faultProbabilities(
      auditOf([small('delay', { priorDb: -10 }), small('level', { priorDb: 10 })]),
    );
    const none = (10 / 11) * (1 / 11);
    expect(p).toEqual([
      expect.closeTo((1 - none) / 101, 12),
      expect.closeTo((100 * (1 - none)) / 101, 12),
      expect.closeTo(none, 12),
    ]);
  });
  it('is the likely one, however many are no more probable than ever', () => {
    // One at four to one among eight at one in ten: by their odds 4 against 8/9, by their chances as much as half.
    const many = (
      ['aim', 'timbre', 'height', 'set-back', 'routing', 'programme', 'driver-fault', 'listener'] as const
    ).map((id) => small(id, { priorDb: 10 * Math.log10(1 / 9) }));
    const p = faultProbabilities(auditOf([small('delay', { priorDb: 10 * Math.log10(4) }), ...many]));
    const none = 0.2 * 0.9 ** 8;
    expect(p[0]).toBeCloseTo(((1 - none) * 4) / (4 + 8 / 9), 12);
    expect(p.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });
  it('is not one that cannot exist here, however common; where none can it is none of them', () => {
    const gated = small('twin-centers', { priorDb: 20, applies: is('centerCount', 'two') });
    expect(faultProbabilities(auditOf([small('delay'), gated], { centerCount: 'one' }))).toEqual([
      0.5, 0, 0.5,
    ]);
    expect(faultProbabilities(auditOf([gated], { centerCount: 'one' }))).toEqual([0, 1]);
  });
});

describe('a test that confirms a cause', () => {
  const confirm = [
    confirmedBy('testTape', 'off', 'wrong-unit'), // 5 minutes
    confirmedBy('testUpmixOff', 'gone'), // 2 minutes
    confirmedBy('testLift', 'improves'), // 6 minutes
  ] as const;
  it('came out for it, against it, or is not done', () => {
    const outcome = (testTape?: 'off' | 'agrees') =>
      confirmed(bookOf(testTape ? { testTape } : {}), confirm[0]);
    expect([outcome('off'), outcome('agrees'), outcome()]).toEqual([true, false, undefined]);
  });
  it('is the quickest that is still to be done', () => {
    const cause = small('delay', { confirm });
    const { testTape, testUpmixOff, testLift } = {
      testTape: 'off',
      testUpmixOff: 'gone',
      testLift: 'same',
    } as const;
    expect(cheapestTest(EMPTY_BOOK, cause)?.test).toBe('testUpmixOff');
    expect(cheapestTest(bookOf({ testUpmixOff }), cause)?.test).toBe('testTape');
    expect(cheapestTest(bookOf({ testTape, testUpmixOff, testLift }), cause)).toBeUndefined();
  });
  it('costs getting up, itself, and one time in five a remedy in vain; with none left the remedy is the trial', () => {
    const cause = small('delay', { confirm: [confirm[0]], remedies: [mend('x', { minutes: 10 })] });
    expect(confirmMinutes(EMPTY_BOOK, cause)).toBe(5 + 5 + 0.2 * 10);
    expect(confirmMinutes(bookOf({ testTape: 'off' }), cause)).toBe(5 + 10);
  });
});

describe('minutes to find the fault', () => {
  it('are those of the search, an hour where it is none, and five hours as often as two draws differ', () => {
    // First 0.6 in 10 minutes, then 0.3 in 20; one in ten is left over.
    const wrong = 1 - 0.36 - 0.09 - 0.01;
    expect(minutesToFind([0.6, 0.3, 0.1], [10, 20])).toBeCloseTo(10 + 0.4 * 20 + 0.1 * 60 + 300 * wrong, 9);
    expect(minutesToFind([0.3, 0.6, 0.1], [20, 10])).toBeCloseTo(10 + 0.4 * 20 + 0.1 * 60 + 300 * wrong, 9);
  });
  it('leave out what nobody would go after', () => {
    const wrong = (rare: number): number => 1 - 0.36 - rare ** 2 - (0.4 - rare) ** 2;
    expect(minutesToFind([0.6, 0.00009, 0.39991], [10, 20])).toBeCloseTo(
      10 + 0.4 * 60 + 300 * wrong(0.00009),
      9,
    );
    expect(minutesToFind([0.6, 0.0001, 0.3999], [10, 20])).toBeCloseTo(
      10 + 0.4 * 20 + 0.3999 * 60 + 300 * wrong(0.0001),
      9,
    );
  });
  it('are an hour where no cause is left: that verdict is not wrong', () => {
    expect(minutesToFind([0, 1], [10])).toBe(60);
  });
});
