/** Numbers of evidence in words, from lines of evidence made by hand. */
import { describe, expect, it } from 'vitest';
import { fillingOf, reportEvidence } from '../../src/explain/report-evidence.js';
import type { ReportEvidence } from '../../src/explain/report-types.js';
import { factSpec } from '../../src/facts/catalog.js';
import type { Deviation, Rule } from '../../src/rules/cause.js';
import { atLeast } from '../../src/rules/condition.js';
import type { Evidence } from '../../src/rules/evidence.js';
import { LIMITS } from '../../src/rules/limits.js';
import { auditOf, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';

const view = auditOf([small('delay')]).view;
const item = (changes: Partial<Evidence> = {}): Evidence => ({
  cause: 'delay',
  rule: 'a',
  outcome: 'yes',
  leaves: [],
  open: [],
  decibans: 3,
  facts: [],
  assumed: [],
  ...changes,
});
const deviation = (of: Deviation['of'], limit: Deviation['limit']): Rule => ({
  ...ruleOn('a', whenTest('off')),
  weigh: { kind: 'deviation', of, limit, lowIsBad: false },
});
const said = (rule: Rule, changes: Partial<Evidence> = {}, units: 'metric' | 'imperial' = 'metric') =>
  reportEvidence(small('delay', { rules: [rule] }), [item(changes)], view, units, 1)[0] as ReportEvidence;
const BASE = deviation('mainsBaseDeg', 'limit.baseWideDeg.clear');
const NONE = { valueLabel: null, valueText: null, thresholdText: null, range: null };

describe('the numbers of evidence', () => {
  it('are none where the value is not known', () => {
    const open = said(BASE, { outcome: 'unknown', decibans: 0, open: ['mainsBase'] });
    expect(open).toMatchObject({ ...NONE, value: null, threshold: null, ratio: null, unit: null });
    expect(open).toMatchObject({
      text: `Not known yet: ${factSpec('mainsBase').label}.`,
      weightText: 'not known yet',
      open: ['mainsBase'],
    });
  });
  it('are none for an answer, whatever came along', () => {
    expect(said(ruleOn('a', whenTest('off')), { value: 3, threshold: 2 })).toMatchObject(NONE);
  });
  it('have a ratio only where that is a number: a program that reads the report knows no infinity', () => {
    const ratioOf = (ratio: number) => said(BASE, { value: 9, threshold: 3, ratio, unit: 'deg' }).ratio;
    expect([3, 0, Number.POSITIVE_INFINITY].map(ratioOf)).toEqual([3, 0, null]);
  });
  it('of an answer that is a number have its name, and its unit in the owner’s system', () => {
    const rule = deviation('seatDistance', 'sightClearanceM');
    const metric = said(rule, { value: 3, threshold: 2, unit: 'm' });
    expect(metric).toMatchObject({
      valueLabel: factSpec('seatDistance').label,
      valueText: '3.00 m (9 ft 10 in)',
      thresholdText: '2.00 m (6 ft 6 1/2 in)',
      range: null,
    });
    expect(said(rule, { value: 3, threshold: 2, unit: 'm' }, 'imperial').valueText).toMatch(/^9 ft 10 in/);
  });
  it('lie among the grades of their limit where that is one of the table', () => {
    const { clear } = LIMITS.baseWideDeg;
    expect(said(BASE, { value: clear, threshold: clear, unit: 'deg' }).range).toMatchObject({
      limit: 'baseWideDeg',
      grade: 'poor',
    });
    expect(said(deviation('mainsBaseDeg', 'mainSeatPullDeg'), { value: 9, threshold: 3 }).range).toBeNull();
  });
  it('speak neither way where they weigh nothing', () => {
    expect([2, 0, -2].map((decibans) => said(BASE, { decibans }).speaks)).toEqual([
      'for',
      'neither',
      'against',
    ]);
  });
});

describe('a rule that failed', () => {
  it('says why, or that there is no reason', () => {
    expect(said(BASE, { outcome: 'error', decibans: 0, error: 'no such fact' }).text).toBe(
      'This check failed (no such fact) and was left out.',
    );
    expect(said(BASE, { outcome: 'error', decibans: 0 }).text).toBe(
      'This check failed (no reason given) and was left out.',
    );
  });
});

describe('the limit that a text names', () => {
  const leaf = atLeast('mainsBaseDeg', 'baseWideDeg');
  const seen = (limit: number | undefined) => ({ leaf, outcome: 'yes', value: 90, limit }) as never;
  const answer = ruleOn('a', leaf);
  it('is that of its condition where the rule weighs an answer', () => {
    expect(fillingOf(answer, { leaves: [seen(70)], threshold: 4 })).toEqual({
      limit: { value: 70, unit: 'deg' },
    });
    expect(fillingOf(answer, { leaves: [seen(undefined)] })).toEqual({});
  });
  it('of a deviation without a threshold is that of its condition too', () => {
    expect(fillingOf(BASE, { leaves: [seen(70)] })).toEqual({ limit: { value: 70, unit: 'deg' } });
  });
  it('has the unit of what is compared', () => {
    const rule = deviation('seatDistance', 'sightClearanceM');
    expect(fillingOf(rule, { leaves: [], threshold: 2 })).toEqual({ limit: { value: 2, unit: 'm' } });
  });
});
