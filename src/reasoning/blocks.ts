/** Short blocks of questions: what is asked in one go, because only together it tells something. */
import { type FactId, factSpec } from '../facts/catalog.js';
import type { Block, Cause } from '../rules/cause.js';
import type { Evidence } from '../rules/evidence.js';
import type { Audit } from './audit.js';
import { canBeAsked, couldMakeSense, makesSense } from './hypotheses.js';
import { isTiring, isWithinReach } from './knows.js';
import { ruleIndex } from './rule-index.js';

/** A cause is gone after in this way while it stands among so many, and is no less probable than this (judgement). */
const AMONG_FIRST = 5;
const BLOCK_FROM = 0.1;
/** A group is settled by a rule that is at least substantial and rests on nothing assumed, decibans. */
const SETTLED_FROM_DB = 5;

export interface Asked {
  readonly fact: FactId;
  /** The cause whose block it belongs to. */
  readonly cause: Cause;
  /** The question before it belonged to the block and was answered. */
  readonly underWay: boolean;
}

/**
 * The next question of a block that is due: of the block under way, or of the most probable cause that has one. A cause
 * that no complaint speaks for is not gone after in this way.
 */
export function blockQuestion(audit: Audit): Asked | undefined {
  const due = audit.ranking.causes
    .slice(0, AMONG_FIRST)
    .filter(({ probability, applies, sharedDb }) => applies && probability >= BLOCK_FROM && sharedDb > 0)
    .flatMap(({ cause }) => audit.causes.find(({ id }) => id === cause) ?? [])
    .map((cause) => ({ cause, open: openOf(audit, cause) }))
    .filter(({ open }) => open.length > 0);
  const [last, answer] = [...audit.book.answers].at(-1) ?? [];
  const isGoingOn = answer !== undefined && 'value' in answer;
  const underWay = due.find(({ cause }) => isGoingOn && last && cause.block?.facts.includes(last));
  const chosen = underWay ?? due[0];
  const [fact] = chosen?.open ?? [];
  return chosen && fact ? { cause: chosen.cause, fact, underWay: chosen === underWay } : undefined;
}

/** Questions of the block that can be put now and still settle its group; none once it is settled. */
function openOf(audit: Audit, cause: Cause): FactId[] {
  const { block } = cause;
  if (!block) return [];
  const { heard: book } = audit;
  const place = audit.causes.indexOf(cause);
  const evidence = audit.byCause.get(cause.id) ?? [];
  const inGroup = [...cause.rules.keys()].filter((rule) => cause.rules[rule]?.group === block.group);
  if (inGroup.some((rule) => settles(evidence[rule]))) return [];
  const within = inGroup.filter((rule) => canBeHad(audit, block, evidence[rule]));
  const { rulesOf } = ruleIndex(audit.causes);
  const tells = (id: FactId): boolean => within.some((rule) => rulesOf.get(id)?.get(place)?.includes(rule));
  const leads = (id: FactId): boolean =>
    block.facts.some((child) => isParent(id, child) && couldMakeSense(book, child) && tells(child));
  return block.facts.filter(
    (id) =>
      canBeAsked(book, id) &&
      makesSense(book, id) &&
      isWithinReach(book, id) &&
      !isTiring(book, id) &&
      (tells(id) || leads(id)),
  );
}

const isParent = (id: FactId, child: FactId): boolean => id in (factSpec(child).askedWhen ?? {});

const settles = (item: Evidence | undefined): boolean =>
  item !== undefined && item.assumed.length === 0 && Math.abs(item.decibans) >= SETTLED_FROM_DB;

/** All that the rule waits for belongs to the block and can still be asked; nothing was answered with "I don't know". */
const canBeHad = ({ heard: book }: Audit, block: Block, item: Evidence | undefined): boolean =>
  item !== undefined &&
  (item.outcome === 'unknown' || item.assumed.length > 0) &&
  item.open.every((id) => block.facts.includes(id) && canBeAsked(book, id) && isWithinReach(book, id));
