/** The mutator of rules makes the slips it says, leaves the rules alone, and is itself not easily pleased. */
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { holds, judgeOf } from '../../scripts/mutants/judge.js';
import { conditionChanges, otherLimits, otherVariable } from '../../scripts/mutants/leaf.js';
import { mutantsOf } from '../../scripts/mutants/mutants.js';
import { spotsOf } from '../../scripts/mutants/spots.js';
import { isFactId } from '../../src/facts/catalog.js';
import { answers, type Cause, deviates } from '../../src/rules/cause.js';
import { all, any, atLeast, is, not, oneOf } from '../../src/rules/condition.js';
import { CAUSES, causeOf } from '../../src/rules/index.js';
import { limitValue } from '../../src/rules/plain.js';
import { type CauseTests, claimsOf } from '../support/causeClaims.js';

const words = {
  group: 'g',
  yes: '',
  no: '',
  because: '',
  source: 'practice',
} as const;
const tape = answers({
  ...words,
  id: 'tape',
  when: oneOf('testTape', 'off', 'wrong-unit'),
  tells: { yes: 'strong' },
});
const late = deviates({ ...words, id: 'late', of: 'delayErrorMs', limit: 'delayMs', maxDb: 6 });
const madeUp: Cause = {
  ...causeOf('delay'),
  links: { hollow: 0.4 },
  groups: { g: 'same-quantity' },
  rules: [tape, late],
};
const kindsOf = (what: RegExp): string[] =>
  mutantsOf(madeUp)
    .map((mutant) => mutant.what)
    .filter((text) => what.test(text));

describe('the slips', () => {
  it('leave the cause as it is and each differ from it in data', () => {
    for (const cause of CAUSES) {
      const before = structuredClone(cause);
      const mutants = mutantsOf(cause);
      expect(cause).toEqual(before);
      expect(mutants.filter((mutant) => isDeepStrictEqual(mutant.cause, cause))).toEqual([]);
    }
  });
  it('of an answer rule touch operator, choices, fact, weight and the rule itself', () => {
    expect(kindsOf(/\/tape/)).toEqual([
      'delay/tape: testTape in -> notIn',
      'delay/tape: testTape without off',
      'delay/tape: testTape without wrong-unit',
      'delay/tape: testTape with agrees',
      expect.stringMatching(/^delay\/tape: testTape -> test/),
      'delay/tape: tp and fp exchanged',
      'delay/tape: tp 0.77 -> 0.5',
      'delay/tape: fp 0.08 -> 0.5',
      'delay/tape: only for removed',
      'delay/tape: removed',
    ]);
  });
  it('of a deviation move its condition along with its weight', () => {
    const turned = mutantsOf(madeUp).find(({ what }) => what === 'delay/late: bad side turned round');
    expect(turned?.cause.rules[1]).toMatchObject({
      when: { fact: 'delayErrorMs', operator: 'lessThanInclusive', value: { fact: 'limit.delayMs.clear' } },
      weigh: { lowIsBad: true, maxDb: 6 },
    });
    expect(kindsOf(/\/late: limit/)).toHaveLength(3);
    expect(kindsOf(/\/late: bound 6 dB removed/)).toHaveLength(1);
  });
  it('of a cause touch prior, links and how groups hang together', () => {
    expect(kindsOf(/^delay:/)).toEqual([
      'delay: prior 6 dB',
      'delay: prior -6 dB',
      'delay: link hollow (0.4) removed',
      'delay: group g same-quantity -> independent',
    ]);
  });
  it('of a gate take it away, turn it round and change it within', () => {
    const applies = is('centerCount', 'two');
    const gates = mutantsOf({ ...madeUp, applies }).map(({ cause }) => cause.applies);
    expect(gates).toContain(undefined);
    expect(gates).toContainEqual({ not: applies });
    expect(gates).toContainEqual({ ...applies, operator: 'notEqual' });
    expect(gates).toContainEqual({ ...applies, value: 'one' });
  });
  it('reach every place of a nested condition', () => {
    const when = all(
      is('testTape', 'off'),
      not(any(is('centerCount', 'two'), atLeast('delayErrorMs', 'delayMs'))),
    );
    expect(spotsOf(when)).toHaveLength(6);
    for (const { here, put } of spotsOf(when)) expect(put(here)).toEqual(when);
    const joins = conditionChanges(when).filter(({ kind }) => kind === 'join');
    expect(joins.map(({ what }) => what)).toEqual(['all -> any', 'not taken away', 'any -> all']);
  });
  it('stretch a limit by half either way, and take another grade', () => {
    const clear = limitValue('limit.delayMs.clear');
    const values = otherLimits('limit.delayMs.clear').map(limitValue);
    expect(values).toEqual([clear * 1.5, clear / 1.5, limitValue('limit.delayMs.severe')]);
  });
  it('put a variable of the same kind and unit in the place of another', () => {
    expect(otherVariable('tapedCenter')).not.toBe('tapedCenter');
    expect(isFactId(otherVariable('tapedCenter') ?? '')).toBe(true);
  });
});

describe('the judge', () => {
  const good: CauseTests = {
    firstPosts: [{ complaints: ['echo'], facts: { testTape: 'off' } }],
    fires: [{ name: 'off', facts: { testTape: 'off' }, rules: ['tape'] }],
    silent: [{ name: 'agrees', facts: { testTape: 'agrees' }, rules: ['tape'] }],
    cannotTell: [{ name: 'no tape', facts: {}, rule: 'tape', asks: ['testTape'] }],
    boundary: [{ name: 'a quarter', rule: 'late', derived: { delayErrorMs: 0.25 }, at: 'yes', below: 'no' }],
  };
  const survivors = (tests: CauseTests): string[] => {
    const judge = judgeOf(madeUp, tests, []);
    return mutantsOf(madeUp)
      .filter(({ cause }) => judge(cause).length === 0)
      .map(({ what }) => what);
  };
  it('lets pass what no test looks at, and names it', () => {
    expect(survivors(good)).toContain('delay/tape: testTape without wrong-unit');
    expect(survivors(good)).not.toContain('delay/late: limit.delayMs.clear -> limit.delayMs.severe');
    const { boundary: _, ...rest } = good;
    expect(survivors(rest as CauseTests)).toContain(
      'delay/late: limit.delayMs.clear -> limit.delayMs.severe',
    );
  });
  it('notices a rule that is gone and one that turns the other way', () => {
    const open = survivors(good);
    for (const what of ['delay/tape: removed', 'delay/late: removed', 'delay/tape: tp and fp exchanged'])
      expect(open).not.toContain(what);
  });
  it('takes a claim about a missing rule for broken, not for kept', () => {
    const [claim] = claimsOf(good);
    expect(claim && holds(claim, madeUp)).toBe(true);
    expect(claim && holds(claim, { ...madeUp, rules: [late] })).toBe(false);
  });
});
