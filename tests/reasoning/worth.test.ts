/** What a question is worth in minutes, against the same sum made by hand from the chances of its rules. */
import { describe, expect, it } from 'vitest';
import type { FactId } from '../../src/facts/catalog.js';
import { faultProbabilities, minutesToFind } from '../../src/reasoning/suspects.js';
import { candidatesOf } from '../../src/reasoning/worth.js';
import { all, atLeast, is } from '../../src/rules/condition.js';
import { absentDb, ERROR_RATE, givenDb } from '../../src/rules/weight.js';
import { auditOf, mend, ruleOn, small } from './smallCauses.js';

const heard = (p: number, how: 'measured' | 'read' | 'recalled'): number =>
  p * (1 - ERROR_RATE[how]) + (1 - p) * ERROR_RATE[how];
const UPMIX = is('upmixUse', 'on');
/** Remedies are trials here, as no test is given: they take 15 minutes with the getting up, or longer. */
const [CONFIRM, LONG] = [15, 125];

describe('a question', () => {
  // An even chance that it is this cause, and a quarter for neither of the two.
  const asked = (tp: number, fp: number) =>
    auditOf([
      small('delay', { rules: [ruleOn('one', UPMIX, { tp, fp })] }),
      small('level', {
        rules: [ruleOn('lift', is('testLift', 'improves'))],
        remedies: [mend('long', { minutes: LONG - 5 })],
      }),
    ]);
  /** Nine in ten can tell; minutes to the fault now, less those after each answer. */
  const savedBy = (tp: number, fp: number): number => {
    const [t, f] = [heard(tp, 'read'), heard(fp, 'read')];
    const p = [0.375, 0.375, 0.25];
    const minutes = (q: readonly number[]): number => minutesToFind(q, [CONFIRM, LONG]);
    const costAfter = (yes: number, no: number): number => {
      const joint = [0.375 * yes, 0.375 * no, 0.25 * no];
      const chance = joint.reduce((a, b) => a + b, 0);
      return chance * minutes(joint.map((q) => q / chance));
    };
    return 0.9 * (minutes(p) - costAfter(t, f) - costAfter(1 - t, 1 - f));
  };
  it('saves what its answers spare on average, less patience, its minute, and who cannot tell', () => {
    const [found, ...others] = candidatesOf(asked(0.9, 0.05), ['upmixUse']);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ fact: 'upmixUse', kind: 'question', minutes: 1, together: [] });
    expect(found?.savesMinutes).toBeCloseTo(savedBy(0.9, 0.05), 9);
    expect(found?.netMinutes).toBeCloseTo(savedBy(0.9, 0.05) - 1 - 2, 9);
    expect(savedBy(0.9, 0.05)).toBeGreaterThan(20);
  });
  it('names the causes that it moves, by how much up and down', () => {
    const [found] = candidatesOf(asked(0.9, 0.05), ['upmixUse']);
    expect(found?.moves).toEqual([
      {
        cause: 'delay',
        upDb: expect.closeTo(givenDb(0.9, 0.05, 'read'), 12),
        downDb: expect.closeTo(absentDb(0.9, 0.05, 'read'), 12),
      },
    ]);
  });
  it('is none where it moves nothing, or too little to name', () => {
    expect(candidatesOf(asked(0.9, 0.05), ['centerTrim', 'obstacle'])).toEqual([]);
    expect(candidatesOf(asked(0.51, 0.5), ['upmixUse'])).toEqual([]);
  });
  it('names the cause that it moves most first', () => {
    const rules = (tp: number, fp: number) => [ruleOn('one', UPMIX, { tp, fp })] as const;
    const audit = auditOf([
      small('delay', { rules: rules(0.6, 0.3) }),
      small('level', { rules: rules(0.9, 0.05) }),
      small('aim', { rules: rules(0.2, 0.9) }),
    ]);
    expect(candidatesOf(audit, ['upmixUse'])[0]?.moves.map((m) => m.cause)).toEqual([
      'level',
      'aim',
      'delay',
    ]);
  });
  it('is left out where even to know for certain could not pay', () => {
    // One in a thousand, and everything else is open: nothing to gain but three tenths of a minute.
    const rare = auditOf([
      small('delay', { priorDb: -30, rules: [ruleOn('one', UPMIX)] }),
      small('level', { priorDb: 9, rules: [ruleOn('lift', is('testLift', 'improves'))] }),
    ]);
    expect(candidatesOf(rare, ['upmixUse'])).toEqual([]);
  });
});

describe('a home test', () => {
  it('costs getting up as well, but no patience, and is listed even where it does not pay', () => {
    const audit = auditOf([small('delay'), small('level', { rules: [ruleOn('lift', UPMIX)] })]);
    const [found] = candidatesOf(audit, ['testTape']);
    expect(found).toMatchObject({ kind: 'test', minutes: 5 + 5 });
    expect(found?.netMinutes).toBeCloseTo((found?.savesMinutes ?? 0) - 10, 12);
    const rare = auditOf([
      small('delay', { priorDb: -30 }),
      small('level', { priorDb: 9, rules: [ruleOn('lift', UPMIX)] }),
    ]);
    const [idle] = candidatesOf(rare, ['testTape']);
    expect(idle?.savesMinutes).toBeGreaterThanOrEqual(0);
    expect(idle?.netMinutes).toBeLessThan(0);
  });
  it('comes by the minutes it saves in the end, best first', () => {
    const audit = auditOf([
      small('delay'),
      small('level', { rules: [ruleOn('lift', UPMIX, { tp: 0.95, fp: 0.05 })] }),
    ]);
    const order = (facts: readonly FactId[]) => candidatesOf(audit, facts).map((c) => c.fact);
    expect(order(['testTape', 'upmixUse'])).toEqual(['upmixUse', 'testTape']);
    expect(order(['upmixUse', 'testTape'])).toEqual(['upmixUse', 'testTape']);
  });
});

describe('questions that tell something only together', () => {
  const PAIR = all(is('upmixUse', 'on'), is('voiceBoost', 'on')); // 1 and 2 minutes
  const FACTS = ['upmixUse', 'voiceBoost'] as const;
  const other = (minutes: number) =>
    small('level', {
      rules: [ruleOn('lift', is('testLift', 'improves'))],
      remedies: [mend('long', { minutes: minutes - 5 })],
    });
  const bundle = (only?: 'for') =>
    auditOf([
      small('delay', { rules: [ruleOn('both', PAIR, { tp: 0.9, fp: 0.05, ...(only ? { only } : {}) })] }),
      other(LONG),
    ]);
  it('share the gain of the rule that waits for them by minutes', () => {
    // Only the yes of the rule speaks: a single "off" says nothing, both "on" says all.
    const found = candidatesOf(bundle('for'), FACTS);
    const saved = (fact: FactId) => found.find((c) => c.fact === fact)?.savesMinutes ?? Number.NaN;
    expect(saved('voiceBoost') / saved('upmixUse')).toBeCloseTo((2 + 2) / (1 + 2), 9);
    expect(saved('voiceBoost') + saved('upmixUse')).toBeGreaterThan(7);
    for (const { fact, savesMinutes, netMinutes, together, moves } of found) {
      expect(netMinutes).toBeCloseTo(savesMinutes - (fact === 'upmixUse' ? 3 : 4), 9);
      expect(together).toEqual(FACTS.filter((id) => id !== fact));
      expect(moves.map((m) => m.cause)).toEqual(['delay']);
      expect(moves[0]?.upDb).toBeCloseTo(givenDb(0.9, 0.05, 'read'), 9);
    }
  });
  it('gain what settling a deviation would: twice the limit or half of it, if all of them can be told', () => {
    // The gap of two crossovers waits for size and crossover of the center; the second can be asked later.
    const gap = {
      ...ruleOn('gap', atLeast('crossoverGapHz', 'crossoverGapHz')),
      weigh: {
        kind: 'deviation',
        of: 'crossoverGapHz',
        limit: 'limit.crossoverGapHz.clear',
        lowIsBad: false,
      },
    } as const;
    const audit = auditOf([small('bass-management', { rules: [gap] }), other(LONG)]);
    const odds = 10 ** 0.6;
    const yes = [odds / (1 + odds), 1 / (1 + odds), 1 / (1 + odds)];
    const p = [0.375, 0.375, 0.25];
    const minutes = (q: readonly number[]): number => minutesToFind(q, [CONFIRM, LONG]);
    const costAfter = (row: readonly number[]): number => {
      const joint = p.map((q, i) => q * (row[i] ?? 0));
      const chance = joint.reduce((a, b) => a + b, 0);
      return chance * minutes(joint.map((q) => q / chance));
    };
    const gain = minutes(p) - costAfter(yes) - costAfter(yes.map((q) => 1 - q));
    const [found, ...rest] = candidatesOf(audit, ['centerBassSize', 'centerBassCrossover']);
    expect(rest).toEqual([]);
    expect(found?.fact).toBe('centerBassSize');
    expect(found?.savesMinutes).toBeCloseTo((0.9 ** 2 * gain) / 2, 9);
    expect(found?.together).toEqual(['centerBassCrossover']);
    expect(found?.moves).toEqual([
      { cause: 'bass-management', upDb: expect.closeTo(6, 9), downDb: expect.closeTo(-6, 9) },
    ]);
  });
  it('are valued alone where one of them says more by itself', () => {
    const audit = bundle(undefined);
    const alone = candidatesOf(audit, FACTS).find((c) => c.fact === 'upmixUse');
    expect(alone?.moves[0]?.cause).toBe('delay');
    expect(alone?.savesMinutes).toBeGreaterThan(0);
  });
  it('are worth nothing once one of them cannot be told any more', () => {
    const audit = auditOf(
      [small('delay', { rules: [ruleOn('both', PAIR, { tp: 0.9, fp: 0.05, only: 'for' })] }), small('level')],
      {},
      { answers: new Map([['voiceBoost', { how: 'unknown' }]]) },
    );
    expect(candidatesOf(audit, ['upmixUse'])).toEqual([]);
  });
  it('are not seven: that is too far from telling anything', () => {
    const many = [
      'upmixUse',
      'voiceBoost',
      'dynamicCompression',
      'upmixAmbience',
      'subwoofer',
      'jumpers',
    ] as const;
    const when = (...more: Parameters<typeof all>) =>
      all(
        is('upmixUse', 'on'),
        is('voiceBoost', 'on'),
        is('dynamicCompression', 'on'),
        is('upmixAmbience', 'yes'),
        is('subwoofer', 'one'),
        ...more,
      );
    const of = (condition: ReturnType<typeof when>) =>
      auditOf([
        small('delay', { rules: [ruleOn('all', condition, { tp: 0.99, fp: 0.3, only: 'for' })] }),
        other(400),
      ]);
    expect(candidatesOf(of(when(is('jumpers', 'loose'))), many)).toHaveLength(6);
    expect(candidatesOf(of(when(is('jumpers', 'loose'), is('sourceFormat', 'two-channel'))), many)).toEqual(
      [],
    );
  });
  it('add up over causes, up to all there is to save', () => {
    const rules = [ruleOn('both', PAIR, { tp: 0.9, fp: 0.05, only: 'for' })] as const;
    const audit = auditOf([small('delay', { rules }), small('aim', { rules }), small('level')]);
    const [one] = candidatesOf(audit, FACTS);
    expect(one?.moves.map((m) => m.cause)).toEqual(['delay', 'aim']);
    const p = faultProbabilities(audit);
    expect(one?.savesMinutes).toBeLessThanOrEqual(minutesToFind(p, [15, 15, 15]));
    const single = auditOf([small('delay', { rules }), small('aim'), small('level')]);
    expect(one?.savesMinutes).toBeGreaterThan(candidatesOf(single, FACTS)[0]?.savesMinutes ?? 0);
  });
});
