/** How well audits of the shipped cases do: whole, with facts hidden, with answers flipped, with weights disturbed. */
import type { FactBook } from '../src/facts/book.js';
import { FACTS, type FactId, factSpec } from '../src/facts/catalog.js';
import { allEvidence, auditSync, complaintsOf } from '../src/reasoning/audit.js';
import { type Ranking, rank } from '../src/reasoning/rank.js';
import type { ShippedCase } from './load-cases.js';
import { truthsOf } from './load-cases.js';
import { mean, recallAt, reciprocalRank, topIsTrue } from './metrics.js';
import { type Random, randomFrom } from './random.js';

/** How many of the first causes count as named. */
export const NAMED = 3;
/** Part of the told facts that is hidden, and how many seeds a case (definitions of the evaluation). */
export const HIDDEN_PART = 0.4;
export const HIDDEN_SEEDS = 20;

export const namesOf = (ranking: Ranking): string[] => ranking.causes.map(({ cause }) => cause);

export interface CaseScore {
  readonly name: string;
  readonly ranked: readonly string[];
  readonly top: boolean;
  /** A true cause among the first three. */
  readonly named: boolean;
  readonly recall: number;
  readonly reciprocal: number;
  readonly undecided: boolean;
  /** Causes that are excluded by the physics and still stand among the first three. */
  readonly wronglyNamed: readonly string[];
}

export function scoreRanking(shipped: ShippedCase, ranking: Ranking): CaseScore {
  const ranked = namesOf(ranking);
  const truths = truthsOf(shipped);
  const first = ranked.slice(0, NAMED);
  return {
    name: shipped.name,
    ranked,
    top: topIsTrue(ranked, truths),
    named: first.some((id) => truths.includes(id)),
    recall: truths.length === 0 ? Number.NaN : recallAt(ranked, truths, NAMED),
    reciprocal: reciprocalRank(ranked, truths),
    undecided: ranking.undecided,
    wronglyNamed: first.filter((id) => (shipped.expect.ruledOut ?? []).includes(id)),
  };
}

export const scoreCase = (shipped: ShippedCase): CaseScore =>
  scoreRanking(shipped, auditSync(shipped.book).ranking);

/** The same book with a part of its facts forgotten; complaints stay. */
export function withHidden(book: FactBook, part: number, random: Random): FactBook {
  const ids = random.shuffled([...book.answers.keys()]);
  const hidden = new Set(ids.slice(0, Math.round(part * ids.length)));
  return { ...book, answers: new Map([...book.answers].filter(([id]) => !hidden.has(id))) };
}

/** Every seed of a case with 40 % of its facts hidden. */
export function hiddenScores(shipped: ShippedCase, seeds = HIDDEN_SEEDS): CaseScore[] {
  const whole = auditSync(shipped.book);
  return Array.from({ length: seeds }, (_, seed) => {
    const book = withHidden(shipped.book, HIDDEN_PART, randomFrom(seed + 1));
    return scoreRanking(shipped, auditSync(book, whole).ranking);
  });
}

/** A told answer turned: a choice to another one, a number doubled or halved within what is possible. */
export function flipped(book: FactBook, id: FactId, random: Random): FactBook {
  const answer = book.answers.get(id);
  if (!answer || !('value' in answer)) return book;
  const spec = factSpec(id);
  let value = answer.value;
  if (spec.kind === 'choice') {
    value = random.pick(Object.keys(spec.choices).filter((choice) => choice !== answer.value));
  } else if (spec.kind === 'number' && typeof value === 'number') {
    const [low, high] = spec.possible;
    const told = value;
    const others = [told * 2, told / 2].filter((other) => other >= low && other <= high && other !== told);
    if (others.length === 0) return book;
    value = random.pick(spec.whole ? others.map(Math.round) : others);
  } else return book;
  const answers = new Map(book.answers);
  answers.set(id, { value, how: answer.how });
  return { ...book, answers };
}

/** Facts of a book that can be flipped. */
export const flippable = (book: FactBook): FactId[] =>
  [...book.answers].filter(([id, a]) => 'value' in a && FACTS[id].kind !== 'file').map(([id]) => id);

/** How often flipping `count` answers makes another cause lead, over `tries` draws; nothing flippable counts as no. */
export function leaderChanges(book: FactBook, count: number, tries: number, seed = 1): number {
  const random = randomFrom(seed);
  const whole = auditSync(book);
  const ids = flippable(book);
  if (ids.length === 0) return 0;
  return mean(
    Array.from({ length: tries }, () => {
      const chosen = random.shuffled(ids).slice(0, count);
      const turned = chosen.reduce((soFar, id) => flipped(soFar, id, random), book);
      return auditSync(turned, whole).ranking.leader === whole.ranking.leader ? 0 : 1;
    }),
  );
}

/** The ranking with normal noise of `spreadDb` on the weight of every rule that speaks. */
export function disturbed(book: FactBook, spreadDb: number, random: Random): Ranking {
  const audit = auditSync(book);
  const evidence = allEvidence(audit).map((item) =>
    item.decibans === 0 ? item : { ...item, decibans: item.decibans + spreadDb * random.normal() },
  );
  return rank(audit.causes, evidence, complaintsOf(book));
}
