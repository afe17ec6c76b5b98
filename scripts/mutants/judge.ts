/** Who notices a mutant: the claims of the cause's own test, the expectations of the cases, the kept evidence. */
import { isDeepStrictEqual } from 'node:util';
import { loadCases, type ShippedCase } from '../../eval/load-cases.js';
import { scoreRanking } from '../../eval/score-cases.js';
import { type Audit, auditSync, complaintsOf } from '../../src/reasoning/audit.js';
import { type Ranking, rankOwn } from '../../src/reasoning/rank.js';
import { ownScore } from '../../src/reasoning/score.js';
import { TEMPERATURE } from '../../src/reasoning/temperature.js';
import { trialsDb } from '../../src/reasoning/trials.js';
import type { Cause } from '../../src/rules/cause.js';
import type { Evidence } from '../../src/rules/evidence.js';
import { CAUSES } from '../../src/rules/index.js';
import { traceRule } from '../../src/rules/plain.js';
import { siblingsOf } from '../../src/rules/siblings.js';
import { weigh } from '../../src/rules/weigh.js';
import { causesOf, faultsOf } from '../../tests/claims/claim.js';
import { TABLES } from '../../tests/claims/tables.js';
import { type CauseTests, type Claim, claimsOf, weightsOf } from '../../tests/support/causeClaims.js';
import { causeLines, ruleLines } from '../../tests/support/goldenEvidence.js';
import type { Kind } from './leaf.js';

export const WITNESSES = ['claims', 'trade', 'cases', 'golden'] as const;
export type Witness = (typeof WITNESSES)[number];
export type Judge = (mutant: Cause, kind?: Kind) => Witness[];

interface Known {
  readonly shipped: ShippedCase;
  readonly audit: Audit;
}

/** All cases audited once, by the causes as they are. */
export function knownCases(): Known[] {
  return loadCases().map((shipped) => ({ shipped, audit: auditSync(shipped.book) }));
}

/** Everyone who notices a mutant of one cause, by whatever differs from what the cause itself shows. */
export function judgeOf(cause: Cause, tests: CauseTests, known: readonly Known[]): Judge {
  const claims = claimsOf(tests);
  const weights = weightsOf(tests);
  const ownWeights = weights(cause);
  const rows = TABLES.flatMap((table) => Object.values(table).flat()).filter((row) =>
    causesOf(row).includes(cause.id),
  );
  return (mutant, kind) => {
    const found = new Set<Witness>();
    if (!isDeepStrictEqual(weights(mutant), ownWeights)) found.add('golden');
    if (!claims.every((claim) => holds(claim, mutant))) found.add('claims');
    // The costly witness is asked about weights alone.
    const causes = CAUSES.map((each) => (each.id === mutant.id ? mutant : each));
    if (kind === 'weight' && rows.some((row) => faultsOf(row, causes).length > 0)) found.add('trade');
    for (const { shipped, audit } of known) {
      const { evidence, ranking } = withCause(audit, mutant);
      if (!ranking) continue;
      if (worse(shipped, audit.ranking, ranking)) found.add('cases');
      if (!sameGolden(audit, mutant, evidence, ranking)) found.add('golden');
    }
    return WITNESSES.filter((witness) => found.has(witness));
  };
}

export function holds(claim: Claim, cause: Cause): boolean {
  try {
    const { got, wanted } = claim.check(cause);
    return isDeepStrictEqual(got, wanted);
  } catch {
    return false;
  }
}

/** What the mutant says in a case, and the ranking it leads to where that differs. */
function withCause(
  audit: Audit,
  mutant: Cause,
): { readonly evidence: readonly Evidence[]; readonly ranking?: Ranking } {
  const place = audit.causes.findIndex(({ id }) => id === mutant.id);
  const causes = audit.causes.with(place, mutant);
  const siblings = siblingsOf(causes);
  const evidence = mutant.rules.map((rule) =>
    weigh(rule, traceRule(mutant, rule, audit.view), audit.view, siblings.get(rule)),
  );
  const own = ownScore(mutant, evidence, TEMPERATURE, trialsDb(audit.book, mutant, causes));
  const before = audit.own[place];
  const linked = isDeepStrictEqual(audit.causes[place]?.links, mutant.links);
  if (linked && own.ownDb === before?.ownDb && own.applies === before.applies) return { evidence };
  const byCause = new Map(audit.byCause).set(mutant.id, evidence);
  const ranking = rankOwn(causes, byCause, audit.own.with(place, own), complaintsOf(audit.book));
  return { evidence, ranking };
}

/** A case that met its expectation no longer does. */
function worse(shipped: ShippedCase, before: Ranking, after: Ranking): boolean {
  const [was, is] = [scoreRanking(shipped, before), scoreRanking(shipped, after)];
  const undecided = shipped.expect.undecided === true;
  return (
    (was.top && !is.top) ||
    (was.named && !is.named) ||
    is.recall < was.recall ||
    is.wronglyNamed.length > was.wronglyNamed.length ||
    (undecided && was.undecided && !is.undecided)
  );
}

function sameGolden(audit: Audit, mutant: Cause, evidence: readonly Evidence[], ranking: Ranking): boolean {
  return (
    isDeepStrictEqual(ruleLines(evidence), ruleLines(audit.byCause.get(mutant.id) ?? [])) &&
    isDeepStrictEqual(causeLines(ranking.causes), causeLines(audit.ranking.causes))
  );
}
