/** Conditions of rules in words: every comparison, and brackets where groups of another kind meet. */
import { describe, expect, it } from 'vitest';
import { conditionText, limitWords, templateText } from '../../src/explain/pages/condition-words.js';
import { variableLabel } from '../../src/explain/words.js';
import { above, all, any, atLeast, atMost, below, is, isNot, not, oneOf } from '../../src/rules/condition.js';
import { LIMITS } from '../../src/rules/limits.js';

const dip = variableLabel('layoutDipDb');
const obstacle = variableLabel('obstacle');

describe('a condition in words', () => {
  it('tells each comparison by its own words', () => {
    const clear = `${LIMITS.dipDb.clear} dB (clear grade)`;
    expect(conditionText(atLeast('layoutDipDb', 'dipDb'))).toBe(`${dip} is at least ${clear}`);
    expect(conditionText(above('layoutDipDb', 'dipDb'))).toBe(`${dip} is above ${clear}`);
    expect(conditionText(atMost('layoutDipDb', 'dipDb'))).toBe(`${dip} is at most ${clear}`);
    expect(conditionText(below('layoutDipDb', 'dipDb'))).toBe(`${dip} is below ${clear}`);
    expect(conditionText(is('obstacle', 'none'))).toBe(`${obstacle} is “clear view”`);
    expect(conditionText(isNot('obstacle', 'none'))).toBe(`${obstacle} is not “clear view”`);
    expect(conditionText(oneOf('onset', 'sudden', 'gradual'))).toMatch(/ is one of “[^”]+”, “[^”]+”$/);
  });
  it('joins parts, and brackets a group within a group', () => {
    const [a, b, c] = [is('obstacle', 'none'), isNot('obstacle', 'table'), is('onset', 'sudden')];
    const [x, y, z] = [a, b, c].map((part) => conditionText(part));
    expect(conditionText(all(a, b))).toBe(`${x} and ${y}`);
    expect(conditionText(any(a, b))).toBe(`${x} or ${y}`);
    expect(conditionText(all(a, any(b, c)))).toBe(`${x} and (${y} or ${z})`);
    expect(conditionText(not(all(a, b)))).toBe(`not (${x} and ${y})`);
    expect(conditionText(any(not(a), b))).toBe(`not (${x}) or ${y}`);
  });
});

describe('limits and templates', () => {
  it('tell a limit with unit and grade, in the units of the owner', () => {
    expect(limitWords('limit.dipDb.clear', 'metric')).toBe(`${LIMITS.dipDb.clear} dB (clear grade)`);
    expect(limitWords('limit.dipDb.severe', 'imperial')).toBe(`${LIMITS.dipDb.severe} dB (severe grade)`);
  });
  it('tell what will stand in the braces of a sentence', () => {
    expect(templateText('A dip of {layoutDipDb}; {limit} is clear.')).toBe(
      `A dip of ‹${dip}›; ‹limit› is clear.`,
    );
    expect(templateText('No braces.')).toBe('No braces.');
  });
});
