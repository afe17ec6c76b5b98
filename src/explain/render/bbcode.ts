/**
 * The report as a forum post: a short first paragraph, what to do, and details that can be cut. When it would
 * grow too long, whole parts and lines are left out from the end; a tag is never cut in half.
 */
import { sureSentence } from '../confidence.js';
import { type Block, heading, type Item, lineText, paragraph, withoutEmpty } from '../document.js';
import { blockBbcode } from '../document-bbcode.js';
import {
  assumedSection,
  contradictionSection,
  evidenceLine,
  fineSection,
  possibleSection,
  rankingSection,
  seamlessSection,
  seatsSection,
  stepItem,
  toldSection,
  unknownSection,
} from '../report-sections.js';
import type { Report } from '../report-types.js';
import { sentence } from '../words.js';

export interface BbcodeOptions {
  /** Most characters of the whole post. */
  readonly longest?: number;
}
/** Boards take more; readers do not. */
export const LONGEST_POST = 6000;
/** Steps and lines of evidence that every post keeps. */
const STEPS = 4;
const DIVIDER = paragraph({ strong: '--- Details, can be cut ---' });
const EVIDENCE = 4;
/** Open questions among the details. */
const UNKNOWN = 3;

export function renderBbcode(report: Report, options: BbcodeOptions = {}): string {
  const longest = options.longest ?? LONGEST_POST;
  const body = [...opening(report), ...reasons(report), ...todo(report)];
  const details: Block[][] = [
    rankingSection(report),
    seatsSection(report),
    contradictionSection(report),
    toldSection(report),
    unknownSection(report, UNKNOWN),
    seamlessSection(report),
    assumedSection(report),
    possibleSection(report),
    fineSection(report),
  ];
  return fitted(withoutEmpty(body), details.map(withoutEmpty), longest);
}

function opening(report: Report): Block[] {
  const { headline, undecided, because, separatedBy } = report.verdict;
  return [
    paragraph(
      { strong: sentence(headline) },
      ` ${sureSentence(report.verdict)} ${undecided ? because : ''}`.trimEnd(),
    ),
    ...separatedBy.slice(0, 1).map((each) => paragraph(each.text)),
  ];
}

/** The strongest evidence of the leader, each line with its numbers. */
function reasons(report: Report): Block[] {
  const leader = report.causes.find((cause) => cause.id === report.verdict.leader);
  if (!leader) return [];
  const speaking = leader.evidence.filter((item) => item.speaks !== 'neither').slice(0, EVIDENCE);
  return [
    heading(2, 'Why'),
    paragraph(leader.story),
    { kind: 'list', style: 'bullet', items: speaking.map((item) => ({ line: evidenceLine(item) })) },
  ];
}

function todo(report: Report): Block[] {
  const steps = report.plan.slice(0, STEPS).map((step): Item => {
    const { line, below = [] } = stepItem(step);
    // The reason stands first below a step; the reasons of a post stand above.
    return { line, below: below.slice(1) };
  });
  return [heading(2, 'What to do, in this order'), { kind: 'list', style: 'number', items: steps }];
}

/** Parts in order while there is room; a part that does not fit is shortened or ends early. */
function fitted(body: readonly Block[], details: readonly (readonly Block[])[], longest: number): string {
  const texts: string[] = [];
  let room = longest - 1;
  /** Tells whether anything of the part found room. */
  const add = (part: readonly Block[]): boolean => {
    const before = texts.length;
    let headings = '';
    for (const block of part) {
      const text = fittedBlock(block, room - headings.length);
      if (text === undefined) break;
      // A heading waits for something below it that fits.
      headings += `${text}\n\n`;
      if (isHeading(block)) continue;
      texts.push(headings);
      room -= headings.length;
      headings = '';
    }
    return texts.length > before;
  };
  add(body);
  let divided = false;
  for (const part of details) divided = add(divided ? part : [DIVIDER, ...part]) || divided;
  return `${texts.join('').trimEnd()}\n`;
}

const isHeading = (block: Block): boolean => block.kind === 'heading' || block === DIVIDER;

/** A block, shortened until it fits; undefined where nothing of it does. */
function fittedBlock(block: Block, room: number): string | undefined {
  for (let rest: Block | undefined = block; rest; rest = shortened(rest)) {
    const text = blockBbcode(rest);
    if (text.length <= room) return text;
  }
  return undefined;
}

/** One item, detail, row or sentence less; undefined where nothing can be spared. */
function shortened(block: Block): Block | undefined {
  switch (block.kind) {
    case 'list': {
      const last = block.items.at(-1);
      if (!last) return undefined;
      const below = last.below ?? [];
      const kept = block.items.slice(0, -1);
      // A step is never shown without its cautions: it goes as a whole.
      const spare = below.at(-1);
      if (spare !== undefined && !lineText(spare).startsWith('Caution'))
        return { ...block, items: [...kept, { ...last, below: below.slice(0, -1) }] };
      return kept.length > 0 ? { ...block, items: kept } : undefined;
    }
    case 'pairs':
    case 'table':
    case 'bars':
      return block.rows.length > 1 ? ({ ...block, rows: block.rows.slice(0, -1) } as Block) : undefined;
    case 'quote': {
      const cut = block.text.slice(0, Math.floor(block.text.length * 0.8)).trimEnd();
      return cut.length > 10 ? { ...block, text: `${cut}…` } : undefined;
    }
    default:
      return undefined;
  }
}
