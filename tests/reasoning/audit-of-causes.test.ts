/** An audit after a change of answers: what is taken over, what is run again, and what a broken rule does. */
import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { allEvidence, audit, auditSync, changedFacts, changesFrom } from '../../src/reasoning/audit.js';
import { hypothesesOf } from '../../src/reasoning/predict.js';
import { TEMPERATURE } from '../../src/reasoning/temperature.js';
import { all, atLeast, type Condition, is } from '../../src/rules/condition.js';
import { CAUSES } from '../../src/rules/index.js';
import { bookOf } from '../support/causeClaims.js';
import { inVain } from '../support/trials.js';
import { auditOf, mend, ruleOn, small, whenTest } from './smallCauses.js';

const lift = small('level', {
  rules: [ruleOn('lift', is('testLift', 'improves')), ruleOn('tilt', is('testTilt', 'clearer'))],
});
const CASES = [small('delay'), lift];
const off: Answer = { value: 'off', how: 'measured' };
const numbers = (a: ReturnType<typeof auditSync>) => a.ranking.causes.map((c) => [c.cause, c.decibans]);

describe('facts that changed between two books', () => {
  const book = (...answers: readonly (readonly [FactId, Answer])[]): FactBook => ({
    ...EMPTY_BOOK,
    answers: new Map(answers),
  });
  it('were told, taken back, or told differently or on other grounds', () => {
    const changed = (a: Answer | undefined, b: Answer | undefined) =>
      changedFacts(
        ...([a, b].map((x) => book(...(x ? [['testTape', x] as const] : []))) as [FactBook, FactBook]),
      );
    expect(changed(undefined, off)).toEqual(['testTape']);
    expect(changed(off, undefined)).toEqual(['testTape']);
    expect(changed(off, { value: 'agrees', how: 'measured' })).toEqual(['testTape']);
    expect(changed(off, { value: 'off', how: 'guessed' })).toEqual(['testTape']);
    expect(changed(off, { how: 'unknown' })).toEqual(['testTape']);
    expect(changed(off, { value: 'off', how: 'measured' })).toEqual([]);
    expect(changed({ how: 'unknown' }, { how: 'unknown' })).toEqual([]);
  });
  it('are listed each once, those of both books', () => {
    const [a, b] = [
      book(['testTape', off], ['testLift', off]),
      book(['testLift', { how: 'unknown' }], ['testTilt', off]),
    ];
    expect(changedFacts(a, b)).toEqual(['testTape', 'testLift', 'testTilt']);
    expect(changedFacts(a, a)).toEqual([]);
  });
});

describe('an audit', () => {
  it('takes the causes and the temperature it is given, also through the engine and when taken over', async () => {
    const book = { ...EMPTY_BOOK, answers: bookOf({ testTape: 'off' }).answers };
    const options = { causes: CASES, temperature: 2 };
    const [plain, engine] = [auditSync(book, undefined, options), await audit(book, options)];
    expect(numbers(engine)).toEqual(numbers(plain));
    expect(plain.ranking.temperature).toBe(2);
    const later = auditSync(withAnswer(book, 'testTape', undefined), plain);
    expect(later.ranking.temperature).toBe(2);
    expect(numbers(later)).toEqual([
      ['delay', 0],
      ['level', 0],
    ]);
    expect(numbers(auditSync(book, later))).toEqual(numbers(plain));
  });
  it('is by the causes and the temperature of the project where none are given', async () => {
    for (const found of [auditSync(EMPTY_BOOK), await audit(EMPTY_BOOK)]) {
      expect(found.causes).toBe(CAUSES);
      expect(found.ranking.temperature).toBe(TEMPERATURE);
    }
    const at = (temperature?: number) =>
      auditSync(bookOf({ testTape: 'off' }), undefined, {
        causes: CASES,
        ...(temperature === undefined ? {} : { temperature }),
      });
    expect(numbers(at())).toEqual(numbers(at(TEMPERATURE)));
    const again = at();
    expect(numbers(auditSync({ ...again.book }, again))).toEqual(numbers(again));
  });
  it('holds on to its causes and its temperature where nothing else can be taken over', () => {
    const before = auditOf(CASES, { testTape: 'off' }, { temperature: 2 });
    const seats = bookOf({}, [{ xM: 0, yM: 3 }]).seats;
    const after = auditSync({ ...before.book, seats }, before);
    expect(after.causes).toBe(before.causes);
    expect(numbers(after)).toEqual(numbers(before));
  });
  it('lists its evidence by cause and rule', () => {
    expect(allEvidence(auditOf(CASES)).map((e) => `${e.cause}/${e.rule}`)).toEqual([
      'delay/one',
      'level/lift',
      'level/tilt',
    ]);
  });
  it('counts a remedy tried in vain against its cause, told with the book or after it', () => {
    const causes = [small('delay', { remedies: [mend('x', { cures: 0.5 })] }), lift];
    // Odds of no change: half cured against an act that hits by luck.
    const half = 10 * Math.log10(0.385 / 0.6265);
    const before = auditOf(causes);
    const tried = { ...before.book, trials: inVain('delay/x') };
    const of = (a: typeof before) => a.ranking.causes.find((c) => c.cause === 'delay')?.decibans;
    expect(of(auditOf(causes, {}, { trials: inVain('delay/x') }))).toBeCloseTo(half, 12);
    expect(of(auditSync(tried, before))).toBeCloseTo(half, 12);
    const after = auditOf(causes, {}, { trials: inVain('delay/x') });
    expect(of(auditSync(withAnswer(after.book, 'testTape', off), after))).toBeGreaterThan(0);
  });
});

describe('a change of answers', () => {
  it('runs the rules again that read it, and no others', () => {
    const before = auditOf(CASES);
    const found = changesFrom(
      before,
      withAnswer(before.book, 'testTilt', { value: 'clearer', how: 'measured' }),
    );
    expect(found?.changed).toEqual(['testTilt']);
    expect([...(found?.changes ?? [])].map(([place, rules]) => [place, [...rules.keys()]])).toEqual([
      [1, [1]],
    ]);
    expect(found?.changes.get(1)?.get(1)?.outcome).toBe('yes');
  });
  it('cannot be taken over with other seats, other responses or other remedies tried', () => {
    const before = auditOf(CASES);
    const seats = bookOf({}, [{ xM: 0, yM: 3 }]).seats;
    expect(changesFrom(before, { ...before.book, seats })).toBeUndefined();
    expect(changesFrom(before, { ...before.book, responses: new Map() })).toBeUndefined();
    expect(changesFrom(before, { ...before.book, trials: [] })).toBeUndefined();
    expect(changesFrom(before, { ...before.book, title: 'x' })?.changes.size).toBe(0);
  });
  it('leaves evidence alone that it does not touch', () => {
    const before = auditOf(CASES, { testTape: 'off' });
    const after = auditSync(
      withAnswer(before.book, 'testTilt', { value: 'clearer', how: 'measured' }),
      before,
    );
    expect(after.byCause.get('delay')).toBe(before.byCause.get('delay'));
    expect(after.byCause.get('level')?.[0]).toBe(before.byCause.get('level')?.[0]);
    expect(numbers(before).find(([id]) => id === 'level')).toEqual(['level', 0]);
  });
  it('forgets what was foreseen about answers that share a rule with it, and keeps the rest', () => {
    const both = small('aim', { rules: [ruleOn('two', all(is('testTilt', 'clearer'), whenTest('off')))] });
    const before = auditOf([both, lift]);
    for (const fact of ['testTilt', 'testLift', 'testTape'] as const) hypothesesOf(before, fact);
    const after = auditSync(withAnswer(before.book, 'testTape', off), before);
    expect([...after.foreseen.keys()]).toEqual(['testLift']);
    expect([...before.foreseen.keys()]).toHaveLength(3);
    expect(auditOf([both]).foreseen.size).toBe(0);
  });
});

describe('a rule that breaks', () => {
  const broken = { fact: 'nothing-of-the-kind', operator: 'equal', value: 'x' } as never as Condition;
  const outcomes = (...causes: Parameters<typeof auditOf>[0]) =>
    allEvidence(auditOf(causes, { testTape: 'off' })).map((e) => [e.cause, e.outcome]);
  it('is an error of its own, and the others still speak', () => {
    const cause = small('delay', { rules: [ruleOn('bad', broken), ruleOn('good', whenTest('off'))] });
    expect(outcomes(cause, small('level'))).toEqual([
      ['delay', 'error'],
      ['delay', 'yes'],
      ['level', 'yes'],
    ]);
  });
  it('in the gate of a cause takes its rules with it, no more', () => {
    expect(outcomes(small('delay', { applies: broken }), small('level'))).toEqual([
      ['delay', 'error'],
      ['level', 'yes'],
    ]);
  });
});

describe('what a computed value rests on', () => {
  it('is looked at again when one of its lengths is told', () => {
    const wide = small('mains-layout', { rules: [ruleOn('wide', atLeast('mainsBaseDeg', 'baseWideDeg'))] });
    const before = auditOf([wide]);
    const taped = withAnswer(before.book, 'mainsBase', { value: 9, how: 'measured' });
    expect(allEvidence(before)[0]?.outcome).toBe('no');
    expect(allEvidence(auditSync(taped, before))[0]?.outcome).toBe('yes');
  });
});
