/** What stands behind the verdict: answers, seats, what is open or assumed, the acceptance test, sources, words. */
import {
  type Block,
  bullets,
  caution,
  details,
  itemList,
  type Line,
  numbered,
  pairs,
  paragraph,
  table,
} from '../document.js';
import type { Report, ReportAside, ReportTold } from '../report-types.js';
import { seatTable } from '../seat-table.js';
import { capital, listText, minutesText, named, plural, sentence } from '../words.js';

const UNKNOWN_SHOWN = 5;
const SETTLES_SHOWN = 2;

export function seatsBlocks(report: Report): Block[] {
  const { since } = report;
  const { head, rows, marks, missing } = seatTable(report);
  const today = since && since.seats.length > 0 ? seatTable(since) : undefined;
  const caption = 'What each seat gets from the center';
  const all = [
    paragraph(today ? 'As the trouble was heard:' : ''),
    table(head, rows, today ? `${caption}, as the trouble was heard` : caption),
    ...(today ? [paragraph('Today:'), table(today.head, today.rows, `${caption}, today`)] : []),
    ...marks.map((mark): Block => ({ kind: 'paragraph', line: mark, quiet: true })),
  ];
  return [
    ...sinceBlocks(since),
    // Places alone tell nothing of the sound.
    ...(head.length > 2 ? all : [details('Where the seats are', ...all)]),
    ...missing.map((each) => details('Not computed yet', paragraph(each))),
  ];
}

function sinceBlocks(since: Report['since']): Block[] {
  if (!since) return [];
  return [
    paragraph('The verdict explains what was heard before these changes.'),
    table(
      ['what', 'when heard', 'today'],
      since.facts.map(({ label, heard, today }) => [capital(label), heard, today]),
      'Changed since the trouble was heard',
    ),
  ];
}

/** The acceptance test stands open where music or an upmix is at stake. */
export function switchBlocks({ seamlessSwitch }: Report): Block[] {
  const { summary, steps, note, checks, atStake } = seamlessSwitch;
  const known = checks.filter(({ passes }) => passes !== null);
  const all = [
    bullets(
      known.map(
        ({ text, passes }): Line => [{ strong: passes ? 'Fits: ' : 'Does not fit: ' }, sentence(text)],
      ),
    ),
    numbered(steps),
    paragraph(note),
  ];
  return atStake
    ? [paragraph(summary), details('The seamless switch, step by step', ...all)]
    : [details('The seamless switch, for two-channel music', paragraph(summary), ...all)];
}

export function toldBlocks(report: Report): Block[] {
  const { words, complaints, notHeard, trials, told, notes } = report;
  return [
    { kind: 'quote', text: words ?? '' },
    bullets([
      ...complaints.map(({ title }) => `Heard: ${title}.`),
      ...trials.map(({ text }) => `Tried: ${text}.`),
    ]),
    details(
      `All ${plural(told.length + notHeard.length, 'answer')}`,
      bullets(notHeard.map(({ title }) => `Not heard: ${title}.`)),
      table(
        ['what', 'answer', 'how'],
        told.map(({ label, value, how }) => [capital(label), value, value === how ? '' : how]),
        'Answers, and how each was found out',
      ),
    ),
    ...notes.map((markdown): Block => ({ kind: 'note', markdown })),
  ];
}

export const toldLine = ({ label, value, how }: ReportTold): string =>
  value === how ? `${capital(label)}: ${value}` : `${capital(label)}: ${value} (${how})`;

/** What is worth finding out, best first, with how; what was asked in vain stays in sight. */
export function unknownBlocks({ unknown, causes }: Report): Block[] {
  const titles = new Map(causes.map(({ id, title }) => [id, title]));
  const shown = unknown.filter(({ asked }, i) => asked || i < UNKNOWN_SHOWN);
  const rest = unknown.filter((each) => !shown.includes(each));
  return [
    itemList(
      shown.map(({ label, minutes, howToFindOut, settles, cautions }) => ({
        line: [{ strong: capital(label) }, ` (${minutesText(minutes)})`],
        below: [
          caution(cautions),
          details(
            'How to find out',
            paragraph(howToFindOut),
            paragraph(settlesLine(settles.map((id) => titles.get(id) ?? id))),
          ),
        ],
      })),
    ),
    details(
      `${plural(rest.length, 'more answer')} that would help less`,
      paragraph(rest.length === 0 ? '' : `${capital(listText(rest.map(({ label }) => label)))}.`),
    ),
  ];
}

function settlesLine(titles: readonly string[]): string {
  if (titles.length === 0) return '';
  const shown = titles.slice(0, SETTLES_SHOWN).map(named);
  const rest = titles.length - shown.length;
  return `It helps to settle ${listText(rest > 0 ? [...shown, plural(rest, 'more cause')] : shown)}.`;
}

export const assumedBlocks = ({ assumed }: Report): Block[] =>
  assumed.length === 0
    ? []
    : [
        details(
          `${plural(assumed.length, 'value')} taken as usual`,
          paragraph('What rests on one of these counts no more than a guess.'),
          table(
            ['what', 'taken as', 'why', 'effect'],
            assumed.map(({ label, value, note, effect }) => [capital(label), value, note, effect]),
            'Taken as usual, since it was not told',
          ),
        ),
      ];

export function othersBlocks({ fine, cannotTell, notApplicable, causes }: Report): Block[] {
  const sure = new Map(causes.map(({ id, confidence }) => [id, confidence]));
  const names = (all: readonly ReportAside[]): string => listText(all.map(({ title }) => named(title)));
  return [
    details(
      `Looked at, and fine or unlikely: ${plural(fine.length, 'cause')}`,
      bullets(
        fine.map(
          ({ title, text, cause }): Line => [{ strong: title }, `: ${sure.get(cause) ?? ''}. ${text}`],
        ),
      ),
    ),
    details(
      `Too little is known to judge: ${plural(cannotTell.length, 'cause')}`,
      bullets(cannotTell.map(({ title, text }): Line => [{ strong: title }, `. ${text}`])),
    ),
    details(
      `No part of this system: ${plural(notApplicable.length, 'cause')}`,
      paragraph(notApplicable.length === 0 ? '' : `${names(notApplicable)}.`),
    ),
  ];
}

export const sourcesBlocks = ({ sources }: Report): Block[] => [
  details(
    plural(sources.length, 'source'),
    bullets(sources.map(({ cite, markText }) => `${capital(cite)} [${markText}].`)),
  ),
];

export const wordsBlocks = ({ glossary }: Report): Block[] => [
  details(
    plural(glossary.length, 'word'),
    pairs(glossary.map(({ term, meaning }): [string, Line] => [capital(term), `${capital(meaning)}.`])),
  ),
];
