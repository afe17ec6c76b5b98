/** All causes, in the order of the contract. Written by `npm run index:causes`; do not edit. */
import type { Cause, CauseId } from './cause.js';

export const CAUSES: readonly Cause[] = [];

const BY_ID = new Map<CauseId, Cause>(CAUSES.map((cause) => [cause.id, cause]));

export function causeOf(id: CauseId): Cause {
  const cause = BY_ID.get(id);
  if (!cause) throw new RangeError(`no cause file for ${id}`);
  return cause;
}
export function isCauseId(id: string): id is CauseId {
  return BY_ID.has(id as CauseId);
}
