/** How far the answers that are still open could move each cause: is the matter settled? */
import { type FactId, factSpec } from '../facts/catalog.js';
import { type Cause, KINSHIP, type Rule } from '../rules/cause.js';
import type { Evidence } from '../rules/evidence.js';
import { absentDb, CLAMP_DB, capDb, givenDb } from '../rules/weight.js';
import type { Audit } from './audit.js';
import { groupDb } from './group.js';
import { canBeAsked } from './hypotheses.js';
import { sharesRemedy } from './rank.js';

interface Reach {
  readonly leastDb: number;
  readonly mostDb: number;
}

/** Facts that could still be asked and that this rule waits for, or uses a default of. */
function askable(audit: Audit, item: Evidence): FactId[] {
  const facts = item.outcome === 'unknown' ? item.open : [...item.open, ...item.assumed];
  return facts.filter((id) => canBeAsked(audit.heard, id));
}

/** The least and the most that a rule can come to weigh. */
function ruleReach(audit: Audit, rule: Rule, item: Evidence): Reach {
  const open = askable(audit, item);
  if (open.length === 0) return { leastDb: item.decibans, mostDb: item.decibans };
  const { weigh } = rule;
  const how = open.every((id) => factSpec(id).usually === 'measured') ? 'measured' : 'read';
  const ends =
    weigh.kind === 'match'
      ? [-capDb(how), capDb(how)]
      : weigh.kind === 'answer'
        ? [givenDb(weigh.tp, weigh.fp, how), absentDb(weigh.tp, weigh.fp, how)]
        : [-1, 1].map((sign) => sign * Math.min(CLAMP_DB, capDb(how), weigh.maxDb ?? CLAMP_DB));
  const only = weigh.kind === 'match' ? undefined : weigh.only;
  const ups = ends.filter((db) => only === undefined || (only === 'for' ? db > 0 : db < 0));
  const all = [...ups, item.decibans, 0];
  return { leastDb: Math.min(...all), mostDb: Math.max(...all) };
}

/** Bounds of a cause's decibans when every open question is answered as it suits; complaints as now. */
export function reachOf(audit: Audit, place: number): Reach {
  const cause = audit.causes[place] as Cause;
  const score = audit.ranking.causes.find((r) => r.cause === cause.id);
  if (!score?.applies) return { leastDb: score?.decibans ?? 0, mostDb: score?.decibans ?? 0 };
  const reaches = (audit.byCause.get(cause.id) ?? []).map((item, i) => ({
    group: cause.rules[i]?.group ?? '',
    ...ruleReach(audit, cause.rules[i] as Rule, item),
  }));
  const total = (end: 'leastDb' | 'mostDb'): number =>
    Object.entries(cause.groups).reduce(
      (sum, [group, kinship]) => {
        const weights = reaches.filter((r) => r.group === group).map((r) => r[end]);
        return sum + groupDb(weights, KINSHIP[kinship]) / audit.ranking.temperature;
      },
      (end === 'mostDb' ? cause.priorDb : score.priorDb) + score.sharedDb,
    );
  return { leastDb: total('leastDb'), mostDb: total('mostDb') };
}

/** True where the leader stays ahead of every cause with another remedy, whatever is still answered. */
export function isSettled(audit: Audit): boolean {
  const place = audit.causes.findIndex((cause) => cause.id === audit.ranking.leader);
  const leader = audit.causes[place];
  if (!leader) return false;
  const least = reachOf(audit, place).leastDb;
  return audit.causes.every(
    (cause, i) => i === place || sharesRemedy(leader, cause) || reachOf(audit, i).mostDb < least,
  );
}
