/** What one complaint changes is what the audit without it says otherwise. */
import { describe, expect, it } from 'vitest';
import type { FactBook } from '../../src/facts/book.js';
import { auditSync, complaintsOf } from '../../src/reasoning/audit.js';
import { complaintShares } from '../../src/reasoning/complaint-shares.js';
import { bookOf } from '../support/causeClaims.js';

const book: FactBook = {
  ...bookOf({ centerCount: 'one', testTape: 'off', playedContent: 'two-channel-music' }),
  complaints: ['hollow', 'no-middle', 'dull'],
  absentComplaints: ['echo', 'boomy'],
};
const audit = auditSync(book);
/** Made within each test: mutants are awake only there. */
const shares = () => complaintShares(audit.causes, audit.own, complaintsOf(book));

describe('a complaint', () => {
  it('stands in the list once: those that are heard, then those that are not', () => {
    expect(shares().map(({ id, present }) => [id, present])).toEqual([
      ['hollow', true],
      ['no-middle', true],
      ['dull', true],
      ['echo', false],
      ['boomy', false],
    ]);
  });
  it('changes each cause by what an audit without it says otherwise', () => {
    for (const { id, changeDb } of shares()) {
      const without = auditSync({
        ...book,
        complaints: book.complaints.filter((other) => other !== id),
        absentComplaints: book.absentComplaints.filter((other) => other !== id),
      });
      for (const { cause, sharedDb, applies } of audit.ranking.causes) {
        const other = without.ranking.causes.find((r) => r.cause === cause);
        expect(changeDb.get(cause), `${id} ${cause}`).toBeCloseTo(
          applies ? sharedDb - (other?.sharedDb ?? 0) : 0,
          9,
        );
      }
    }
  });
  it('that is heard raises some cause, one that is not heard lowers some', () => {
    for (const { present, changeDb } of shares()) {
      const values = [...changeDb.values()];
      if (present) expect(Math.max(...values)).toBeGreaterThan(0.5);
      else expect(Math.min(...values)).toBeLessThan(-0.05);
    }
  });
  it('is left to nothing listed the less, the more a cause that makes it is believed', () => {
    const believed = auditSync({
      ...book,
      answers: new Map([...book.answers, ['testPhantom', { value: 'gone', how: 'measured' }]]),
    });
    const leak = (a: typeof audit): number =>
      complaintShares(a.causes, a.own, complaintsOf(book))[0]?.leakShare ?? 1;
    expect(leak(believed)).toBeLessThan(leak(audit));
  });
});
