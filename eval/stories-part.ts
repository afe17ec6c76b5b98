/** The replayed stories as a part of the evaluation: what the interview loses of what its owners know. */
import { isTest } from '../src/reasoning/hypotheses.js';
import { mean, median } from './metrics.js';
import { asked, loadStories, type Replay, replay } from './replay.js';
import { percent, type Row, share, table } from './table.js';

/** @param traced id of one story whose every step is listed, or `all` */
export function storiesPart(file?: string, traced?: string): string {
  const replays = loadStories(file).map(replay);
  const rows = [
    row('all', replays),
    row(
      'hard',
      replays.filter(({ story }) => story.hard),
    ),
  ];
  const lost = replays.filter((each) => each.withAll && !each.atStop);
  const won = replays.filter((each) => !each.withAll && each.atStop);
  return [
    '## Stories of owners, replayed',
    table(
      [
        'stories',
        'number',
        'first at the start',
        'at the stop',
        'everything known',
        'questions',
        'home tests',
        'could be had',
      ],
      rows,
    ),
    'First: a true cause leads, or what nobody can tell is reported as undecided. Questions and home tests: median (mean).',
    lost.length === 0
      ? 'The interview lost none.'
      : `Lost by the interview: ${lost.map(lostWords).join('; ')}.`,
    ...(won.length === 0 ? [] : [`Right at the stop only: ${won.map(({ story }) => story.id).join(', ')}.`]),
    ...replays.filter(({ story }) => traced === 'all' || story.id === traced).map(trace),
  ].join('\n\n');
}

function row(name: string, replays: readonly Replay[]): Row {
  const counts = (count: (each: Replay) => number): string =>
    `${median(replays.map(count))} (${mean(replays.map(count)).toFixed(1)})`;
  const put = replays.map(asked);
  const sum = (pick: (each: { put: number; had: number }) => number): number =>
    put.reduce((all, each) => all + pick(each), 0);
  return [
    name,
    replays.length,
    percent(share(replays.map(({ atStart }) => atStart))),
    percent(share(replays.map(({ atStop }) => atStop))),
    percent(share(replays.map(({ withAll }) => withAll))),
    counts(({ interview }) => interview.questions),
    counts(({ interview }) => interview.tests),
    percent(sum(({ had }) => had) / sum(({ put: all }) => all)),
  ];
}

const lostWords = ({ story, leaders, unasked }: Replay): string =>
  `${story.id} (${leaders[1]} instead of ${story.truth.join(', ') || 'undecided'}, never asked: ${unasked.join(', ') || 'nothing'})`;

/** Every step of one replay, and what the owner said. */
function trace({ story, interview, leaders, unasked }: Replay): string {
  const said = (id: (typeof interview.steps)[number]): string => {
    const answer = story.all.answers.get(id);
    return answer && 'value' in answer ? String(answer.value) : '?';
  };
  const [first] = interview.audit.ranking.causes;
  return [
    `### ${story.id} (${story.truth.join(', ') || 'undecidable'})`,
    interview.steps.map((id) => `${isTest(id) ? 'test ' : ''}${id} = ${said(id)}`).join('; '),
    `Stop: ${interview.reason}, ${first?.cause} at ${percent(first?.probability ?? 0)}; leaders ${leaders.join(' -> ')}; never asked: ${unasked.join(', ') || 'nothing'}.`,
  ].join('\n\n');
}
