/**
 * A whole audit: facts -> computed facts -> rules -> evidence -> ranking. The synchronous form evaluates
 * rules itself and can start from an earlier audit; the asynchronous one goes through json-rules-engine.
 * A property test holds the two equal.
 */
import type { FactBook } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { Cause, CauseId } from '../rules/cause.js';
import { viewOf } from '../rules/derived/view.js';
import { evaluate } from '../rules/engine.js';
import type { Evidence } from '../rules/evidence.js';
import { CAUSES } from '../rules/index.js';
import { traceRule } from '../rules/plain.js';
import type { View } from '../rules/view.js';
import { evidenceOf, weigh } from '../rules/weigh.js';
import { type EvidenceByCause, evidenceByCause, type Ranking, type RankOptions, rankOwn } from './rank.js';
import { ruleIndex } from './rule-index.js';
import { type Complaints, type OwnScore, ownScore } from './score.js';
import { TEMPERATURE } from './temperature.js';
import { triedDb } from './tried.js';

export interface AuditOptions extends RankOptions {
  readonly causes?: readonly Cause[];
}

export interface Audit {
  readonly book: FactBook;
  readonly view: View;
  readonly causes: readonly Cause[];
  readonly byCause: EvidenceByCause;
  /** Prior and own evidence of each cause, in the order of the causes. */
  readonly own: readonly OwnScore[];
  readonly ranking: Ranking;
  readonly options: RankOptions;
}

export const complaintsOf = (book: FactBook): Complaints => ({
  present: book.complaints,
  absent: book.absentComplaints,
});

/** Audits a book; with an earlier audit only rules that the changed answers can move are run again. */
export function auditSync(book: FactBook, previous?: Audit, options: AuditOptions = {}): Audit {
  const step = previous ? stepFrom(previous, book) : undefined;
  return previous && step ? completed(previous, step) : fullAudit(book, options);
}

export async function audit(book: FactBook, options: AuditOptions = {}): Promise<Audit> {
  const causes = options.causes ?? CAUSES;
  const view = viewOf(book);
  const evidence = evidenceOf(causes, await evaluate(causes, view), view);
  return assemble(book, view, causes, evidenceByCause(causes, evidence), options);
}

/** All evidence of an audit, in the order of causes and rules. */
export function allEvidence(audit: Audit): Evidence[] {
  return audit.causes.flatMap((cause) => audit.byCause.get(cause.id) ?? []);
}

function fullAudit(book: FactBook, options: AuditOptions): Audit {
  const causes = options.causes ?? CAUSES;
  const view = viewOf(book);
  const byCause = new Map(causes.map((cause) => [cause.id, evidenceFor(cause, view, () => true, [])]));
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
    ownScore(cause, byCause.get(cause.id) ?? [], temperature, triedDb(book, cause)),
  );
  const ranking = rankOwn(causes, byCause, own, complaintsOf(book), options);
  return { book, view, causes, byCause, own, ranking, options };
}

/** What a change of answers does to causes' own evidence, before complaints are shared out again. */
export interface Step {
  readonly book: FactBook;
  readonly view: View;
  readonly own: readonly OwnScore[];
  readonly changedEvidence: ReadonlyMap<CauseId, readonly Evidence[]>;
}

/** The step to a book with other answers; undefined where seats, folder or tried remedies changed and nothing can be kept. */
export function stepFrom(audit: Audit, book: FactBook): Step | undefined {
  const before = audit.book;
  if (before.seats !== book.seats || before.folder !== book.folder || before.tried !== book.tried)
    return undefined;
  const changed = changedFacts(before, book);
  const view = viewOf(book, { view: audit.view, changed });
  const index = ruleIndex(audit.causes);
  const places = new Set(changed.flatMap((id) => index.causesOf.get(id) ?? []));
  const changedEvidence = new Map<CauseId, readonly Evidence[]>();
  const own = [...audit.own];
  for (const place of places) {
    const cause = audit.causes[place] as Cause;
    const reads = index.factsOf[place] ?? [];
    const touched = (rule: number): boolean => changed.some((id) => reads[rule]?.has(id));
    const evidence = evidenceFor(cause, view, touched, audit.byCause.get(cause.id) ?? []);
    changedEvidence.set(cause.id, evidence);
    const temperature = audit.options.temperature ?? TEMPERATURE;
    own[place] = ownScore(cause, evidence, temperature, triedDb(book, cause));
  }
  return { book, view, own, changedEvidence };
}

function completed(audit: Audit, step: Step): Audit {
  const byCause = new Map([...audit.byCause, ...step.changedEvidence]);
  const { book, view, own } = step;
  const ranking = rankOwn(audit.causes, byCause, own, complaintsOf(book), audit.options);
  return { ...audit, book, view, byCause, own, ranking };
}

/** Evidence of one cause; rules that are not touched keep what they said. */
function evidenceFor(
  cause: Cause,
  view: View,
  touched: (rule: number) => boolean,
  before: readonly Evidence[],
): Evidence[] {
  return cause.rules.map((rule, place) => {
    const kept = before[place];
    return kept && !touched(place) ? kept : weigh(rule, traceRule(cause, rule, view), view);
  });
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
