/** What to ask or do next, or why to stop. */
import { FACT_IDS, type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { minutesText as countedMinutes } from '../facts/format.js';
import type { Family } from '../facts/spec.js';
import type { Audit } from './audit.js';
import { type Asked, blockQuestion } from './blocks.js';
import { canBeAsked, isTest, makesSense, openFacts } from './hypotheses.js';
import { isTiring, isWithinReach, knownChance } from './knows.js';
import { PATIENCE_MINUTES, shownMinutes, wholeMinutes } from './minutes.js';
import { DECIDED_LEAD_DB } from './rank.js';
import { isSettled } from './reach.js';
import { seenFaults } from './remedies.js';
import { ruleIndex } from './rule-index.js';
import { solvedBy } from './trials.js';
import { type Candidate, candidatesOf } from './worth.js';

/** Why nothing more is asked. */
type StopReason =
  /** Something that was done ended the trouble. */
  | 'solved'
  /** What leads was seen to be wrong, not inferred: it is mended before anything else can be judged. */
  | 'seen'
  /** The leader is probable and well ahead. */
  | 'sure'
  /** Whatever is still answered, the same cause leads. */
  | 'settled'
  /** Every open question costs more than it saves. */
  | 'not-worth-asking'
  /** No question is open that any conclusion depends on. */
  | 'nothing-open'
  /** The time given is used up. */
  | 'time-up';

export interface Next {
  readonly kind: 'question' | 'test' | 'stop';
  /** The question or home test; absent for a stop. */
  readonly fact?: FactId;
  /** Present for a stop, and for a test the reason why no more questions come first, if there is one. */
  readonly reason?: StopReason;
  /** One or two plain sentences. */
  readonly because: string;
  /** What the question or test is worth; absent where it only leads to one that is. */
  readonly candidate?: Candidate | undefined;
  /** Everything open that can move a conclusion, best first. */
  readonly candidates: readonly Candidate[];
  /** At most so many questions may still follow (home tests not counted). */
  readonly mayFollowAtMost: number;
}

export interface NextOptions {
  /** Minutes left for questions and tests. */
  readonly minutesLeft?: number;
  /** Ask everything that makes sense, in the order of the catalog, for a complete audit. */
  readonly full?: boolean;
  /** Topic of the conversation; that of the last answer when left out. */
  readonly family?: Family;
  /** Facts that are not asked where this interview is held. */
  readonly leaveOut?: (id: FactId) => boolean;
  /** Leave home tests out: only questions are proposed. */
  readonly questionsOnly?: boolean;
}

/** The leader is sure from this probability on, when it is this far ahead (contract). */
const SURE_FROM = 0.9;
const SURE_LEAD_DB = 10;
/** The topic is kept unless another question saves more than this, in minutes or as a part (judgement). */
const JUMP_FOR_MINUTES = 0.5;
const JUMP_FOR_PART = 0.25;

/** Nobody knows what only a recording tells: one is offered as a whole, never asked for by its parts. */
const canBeKnown = ({ heard }: Audit, id: FactId): boolean =>
  factSpec(id).family !== 'recording' && isWithinReach(heard, id);

export function next(audit: Audit, options: NextOptions = {}): Next {
  const left = options.minutesLeft ?? Number.POSITIVE_INFINITY;
  if (options.full) return nextOfAll(audit, left);
  const facts = openFacts(audit.heard).filter(
    (id) => canBeKnown(audit, id) && !(options.questionsOnly && isTest(id)) && !options.leaveOut?.(id),
  );
  const candidates = once(() => candidatesOf(audit, facts));
  if (solvedBy(audit.book)) return stopping(audit, 'solved', candidates);
  if (isSure(audit)) return stopping(audit, 'sure', candidates);
  if (seenFaults(audit)[0]?.cause === audit.ranking.leader) return stopping(audit, 'seen', candidates);
  if (isSettled(audit)) return stopping(audit, 'settled', candidates);
  const block = blockQuestion(audit);
  const isDue = block !== undefined && wholeMinutes(block.fact) <= left;
  if (isDue && block.underWay) return inBlock(audit, block, candidates);
  if (isDue && !isEasierOpen(audit, facts, block.fact)) return inBlock(audit, block, candidates);
  if (candidates().length === 0) return stopping(audit, 'nothing-open', candidates);
  const affordable = candidates().filter((c) => wholeMinutes(c.fact) <= left);
  if (affordable.length === 0) return stopping(audit, 'time-up', candidates);
  const worthIt = affordable.filter((c) => c.netMinutes > -patience(audit, c));
  const fresh = worthIt.filter((c) => !isTiring(audit.heard, c.fact));
  const paying = fresh.length > 0 ? fresh : worthIt;
  const bestTest = paying.find((c) => c.kind === 'test');
  const bestQuestion = stickToTopic(
    paying.filter((c) => c.kind === 'question'),
    options.family ?? lastFamily(audit),
  );
  const chosen = bestTest && (!bestQuestion || beatsAll(bestTest, paying)) ? bestTest : bestQuestion;
  if (!chosen) return stopping(audit, 'not-worth-asking', candidates);
  const fact = ledBy(audit, chosen.fact);
  // Whoever begins with one of a block begins where the block does.
  if (isDue && block.cause.block?.facts.includes(fact)) return inBlock(audit, block, candidates);
  const because = worthWords(audit, chosen);
  return {
    kind: chosen.kind,
    fact,
    candidate: candidates().find((c) => c.fact === fact),
    ...(bestQuestion
      ? { because }
      : { reason: 'not-worth-asking', because: `No question is worth more than this test. ${because}` }),
    candidates: candidates(),
    mayFollowAtMost: questionsLeft(audit),
  };
}

/**
 * A wrong verdict costs more than three questions: while it is open which of a few causes it is, nobody's patience counts
 * for a question that tells one of them clearly.
 */
function patience({ ranking }: Audit, { kind, moves }: Candidate): number {
  if (!ranking.undecided || kind !== 'question') return 0;
  const tells = moves.some(
    (m) => ranking.contenders.includes(m.cause) && m.upDb - m.downDb >= DECIDED_LEAD_DB,
  );
  return tells ? PATIENCE_MINUTES : 0;
}

/** The question, or the one that it presupposes: nobody is asked about the setting of a thing before the thing. */
function ledBy({ heard: book }: Audit, fact: FactId): FactId {
  const before = factSpec(fact).presupposes?.filter(isFactId) ?? [];
  return before.find((id) => canBeAsked(book, id) && makesSense(book, id) && isWithinReach(book, id)) ?? fact;
}

/** One pays that is more likely known and no more work: nobody fetches a tape before that was asked. */
function isEasierOpen(audit: Audit, facts: readonly FactId[], than: FactId): boolean {
  const known = knownChance(audit.heard, than);
  const easier = facts.filter(
    (id) => !isTest(id) && shownMinutes(id) <= shownMinutes(than) && knownChance(audit.heard, id) > known,
  );
  return candidatesOf(audit, easier).some(({ netMinutes }) => netMinutes > 0);
}

/** One of a block goes before whatever pays by itself, but for what is easier. */
function inBlock(audit: Audit, { fact, cause }: Asked, candidates: () => readonly Candidate[]): Next {
  return {
    kind: 'question',
    fact,
    because: `It belongs to a few questions that settle “${cause.title}” together.`,
    get candidate() {
      return candidatesOf(audit, [fact])[0];
    },
    get candidates() {
      return candidates();
    },
    mayFollowAtMost: questionsLeft(audit),
  };
}

/** Nothing more is asked. What could still be asked is worked out only for whoever wants to see it. */
function stopping(audit: Audit, reason: StopReason, candidates: () => readonly Candidate[]): Next {
  return {
    kind: 'stop',
    reason,
    because: STOP_WORDS[reason],
    get candidates() {
      return candidates();
    },
    get mayFollowAtMost() {
      return reason === 'settled' || reason === 'nothing-open' ? 0 : questionsLeft(audit);
    },
  };
}

function once<T>(compute: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: compute() };
    return kept.value;
  };
}

/** Leader at p >= 0.90 and 10 dB ahead of the next cause that needs another remedy. */
export function isSure({ ranking }: Audit): boolean {
  const leader = ranking.causes[0];
  return leader !== undefined && leader.probability >= SURE_FROM && ranking.leadDb >= SURE_LEAD_DB;
}

/** Nothing stands before its remedy: the leader is sure, or was seen to be wrong. */
export const isToMend = (audit: Audit): boolean =>
  isSure(audit) || seenFaults(audit).some(({ cause }) => cause === audit.ranking.leader);

/**
 * A test beats every question when it saves more, and saves more for each minute it takes: a good question
 * of half a minute is asked before anybody gets up.
 */
function beatsAll(test: Candidate, paying: readonly Candidate[]): boolean {
  const rate = (c: Candidate): number => c.savesMinutes / wholeMinutes(c.fact);
  return paying.every((c) => c.kind === 'test' || (test.netMinutes > c.netMinutes && rate(test) > rate(c)));
}

/** The best question, or one of the present topic that is hardly worse. Questions come best first. */
function stickToTopic(questions: readonly Candidate[], family: Family | undefined): Candidate | undefined {
  const best = questions[0];
  const here = questions.find((c) => factSpec(c.fact).family === family);
  if (!best || !here) return best;
  const gain = best.netMinutes - here.netMinutes;
  return gain <= Math.max(JUMP_FOR_MINUTES, JUMP_FOR_PART * best.netMinutes) ? here : best;
}

function lastFamily({ book }: Audit): Family | undefined {
  const last = [...book.answers.keys()].at(-1);
  return last === undefined ? undefined : factSpec(last).family;
}

function nextOfAll(audit: Audit, minutesLeft: number): Next {
  const questions = openFacts(audit.heard).filter((id) => !isTest(id));
  const remaining = FACT_IDS.filter((id) => !isTest(id) && canBeAsked(audit.heard, id));
  const base = { candidates: [], mayFollowAtMost: Math.max(0, remaining.length - 1) };
  const [fact] = questions;
  if (fact === undefined)
    return {
      ...base,
      kind: 'stop',
      reason: 'nothing-open',
      because: STOP_WORDS['nothing-open'],
      mayFollowAtMost: 0,
    };
  if (factSpec(fact).minutes > minutesLeft)
    return { ...base, kind: 'stop', reason: 'time-up', because: STOP_WORDS['time-up'] };
  return { ...base, kind: 'question', fact, because: factSpec(fact).why };
}

/** Upper bound of the questions that may still be asked: open, possible, and read by a cause that can apply. */
export function questionsLeft(audit: Audit): number {
  const index = ruleIndex(audit.causes);
  return FACT_IDS.filter((id) => {
    if (isTest(id) || !canBeAsked(audit.heard, id)) return false;
    return (index.causesOf.get(id) ?? []).some((place) => audit.own[place]?.applies);
  }).length;
}

const STOP_WORDS: Record<StopReason, string> = {
  solved: 'The trouble is gone, so nothing more has to be asked.',
  seen: 'What leads was seen to be wrong: it is mended first, and nothing else can be judged before.',
  sure: 'The first cause is at 90% or more and well ahead of every cause that needs another remedy.',
  settled: 'Nothing you could still answer changes which cause comes first.',
  'not-worth-asking': 'Every question left takes longer than it would save.',
  'nothing-open': 'No open question bears on a cause that remains.',
  'time-up': 'Nothing that is left fits into the time given.',
};

/** As everywhere, but in the middle of a sentence that says `about` itself, and where a single one is `a minute`. */
const minutesText = (minutes: number): string =>
  countedMinutes(minutes)
    .replace(/^about /, '')
    .replace(/^1 minute$/, 'a minute');

/** Why this is proposed: what it can move, minutes saved, minutes it costs. */
function worthWords(audit: Audit, candidate: Candidate): string {
  const named = candidate.moves.slice(0, 2).map((m) => `“${titleOf(audit, m.cause)}”`);
  const moves = `It can move ${named.join(' and ')}`;
  const saves = `an answer saves about ${minutesText(candidate.savesMinutes)} on average, asking takes ${minutesText(candidate.minutes)}`;
  const more = candidate.together.length;
  const together =
    more > 0
      ? ` It tells something together with ${more === 1 ? 'one more answer' : `${more} more answers`}.`
      : '';
  return `${moves}, ${saves}.${together}`;
}

function titleOf(audit: Audit, id: string): string {
  return audit.causes.find((cause) => cause.id === id)?.title ?? id;
}
