/** Why this and not that: two balance sheets side by side, by how much they differ. */
import type { CauseId } from '../rules/cause-ids.js';
import type { Audit } from './audit.js';
import type { Ranked } from './rank.js';
import type { GroupLine } from './score.js';

export interface ContrastRow {
  readonly about: 'evidence' | 'prior' | 'complaints';
  /** What each of the two has in this row; absent where it has nothing. */
  readonly mine?: GroupLine;
  readonly theirs?: GroupLine;
  readonly mineDb: number;
  readonly theirsDb: number;
  /** mineDb - theirsDb: positive speaks for the first cause. */
  readonly differenceDb: number;
}

export interface Contrast {
  readonly cause: CauseId;
  readonly against: CauseId;
  /** Rows that tell the two apart, largest difference first. */
  readonly rows: readonly ContrastRow[];
  /** Rows that both have and that hardly tell them apart. */
  readonly common: readonly ContrastRow[];
  /** Decibans of the first minus those of the second: the sum over all rows, exactly. */
  readonly differenceDb: number;
}

/** Below this difference, in decibans, a row is common to both. */
const COMMON_BELOW_DB = 1;

export function contrast(audit: Audit, cause: CauseId, against: CauseId): Contrast {
  const [mine, theirs] = [rankedOf(audit, cause), rankedOf(audit, against)];
  const evidence = pairedLines(mine.groups, theirs.groups).map(([a, b]) =>
    row('evidence', a?.decibans ?? 0, b?.decibans ?? 0, a, b),
  );
  const rows = [
    ...evidence,
    row('prior', mine.priorDb, theirs.priorDb),
    row('complaints', mine.sharedDb, theirs.sharedDb),
  ].sort((a, b) => Math.abs(b.differenceDb) - Math.abs(a.differenceDb));
  const isCommon = (r: ContrastRow): boolean =>
    Math.abs(r.differenceDb) < COMMON_BELOW_DB &&
    (r.about !== 'evidence' || (r.mine !== undefined && r.theirs !== undefined));
  return {
    cause,
    against,
    rows: rows.filter((r) => !isCommon(r)),
    common: rows.filter(isCommon),
    differenceDb: mine.decibans - theirs.decibans,
  };
}

export function rankedOf(audit: Audit, id: CauseId): Ranked {
  const ranked = audit.ranking.causes.find((r) => r.cause === id);
  if (!ranked) throw new RangeError(`no cause ${id} in this audit`);
  return ranked;
}

function row(
  about: ContrastRow['about'],
  mineDb: number,
  theirsDb: number,
  mine?: GroupLine,
  theirs?: GroupLine,
): ContrastRow {
  return {
    about,
    mineDb,
    theirsDb,
    differenceDb: mineDb - theirsDb,
    ...(mine ? { mine } : {}),
    ...(theirs ? { theirs } : {}),
  };
}

/** Lines of both that rest on the same facts are put in one row; every line appears once. */
function pairedLines(
  mine: readonly GroupLine[],
  theirs: readonly GroupLine[],
): [GroupLine | undefined, GroupLine | undefined][] {
  const left = [...theirs];
  const pairs = mine.map((a): [GroupLine, GroupLine | undefined] => {
    const place = left.findIndex((b) => factKey(a) !== '' && factKey(a) === factKey(b));
    return [a, place < 0 ? undefined : left.splice(place, 1)[0]];
  });
  return [...pairs, ...left.map((b): [undefined, GroupLine] => [undefined, b])];
}

function factKey(line: GroupLine): string {
  return [...new Set(line.evidence.flatMap((item) => item.facts))].sort().join(' ');
}
