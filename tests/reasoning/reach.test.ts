/** How far open answers can still move a cause, on causes of one or two rules. */
import { describe, expect, it } from 'vitest';
import { isSettled, reachOf } from '../../src/reasoning/reach.js';
import type { Cause, Rule } from '../../src/rules/cause.js';
import { all, atLeast, is } from '../../src/rules/condition.js';
import { absentDb, capDb, givenDb } from '../../src/rules/weight.js';
import type { TestFacts } from '../support/causeClaims.js';
import { auditOf, mend, ruleOn, small, whenTest } from './smallCauses.js';

const reach = (changes: Partial<Cause>, facts: TestFacts = {}, temperature = 1) =>
  reachOf(auditOf([small('delay', changes)], facts, { temperature }), 0);
const near = (leastDb: number, mostDb: number) => ({
  leastDb: expect.closeTo(leastDb, 12),
  mostDb: expect.closeTo(mostDb, 12),
});
const [UP, DOWN] = [givenDb(0.8, 0.2, 'measured'), absentDb(0.8, 0.2, 'measured')];
/** Weight from how far taped and entered distances are apart. */
const byNumber = (changes: Partial<Extract<Rule['weigh'], { kind: 'deviation' }>> = {}): Rule => ({
  ...ruleOn('number', atLeast('delayErrorMs', 'delayMs')),
  weigh: { kind: 'deviation', of: 'delayErrorMs', limit: 'limit.delayMs.clear', lowIsBad: false, ...changes },
});

describe('the reach of a cause', () => {
  it('runs from its one test failed to its one test passed, around the prior', () => {
    expect(reach({ priorDb: -6 })).toEqual(near(-6 + DOWN, -6 + UP));
    expect(reach({}, {}, 2)).toEqual(near(DOWN / 2, UP / 2));
  });
  it('is a point once everything is told, or nobody knows', () => {
    expect(reach({}, { testTape: 'off' })).toEqual(near(UP, UP));
    expect(reach({}, { testTape: 'agrees' })).toEqual(near(DOWN, DOWN));
    const audit = auditOf([small('delay')], {}, { answers: new Map([['testTape', { how: 'unknown' }]]) });
    expect(reachOf(audit, 0)).toEqual(near(0, 0));
  });
  it('is one-sided where a rule can only speak one way', () => {
    expect(reach({ rules: [ruleOn('one', whenTest('off'), { only: 'for' })] })).toEqual(near(0, UP));
    expect(reach({ rules: [ruleOn('one', whenTest('off'), { only: 'against' })] })).toEqual(near(DOWN, 0));
  });
  it('trusts an answer that is read off a little less than a measured one', () => {
    const read = [givenDb(0.8, 0.2, 'read'), absentDb(0.8, 0.2, 'read')] as const;
    expect(reach({ rules: [ruleOn('one', is('upmixUse', 'on'))] })).toEqual(near(read[1], read[0]));
    const both = ruleOn('one', all(whenTest('off'), is('upmixUse', 'on')));
    expect(reach({ rules: [both] })).toEqual(near(read[1], read[0]));
    expect(reach({ rules: [both] }, { upmixUse: 'on' })).toEqual(near(DOWN, UP));
  });
  it('of a computed deviation ends at its bound, and at what such answers can weigh', () => {
    // Distances entered are read off a menu.
    expect(reach({ rules: [byNumber({ maxDb: 6 })] })).toEqual(near(-6, 6));
    expect(reach({ rules: [byNumber()] })).toEqual(near(-capDb('read'), capDb('read')));
    expect(reach({ rules: [byNumber({ only: 'for' })] })).toEqual(near(0, capDb('read')));
  });
  it('counts tests of one kind as a group does, each group for itself', () => {
    const rules = [
      ruleOn('one', whenTest('off')),
      ruleOn('two', is('testLift', 'improves')),
      ruleOn('three', is('testTilt', 'clearer'), { group: 'h' }),
    ] as const;
    expect(reach({ rules, groups: { g: 'same-quantity', h: 'independent' } })).toEqual(
      near(2 * DOWN, 2 * UP),
    );
    expect(reach({ rules, groups: { g: 'independent', h: 'independent' } })).toEqual(near(3 * DOWN, 3 * UP));
  });
  it('rests on what is assumed only until it is told', () => {
    // The angle of the mains is computed from usual lengths while nobody has taped them.
    const rules = [ruleOn('one', atLeast('mainsBaseDeg', 'baseWideDeg'))] as const;
    const open = reach({ rules });
    expect(open).toEqual(near(DOWN, UP));
    const taped = { mainsBase: 2, seatDistance: 3, mainSeatOffset: 0 };
    expect(reach({ rules }, taped)).toEqual(near(DOWN, DOWN));
  });
  it('is that of the cause asked for, not of another', () => {
    const audit = auditOf([small('delay'), small('level', { priorDb: -9 })]);
    expect(reachOf(audit, 1)).toEqual(near(-9 + DOWN, -9 + UP));
  });
  it('asks nothing that makes no sense in this system', () => {
    const rules = [ruleOn('one', is('centerSpread', 'off'))] as const;
    expect(reach({ rules }, { upmixCenterControl: 'none' })).toEqual(near(0, 0));
    expect(reach({ rules }).mostDb).toBeGreaterThan(3);
  });
  it('of a cause that cannot exist here is where it stands', () => {
    const gated = { priorDb: -6, applies: is('centerCount', 'two') };
    expect(reach(gated, { centerCount: 'one' })).toEqual(near(-66, -66));
  });
  it('takes the whole prior at the top and the share of such systems at the bottom while its gate is open', () => {
    const gated = { applies: is('centerCount', 'two'), appliesIn: 0.1 };
    // The gate is read off, the test measured: the weaker footing of the two.
    expect(reach(gated)).toEqual(near(-10 + absentDb(0.8, 0.2, 'read'), givenDb(0.8, 0.2, 'read')));
  });
  it('moves with what the complaints share out now', () => {
    const audit = auditOf([small('delay', { links: { hollow: 0.5 } })], {}, { complaints: ['hollow'] });
    const shared = audit.ranking.causes[0]?.sharedDb ?? 0;
    expect(shared).toBeGreaterThan(1);
    expect(reachOf(audit, 0)).toEqual(near(shared + DOWN, shared + UP));
  });
});

describe('a case is settled', () => {
  const leader = small('delay', { priorDb: 9 });
  /** Another cause at so many decibans, moved by a test that is still open. */
  const rival = (priorDb: number, changes: Partial<Cause> = {}) =>
    small('level', { priorDb, rules: [ruleOn('one', is('testLift', 'improves'))], ...changes });
  const told: TestFacts = { testTape: 'off' };
  it('when no open answer can lift a rival over the leader', () => {
    expect(isSettled(auditOf([leader, rival(9)], told))).toBe(false);
    expect(isSettled(auditOf([leader, rival(9 + UP - UP - 0.01)], told))).toBe(true);
    expect(isSettled(auditOf([rival(9 - 0.01), leader], told))).toBe(true);
  });
  it('not while the leader itself can still fall below one', () => {
    expect(isSettled(auditOf([leader, rival(9 + DOWN - UP - 0.01)]))).toBe(true);
    expect(isSettled(auditOf([leader, rival(9 + DOWN - UP + 0.01)]))).toBe(false);
  });
  it('whoever of two with one remedy leads', () => {
    const same = { remedies: [mend('mend-delay')] as const };
    expect(isSettled(auditOf([leader, rival(9, same)], told))).toBe(true);
  });
});
