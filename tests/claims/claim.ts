/**
 * Claims of the trade as rows: in this case, this outweighs that, leads, is not offered, or is silent. A row is a
 * partial case as an owner could tell it and one or more things that a practitioner would sign. Rows are data, so
 * that the test and the mutator of rules judge by the same ones.
 */
import type { FactBook } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import type { Choice, ChoiceFactId, FileFactId, NumberFactId } from '../../src/facts/catalog.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import type { How } from '../../src/facts/spec.js';
import { type Audit, auditSync } from '../../src/reasoning/audit.js';
import { plan } from '../../src/reasoning/plan.js';
import type { Ranked } from '../../src/reasoning/rank.js';
import { openRemedies } from '../../src/reasoning/remedies.js';
import type { Cause } from '../../src/rules/cause.js';
import type { CauseId } from '../../src/rules/cause-ids.js';

type Told<V> = V | { readonly value: V; readonly how: How };
/** Answers as they stand in a case file: lengths with their unit. */
export type Facts = { readonly [Id in ChoiceFactId]?: Told<Choice<Id>> } & {
  readonly [Id in NumberFactId]?: Told<number | string>;
} & { readonly [Id in FileFactId]?: string };
export type Case = Facts & {
  readonly complaints?: readonly ComplaintId[];
  readonly absentComplaints?: readonly ComplaintId[];
};

/** Audits a case, and the same case told otherwise, by the causes on trial. */
type Try = (change?: Case) => Audit;
/** What is wrong, in words; undefined where the claim holds. */
type Check = (audit: Try) => string | undefined;
/** A check and the causes that it is about: only their mutants can make it fail for a reason. */
export interface Claim {
  readonly about: readonly CauseId[];
  readonly check: Check;
}
const claim = (about: readonly CauseId[], check: Check): Claim => ({ about, check });
export type Row = readonly [name: string, told: Case, ...claims: Claim[]];
export type Table = Readonly<Record<string, readonly Row[]>>;

export function bookOf({ complaints = [], absentComplaints = [], ...facts }: Case): FactBook {
  const file = {
    format: 'center-audit/case',
    version: 1,
    units: 'metric',
    complaints,
    absentComplaints,
    facts,
  };
  return readCase(JSON.stringify(file)).book;
}

export const causesOf = ([, , ...claims]: Row): CauseId[] => claims.flatMap(({ about }) => about);

/** Everything that is wrong with a row, by the given causes or by those of the program. */
export function faultsOf([, told, ...claims]: Row, causes?: readonly Cause[]): string[] {
  const audited = (change: Case = {}): Audit =>
    auditSync(bookOf({ ...told, ...change }), undefined, causes ? { causes } : {});
  return claims.flatMap(({ check }) => check(audited) ?? []);
}

const ranked = (audit: Audit, id: CauseId): Ranked => {
  const found = audit.ranking.causes.find(({ cause }) => cause === id);
  if (!found) throw new Error(`no cause ${id}`);
  return found;
};
const percent = (p: number): string => `${(100 * p).toFixed(1)} %`;
const shortlist = (audit: Audit): string =>
  audit.ranking.causes
    .slice(0, 4)
    .map(({ cause, probability }) => `${cause} ${percent(probability)}`)
    .join(', ');

/** This cause stands first. */
export const leads = (id: CauseId): Claim =>
  claim([id], (audit) =>
    audit().ranking.leader === id ? undefined : `${id} does not lead: ${shortlist(audit())}`,
  );

/** Each cause is more probable than the next. */
export const outweighs = (...ids: readonly [CauseId, CauseId, ...CauseId[]]): Claim =>
  claim(ids, (audit) => {
    const ps = ids.map((id) => ranked(audit(), id).probability);
    return ps.every((p, i) => i === 0 || (ps[i - 1] as number) > p)
      ? undefined
      : ids.map((id, i) => `${id} ${percent(ps[i] as number)}`).join(' does not outweigh ');
  });

const verdict =
  (words: readonly Ranked['verdict'][]) =>
  (...ids: readonly [CauseId, ...CauseId[]]): Claim =>
    claim(ids, (audit) => {
      const wrong = ids.map((id) => ranked(audit(), id)).filter((r) => !words.includes(r.verdict));
      if (wrong.length === 0) return undefined;
      return wrong.map((r) => `${r.cause} is ${r.verdict} (${percent(r.probability)})`).join(', ');
    });
/** At least 70 %. */
export const likely = verdict(['likely']);
/** Below 20 %, or not there at all: not what an adviser would act on. */
export const unlikely = verdict(['unlikely', 'ruled-out', 'cannot-tell', 'not-applicable']);
/** Below 2 %, or not there at all. */
export const ruledOut = verdict(['ruled-out', 'not-applicable']);
export const notApplicable = verdict(['not-applicable']);

export const undecided: Claim = claim([], (audit) =>
  audit().ranking.undecided ? undefined : `decided for ${shortlist(audit())}`,
);

/** A probability that is not above this, 0 to 1: where a share of doubt must stay. */
export const atMost = (id: CauseId, most: number): Claim =>
  claim([id], (audit) => {
    const p = ranked(audit(), id).probability;
    return p <= most ? undefined : `${id} is at ${percent(p)}, above ${percent(most)}`;
  });

/** Remedies in the order in which they would be given; where a cause stands or falls is not asked. */
const offered = (audit: Audit, id: CauseId): string[] =>
  openRemedies(audit, audit.causes.find((cause) => cause.id === id) as Cause).map((remedy) => remedy.id);
export const offers = (id: CauseId, ...remedies: readonly string[]): Claim =>
  claim([id], (audit) => {
    const missing = remedies.filter((remedy) => !offered(audit(), id).includes(remedy));
    return missing.length === 0 ? undefined : `${id} does not offer ${missing.join(', ')}`;
  });
export const offersNot = (id: CauseId, ...remedies: readonly string[]): Claim =>
  claim([id], (audit) => {
    const there = remedies.filter((remedy) => offered(audit(), id).includes(remedy));
    return there.length === 0 ? undefined : `${id} offers ${there.join(', ')}`;
  });
export const offersFirst = (id: CauseId, remedy: string): Claim =>
  claim([id], (audit) => {
    const [first] = offered(audit(), id);
    return first === remedy ? undefined : `${id} offers ${first} before ${remedy}`;
  });
/** Stands among the first so many steps of the plan, as a test, a question or `cause/remedy`. */
export const plans = (step: string, within = 1): Claim =>
  claim([], (audit) => {
    const steps = plan(audit()).steps.slice(0, within);
    const names = steps.map(({ kind, id, cause }) => (kind === 'remedy' ? `${cause}/${id}` : id));
    return names.includes(step) ? undefined : `the plan begins ${names.join(', ')}`;
  });

/** Decibans of own evidence that a change of the telling moves a cause by. */
function movedDb(audit: Try, id: CauseId, change: Case): number {
  const own = (one: Audit): number => one.own[one.causes.findIndex((cause) => cause.id === id)]?.ownDb ?? 0;
  return own(audit(change)) - own(audit());
}
/** Decibans from which a change counts: a hint. */
const HINT_DB = 1;
const change =
  (words: string, holds: (db: number, leastDb: number) => boolean) =>
  (id: CauseId, told: Case, leastDb = HINT_DB): Claim =>
    claim([id], (audit) => {
      const db = movedDb(audit, id, told);
      return holds(db, leastDb) ? undefined : `${JSON.stringify(told)} ${words} ${id}: ${db.toFixed(1)} dB`;
    });
/** Told in addition, this speaks for the cause, by at least so many decibans. */
export const raises = change('does not raise', (db, leastDb) => db >= leastDb);
/** Told in addition, this speaks against the cause, by at least so many decibans. */
export const lowers = change('does not lower', (db, leastDb) => db <= -leastDb);
/** Told in addition, this says nothing of the cause. */
export const leaves = change('moves', (db) => Math.abs(db) < HINT_DB / 2);

/** Of two things that could be told, the first speaks more plainly of the cause, either way. */
export const tellsMore = (id: CauseId, more: Case, less: Case): Claim =>
  claim([id], (audit) => {
    const [a, b] = [movedDb(audit, id, more), movedDb(audit, id, less)].map(Math.abs) as [number, number];
    return a > b
      ? undefined
      : `${JSON.stringify(more)} (${a.toFixed(1)} dB) tells no more of ${id} than ${JSON.stringify(less)} (${b.toFixed(1)} dB)`;
  });

/** Of answers of neighboring steps the earlier one weighs more by at least this, decibans: what order there is, not how much. */
const STEP_DB = 0.4;
const inOrder =
  (sign: 1 | -1) =>
  (id: CauseId, ...steps: readonly (readonly Case[])[]): Claim =>
    claim([id], (audit) => {
      const weights = steps.map((step) => step.map((told) => sign * movedDb(audit, id, told)));
      const wrong = weights.flatMap((step, i) => {
        const next = Math.max(...(weights[i + 1] ?? [0]));
        return step.flatMap((db, j) =>
          db >= next + STEP_DB
            ? []
            : [`${JSON.stringify(steps[i]?.[j])} ${(sign * db).toFixed(1)} dB is out of order`],
        );
      });
      return wrong.length === 0 ? undefined : `${id}: ${wrong.join(', ')}`;
    });
/** What speaks for the cause, most first: every answer of a step more than any of the next, the last more than nothing. */
export const tellsInOrder = inOrder(1);
/** The same of what speaks against it. */
export const clearsInOrder = inOrder(-1);
