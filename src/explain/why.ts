/** The evidence for and against one cause: a balance sheet that adds up, a contrast, and what would change it. */

import { factSpec } from '../facts/catalog.js';
import { COMPLAINTS } from '../facts/complaints.js';
import { type Audit, complaintsOf } from '../reasoning/audit.js';
import { complaintShares } from '../reasoning/complaint-shares.js';
import { type Contrast, type ContrastRow, contrast } from '../reasoning/contrast.js';
import { type Flip, flips } from '../reasoning/flips.js';
import type { GroupLine } from '../reasoning/score.js';
import type { CauseId } from '../rules/cause-ids.js';
import { tenthsThatSum } from './balance.js';
import { signed, weightText } from './confidence.js';
import {
  type Block,
  bullets,
  heading,
  type Item,
  itemList,
  lines,
  pairs,
  paragraph,
  withoutEmpty,
} from './document.js';
import { reportCauses } from './report-causes.js';
import type { ReportCause, ReportEvidence, ReportGroup } from './report-types.js';
import { capital, factText, listText, markText, named, plural, sentence } from './words.js';

const STRONGEST_FOR = 3;
const STRONGEST_AGAINST = 2;
const FLIPS_SHOWN = 3;
/** Complaints that move the cause by less say nothing about it. */
const COMPLAINT_FROM_DB = 0.1;

interface WhyLine {
  readonly title: string;
  readonly decibans: number;
  readonly note: string;
}

/** Everything `why` says, as plain JSON. */
export type Why = ReturnType<typeof whyOf>;

export function whyOf(audit: Audit, causeId: CauseId, againstId?: CauseId) {
  const causes = reportCauses(audit);
  const cause = causeIn(causes, causeId);
  const speaks = (side: 'for' | 'against', most: number): ReportEvidence[] =>
    cause.evidence.filter((item) => item.speaks === side).slice(0, most);
  return {
    format: 'center-audit/why' as const,
    version: 1 as const,
    cause: causeId,
    title: cause.title,
    confidence: cause.confidence,
    probability: cause.probability,
    // They sum exactly to `decibans`.
    lines: [
      ...cause.groups.map((group) => groupLine(cause, group)),
      { title: 'complaints', decibans: cause.sharedDb, note: cause.sharedText },
      { title: 'prior', decibans: cause.priorDb, note: cause.priorText },
    ],
    decibans: cause.decibans,
    strongestFor: speaks('for', STRONGEST_FOR),
    strongestAgainst: speaks('against', STRONGEST_AGAINST),
    complaints: complaintChanges(audit, causeId),
    open: cause.open.map((fact) => ({ fact, label: factSpec(fact).label })),
    flips: flips(audit)
      .slice(0, FLIPS_SHOWN)
      .map((flip) => flipWords(audit, causes, flip)),
    against: againstId ? contrastWords(causes, contrast(audit, causeId, againstId)) : null,
  };
}

function causeIn(causes: readonly ReportCause[], id: CauseId): ReportCause {
  const cause = causes.find((each) => each.id === id);
  if (!cause) throw new RangeError(`no cause ${id} in this audit`);
  return cause;
}

function groupLine(cause: ReportCause, group: ReportGroup): WhyLine {
  const items = cause.evidence.filter((item) => group.rules.includes(item.rule));
  const text = items[0]?.text ?? '';
  return {
    title: group.title,
    decibans: group.decibans,
    note: [text, group.note && sentence(group.note)].filter(Boolean).join(' '),
  };
}

/** What single complaints change, decibans. */
function complaintChanges(audit: Audit, cause: CauseId) {
  return complaintShares(audit.causes, audit.own, complaintsOf(audit.book))
    .map(({ id, present, changeDb }) => ({
      title: COMPLAINTS[id].title,
      heard: present,
      changeDb: changeDb.get(cause) ?? 0,
    }))
    .filter(({ changeDb }) => Math.abs(changeDb) >= COMPLAINT_FROM_DB)
    .sort((a, b) => Math.abs(b.changeDb) - Math.abs(a.changeDb));
}

function flipWords(audit: Audit, causes: readonly ReportCause[], flip: Flip) {
  const { units } = audit.book;
  const changes = flip.changes.map(
    ({ fact, from, to }) =>
      `${factSpec(fact).label} were “${factText(fact, to, units)}” instead of “${factText(fact, from, units)}”`,
  );
  const leader = named(causeIn(causes, flip.leader).title);
  return { changes, leader: flip.leader, text: `If ${listText(changes)}, ${leader} would lead.` };
}

function contrastWords(causes: readonly ReportCause[], found: Contrast) {
  const [mine, theirs] = [causeIn(causes, found.cause), causeIn(causes, found.against)];
  return {
    cause: found.against,
    title: theirs.title,
    differenceDb: found.differenceDb,
    rows: found.rows.map((row) => ({
      text: rowText(row, mine, theirs),
      mineDb: row.mineDb,
      theirsDb: row.theirsDb,
    })),
    common: listText(found.common.map((row) => commonText(row, mine))),
  };
}

function rowText(row: ContrastRow, mine: ReportCause, theirs: ReportCause): string {
  if (row.about === 'prior') return 'How common each is before anything was told.';
  if (row.about === 'complaints') return 'How well each explains the complaints.';
  const texts = [lineText(row.mine, mine), lineText(row.theirs, theirs)].filter((text) => text !== '');
  return [...new Set(texts)].join(' / ');
}

function commonText(row: ContrastRow, mine: ReportCause): string {
  if (row.about === 'prior') return 'how common they are';
  if (row.about === 'complaints') return 'how well they explain the complaints';
  return `“${lineText(row.mine, mine)}”`;
}

function lineText(line: GroupLine | undefined, cause: ReportCause): string {
  if (!line) return '';
  const rules = new Set(line.evidence.map((item) => item.rule));
  const item = cause.evidence.find((each) => rules.has(each.rule));
  return item?.text ?? sentence(cause.groups.find((group) => group.id === line.group)?.title ?? line.group);
}

/** The same as a document. */
export function whyBlocks(why: Why): Block[] {
  const { parts, total } = tenthsThatSum(why.lines.map((line) => line.decibans));
  return withoutEmpty([
    heading(1, `Why: ${why.title}`),
    paragraph({ strong: `${capital(why.confidence)}.` }),
    heading(2, 'For it'),
    evidenceList(why.strongestFor),
    ...(why.strongestFor.length === 0 ? [paragraph('No answer and no number speaks for it yet.')] : []),
    heading(2, 'Against it'),
    evidenceList(why.strongestAgainst),
    ...(why.strongestAgainst.length === 0 ? [paragraph('No answer and no number speaks against it.')] : []),
    heading(2, 'The complaints'),
    bullets(
      why.complaints.map(
        ({ title, changeDb, heard }) =>
          `${heard ? 'Heard' : 'Not heard'}: ${title}: ${signed(changeDb)} (${weightText(changeDb)}).`,
      ),
    ),
    heading(2, 'The balance, in decibans (10 make the odds ten times longer)'),
    pairs([
      ...why.lines.map((line, i): [string, string] => [
        signed(parts[i] ?? 0),
        sentence(line.note === '' ? line.title : `${line.title}: ${line.note}`),
      ]),
      [`= ${signed(total)}`, `${capital(why.confidence)}.`],
    ]),
    ...contrastBlocks(why),
    heading(2, 'What would change the conclusion'),
    ...flipBlocks(why),
    ...openBlocks(why),
  ]);
}

const evidenceList = (items: readonly ReportEvidence[]): Block => itemList(items.map(evidenceItem));

/** The ratio is that of value and threshold, one way or the other. */
const isOfNumbers = ({ value, threshold, ratio }: ReportEvidence): boolean => {
  if (value === null || threshold === null || ratio === null) return true;
  if (ratio === 0) return value === 0;
  const off = (wanted: number): number => Math.abs(Math.log(wanted / ratio));
  return Math.min(off(value / threshold), off(threshold / value)) < 0.01;
};

/** Value, threshold, ratio, reason, source. */
function evidenceItem(item: ReportEvidence): Item {
  // Of an error in time only what center and mains share is heard, so the ratio may be less than that of the two numbers.
  const times = `${item.ratio?.toFixed(2)} times the limit of ${item.thresholdText}`;
  const ratio =
    item.ratio === null ? '' : isOfNumbers(item) ? `, ${times}` : `; what of it is heard is ${times}`;
  const numbers = item.valueText === null ? [] : [`Value ${item.valueText}${ratio}.`];
  const assumed = item.assumed ? [`Assumed for it: ${item.assumedLabels.join('; ')}.`] : [];
  return {
    line: [{ strong: `${signed(item.decibans)} ` }, `${item.text} (${item.weightText})`],
    below: lines(
      ...numbers,
      `Reason: ${item.because}`,
      ...assumed,
      `Source: ${item.source} [${markText(item.mark)}].`,
    ),
  };
}

function contrastBlocks(why: Why): Block[] {
  const { against } = why;
  if (!against) return [];
  const ahead = against.differenceDb >= 0;
  return [
    heading(2, `Why this and not: ${against.title}`),
    paragraph(
      `${named(why.title)} is ${Math.abs(against.differenceDb).toFixed(1)} decibans ${ahead ? 'ahead of' : 'behind'} ${named(against.title)}.`,
    ),
    bullets(
      against.rows.map((row) => `${signed(row.mineDb)} here, ${signed(row.theirsDb)} there: ${row.text}`),
    ),
    ...(against.common ? [paragraph(`Common to both: ${against.common}.`)] : []),
  ];
}

function flipBlocks(why: Why): Block[] {
  return why.flips.length > 0
    ? [bullets(why.flips.map((flip) => flip.text))]
    : [paragraph('No other choice of one or two of the answers makes another cause lead.')];
}

function openBlocks(why: Why): Block[] {
  if (why.open.length === 0) return [paragraph('Every rule of this cause is settled.')];
  const shown = why.open.slice(0, 5).map((each) => each.label);
  const rest = why.open.length - shown.length;
  return [
    paragraph(
      `Still open for this cause: ${shown.join('; ')}${rest > 0 ? `; ${plural(rest, 'more answer')}` : ''}.`,
    ),
  ];
}
