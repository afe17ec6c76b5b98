/** Causes small enough for a head: one or two rules about home tests, so that every number follows by hand. */
import type { FactBook } from '../../src/facts/book.js';
import type { Choice } from '../../src/facts/catalog.js';
import type { Audit } from '../../src/reasoning/audit.js';
import { auditSync } from '../../src/reasoning/audit.js';
import type { Cause, Remedy, Rule } from '../../src/rules/cause.js';
import type { CauseId } from '../../src/rules/cause-ids.js';
import { type Condition, is } from '../../src/rules/condition.js';
import { causeOf } from '../../src/rules/index.js';
import type { AnswerWeight } from '../../src/rules/strength.js';
import { bookOf, type TestFacts } from '../support/causeClaims.js';

const WORDS = { group: 'g', says: { yes: 'yes', no: 'no' }, because: 'why' } as const;

/** A rule with chances 0.8 and 0.2 unless told otherwise. */
export const ruleOn = (
  id: string,
  when: Condition,
  { tp = 0.8, fp = 0.2, only, ...changes }: Partial<Rule> & Partial<AnswerWeight> = {},
): Rule => ({
  ...WORDS,
  id,
  source: causeOf('delay').rules[0].source,
  when,
  weigh: { kind: 'answer', tp, fp, ...(only ? { only } : {}) },
  ...changes,
});
export const whenTest = (value: Choice<'testTape'>): Condition => is('testTape', value);

/** Free, ten minutes, a half chance of a cure, no condition. */
export const mend = (id: string, changes: Partial<Remedy> = {}): Remedy => {
  const { when: _, act: __, forbiddenBy: ___, seen: ____, ...first } = causeOf('delay').remedies[0];
  return { ...first, id, minutes: 10, cost: 'free', cures: 0.5, changes: [], ...changes };
};

/** A cause at even odds with one rule about the tape check, no complaint, no test and a remedy of its own. */
export const small = (id: CauseId, changes: Partial<Cause> = {}): Cause => {
  const { applies: _, appliesIn: __, acts: ___, ...bare } = causeOf(id);
  return {
    ...bare,
    priorDb: 0,
    priorBecause: 'Made up.',
    links: {},
    groups: { g: 'independent' },
    rules: [ruleOn('one', whenTest('off'))],
    confirm: [] as never,
    remedies: [mend(`mend-${id}`)],
    ...changes,
  };
};

/** An audit of some facts against small causes; weights count in full unless a temperature is told. */
export const auditOf = (
  causes: readonly Cause[],
  facts: TestFacts = {},
  { temperature = 1, ...book }: Partial<FactBook> & { readonly temperature?: number } = {},
): Audit => auditSync({ ...bookOf(facts), ...book }, undefined, { causes, temperature });
