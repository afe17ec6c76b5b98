/** The plan as a checklist: boxes that tick without a script, cautions right beside the step. */
import { askAgainLines } from '../report-plan.js';
import type { Report, ReportStep } from '../report-types.js';
import { capital, sentence } from '../words.js';
import { cautionBox, details, esc, type Markup, p, texts } from './markup.js';

const FULL_STEPS = 6;
/** Steps whose instructions are open from the beginning. */
const OPEN_STEPS = 2;

export function planPart(report: Report): Markup {
  const { plan } = report;
  if (plan.length === 0) return '';
  const full = plan.slice(0, FULL_STEPS);
  const rest = plan.slice(FULL_STEPS).map((step, i) => stepItem(step, FULL_STEPS + i));
  return [
    p(
      'Begin at the top and stop when the trouble is gone. Ticks are not kept when the page is closed.',
      'soft',
    ),
    `<ol class="plan">${full.map((step, i) => stepItem(step, i)).join('\n')}</ol>`,
    rest.length > 0
      ? details(`If that does not help: ${rest.length} more`, `<ol class="plan">${rest.join('\n')}</ol>`)
      : '',
    ...askAgainLines(report).map((line) => p(line)),
  ]
    .filter((part) => part !== '')
    .join('\n');
}

const KINDS: Readonly<Record<ReportStep['kind'], string>> = {
  question: 'Find out',
  test: 'Home test',
  remedy: 'Change',
};

function stepItem(step: ReportStep, index: number): Markup {
  const id = `step-${index + 1}`;
  const how = texts(step.steps, 'ol');
  const after = [
    step.expect ? p(`Expect: ${step.expect}`) : '',
    step.verify ? p(`Check: ${step.verify}`) : '',
  ].join('');
  return [
    `<li id="${id}">`,
    `<div class="head"><input type="checkbox" id="${id}-done"><label for="${id}-done">${index + 1}. ${esc(step.title)}</label>`,
    `<p class="effort">${KINDS[step.kind]} · ${esc(step.effort)}</p></div>`,
    '<div class="body">',
    p(sentence(capital(step.because))),
    cautionBox(step.cautions),
    index < OPEN_STEPS ? `${how}${after}` : details('How, and what to expect', `${how}${after}`),
    '</div></li>',
  ].join('');
}
