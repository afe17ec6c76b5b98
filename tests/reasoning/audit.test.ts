import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withAnswer } from '../../src/facts/book.js';
import { allEvidence, audit, auditSync } from '../../src/reasoning/audit.js';
import { complaintShares } from '../../src/reasoning/complaint-shares.js';
import { anyAnswer, anyBook } from './books.js';

const RUNS = { numRuns: 40 };
const digest = (a: ReturnType<typeof auditSync>) => ({
  leader: a.ranking.leader,
  undecided: a.ranking.undecided,
  causes: a.ranking.causes.map((c) => [c.cause, c.verdict, c.decibans.toFixed(9)]),
  evidence: allEvidence(a).map((e) => [e.cause, e.rule, e.outcome, e.decibans.toFixed(9), e.open.join()]),
});

describe('an audit', () => {
  it('is the same through json-rules-engine and through the compiled evaluator', async () => {
    await fc.assert(
      fc.asyncProperty(anyBook, async (book) => {
        expect(digest(await audit(book))).toEqual(digest(auditSync(book)));
      }),
      { numRuns: 15 },
    );
  });
  it('taken over from an earlier audit equals one from scratch', () => {
    fc.assert(
      fc.property(anyBook, fc.array(anyAnswer, { minLength: 1, maxLength: 3 }), (book, changes) => {
        const after = changes.reduce((b, { id, answer }) => withAnswer(b, id, answer), book);
        expect(digest(auditSync(after, auditSync(book)))).toEqual(digest(auditSync(after)));
      }),
      RUNS,
    );
  });
  it('every balance sheet adds up: prior, groups and shared complaints make the total', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        for (const c of auditSync(book).ranking.causes) {
          const sum = c.groups.reduce((s, line) => s + line.decibans, c.priorDb) + c.sharedDb;
          expect(Math.abs(sum - c.decibans)).toBeLessThan(1e-9);
          expect(Number.isFinite(c.decibans)).toBe(true);
          expect(c.probability).toBeLessThanOrEqual(0.99);
        }
      }),
      RUNS,
    );
  });
  it('lists every cause once, most probable first', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { causes, ranking } = auditSync(book);
        expect(new Set(ranking.causes.map((c) => c.cause)).size).toBe(causes.length);
        // Level within a billionth: there the order is the contract's.
        const db = ranking.causes.map((c) => Math.round(c.decibans * 1e9));
        expect(db).toEqual([...db].sort((a, b) => b - a));
      }),
      RUNS,
    );
  });
  it('keeps the verdict words to the cut-offs of the contract', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const a = auditSync(book);
        for (const c of a.ranking.causes) {
          const outcomes = (a.byCause.get(c.cause) ?? []).map((e) => e.outcome);
          const bearing = outcomes.filter((o) => o !== 'not-applicable');
          if (c.verdict === 'likely') expect(c.probability).toBeGreaterThanOrEqual(0.7);
          if (c.verdict === 'possible') expect(c.probability).toBeGreaterThanOrEqual(0.2);
          if (c.verdict === 'unlikely') expect(c.probability).toBeLessThan(0.2);
          if (c.verdict === 'ruled-out') {
            expect(c.probability).toBeLessThan(0.02);
            expect(bearing).not.toContain('unknown');
          }
          if (c.verdict === 'cannot-tell') expect(bearing.every((o) => o === 'unknown')).toBe(true);
          if (c.verdict === 'not-applicable') expect(bearing).toEqual([]);
        }
      }),
      RUNS,
    );
  });
  it('is undecided exactly when the leader is improbable, closely followed, or without evidence of its own', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { ranking } = auditSync(book);
        const [leader] = ranking.causes;
        const strongest = Math.max(
          0,
          ...(leader?.groups ?? []).flatMap((g) => g.evidence.map((e) => e.decibans)),
        );
        expect(ranking.undecided).toBe(
          (leader?.probability ?? 0) < 0.5 || ranking.leadDb < 5 || strongest / ranking.temperature < 5,
        );
        expect(ranking.contenders[0]).toBe(ranking.leader);
        if (ranking.undecided) expect(ranking.contenders.length).toBeGreaterThanOrEqual(2);
        else expect(ranking.contenders).toHaveLength(1);
      }),
      RUNS,
    );
  });
});

describe('shared complaints', () => {
  it('say how likely it is that nothing listed explains them', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const a = auditSync(book);
        const complaints = { present: book.complaints, absent: book.absentComplaints };
        for (const share of complaintShares(a.causes, a.own, complaints)) {
          if (!share.present) expect(share.leakShare).toBeUndefined();
          else {
            expect(share.leakShare).toBeGreaterThanOrEqual(0);
            expect(share.leakShare).toBeLessThanOrEqual(1);
          }
        }
      }),
      RUNS,
    );
  });
  it('an absent complaint never raises a cause', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const a = auditSync(book);
        const complaints = { present: [], absent: book.absentComplaints };
        for (const share of complaintShares(a.causes, a.own, complaints))
          for (const change of share.changeDb.values()) expect(change).toBeLessThanOrEqual(1e-9);
      }),
      RUNS,
    );
  });
});
