/** The report in Markdown for forges and notes: the verdict first. */
import { heading, paragraph } from '../document.js';
import { documentMarkdown } from '../document-markdown.js';
import type { Report } from '../report-types.js';
import { headlineOf, type PartId, sectionBlocks, sectionsOf, titleOf } from '../sections/index.js';

const BRIEF: readonly PartId[] = ['why', 'clash', 'plan', 'seats', 'switch', 'unknown'];
const WHOLE: readonly PartId[] = [
  'why',
  'clash',
  'plan',
  'seats',
  'switch',
  'ranking',
  'causes',
  'told',
  'unknown',
  'assumed',
  'others',
  'sources',
  'words',
];

export function renderMarkdown(report: Report, { long = false }: { readonly long?: boolean } = {}): string {
  const [verdict] = sectionsOf(report, ['verdict'], { long });
  return documentMarkdown([
    heading(1, titleOf(report)),
    paragraph({ strong: headlineOf(report) }),
    ...(verdict?.blocks ?? []),
    ...sectionBlocks(sectionsOf(report, long ? WHOLE : BRIEF, { long })),
  ]);
}
