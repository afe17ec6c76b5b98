/** `try` and `compare` in words: side by side, only what changed, and last the seamless switch. */
import type { Audit } from '../reasoning/audit.js';
import { type CauseFate, type Changes, changesOf, type Fate, MOVED_FROM } from './changes.js';
import {
  type Block,
  bullets,
  heading,
  type Item,
  lines,
  paragraph,
  table,
  withoutEmpty,
} from './document.js';
import { documentText } from './document-text.js';
import { PLAIN_TEXT, type TextOptions } from './terminal.js';
import { capital, listText, named, sentence } from './words.js';

export interface ChangeReport extends Changes {
  readonly format: 'center-audit/try' | 'center-audit/compare';
  readonly version: 1;
}

export const tryReport = (before: Audit, after: Audit): ChangeReport => ({
  format: 'center-audit/try',
  version: 1,
  ...changesOf(before, after),
});
export const compareReport = (before: Audit, after: Audit): ChangeReport => ({
  format: 'center-audit/compare',
  version: 1,
  ...changesOf(before, after),
});

export function tryBlocks(changes: ChangeReport): Block[] {
  const moved = changes.causes.filter(
    (cause) => cause.fate !== 'unchanged' && Math.abs(cause.after - cause.before) >= MOVED_FROM,
  );
  return withoutEmpty([
    heading(1, 'What would change'),
    ...factTable(changes),
    heading(2, 'Causes that move'),
    { kind: 'list', style: 'bullet', items: moved.map(movedItem) },
    ...(moved.length === 0 ? [paragraph('No cause moves by as much as people would notice.')] : []),
    ...seatTableOf(changes),
    heading(2, 'Verdict'),
    ...verdictBlocks(changes),
    seamlessBlock(changes),
  ]);
}

export const FATES: Readonly<Record<Fate, string>> = {
  fixed: 'Fixed',
  better: 'Better',
  worse: 'Worse',
  new: 'New',
  unchanged: 'Unchanged',
  unknown: 'Cannot be told in one of the two',
};

export function compareBlocks(changes: ChangeReport): Block[] {
  const { fixed, unchanged, new: appeared } = changes.complaints;
  return withoutEmpty([
    heading(1, 'Before and after'),
    ...factTable(changes),
    heading(2, 'What is heard'),
    bullets([
      ...fixed.map((title) => `Fixed: ${title}.`),
      ...unchanged.map((title) => `Unchanged: ${title}.`),
      ...appeared.map((title) => `New: ${title}.`),
    ]),
    ...(Object.keys(FATES) as Fate[]).flatMap((fate) => fateBlocks(changes, fate)),
    ...seatTableOf(changes),
    heading(2, 'Verdict'),
    ...verdictBlocks(changes),
    seamlessBlock(changes),
  ]);
}

/** Causes of one fate; those that hardly move and were never in question are only named. */
function fateBlocks(changes: ChangeReport, fate: Fate): Block[] {
  const list = changes.causes.filter((cause) => cause.fate === fate);
  if (list.length === 0) return [];
  if (fate === 'unchanged' || fate === 'unknown')
    return [heading(2, FATES[fate]), paragraph(`${listText(list.map((cause) => named(cause.title)))}.`)];
  return [heading(2, FATES[fate]), { kind: 'list', style: 'bullet', items: list.map(movedItem) }];
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

function verdictBlocks({ verdict }: ChangeReport): Block[] {
  const { before, after, sameLeader } = verdict;
  return [
    paragraph(
      sameLeader ? 'The same cause comes first. ' : 'Another cause comes first. ',
      `Before: ${before}. After: ${after}.`,
    ),
  ];
}

const PASSES: Readonly<Record<string, string>> = { true: 'passes', false: 'fails', null: 'cannot be told' };

function seamlessBlock({ seamless }: ChangeReport): Block {
  const { before, after, text } = seamless;
  return paragraph(
    { strong: 'Seamless switch: ' },
    `${PASSES[String(before)]} before, ${PASSES[String(after)]} after. ${sentence(text)}`,
  );
}

const shown = (blocks: Block[], options: Partial<TextOptions>): string =>
  documentText(blocks, { ...PLAIN_TEXT, ...options });
export const renderTry = (report: ChangeReport, options: Partial<TextOptions> = {}): string =>
  shown(tryBlocks(report), options);
export const renderCompare = (report: ChangeReport, options: Partial<TextOptions> = {}): string =>
  shown(compareBlocks(report), options);
