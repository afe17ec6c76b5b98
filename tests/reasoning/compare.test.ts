/** Two audits of one system side by side: nothing invented, nothing left out. */
import { describe, expect, it } from 'vitest';
import { type FactBook, withAnswer } from '../../src/facts/book.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { compare } from '../../src/reasoning/compare.js';
import { bookOf } from '../support/causeClaims.js';
import { auditOf, small } from './smallCauses.js';

const ROW = [
  { xM: 0, yM: 3, main: true },
  { xM: 1, yM: 3, main: false },
] as const;
const before: FactBook = {
  ...bookOf({ mainsBase: 3, seatDistance: 3, testTape: 'off', playedContent: 'two-channel-music' }, ROW),
  complaints: ['hollow', 'no-middle'],
};
const after: FactBook = {
  ...withAnswer(before, 'testTape', { value: 'agrees', how: 'measured' }),
  complaints: ['no-middle', 'voice-too-quiet'],
  seats: [
    { ...ROW[0], name: 'seat 1', row: 1 },
    { ...ROW[1], name: 'by the door', row: 1 },
  ],
};
const [was, is] = [auditSync(before), auditSync(after)];
/** Made within each test: mutants are awake only there. */
const side = () => compare(was, is);

describe('two audits side by side', () => {
  it('name the answer that changed and who leads', () => {
    expect(side().changedFacts).toEqual(['testTape']);
    expect(side().leaders).toEqual({ before: was.ranking.leader, after: is.ranking.leader });
  });
  it('tell complaints that went, stayed and came', () => {
    expect(side().complaints).toEqual({
      gone: ['hollow'],
      stayed: ['no-middle'],
      appeared: ['voice-too-quiet'],
    });
  });
  it('show every cause that moved, by how much, the largest movement first', () => {
    for (const { cause, before, after, changeDb } of side().causes) {
      const [then, now] = [was, is].map((a) => a.ranking.causes.find((r) => r.cause === cause));
      expect(before).toEqual({
        probability: then?.probability,
        decibans: then?.decibans,
        verdict: then?.verdict,
      });
      expect(after).toEqual({
        probability: now?.probability,
        decibans: now?.decibans,
        verdict: now?.verdict,
      });
      expect(changeDb).toBeCloseTo((now?.decibans ?? 0) - (then?.decibans ?? 0), 12);
    }
    const sizes = side().causes.map(({ changeDb }) => Math.abs(changeDb));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    const moved = is.ranking.causes.filter(({ cause, decibans }) => {
      const then = was.ranking.causes.find((r) => r.cause === cause);
      return Math.abs(decibans - (then?.decibans ?? 0)) >= 0.05;
    });
    expect(side().causes.map(({ cause }) => cause)).toEqual(
      expect.arrayContaining(moved.map(({ cause }) => cause)),
    );
    expect(side().causes.some(({ cause }) => cause === 'delay')).toBe(true);
  });
  it('leave out a cause that only one of them knows', () => {
    const [a, b] = [small('delay', { priorDb: 3 }), small('level')];
    const [one, both] = [auditOf([a], { testTape: 'off' }), auditOf([a, b], { testTape: 'agrees' })];
    expect(compare(one, both).causes.map((c) => c.cause)).toEqual(['delay']);
    expect(compare(both, one).causes.map((c) => c.cause)).toEqual(['delay']);
  });
  it('pair seats by name; a seat of one audit only has one side', () => {
    const sides = side().seats.map(({ name, ...rest }) => [name, Object.keys(rest)]);
    expect(sides).toEqual([
      ['seat 1', ['before', 'after']],
      ['seat 2', ['before']],
      ['by the door', ['after']],
    ]);
    expect(side().seats[0]?.before?.seat.name).toBe('seat 1');
  });
});
