/** Flips of small shipped cases against plain enumeration: the same sets, by how much, strongest first. */
import { describe, expect, it } from 'vitest';
import { loadCases } from '../../eval/load-cases.js';
import { type FactBook, withAnswer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { flips } from '../../src/reasoning/flips.js';
import { possibleAnswers } from '../../src/reasoning/hypotheses.js';

interface Found {
  readonly set: string;
  readonly leader: string;
  readonly byDb: number;
}

/** Every set of `size` changed answers that makes another cause lead, by auditing each. */
function byEnumeration(book: FactBook, size: 1 | 2): Found[] {
  const whole = auditSync(book);
  const before = whole.ranking.leader;
  const changes = [...book.answers].flatMap(([fact, told]) =>
    'value' in told
      ? possibleAnswers(fact).flatMap((a) =>
          'value' in a && a.value !== told.value ? [{ fact, value: a.value, how: told.how }] : [],
        )
      : [],
  );
  const sets =
    size === 1
      ? changes.map((c) => [c])
      : changes.flatMap((a, i) => changes.slice(i + 1).flatMap((b) => (a.fact === b.fact ? [] : [[a, b]])));
  return sets.flatMap((set): Found[] => {
    const changed = set.reduce((b, { fact, value, how }) => withAnswer(b, fact, { value, how }), book);
    const { leader, causes } = auditSync(changed, whole).ranking;
    if (leader === before) return [];
    const db = (id: string): number => causes.find((r) => r.cause === id)?.decibans ?? Number.NaN;
    return [
      { set: key(set.map((c) => ({ fact: c.fact, to: c.value }))), leader, byDb: db(leader) - db(before) },
    ];
  });
}
const key = (changes: readonly { fact: FactId; to: number | string }[]): string =>
  changes.map(({ fact, to }) => `${fact}=${to}`).join(' ');
const inOrder = (list: readonly Found[]): Found[] => [...list].sort((a, b) => a.set.localeCompare(b.set));

const books = new Map(loadCases().map(({ name, book }) => [name, book]));

describe('flips', () => {
  // One answer turns the first, two answers the second, nothing the last.
  it.each(['undecidable-quiet-voice', 'level-after-reset', 'routing-center-none'])(
    'of %s are those that enumeration finds, strongest first',
    (name) => {
      const book = books.get(name) as FactBook;
      const ones = byEnumeration(book, 1);
      const wanted = inOrder(ones.length > 0 ? ones : byEnumeration(book, 2));
      const found = flips(auditSync(book)).map(({ changes, leader, byDb }) => ({
        set: key(changes),
        leader,
        byDb,
      }));
      expect(inOrder(found).map(({ set, leader }) => [set, leader])).toEqual(
        wanted.map(({ set, leader }) => [set, leader]),
      );
      inOrder(found).forEach(({ byDb }, i) => {
        expect(byDb).toBeCloseTo(wanted[i]?.byDb ?? Number.NaN, 9);
      });
      expect(found.map(({ byDb }) => byDb)).toEqual(found.map(({ byDb }) => byDb).sort((a, b) => b - a));
    },
    60_000,
  );
});
