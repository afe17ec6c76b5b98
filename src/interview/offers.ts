/** What can be done once the result is on the screen: home tests, remedies, more questions, or the end. */

import { remedyTitle } from '../explain/report-causes.js';
import { minutesText } from '../explain/words.js';
import { told } from '../facts/book.js';
import { type FactId, factSpec, isFactId, TEST_IDS } from '../facts/catalog.js';
import { canBeAsked, makesSense } from '../reasoning/hypotheses.js';
import { isToMend, next, questionsLeft } from '../reasoning/next.js';
import { plan } from '../reasoning/plan.js';
import { solvedBy } from '../reasoning/trials.js';
import type { Remedy } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { bookOf, type State, WRITTEN, type Written } from './state.js';

type Offer = { readonly id: string; readonly label: string } & (
  | { readonly kind: 'test'; readonly test: FactId }
  | { readonly kind: 'remedy'; readonly cause: CauseId; readonly remedy: Remedy }
  | { readonly kind: 'record' }
  | { readonly kind: 'more' }
  | { readonly kind: 'write'; readonly written: Written }
  | { readonly kind: 'end' }
);

const WRITE_LABELS: Readonly<Record<Written, string>> = {
  ticket: 'write a ticket for a colleague',
  forum: 'write a post for a forum',
  page: 'write a page with plots',
};

/** What one recording at the seat settles, by the cause that asks for it. */
const RECORDED: Readonly<Partial<Record<CauseId, FactId>>> = {
  delay: 'arrivalMeasuredMs',
  level: 'centerAgainstMainsDb',
  polarity: 'polarityMeasured',
  timbre: 'toneMeasuredDb',
};
const FIRST_CAUSES = 3;

/** Where time, level, polarity or tone stands among the first causes and was not measured. */
function wantsRecording(state: State): boolean {
  const first = state.audit.ranking.causes.filter(({ applies }) => applies).slice(0, FIRST_CAUSES);
  return first.some(({ cause }) => {
    const fact = RECORDED[cause];
    return fact !== undefined && told(bookOf(state), fact) === undefined;
  });
}

const MOST_TESTS = 3;
const MOST_REMEDIES = 3;
const recordingTime = minutesText(factSpec('polarityMeasured').minutes);

/** The best tests and remedies of the plan, remedies first where it is sure; then more questions, then the end. */
export function offers(state: State): Offer[] {
  const { audit } = state;
  const isOpen = !solvedBy(audit.book);
  const proposed = next(audit);
  const { steps } = plan(audit, {}, proposed);
  const worth = proposed.candidates.filter((c) => c.kind === 'test').map((c) => c.fact as string);
  const planned = steps.filter((step) => step.kind === 'test').map((step) => step.id);
  const leader = audit.causes.find(({ id }) => id === audit.ranking.leader);
  const own = leader?.confirm.map(({ test }) => test) ?? [];
  const tests = [...new Set<string>([...planned, ...own, ...worth, ...TEST_IDS])]
    .filter(isFactId)
    .filter((id) => isOpen && canBeAsked(audit.heard, id) && makesSense(audit.heard, id))
    .slice(0, MOST_TESTS)
    .map((test): Offer => {
      const { label, minutes } = factSpec(test);
      return {
        kind: 'test',
        id: `did-${test}`,
        test,
        label: `I did the test: ${label} (${minutesText(minutes)})`,
      };
    });
  const remedies = steps
    .filter((step) => step.kind === 'remedy')
    .slice(0, MOST_REMEDIES)
    .flatMap((step): Offer[] => {
      const remedy = audit.causes
        .find((cause) => cause.id === step.cause)
        ?.remedies.find((each) => each.id === step.id);
      if (!remedy) return [];
      const id = `did-${step.cause}/${step.id}`;
      return [
        {
          kind: 'remedy',
          id,
          cause: step.cause,
          remedy,
          label: `I did this: ${remedyTitle(remedy, audit.view, audit.book.units)}`,
        },
      ];
    });
  return [
    ...(isToMend(audit) ? [...remedies, ...tests] : [...tests, ...remedies]),
    ...(isOpen && wantsRecording(state)
      ? [{ kind: 'record', id: 'record', label: `measure it with one recording (${recordingTime})` } as const]
      : []),
    ...(isOpen && questionsLeft(audit) > 0
      ? [{ kind: 'more', id: 'more', label: 'ask me more questions' } as const]
      : []),
    ...WRITTEN.map(
      (written): Offer => ({ kind: 'write', id: `write-${written}`, written, label: WRITE_LABELS[written] }),
    ),
    { kind: 'end', id: 'end', label: 'that is all for now' },
  ];
}
