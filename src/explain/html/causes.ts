/** Each leading cause: found, computed, against, why, what to do, how to check; and the rest in a line each. */

import type { CauseId } from '../../rules/cause.js';
import { nothingOwnText } from '../confidence.js';
import type { Chart, ChartId } from '../plots/chart.js';
import type { Report, ReportCause, ReportEvidence } from '../report-types.js';
import { capital, listText, minutesText, plural, sentence } from '../words.js';
import { figure, rangeFigure } from './figure.js';
import { cautionBox, details, esc, list, type Markup, p, texts } from './markup.js';

/** The picture that tells most about a cause, best first. */
const CHARTS_OF: Readonly<Partial<Record<CauseId, readonly ChartId[]>>> = {
  'driver-layout': ['off-axis', 'room-above'],
  'outer-tweeters': ['off-axis', 'room-above'],
  'off-midline': ['room-above'],
  'mains-layout': ['room-above'],
  height: ['room-side'],
  aim: ['room-side'],
  'near-surface': ['room-side'],
  'blocked-path': ['room-side'],
  delay: ['arrivals', 'comb'],
  'spread-off': ['stage'],
  'fixed-extraction': ['stage'],
  'ambience-setting': ['stage'],
  'screen-loss': ['screen', 'tone'],
  timbre: ['tone'],
  'correction-mismatch': ['tone'],
};

/** More assumptions than this are counted; they are listed on the page once. */
const ASSUMED_NAMED = 2;

export interface CausesPart {
  readonly markup: Markup;
  /** Charts that stand beside a cause; the others follow in their own section. */
  readonly used: ReadonlySet<ChartId>;
}

export function leadingPart({ causes, plan }: Report, charts: readonly Chart[]): CausesPart {
  const used = new Set<ChartId>();
  const articles = causes
    .filter(({ place }) => place === 'leading')
    .map((cause, i) => {
      const own = (CHARTS_OF[cause.id] ?? []).flatMap((id) => {
        const chart = charts.find((each) => each.id === id);
        if (!chart || used.has(id)) return [];
        used.add(id);
        return [chart];
      });
      return article(cause, i + 1, own, plan);
    });
  return { markup: articles.join('\n'), used };
}

type Plan = Report['plan'];

function article(cause: ReportCause, place: number, charts: readonly Chart[], plan: Plan): Markup {
  const forIt = cause.evidence.filter(({ speaks }) => speaks === 'for');
  const against = cause.evidence.filter(({ speaks }) => speaks === 'against');
  const found = forIt.filter(({ value }) => value === null);
  const computed = forIt.filter(({ value }) => value !== null);
  const ranges = [...forIt, ...against].flatMap(({ rule, range }) =>
    range?.near ? [rangeFigure(range, `range-${cause.id}-${rule}`)] : [],
  );
  return [
    `<article id="cause-${cause.id}" class="cause" aria-labelledby="cause-${cause.id}-h">`,
    `<h3 id="cause-${cause.id}-h">${place}. ${esc(cause.title)}</h3>`,
    `<p><strong>${esc(capital(cause.confidence))}.</strong> If true: ${esc(cause.severity)}, ${esc(cause.severityText)}.</p>`,
    part('Found', said(found)),
    part('Computed', said(computed), ...ranges),
    forIt.length === 0 ? part('Found', p(nothingOwnText(cause))) : '',
    part('Speaks against it', said(against)),
    ...charts.map(figure),
    part('Why it harms', p(cause.story), forIt[0] ? p(sentence(forIt[0].because)) : ''),
    part('What to do', remediesPart(plan, cause)),
    part('How to make sure', confirmPart(plan, cause)),
    details('When it is wrongly blamed', p(cause.notWhen)),
    '</article>',
  ]
    .filter((each) => each !== '')
    .join('\n');
}

function part(title: string, ...inner: readonly Markup[]): Markup {
  const all = inner.filter((each) => each !== '').join('\n');
  return all === '' ? '' : `<h4>${esc(title)}</h4>\n${all}`;
}

const said = (items: readonly ReportEvidence[]): Markup => list(items.map(evidence));

export function evidence({ text, weightText, assumedLabels }: ReportEvidence): Markup {
  const many = assumedLabels.length > ASSUMED_NAMED;
  const named = many ? plural(assumedLabels.length, 'value') : listText(assumedLabels);
  const assumed = assumedLabels.length > 0 ? `; assumed: ${named}` : '';
  return `${esc(text)} <span class="weight">(${esc(weightText + assumed)})</span>`;
}

/** Where the plan tells how: a link there, or the steps themselves where it is not in the plan. */
function howPart(plan: Plan, cause: CauseId, id: string, how: Markup): Markup {
  const at = plan.findIndex((step) => step.id === id && (step.kind !== 'remedy' || step.cause === cause));
  return at < 0 ? details('Steps', how) : ` <a href="#step-${at + 1}">Step ${at + 1} of the plan</a>`;
}

function remediesPart(plan: Plan, cause: ReportCause): Markup {
  const open = cause.remedies.filter(({ tried }) => !tried);
  const items = open.map(({ id, title, effort, expect, verify, maybe, steps, cautions }) => {
    const how = `${cautionBox(cautions)}${texts(steps, 'ol')}${p(`Check: ${verify}`)}`;
    const unsure = maybe ? ' If it suits your system; that is not known yet.' : '';
    return `<strong>${esc(title)}</strong> <span class="weight">(${esc(effort)})</span>${p(`Expect: ${expect}${unsure}`)}${howPart(plan, cause.id, id, how)}`;
  });
  return list(items, 'ol');
}

function confirmPart(plan: Plan, { id: cause, confirm }: ReportCause): Markup {
  const items = confirm.map(({ test, label, minutes, outcomes, confirmed, result, cautions, steps }) => {
    const name = `<strong>${esc(capital(label))}</strong>`;
    if (result !== null && confirmed !== null)
      return `${name}: done, “${esc(result)}”. ${confirmed ? 'This confirms it.' : 'This does not confirm it.'}`;
    const how = howPart(plan, cause, test, `${cautionBox(cautions)}${texts(steps, 'ol')}`);
    return `${name} (${esc(minutesText(minutes))}). It is this cause if the result is: ${esc(listText(outcomes, 'or'))}.${how}`;
  });
  return list(items);
}

export function possiblePart({ causes }: Report): Markup {
  return list(
    causes
      .filter(({ place }) => place === 'possible')
      .map((cause) => {
        const best = cause.evidence.find(({ speaks }) => speaks === 'for');
        const reason = best?.text ?? 'Nothing of its own is known yet; the complaint fits.';
        const remedy = cause.remedies.find(({ tried }) => !tried);
        const todo = remedy ? ` To do: ${remedy.title} (${remedy.effort}).` : '';
        return `<strong>${esc(cause.title)}</strong>: ${esc(`${cause.confidence}. ${reason}${todo}`)}`;
      }),
  );
}
