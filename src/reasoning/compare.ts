/** Two audits of the same system: what was told differently, and what that did to every cause. */

import type { FactId } from '../facts/catalog.js';
import type { ComplaintId } from '../facts/complaints.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { SeatResult } from '../rules/view.js';
import { type Audit, changedFacts } from './audit.js';
import type { Ranked, Verdict } from './rank.js';

interface CauseChange {
  readonly cause: CauseId;
  readonly before: { readonly probability: number; readonly decibans: number; readonly verdict: Verdict };
  readonly after: { readonly probability: number; readonly decibans: number; readonly verdict: Verdict };
  /** after minus before, decibans. */
  readonly changeDb: number;
}

interface Comparison {
  readonly changedFacts: readonly FactId[];
  readonly leaders: { readonly before: CauseId; readonly after: CauseId };
  /** Every cause that moved or changed its verdict, largest movement first. */
  readonly causes: readonly CauseChange[];
  readonly complaints: {
    readonly gone: readonly ComplaintId[];
    readonly stayed: readonly ComplaintId[];
    readonly appeared: readonly ComplaintId[];
  };
  /** Seats by name, with what each hears before and after; a seat that is in one audit only is left out there. */
  readonly seats: readonly {
    readonly name: string;
    readonly before?: SeatResult;
    readonly after?: SeatResult;
  }[];
}

export function compare(before: Audit, after: Audit): Comparison {
  const [was, is] = [before.book.complaints, after.book.complaints];
  return {
    changedFacts: changedFacts(before.book, after.book),
    leaders: { before: before.ranking.leader, after: after.ranking.leader },
    causes: causeChanges(before, after),
    complaints: {
      gone: was.filter((id) => !is.includes(id)),
      stayed: was.filter((id) => is.includes(id)),
      appeared: is.filter((id) => !was.includes(id)),
    },
    seats: seatPairs(before, after),
  };
}

/** Smaller movements, decibans, are rounding. */
const MOVED_FROM_DB = 0.05;

function causeChanges(before: Audit, after: Audit): CauseChange[] {
  const earlier = new Map(before.ranking.causes.map((r) => [r.cause, r]));
  return after.ranking.causes
    .flatMap((now): CauseChange[] => {
      const then = earlier.get(now.cause);
      if (!then) return [];
      const changeDb = now.decibans - then.decibans;
      const moved = Math.abs(changeDb) >= MOVED_FROM_DB || now.verdict !== then.verdict;
      return moved ? [{ cause: now.cause, before: state(then), after: state(now), changeDb }] : [];
    })
    .sort((a, b) => Math.abs(b.changeDb) - Math.abs(a.changeDb));
}

const state = ({ probability, decibans, verdict }: Ranked) => ({ probability, decibans, verdict });

function seatPairs(before: Audit, after: Audit): Comparison['seats'] {
  const then = new Map(before.view.seatResults().map((r) => [r.seat.name, r]));
  const now = new Map(after.view.seatResults().map((r) => [r.seat.name, r]));
  return [...new Set([...then.keys(), ...now.keys()])].map((name) => {
    const [a, b] = [then.get(name), now.get(name)];
    return { name, ...(a ? { before: a } : {}), ...(b ? { after: b } : {}) };
  });
}
