/** What to do, in order: questions that pay, tests, remedies; and the minutes that this order is expected to take. */
import { type FactId, factSpec } from '../facts/catalog.js';
import type { Cause, Remedy } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { Audit } from './audit.js';
import { CHECK_MINUTES, OTHER_MINUTES, shownMinutes } from './minutes.js';
import { isToMend, type Next, type NextOptions, next } from './next.js';
import { openRemedies, seenFaults } from './remedies.js';
import { cheapestTest, confirmMinutes, faultProbabilities } from './suspects.js';
import { outdatedAnswers, solvedBy } from './trials.js';
import { checkOrder, repairMinutes, type Suspect } from './troubleshoot.js';

export interface PlanStep {
  readonly kind: 'question' | 'test' | 'remedy';
  /** Fact id of a question or test; id of the remedy within its cause. */
  readonly id: string;
  /** The cause it is about; for a question the one it moves most. */
  readonly cause: CauseId;
  readonly minutes: number;
  readonly because: string;
  /** What it mends was seen to be wrong. */
  readonly seen?: true;
}

export interface Plan {
  readonly steps: readonly PlanStep[];
  /** Answers that remedies already tried may have changed: to be asked again first, if they are older. */
  readonly askAgain: readonly FactId[];
  /** Expected minutes until the cause is found and put right in this order. */
  readonly minutes: number;
  /** The same when causes are gone through in the order of a fixed checklist, or the cheapest check first. */
  readonly checklistMinutes: number;
  readonly cheapestFirstMinutes: number;
}

/** Causes below this probability get no step of their own, and below the next one no remedy (judgement). */
const PLANNED_FROM = 0.05;
const TREATED_FROM = 0.1;
/** A fault of the signal path is worth a look when its test takes no longer than this, minutes (judgement). */
const QUICK_TEST_MINUTES = 3;
/** Words for the chance that a remedy cures (judgment). */
const OFTEN_FROM = 0.65;
const SOMETIMES_FROM = 0.35;
const MOST_CAUSES = 5;

export function plan(audit: Audit, options: NextOptions = {}, proposed: Next = next(audit, options)): Plan {
  const p = faultProbabilities(audit);
  const suspects = audit.causes.map((cause, i): Suspect => {
    const [remedy] = openRemedies(audit, cause);
    return {
      p: p[i] ?? 0,
      confirmMinutes: confirmMinutes(audit.heard, cause),
      repairMinutes: remedy?.minutes ?? cause.remedies[0].minutes,
      checkMinutes: CHECK_MINUTES,
    };
  });
  const order = checkOrder(suspects);
  const steps = order
    .map((i) => ({ i, extent: extentOf(audit, i) }))
    .filter(({ extent }) => extent !== 'none')
    .slice(0, MOST_CAUSES)
    .flatMap(({ i, extent }) => stepsFor(audit, audit.causes[i] as Cause, extent));
  const given = audit.causes.map((_, i) => i);
  const byCost = [...given].sort(
    (a, b) => (suspects[a]?.confirmMinutes ?? 0) - (suspects[b]?.confirmMinutes ?? 0) || a - b,
  );
  return {
    // What is solved needs no step: whoever goes on may undo the cure.
    steps: solvedBy(audit.book)
      ? []
      : dedupe([...seenSteps(audit), ...inOrder(audit, proposed, dedupe(steps))]),
    askAgain: outdatedAnswers(audit.book, audit.causes),
    minutes: repairMinutes(suspects, order, OTHER_MINUTES),
    checklistMinutes: repairMinutes(suspects, given, OTHER_MINUTES),
    cheapestFirstMinutes: repairMinutes(suspects, byCost, OTHER_MINUTES),
  };
}

/** How often a remedy cures its cause, in a word: the chances are judgment and no finer than that. */
export const curesWord = (cures: number): 'often' | 'sometimes' | 'rarely' =>
  cures >= OFTEN_FROM ? 'often' : cures >= SOMETIMES_FROM ? 'sometimes' : 'rarely';

/** What was seen to be wrong, the likelier cause first: one step each, for nothing else can be judged before. */
const seenSteps = (audit: Audit): PlanStep[] =>
  seenFaults(audit).map(({ cause, remedy: { id, minutes } }) => ({
    kind: 'remedy',
    id,
    cause,
    minutes,
    because: 'This was seen to be wrong: it is mended first, whatever else is at work.',
    seen: true,
  }));

/** Nothing is bought, drilled or otherwise final. */
export const isFree = (remedy: Remedy): boolean => remedy.cost === 'free' && !remedy.final;

/** How much of a cause goes into the plan: everything, its test and what is tried first, its test, or nothing. */
type Extent = 'whole' | 'start' | 'test' | 'none';

function extentOf(audit: Audit, place: number): Extent {
  const cause = audit.causes[place] as Cause;
  const { leader, contenders } = audit.ranking;
  if (cause.id === leader) return 'whole';
  const ranked = audit.ranking.causes.find((r) => r.cause === cause.id);
  if (!ranked?.applies || ranked.probability < PLANNED_FROM) return 'none';
  // Nothing is known of it beyond how common it is: no work for it, unless it is all there is to go by.
  if (ranked.verdict === 'cannot-tell') return contenders.includes(cause.id) ? 'test' : 'none';
  if (ranked.verdict === 'likely' || ranked.verdict === 'possible') return 'whole';
  if (ranked.probability >= TREATED_FROM) return 'start';
  const test = cheapestTest(audit.heard, cause)?.test;
  const quick = test !== undefined && factSpec(test).minutes <= QUICK_TEST_MINUTES;
  return cause.severity === 'broken' && quick ? 'test' : 'none';
}

interface Planned extends PlanStep {
  readonly free: boolean;
  /** Costs so much that everything else is tried before. */
  readonly dear: boolean;
}

function stepsFor(audit: Audit, cause: Cause, extent: Extent): Planned[] {
  const open = openRemedies(audit, cause);
  const first = open[0];
  const remedies = extent === 'whole' ? open : extent === 'start' ? open.slice(0, 1).filter(isFree) : [];
  const test = cheapestTest(audit.heard, cause);
  // Whoever is sure, or has seen it, begins with what mends it: a test comes only before what costs something.
  const sure = cause.id === audit.ranking.leader && isToMend(audit);
  const isDear = first === undefined || !isFree(first);
  const needed = sure
    ? !remedies.every(isFree)
    : test && (remedies.length === 0 || isDear || factSpec(test.test).minutes < first.minutes);
  const testStep: Planned[] =
    test && needed
      ? [
          {
            kind: 'test',
            id: test.test,
            cause: cause.id,
            minutes: shownMinutes(test.test),
            because: `It confirms or clears “${cause.title}” before anything is ${sure ? 'bought or built' : 'changed'} for it.`,
            free: true,
            dear: false,
          },
        ]
      : [];
  const trials = remedies.map(
    (remedy): Planned => ({
      kind: 'remedy',
      id: remedy.id,
      cause: cause.id,
      minutes: remedy.minutes,
      because: `If it is “${cause.title}”, this ${curesWord(remedy.cures)} puts it right.`,
      free: isFree(remedy),
      dear: remedy.cost === 'high',
    }),
  );
  return sure ? [...trials, ...testStep] : [...testStep, ...trials];
}

/**
 * What is free and can be undone comes before what is bought or drilled; otherwise the order stays. While nothing is
 * decided, what the planner would ask or test next stands first. Once it is, what
 * belongs to the leading cause does, unless it is dear.
 */
function inOrder({ ranking }: Audit, proposed: Next, steps: readonly Planned[]): PlanStep[] {
  const isNear = (step: Planned): boolean =>
    !ranking.undecided && step.cause === ranking.leader && !step.dear;
  const isNext = (step: PlanStep): boolean => step.kind === proposed.kind && step.id === proposed.fact;
  const near = freeFirst(steps.filter(isNear));
  const rest = [
    ...questionSteps(proposed, ranking.leader),
    ...freeFirst(steps.filter((step) => !isNear(step))),
  ];
  return [...near, ...rest.filter(isNext), ...rest.filter((step) => !isNext(step))];
}

function freeFirst(steps: readonly Planned[]): PlanStep[] {
  const ordered = [...steps.filter((s) => s.free), ...steps.filter((s) => !s.free)];
  return ordered.map(({ free: _, dear: __, ...step }) => step);
}

function dedupe<T extends PlanStep>(steps: readonly T[]): T[] {
  const seen = new Set<string>();
  return steps.filter((step) => {
    const key = `${step.kind} ${step.id}`;
    return seen.has(key) ? false : seen.add(key);
  });
}

/** The one question that is worth most now: a plan is acts, and what follows depends on the answer. */
function questionSteps({ kind, fact, because, candidate }: Next, leader: CauseId): PlanStep[] {
  if (kind !== 'question' || fact === undefined) return [];
  const cause = candidate?.moves[0]?.cause ?? leader;
  return [{ kind: 'question', id: fact, cause, minutes: shownMinutes(fact), because }];
}
