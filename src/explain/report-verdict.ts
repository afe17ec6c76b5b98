/** The verdict: what is wrong, how sure, and what would tell the rest apart. */
import { factSpec } from '../facts/catalog.js';
import type { Audit } from '../reasoning/audit.js';
import { isTest } from '../reasoning/hypotheses.js';
import { separators } from '../reasoning/separate.js';
import type { CauseId } from '../rules/cause-ids.js';
import { becauseText, confidenceText, headlineText } from './confidence.js';
import { firstText } from './report-plan.js';
import type { ReportCause, ReportSeparator, ReportStep, ReportVerdict } from './report-types.js';
import { stepCautions } from './step-cautions.js';
import { capital, listText, named, sentence } from './words.js';

/** So many ways to tell the contenders apart are kept. */
const MOST_SEPARATORS = 3;

export function reportVerdict(
  { ranking, book, options }: Audit,
  causes: readonly ReportCause[],
  plan: readonly ReportStep[],
  separatedBy: readonly ReportSeparator[],
  solvedBy: readonly string[] | null,
): ReportVerdict {
  const byId = new Map(causes.map((cause) => [cause.id, cause]));
  const title = (id: CauseId): string => byId.get(id)?.title ?? id;
  return {
    headline: solvedBy ? solvedText(solvedBy) : headlineText(book, ranking, title),
    confidence: withPriors(byId.get(ranking.leader)?.confidence ?? confidenceText(0), options.priors),
    leader: ranking.leader,
    undecided: ranking.undecided,
    because: [becauseText(ranking, title), ...(options.priors ? [sentence(options.priors)] : [])].join(' '),
    first: solvedBy ? null : firstText(plan),
    contenders: ranking.contenders.flatMap((id) => {
      const cause = byId.get(id);
      return cause
        ? [{ id, title: cause.title, probability: cause.probability, confidence: cause.confidence }]
        : [];
    }),
    separatedBy,
  };
}

/** How sure it is depends on the priors: where they are not the built-in ones, that is said beside it. */
const withPriors = (confidence: string, priors: string | undefined): string =>
  priors === undefined ? confidence : `${confidence} (${priors})`;

/** The state of today leads every headline. */
export const solvedText = (by: readonly string[]): string =>
  by.length === 0 ? 'Solved' : `Solved: ${listText(by)}`;

/** What tells the first contender from most of the others, then most for the minute; nothing once it is decided. */
export function separatorsOf(audit: Audit, causes: readonly ReportCause[]): ReportSeparator[] {
  const [leader, ...others] = audit.ranking.contenders;
  if (leader === undefined || !audit.ranking.undecided) return [];
  const title = (id: CauseId): string => named(causes.find((cause) => cause.id === id)?.title ?? id);
  const found = new Map<ReportSeparator['fact'], { readonly from: CauseId[]; rate: number }>();
  for (const other of others) {
    for (const { fact, minutes, expectedDb } of separators(audit, leader, other)) {
      const entry = found.get(fact) ?? { from: [], rate: 0 };
      entry.from.push(other);
      entry.rate += expectedDb / minutes;
      found.set(fact, entry);
    }
  }
  return [...found]
    .sort(([, a], [, b]) => b.from.length - a.from.length || b.rate - a.rate)
    .slice(0, MOST_SEPARATORS)
    .map(([fact, { from }]): ReportSeparator => {
      const { label, ask, minutes, findOut } = factSpec(fact);
      const kind = isTest(fact) ? 'test' : 'question';
      return {
        kind,
        fact,
        label,
        causes: [leader, ...from],
        minutes,
        text:
          from.length === others.length
            ? 'It tells the candidates apart.'
            : `It tells ${listText([leader, ...from].map(title))} apart.`,
        title: kind === 'test' ? capital(label) : ask,
        how: findOut.join(' '),
        cautions: stepCautions(fact),
      };
    });
}
