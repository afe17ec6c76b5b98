/** What to do, in order: the first step in full, the next ones by name, the rest folded. */
import { type Block, bullets, caution, details, type Item, itemList, paragraph } from '../document.js';
import type { Report, ReportStep } from '../report-types.js';
import { capital, listText, plural, sentence } from '../words.js';

/** Steps that stand open; the others are folded. */
const STEPS_SHOWN = 3;

export function planBlocks(report: Report): Block[] {
  const { plan, askAgain, verdict, trials } = report;
  const items = plan.map((step, i) => stepItem(step, i, verdict.undecided));
  const rest = items.slice(STEPS_SHOWN);
  const labels = listText(askAgain.map(({ label }) => label));
  const keep = listText(trials.filter((trial) => trial.keep).map(({ title }) => title));
  return [
    ...(keep === '' ? [] : [paragraph(`Leave as it is what helped: ${keep}.`)]),
    itemList(items.slice(0, STEPS_SHOWN), 'check'),
    details(
      `If that does not help: ${plural(rest.length, 'more step')}`,
      itemList(rest, 'check', STEPS_SHOWN + 1),
    ),
    // A case does not tell whether an answer is older than the remedy that was tried, so the reader has to.
    ...(labels === '' ? [] : [paragraph(`Ask again what was answered before the change: ${labels}.`)]),
  ];
}

/** The first step as a card, with its caution beside it. */
export function firstBlocks({ plan, verdict, solvedBy }: Report): Block[] {
  const [step] = plan;
  if (solvedBy) return [callout('Do first', paragraph({ strong: 'Nothing: leave it as it is.' }))];
  if (!step) return verdict.first ? [callout('Do first', paragraph({ strong: verdict.first }))] : [];
  return [
    callout(
      FIRST_WORDS[step.kind],
      paragraph({ strong: step.title }),
      paragraph(`${capital(effortOf(step))}. `, { to: 'step-1', text: 'How to do it' }),
      caution(step.cautions),
    ),
  ];
}

const callout = (label: string, ...blocks: Block[]): Block => ({ kind: 'callout', label, blocks });

const FIRST_WORDS: Readonly<Record<ReportStep['kind'], string>> = {
  question: 'Find out first',
  test: 'Try first',
  remedy: 'Do first',
};

/** `15 minutes, free, often helps`: what it takes and what to hope for. */
export const effortOf = ({ effort, helps }: ReportStep): string =>
  helps === null ? effort : `${effort}, ${helps} helps`;

/** One step with its caution right beside it; how it is done stands open for the first one. */
function stepItem(step: ReportStep, index: number, undecided = false): Item {
  const how = paragraph(step.steps.join(' '));
  const because = sentence(step.because);
  const after = bullets([
    ...(index === 0 && undecided ? [] : [because]),
    ...(step.expect ? [`Expect: ${step.expect}`] : []),
    ...(step.verify ? [`Check: ${step.verify}`] : []),
  ]);
  return {
    id: `step-${index + 1}`,
    line: [{ strong: step.title }, ` (${effortOf(step)})`],
    below: [
      ...(index === 0 && undecided ? [paragraph(because)] : []),
      caution(step.cautions),
      ...(index === 0
        ? [how, details('What to expect', after)]
        : [details('How, and what to expect', how, after)]),
    ],
  };
}
