import { describe, expect, it } from 'vitest';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { lint } from '../../src/reasoning/lint.js';
import { type Cause, confirmedBy, type Kinship, type Rule } from '../../src/rules/cause.js';
import { all, atLeast, type Condition, is } from '../../src/rules/condition.js';
import { CAUSES, causeOf } from '../../src/rules/index.js';
import { mend, ruleOn, small, whenTest } from './smallCauses.js';

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
      { confirm: [{ test: 'testCoverTweeter', outcomes: [] }] as never },
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
  it('a cause without a file, and one that is there twice', () => {
    expect(lint(CAUSES.slice(1))).toContainEqual({ where: CAUSES[0]?.id, what: 'no cause file' });
    expect(lint([...CAUSES, sound])).toEqual([{ where: 'delay', what: 'the cause is listed twice' }]);
  });
  it('a complaint that no cause can make', () => {
    const deaf = lint(CAUSES.map((cause) => ({ ...cause, links: {} })));
    expect(deaf.map((p) => p.where)).toEqual([...COMPLAINT_IDS]);
    const one = lint(CAUSES.map((cause) => (cause.id === 'delay' ? cause : { ...cause, links: {} })));
    expect(one.map((p) => p.where)).toEqual(
      COMPLAINT_IDS.filter((id) => !Object.keys(sound.links).includes(id)),
    );
  });
});

/** How many findings a change of a sound small cause brings, and where they are. */
const found = (change: Partial<Cause>): string[] =>
  lint([small('delay', { confirm: [confirmedBy('testTape', 'off')], ...change })])
    .filter(({ where }) => where.startsWith('delay'))
    .map(({ where, what }) => `${where}: ${what}`);
const rule = (change: Parameters<typeof ruleOn>[2] = {}): Partial<Cause> => ({
  rules: [ruleOn('one', whenTest('off'), change)],
});

describe('the check of one cause', () => {
  it('finds nothing in a sound one', () => {
    expect(found({})).toEqual([]);
  });
  it.each([
    ['a chance of nothing', { links: { hollow: 0 } }],
    ['a certain link', { links: { hollow: 1 } }],
    ['a group without a rule', { groups: { g: 'independent', h: 'independent' } }],
    ['a gate without its share', { applies: is('centerCount', 'two') }],
    ['a share without its gate', { appliesIn: 0.5 }],
    ['a share of nobody', { applies: is('centerCount', 'two'), appliesIn: 0 }],
    ['a share of everybody', { applies: is('centerCount', 'two'), appliesIn: 1 }],
    ['a cure that never works', { remedies: [mend('x', { cures: 0 })] }],
    ['a cure that always works', { remedies: [mend('x', { cures: 1 })] }],
    ['a remedy listed twice', { remedies: [mend('x'), mend('x')] }],
    ['what is bought before what is free', { remedies: [mend('x', { cost: 'low' }), mend('y')] }],
    ['what is final before what is not', { remedies: [mend('x', { final: true }), mend('y')] }],
    ['a test that no rule reads', { confirm: [confirmedBy('testLift', 'improves')] }],
    ['a sure sign', rule({ tp: 1, fp: 0.2 })],
    ['a sign that is never there', rule({ tp: 0, fp: 0.2 })],
    ['a sign that never misleads', rule({ tp: 0.8, fp: 0 })],
    ['a sign that always misleads', rule({ tp: 0.8, fp: 1 })],
    ['a rule that can only raise it', rule({ only: 'for' })],
  ] as [string, Partial<Cause>][])('finds one thing: %s', (_, change) => {
    expect(found(change)).toHaveLength(1);
  });
  it.each([
    ['links and shares within reason', { links: { hollow: 0.01, echo: 0.99 } }],
    ['a gate with its share', { applies: is('centerCount', 'two'), appliesIn: 0.5 }],
    ['a prior on the grid', { priorDb: -9 }],
    [
      'what is free before what is bought',
      { remedies: [mend('x'), mend('y', { cost: 'low' }), mend('z', { cost: 'low' })] },
    ],
    ['a rule that only lowers it', rule({ only: 'against' })],
    ['a sign against it that only raises it when absent', rule({ tp: 0.2, fp: 0.8 })],
  ] as [string, Partial<Cause>][])('finds nothing: %s', (_, change) => {
    expect(found(change)).toEqual([]);
  });
  it('asks for both chances of a sign to differ: such a sign says nothing', () => {
    expect(found(rule({ tp: 0.5, fp: 0.5 }))).toHaveLength(2);
  });
  it('looks at the one side from which a rule speaks', () => {
    // Absent, a sign that is commoner without the cause speaks for it; given, against it.
    expect(found(rule({ tp: 0.2, fp: 0.8, only: 'for' }))).toEqual([]);
    expect(found(rule({ tp: 0.2, fp: 0.8, only: 'against' }))).toHaveLength(1);
  });
  it('finds rules of one name', () => {
    const again = [ruleOn('one', whenTest('off')), ruleOn('one', is('testLift', 'same'))] as const;
    expect(found({ rules: again })).toEqual(['delay/one: used twice']);
  });
  it('names the remedy that comes too late, and only that', () => {
    const remedies = [
      mend('x'),
      mend('y', { cost: 'low' }),
      mend('z'),
      mend('last', { cost: 'high' }),
    ] as const;
    expect(found({ remedies }).map((f) => f.split(':')[0])).toEqual(['delay/z']);
  });
});

describe('the bound of a deviation', () => {
  const bounded = (maxDb: number | undefined) => {
    const first = ruleOn('one', all(whenTest('off'), atLeast('delayErrorMs', 'delayMs')));
    const weigh = {
      kind: 'deviation',
      of: 'delayErrorMs',
      limit: 'limit.delayMs.clear',
      lowIsBad: false,
      ...(maxDb === undefined ? {} : { maxDb }),
    } as const;
    return found({ rules: [{ ...first, weigh }] });
  };
  it('is above nothing and at most twenty decibans', () => {
    expect([undefined, 20, 0.1].map((db) => bounded(db).length)).toEqual([0, 0, 0]);
    expect([0, -3, 20.1].map((db) => bounded(db).length)).toEqual([1, 1, 1]);
  });
});

describe('one quantity scored by two rules of a cause', () => {
  const [tape, lift] = [whenTest('off'), is('testLift', 'same')];
  const pair = (
    kinship: Kinship,
    groups: readonly [string, string],
    whens: readonly [Condition, Condition],
  ) =>
    found({
      groups: Object.fromEntries(groups.map((group) => [group, kinship])),
      rules: whens.map((when, i) => ruleOn(`r${i}`, when, { group: groups[i] ?? '' })) as never,
    });
  it('counts once within a group of the same quantity, twice anywhere else', () => {
    expect(pair('same-quantity', ['g', 'g'], [tape, tape])).toEqual([]);
    expect(pair('same-quantity', ['g', 'h'], [tape, tape])).toHaveLength(1);
    expect(pair('same-mechanism', ['g', 'g'], [tape, tape])).toHaveLength(1);
    expect(pair('independent', ['g', 'g'], [tape, lift])).toEqual([]);
    expect(pair('independent', ['g', 'g'], [all(tape, lift), lift])[0]).toContain(
      'delay/r0 and r1: testLift',
    );
  });
  it('is found behind a computed one, whichever rule comes first', () => {
    const computed = all(tape, atLeast('delayErrorMs', 'delayMs'));
    const input = is('entryKind', 'delays');
    for (const whens of [[computed, input] as const, [input, computed] as const]) {
      const problems = pair('independent', ['g', 'g'], whens);
      expect(problems).toHaveLength(1);
      expect(problems[0]).toContain('delayErrorMs is scored together with its own input entryKind');
    }
    expect(pair('same-quantity', ['g', 'g'], [computed, input])).toEqual([]);
  });
});
