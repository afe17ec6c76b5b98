/** What is different between two audits of one system, in words: the matter of `try` and `compare`. */

import { type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINTS } from '../facts/complaints.js';
import type { Audit } from '../reasoning/audit.js';
import { compare } from '../reasoning/compare.js';
import type { CauseId } from '../rules/cause-ids.js';
import { confidenceText } from './confidence.js';
import { settledBy } from './report.js';
import { reportCauses } from './report-causes.js';
import { reportSeats } from './report-open.js';
import type { ReportCause, ReportSeat } from './report-types.js';
import { solvedText } from './report-verdict.js';
import { seamlessSwitch } from './seamless.js';
import { SEAT_NUMBERS } from './seat-table.js';
import { answerText, named, quantityText } from './words.js';

interface BeforeAfter {
  readonly label: string;
  readonly before: string;
  readonly after: string;
}

/** How a cause fared. `unknown`: it cannot be told in one of the two. */
export type Fate = 'fixed' | 'better' | 'unchanged' | 'worse' | 'new' | 'unknown';

export interface CauseFate {
  readonly cause: CauseId;
  readonly title: string;
  readonly fate: Fate;
  readonly before: number;
  readonly after: number;
  readonly text: string;
  /** What it rests on that moved, with numbers. */
  readonly values: readonly BeforeAfter[];
}

/** A stated probability that moves by less reads the same to people (nearest 5 %). */
export const MOVED_FROM = 0.025;
/** The cut-offs of the contract: in question from 0.2 on. */
const IN_QUESTION_FROM = 0.2;

/** What differs in what was told, what is heard, the causes, and the numbers of the seats; `summary` is the line that matters. */
export function changesOf(before: Audit, after: Audit) {
  const found = compare(before, after);
  const was = new Map(reportCauses(before).map((cause) => [cause.id, cause]));
  const titles = (ids: readonly (keyof typeof COMPLAINTS)[]): string[] =>
    ids.map((id) => COMPLAINTS[id].title);
  const now = reportCauses(after);
  const switches = [
    seamlessSwitch(before.view, after.book.units),
    seamlessSwitch(after.view, after.book.units),
  ] as const;
  return {
    facts: found.changedFacts.map((fact) => ({
      fact,
      label: factSpec(fact).label,
      before: factWords(before, fact),
      after: factWords(after, fact),
    })),
    causes: now.flatMap((cause) => {
      const earlier = was.get(cause.id);
      return earlier ? [fateOf(earlier, cause)] : [];
    }),
    complaints: {
      fixed: titles(found.complaints.gone),
      unchanged: titles(found.complaints.stayed),
      new: titles(found.complaints.appeared),
    },
    seats: seatChanges(reportSeats(before), reportSeats(after)),
    summary: summaryOf(after, was.get(found.leaders.before), now),
    verdict: {
      before: leaderWords(was.get(found.leaders.before)),
      after: leaderWords(now.find((cause) => cause.id === found.leaders.after)),
      sameLeader: found.leaders.before === found.leaders.after,
    },
    seamless: { before: switches[0].passes, after: switches[1].passes, text: switches[1].summary },
  };
}

function factWords({ book }: Audit, fact: FactId): string {
  const answer = book.answers.get(fact);
  if (!answer) return 'not asked';
  return answerText(book, fact) ?? 'not known';
}

/** Solved, put right, replaced or still there: what the change did to what came first. */
function summaryOf(after: Audit, then: ReportCause | undefined, now: readonly ReportCause[]): string {
  const solvedBy = settledBy(after);
  if (solvedBy) return `${solvedText(solvedBy)}.`;
  const [leader] = now;
  const same = now.find((cause) => cause.id === then?.id);
  if (!leader || !then || !same) return 'Nothing comes first.';
  const moved = `${then.confidence} before, ${same.confidence} after`;
  if (leader.id !== then.id)
    return `${fateWord(then, same) === 'fixed' ? `${named(then.title)} is put right (${moved}).` : `${named(then.title)} comes first no more (${moved}).`} Next in line: ${named(leader.title)}, ${leader.confidence}.`;
  if (Math.abs(same.probability - then.probability) < MOVED_FROM)
    return `Nothing that people would notice changes: ${named(same.title)} still comes first, ${same.confidence}.`;
  return `${named(same.title)} still comes first: ${moved}.`;
}

const leaderWords = (cause: ReportCause | undefined): string =>
  cause ? `${cause.title}: ${cause.confidence}` : 'nothing';

function fateOf(before: ReportCause, after: ReportCause): CauseFate {
  const fate = fateWord(before, after);
  const [p, q] = [before.probability, after.probability];
  return {
    cause: after.id,
    title: after.title,
    fate,
    before: p,
    after: q,
    text: `${confidenceText(p, before.verdict)} before; ${confidenceText(q, after.verdict)} after`,
    values: valueChanges(before, after),
  };
}

/** Evidence of its own that moves by less is the same evidence, decibans. */
const OWN_MOVED_DB = 0.5;

/**
 * A cause is fixed or new only by evidence of its own. What rises because a cure leaves the complaint to the others to
 * explain is no new fault, and what falls because another explains it better was not put right.
 */
function fateWord(before: ReportCause, after: ReportCause): Fate {
  if (before.verdict === 'cannot-tell' || after.verdict === 'cannot-tell') return 'unknown';
  const [p, q] = [before.probability, after.probability];
  const ownDb = ({ decibans, sharedDb }: ReportCause): number => decibans - sharedDb;
  const ownMoved = ownDb(after) - ownDb(before);
  if (p >= IN_QUESTION_FROM && q < IN_QUESTION_FROM && ownMoved <= -OWN_MOVED_DB) return 'fixed';
  if (p < IN_QUESTION_FROM && q >= IN_QUESTION_FROM && ownMoved >= OWN_MOVED_DB) return 'new';
  if (Math.abs(q - p) < MOVED_FROM) return 'unchanged';
  return q < p ? 'better' : 'worse';
}

/** Computed values of the same rule in both audits, where people would read another number. */
function valueChanges(before: ReportCause, after: ReportCause): BeforeAfter[] {
  const was = new Map(before.evidence.map((item) => [item.rule, item]));
  return after.evidence.flatMap((item) => {
    const earlier = was.get(item.rule);
    const [a, b] = [earlier?.valueText ?? null, item.valueText];
    if (a === b || (a === null && b === null)) return [];
    return [
      {
        label: item.valueLabel ?? item.rule,
        before: a ?? 'not known',
        after: b ?? 'not known',
      },
    ];
  });
}

/** The pull stands beside what the table of the seats tells: a change may cure it alone. */
const SEAT_COLUMNS = [
  ...SEAT_NUMBERS,
  {
    of: 'phantomPullDeg',
    head: 'pull to the near main',
    text: (deg: number): string => quantityText(deg, 'deg', 'metric'),
  },
] as const;

function seatChanges(before: readonly ReportSeat[], after: readonly ReportSeat[]) {
  const was = new Map(before.map((seat) => [seat.name, seat]));
  const names = [...new Set([...was.keys(), ...after.map((seat) => seat.name)])];
  return names.flatMap((name) => {
    const [a, b] = [was.get(name), after.find((seat) => seat.name === name)];
    const values = SEAT_COLUMNS.flatMap(({ of, head, text }): BeforeAfter[] => {
      const told = (seat: ReportSeat | undefined): string => {
        if (!seat) return 'no such seat';
        const value = seat[of];
        return value === null ? 'not known' : text(value);
      };
      return told(a) === told(b) ? [] : [{ label: head, before: told(a), after: told(b) }];
    });
    return values.length > 0 ? [{ seat: name, values }] : [];
  });
}
