/** The next step for a handful of made-up causes: what is asked, what is done, and why it ends. */
import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK } from '../../src/facts/book.js';
import { FACT_IDS, type FactId, TEST_IDS } from '../../src/facts/catalog.js';
import { isSure, type NextOptions, next, questionsLeft } from '../../src/reasoning/next.js';
import { candidatesOf } from '../../src/reasoning/worth.js';
import { all, type Condition, is } from '../../src/rules/condition.js';
import { causeOf } from '../../src/rules/index.js';
import { auditOf, mend, ruleOn, small, whenTest } from './smallCauses.js';

const UPMIX = is('upmixUse', 'on'); // 1 minute, topic upmix
const TONE = is('equalization', 'none'); // 1 minute, topic tone
const by = (when: Condition, tp = 0.9, fp = 0.05) => ({ rules: [ruleOn('one', when, { tp, fp })] as const });
const long = { remedies: [mend('long', { minutes: 120 })] as const };
const db = (p: number): number => 10 * Math.log10(p / (1 - p));

describe('no more is asked', () => {
  it('when the leader is at nine tenths and ten decibans ahead', () => {
    const sure = (delayDb: number, levelDb: number) =>
      auditOf([small('delay', { priorDb: delayDb }), small('level', { priorDb: levelDb, ...by(UPMIX) })]);
    expect(isSure(sure(10, 0))).toBe(true);
    expect(isSure(sure(db(0.9001), -3))).toBe(true);
    expect(isSure(sure(10, 0.1))).toBe(false);
    expect(isSure(sure(db(0.89), -9))).toBe(false);
    const step = next(sure(10, 0));
    expect(step).toMatchObject({ kind: 'stop', reason: 'sure', mayFollowAtMost: 1 });
    expect(step.because).toContain('90%');
    expect('fact' in step).toBe(false);
    expect(step.candidates).toEqual(candidatesOf(sure(10, 0), FACT_IDS));
    expect(step.candidates).toBe(step.candidates);
  });
  it('when what leads was seen to be wrong; not where it was not, or another leads', () => {
    const crossed = is('polarityMarks', 'center-crossed');
    const step = (polarityMarks: 'center-crossed' | 'all-match', levelDb = 0) =>
      next(
        auditOf(
          [
            small('polarity', { priorDb: 3, remedies: [mend('uncross', { seen: crossed })] }),
            small('level', { priorDb: levelDb, ...by(UPMIX) }),
          ],
          { polarityMarks },
        ),
      );
    expect(step('center-crossed')).toMatchObject({ kind: 'stop', reason: 'seen' });
    expect(step('all-match').reason).not.toBe('seen');
    expect(step('center-crossed', 6).reason).not.toBe('seen');
  });
  it('when nothing still open can change the leader', () => {
    const far = auditOf([small('delay', { priorDb: 6 }), small('level', { priorDb: -20, ...by(UPMIX) })], {
      testTape: 'agrees',
    });
    expect(next(far)).toMatchObject({ kind: 'stop', reason: 'settled', mayFollowAtMost: 0 });
  });
  it('when no open question bears on a cause', () => {
    const even = auditOf([small('delay'), small('level')], { testTape: 'off' });
    expect(next(even)).toMatchObject({ kind: 'stop', reason: 'nothing-open', mayFollowAtMost: 0 });
  });
  it('when those left cannot pay: none may follow then', () => {
    const rare = small('aim', { priorDb: -30, ...by(UPMIX, 0.6, 0.5) });
    const even = auditOf([small('delay'), small('level'), rare], { testTape: 'off' });
    expect(questionsLeft(even)).toBe(1);
    expect(next(even)).toMatchObject({ kind: 'stop', reason: 'nothing-open', mayFollowAtMost: 0 });
  });
  it('when the time is up, even for what would pay', () => {
    const audit = auditOf([small('delay', by(UPMIX)), small('level', { ...by(TONE), ...long })]);
    const at = (minutesLeft: number) => next(audit, { minutesLeft });
    expect(at(0.9)).toMatchObject({
      kind: 'stop',
      reason: 'time-up',
      mayFollowAtMost: questionsLeft(audit),
    });
    expect(at(1)).toMatchObject({ kind: 'question' });
  });
  it('when nothing pays: neither a question nor a test', () => {
    const rare = auditOf([
      small('delay', { priorDb: -18, ...by(whenTest('off'), 0.95, 0.01) }),
      small('level', { priorDb: -15, ...by(is('testLift', 'improves'), 0.6, 0.5) }),
    ]);
    const step = next(rare);
    expect(step).toMatchObject({ kind: 'stop', reason: 'not-worth-asking', mayFollowAtMost: 0 });
    expect(step.candidates.every((c) => c.netMinutes <= 0)).toBe(true);
  });
});

describe('a home test is proposed', () => {
  const tape = small('delay', by(whenTest('off'), 0.95, 0.02));
  it('when it pays and no question does, and says so', () => {
    const step = next(auditOf([tape, small('level', { ...by(is('testLift', 'improves')), ...long })]));
    expect(step).toMatchObject({ kind: 'test', reason: 'not-worth-asking', mayFollowAtMost: 0 });
    expect(step.because).toMatch(/^No question is worth more than this test\. /);
    expect(step.because).toContain(`It can move “${causeOf('delay').title}”`);
  });
  it('not when home tests are left out', () => {
    const audit = auditOf([tape, small('level', { ...by(is('testLift', 'improves')), ...long })]);
    expect(next(audit, { questionsOnly: true })).toMatchObject({ kind: 'stop', reason: 'nothing-open' });
  });
  it('before a question that saves less, and less for its minutes', () => {
    const mute = small('double-playback', by(is('testMuteDisplay', 'gone'), 0.98, 0.02)); // 1 minute and getting up
    const seats = small('level', { ...by(is('troubleSeats', 'one-seat'), 0.75, 0.35), ...long }); // 3 minutes
    const audit = auditOf([mute, seats]);
    const [test, question] = candidatesOf(audit, ['testMuteDisplay', 'troubleSeats']);
    expect(question?.netMinutes).toBeGreaterThan(0);
    expect(test?.netMinutes).toBeGreaterThan(question?.netMinutes ?? 0);
    const step = next(audit);
    expect(step).toMatchObject({ kind: 'test', fact: 'testMuteDisplay', mayFollowAtMost: 1 });
    expect(step.because).not.toContain('No question');
  });
  it('after a question that saves more', () => {
    const mute = small('double-playback', by(is('testMuteDisplay', 'gone'), 0.95, 0.1));
    const seats = small('level', { ...by(is('troubleSeats', 'one-seat'), 0.95, 0.02), ...long });
    const audit = auditOf([mute, seats]);
    const [question, test] = candidatesOf(audit, ['testMuteDisplay', 'troubleSeats']);
    expect([question?.fact, test?.kind, (test?.netMinutes ?? 0) > 0]).toEqual(['troubleSeats', 'test', true]);
    expect(next(audit)).toMatchObject({ kind: 'question', fact: 'troubleSeats' });
  });
  it('after a quick question that saves less on the whole, but more for its minute', () => {
    const audit = auditOf([tape, small('level', { ...by(UPMIX, 0.7, 0.3), ...long })]);
    const [first, second] = candidatesOf(audit, ['testTape', 'upmixUse']);
    expect([first, second].every((c) => (c?.netMinutes ?? 0) > 0)).toBe(true);
    expect(first?.fact).toBe('testTape');
    expect(next(audit)).toMatchObject({ kind: 'question', fact: 'upmixUse' });
    expect('reason' in next(audit)).toBe(false);
  });
  it('not for what the test before its remedy would find anyway: a question that tells as much is worth more', () => {
    const even = (when: Condition) =>
      auditOf([small('delay', { ...by(when), ...long }), small('level', long)], { testTape: 'agrees' });
    const [test] = candidatesOf(even(is('testLift', 'improves')), ['testLift']);
    const [question] = candidatesOf(even(UPMIX), ['upmixUse']);
    expect(test?.savesMinutes).toBeLessThan((question?.savesMinutes ?? 0) * 0.6);
  });
});

describe('the topic', () => {
  const two = (tp: number, answers: readonly (readonly [FactId, Answer])[] = []) =>
    auditOf(
      [small('delay', by(UPMIX)), small('level', by(TONE, tp, 0.05))],
      {},
      { answers: new Map(answers) },
    );
  const asked = (audit: ReturnType<typeof two>, options: NextOptions = {}) => next(audit, options).fact;
  it('is kept where another question saves hardly more, and left where it saves clearly more', () => {
    expect(asked(two(0.89))).toBe('upmixUse');
    expect(asked(two(0.89), { family: 'tone' })).toBe('equalization');
    expect(asked(two(0.4), { family: 'tone' })).toBe('upmixUse');
    expect(asked(two(0.89), { family: 'room' })).toBe('upmixUse');
  });
  it('is that of the last answer', () => {
    const tone = ['screenKind', { value: 'none', how: 'read' }] as const;
    const room = ['clapRing', { value: 'dry', how: 'measured' }] as const;
    expect(asked(two(0.89, [room, tone]))).toBe('equalization');
    expect(asked(two(0.89, [tone, room]))).toBe('upmixUse');
    expect(asked(two(0.89, [tone, room, ['lipSync', { how: 'unknown' }], tone]))).toBe('upmixUse');
    expect(asked(two(0.89, [room, ['lipSync', { how: 'unknown' }], tone]))).toBe('equalization');
    expect(asked(two(0.89, [room, tone]), { family: 'upmix' })).toBe('upmixUse');
  });
});

describe('the reason given', () => {
  const titles = (['delay', 'level', 'aim'] as const).map((id) => causeOf(id).title);
  it('names the causes that move, two at most, the minutes saved and those it takes', () => {
    const audit = auditOf([
      small('delay', by(UPMIX)),
      small('level', by(UPMIX, 0.8)),
      small('aim', by(UPMIX, 0.7)),
    ]);
    const { because, candidates } = next(audit);
    expect(titles.map((title) => because.includes(title))).toEqual([true, true, false]);
    expect(because).toContain(`saves about ${Math.round(candidates[0]?.savesMinutes ?? 0)} minutes`);
    expect(because).toMatch(/” and “.* takes a minute\.$/);
  });
  it('tells long minutes in hours, as everywhere', () => {
    const day = (id: string) => ({ remedies: [mend(id, { minutes: 600 })] as const });
    const { because, candidates, fact } = next(
      auditOf([
        small('delay', { ...by(UPMIX), ...day('one') }),
        small('level', { ...by(UPMIX, 0.8), ...day('two') }),
        small('aim', { priorDb: 0.5, ...day('three') }),
        small('height'),
      ]),
    );
    const hours = Math.round((candidates.find((c) => c.fact === fact)?.savesMinutes ?? 0) / 60);
    expect(hours).toBeGreaterThan(1);
    expect(because).toContain(`saves about ${hours} hours on average`);
  });
  it('rounds a quick question to half a minute, and tells what must be answered with it', () => {
    const quick = auditOf([
      small('delay', by(is('clapRing', 'dry'))),
      small('level', { ...by(TONE), ...long }),
    ]);
    const found = next(quick, { family: 'room' });
    expect(found).toMatchObject({ fact: 'clapRing' });
    expect(found.because).toContain('takes half a minute.');
    const both = (...when: Parameters<typeof all>) =>
      next(
        auditOf([
          small('delay', { rules: [ruleOn('both', all(...when), { tp: 0.9, fp: 0.2, only: 'for' })] }),
          small('level', { ...by(is('testLift', 'improves'), 0.6, 0.5), ...long }),
        ]),
        { questionsOnly: true },
      ).because;
    expect(both(UPMIX, TONE)).toContain('together with one more answer.');
    expect(both(UPMIX, TONE, is('jumpers', 'loose'))).toContain('together with 2 more answers.');
    expect(next(quick).because).not.toContain('together');
  });
});

describe('questions that may follow', () => {
  it('are those that a cause of this system reads: no tests, nothing told, nothing out of place', () => {
    const causes = [
      small('delay', by(all(UPMIX, TONE, is('testLift', 'improves')))),
      small('twin-centers', { applies: is('centerCount', 'two'), ...by(is('jumpers', 'loose')) }),
      small('ambience-setting', by(is('ambienceSize', 'small'))),
    ];
    const left = (facts = {}) => questionsLeft(auditOf(causes, facts));
    // upmixUse, equalization, centerCount, jumpers, ambienceSize; whether there is ambience is read by no rule.
    const all5 = left();
    expect(left({ upmixUse: 'on' })).toBe(all5 - 1);
    expect(left({ centerCount: 'one' })).toBeLessThan(all5 - 1);
    expect(left({ testLift: 'improves' })).toBe(all5);
    expect(left({ upmixAmbience: 'no' })).toBeLessThan(all5);
    expect(next(auditOf(causes)).mayFollowAtMost).toBe(all5);
  });
  it('in a complete audit are all that make sense, in the order of the catalog', () => {
    const first = FACT_IDS[0] as FactId;
    const step = next(auditOf([small('delay')]), { full: true });
    expect(step).toMatchObject({ kind: 'question', fact: first, candidates: [] });
    const told = next(auditOf([small('delay')], {}, { answers: new Map([[first, { how: 'unknown' }]]) }), {
      full: true,
    });
    expect(told.fact).toBe(FACT_IDS[1]);
    expect(told.mayFollowAtMost).toBe(step.mayFollowAtMost - 1);
    const tests: ReadonlySet<FactId> = new Set<FactId>(TEST_IDS);
    expect(step.mayFollowAtMost).toBe(FACT_IDS.filter((id) => !tests.has(id)).length - 1);
  });
  it('are none once everything was asked', () => {
    const answers = new Map(FACT_IDS.map((id): [FactId, Answer] => [id, { how: 'unknown' }]));
    expect(next(auditOf([small('delay')], {}, { ...EMPTY_BOOK, answers }), { full: true })).toMatchObject({
      kind: 'stop',
      reason: 'nothing-open',
      mayFollowAtMost: 0,
    });
    // Home tests are not asked for.
    const tests: ReadonlySet<FactId> = new Set<FactId>(TEST_IDS);
    const told = new Map([...answers].filter(([id]) => !tests.has(id)));
    const step = next(auditOf([small('delay')], {}, { ...EMPTY_BOOK, answers: told }), { full: true });
    expect(step.kind).toBe('stop');
    expect(step.because).not.toBe('');
  });
});
