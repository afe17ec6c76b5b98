/** `npm run eval -- --reading`: how well free words are read, and what the diagnosis makes of them, on both halves. */
import { readCase } from '../src/facts/case-file.js';
import { draftOf } from '../src/reading/draft.js';
import { readText } from '../src/reading/read.js';
import { auditSync } from '../src/reasoning/audit.js';
import {
  actsFound,
  half,
  isNearMiss,
  isRead,
  OWNERS,
  POSTS,
  type Score,
  scorePost,
  sentencesOf,
  TOLD,
  total,
  WHOLE_POSTS,
  type WholePost,
} from './reading/score.js';
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

type Told = { readonly text: string; readonly truth: readonly string[] };

/** How often a true cause of those that have one is first, and among three. */
function firstOf(told: readonly Told[]): Row {
  const ranks = told
    .filter(({ truth }) => truth.length > 0)
    .map(({ text, truth }) => rankedBy(text).findIndex((id) => truth.includes(id)));
  const upTo = (most: number): string => percent(share(ranks.map((at) => at >= 0 && at < most)));
  return [ranks.length, upTo(1), upTo(3)];
}

const ownersOf = (kept: boolean): Told[] =>
  half(OWNERS, kept).map(({ post, truth }) => ({ text: post, truth }));

const wholeOf = (part: WholePost['part']): WholePost[] => WHOLE_POSTS.filter((each) => each.part === part);

function sentencesRow(name: string, kept: boolean): Row {
  const all = sentencesOf(kept);
  const [near, told] = [all.filter(isNearMiss), all.filter((each) => !isNearMiss(each))];
  return [name, told.length, percent(share(told.map(isRead))), percent(share(near.map(isRead)))];
}

function toldPart(): string {
  const same = TOLD.map(({ told, case: typed }) => {
    const byHand = namesOf(auditSync(readCase(JSON.stringify(typed)).book).ranking)[0];
    return rankedBy(told)[0] === byHand;
  });
  const [, first, three] = firstOf(TOLD.map(({ told, truth }) => ({ text: told, truth })));
  return `The same first cause as the case typed by hand from the same words: ${percent(share(same))} of ${TOLD.length} (aim 75 %). A true cause first ${first}, among three ${three}.`;
}

export function readingPart(): string {
  const [built, kept] = [wholeOf('building'), wholeOf('kept')];
  return [
    '## Free words',
    table(
      ['posts', 'taken and right', 'choices and complaints found', 'numbers found', 'traps taken'],
      [
        scoreRow('for building', total(half(POSTS, false).map(scorePost))),
        scoreRow('kept aside', total(half(POSTS, true).map(scorePost))),
        scoreRow('later ones, for building', total(built.map(scorePost))),
        scoreRow('later ones, kept aside', total(kept.map(scorePost))),
        AIMS,
      ],
    ),
    table(
      ['read by the program alone', 'with a cause', 'true cause first', 'among three'],
      [
        ['owners for building', ...firstOf(ownersOf(false))],
        ['owners kept aside', ...firstOf(ownersOf(true))],
        ['later posts, for building', ...firstOf(built)],
        ['later posts, kept aside', ...firstOf(kept)],
        ['aim', '', '65 %', '82 %'],
      ],
    ),
    table(
      ['single sentences', 'told', 'read', 'near misses taken'],
      [sentencesRow('for building', false), sentencesRow('kept aside', true)],
    ),
    `Acts read with their outcome: ${percent(actsFound(built))} of the later posts for building, ${percent(actsFound(kept))} of those kept aside.`,
    toldPart(),
  ].join('\n\n');
}
