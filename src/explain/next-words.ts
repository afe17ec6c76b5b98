/** The question or home test worth most now, in words. */
import { factSpec } from '../facts/catalog.js';
import type { Audit } from '../reasoning/audit.js';
import { type Next, next as proposal } from '../reasoning/next.js';
import { plan } from '../reasoning/plan.js';
import { type Block, bullets, heading, numbered, pairs, paragraph, withoutEmpty } from './document.js';
import { documentText } from './document-text.js';
import { reportCauses } from './report-causes.js';
import { firstText, reportNext, reportPlan } from './report-plan.js';
import { stepCautions } from './step-cautions.js';
import { PLAIN_TEXT, type TextOptions } from './terminal.js';
import { aboutMinutesText, capital, minutesText, plural, sentence } from './words.js';

const OTHERS_SHOWN = 4;

/** Everything `next` says, as plain JSON: `Next` of the library, which tells its keys, and `tsc` holds it to that. */
export type NextWords = ReturnType<typeof nextWords>;

export function nextWords(audit: Audit, proposed: Next = proposal(audit)) {
  const spec = proposed.fact === undefined ? undefined : factSpec(proposed.fact);
  const { kind, fact, text, because, minutes } = reportNext(proposed);
  const steps = kind === 'stop' ? reportPlan(plan(audit, {}, proposed), reportCauses(audit)) : [];
  return {
    format: 'center-audit/next' as const,
    version: 1 as const,
    kind,
    fact,
    text,
    because,
    reason: proposed.reason ?? null,
    minutes,
    how: spec?.findOut ?? [],
    choices: spec?.kind === 'choice' ? Object.values(spec.choices) : [],
    cautions: fact === null ? [] : stepCautions(fact),
    mayFollowAtMost: proposed.mayFollowAtMost,
    others: proposed.candidates
      .filter((candidate) => candidate.fact !== fact && candidate.netMinutes > 0)
      .slice(0, OTHERS_SHOWN)
      .map(({ fact: id, minutes: cost, savesMinutes }) => ({
        fact: id,
        label: factSpec(id).label,
        minutes: cost,
        savesMinutes,
      })),
    todo: firstText(steps),
  };
}

/** A bound above this tells a caller nothing but how long the list is. */
const TOLD_UP_TO = 20;

const followText = (most: number): string =>
  most <= TOLD_UP_TO
    ? `At most ${plural(most, 'more question')} may follow.`
    : 'More may follow; only those that pay are asked, about ten in most calls.';

function nextBlocks(words: NextWords): Block[] {
  const what =
    words.kind === 'test' ? 'Home test' : words.kind === 'question' ? 'Question' : 'Enough is known';
  return withoutEmpty([
    heading(1, what),
    paragraph({ strong: sentence(words.text) }),
    pairs([
      ['Why', words.because],
      ...(words.minutes === null
        ? []
        : [['Takes', `${capital(minutesText(words.minutes))}.`] as [string, string]]),
      ...(words.choices.length > 0
        ? [['Answers', `${capital(words.choices.join('; '))}.`] as [string, string]]
        : []),
      ...words.cautions.map((caution, i): [string, string] => [i === 0 ? 'Caution' : '', caution]),
      ...(words.todo ? [['Do', sentence(words.todo)] as [string, string]] : []),
    ]),
    heading(2, 'How to find out'),
    numbered(words.how),
    ...(words.kind === 'stop' ? [] : [paragraph(followText(words.mayFollowAtMost))]),
    heading(2, 'Worth asking after it'),
    bullets(
      words.others.map(
        (each) =>
          `${capital(each.label)}: saves ${aboutMinutesText(each.savesMinutes)}, takes ${minutesText(each.minutes)}.`,
      ),
    ),
  ]);
}

export function renderNext(words: NextWords, options: Partial<TextOptions> = {}): string {
  return documentText(nextBlocks(words), { ...PLAIN_TEXT, ...options });
}
