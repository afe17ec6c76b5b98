/**
 * The report as an answer in a forum, to whoever asked: first one thing to try, then what it looks like and why, then
 * what comes next. Whole sections stay or go, the last ones first; nothing is cut inside. The same post is written in
 * the markup that boards share, in Markdown and in plain text.
 */
import {
  type Block,
  bullets,
  caution,
  type Line,
  paragraph,
  table,
  withoutDetails,
  withoutEmpty,
} from '../document.js';
import { documentBbcode } from '../document-bbcode.js';
import { documentMarkdown } from '../document-markdown.js';
import { documentText } from '../document-text.js';
import type { Report, ReportStep } from '../report-types.js';
import { headlineOf, type PartId, sectionBlocks, sectionsOf } from '../sections/index.js';
import { effortOf } from '../sections/plan.js';
import { evidenceText, leaderOf, reasonOf, speaking } from '../sections/verdict.js';
import { PLAIN_TEXT } from '../terminal.js';
import { sentence } from '../words.js';

export type Markup = 'bbcode' | 'markdown' | 'plain';

export interface PostOptions {
  readonly markup?: Markup;
  /** With all details below a line, for those who want them. */
  readonly long?: boolean;
}

/** What is read to the end: a screen or two of a phone. */
export const LONGEST_POST = 1500;
const STEPS = 3;
const DETAILS: readonly PartId[] = [
  'clash',
  'ranking',
  'causes',
  'switch',
  'unknown',
  'assumed',
  'others',
  'sources',
];

const WRITERS: Readonly<Record<Markup, (blocks: readonly Block[]) => string>> = {
  bbcode: documentBbcode,
  markdown: documentMarkdown,
  // No line is broken: a board wraps by itself.
  plain: (blocks) => documentText(blocks, { ...PLAIN_TEXT, width: Number.MAX_SAFE_INTEGER }),
};

export function renderPost(report: Report, { markup = 'bbcode', long = false }: PostOptions = {}): string {
  const write = WRITERS[markup];
  const post = write(fitted(postOf(report), write));
  if (!long) return post;
  const below = sectionBlocks(sectionsOf(report, DETAILS));
  return `${post}\n${write([paragraph('----- The details, for those who want them -----'), ...below.map(unshouted)])}`;
}

/** A heading in capitals would shout. */
const unshouted = (block: Block): Block =>
  block.kind === 'heading' ? paragraph({ strong: block.text }) : block;

interface Piece {
  /** Lower goes first when the post is too long. */
  readonly worth: number;
  readonly blocks: readonly Block[];
}

function postOf(report: Report): Piece[] {
  const { verdict, plan, solvedBy } = report;
  if (solvedBy)
    return [
      { worth: 9, blocks: solved(report) },
      { worth: 8, blocks: reasons(report) },
    ];
  const [first, ...later] = cautionedOnce(plan);
  const seatRows = sectionsOf(report, ['seats'], { long: false }).flatMap(({ blocks }) => blocks);
  return [
    { worth: 9, blocks: opening(report, first) },
    { worth: 8, blocks: verdict.undecided ? candidates(report) : finding(report) },
    { worth: 6, blocks: verdict.undecided ? [] : reasons(report) },
    { worth: 7, blocks: next(later.filter(({ kind }) => kind !== 'question').slice(0, STEPS)) },
    {
      worth: 4,
      blocks: seatRows.flatMap((block) =>
        block.kind === 'table' ? [table(block.head, block.rows)] : [block],
      ),
    },
    { worth: 5, blocks: [paragraph(closing(report))] },
  ];
}

/** A caution stands beside the first step that needs it; said again at each one it would be read past. */
function cautionedOnce(plan: readonly ReportStep[]): ReportStep[] {
  const said = new Set<string>();
  return plan.map((step) => {
    const cautions = step.cautions.filter((each) => !said.has(each));
    for (const each of cautions) said.add(each);
    return { ...step, cautions };
  });
}

const solved = (report: Report): Block[] => [
  paragraph('Good to hear that it is settled. ', { strong: headlineOf(report) }),
  paragraph('What was most likely wrong: ', { strong: sentence(leaderOf(report)?.title ?? 'not known') }),
];

/** The first free act on top, with how and with its caution. */
function opening({ verdict }: Report, step: ReportStep | undefined): Block[] {
  if (!step)
    return [
      paragraph(`Thanks for asking. ${verdict.first ?? 'From what you tell, nothing needs to be changed.'}`),
    ];
  if (step.kind === 'question')
    return [
      paragraph(
        'Thanks for asking. One thing would help most: ',
        { strong: step.title },
        ` ${step.steps.join(' ')}`,
      ),
    ];
  const free = step.cost === 'free' ? 'here is something free to try first' : 'this is where to begin';
  return [
    paragraph(
      `Thanks for asking; ${free} (${effortOf(step).replace(', free', '')}): `,
      { strong: step.title },
      `. ${step.steps.join(' ')}`,
    ),
    caution(step.cautions),
  ];
}

function finding(report: Report): Block[] {
  const { confidence } = report.verdict;
  return [
    paragraph('What you describe fits this: ', { strong: headlineOf(report) }, ` How sure: ${confidence}.`),
  ];
}

const candidates = ({ verdict, causes }: Report): Block[] => [
  paragraph('It cannot be told for certain yet. These fit what you describe:'),
  bullets(
    verdict.contenders.map(({ id, title, confidence }): Line => {
      const cause = causes.find((each) => each.id === id);
      const isHeard = cause?.evidence.some(({ speaks }) => speaks === 'for') ?? false;
      return [{ strong: title }, ` (${confidence}).${cause && isHeard ? ` ${reasonOf(cause)}` : ''}`];
    }),
  ),
];

/** What happens there, and the number behind it. */
function reasons(report: Report): Block[] {
  const leader = leaderOf(report);
  if (!leader) return [];
  const { heard, computed } = speaking(leader);
  const best = computed[0] ?? heard[0];
  return [paragraph(`${leader.story} ${best ? evidenceText(best) : ''}`.trimEnd())];
}

const next = (steps: readonly ReportStep[]): Block[] =>
  steps.length === 0
    ? []
    : [
        paragraph('If that does not settle it:'),
        {
          kind: 'list',
          style: 'bullet',
          items: steps.map((step) => ({
            line: `${step.title} (${effortOf(step)})`,
            below: [caution(step.cautions)],
          })),
        },
      ];

const closing = ({ verdict }: Report): string =>
  verdict.undecided
    ? 'Tell us what you find, and it can be narrowed down from there.'
    : 'Tell us how it sounds afterward, and whether anything else changed.';

/** Whole pieces, those worth least left out until the rest fits. */
function fitted(all: readonly Piece[], write: (blocks: readonly Block[]) => string): Block[] {
  const order = [...all].sort((a, b) => a.worth - b.worth);
  for (let gone = 0; gone < order.length; gone += 1) {
    const kept = all.filter((piece) => !order.slice(0, gone).includes(piece));
    const blocks = withoutEmpty(withoutDetails(kept.flatMap((piece) => piece.blocks)));
    if (write(blocks).length <= LONGEST_POST) return blocks;
  }
  return [paragraph({ strong: sentence('What you describe fits several causes') })];
}
