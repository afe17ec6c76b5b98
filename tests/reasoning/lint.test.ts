import { describe, expect, it } from 'vitest';
import { lint } from '../../src/reasoning/lint.js';
import type { Cause, Rule } from '../../src/rules/cause.js';
import { CAUSES, causeOf } from '../../src/rules/index.js';

const sound = causeOf('delay');
const first = sound.rules[0];
const problemsOf = (change: Partial<Cause>): string[] =>
  lint(CAUSES.map((cause) => (cause.id === 'delay' ? { ...cause, ...change } : cause)))
    .filter((p) => p.where.startsWith('delay'))
    .map((p) => p.what);
const withRule = (rule: Partial<Rule>): Partial<Cause> => ({
  rules: [{ ...first, ...rule } as Rule, ...sound.rules.slice(1)],
});

describe('the rule base', () => {
  it('is sound: nothing counted twice, every cause can be confirmed and lowered, every weight within its cap', () => {
    expect(lint(CAUSES)).toEqual([]);
  });
});

describe('the check notices', () => {
  it('a quantity scored twice outside one group of the same quantity', () => {
    const twice = { ...first, id: 'again', group: 'where' } as Rule;
    expect(problemsOf({ rules: [...sound.rules, twice] as Cause['rules'] }).join()).toContain('scored twice');
  });
  it('a computed fact scored together with its own input', () => {
    const input: Rule = {
      ...first,
      id: 'input',
      group: 'where',
      when: { fact: 'upmixUse', operator: 'equal', value: 'on' },
      weigh: { kind: 'answer', tp: 0.6, fp: 0.3 },
    };
    const shared: Rule = {
      ...input,
      id: 'computed',
      group: 'origin',
      when: { fact: 'extraction', operator: 'lessThan', value: { fact: 'sharedContent' } },
    };
    expect(problemsOf({ rules: [...sound.rules, input, shared] as Cause['rules'] }).join()).toContain(
      'its own input',
    );
  });
  it.each([
    ['an unknown source', withRule({ source: 'hearsay' as never }), 'unknown source'],
    ['a group that does not exist', withRule({ group: 'elsewhere' }), 'unknown group'],
    ['a missing reason', withRule({ because: ' ' }), 'no reason'],
    [
      'a bound above the general cap',
      withRule({ weigh: { ...first.weigh, maxDb: 30 } as Rule['weigh'] }),
      'not within 20 dB',
    ],
    ['chances that are no chances', withRule({ weigh: { kind: 'answer', tp: 1, fp: 0 } }), 'tp and fp'],
    ['a prior off the grid', { priorDb: -8 }, 'off the 3 dB grid'],
    ['a gate share without a gate', { appliesIn: 0.5 }, 'go together'],
    ['a link that is certain', { links: { hollow: 1 } }, 'not between 0 and 1'],
    [
      'a confirming test that no rule reads',
      { confirm: [{ test: 'testSwapSeats', outcomes: [] }] as never },
      'no rule reads it',
    ],
    [
      'a cause that nothing can lower',
      { rules: [{ ...first, weigh: { ...first.weigh, only: 'for' } }] as never },
      'speak against',
    ],
  ] as const)('%s', (_, change, words) => {
    expect(problemsOf(change as Partial<Cause>).join('; ')).toContain(words);
  });
  it('a cause without a file', () => {
    expect(lint(CAUSES.slice(1)).map((p) => p.what)).toContain('no cause file');
  });
});
