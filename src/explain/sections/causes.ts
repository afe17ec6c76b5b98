/** Each leading cause in full: evidence, pictures, what to do, how to confirm it; and the others in a line each. */
import { causeOf } from '../../rules/index.js';
import {
  type Block,
  bullets,
  caution,
  details,
  heading,
  itemList,
  type Line,
  labeled,
  pairs,
  paragraph,
} from '../document.js';
import type { Chart, ChartId } from '../plots/chart.js';
import type { Report, ReportCause } from '../report-types.js';
import { capital, listText, minutesText, plural, sentence } from '../words.js';
import { evidenceText, reasonOf, speaking } from './verdict.js';

/** Pictures that stand open; the others are folded. */
const FIGURES_SHOWN = 2;

const leading = ({ causes }: Report): ReportCause[] => causes.filter(({ place }) => place === 'leading');

export function figureBlocks(report: Report, charts: readonly Chart[]): Block[] {
  const wanted = leading(report).flatMap(({ id }) => causeOf(id).pictures ?? []);
  const order = [...new Set<ChartId>([...wanted, 'room-above', ...charts.map(({ id }) => id)])];
  const figures = order
    .flatMap((id) => charts.find((chart) => chart.id === id) ?? [])
    .map((chart): Block => ({ kind: 'figure', chart }));
  const rest = figures.slice(FIGURES_SHOWN);
  return [...figures.slice(0, FIGURES_SHOWN), details(plural(rest.length, 'more picture'), ...rest)];
}

export const causesBlocks = (report: Report): Block[] => [
  ...leading(report).map((cause) => details(cause.title, ...causeBlocks(cause))),
  details('Also possible', bullets(possible(report))),
];

/** Found, computed, against, why, what to do, how to confirm. */
function causeBlocks(cause: ReportCause): Block[] {
  const { heard, computed, against } = speaking(cause);
  const { remedies, confirm, story, because } = cause;
  return [
    paragraph(`${capital(cause.confidence)}. If true: ${cause.severity}, ${cause.severityText}.`),
    pairs([
      ...labeled('Heard', heard.map(evidenceText)),
      ...labeled('Computed', computed.map(evidenceText)),
      ...labeled('Against', against.map(evidenceText)),
      ['How sure', cause.carriedBy],
      ['Why', because === '' ? story : `${story} ${sentence(because)}`],
    ]),
    ...[...heard, ...computed, ...against].flatMap(({ rule, range }): Block[] =>
      range?.near ? [{ kind: 'gauge', bar: range, id: `range-${cause.id}-${rule}` }] : [],
    ),
    heading(3, 'What to do about it'),
    itemList(
      remedies
        .filter(({ tried }) => !tried)
        .map(({ title, effort, helps, cautions, steps, expect, verify, maybe }) => ({
          line: [{ strong: title }, ` (${effort}, ${helps} helps)`],
          below: [
            caution(cautions),
            paragraph(steps.join(' ')),
            paragraph(
              `Expect: ${expect} Check: ${verify}${maybe ? ' Whether it suits this system is not known yet.' : ''}`,
            ),
          ],
        })),
      'number',
    ),
    heading(3, 'How to confirm it'),
    bullets(confirm.map(confirmLine)),
  ];
}

function confirmLine({ label, minutes, outcomes, confirmed, result }: ReportCause['confirm'][number]): Line {
  const name = { strong: capital(label) };
  if (result !== null && confirmed !== null)
    return [name, `: done, “${result}”. ${confirmed ? 'This confirms it.' : 'This does not confirm it.'}`];
  return [
    name,
    ` (${minutesText(minutes)}). It is this cause if the result is: ${listText(outcomes, 'or')}.`,
  ];
}

const possible = ({ causes }: Report): Line[] =>
  causes
    .filter(({ place }) => place === 'possible')
    .map((cause): Line => [{ strong: cause.title }, `: ${cause.confidence}. ${reasonOf(cause)}`]);
