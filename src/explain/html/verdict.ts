/** The first screen: what is wrong, how sure that is, and what to do first. */
import { sureSentence } from '../confidence.js';
import type { Report } from '../report-types.js';
import { capital, minutesText, sentence } from '../words.js';
import { cautionBox, esc, type Markup, meter, p, texts } from './markup.js';

const SEPARATORS_SHOWN = 3;
const RANKED_SHOWN = 6;

export function verdictPart(report: Report): Markup {
  const { headline, because, undecided, separatedBy, contenders } = report.verdict;
  const share = contenders[0]?.probability ?? 0;
  const sure = sureSentence(report.verdict).slice(0, -1);
  return [
    '<section id="verdict" class="verdict" aria-labelledby="verdict-h">',
    p('Verdict', 'eyebrow'),
    `<h1 id="verdict-h">${esc(sentence(headline))}</h1>`,
    `<div class="sure"><span>${esc(sure)}</span>${meter(share)}</div>`,
    firstPart(report),
    p(because),
    undecided && separatedBy.length > 0
      ? `<p><strong>What tells them apart</strong></p>${texts(separatedBy.slice(0, SEPARATORS_SHOWN).map(({ text }) => text))}`
      : '',
    '</section>',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

function firstPart({ plan, verdict }: Report): Markup {
  const [step] = plan;
  if (!step)
    return verdict.first
      ? `<div class="first">${p('Do first', 'eyebrow')}${p(verdict.first, 'what')}</div>`
      : '';
  const kind = step.kind === 'question' ? 'Find out first' : step.kind === 'test' ? 'Try first' : 'Do first';
  const effort = step.kind === 'question' ? minutesText(step.minutes) : step.effort;
  return [
    '<div class="first">',
    p(kind, 'eyebrow'),
    p(step.title, 'what'),
    `<p>${esc(capital(effort))}. <a href="#step-1">How to do it</a></p>`,
    cautionBox(step.cautions),
    '</div>',
  ].join('');
}

export function rankingPart(report: Report): Markup {
  const shown = report.causes.filter((cause) => cause.verdict !== 'not-applicable').slice(0, RANKED_SHOWN);
  const rows = shown.map(
    ({ id, title, place, confidence, probability }) =>
      `<li><span>${place === 'leading' ? `<a href="#cause-${id}">${esc(title)}</a>` : esc(title)}</span><span class="how">${esc(confidence)}</span>${meter(probability)}</li>`,
  );
  return [
    `<ol class="rank">${rows.join('')}</ol>`,
    p('Several causes can be true at once, so the figures need not add up to 100%.', 'soft'),
  ].join('\n');
}
