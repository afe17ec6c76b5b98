/**
 * A trouble for a cause that has none of its own yet: its shipped cases, which were written from the physics, laid over a
 * healthy system. Coarser than a drawn one, for it repeats what the cases say, but it is there from the first day.
 */
import { FACT_IDS, type FactId, TEST_IDS } from '../../src/facts/catalog.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import { loadCases, type ShippedCase, truthsOf } from '../load-cases.js';
import type { Heard, Trouble } from './troubles.js';

/** How common such a cause is, relative to the others, and how surely its complaints are told (judgement). */
const COMMON = 2;
const TOLD = 0.8;

const isTest = (id: FactId): boolean => (TEST_IDS as readonly FactId[]).includes(id);

function troubleFrom(cases: readonly ShippedCase[]): Trouble {
  const told = (wanted: (id: FactId) => boolean, { book }: ShippedCase) =>
    Object.fromEntries(
      FACT_IDS.filter(wanted).flatMap((id) => {
        const answer = book.answers.get(id);
        return answer && 'value' in answer ? [[id, answer.value] as const] : [];
      }),
    );
  const heard: Heard = Object.fromEntries(
    cases.flatMap(({ book }) => book.complaints).map((id): [ComplaintId, number] => [id, TOLD]),
  );
  return {
    common: COMMON,
    inflict: (world, random) => {
      Object.assign(
        world,
        told((id) => !isTest(id), random.pick(cases)),
      );
      return true;
    },
    heard: () => heard,
    tests: Object.assign({}, ...cases.map((each) => told(isTest, each))) as Partial<Record<FactId, string>>,
  };
}

/** Troubles of every cause that is the single true one of a shipped case and is not among `known`. */
export function troublesFromCases(known: readonly string[]): Record<string, Trouble> {
  const found = new Map<string, ShippedCase[]>();
  for (const each of loadCases()) {
    const [only, ...more] = truthsOf(each);
    if (only === undefined || more.length > 0 || known.includes(only)) continue;
    found.set(only, [...(found.get(only) ?? []), each]);
  }
  return Object.fromEntries([...found].map(([id, cases]) => [id, troubleFrom(cases)]));
}
