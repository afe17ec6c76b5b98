/** `try` and `compare` in words: the one line that matters, then only what changed, side by side. */
import type { Audit } from '../reasoning/audit.js';
import { type CauseFate, changesOf, type Fate, MOVED_FROM } from './changes.js';
import {
  type Block,
  bullets,
  heading,
  type Item,
  itemList,
  lines,
  paragraph,
  table,
  withoutEmpty,
} from './document.js';
import { documentText } from './document-text.js';
import { PLAIN_TEXT, type TextOptions } from './terminal.js';
import { capital, listText, plural, sentence } from './words.js';

const TITLES = { try: 'What would change', compare: 'Before and after' } as const;

/** @param command the one that asks, which names format and page */
export const changeReport = (command: keyof typeof TITLES, before: Audit, after: Audit) => ({
  format: `center-audit/${command}` as const,
  version: 1 as const,
  ...changesOf(before, after),
});
export type ChangeReport = ReturnType<typeof changeReport>;

/** In the order of the page; what did not move is counted, not named. */
const FATES: Readonly<Record<Exclude<Fate, 'unchanged' | 'unknown'>, string>> = {
  fixed: 'Put right',
  new: 'Newly in question',
  better: 'Less likely',
  worse: 'More likely',
};

/** The one line that matters, then what was told, what is heard, the seats, and the causes that move. */
function changeBlocks(changes: ChangeReport): Block[] {
  const { fixed, unchanged, new: appeared } = changes.complaints;
  const title = changes.format === 'center-audit/try' ? TITLES.try : TITLES.compare;
  return withoutEmpty([
    heading(1, title),
    paragraph({ strong: changes.summary }),
    ...factTable(changes),
    heading(2, 'What is heard'),
    bullets([
      ...fixed.map((complaint) => `Gone: ${complaint}.`),
      ...(fixed.length + appeared.length > 0 ? unchanged.map((complaint) => `Still: ${complaint}.`) : []),
      ...appeared.map((complaint) => `New: ${complaint}.`),
    ]),
    ...seatTableOf(changes),
    ...(Object.keys(FATES) as (keyof typeof FATES)[]).flatMap((fate) => fateBlocks(changes, fate)),
    heading(2, 'The rest'),
    paragraph(restText(changes)),
    ...seamlessBlocks(changes),
  ]);
}

/** Causes of one fate whose figure moves by as much as people would notice. */
function fateBlocks(changes: ChangeReport, fate: keyof typeof FATES): Block[] {
  const moved = changes.causes.filter(
    (cause) => cause.fate === fate && Math.abs(cause.after - cause.before) >= MOVED_FROM,
  );
  return [heading(2, FATES[fate]), itemList(moved.map(movedItem))];
}

function restText({ causes }: ChangeReport): string {
  const count = (fate: Fate): number => causes.filter((cause) => cause.fate === fate).length;
  const parts = [
    ...(count('unchanged') > 0 ? [`${plural(count('unchanged'), 'cause')} as likely as before`] : []),
    ...(count('unknown') > 0
      ? [`${plural(count('unknown'), 'cause')} that cannot be told in one of the two`]
      : []),
  ];
  return parts.length === 0 ? '' : sentence(listText(parts));
}

function movedItem(cause: CauseFate): Item {
  return {
    line: [{ strong: cause.title }, `: ${cause.text}.`],
    below: lines(
      ...cause.values.map(
        ({ label, before, after }) => `${capital(label)}: ${before} before, ${after} after.`,
      ),
    ),
  };
}

function factTable({ facts, seats }: ChangeReport): Block[] {
  if (facts.length === 0)
    return [
      paragraph(
        seats.length > 0 ? 'No answer differs, but where somebody sits.' : 'The same was told in both.',
      ),
    ];
  return [
    table(
      ['told', 'before', 'after'],
      facts.map(({ label, before, after }) => [capital(label), before, after]),
    ),
  ];
}

function seatTableOf({ seats }: ChangeReport): Block[] {
  const rows = seats.flatMap(({ seat, values }) =>
    values.map(({ label, before, after }) => [seat, label, before, after]),
  );
  return [heading(2, 'At the seats'), table(['seat', '', 'before', 'after'], rows)];
}

const PASSES: Readonly<Record<string, string>> = { true: 'passes', false: 'fails', null: 'cannot be told' };

/** Told only where the change moves it. */
function seamlessBlocks({ seamless }: ChangeReport): Block[] {
  const { before, after, text } = seamless;
  if (before === after) return [];
  return [
    paragraph(
      { strong: 'Seamless switch: ' },
      `${PASSES[String(before)]} before, ${PASSES[String(after)]} after. ${sentence(text)}`,
    ),
  ];
}

export const renderChanges = (report: ChangeReport, options: Partial<TextOptions> = {}): string =>
  documentText(changeBlocks(report), { ...PLAIN_TEXT, ...options });
