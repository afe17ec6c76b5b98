/** Which rules an answer can move: the facts a rule reads, also behind its gates and computed values. */
import { describe, expect, it } from 'vitest';
import { ruleIndex, variablesOfRule } from '../../src/reasoning/rule-index.js';
import { all, atLeast, is } from '../../src/rules/condition.js';
import { factsBehind } from '../../src/rules/derived/view.js';
import { causeOf } from '../../src/rules/index.js';
import { ruleOn, small, whenTest } from './smallCauses.js';

describe('a rule reads', () => {
  it('its condition, its own gate and that of its cause, each variable once', () => {
    const cause = small('delay', { applies: is('centerCount', 'one') });
    const rule = ruleOn('one', all(whenTest('off'), is('centerCount', 'one')), {
      applies: is('upmixUse', 'on'),
    });
    expect(variablesOfRule(cause, rule)).toEqual(['centerCount', 'upmixUse', 'testTape']);
  });
  it('the deviation it weighs, how much of it is heard, and a limit that is itself computed', () => {
    const rule = {
      ...ruleOn('one', whenTest('off')),
      weigh: { kind: 'deviation', of: 'delayErrorMs', limit: 'limit.delayMs.clear', lowIsBad: false },
    } as const;
    expect(variablesOfRule(small('delay'), rule)).toEqual(['testTape', 'delayErrorMs']);
    const full = {
      ...rule,
      weigh: { ...rule.weigh, heard: 'sharedContent', limit: 'safeCrossoverHz' },
    } as const;
    expect(variablesOfRule(small('delay'), full)).toEqual([
      'testTape',
      'delayErrorMs',
      'sharedContent',
      'safeCrossoverHz',
    ]);
  });
});

describe('the index', () => {
  const tape = small('delay');
  const lift = small('level', {
    rules: [
      ruleOn('lift', is('testLift', 'improves')),
      ruleOn('both', all(is('testTilt', 'clearer'), is('testLift', 'same'))),
    ],
  });
  const too = small('aim', { rules: [ruleOn('again', is('testTilt', 'clearer'))] });
  it('names the rules that a fact can move by their place, those with the fact behind computed ones too', () => {
    const computed = small('timbre', { rules: [ruleOn('one', atLeast('delayErrorMs', 'delayMs'))] });
    const { rulesOf } = ruleIndex([lift, computed, too]);
    expect(rulesOf.get('testLift')).toEqual(new Map([[0, [0, 1]]]));
    expect(rulesOf.get('testTilt')).toEqual(
      new Map([
        [0, [1]],
        [2, [0]],
      ]),
    );
    expect(rulesOf.get('tapedCenter')).toEqual(new Map([[1, [0]]]));
    expect(new Set([...rulesOf.keys()].filter((id) => rulesOf.get(id)?.has(1)))).toEqual(
      new Set(factsBehind('delayErrorMs')),
    );
  });
  it('names the causes that an answer can move, each once', () => {
    const { causesOf } = ruleIndex([tape, lift, too]);
    expect(Object.fromEntries(causesOf)).toEqual({ testTape: [0], testLift: [1], testTilt: [1, 2] });
  });
  it('names the facts that share a rule, a fact itself among them', () => {
    const { neighbors } = ruleIndex([tape, lift, too]);
    expect(Object.fromEntries([...neighbors].map(([id, set]) => [id, [...set].sort()]))).toEqual({
      testTape: ['testTape'],
      testLift: ['testLift', 'testTilt'],
      testTilt: ['testLift', 'testTilt'],
    });
  });
  it('is made once for one rule base', () => {
    const causes = [causeOf('delay')];
    expect(ruleIndex(causes)).toBe(ruleIndex(causes));
    expect(ruleIndex([...causes])).not.toBe(ruleIndex(causes));
  });
});
