/**
 * What the causes and rules that matter say in each shipped case, and each rule in the examples of its own test, in
 * decibans: kept so that no change of a weight goes unseen. One file a case and one a cause, with what stands in play there
 * alone: a new cause brings its own file and enters those of others only where it really has a say.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { ShippedCase } from '../../eval/load-cases.js';
import { allEvidence, auditSync } from '../../src/reasoning/audit.js';
import type { Ranked } from '../../src/reasoning/rank.js';
import type { Evidence } from '../../src/rules/evidence.js';
import { CAUSES } from '../../src/rules/index.js';
import { weightsOf } from './causeClaims.js';
import { recordedTests } from './testCause.js';

/** A possible cause, and more: it is in play in a case; so is one that the case names. */
const IN_PLAY = 0.2;

export interface CaseGolden {
  /** Decibans of the causes in play, most probable first. */
  readonly causes: Readonly<Record<string, number>>;
  /** Decibans of their rules that speak. */
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

export function goldenOf({ book, expect }: ShippedCase): CaseGolden {
  const audit = auditSync(book);
  const named = [...(expect.top ?? []), ...(expect.ruledOut ?? []), ...(expect.separates ?? [])];
  const inPlay = audit.ranking.causes.filter(
    ({ cause, probability }) => probability >= IN_PLAY || named.includes(cause),
  );
  const theirs = allEvidence(audit).filter(({ cause }) => inPlay.some((each) => each.cause === cause));
  return { causes: causeLines(inPlay), rules: ruleLines(theirs) };
}

/** Cause -> rule -> decibans in each example of its test. */
export async function goldenExamples(): Promise<Record<string, Readonly<Record<string, readonly number[]>>>> {
  const heard = await recordedTests(CAUSES.map(({ id }) => id));
  return Object.fromEntries(
    CAUSES.flatMap((cause) => {
      const tests = heard.get(cause.id);
      return tests ? [[cause.id, weightsOf(tests)(cause)]] : [];
    }),
  );
}

const FOLDER = join(import.meta.dirname, '../golden/evidence');
export type Shelf = 'cases' | 'causes';

export const goldenNames = (shelf: Shelf): string[] =>
  readdirSync(join(FOLDER, shelf)).map((file) => basename(file, '.json'));

export const readGolden = (shelf: Shelf, name: string): unknown =>
  JSON.parse(readFileSync(join(FOLDER, shelf, `${name}.json`), 'utf8'));

/** One line a weight, so that a difference shows what changed. Files of what is gone go as well. */
export function writeGolden(shelf: Shelf, golden: Readonly<Record<string, object>>): void {
  rmSync(join(FOLDER, shelf), { recursive: true, force: true });
  mkdirSync(join(FOLDER, shelf), { recursive: true });
  for (const [name, content] of Object.entries(golden)) {
    const text = JSON.stringify(content, (_, value) => (isNumbers(value) ? value.join(' ') : value), 1);
    writeFileSync(join(FOLDER, shelf, `${name}.json`), `${text}\n`);
  }
}

/** As it reads back from its file. */
export const asKept = (content: object): unknown =>
  JSON.parse(JSON.stringify(content, (_, value) => (isNumbers(value) ? value.join(' ') : value)));

const isNumbers = (value: unknown): value is number[] =>
  Array.isArray(value) && value.every((each) => typeof each === 'number');
