/** What stands behind the verdict: answers, seats, what is open or assumed, the acceptance test, sources, words. */
import type { Report } from '../report-types.js';
import { seatTable } from '../seat-table.js';
import { capital, listText, minutesText, named, plural, sentence } from '../words.js';
import { markdownHtml } from './markdown.js';
import { cautionBox, dataTable, details, esc, list, type Markup, p, texts } from './markup.js';

const UNKNOWN_SHOWN = 6;
const SETTLES_SHOWN = 2;

export function toldPart(report: Report): Markup {
  const { words, complaints, notHeard, tried, told, notes } = report;
  return [
    words ? `<blockquote><p>${words.split('\n').map(esc).join('<br>')}</p></blockquote>` : '',
    texts([
      ...complaints.map(({ title }) => `You hear: ${title}.`),
      ...notHeard.map(({ title }) => `You do not hear: ${title}.`),
      ...tried.map((title) => `Tried already: ${title}.`),
    ]),
    details(
      `All ${plural(told.length, 'answer')}`,
      dataTable(
        {
          caption: 'Answers, and how each was found out',
          head: ['what', 'answer', 'how'],
          rows: told.map(({ label, value, how }) => [capital(label), value, value === how ? '' : how]),
        },
        'told',
      ),
    ),
    notes.length > 0 ? `<h3>Notes</h3>${notes.map(markdownHtml).join('')}` : '',
  ].join('');
}

export const clashPart = ({ contradictions, remarks }: Report): Markup =>
  texts([...contradictions.map(({ text }) => text), ...remarks.map(sentence)]);

export function seatsPart(report: Report): Markup {
  const { head, rows, notes } = seatTable(report);
  return [
    dataTable({ caption: 'What each seat gets from the center', head, rows }),
    ...notes.map((note) => p(note, 'soft')),
  ].join('');
}

export function unknownPart({ unknown, causes }: Report): Markup {
  const titles = new Map(causes.map(({ id, title }) => [id, title]));
  const item = (each: Report['unknown'][number]): Markup => {
    const names = each.settles.slice(0, SETTLES_SHOWN).map((id) => named(titles.get(id) ?? id));
    const more = each.settles.length - names.length;
    const settles = listText(more > 0 ? [...names, plural(more, 'more cause')] : names);
    return [
      `<strong>${esc(capital(each.label))}</strong> <span class="weight">(${esc(minutesText(each.minutes))})</span>: ${esc(each.howToFindOut)}`,
      settles ? p(`It helps to settle ${settles}.`, 'soft') : '',
      cautionBox(each.cautions),
    ].join('');
  };
  const shown = unknown.filter(({ asked }, i) => asked || i < UNKNOWN_SHOWN);
  const rest = unknown.filter((each) => !shown.includes(each));
  return [
    list(shown.map(item)),
    rest.length > 0
      ? details(
          `${plural(rest.length, 'more answer')} that would help less`,
          p(`${capital(listText(rest.map(({ label }) => label)))}.`),
        )
      : '',
  ].join('');
}

export function assumedPart({ assumed }: Report): Markup {
  if (assumed.length === 0) return '';
  return [
    p('What rests on one of these counts no more than a guess.'),
    dataTable({
      caption: 'Taken as usual, since it was not told',
      head: ['what', 'taken as', 'why', 'effect'],
      rows: assumed.map(({ label, value, note, effect }) => [capital(label), value, note, effect]),
    }),
  ].join('');
}

const MARKS = { true: 'Fits', false: 'Does not fit', null: 'Open' } as const;
export function seamlessPart({ seamlessSwitch }: Report): Markup {
  const { summary, steps, note, checks } = seamlessSwitch;
  const known = checks.filter(({ passes }) => passes !== null);
  return [
    p(summary),
    list(known.map(({ text, passes }) => `<strong>${MARKS[`${passes}`]}:</strong> ${esc(sentence(text))}`)),
    texts(steps, 'ol'),
    p(note, 'soft'),
  ].join('');
}

export function judgedPart({ fine, cannotTell, notApplicable }: Report): Markup {
  const names = (all: Report['cannotTell']): string => all.map(({ title }) => title).join('; ');
  return [
    details(
      `Checked and fine: ${plural(fine.length, 'cause')}`,
      list(fine.map(({ title, text }) => `<strong>${esc(title)}</strong>: no. ${esc(text)}`)),
    ),
    cannotTell.length > 0
      ? p(`Nothing that was told speaks for or against these: ${names(cannotTell)}.`)
      : '',
    notApplicable.length > 0 ? p(`No part of this system: ${names(notApplicable)}.`) : '',
  ].join('');
}

export const sourcesPart = ({ sources }: Report): Markup =>
  texts(sources.map(({ cite, markText }) => `${capital(cite)} [${markText}].`));

export function glossaryPart({ glossary }: Report): Markup {
  if (glossary.length === 0) return '';
  const rows = glossary.map(
    ({ term, meaning }) => `<dt>${esc(capital(term))}</dt><dd>${esc(capital(meaning))}.</dd>`,
  );
  return `<dl>${rows.join('')}</dl>`;
}
