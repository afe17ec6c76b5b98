/**
 * Layer 1 and 2 put together: for each cause final = prior + groups + shared complaints, in decibans, and
 * the sum is exact.
 */

import type { ComplaintId } from '../facts/complaints.js';
import { largestFirst } from '../lib/ties.js';
import type { Cause } from '../rules/cause.js';
import { KINSHIP } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { Evidence } from '../rules/evidence.js';
import type { Brief } from '../rules/weigh.js';
import { probabilityOf } from './decibans.js';
import { groupDb } from './group.js';
import { type Heard, type NoisyOr, sharedDb } from './noisy-or.js';

/** What the owner hears, and what he was asked about and does not hear. */
export interface Complaints {
  readonly present: readonly ComplaintId[];
  readonly absent: readonly ComplaintId[];
}
export type Leaks = Readonly<Partial<Record<ComplaintId, { readonly leak: number }>>>;

/** One line of the balance sheet: a group of evidence and what it adds, after the temperature. */
export interface GroupLine<E extends Brief = Evidence> {
  readonly group: string;
  readonly decibans: number;
  readonly evidence: readonly E[];
}

export interface Score<E extends Brief = Evidence> {
  readonly cause: CauseId;
  /** Prior of the cause, with the share of systems in which it can exist while that is not told. */
  readonly priorDb: number;
  readonly groups: readonly GroupLine<E>[];
  /** What the complaints add after all causes competed to explain them. */
  readonly sharedDb: number;
  /** priorDb + groups + sharedDb; not capped. */
  readonly decibans: number;
  /** False where the gate of the cause is settled no: it takes no part then. */
  readonly applies: boolean;
}

/** A cause that does not apply is set back by this much, so that no complaint can bring it up (judgement). */
const NOT_APPLICABLE_DB = -60;
/** The group line under which that is written. */
export const GATE_GROUP = 'applies';
/** The group line of what was done and what it did. */
export const TRIAL_GROUP = 'trial';

/** The groups of one cause, strongest first; groups that say nothing are left out. */
export function groupLines<E extends Brief>(
  cause: Cause,
  evidence: readonly E[],
  temperature: number,
): readonly GroupLine<E>[] {
  const groupOf = groupsOfRules(cause);
  const groups: string[] = [];
  const items: E[][] = [];
  for (const item of evidence) {
    const group = item.decibans === 0 ? undefined : groupOf.get(item.rule);
    if (group === undefined) continue;
    const list = items[groups.indexOf(group)];
    if (list) list.push(item);
    else items[groups.push(group) - 1] = [item];
  }
  const lines = items.map((list, place): GroupLine<E> => {
    const group = groups[place] as string;
    const rho = KINSHIP[cause.groups[group] ?? 'independent'];
    const weights = list.map((item) => item.decibans);
    return { group, decibans: groupDb(weights, rho) / temperature, evidence: list };
  });
  return lines.sort((a, b) => largestFirst(Math.abs(a.decibans), Math.abs(b.decibans)));
}

const groupsOf = new WeakMap<Cause, ReadonlyMap<string, string>>();

/** The group of each rule of a cause, found once. */
function groupsOfRules(cause: Cause): ReadonlyMap<string, string> {
  let groups = groupsOf.get(cause);
  if (groups === undefined) {
    groups = new Map(cause.rules.map((rule) => [rule.id, rule.group]));
    groupsOf.set(cause, groups);
  }
  return groups;
}

/** True unless the gate of the cause is settled no, in which case every one of its rules says so. */
export function causeApplies(cause: Cause, evidence: readonly Brief[]): boolean {
  return (
    cause.applies === undefined ||
    evidence.length === 0 ||
    evidence.some((item) => item.outcome !== 'not-applicable')
  );
}

/** Prior and own evidence of a cause, without what it shares with others. */
export type OwnScore<E extends Brief = Evidence> = Omit<Score<E>, 'sharedDb' | 'decibans'> & {
  readonly ownDb: number;
};

export function ownScore<E extends Brief>(
  cause: Cause,
  evidence: readonly E[],
  temperature: number,
  trialsDb = 0,
): OwnScore<E> {
  const applies = causeApplies(cause, evidence);
  const trials =
    trialsDb === 0 ? [] : [{ group: TRIAL_GROUP, decibans: trialsDb / temperature, evidence: [] }];
  const groups = applies
    ? [...groupLines(cause, evidence, temperature), ...trials]
    : [{ group: GATE_GROUP, decibans: NOT_APPLICABLE_DB, evidence: [] }];
  const priorDb = cause.priorDb + (applies ? gateDb(cause, evidence) : 0);
  const ownDb = groups.reduce((sum, line) => sum + line.decibans, priorDb);
  return { cause: cause.id, priorDb, groups, applies, ownDb };
}

/**
 * While nobody has told whether the cause can exist in this system, its prior counts times the share of systems
 * of that kind; in between by the part of the gate that is open.
 */
export function gateDb(cause: Cause, evidence: readonly Brief[]): number {
  const open = evidence.find((item) => item.gateOpen !== undefined)?.gateOpen ?? 0;
  return open === 0 || cause.appliesIn === undefined ? 0 : open * 10 * Math.log10(cause.appliesIn);
}

/** The noisy-OR network over the complaints that were told, present first. */
export function networkOf(
  causes: readonly Cause[],
  own: readonly OwnScore[],
  complaints: Complaints,
  leaks: Leaks,
): { readonly net: NoisyOr; readonly heard: Heard } {
  const ids = [...complaints.present, ...complaints.absent];
  return {
    net: {
      p: own.map((score) => (score.applies ? probabilityOf(score.ownDb) : 0)),
      links: causes.map((cause, i) => ids.map((id) => (own[i]?.applies ? (cause.links[id] ?? 0) : 0))),
      leaks: ids.map((id) => leaks[id]?.leak ?? 0),
    },
    heard: {
      present: complaints.present.map((_, j) => j),
      absent: complaints.absent.map((_, j) => j + complaints.present.length),
    },
  };
}

/** Scores in the order of the causes. */
export function scores(
  causes: readonly Cause[],
  own: readonly OwnScore[],
  complaints: Complaints,
  leaks: Leaks,
): Score[] {
  const { net, heard } = networkOf(causes, own, complaints, leaks);
  const shared = sharedDb(net, heard);
  return own.map(({ ownDb, ...score }, i) => {
    const sharedDb = score.applies ? (shared[i] ?? 0) : 0;
    return { ...score, sharedDb, decibans: ownDb + sharedDb };
  });
}
