/** Pages of rules, made up: what each asks, says and weighs follows from its data by hand. */
import { describe, expect, it } from 'vitest';
import { causePages, limitsOf, rulePage, rulePages, variableLink } from '../../../src/explain/pages/rules.js';
import { variableLabel } from '../../../src/explain/words.js';
import type { Cause, Rule } from '../../../src/rules/cause.js';
import { all, atLeast, is } from '../../../src/rules/condition.js';
import { CAUSES } from '../../../src/rules/index.js';
import { ruleOn, small, whenTest } from '../../reasoning/smallCauses.js';
import { late } from './lateRule.js';
import { labeled, linesUnder, linksUnder } from './sections.js';

const pageOfRule = (rule: Rule, changes: Partial<Cause> = {}) => rulePage(small('delay', changes), rule);

describe('the page of a rule', () => {
  it('says what it asks, of which systems, and what it says each way', () => {
    const told = labeled(pageOfRule({ ...late(), applies: is('centerCount', 'two') }));
    const label = variableLabel('delayErrorMs');
    expect(told.Asks).toBe(`Whether ${label} is at least 0.25 ms (clear grade).`);
    expect(told['Bears on']).toMatch(/^Systems where number of centers is “[^”]+”\.$/);
    expect([told['If yes'], told['If no'], told.Reason]).toEqual([
      `It is ‹${label}› late; ‹limit› is heard.`,
      `Only ‹${label}›.`,
      'Why.',
    ]);
    expect(labeled(pageOfRule(late()))['Bears on']).toBe('Every system the cause applies to.');
    expect(pageOfRule(late())).toMatchObject({ kind: 'rule', id: 'delay/late', title: 'Late' });
  });
  it('says how it counts beside its neighbors', () => {
    const group = (kin: 'same-quantity' | 'independent') =>
      labeled(pageOfRule(late(), { groups: { g: kin } })).Group;
    expect(group('same-quantity')).toBe('G, rules of one quantity: the most telling counts.');
    expect(group('independent')).toBe('G, independent of the others: it counts in full.');
    expect(labeled(pageOfRule(late(), { groups: {} })).Group).toContain('independent');
  });
  const weighs = (rule: Rule): string[] => linesUnder(pageOfRule(rule), 'How much it weighs');
  it('that weighs a number tells limit, formula, bound and what else has a say', () => {
    const [word, value, formula, caps] = weighs(late());
    expect(word).toMatch(/^In decibans, a measure of evidence: 10 make the odds ten times longer/);
    expect(value).toBe(`Value: ${variableLabel('delayErrorMs')}. Limit: 0.25 ms (clear grade).`);
    expect(formula).toBe(
      'weight = 20 log10(value / limit) decibans: 0 at the limit, 6 for each doubling, within 20.',
    );
    expect(caps).toMatch(/: measured 16\.9, read .+ 12\.8, from memory 9\.5, a guess 6\.0\.$/);
    expect(weighs(late('delayMs', { maxDb: 6 }))[2]).toMatch(/within 6\.$/);
    expect(weighs(late('delayMs', { maxDb: 60 }))[2]).toMatch(/within 20\.$/);
    expect(weighs(late('delayMs', { only: 'for', heard: 'sharedContent' }))[1]).toMatch(
      / The value is first multiplied by “.+”\. It only ever speaks for the cause\.$/,
    );
    const computed = weighs(late({ computed: 'layoutFailDeg', lowIsBad: true }));
    expect(computed[1]).toMatch(new RegExp(`Limit: “${variableLabel('layoutFailDeg').slice(0, 20)}.*”\\.$`));
    expect(computed[2]).toContain('20 log10(limit / value)');
  });
  it('that weighs an answer tells both chances, and both weights by how it was obtained', () => {
    const [, chances, measured, ...others] = weighs(ruleOn('a', whenTest('off')));
    expect(chances).toBe('Chance of this answer if the cause is true: 0.8; otherwise: 0.2 (our judgment).');
    // A measured answer is wrong once in fifty: (0.8 x 0.98 + 0.2 x 0.02) / (0.2 x 0.98 + 0.8 x 0.02) = 0.788 / 0.212.
    expect(measured).toBe('measured | +5.7 | −5.7');
    expect(
      weighs(
        ruleOn('a', whenTest('off'), {
          weigh: { kind: 'answer', tp: 0.8, fp: 0.2, tells: { yes: 'strong', no: 'hint' } },
        }),
      )[1],
    ).toMatch(
      /^Yes is strong for it: it seldom comes without the cause\. No is a hint against it: it comes twice as often without the cause\. Chance/,
    );
    // A guess once in five: 0.68 / 0.32.
    expect(others).toContain('a guess | +3.3 | −3.3');
    expect(weighs(ruleOn('a', whenTest('off'), { only: 'for' }))[2]).toBe('measured | +5.7 | 0');
    expect(weighs(ruleOn('a', whenTest('off'), { only: 'against' }))[2]).toBe('measured | 0 | −5.7');
  });
  it('links what it reads: questions, home tests, computed facts and thresholds, and its source', () => {
    const rule = { ...late(), applies: all(is('centerCount', 'two'), whenTest('off')) };
    expect(linksUnder(pageOfRule(rule), 'What it reads')).toEqual([
      'fact/centerCount',
      'test/testTape',
      'computed/delayErrorMs',
      'threshold/delayMs',
    ]);
    expect(linksUnder(pageOfRule(rule), 'Source')).toEqual(['source/time-image']);
    expect(variableLink('layoutDipDb')).toMatchObject({ text: variableLabel('layoutDipDb') });
  });
  it('finds the thresholds of gate, condition and weight, each once', () => {
    expect(limitsOf(late())).toEqual(['delayMs']);
    const gated = ruleOn('a', whenTest('off'), { applies: atLeast('layoutDipDb', 'dipDb') });
    expect(limitsOf(gated)).toEqual(['dipDb']);
    expect(limitsOf(ruleOn('a', whenTest('off')))).toEqual([]);
  });
});

describe('the pages', () => {
  it('are one for each cause and one for each rule', () => {
    expect(causePages().map(({ id }) => id)).toEqual(CAUSES.map(({ id }) => id));
    expect(rulePages().map(({ id }) => id)).toEqual(
      CAUSES.flatMap((cause) => cause.rules.map((rule) => `${cause.id}/${rule.id}`)),
    );
  });
});
