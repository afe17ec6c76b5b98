/**
 * The tester of causes: each rule must fire somewhere, stay silent somewhere, say what would settle it
 * somewhere, and (a computed deviation) turn exactly at its threshold.
 */
import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/facts/case-file.js';
import { auditSync } from '../../src/reasoning/audit.js';
import type { Cause } from '../../src/rules/cause.js';
import { type CauseTests, claimsOf, gapsOf } from './causeClaims.js';

/** Where the mutator of rules hears of the claims: it reads the same files, without a test runner. */
export interface Recorder {
  onlyHeard?: true;
}

/** All that was told here: a file that ran as a test before, in the same worker, is not read again. */
const HEARD = new Map<string, CauseTests>();

/** The claims of some causes, heard from their test files. */
export async function recordedTests(ids: readonly string[]): Promise<ReadonlyMap<string, CauseTests>> {
  const recorder = globalThis as Recorder;
  recorder.onlyHeard = true;
  for (const id of ids) await import(new URL(`../rules/${id}.test.ts`, import.meta.url).href);
  delete recorder.onlyHeard;
  return HEARD;
}

export function testCause(cause: Cause, tests: CauseTests): void {
  HEARD.set(cause.id, tests);
  if ((globalThis as Recorder).onlyHeard) return;
  describe(cause.id, () => {
    for (const { name, check } of claimsOf(tests))
      it(name, () => {
        const { got, wanted } = check(cause);
        expect(got).toEqual(wanted);
      });
    const ranked = (complaints: readonly string[], facts: object) =>
      auditSync(readCase(JSON.stringify({ units: 'metric', complaints, facts })).book).ranking.causes;
    it.each(tests.firstPosts)('is first after a post: $complaints $facts', ({ complaints, facts }) => {
      expect(ranked(complaints, facts)[0]?.cause).toBe(cause.id);
    });
    it.each(tests.firstPosts)('is less probable without these answers: $complaints $facts', (post) => {
      const at = (facts: object): number =>
        ranked(post.complaints, facts).find((each) => each.cause === cause.id)?.decibans ?? 0;
      expect(at({})).toBeLessThan(at(post.facts));
    });
    it('every rule fires, stays silent, cannot tell, and every deviation has a threshold test', () => {
      for (const [gap, rules] of Object.entries(gapsOf(cause, tests))) expect(rules, gap).toEqual([]);
    });
  });
}
