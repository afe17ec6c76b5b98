/**
 * What each rule and each cause says in each shipped case, and each rule in the examples of its own test, in
 * decibans: kept as a file so that no change of a weight goes unseen.
 */
import type { ShippedCase } from '../../eval/load-cases.js';
import { allEvidence, auditSync } from '../../src/reasoning/audit.js';
import type { Ranked } from '../../src/reasoning/rank.js';
import type { Evidence } from '../../src/rules/evidence.js';
import { CAUSES } from '../../src/rules/index.js';
import { weightsOf } from './causeClaims.js';
import { recordedTests } from './testCause.js';

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

/** Cause -> rule -> decibans in each example of its test. */
export type GoldenExamples = Readonly<Record<string, Readonly<Record<string, readonly number[]>>>>;

export async function goldenExamples(): Promise<GoldenExamples> {
  const heard = await recordedTests(CAUSES.map(({ id }) => id));
  return Object.fromEntries(
    CAUSES.flatMap((cause) => {
      const tests = heard.get(cause.id);
      return tests ? [[cause.id, weightsOf(tests)(cause)]] : [];
    }),
  );
}

export interface Golden {
  readonly cases: Readonly<Record<string, CaseGolden>>;
  readonly examples: GoldenExamples;
}

/** Two levels open and the rest on one line each, so that a difference shows what changed. */
export function goldenText(golden: Golden): string {
  const block = (table: object, depth: number): string => {
    const pad = ' '.repeat(depth);
    const lines = Object.entries(table).map(
      ([key, value]) =>
        `${pad} ${JSON.stringify(key)}: ${depth < 2 ? block(value, depth + 1) : JSON.stringify(value)}`,
    );
    return `{\n${lines.join(',\n')}\n${pad}}`;
  };
  return `${block(golden, 0)}\n`;
}
