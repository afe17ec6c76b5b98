/** What to do, in order, and what comes next, in words. */
import { type FactId, factSpec, isFactId } from '../facts/catalog.js';
import type { Next } from '../reasoning/next.js';
import type { Plan, PlanStep } from '../reasoning/plan.js';
import { DECIDED_FROM } from '../reasoning/rank.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { ReportCause, ReportNext, ReportSeparator, ReportStep } from './report-types.js';
import { stepCautions } from './step-cautions.js';
import { capital, effortText, minutesText, named } from './words.js';

/**
 * Steps in the order of the plan: what was seen to be wrong, then, while nothing is decided, what tells the candidates
 * apart. Nothing else is changed for a cause below an even chance then, and nothing is ever bought for one.
 */
export function reportPlan(
  { steps }: Plan,
  causes: readonly ReportCause[],
  separators: readonly ReportSeparator[] = [],
  undecided = false,
): ReportStep[] {
  const byId = new Map(causes.map((cause) => [cause.id, cause]));
  const [apart] = separators;
  const first: PlanStep[] = apart
    ? [
        {
          kind: apart.kind,
          id: apart.fact,
          cause: apart.causes[0],
          minutes: apart.minutes,
          because: apart.text,
        },
      ]
    : [];
  // One question at most, and it stands before what is tried.
  const rest = steps.filter(
    ({ kind, id }) => kind === 'remedy' || (id !== apart?.fact && !(apart && kind === 'question')),
  );
  const ripe = ({ kind, cause, seen }: PlanStep, { cost }: ReportStep): boolean => {
    const likely = seen || (byId.get(cause)?.probability ?? 0) >= DECIDED_FROM;
    return kind !== 'remedy' || likely || (!undecided && cost === 'free');
  };
  return [...rest.filter(({ seen }) => seen), ...first, ...rest.filter(({ seen }) => !seen)].flatMap(
    (step) => {
      const told = reportStep(step, byId);
      return told && ripe(step, told) ? [told] : [];
    },
  );
}

function reportStep(step: PlanStep, causes: ReadonlyMap<CauseId, ReportCause>): ReportStep | undefined {
  const cause = causes.get(step.cause);
  const own = {
    kind: step.kind,
    id: step.id,
    cause: step.cause,
    minutes: step.minutes,
    because: step.because,
  };
  const causeTitle = cause?.title ?? step.cause;
  if (step.kind === 'remedy') {
    const remedy = cause?.remedies.find((each) => each.id === step.id);
    if (!remedy) return undefined;
    const { title, steps, cost, effort, helps, expect, verify, cautions } = remedy;
    return { ...own, title, causeTitle, steps, cost, effort, helps, expect, verify, cautions };
  }
  if (!isFactId(step.id)) return undefined;
  const spec = factSpec(step.id);
  const confirm = cause?.confirm.find((each) => each.test === step.id);
  return {
    ...own,
    title: step.kind === 'question' ? spec.ask : capital(spec.label),
    causeTitle,
    steps: spec.findOut,
    cost: 'free',
    effort: step.kind === 'question' ? minutesText(spec.minutes) : effortText(spec.minutes, 'free'),
    helps: null,
    expect: step.kind === 'test' && confirm ? expectation(causeTitle, confirm.outcomes) : '',
    verify: '',
    cautions: stepCautions(step.id),
  };
}

function expectation(title: string, outcomes: readonly string[]): string {
  return `If it is ${named(title)}, the result is: ${outcomes.join(', or ')}.`;
}

export function reportNext(next: Next): ReportNext {
  const fact: FactId | null = next.fact ?? null;
  const base = { kind: next.kind, fact, because: next.because };
  if (fact === null) return { ...base, text: 'Nothing more needs to be asked.', minutes: null };
  const spec = factSpec(fact);
  return { ...base, text: next.kind === 'test' ? capital(spec.label) : spec.ask, minutes: spec.minutes };
}

/** Every caution of the plan once, in the order of the steps. */
export function cautionsOf(plan: readonly ReportStep[]): string[] {
  return [...new Set(plan.flatMap((step) => step.cautions))];
}

/** What to do first, as one line. */
export function firstText(plan: readonly ReportStep[]): string | null {
  const [step] = plan;
  if (!step) return null;
  const what = step.kind === 'question' ? `Answer one question: ${step.title}` : step.title;
  return `${what} (${step.effort})`;
}
