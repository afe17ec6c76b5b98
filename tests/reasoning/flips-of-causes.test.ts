/** What would change the conclusion, for two made-up causes whose decibans are known for every answer. */
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { flips } from '../../src/reasoning/flips.js';
import type { Cause } from '../../src/rules/cause.js';
import { any, atLeast, is } from '../../src/rules/condition.js';
import { absentDb } from '../../src/rules/weight.js';
import { auditOf, ruleOn, small, whenTest } from './smallCauses.js';

const DOWN = absentDb(0.8, 0.2, 'measured');
const LIFT = is('testLift', 'improves');
const rival = (priorDb: number): Cause =>
  small('level', { priorDb, rules: [ruleOn('other', is('testTilt', 'same'))] });
const found = (causes: readonly Cause[], answers: readonly (readonly [FactId, Answer])[]) =>
  flips(auditOf(causes, {}, { answers: new Map(answers) })).map(({ changes, leader, byDb }) => ({
    to: changes.map(({ fact, from, to }) => `${fact}: ${from} -> ${to}`),
    leader,
    byDb,
  }));
const measured = (value: string | number): Answer => ({ value, how: 'measured' });
const off = ['testTape', measured('off')] as const;
const improves = ['testLift', measured('improves')] as const;

describe('one other answer', () => {
  it('turns the conclusion by every choice that does, and by how much', () => {
    const by = expect.closeTo(-2 - DOWN, 9);
    expect(found([small('delay'), rival(-2)], [off])).toEqual([
      { to: ['testTape: off -> agrees'], leader: 'level', byDb: by },
      { to: ['testTape: off -> wrong-unit'], leader: 'level', byDb: by },
    ]);
  });
  it('is as sure as the one that was given', () => {
    const guessed = ['testTape', { value: 'off', how: 'guessed' }] as const;
    const [flip] = found([small('delay', { priorDb: 3 }), rival(1)], [guessed]);
    expect(flip?.byDb).toBeCloseTo(1 - (3 + absentDb(0.8, 0.2, 'guessed')), 9);
  });
  it('comes before two, the strongest first', () => {
    const two = small('delay', {
      rules: [ruleOn('one', whenTest('off')), ruleOn('two', LIFT, { tp: 0.9, fp: 0.1 })],
    });
    const answers = [off, improves];
    const list = found([two, rival(5)], answers);
    expect(list.every((flip) => flip.to.length === 1)).toBe(true);
    expect(list[0]?.to[0]).toContain('testLift');
    expect(list.map((flip) => flip.byDb)).toEqual([...list].map((flip) => flip.byDb).sort((a, b) => b - a));
  });
  it('of a number is one of its typical values', () => {
    const wide = small('mains-layout', { rules: [ruleOn('wide', atLeast('mainsBaseDeg', 'baseWideDeg'))] });
    const base = ['mainsBase', measured(9)] as const;
    const list = found([wide, rival(-1)], [base, ['seatDistance', measured(3)]]);
    expect(list.map((flip) => flip.to[0])).toContain('mainsBase: 9 -> 2.5');
  });
});

describe('two other answers', () => {
  // Two signs for it: without one of them still ahead of a rival 5 dB down, without both behind.
  const both = small('delay', { rules: [ruleOn('one', whenTest('off')), ruleOn('two', LIFT)] });
  it('are named where no single one turns it', () => {
    const list = found([both, rival(-5)], [off, improves]);
    expect(list).toHaveLength(4);
    for (const flip of list) {
      expect(flip.to[0]).toMatch(/^testTape: off -> /);
      expect(flip.to[1]).toMatch(/^testLift: improves -> /);
      expect(flip).toMatchObject({ leader: 'level', byDb: expect.closeTo(-5 - 2 * DOWN, 9) });
    }
  });
  it('are found where only together they say something: either was enough for the sign', () => {
    const either = small('delay', { rules: [ruleOn('either', any(whenTest('off'), LIFT))] });
    // Neither answer alone changes anything, so no sum of single changes would have told.
    const strong = small('delay', {
      priorDb: 2,
      rules: [ruleOn('either', any(whenTest('off'), LIFT), { tp: 0.98, fp: 0.02 })],
    });
    expect(found([either, rival(-2)], [off, improves])).toHaveLength(4);
    expect(found([strong, rival(-8)], [off, improves])).toHaveLength(4);
  });
  it('are never two answers to one question', () => {
    const list = found([both, rival(-5)], [off, improves]);
    for (const flip of list) expect(new Set(flip.to.map((text) => text.split(':')[0])).size).toBe(2);
    expect(found([small('delay', { priorDb: 9 }), rival(-9)], [off])).toEqual([]);
  });
});

describe('nothing turns it', () => {
  it('where the leader is too far ahead, or nobody knew an answer', () => {
    expect(found([small('delay', { priorDb: 20 }), rival(-20)], [off, improves])).toEqual([]);
    expect(found([small('delay'), rival(-2)], [['testTape', { how: 'unknown' }]])).toEqual([]);
    expect(found([small('delay'), rival(-2)], [])).toEqual([]);
  });
});
