/** Evidence in words: order, numbers with their units, and what is said where nothing is known or a rule failed. */
import { describe, expect, it } from 'vitest';
import { fillingOf, rangeBar, reportEvidence } from '../../src/explain/report-evidence.js';
import { factSpec } from '../../src/facts/catalog.js';
import type { Rule } from '../../src/rules/cause.js';
import { all, atLeast, type Condition, is } from '../../src/rules/condition.js';
import { DERIVED } from '../../src/rules/derived/table.js';
import { LIMITS } from '../../src/rules/limits.js';
import { SOURCES } from '../../src/rules/sources.js';
import { auditOf, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';
import type { TestFacts } from '../support/causeClaims.js';

const said = (id: string): Partial<Rule> => ({
  says: { yes: `${id} holds`, no: `${id} does not hold` },
});
const rule = (id: string, when: Condition, changes = {}): Rule => ({
  ...ruleOn(id, when, changes),
  ...said(id),
});
const deviation = (
  of: 'mainsBaseDeg' | 'widthLossPct' | 'entryRatio',
  limit: keyof typeof LIMITS,
  changes = {},
): Rule => ({
  ...rule(of, atLeast(of as 'mainsBaseDeg', limit as 'baseWideDeg')),
  weigh: { kind: 'deviation', of, limit: `limit.${limit}.clear`, lowIsBad: false, ...changes },
});
const evidenceOf = (rules: readonly Rule[], facts: TestFacts = {}, temperature = 1) => {
  const cause = small('delay', { rules: rules as never });
  const audit = auditOf([cause], facts);
  return reportEvidence(cause, audit.byCause.get('delay') ?? [], audit.view, 'metric', temperature);
};
const taped = { mainsBase: 6, seatDistance: 3, mainSeatOffset: 0 };

describe('evidence in words', () => {
  it('comes most telling first, whichever way it points, and what is open or failed last', () => {
    const broken = { fact: 'nothing-of-the-kind', operator: 'equal', value: 'x' } as never;
    const found = evidenceOf(
      [
        rule('open', is('testTilt', 'same')),
        rule('failed', broken),
        rule('weak', whenTest('off'), { tp: 0.5 }),
        rule('against', is('testLift', 'improves'), { tp: 0.95 }),
        rule('strong', is('testPhantom', 'gone')),
        rule('silent', is('testUpmixOff', 'gone'), { only: 'for' }),
        rule('apart', whenTest('off'), { applies: is('centerCount', 'two') }),
      ],
      { testTape: 'off', testLift: 'same', testPhantom: 'gone', testUpmixOff: 'same', centerCount: 'one' },
    );
    expect(found.map((item) => [item.rule, item.speaks])).toEqual([
      ['against', 'against'],
      ['strong', 'for'],
      ['weak', 'for'],
      ['silent', 'neither'],
      ['open', 'neither'],
      ['failed', 'neither'],
    ]);
    expect(found.map((item) => item.text).slice(0, 5)).toEqual([
      'Against does not hold.',
      'Strong holds.',
      'Weak holds.',
      'Silent does not hold.',
      'Not known yet: tilt the center to the ears.',
    ]);
    expect(found[5]?.text).toMatch(/^This check failed \(.+\) and was left out\.$/);
    expect(found.map((item) => item.weightText).slice(3)).toEqual([
      'says nothing',
      'not known yet',
      'says nothing',
    ]);
    expect(found.find((item) => item.rule === 'open')?.open).toEqual(['testTilt']);
  });
  it('weighs after the temperature', () => {
    const [one] = evidenceOf([rule('a', whenTest('off'))], { testTape: 'off' });
    const [half] = evidenceOf([rule('a', whenTest('off'))], { testTape: 'off' }, 2);
    expect(half?.decibans).toBeCloseTo((one?.decibans ?? 0) / 2, 12);
  });
  it('of a computed value has number, limit and ratio with units, its name, and its place among the grades', () => {
    // Six meters seen from three: 90 degrees.
    const [item] = evidenceOf([deviation('mainsBaseDeg', 'baseWideDeg')], taped);
    const { clear } = LIMITS.baseWideDeg;
    expect(item).toMatchObject({
      valueText: '90°',
      thresholdText: `${clear}°`,
      valueLabel: DERIVED.mainsBaseDeg.label,
      threshold: clear,
      unit: 'deg',
      assumed: false,
      assumedLabels: [],
    });
    expect(item?.value).toBeCloseTo(90, 9);
    expect(item?.ratio).toBeCloseTo(90 / clear, 9);
    expect(item?.range).toMatchObject({
      limit: 'baseWideDeg',
      grade: 'poor',
      valueText: '90°',
      clearText: `${clear}°`,
    });
  });
  it('names what was assumed for it', () => {
    const [item] = evidenceOf([deviation('mainsBaseDeg', 'baseWideDeg')], { mainsBase: 6 });
    expect(item?.assumed).toBe(true);
    expect(item?.assumedLabels).toEqual([factSpec('seatDistance').label, factSpec('mainSeatOffset').label]);
  });
  it('of an answer has no number', () => {
    const [item] = evidenceOf([rule('a', whenTest('off'))], { testTape: 'off' });
    expect(item).toMatchObject({
      value: null,
      valueText: null,
      valueLabel: null,
      threshold: null,
      thresholdText: null,
      ratio: null,
      unit: null,
      range: null,
    });
    expect(item).toMatchObject({
      because: 'why',
      group: 'g',
      source: SOURCES[item?.sourceId as keyof typeof SOURCES].cite,
    });
  });
  it('tells a percentage without decimals', () => {
    const facts: TestFacts = {
      playedContent: 'two-channel-music',
      sourceFormat: 'two-channel',
      upmixUse: 'on',
      upmixCenterControl: 'none',
      upmixCommonPart: 'takes-out',
    };
    const [item] = evidenceOf([deviation('widthLossPct', 'widthLossPct')], facts);
    expect(item?.valueText).toMatch(/^\d+%$/);
    expect(item?.thresholdText).toMatch(/^\d+%$/);
  });
  it('falls back on its reason where what it would say is not known', () => {
    const gappy = {
      ...ruleOn('a', whenTest('off')),
      says: { yes: 'a dip of {layoutDipDb}', no: 'n' },
    };
    expect(evidenceOf([gappy], { testTape: 'off' })[0]?.text).toBe('Why.');
  });
});

describe('the limit that a text names', () => {
  const leafOf = (of: 'mainsBaseDeg', limit: 'baseWideDeg') => atLeast(of, limit);
  const filling = (when: Condition, facts: TestFacts = taped, change: Partial<Rule> = {}) => {
    const one = { ...rule('a', when), ...change } as Rule;
    const cause = small('delay', { rules: [one] });
    const [item] = auditOf([cause], facts).byCause.get('delay') ?? [];
    return item ? fillingOf(one, item) : undefined;
  };
  it('is the threshold of a deviation', () => {
    const { clear } = LIMITS.baseWideDeg;
    expect(
      filling(leafOf('mainsBaseDeg', 'baseWideDeg'), taped, {
        weigh: deviation('mainsBaseDeg', 'baseWideDeg').weigh,
      }),
    ).toEqual({
      limit: { value: clear, unit: 'deg' },
    });
  });
  it('is that threshold also where its condition compares with nothing, or with another limit', () => {
    const { weigh } = deviation('mainsBaseDeg', 'baseWideDeg');
    const facts: TestFacts = { ...taped, testTape: 'off' };
    const limit = { limit: { value: LIMITS.baseWideDeg.clear, unit: 'deg' } };
    expect(filling(whenTest('off'), facts, { weigh })).toEqual(limit);
    const narrow: Condition = {
      fact: 'mainsBaseDeg',
      operator: 'greaterThan',
      value: { fact: 'limit.baseNarrowDeg.clear' },
    };
    expect(filling(narrow, facts, { weigh })).toEqual(limit);
  });
  it('is the first limit of the table in a condition about answers', () => {
    const { clear } = LIMITS.baseWideDeg;
    const both = all(whenTest('off'), leafOf('mainsBaseDeg', 'baseWideDeg'));
    expect(filling(both, { ...taped, testTape: 'off' })).toEqual({ limit: { value: clear, unit: 'deg' } });
  });
  it('is none where a condition compares with no limit', () => {
    expect(filling(whenTest('off'), { testTape: 'off' })).toEqual({});
    const other: Condition = {
      fact: 'centerBassCrossover',
      operator: 'lessThan',
      value: { fact: 'mainsBassCrossover' },
    };
    expect(filling(other, { centerBassCrossover: 80, mainsBassCrossover: 100 })).toEqual({});
  });
});

describe('a range bar', () => {
  const text = (value: number): string => `${value}!`;
  it('has the grades of its limit in words, and is near from just noticed up to severe', () => {
    const { noticeable, clear, severe, label } = LIMITS.dipDb;
    expect(rangeBar('dipDb', noticeable, text)).toMatchObject({
      label,
      unit: 'dB',
      lowIsBad: false,
      grade: 'borderline',
      near: true,
      noticeableText: `${noticeable}!`,
      clearText: `${clear}!`,
    });
    expect(rangeBar('dipDb', clear, text).grade).toBe('poor');
    expect(rangeBar('dipDb', severe, text).near).toBe(false);
    expect(rangeBar('dipDb', noticeable - 0.01, text)).toMatchObject({ grade: 'good', near: false });
  });
  it('turns round where small values are bad', () => {
    const { noticeable, clear, severe } = LIMITS.baseNarrowDeg;
    const grades = [noticeable + 0.01, noticeable, clear, severe].map((value) =>
      rangeBar('baseNarrowDeg', value, text),
    );
    expect(grades.map(({ grade, near }) => [grade, near])).toEqual([
      ['good', false],
      ['borderline', true],
      ['poor', true],
      ['poor', false],
    ]);
  });
});
