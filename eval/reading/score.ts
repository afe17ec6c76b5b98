/** How well free words are read: precision, recall and traps on marked posts. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Taken } from '../../src/reading/candidates.js';
import { type Reading, readText } from '../../src/reading/read.js';

export interface Mark {
  readonly phrase: string;
  readonly start: number;
  readonly fact: string | null;
  readonly value?: string | number | boolean | null;
  readonly range?: readonly [number, number];
  readonly how: string;
  readonly negated: boolean;
  readonly when?: string;
  readonly system?: string;
  readonly conflict?: unknown;
}

export interface Post {
  readonly id: string;
  readonly text: string;
  readonly marks: readonly Mark[];
  readonly traps: readonly { readonly phrase: string; readonly start: number }[];
}

const load = <T>(name: string): T =>
  JSON.parse(readFileSync(join(import.meta.dirname, `${name}.json`), 'utf8')) as T;

export const POSTS = load<readonly Post[]>('posts');
export const WHOLE_POSTS = load<readonly WholePost[]>('posts-2');
export const OWNERS =
  load<readonly { id: string; post: string; truth: readonly string[]; undecidable: boolean }[]>('owners');
export const TOLD =
  load<readonly { id: string; told: string; truth: readonly string[]; case: object }[]>('told');
export const PHRASES =
  load<readonly { fact: string; phrases: Record<string, readonly string[]> }[]>('phrases');

/** The half for building (odd positions, counted from 1) or the half kept aside. */
export const half = <T>(list: readonly T[], kept: boolean): T[] =>
  list.filter((_, index) => (index % 2 === 1) === kept);

/** Facts and complaints the marker knew; whatever else is read cannot be judged by these marks. */
const JUDGED = new Set([
  ...PHRASES.map(({ fact }) => fact),
  ...POSTS.flatMap(({ marks }) => marks.map(({ fact }) => fact ?? '')),
]);
/** Places of complaints that the marks name with their seats. */
const SAME_COMPLAINT: Readonly<Record<string, readonly string[]>> = {
  'voice-unclear': ['voice-unclear-everywhere', 'voice-unclear-off-side'],
  boxy: ['boomy', 'hollow'],
};

const isUsable = (mark: Mark): boolean =>
  mark.fact !== null &&
  mark.value !== null &&
  mark.value !== undefined &&
  mark.system === undefined &&
  mark.how !== 'unknown' &&
  mark.conflict === undefined;

/** "Films are fine" is told by either name. */
const isFineContent = (taken: Taken, mark: Mark): boolean =>
  taken.fact === 'playedContent' &&
  taken.negated &&
  mark.fact === 'fineContent' &&
  mark.value === taken.value;

export function agrees(taken: Taken, mark: Mark): boolean {
  if (isFineContent(taken, mark) && !mark.negated) return true;
  if (!(mark.fact === taken.fact || SAME_COMPLAINT[taken.fact]?.includes(mark.fact ?? ''))) return false;
  if (mark.negated !== taken.negated) return false;
  if (typeof mark.value !== 'number' || typeof taken.value !== 'number') return mark.value === taken.value;
  const slack = Math.max(0.02 * Math.abs(mark.value), 0.006);
  const [low, high] = mark.range ?? [mark.value, mark.value];
  return taken.value >= low - slack && taken.value <= high + slack;
}

const isNumber = (mark: Mark): boolean => typeof mark.value === 'number';

export interface Score {
  readonly taken: number;
  readonly right: number;
  readonly choices: number;
  readonly choicesFound: number;
  readonly numbers: number;
  readonly numbersFound: number;
  readonly traps: number;
  readonly trapsTaken: number;
}

/** A post with its true causes and the acts that it tells, each with its outcome. */
export interface WholePost extends Post {
  readonly part: 'building' | 'kept';
  readonly truth: readonly string[];
  readonly acts: readonly { readonly act: string; readonly outcome: string }[];
}

export interface Scored {
  readonly post: Post;
  readonly reading: Reading;
  readonly wrong: readonly Taken[];
  readonly missed: readonly Mark[];
  readonly trapped: readonly Taken[];
  readonly score: Score;
}

export function scorePost(post: Post): Scored {
  const reading = readText(post.text);
  const judged = reading.taken.filter(({ fact }) => JUDGED.has(fact) || fact in SAME_COMPLAINT);
  const marks = post.marks.filter(isUsable);
  const wrong = judged.filter((taken) => !post.marks.some((mark) => agrees(taken, mark)));
  const isFound = (mark: Mark): boolean => reading.taken.some((taken) => agrees(taken, mark));
  const missed = marks.filter((mark) => !isFound(mark));
  const inUnits = (start: number): number => Array.from(post.text).slice(0, start).join('').length;
  const trapped = post.traps.flatMap(({ phrase, start }) => {
    const from = inUnits(start);
    return wrong
      .filter((taken) => taken.start < from + phrase.length && taken.start + taken.phrase.length > from)
      .slice(0, 1);
  });
  const numbers = marks.filter(isNumber);
  const choices = marks.filter((mark) => !isNumber(mark));
  return {
    post,
    reading,
    wrong,
    missed,
    trapped,
    score: {
      taken: judged.length,
      right: judged.length - wrong.length,
      choices: choices.length,
      choicesFound: choices.filter(isFound).length,
      numbers: numbers.length,
      numbersFound: numbers.filter(isFound).length,
      traps: post.traps.length,
      trapsTaken: trapped.length,
    },
  };
}

/** The share of told acts that are read with their outcome. */
export function actsFound(posts: readonly WholePost[]): number {
  const found = posts.flatMap(({ text, acts }) => {
    const { trials } = readText(text);
    return acts.map(({ act, outcome }) =>
      trials.some((trial) => trial.act === act && trial.outcome === outcome),
    );
  });
  return found.filter(Boolean).length / found.length;
}

export function total(scored: readonly Scored[]): Score {
  const sum = (key: keyof Score): number => scored.reduce((all, { score }) => all + score[key], 0);
  return {
    taken: sum('taken'),
    right: sum('right'),
    choices: sum('choices'),
    choicesFound: sum('choicesFound'),
    numbers: sum('numbers'),
    numbersFound: sum('numbersFound'),
    traps: sum('traps'),
    trapsTaken: sum('trapsTaken'),
  };
}

/** A fact, its value (`told` or `denied` of a complaint, the outcome of an act, `-` for a near miss) and how somebody says it. */
type Sentence = readonly [fact: string, value: string, text: string];
const SENTENCES = load<readonly Sentence[]>('sentences');

/** Of the sentences of each fact and value every fourth is kept aside. */
export function sentencesOf(kept: boolean): Sentence[] {
  const seen = new Map<string, number>();
  return SENTENCES.filter(([fact, value]) => {
    const key = `${fact} ${Number.isNaN(Number(value)) ? value : '#'}`;
    const place = (seen.get(key) ?? 0) + 1;
    seen.set(key, place);
    return (place % 4 === 0) === kept;
  });
}

export const isNearMiss = ([, value]: Sentence): boolean => value === '-';

/** Whether the fact is read with the value; of a near miss whether anything is read of it. */
export function isRead([fact, value, text]: Sentence): boolean {
  const { taken, trials } = readText(text);
  const own = taken.filter((each) => each.fact === fact);
  if (trials.some(({ act, outcome }) => act === fact && (value === '-' || outcome === value))) return true;
  if (value === '-' || value === 'told' || value === 'denied')
    return own.some(({ negated }) => value === '-' || negated === (value === 'denied'));
  const mark = { phrase: text, start: 0, fact, how: 'recalled', negated: false };
  const number = Number(value);
  return own.some((each) => agrees(each, { ...mark, value: Number.isNaN(number) ? value : number }));
}
