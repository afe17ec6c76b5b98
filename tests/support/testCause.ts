/**
 * The tester of causes: each rule must fire somewhere, stay silent somewhere, say what would settle it
 * somewhere, and (a computed deviation) turn exactly at its threshold.
 */
import { describe, expect, it } from 'vitest';
import type { Cause } from '../../src/rules/cause.js';
import { type CauseTests, claimsOf, gapsOf } from './causeClaims.js';

/** Where the mutator of rules hears of the claims: it reads the same files, without a test runner. */
export interface Recorder {
  causeTests?: (cause: Cause, tests: CauseTests) => void;
}

/** The claims of some causes, heard from their test files. */
export async function recordedTests(ids: readonly string[]): Promise<Map<string, CauseTests>> {
  const heard = new Map<string, CauseTests>();
  const recorder = globalThis as Recorder;
  recorder.causeTests = (cause, tests) => void heard.set(cause.id, tests);
  for (const id of ids) await import(new URL(`../rules/${id}.test.ts`, import.meta.url).href);
  delete recorder.causeTests;
  return heard;
}

export function testCause(cause: Cause, tests: CauseTests): void {
  const { causeTests } = globalThis as Recorder;
  if (causeTests) {
    causeTests(cause, tests);
    return;
  }
  describe(cause.id, () => {
    for (const { name, check } of claimsOf(tests))
      it(name, () => {
        const { got, wanted } = check(cause);
        expect(got).toEqual(wanted);
      });
    it('every rule fires, stays silent, cannot tell, and every deviation has a threshold test', () => {
      for (const [gap, rules] of Object.entries(gapsOf(cause, tests))) expect(rules, gap).toEqual([]);
    });
  });
}
