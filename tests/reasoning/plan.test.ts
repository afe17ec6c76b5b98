import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { isSure } from '../../src/reasoning/next.js';
import { isFree, plan } from '../../src/reasoning/plan.js';
import { outdatedAnswers, remedyId, trialsDb, withTrial } from '../../src/reasoning/trials.js';
import type { Remedy } from '../../src/rules/cause.js';
import { causeOf } from '../../src/rules/index.js';
import { inVain } from '../support/trials.js';
import { anyBook } from './books.js';

const SURE = [
  'screen-loss-new-screen',
  'aim-steep-stand',
  'blocked-path-second-row',
  'demo',
  'polarity-crossed-cable',
  'twin-centers-side-by-side',
] as const;
const RUNS = { numRuns: 8 };
const remedyOf = (step: { cause: Parameters<typeof causeOf>[0]; id: string }) =>
  causeOf(step.cause).remedies.find((r) => r.id === step.id);

describe('a plan', () => {
  it('puts everything free and reversible before anything bought or final', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const costly = plan(auditSync(book)).steps.map((step) => {
          const remedy = step.kind === 'remedy' ? remedyOf(step) : undefined;
          return remedy !== undefined && !isFree(remedy);
        });
        const first = costly.indexOf(true);
        if (first >= 0) expect(costly.slice(first)).not.toContain(false);
      }),
      RUNS,
    );
  });
  it('names real steps, each once, and never a test that is done', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { steps } = plan(auditSync(book));
        expect(new Set(steps.map((s) => `${s.kind} ${s.id}`)).size).toBe(steps.length);
        for (const step of steps) {
          if (step.kind === 'remedy') expect(remedyOf(step)).toBeDefined();
          else expect(book.answers.has(step.id as never)).toBe(false);
          expect(step.minutes).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });
  it('sets nobody to work for a cause of which nothing is known beyond how common it is', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        const idle = audit.ranking.causes.filter(
          (r) => r.cause !== audit.ranking.leader && (r.verdict === 'cannot-tell' || r.probability < 0.1),
        );
        const treated = plan(audit).steps.filter((s) => s.kind === 'remedy');
        expect(treated.filter((s) => idle.some((r) => r.cause === s.cause))).toEqual([]);
      }),
      RUNS,
    );
  });
  it('begins with what mends the trouble once it is sure, and tests only before something is bought', () => {
    const sure = SURE.map((name) =>
      auditSync(readCase(readFileSync(`cases/${name}.json`, 'utf8')).book),
    ).filter(isSure);
    expect(sure.length).toBe(SURE.length);
    for (const audit of sure) {
      const own = plan(audit).steps.filter(({ cause }) => cause === audit.ranking.leader);
      const bought = own.findIndex((step) => step.kind === 'remedy' && !isFree(remedyOf(step) as Remedy));
      const test = own.findIndex(({ kind }) => kind === 'test');
      if (test >= 0) expect(bought).toBe(test + 1);
      if (own.some(({ kind, ...step }) => kind === 'remedy' && isFree(remedyOf(step) as Remedy)))
        expect(own[0]?.kind).toBe('remedy');
    }
  });
  it('is expected to take no longer than a checklist or the cheapest check first', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { minutes, checklistMinutes, cheapestFirstMinutes } = plan(auditSync(book));
        expect(minutes).toBeLessThanOrEqual(checklistMinutes + 1e-9);
        expect(minutes).toBeLessThanOrEqual(cheapestFirstMinutes + 1e-9);
      }),
      RUNS,
    );
  });
});

describe('a remedy that was tried and did not help', () => {
  const book: FactBook = {
    ...EMPTY_BOOK,
    complaints: ['hollow'],
    answers: new Map([
      ['testTape', { value: 'off', how: 'measured' }],
      ['testPhantom', { value: 'gone', how: 'measured' }],
      ['centerFamily', { value: 'identical-box', how: 'read' }],
    ]),
  };
  const cause = causeOf('delay');
  const remedy = cause.remedies.find((r) => r.changes.includes('testTape'));
  if (!remedy) throw new Error('the cause has no remedy that changes the tape check');
  const trial = { act: remedyId(cause, remedy), outcome: 'same', stays: true } as const;
  const after = withTrial(book, trial, [cause]);

  it('is not proposed again', () => {
    const steps = plan(auditSync(after)).steps.filter((s) => s.cause === 'delay');
    expect(steps.map((s) => s.id)).not.toContain(remedy.id);
  });
  it('makes the answers it may have changed those of before, and no others', () => {
    expect(after.answers.has('testTape')).toBe(false);
    expect(after.before.get('testTape')).toEqual(book.answers.get('testTape'));
    expect(after.answers.has('centerFamily')).toBe(true);
  });
  it('speaks against its cause by the chance that it would have helped', () => {
    const audit = auditSync(after);
    const weight = trialsDb(after, cause, audit.causes);
    expect(weight).toBeLessThan(-3);
    const sheet = audit.ranking.causes.find((c) => c.cause === 'delay');
    expect(sheet?.groups.find((g) => g.group === 'trial')?.decibans).toBeCloseTo(
      weight / audit.ranking.temperature,
      9,
    );
  });
  it('in a saved case, lists the answers that may be out of date', () => {
    expect(outdatedAnswers({ ...book, trials: inVain(`delay/${remedy.id}`) }, [cause])).toContain('testTape');
    expect(outdatedAnswers(book, [cause])).toEqual([]);
  });
});
