/** What a question is worth in minutes, against the same sum made by hand from the chances of its rules. */
import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { knownChance } from '../../src/reasoning/knows.js';
import { PATIENCE_MINUTES, priceMinutes } from '../../src/reasoning/minutes.js';
import { answerChances, baseRates, hypothesesOf } from '../../src/reasoning/predict.js';
import { faultProbabilities, minutesToFind } from '../../src/reasoning/suspects.js';
import { outlook } from '../../src/reasoning/troubleshoot.js';
import { candidatesOf, tellsDb } from '../../src/reasoning/worth.js';
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
  /** Minutes to the fault now, less those after each answer. */
  const savedBy = (tp: number, fp: number): number => {
    const [t, f] = [heard(tp, 'read'), heard(fp, 'read')];
    const p = [0.375, 0.375, 0.25];
    const minutes = (q: readonly number[]): number => minutesToFind(q, [CONFIRM, LONG]);
    const costAfter = (yes: number, no: number): number => {
      const joint = [0.375 * yes, 0.375 * no, 0.25 * no];
      const chance = joint.reduce((a, b) => a + b, 0);
      return chance * minutes(joint.map((q) => q / chance));
    };
    return minutes(p) - costAfter(t, f) - costAfter(1 - t, 1 - f);
  };
  it('saves what its answers spare on average; it pays by the chance of an answer, less patience and its minute', () => {
    const [found, ...others] = candidatesOf(asked(0.9, 0.05), ['upmixUse']);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ fact: 'upmixUse', kind: 'question', minutes: 1, together: [] });
    expect(found?.savesMinutes).toBeCloseTo(savedBy(0.9, 0.05), 9);
    const known = knownChance(EMPTY_BOOK, 'upmixUse');
    const price = known * 1 + (1 - known) * 0.2 + PATIENCE_MINUTES;
    expect(found?.netMinutes).toBeCloseTo(known * savedBy(0.9, 0.05) - price, 9);
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

describe('what a rule tells', () => {
  it('is the mean of its weights over the cause being there or not; nothing at even chances', () => {
    const rule = (tp: number, fp: number) => ruleOn('a', is('testTape', 'off'), { tp, fp });
    // By hand, with the share of misreports of a read answer in both: J = (tp - fp) 10 log10 of the odds ratio / 2.
    const [tp, fp] = [0.9, 0.1].map((p) => heard(p, 'read')) as [number, number];
    const odds = (p: number): number => p / (1 - p);
    expect(tellsDb(rule(0.9, 0.1), ['testTape'])).toBeCloseTo(
      5 * (tp - fp) * Math.log10(odds(tp) / odds(fp)),
      9,
    );
    expect(tellsDb(rule(0.5, 0.5), ['testTape'])).toBe(0);
    expect(tellsDb(rule(0.1, 0.9), ['testTape'])).toBeCloseTo(tellsDb(rule(0.9, 0.1), ['testTape']), 9);
    expect(tellsDb(rule(0.9, 0.1), ['voiceLoudness'])).toBeLessThan(tellsDb(rule(0.9, 0.1), ['testTape']));
  });
});

describe('to know for certain is the most a question can give', () => {
  /** All but certain that it is the other cause; this one would take long to clear. */
  const doubt = (priorDb: number) =>
    candidatesOf(
      auditOf([
        small('delay', {
          priorDb,
          rules: [ruleOn('one', UPMIX, { tp: 0.6, fp: 0.5 })],
          remedies: [mend('long', { minutes: 395 })],
        }),
        small('level', { priorDb: 25, rules: [ruleOn('lift', is('testLift', 'improves'))] }),
      ]),
      ['upmixUse'],
    );
  it('so it is left out where even that would not pay', () => {
    // One in three hundred: 0 dB against 25.
    expect(doubt(0)).toEqual([]);
  });
  it('so it stays in the list where that would pay, though its own answers do not', () => {
    // One in a hundred, 5 dB against 25: some four minutes.
    expect(doubt(5).map((c) => [c.fact, c.netMinutes < 0])).toEqual([['upmixUse', true]]);
  });
});

describe('a home test', () => {
  it('costs getting up as well, but no patience, and is listed even where it does not pay', () => {
    const audit = auditOf([small('delay'), small('level', { rules: [ruleOn('lift', UPMIX)] })]);
    const [found] = candidatesOf(audit, ['testTape']);
    expect(found).toMatchObject({ kind: 'test', minutes: 5 });
    const known = knownChance(EMPTY_BOOK, 'testTape');
    expect(found?.netMinutes).toBeCloseTo(known * (found?.savesMinutes ?? 0) - 5 - 5, 12);
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
    const price = (fact: FactId) => priceMinutes(EMPTY_BOOK, fact);
    const known = Math.min(...FACTS.map((fact) => knownChance(EMPTY_BOOK, fact)));
    expect(saved('voiceBoost') / saved('upmixUse')).toBeCloseTo(price('voiceBoost') / price('upmixUse'), 9);
    expect(saved('voiceBoost') + saved('upmixUse')).toBeGreaterThan(7);
    for (const { fact, savesMinutes, netMinutes, together, moves } of found) {
      expect(netMinutes).toBeCloseTo(known * savesMinutes - price(fact), 9);
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
    const price = (fact: FactId) => priceMinutes(EMPTY_BOOK, fact);
    const [found, ...rest] = candidatesOf(audit, ['centerBassSize', 'centerBassCrossover']);
    expect(rest).toEqual([]);
    expect(found?.fact).toBe('centerBassSize');
    expect(found?.savesMinutes).toBeCloseTo(
      (gain * price('centerBassSize')) / (price('centerBassSize') + price('centerBassCrossover')),
      9,
    );
    expect(found?.together).toEqual(['centerBassCrossover']);
    expect(found?.moves).toEqual([
      { cause: 'bass-management', upDb: expect.closeTo(6, 9), downDb: expect.closeTo(-6, 9) },
    ]);
  });
  it('are as sure as the least sure answer among them', () => {
    const mixed = all(is('upmixUse', 'on'), is('troubleTitles', 'all')); // read, recalled
    const audit = auditOf([
      small('delay', { rules: [ruleOn('both', mixed, { tp: 0.95, fp: 0.2, only: 'for' })] }),
      other(400),
    ]);
    const [found] = candidatesOf(audit, ['upmixUse']);
    expect(found?.moves[0]?.upDb).toBeCloseTo(givenDb(0.95, 0.2, 'recalled'), 9);
  });
  it('are left out where all of them together take longer than they save', () => {
    const weak = small('delay', {
      priorDb: -15,
      rules: [ruleOn('both', PAIR, { tp: 0.5, fp: 0.4, only: 'for' })],
    });
    expect(candidatesOf(auditOf([weak, other(15)]), FACTS)).toEqual([]);
  });
  it('belong to the rule that gives most, whichever comes first', () => {
    const strong = ruleOn('strong', PAIR, { tp: 0.95, fp: 0.3, only: 'for' });
    const weaker = ruleOn('weaker', all(is('upmixUse', 'on'), is('jumpers', 'loose')), {
      tp: 0.8,
      fp: 0.3,
      only: 'for',
    });
    const together = (...causes: Parameters<typeof auditOf>[0]) =>
      candidatesOf(auditOf([...causes, other(400)]), ['upmixUse']).map((c) => c.together);
    const [one, two] = [[strong, weaker] as const, [weaker, strong] as const];
    expect(together(small('delay', { rules: one }))).toEqual([['voiceBoost']]);
    expect(together(small('delay', { rules: two }))).toEqual([['voiceBoost']]);
    const split = (a: typeof strong, b: typeof strong) =>
      together(small('delay', { rules: [a] }), small('aim', { rules: [b] }));
    expect(split(strong, weaker)).toEqual([['voiceBoost']]);
    expect(split(weaker, strong)).toEqual([['voiceBoost']]);
  });
  it('are no bundle where one answer settles the rule: its typical answers are weighed', () => {
    const high = {
      ...ruleOn('high', atLeast('centerElevationDeg', 'heightDeg')),
      weigh: { kind: 'deviation', of: 'centerElevationDeg', limit: 'limit.heightDeg.clear', lowIsBad: false },
    } as const;
    const audit = auditOf([small('height', { rules: [high] }), other(LONG)]);
    const hypotheses = hypothesesOf(audit, 'centerTweeterHeight');
    const chances = answerChances(hypotheses, baseRates(hypotheses), 2);
    const { gain } = outlook(faultProbabilities(audit), chances, (q) => -minutesToFind(q, [CONFIRM, LONG]));
    const [found] = candidatesOf(audit, ['centerTweeterHeight']);
    expect(found?.savesMinutes).toBeCloseTo(gain, 9);
    expect(found?.together).toEqual([]);
  });
  it('are asked for their own sake where one of them says more by itself', () => {
    const pair = small('aim', { rules: [ruleOn('both', PAIR, { tp: 0.9, fp: 0.3, only: 'for' })] });
    const alone = small('delay', { rules: [ruleOn('one', UPMIX, { tp: 0.95, fp: 0.02 })] });
    const find = (...causes: Parameters<typeof auditOf>[0]) =>
      candidatesOf(auditOf([...causes, other(LONG)]), FACTS);
    expect(find(pair).map((c) => c.together.length)).toEqual([1, 1]);
    const both = find(alone, pair);
    expect(both.find((c) => c.fact === 'upmixUse')?.together).toEqual([]);
    expect(both.find((c) => c.fact === 'upmixUse')?.moves[0]?.cause).toBe('delay');
    expect(both.find((c) => c.fact === 'voiceBoost')?.together).toEqual(['upmixUse']);
  });
  it('are worth nothing once one of them cannot be told any more', () => {
    const audit = auditOf(
      [small('delay', { rules: [ruleOn('both', PAIR, { tp: 0.9, fp: 0.05, only: 'for' })] }), small('level')],
      {},
      { answers: new Map([['voiceBoost', { how: 'unknown' }]]) },
    );
    expect(candidatesOf(audit, ['upmixUse'])).toEqual([]);
    const three = all(is('upmixUse', 'on'), is('jumpers', 'loose'), is('voiceBoost', 'on'));
    const waiting = (answers: readonly (readonly [FactId, Answer])[]) =>
      auditOf(
        [small('delay', { rules: [ruleOn('all', three, { tp: 0.95, fp: 0.3, only: 'for' })] }), other(400)],
        {},
        { answers: new Map(answers) },
      );
    expect(candidatesOf(waiting([]), FACTS)).toHaveLength(2);
    expect(candidatesOf(waiting([['voiceBoost', { how: 'unknown' }]]), ['upmixUse'])).toEqual([]);
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
