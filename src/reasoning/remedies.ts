/** Which remedies of a cause are open, and which mend what was seen to be wrong. */
import type { Cause, Remedy } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { offered } from '../rules/gain.js';
import { verdictOf } from '../rules/plain.js';
import type { Audit } from './audit.js';
import { isForbidden, isTried } from './trials.js';

/** Remedies that apply or may apply and were not tried, in the order of the cause file. */
export function openRemedies(audit: Audit, cause: Cause): Remedy[] {
  return offered(cause, audit.view).filter(
    (remedy) => !isTried(audit.book, cause, remedy) && !isForbidden(audit.book, remedy),
  );
}

/** Faults that were seen, not inferred, and what mends each; the likelier cause first. */
export function seenFaults(audit: Audit): { readonly cause: CauseId; readonly remedy: Remedy }[] {
  return audit.ranking.causes.flatMap(({ cause: id, applies }) => {
    const cause = audit.causes.find((one) => one.id === id) as Cause;
    const isSeen = ({ seen }: Remedy): boolean =>
      seen !== undefined && verdictOf(seen, audit.view).truth === 'yes';
    const remedy = applies ? openRemedies(audit, cause).find(isSeen) : undefined;
    return remedy ? [{ cause: id, remedy }] : [];
  });
}
