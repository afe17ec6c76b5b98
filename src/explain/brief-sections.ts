/** The later parts of a report in few lines, for a call: names instead of paragraphs. `--long` tells all of it. */

import { type Block, bullets, heading, numbered, paragraph } from './document.js';
import { askAgainLines } from './report-plan.js';
import { stepItem } from './report-sections.js';
import type { Report, ReportStep } from './report-types.js';
import { capital, minutesText, plural } from './words.js';

/** Steps told with their how; the next ones are named. */
const STEPS_TOLD = 3;
const STEPS_NAMED = 4;
const UNKNOWN_NAMED = 5;

export function briefPlan(report: Report): Block[] {
  const told = report.plan.slice(0, STEPS_TOLD);
  const named = report.plan.slice(STEPS_TOLD, STEPS_TOLD + STEPS_NAMED);
  const items = told.map((step) => stepItem(withoutOutlook(step)));
  return [
    heading(2, 'What to do, in this order'),
    { kind: 'list', style: 'check', items },
    ...(named.length > 0
      ? [paragraph('If that does not help:'), bullets(named.map((step) => `${step.title} (${step.effort}).`))]
      : []),
    ...askAgainLines(report).map((line) => paragraph(line)),
  ];
}

/** What to expect stands with the cause already; how to check stays. */
const withoutOutlook = (step: ReportStep): ReportStep => ({ ...step, expect: '' });

export function briefUnknown(report: Report): Block[] {
  const shown = report.unknown.slice(0, UNKNOWN_NAMED);
  const rest = report.unknown.length - shown.length;
  return [
    heading(2, 'Not known yet'),
    bullets([
      ...shown.map(({ label, minutes }) => `${capital(label)} (${minutesText(minutes)}).`),
      ...(rest > 0 ? [`And ${plural(rest, 'more answer')} that would weigh less.`] : []),
    ]),
  ];
}

export function briefAssumed(report: Report): Block[] {
  if (report.assumed.length === 0) return [];
  const values = report.assumed.map(({ label, value }) => `${label} ${value}`);
  return [
    heading(2, 'Assumed, since it was not told'),
    paragraph(`${capital(values.join('; '))}. What rests on one of these counts no more than a guess.`),
  ];
}

export function briefSeamless(report: Report): Block[] {
  const { summary, steps, note } = report.seamlessSwitch;
  return [
    heading(2, 'The seamless switch: how to hear that it is right'),
    paragraph(summary),
    numbered(steps),
    paragraph(note),
  ];
}

export function briefRest(report: Report): Block[] {
  const parts = [
    ...(report.fine.length > 0 ? [`Fine or unlikely: ${titles(report.fine)}.`] : []),
    ...(report.cannotTell.length > 0
      ? [`Nothing that was told speaks for or against these: ${titles(report.cannotTell)}.`]
      : []),
  ];
  return [heading(2, 'The other causes'), ...parts.map((part) => paragraph(part))];
}

const titles = (list: readonly { readonly title: string }[]): string =>
  list.map(({ title }) => title).join('; ');
