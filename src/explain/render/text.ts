/** The report for a terminal: the verdict first, and once more where the eye rests, above the next command. */
import { type Block, heading, paragraph } from '../document.js';
import { documentText } from '../document-text.js';
import type { Report } from '../report-types.js';
import { headlineOf, type PartId, sectionBlocks, sectionsOf, titleOf } from '../sections/index.js';
import { shellWord } from '../shell-word.js';
import { PLAIN_TEXT, type TextOptions } from '../terminal.js';
import { capital } from '../words.js';

export interface TextReportOptions extends Partial<TextOptions> {
  /** The case as it stands on the command line, for the next command. */
  readonly caseName?: string;
  /** Everything that is known, with how to find out, assumptions, sources and words; else what a call needs. */
  readonly long?: boolean;
}

const BRIEF: readonly PartId[] = ['verdict', 'why', 'clash', 'seats', 'plan', 'switch'];
const WHOLE: readonly PartId[] = [
  'verdict',
  'why',
  'clash',
  'told',
  'seats',
  'plan',
  'switch',
  'ranking',
  'causes',
  'unknown',
  'assumed',
  'others',
  'sources',
  'words',
];

export function renderText(report: Report, options: TextReportOptions = {}): string {
  const { caseName = 'CASE', long = false, ...text } = options;
  const [verdict, ...rest] = sectionsOf(report, long ? WHOLE : BRIEF, { long });
  const blocks: Block[] = [
    heading(1, titleOf(report)),
    heading(2, 'Verdict'),
    paragraph({ strong: headlineOf(report) }),
    ...(verdict?.blocks ?? []),
    ...sectionBlocks(rest),
    ...closing(report, shellWord(caseName)),
  ];
  return documentText(blocks, { ...PLAIN_TEXT, ...text });
}

/** The verdict in a line, and what brings the reader on: the interview while it is open, else the reasons. */
function closing({ verdict, next, solvedBy }: Report, caseName: string): Block[] {
  const open = solvedBy === null && (verdict.undecided || next.kind === 'question');
  const command = open ? `interview ${caseName}` : `why ${caseName} ${verdict.leader}`;
  const sure = verdict.undecided || solvedBy ? '' : ` ${capital(verdict.confidence)}.`;
  return [
    paragraph({ strong: `${headlineOf({ verdict })}${sure}` }, ' Next:'),
    { kind: 'code', text: `center-audit ${command}` },
  ];
}
