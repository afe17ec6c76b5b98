/**
 * Stories of owners replayed: each begins with what the owner told, the program asks, and he answers what his full
 * story knows, else that he does not know. What is lost between the stop and everything known is lost by the questions.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Answer, FactBook } from '../src/facts/book.js';
import { readCase } from '../src/facts/case-file.js';
import type { FactId } from '../src/facts/catalog.js';
import { type Audit, auditSync } from '../src/reasoning/audit.js';
import { hold, type Interview } from './policies.js';

export const STORIES_FILE = fileURLToPath(new URL('stories/stories.json', import.meta.url));

export interface Story {
  readonly id: string;
  readonly hard: boolean;
  /** Ids of the true causes; empty where the story cannot be decided. */
  readonly truth: readonly string[];
  readonly undecidable: boolean;
  readonly told: FactBook;
  readonly all: FactBook;
}

/** Throws where a case of a story is no sound case. */
export function loadStories(file: string = STORIES_FILE): Story[] {
  const { stories } = JSON.parse(readFileSync(file, 'utf8')) as {
    stories: readonly (Omit<Story, 'told' | 'all'> & Record<'caseFromTold' | 'caseFromAll', unknown>)[];
  };
  return stories.map(({ id, hard, truth, undecidable, caseFromTold, caseFromAll }) => ({
    id,
    hard,
    truth,
    undecidable,
    told: readCase(JSON.stringify(caseFromTold)).book,
    all: readCase(JSON.stringify(caseFromAll)).book,
  }));
}

export interface Replay {
  readonly story: Story;
  readonly interview: Interview;
  /** Is a true cause first (or, where none can be told, is it said so): with what was told, at the stop, with everything known? */
  readonly atStart: boolean;
  readonly atStop: boolean;
  readonly withAll: boolean;
  readonly leaders: readonly [start: string, stop: string, all: string];
  /** Facts that the owner knew and was never asked. */
  readonly unasked: readonly FactId[];
}

export function replay(story: Story): Replay {
  const known = story.all.answers;
  const answer = (id: FactId): Answer => known.get(id) ?? { how: 'unknown' };
  const start = auditSync(story.told);
  const interview = hold(start, answer);
  const all = auditSync(everything(story));
  const rightOf = ({ ranking }: Audit): boolean =>
    story.undecidable ? ranking.undecided : story.truth.includes(ranking.leader);
  return {
    story,
    interview,
    atStart: rightOf(start),
    atStop: rightOf(interview.audit),
    withAll: rightOf(all),
    leaders: [start.ranking.leader, interview.audit.ranking.leader, all.ranking.leader],
    unasked: [...known.keys()].filter((id) => !interview.audit.book.answers.has(id)),
  };
}

/** The full story; what was told first and then left out of it still holds. */
function everything({ told, all }: Story): FactBook {
  const complaints = [...new Set([...told.complaints, ...all.complaints])];
  return { ...all, complaints, answers: new Map([...told.answers, ...all.answers]) };
}

/** Questions and tests that were put, and those that the owner could answer. */
export function asked({ interview, story }: Replay): { readonly put: number; readonly had: number } {
  const had = interview.steps.filter((id) => story.all.answers.has(id)).length;
  return { put: interview.steps.length, had };
}
