/** Plans for a handful of made-up causes: who gets which steps, in which order, and how long it takes. */
import { describe, expect, it } from 'vitest';
import { factSpec } from '../../src/facts/catalog.js';
import type { Next } from '../../src/reasoning/next.js';
import { plan } from '../../src/reasoning/plan.js';
import { openRemedies } from '../../src/reasoning/remedies.js';
import type { Candidate } from '../../src/reasoning/worth.js';
import { type Cause, confirmedBy } from '../../src/rules/cause.js';
import type { CauseId } from '../../src/rules/cause-ids.js';
import { is } from '../../src/rules/condition.js';
import { causeOf } from '../../src/rules/index.js';
import { inVain } from '../support/trials.js';
import { auditOf, mend, ruleOn, small, whenTest } from './smallCauses.js';

const STOP: Next = {
  kind: 'stop',
  reason: 'nothing-open',
  because: '',
  candidates: [],
  mayFollowAtMost: 0,
};
/** A cause of probability p with one rule that is settled and says nothing. */
const at = (id: CauseId, p: number, changes: Partial<Cause> = {}): Cause =>
  small(id, {
    severity: 'clear',
    priorDb: 10 * Math.log10(p / (1 - p)),
    rules: [ruleOn('one', whenTest('off'), { only: 'for' })],
    ...changes,
  });
const DONE = { testTape: 'agrees' } as const;
const planOf = (causes: readonly Cause[], facts = {}, book = {}) =>
  plan(auditOf(causes, { ...DONE, ...facts }, book), {}, STOP);
const stepsOf = (...of: Parameters<typeof planOf>): string[] =>
  planOf(...of).steps.map(({ kind, cause, id }) => `${kind} ${cause} ${id}`);

const leader = at('delay', 0.6, { remedies: [mend('first'), mend('second')] });
const two = { remedies: [mend('x'), mend('y')] as const };
const quick = { confirm: [confirmedBy('testPullForward', 'clearer')] as const }; // 2 minutes
const slow = { confirm: [confirmedBy('testPhantom', 'gone')] as const }; // 4 minutes

describe('a plan goes', () => {
  it('all the way for the leader and for what is possible, by one free remedy for one in ten, else not at all', () => {
    const whole = ['remedy delay first', 'remedy delay second'];
    expect(stepsOf([leader, at('level', 0.2, two)])).toEqual([...whole, 'remedy level x', 'remedy level y']);
    const likely = at('delay', 0.8, { remedies: leader.remedies });
    expect(stepsOf([likely, at('level', 0.75, two)])).toEqual([...whole, 'remedy level x', 'remedy level y']);
    expect(stepsOf([leader, at('level', 0.19, two)])).toEqual([...whole, 'remedy level x']);
    expect(stepsOf([leader, at('level', 0.11, two)])).toEqual([...whole, 'remedy level x']);
    expect(stepsOf([leader, at('level', 0.09, two)])).toEqual(whole);
    const bought = { remedies: [mend('x', { cost: 'low' }), mend('y')] as const };
    expect(stepsOf([leader, at('level', 0.19, bought)])).toEqual(whole);
  });
  it('after a leader that is hardly probable too', () => {
    expect(stepsOf([at('delay', 0.03)])).toEqual(['remedy delay mend-delay']);
  });
  it('to a quick test of an improbable fault of the signal path, not of other causes, nor to a slow one', () => {
    const tests = (...of: Parameters<typeof at>) => stepsOf([leader, at(...of)]).slice(2);
    const three = {
      confirm: [confirmedBy('testMuteDisplay', 'gone'), confirmedBy('testLift', 'same')] as const,
    };
    expect(stepsOf([leader, at('routing', 0.06, { severity: 'broken', ...quick })])).toContain(
      'test routing testPullForward',
    );
    expect(tests('routing', 0.06, { severity: 'severe', ...quick })).toEqual([]);
    expect(tests('routing', 0.06, { severity: 'broken', ...slow })).toEqual([]);
    expect(tests('routing', 0.06, { severity: 'broken' })).toEqual([]);
    expect(tests('routing', 0.04, { severity: 'broken', ...three })).toEqual([]);
    const exactly = { confirm: [confirmedBy('testTilt', 'clearer')] as const }; // 3 minutes
    expect(stepsOf([leader, at('routing', 0.06, { severity: 'broken', ...exactly })])).toContain(
      'test routing testTilt',
    );
  });
  it('to a test only, of a contender of which nothing is known, and nowhere for another', () => {
    const unknown = (p: number) =>
      at('level', p, { rules: [ruleOn('one', is('testLift', 'same'))], ...slow });
    expect(stepsOf([leader, unknown(0.5)])).toEqual(expect.arrayContaining(['test level testPhantom']));
    expect(stepsOf([leader, unknown(0.5)]).filter((s) => s.startsWith('remedy level'))).toEqual([]);
    const light = { ...unknown(0.5), remedies: [mend('x', { minutes: 1 })] as const };
    expect(stepsOf([leader, light])).toEqual(expect.arrayContaining(['test level testPhantom']));
    const sure = at('delay', 0.9, { rules: [ruleOn('one', whenTest('agrees'))] });
    expect(stepsOf([sure, unknown(0.5)])).toEqual(['remedy delay mend-delay']);
  });
  it('nowhere for a cause that cannot exist here', () => {
    const gated = at('twin-centers', 0.55, { applies: is('centerCount', 'two') });
    expect(stepsOf([leader, gated], { centerCount: 'one' })).toHaveLength(2);
  });
  it('to five causes at most', () => {
    const ids = ['level', 'aim', 'polarity', 'timbre', 'height', 'overload'] as const;
    const steps = stepsOf([leader, ...ids.map((id, i) => at(id, 0.4 - i / 100))]);
    expect(steps).toHaveLength(2 + 4);
    expect(steps).not.toContain('remedy height mend-height');
  });
});

describe('the steps of a cause', () => {
  const steps = (minutes: number, changes = {}): string[] =>
    stepsOf([at('delay', 0.6, { ...slow, remedies: [mend('x', { minutes, ...changes })] })]);
  it('begin with its test when that is quicker than the remedy', () => {
    expect(steps(5)).toEqual(['test delay testPhantom', 'remedy delay x']);
    expect(steps(4)).toEqual(['remedy delay x']);
  });
  it('begin with its test before anything is bought or final, however quick', () => {
    expect(steps(1, { cost: 'low' })).toEqual(['test delay testPhantom', 'remedy delay x']);
    expect(steps(1, { final: true })).toEqual(['test delay testPhantom', 'remedy delay x']);
  });
  it('are its test alone once every remedy was tried', () => {
    const cause = at('delay', 0.9, { ...slow, remedies: [mend('x')] });
    expect(stepsOf([cause], {}, { trials: inVain('delay/x') })).toEqual(['test delay testPhantom']);
  });
  it('leave out what does not fit the system, and keep what may', () => {
    const some = at('delay', 0.6, {
      remedies: [mend('x', { when: is('centerCount', 'two') }), mend('y', { when: is('upmixUse', 'on') })],
    });
    const audit = auditOf([some], { ...DONE, centerCount: 'one' });
    expect(openRemedies(audit, some).map((r) => r.id)).toEqual(['y']);
  });
  it('say how long they take, and what for', () => {
    const { steps } = planOf([at('delay', 0.6, { ...slow, remedies: [mend('x', { cures: 0.83 })] })]);
    expect(steps.map((s) => s.minutes)).toEqual([4, 10]);
    expect(steps[0]?.because).toContain(causeOf('delay').title);
    expect(steps[1]?.because).toContain(causeOf('delay').title);
    expect(steps[1]?.because).toContain('often puts it right');
    expect(steps.every((s) => !('free' in s))).toBe(true);
  });
  it('come free first, over all causes, otherwise in the order of chance by minutes', () => {
    const bought = at('level', 0.5, { remedies: [mend('buy', { cost: 'high', minutes: 1 }), mend('y')] });
    expect(stepsOf([at('delay', 0.6, { remedies: [mend('x', { minutes: 30 })] }), bought])).toEqual([
      'remedy level y',
      'remedy delay x',
      'remedy level buy',
    ]);
  });
  it('come once decided for the leader first, bought ones too unless they are dear, then for the others', () => {
    const proven = small('delay', {
      priorDb: 6,
      rules: [ruleOn('one', whenTest('agrees'), { tp: 0.9, fp: 0.1 })],
      remedies: [mend('dear', { cost: 'high' }), mend('cheap', { cost: 'low', minutes: 90 }), mend('free')],
    });
    const other = at('level', 0.25, { remedies: [mend('x', { minutes: 1 }), mend('buy', { cost: 'low' })] });
    expect(auditOf([proven, other], DONE).ranking.undecided).toBe(false);
    expect(stepsOf([proven, other])).toEqual([
      'remedy delay free',
      'remedy delay cheap',
      'remedy level x',
      'remedy delay dear',
      'remedy level buy',
    ]);
  });
  it('come once, where two causes share one', () => {
    const shared = { ...slow, remedies: [mend('same', { minutes: 20 })] as const };
    expect(stepsOf([at('delay', 0.6, shared), at('level', 0.5, shared)])).toEqual([
      'test delay testPhantom',
      'remedy delay same',
    ]);
  });
});

describe('what was seen to be wrong', () => {
  const crossed = at('polarity', 0.01, {
    remedies: [mend('distances'), mend('uncross', { seen: is('polarityMarks', 'center-crossed') })],
  });
  it('is mended first, whatever leads and however improbable it is', () => {
    const causes = [at('delay', 0.9), crossed];
    const [first] = planOf(causes, { polarityMarks: 'center-crossed' }).steps;
    expect(first).toMatchObject({ kind: 'remedy', cause: 'polarity', id: 'uncross' });
  });
  it('takes one line, and none where it was not seen', () => {
    const steps = planOf([at('delay', 0.9), crossed], { polarityMarks: 'all-match' }).steps;
    expect(steps.filter(({ cause }) => cause === 'polarity')).toEqual([]);
    const seen = planOf([{ ...crossed, priorDb: 10 }], { polarityMarks: 'center-crossed' }).steps;
    expect(seen.filter(({ id }) => id === 'uncross')).toHaveLength(1);
  });
});

describe('the minutes of a plan', () => {
  // Causes of 1/2, 1/2 and 2/5 by themselves: none of them 0.15, the others share 0.85 by their odds, 3 : 3 : 2.
  const [p, q, none] = [0.85 * (3 / 8), 0.85 * (2 / 8), 0.15];
  const causes = [
    at('delay', 0.5, { remedies: [mend('x', { minutes: 15 })] }),
    at('level', 0.5, { remedies: [mend('y', { minutes: 25 })] }),
    at('aim', 2 / 5, { remedies: [mend('z', { minutes: 11 })] }),
  ];
  /** Checks of 20, 30 and 16 minutes one after the other, an hour for none; repairs and two minutes to hear it. */
  const rest = none * 60 + p * 17 + p * 27 + q * 13;
  it('are those of the best order, of a checklist, and of the cheapest check first', () => {
    const found = planOf(causes);
    expect(found.minutes).toBeCloseTo(20 + (1 - p) * 16 + (1 - p - q) * 30 + rest, 9);
    expect(found.checklistMinutes).toBeCloseTo(20 + (1 - p) * 30 + (1 - 2 * p) * 16 + rest, 9);
    expect(found.cheapestFirstMinutes).toBeCloseTo(16 + (1 - q) * 20 + (1 - q - p) * 30 + rest, 9);
  });
  it('take the remedy that is next, not one that was tried', () => {
    const one = at('delay', 0.5, {
      remedies: [mend('x', { cures: 0.5 }), mend('y', { minutes: 30 })],
    });
    // No change by a remedy that cures every second time, against one that hits by luck; two of one evening repeat
    // each other. Trial of the first ten minutes still clears the cause.
    const weightDb = 10 * Math.log10(0.385 / 0.6265);
    const minutes = (db: number, repair: number): number => {
      const p = 1 / (1 + 10 ** (-db / 10));
      return 15 + (1 - p) * 60 + p * repair;
    };
    expect(planOf([one], {}, { trials: inVain('delay/x') }).minutes).toBeCloseTo(minutes(weightDb, 32), 9);
    expect(planOf([one], {}, { trials: inVain('delay/x', 'delay/y') }).minutes).toBeCloseTo(
      minutes((2 * weightDb) / 1.3, 12),
      9,
    );
  });
  it('come with the answers to be asked again', () => {
    const one = at('delay', 0.5, { remedies: [mend('x', { changes: ['testTape', 'testLift'] })] });
    expect(planOf([one], {}, { trials: inVain('delay/x') }).askAgain).toEqual(['testTape']);
  });
});

describe('questions in a plan', () => {
  const candidate: Candidate = {
    fact: 'centerTrim',
    kind: 'question',
    minutes: 1,
    savesMinutes: 5,
    netMinutes: 4,
    moves: [
      { cause: 'level', upDb: 3, downDb: -3 },
      { cause: 'delay', upDb: 1, downDb: -1 },
    ],
    together: [],
  };
  const asked: Next = { ...STOP, kind: 'question', fact: 'centerTrim', because: 'It pays.', candidate };
  const questions = (proposed: Next) =>
    plan(auditOf([leader], DONE), {}, proposed).steps.filter((s) => s.kind !== 'remedy');
  it('come first, the proposed one alone, with the cause it moves most', () => {
    expect(questions(asked)).toEqual([
      {
        kind: 'question',
        id: 'centerTrim',
        cause: 'level',
        minutes: factSpec('centerTrim').minutes,
        because: 'It pays.',
      },
    ]);
    expect(plan(auditOf([leader], DONE), {}, asked).steps[0]?.id).toBe('centerTrim');
    expect(questions({ ...asked, fact: 'voiceLoudness' }).map((s) => s.id)).toEqual(['voiceLoudness']);
  });
  it('belong to the leader where they pay only with others', () => {
    const alone = { ...asked, candidate: undefined };
    expect(questions(alone).map((s) => [s.id, s.cause])).toEqual([['centerTrim', 'delay']]);
  });
  it('come after what belongs to a leader that is decided', () => {
    const rules = [ruleOn('one', whenTest('agrees'), { tp: 0.9, fp: 0.1 })] as const;
    const proven = small('delay', {
      priorDb: 6,
      rules,
      remedies: [mend('x'), mend('dear', { cost: 'high' })],
    });
    const { steps } = plan(auditOf([proven], DONE), {}, asked);
    expect(steps.map((s) => s.id)).toEqual(['x', 'centerTrim', 'dear']);
  });
  it('give way to a home test that is proposed while nothing is decided', () => {
    const tested = at('level', 0.3, { ...two, ...slow });
    const proposed: Next = { ...STOP, kind: 'test', fact: 'testPhantom' };
    expect(plan(auditOf([leader, tested], DONE), {}, proposed).steps[0]?.id).toBe('testPhantom');
  });
  it('are left out when a test or nothing is proposed', () => {
    expect(questions({ ...asked, kind: 'test' })).toEqual([]);
    expect(questions(STOP)).toEqual([]);
  });
});
