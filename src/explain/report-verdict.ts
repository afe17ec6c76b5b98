/** The verdict: what is wrong, how sure, and what would tell the rest apart. */
import { factSpec } from '../facts/catalog.js';
import type { Audit } from '../reasoning/audit.js';
import { isTest } from '../reasoning/hypotheses.js';
import { separators } from '../reasoning/separate.js';
import type { CauseId } from '../rules/cause.js';
import { becauseText, confidenceText, headlineText } from './confidence.js';
import { firstText } from './report-plan.js';
import type { ReportCause, ReportSeparator, ReportStep, ReportVerdict } from './report-types.js';
import { capital, minutesText, named } from './words.js';

/** So many ways to tell each pair of contenders apart. */
const PER_PAIR = 2;

export function reportVerdict(
  audit: Audit,
  causes: readonly ReportCause[],
  plan: readonly ReportStep[],
): ReportVerdict {
  const { ranking, book } = audit;
  const byId = new Map(causes.map((cause) => [cause.id, cause]));
  const title = (id: CauseId): string => byId.get(id)?.title ?? id;
  const leader = byId.get(ranking.leader);
  return {
    headline: headlineText(book, ranking, title),
    confidence: leader ? leader.confidence : confidenceText(0),
    leader: ranking.leader,
    undecided: ranking.undecided,
    because: becauseText(ranking, title),
    first: firstText(plan),
    contenders: ranking.contenders.flatMap((id) => {
      const cause = byId.get(id);
      return cause
        ? [{ id, title: cause.title, probability: cause.probability, confidence: cause.confidence }]
        : [];
    }),
    separatedBy: ranking.undecided ? separatedBy(audit, title) : [],
  };
}

function separatedBy(audit: Audit, title: (id: CauseId) => string): ReportSeparator[] {
  const [leader, ...others] = audit.ranking.contenders;
  if (leader === undefined) return [];
  const seen = new Set<string>();
  return others.flatMap((other) =>
    separators(audit, leader, other)
      .filter(({ fact }) => !seen.has(fact))
      .slice(0, PER_PAIR)
      .map(({ fact, minutes }): ReportSeparator => {
        seen.add(fact);
        const kind = isTest(fact) ? 'test' : 'question';
        const { label, ask } = factSpec(fact);
        const what = kind === 'test' ? `Home test: ${label}` : `Question: ${ask}`;
        return {
          kind,
          fact,
          label,
          causes: [leader, other],
          minutes,
          text: capital(
            `${what} It tells ${named(title(leader))} and ${named(title(other))} apart (${minutesText(minutes)}).`.replace(
              `${label} It`,
              `${label}. It`,
            ),
          ),
        };
      }),
  );
}
