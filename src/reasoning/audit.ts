/**
 * A whole audit: facts -> computed facts -> rules -> evidence -> ranking. The synchronous form evaluates
 * rules itself and can start from an earlier audit; the asynchronous one goes through json-rules-engine.
 * A property test holds the two equal.
 */
import type { FactBook } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { Cause, Rule } from '../rules/cause.js';
import { viewOf } from '../rules/derived/view.js';
import { evaluate } from '../rules/engine.js';
import type { Evidence } from '../rules/evidence.js';
import { CAUSES } from '../rules/index.js';
import { traceRule, verdictOf } from '../rules/plain.js';
import { siblingsOf } from '../rules/siblings.js';
import type { Verdict } from '../rules/verdict.js';
import type { View } from '../rules/view.js';
import { type Brief, evidenceOf, weigh } from '../rules/weigh.js';
import { type EvidenceByCause, evidenceByCause, type Ranking, type RankOptions, rankOwn } from './rank.js';
import { ruleIndex } from './rule-index.js';
import { type Complaints, type OwnScore, ownScore } from './score.js';
import { TEMPERATURE } from './temperature.js';
import { bookAsHeard, trialsDb } from './trials.js';

export interface AuditOptions extends RankOptions {
  readonly causes?: readonly Cause[];
}

export interface Audit {
  /** As told. */
  readonly book: FactBook;
  /** As the trouble was heard, with tests told as acts: what rules and questions go by. */
  readonly heard: FactBook;
  readonly view: View;
  readonly causes: readonly Cause[];
  readonly byCause: EvidenceByCause;
  /** Prior and own evidence of each cause, in the order of the causes. */
  readonly own: readonly OwnScore[];
  readonly ranking: Ranking;
  readonly options: RankOptions;
  /** What possible answers to open questions would change, remembered until an answer touches the same rules. */
  readonly foreseen: Map<FactId, readonly Foreseen[]>;
}

/** One possible answer and what rules would say then. */
export interface Foreseen {
  readonly value: number | string;
  readonly changes: Changes<Brief>;
}

export const complaintsOf = (book: FactBook): Complaints => ({
  present: book.complaints,
  absent: book.absentComplaints,
});

/**
 * Audits a book; with an earlier audit only rules that the changed answers can move are run again, and its
 * causes and options hold on.
 */
export function auditSync(book: FactBook, previous?: Audit, options: AuditOptions = {}): Audit {
  if (!previous) return fullAudit(book, options);
  const step = changesFrom(previous, book);
  return step
    ? completed(previous, book, step)
    : fullAudit(book, { causes: previous.causes, ...previous.options });
}

export async function audit(book: FactBook, options: AuditOptions = {}): Promise<Audit> {
  const causes = options.causes ?? CAUSES;
  const view = viewOf(bookAsHeard(book, causes));
  const evidence = evidenceOf(causes, await evaluate(causes, view), view);
  return assemble(book, view, causes, evidenceByCause(causes, evidence), options);
}

/** All evidence of an audit, in the order of causes and rules. */
export function allEvidence(audit: Audit): Evidence[] {
  return audit.causes.flatMap((cause) => audit.byCause.get(cause.id) ?? []);
}

function fullAudit(book: FactBook, options: AuditOptions): Audit {
  const causes = options.causes ?? CAUSES;
  const view = viewOf(bookAsHeard(book, causes));
  const byCause = new Map(
    causes.map((cause) => [cause.id, [...evidenceFor(causes, cause, view, cause.rules.keys()).values()]]),
  );
  return assemble(book, view, causes, byCause, options);
}

function assemble(
  book: FactBook,
  view: View,
  causes: readonly Cause[],
  byCause: EvidenceByCause,
  { causes: _, ...options }: AuditOptions,
): Audit {
  const temperature = options.temperature ?? TEMPERATURE;
  const own = causes.map((cause) =>
    ownScore(cause, byCause.get(cause.id) ?? [], temperature, trialsDb(book, cause, causes)),
  );
  const ranking = rankOwn(causes, byCause, own, complaintsOf(book), options);
  const heard = bookAsHeard(book, causes);
  return { book, heard, view, causes, byCause, own, ranking, options, foreseen: new Map() };
}

/** What rules say differently after a change of answers: place of the cause -> place of the rule -> evidence. */
type Changes<E> = ReadonlyMap<number, ReadonlyMap<number, E>>;

/** Evidence of the rules that a change of answers can move; undefined where nothing can be taken over. */
export function changesFrom(
  audit: Audit,
  book: FactBook,
):
  | { readonly changed: readonly FactId[]; readonly view: View; readonly changes: Changes<Evidence> }
  | undefined {
  const before = audit.heard;
  const heard = bookAsHeard(book, audit.causes);
  if (before.seats !== heard.seats || before.responses !== heard.responses || before.trials !== heard.trials)
    return undefined;
  const changed = changedFacts(before, heard);
  const view = viewOf(heard, { view: audit.view, changed });
  const { rulesOf } = ruleIndex(audit.causes);
  const touched = new Map<number, Set<number>>();
  for (const id of changed)
    for (const [place, rules] of rulesOf.get(id) ?? [])
      touched.set(place, new Set([...(touched.get(place) ?? []), ...rules]));
  const evidence = (place: number, rules: Iterable<number>) =>
    evidenceFor(audit.causes, audit.causes[place] as Cause, view, rules);
  const changes = new Map([...touched].map(([place, rules]) => [place, evidence(place, rules)]));
  return { changed, view, changes };
}

/** What the rules of one cause say, some of them something else. */
export function mergedEvidence<E extends Brief>(
  { causes, byCause }: Audit,
  place: number,
  changed: ReadonlyMap<number, E> | undefined,
): readonly (E | Evidence)[] {
  const evidence = byCause.get((causes[place] as Cause).id) ?? [];
  return changed ? evidence.map((item, rule) => changed.get(rule) ?? item) : evidence;
}

export function rescored<E extends Brief>(
  { book, causes, options }: Audit,
  place: number,
  evidence: readonly E[],
): OwnScore<E> {
  const cause = causes[place] as Cause;
  return ownScore(cause, evidence, options.temperature ?? TEMPERATURE, trialsDb(book, cause, causes));
}

function completed(
  audit: Audit,
  book: FactBook,
  { changed, view, changes }: { changed: readonly FactId[]; view: View; changes: Changes<Evidence> },
): Audit {
  const byCause = new Map(audit.byCause);
  const own = [...audit.own];
  for (const [place, changed] of changes) {
    const evidence = mergedEvidence(audit, place, changed);
    byCause.set((audit.causes[place] as Cause).id, evidence);
    own[place] = rescored(audit, place, evidence);
  }
  const ranking = rankOwn(audit.causes, byCause, own, complaintsOf(book), audit.options);
  const { neighbors } = ruleIndex(audit.causes);
  const holds = (fact: FactId): boolean => !changed.some((id) => neighbors.get(id)?.has(fact));
  const foreseen = new Map([...audit.foreseen].filter(([fact]) => holds(fact)));
  return { ...audit, book, heard: bookAsHeard(book, audit.causes), view, byCause, own, ranking, foreseen };
}

/** Evidence of some rules of a cause, all given by place. */
function evidenceFor(
  causes: readonly Cause[],
  cause: Cause,
  view: View,
  places: Iterable<number>,
): Map<number, Evidence> {
  const found = new Map<number, Evidence>();
  const gate = gateOf(cause, view);
  const siblings = siblingsOf(causes);
  for (const place of places) {
    const rule = cause.rules[place] as Rule;
    found.set(place, weigh(rule, traceRule(cause, rule, view, gate), view, siblings.get(rule)));
  }
  return found;
}

/** The gate of a cause, judged once for all its rules; a gate that throws is left to each rule to report. */
function gateOf(cause: Cause, view: View): Verdict | undefined {
  try {
    return cause.applies && verdictOf(cause.applies, view);
  } catch {
    return undefined;
  }
}

/** Facts answered differently in two books, by value or by how. */
export function changedFacts(before: FactBook, after: FactBook): FactId[] {
  if (before.answers === after.answers) return [];
  const ids = new Set([...before.answers.keys(), ...after.answers.keys()]);
  return [...ids].filter((id) => {
    const [a, b] = [before.answers.get(id), after.answers.get(id)];
    if (a === b) return false;
    if (!a || !b || a.how !== b.how) return true;
    return 'value' in a && 'value' in b && a.value !== b.value;
  });
}
