/** What each rule and each cause says in each shipped case, in decibans: kept as a file so that no change goes unseen. */
import type { ShippedCase } from '../../eval/load-cases.js';
import { allEvidence, auditSync } from '../../src/reasoning/audit.js';
import type { Ranked } from '../../src/reasoning/rank.js';
import type { Evidence } from '../../src/rules/evidence.js';

export interface CaseGolden {
  /** Decibans of the causes, most probable first. */
  readonly causes: Readonly<Record<string, number>>;
  /** Decibans of the rules that speak. */
  readonly rules: Readonly<Record<string, number>>;
}

/** To a tenth of a decibel, and never minus zero. */
const rounded = (decibans: number): number => Math.round(decibans * 10) / 10 + 0;

export const causeLines = (causes: readonly Ranked[]): Record<string, number> =>
  Object.fromEntries(causes.map(({ cause, decibans }) => [cause, rounded(decibans)]));

export const ruleLines = (evidence: readonly Evidence[]): Record<string, number> =>
  Object.fromEntries(
    evidence
      .filter(({ decibans }) => rounded(decibans) !== 0)
      .map(({ cause, rule, decibans }) => [`${cause}/${rule}`, rounded(decibans)]),
  );

export function goldenOf(cases: readonly ShippedCase[]): Record<string, CaseGolden> {
  return Object.fromEntries(
    cases.map(({ name, book }) => {
      const audit = auditSync(book);
      return [name, { causes: causeLines(audit.ranking.causes), rules: ruleLines(allEvidence(audit)) }];
    }),
  );
}

/** One line for each case and table, so that a difference shows which case changed. */
export function goldenText(golden: Readonly<Record<string, CaseGolden>>): string {
  const cases = Object.entries(golden).map(
    ([name, { causes, rules }]) =>
      ` ${JSON.stringify(name)}: {\n  "causes": ${JSON.stringify(causes)},\n  "rules": ${JSON.stringify(rules)}\n }`,
  );
  return `{\n${cases.join(',\n')}\n}\n`;
}
