/** The plan and the next step as the report tells them, from plans made by hand. */
import { describe, expect, it } from 'vitest';
import { reportCauses } from '../../src/explain/report-causes.js';
import { cautionsOf, firstText, reportNext, reportPlan } from '../../src/explain/report-plan.js';
import type { ReportSeparator, ReportStep } from '../../src/explain/report-types.js';
import { factSpec } from '../../src/facts/catalog.js';
import type { Next } from '../../src/reasoning/next.js';
import type { Plan, PlanStep } from '../../src/reasoning/plan.js';
import { causeOf } from '../../src/rules/index.js';
import { auditOf, mend, small } from '../reasoning/smallCauses.js';
import { madeCause, madeRemedy } from './madeReport.js';

const STOP: Next = { kind: 'stop', reason: 'sure', because: 'Sure.', candidates: [], mayFollowAtMost: 0 };
const step = (kind: PlanStep['kind'], id: string): PlanStep => ({
  kind,
  id,
  cause: 'delay',
  minutes: 7,
  because: 'so',
});
const planOf = (...steps: readonly PlanStep[]): Plan => ({
  steps,
  askAgain: [],
  minutes: 0,
  checklistMinutes: 0,
  cheapestFirstMinutes: 0,
});
const shown = (...steps: readonly PlanStep[]): ReportStep[] => {
  const cause = small('delay', {
    remedies: [mend('x'), mend('y')],
    confirm: causeOf('delay').confirm,
  });
  return reportPlan(planOf(...steps), reportCauses(auditOf([cause], { testLift: 'same' })));
};
const title = causeOf('delay').title;

describe('what is not proposed', () => {
  const causes = (probability: number) => [
    madeCause('delay', { probability, remedies: [madeRemedy('Turn'), madeRemedy('Buy', { cost: 'high' })] }),
  ];
  const ids = (probability: number, undecided: boolean): string[] =>
    reportPlan(planOf(step('remedy', 'turn'), step('remedy', 'buy')), causes(probability), [], undecided).map(
      ({ id }) => id,
    );
  it('nothing is changed for a cause below an even chance while nothing is decided', () => {
    expect(ids(0.2, true)).toEqual([]);
    expect(ids(0.6, true)).toEqual(['turn', 'buy']);
  });
  it('and nothing is ever bought for one', () => {
    expect(ids(0.2, false)).toEqual(['turn']);
  });
  it('what tells the candidates apart comes first, once, and no other question stands beside it', () => {
    const apart = { kind: 'question', fact: 'upmixUse', causes: ['delay'], minutes: 1, text: 'apart' };
    const plan = reportPlan(
      planOf(step('question', 'centerTrim'), step('test', 'testTape'), step('question', 'upmixUse')),
      causes(0.3),
      [apart as unknown as ReportSeparator],
      true,
    );
    expect(plan.map(({ id }) => id)).toEqual(['upmixUse', 'testTape']);
    expect(plan[0]?.because).toBe('apart');
  });
});

describe('what was seen to be wrong', () => {
  const seen = { ...step('remedy', 'turn'), seen: true } as const;
  const causes = [
    madeCause('delay', { probability: 0.1, remedies: [madeRemedy('Turn'), madeRemedy('Other')] }),
  ];
  const apart = { kind: 'question', fact: 'upmixUse', causes: ['delay'], minutes: 1, text: 'apart' };
  it('is mended first, however little it says of the complaint; nothing else of its cause is', () => {
    const plan = reportPlan(
      planOf(seen, step('remedy', 'other')),
      causes,
      [apart as unknown as ReportSeparator],
      true,
    );
    expect(plan.map(({ id }) => id)).toEqual(['turn', 'upmixUse']);
  });
});

describe('the plan in words', () => {
  it('keeps the order of the plan', () => {
    const steps = [step('question', 'centerTrim'), step('remedy', 'x'), step('question', 'upmixUse')];
    expect(shown(...steps).map((s) => s.id)).toEqual(['centerTrim', 'x', 'upmixUse']);
  });
  it('tells a remedy with its steps and effort, a question by what is asked', () => {
    const [question, remedy] = shown(step('question', 'upmixUse'), step('remedy', 'x'));
    const spec = factSpec('upmixUse');
    expect(question).toMatchObject({
      title: spec.ask,
      causeTitle: title,
      steps: spec.findOut,
      cost: 'free',
      expect: '',
      verify: '',
      minutes: 7,
    });
    const own = mend('x');
    expect(remedy).toMatchObject({
      kind: 'remedy',
      causeTitle: title,
      cost: 'free',
      effort: '10 minutes, free',
      helps: 'sometimes',
      because: 'so',
    });
    expect(remedy?.steps).toHaveLength(own.steps.length);
  });
  it('tells a test with the outcomes that its cause would have', () => {
    const [test] = shown(step('test', 'testTape'));
    const spec = factSpec('testTape');
    expect(test?.title.toLowerCase()).toBe(spec.label.toLowerCase());
    expect(test?.title.charAt(0)).toBe(spec.label.charAt(0).toUpperCase());
    expect(test?.expect).toMatch(/^If it is “.*”, the result is: .+, or .+\.$/);
    // One that confirms something else is only carried out.
    expect(shown(step('test', 'testTilt'))[0]?.expect).toBe('');
  });
  it('leaves out what is not there any more', () => {
    expect(shown(step('remedy', 'gone'), step('question', 'gone'))).toEqual([]);
  });
});

describe('the next step', () => {
  it('is a question as it is asked, a test by its name, or nothing', () => {
    const { ask, label, minutes } = factSpec('testTape');
    expect(reportNext({ ...STOP, kind: 'question', fact: 'testTape' })).toMatchObject({
      text: ask,
      minutes,
      fact: 'testTape',
    });
    expect(reportNext({ ...STOP, kind: 'test', fact: 'testTape' }).text.toLowerCase()).toBe(
      label.toLowerCase(),
    );
    expect(reportNext(STOP)).toMatchObject({ kind: 'stop', fact: null, minutes: null, because: 'Sure.' });
  });
  it('as one line is the first of the plan with its effort', () => {
    const [question, remedy] = shown(step('question', 'upmixUse'), step('remedy', 'x')) as [
      ReportStep,
      ReportStep,
    ];
    expect(firstText([question, remedy])).toBe(`Answer one question: ${question.title} (${question.effort})`);
    expect(firstText([remedy])).toBe(`${remedy.title} (${remedy.effort})`);
    expect(firstText([])).toBeNull();
  });
});

describe('cautions', () => {
  it('are named once, in the order of the steps', () => {
    const [a] = shown(step('remedy', 'x')) as [ReportStep];
    expect(
      cautionsOf([
        { ...a, cautions: ['b', 'a'] },
        { ...a, cautions: ['a', 'c'] },
      ]),
    ).toEqual(['b', 'a', 'c']);
  });
});
