/** Per complaint: the chance that nothing listed explains it, and what it changes for each cause. */
import { COMPLAINTS, type ComplaintId } from '../facts/complaints.js';
import type { Cause } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { leakShare, sharedDb } from './noisy-or.js';
import { type Complaints, type Leaks, networkOf, type OwnScore } from './score.js';

interface ComplaintShare {
  readonly id: ComplaintId;
  readonly present: boolean;
  /** Chance that nothing listed explains it, given everything told; of present complaints only. */
  readonly leakShare: number | undefined;
  /** Decibans that each cause would lose (or gain, negative) if this complaint had not been told. */
  readonly changeDb: ReadonlyMap<CauseId, number>;
}

export function complaintShares(
  causes: readonly Cause[],
  own: readonly OwnScore[],
  complaints: Complaints,
  leaks: Leaks = COMPLAINTS,
): ComplaintShare[] {
  const { net, heard } = networkOf(causes, own, complaints, leaks);
  const all = sharedDb(net, heard);
  return [...complaints.present, ...complaints.absent].map((id, j) => {
    const present = j < complaints.present.length;
    const without = sharedDb(net, {
      present: heard.present.filter((k) => k !== j),
      absent: heard.absent.filter((k) => k !== j),
    });
    const change = causes.map((cause, i): [CauseId, number] => [
      cause.id,
      own[i]?.applies ? (all[i] ?? 0) - (without[i] ?? 0) : 0,
    ]);
    return {
      id,
      present,
      leakShare: present ? leakShare(net, heard, j) : undefined,
      changeDb: new Map(change),
    };
  });
}
