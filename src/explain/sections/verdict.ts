/** What is wrong, how sure that is and why: the part that is read when nothing else is. */
import { type Block, bullets, caution, type Line, labeled, numbered, pairs, paragraph } from '../document.js';
import type { Report, ReportCause, ReportEvidence } from '../report-types.js';
import { capital, listText, minutesText, sentence } from '../words.js';

/** Evidence of at least this many decibans against the first cause is told beside what speaks for it. */
const AGAINST_FROM_DB = 5;
/** More assumptions than this are counted; all of them are listed once. */
const ASSUMED_NAMED = 2;
const ASSUMED_VALUES = 3;

export const headlineOf = ({ verdict }: Pick<Report, 'verdict'>): string => sentence(verdict.headline);

export const leaderOf = ({ causes, verdict }: Report): ReportCause | undefined =>
  causes.find(({ id }) => id === verdict.leader);

const contendersOf = ({ verdict, causes }: Report): ReportCause[] =>
  verdict.contenders.flatMap(({ id }) => causes.find((cause) => cause.id === id) ?? []);

/** How sure and how bad; while nothing is decided, what remains. */
export function verdictBlocks(report: Report): Block[] {
  const { undecided, confidence, because, contenders } = report.verdict;
  const leader = leaderOf(report);
  if (report.solvedBy && leader)
    return [
      paragraph(
        'What was most likely wrong: ',
        { strong: sentence(leader.title) },
        ` ${capital(confidence)}.`,
      ),
    ];
  if (!undecided && leader)
    return [paragraph(`${capital(confidence)}. ${capital(leader.severity)}: ${leader.severityText}.`)];
  return [
    paragraph(because),
    numbered(contenders.map((each): Line => [{ strong: each.title }, `: ${each.confidence}.`])),
  ];
}

/** What speaks for each candidate; nothing where none has a reason of its own. */
const reasonsOf = (causes: readonly ReportCause[]): Block =>
  numbered(
    causes.some(({ evidence }) => evidence.some(({ speaks }) => speaks === 'for'))
      ? causes.map(reasonOf)
      : [],
  );

export function reasonOf(cause: ReportCause): string {
  const best = cause.evidence.find(({ speaks }) => speaks === 'for');
  return best ? evidenceText(best) : 'Nothing of its own is known yet; the complaint fits.';
}

/** A finding with a mark where it rests on values that nobody told. */
export function evidenceText({ text, assumedLabels }: ReportEvidence): string {
  if (assumedLabels.length === 0) return text;
  const what =
    assumedLabels.length > ASSUMED_NAMED ? `${assumedLabels.length} values` : listText(assumedLabels);
  return `${text} (Assumed: ${what}.)`;
}

/** The one step that tells the candidates apart. */
export function separatorBlocks({ verdict }: Report): Block[] {
  const [apart] = verdict.separatedBy;
  if (!apart) return [];
  return [
    {
      kind: 'callout',
      label: 'One step tells them apart',
      blocks: [
        paragraph({ strong: apart.title }),
        paragraph(`${capital(minutesText(apart.minutes))}. `, { to: 'step-1', text: 'How to do it' }),
        caution(apart.cautions),
      ],
    },
  ];
}

/** What was heard, what was computed, what was assumed, and what carries the figure. */
export function whyBlocks(report: Report): Block[] {
  const leader = leaderOf(report);
  if (!leader) return [];
  if (report.verdict.undecided) return [reasonsOf(contendersOf(report))];
  const { heard, computed, against } = speaking(leader);
  const shown = [...heard.slice(0, 1), ...computed.slice(0, 1)];
  const strongAgainst = against.filter(({ decibans }) => decibans <= -AGAINST_FROM_DB);
  return [
    pairs([
      ...labeled(
        'Heard',
        heard.length > 0 ? heard.slice(0, 1).map(({ text }) => text) : [complaintText(report)],
      ),
      ...labeled(
        'Computed',
        computed.slice(0, 1).map(({ text }) => text),
      ),
      ...labeled(
        'Against',
        strongAgainst.slice(0, 1).map(({ text }) => text),
      ),
      ...labeled('Assumed', assumedValues(report, shown)),
      ['How sure', leader.carriedBy],
    ]),
  ];
}

export function speaking({ evidence }: ReportCause): {
  readonly heard: readonly ReportEvidence[];
  readonly computed: readonly ReportEvidence[];
  readonly against: readonly ReportEvidence[];
} {
  const forIt = evidence.filter(({ speaks }) => speaks === 'for');
  return {
    heard: forIt.filter(({ value }) => value === null),
    computed: forIt.filter(({ value }) => value !== null),
    against: evidence.filter(({ speaks }) => speaks === 'against'),
  };
}

const complaintText = ({ complaints }: Report): string =>
  complaints.length === 0
    ? 'No complaint was told.'
    : sentence(listText(complaints.map(({ title }) => title)));

/** Values taken as usual behind what is shown, in one line. */
function assumedValues({ assumed }: Report, shown: readonly ReportEvidence[]): string[] {
  const labels = new Set(shown.flatMap(({ assumedLabels }) => assumedLabels));
  const values = assumed
    .filter(({ label }) => labels.has(label))
    .map(({ label, value }) => `${label} ${value}`);
  if (values.length === 0) return [];
  const rest = values.length - ASSUMED_VALUES;
  const all = rest > 0 ? [...values.slice(0, ASSUMED_VALUES), `${rest} more`] : values;
  return [`${capital(listText(all))}.`];
}

/** What is not true together, before anything is built on it. */
export const clashBlocks = ({ contradictions, remarks }: Report): Block[] => [
  bullets([...contradictions.map(({ text }) => text), ...remarks.map(sentence)]),
];

/** Every cause that is worth a look, by how sure it is. */
export function rankingBlocks({ causes }: Report, most: number): Block[] {
  const shown = causes.filter(({ verdict }) => verdict !== 'not-applicable').slice(0, most);
  return [
    {
      kind: 'meters',
      rows: shown.map(({ probability, title, confidence }) => ({
        share: probability,
        label: title,
        value: confidence,
      })),
    },
    {
      kind: 'paragraph',
      line: 'Several causes can be true at once, so the figures need not add up to 100%.',
      quiet: true,
    },
  ];
}
