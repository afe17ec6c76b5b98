/** The causes over many cases, for a support lead: how often each leads, and how much is still open. */
import { type Block, heading, paragraph, table } from '../../explain/document.js';
import { documentText } from '../../explain/document-text.js';
import type { TextOptions } from '../../explain/terminal.js';
import { capital, plural } from '../../explain/words.js';
import type { CauseId } from '../../rules/cause-ids.js';
import { CAUSES } from '../../rules/index.js';
import type { Entry } from './one.js';

/** Counts; a case adds one to `leads`, and one to `likely` or `possible` of every cause with that verdict. */
export interface Summary {
  cases: number;
  bad: number;
  undecided: number;
  readonly causes: ReadonlyMap<CauseId, Counts>;
}
interface Counts {
  leads: number;
  decided: number;
  likely: number;
  possible: number;
}

export function emptySummary(): Summary {
  const none = (): Counts => ({ leads: 0, decided: 0, likely: 0, possible: 0 });
  return { cases: 0, bad: 0, undecided: 0, causes: new Map(CAUSES.map((cause) => [cause.id, none()])) };
}

/** @param entry undefined for a case that could not be audited */
export function addEntry(summary: Summary, entry: Entry | undefined): void {
  if (entry === undefined) {
    summary.bad += 1;
    return;
  }
  summary.cases += 1;
  if (entry.undecided) summary.undecided += 1;
  const leader = summary.causes.get(entry.leader);
  if (leader !== undefined) {
    leader.leads += 1;
    if (!entry.undecided) leader.decided += 1;
  }
  for (const verdict of ['likely', 'possible'] as const) {
    for (const id of entry[verdict]) {
      const counts = summary.causes.get(id);
      if (counts !== undefined) counts[verdict] += 1;
    }
  }
}

/** Causes that appear at all, most frequent leader first; ties in the order of the causes. */
function rows(summary: Summary): { id: CauseId; title: string; counts: Counts }[] {
  return CAUSES.flatMap(({ id, title }) => {
    const counts = summary.causes.get(id);
    return counts && counts.leads + counts.likely + counts.possible > 0 ? [{ id, title, counts }] : [];
  }).sort((a, b) => b.counts.leads - a.counts.leads || b.counts.likely - a.counts.likely);
}

export function summaryText(summary: Summary, options: TextOptions): string {
  const { cases, bad, undecided } = summary;
  const sound = [
    `${plural(cases, 'case')} audited, ${cases - undecided} decided, ${undecided} still open.`,
    ...(bad > 0 ? [`${plural(bad, 'case')} could not be read.`] : []),
  ];
  const blocks: Block[] = [
    heading(1, 'Causes over all cases'),
    paragraph(sound.join(' ')),
    ...(cases === 0
      ? []
      : [
          table(
            ['cause', 'leads', 'decided', 'likely', 'possible'],
            rows(summary).map(({ id, counts }) => [
              id,
              `${counts.leads} (${Math.round((100 * counts.leads) / cases)}%)`,
              ...[counts.decided, counts.likely, counts.possible].map(String),
            ]),
          ),
          paragraph(
            `${capital('leads')}: most probable cause of the case. Decided: it leads and the verdict is no longer open. Likely, possible: cases in which it has this verdict, wherever it stands.`,
          ),
        ]),
  ];
  return documentText(blocks, options);
}

export function summaryJson(summary: Summary): string {
  const { cases, bad, undecided } = summary;
  const causes = rows(summary).map(({ id, title, counts }) => ({ id, title, ...counts }));
  return `${JSON.stringify({ format: 'center-audit/summary', version: 1, cases, bad, undecided, causes }, null, 2)}\n`;
}
