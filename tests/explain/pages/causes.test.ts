/** Pages of causes, made up: what each says follows from its data by hand. */
import { describe, expect, it } from 'vitest';
import { causePage } from '../../../src/explain/pages/rules.js';
import { capital, variableLabel } from '../../../src/explain/words.js';
import { factSpec } from '../../../src/facts/catalog.js';
import { COMPLAINTS } from '../../../src/facts/complaints.js';
import { type Cause, confirmedBy } from '../../../src/rules/cause.js';
import { CAUTIONS } from '../../../src/rules/cautions.js';
import { is } from '../../../src/rules/condition.js';
import { SOURCES } from '../../../src/rules/sources.js';
import { mend, ruleOn, small, whenTest } from '../../reasoning/smallCauses.js';
import { late } from './lateRule.js';
import { belowItems, headings, labeled, linesUnder, linksUnder } from './sections.js';

const page = (changes: Partial<Cause> = {}) => causePage(small('delay', changes));

describe('the page of a cause', () => {
  it('says how common and how bad it is, and when it is wrongly blamed', () => {
    const { title, notWhen } = small('delay');
    const told = labeled(page({ priorDb: -10, severity: 'clear' }));
    expect(page().title).toBe(capital(title));
    expect(told['Not when']).toBe(notWhen);
    expect(told['How common']).toBe('Before anything was told: unlikely, about 10% (our judgment). Made up.');
    expect(told['If true']).toMatch(/^Clear: .+\.$/);
  });
  it('says in which systems it can be, and in how many while nobody has told', () => {
    const two = is('centerCount', 'two');
    const where = (changes: Partial<Cause>) => labeled(page(changes)).Applies;
    expect(where({})).toBe('In every system.');
    expect(where({ applies: two })).toMatch(/^Only where number of centers is “[^”]+”\.$/);
    expect(where({ applies: two, appliesIn: 0.05 })).toMatch(
      /”\. While nobody has told, it counts as in 5% of systems \(our judgment\)\.$/,
    );
  });
  it('lists its complaints, the most frequent first', () => {
    const shown = page({ links: { hollow: 0.1, dull: 0.42 } });
    expect(linesUnder(shown, 'What the owner hears')).toEqual([
      `${capital(COMPLAINTS.dull.title)}: in about 42% of the systems that have it (our judgment).`,
      `${capital(COMPLAINTS.hollow.title)}: in about 10% of the systems that have it (our judgment).`,
    ]);
    expect(linksUnder(shown, 'What the owner hears')).toEqual(['complaint/dull', 'complaint/hollow']);
  });
  it('leaves out what it has none of, with its heading', () => {
    expect(headings(page())).toEqual(['What speaks for and against it', 'What to do', 'Sources']);
  });
  it('tells of each rule what it says when it holds, and why', () => {
    const shown = page({ rules: [late()] });
    const label = variableLabel('delayErrorMs');
    expect(linesUnder(shown, 'What speaks for and against it')).toEqual([
      `Late: It is ‹${label}› late; ‹limit› is heard.`,
    ]);
    expect(belowItems(shown, 'What speaks for and against it')).toEqual([['Why.']]);
    expect(linksUnder(shown, 'What speaks for and against it')).toEqual(['rule/delay/late']);
  });
  it('names the outcomes of a home test that confirm it', () => {
    const { label, ...spec } = factSpec('testTape');
    const choices = (spec.kind === 'choice' ? spec.choices : {}) as Record<string, string>;
    const [line] = linesUnder(
      page({ confirm: [confirmedBy('testTape', 'off', 'wrong-unit')] }),
      'Tests that confirm it',
    );
    expect(line).toBe(
      `${capital(label)} (${spec.minutes} minutes): ${choices.off}, or ${choices['wrong-unit']}.`,
    );
  });
  it('has each remedy with its name, where it suits, cautions, steps, what to expect and how to check', () => {
    const remedy = mend('set', {
      when: is('centerCount', 'two'),
      cautions: ['laser', 'lifting'],
      steps: ['Do one.', 'Do {layoutDipDb}.'],
      expect: 'Better.',
      verify: 'Hear.',
    });
    const shown = page({ remedies: [remedy, mend('bare', { cautions: [], steps: ['Do.'] })] });
    expect(linesUnder(shown, 'What to do')[0]).toContain('"tried": ["delay/set"]');
    expect(linesUnder(shown, 'What to do')[1]).toMatch(/ \(10 minutes, free\)$/);
    const [first = [], second = []] = belowItems(shown, 'What to do');
    expect(first[0]).toBe('Name: delay/set');
    expect(first[1]).toMatch(/^Where number of centers is “[^”]+”\.$/);
    expect(first.slice(2)).toEqual([
      `Caution: ${CAUTIONS.laser}`,
      `Caution: ${CAUTIONS.lifting}`,
      `How: Do one. Do ‹${variableLabel('layoutDipDb')}›.`,
      'Puts it right sometimes: in about 50% of the systems that have it (our judgment).',
      'Expect: Better.',
      'Check: Hear.',
    ]);
    expect(second.map((line) => line.split(':')[0])).toEqual([
      'Name',
      'How',
      'Puts it right sometimes',
      'Expect',
      'Check',
    ]);
  });
  it('cites each source once, with its mark', () => {
    const rules = [
      late(),
      { ...late(), id: 'again' },
      ruleOn('other', whenTest('off'), { source: 'geometry' }),
    ] as const;
    const lines = linesUnder(page({ rules }), 'Sources');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(
      new RegExp(`^${capital(SOURCES['time-image'].cite).slice(0, 10)}.* \\[[a-z ,]+\\]\\.$`),
    );
    expect(linksUnder(page({ rules }), 'Sources')).toEqual(['source/time-image', 'source/geometry']);
  });
});
