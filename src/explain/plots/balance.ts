/** How the figure of the first cause came about: prior, lines of evidence, complaints, total. */
import { tenthsThatSum } from '../balance.js';
import { signed } from '../confidence.js';
import type { Report, ReportCause } from '../report-types.js';
import { niceStep } from './arrivals.js';
import { linearAxis } from './axes.js';
import type { BalanceChart } from './chart.js';

/** An even chance lies at zero decibans, by definition of the scale. */
const EVEN_DB = 0;

export function balanceChart(report: Report): BalanceChart | undefined {
  const [leader] = report.causes;
  if (!leader || leader.groups.length === 0) return undefined;
  const lines = linesOf(leader);
  const rounded = tenthsThatSum(lines.map(({ decibans }) => decibans));
  let sum = EVEN_DB;
  const steps = lines.map(({ label, decibans }, i) => {
    const from = sum;
    sum += decibans;
    return { label, from, to: sum, text: signed(rounded.parts[i] ?? decibans), total: false };
  });
  const total = {
    label: 'together',
    from: EVEN_DB,
    to: leader.decibans,
    text: signed(rounded.total),
    total: true,
  };
  const ends = [...steps, total].flatMap(({ from, to }) => [from, to]);
  const [low, high] = [Math.min(...ends, -5), Math.max(...ends, 5)];
  const step = Math.max(5, niceStep(high - low));
  return {
    kind: 'balance',
    id: 'balance',
    title: `How the figure for “${leader.title}” came about`,
    says: `It begins at ${steps[0]?.text ?? '0.0'} decibans before anything was told and ends at ${total.text}: ${leader.confidence}.`,
    notes: [
      'Ten decibans make the odds ten times longer; at zero it is as likely as not. To the right speaks for the cause, to the left against it.',
    ],
    x: linearAxis('decibans', Math.floor(low / step) * step, Math.ceil(high / step) * step, step),
    steps: [...steps, total],
    table: {
      caption: 'Lines of evidence in decibans; they add up exactly',
      head: ['line', 'decibans'],
      rows: [...steps, total].map(({ label, text }) => [label, text]),
    },
  };
}

function linesOf({ priorDb, groups, sharedDb }: ReportCause): { label: string; decibans: number }[] {
  return [
    { label: 'before anything was told', decibans: priorDb },
    ...groups.map(({ title, decibans }) => ({ label: title, decibans })),
    { label: 'the complaints', decibans: sharedDb },
  ];
}
