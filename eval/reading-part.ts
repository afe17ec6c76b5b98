/** `npm run eval -- --reading`: how well free words are read, and what the diagnosis makes of them, on both halves. */
import { readCase } from '../src/facts/case-file.js';
import { draftOf } from '../src/reading/draft.js';
import { readText } from '../src/reading/read.js';
import { auditSync } from '../src/reasoning/audit.js';
import { half, OWNERS, POSTS, type Score, scorePost, TOLD, total } from './reading/score.js';
import { namesOf } from './score-cases.js';
import { percent, type Row, share, table } from './table.js';

/** What was aimed at before anything was built, on the half kept aside. */
const AIMS: Row = ['aim', '92 %', '55 %', '85 %', '3 %'];

function scoreRow(name: string, score: Score): Row {
  return [
    name,
    percent(score.right / score.taken),
    percent(score.choicesFound / score.choices),
    percent(score.numbersFound / score.numbers),
    percent(score.trapsTaken / score.traps),
  ];
}

/** The causes of a text nobody typed into a case, most probable first. */
const rankedBy = (text: string): string[] => namesOf(auditSync(draftOf(readText(text))).ranking);

function ownersRow(name: string, kept: boolean): Row {
  const owners = half(OWNERS, kept).filter(({ truth }) => truth.length > 0);
  const ranks = owners.map(({ post, truth }) => rankedBy(post).findIndex((id) => truth.includes(id)));
  return [
    name,
    owners.length,
    percent(share(ranks.map((at) => at === 0))),
    percent(share(ranks.map((at) => at < 3))),
  ];
}

function toldPart(): string {
  const same = TOLD.map(({ told, case: typed }) => {
    const byHand = namesOf(auditSync(readCase(JSON.stringify(typed)).book).ranking)[0];
    return rankedBy(told)[0] === byHand;
  });
  const stories = TOLD.filter(({ truth }) => truth.length > 0);
  const ranks = stories.map(({ told, truth }) => rankedBy(told).findIndex((id) => truth.includes(id)));
  return `The same first cause as the case typed by hand from the same words: ${percent(share(same))} of ${TOLD.length} (aim 75 %). A true cause first ${percent(share(ranks.map((at) => at === 0)))}, among three ${percent(share(ranks.map((at) => at < 3)))}.`;
}

export function readingPart(): string {
  const halves: readonly (readonly [string, boolean])[] = [
    ['for building', false],
    ['kept aside', true],
  ];
  return [
    '## Free words',
    table(
      ['half', 'taken and right', 'choices and complaints found', 'numbers found', 'traps taken'],
      [...halves.map(([name, kept]) => scoreRow(name, total(half(POSTS, kept).map(scorePost)))), AIMS],
    ),
    table(
      ['owners, read by the program alone', 'with a cause', 'true cause first', 'among three'],
      [...halves.map(([name, kept]) => ownersRow(name, kept)), ['aim', '', '65 %', '82 %']],
    ),
    toldPart(),
  ].join('\n\n');
}
