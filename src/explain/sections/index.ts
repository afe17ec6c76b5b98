/** The parts of a report. A channel chooses parts and their order and writes them; the words are the same everywhere. */
import { type Block, heading, withoutDetails, withoutEmpty } from '../document.js';
import type { Chart } from '../plots/chart.js';
import type { Report } from '../report-types.js';
import { causesBlocks, figureBlocks } from './causes.js';
import { firstBlocks, planBlocks } from './plan.js';
import {
  assumedBlocks,
  othersBlocks,
  seatsBlocks,
  sourcesBlocks,
  switchBlocks,
  toldBlocks,
  unknownBlocks,
  wordsBlocks,
} from './rest.js';
import { clashBlocks, rankingBlocks, separatorBlocks, verdictBlocks, whyBlocks } from './verdict.js';

export { headlineOf } from './verdict.js';

export const titleOf = ({ title }: Pick<Report, 'title'>): string =>
  title ? `Center loudspeaker audit: ${title}` : 'Center loudspeaker audit';

const RANKED_SHOWN = 6;

interface Part {
  /** The heading, and the word for it in every list of contents. */
  readonly title: string;
  readonly blocks: (report: Report, charts: readonly Chart[]) => Block[];
}

const PARTS = {
  verdict: { title: 'Verdict', blocks: verdictBlocks },
  apart: { title: 'What tells them apart', blocks: separatorBlocks },
  first: { title: 'First', blocks: firstBlocks },
  why: { title: 'Why', blocks: whyBlocks },
  clash: { title: 'What does not fit together', blocks: clashBlocks },
  plan: { title: 'What to do', blocks: planBlocks },
  seats: { title: 'Seats', blocks: seatsBlocks },
  pictures: { title: 'Pictures', blocks: figureBlocks },
  switch: { title: 'How to hear that it is right', blocks: switchBlocks },
  ranking: { title: 'What it could be', blocks: (report) => rankingBlocks(report, RANKED_SHOWN) },
  causes: { title: 'All the evidence', blocks: causesBlocks },
  told: { title: 'What was told', blocks: toldBlocks },
  unknown: { title: 'Not known yet', blocks: unknownBlocks },
  assumed: { title: 'Assumed', blocks: assumedBlocks },
  others: { title: 'Other causes', blocks: othersBlocks },
  sources: { title: 'Where the numbers come from', blocks: sourcesBlocks },
  words: { title: 'Words', blocks: wordsBlocks },
} satisfies Readonly<Record<string, Part>>;
export type PartId = keyof typeof PARTS;

export interface Section {
  readonly id: PartId;
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** What helps to find or mend the trouble; once it is solved, nobody wants to read it. */
const OPEN: ReadonlySet<PartId> = new Set(['apart', 'clash', 'plan', 'ranking', 'unknown', 'others']);

/** The parts asked for that have anything to say. */
export function sectionsOf(
  report: Report,
  parts: readonly PartId[],
  { long = true, charts = [] }: { readonly long?: boolean; readonly charts?: readonly Chart[] } = {},
): Section[] {
  const told = parts.filter((id) => !report.solvedBy || !OPEN.has(id));
  return told.flatMap((id): Section[] => {
    const { title, blocks }: Part = PARTS[id];
    const all = blocks(report, charts);
    const filled = withoutEmpty(long ? all : withoutDetails(all));
    return filled.length === 0 ? [] : [{ id, title, blocks: filled }];
  });
}

/** The same, one below the other under their headings. */
export const sectionBlocks = (sections: readonly Section[]): Block[] =>
  sections.flatMap(({ title, blocks }) => [heading(2, title), ...blocks]);
