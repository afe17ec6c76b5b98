/** What to do, in order, and what comes next, in words. */
import { type FactId, factSpec, isFactId } from '../facts/catalog.js';
import type { Next } from '../reasoning/next.js';
import type { Plan, PlanStep } from '../reasoning/plan.js';
import type { CauseId } from '../rules/cause.js';
import type { Report, ReportCause, ReportNext, ReportStep } from './report-types.js';
import { stepCautions } from './step-cautions.js';
import { capital, effortText, listText, named } from './words.js';

/** Steps in the order of the plan. */
export function reportPlan({ steps }: Plan, causes: readonly ReportCause[]): ReportStep[] {
  const byId = new Map(causes.map((cause) => [cause.id, cause]));
  return steps.flatMap((step) => reportStep(step, byId) ?? []);
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
    const { title, steps, cost, effort, expect, verify, cautions } = remedy;
    return { ...own, title, causeTitle, steps, cost, effort, expect, verify, cautions };
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
    effort: effortText(spec.minutes, 'free'),
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

/** A case does not tell whether an answer is older than the remedy that was tried, so the reader has to. */
export function askAgainLines({ askAgain }: Pick<Report, 'askAgain'>): string[] {
  const labels = listText(askAgain.map(({ label }) => label));
  return askAgain.length > 0 ? [`Ask again what was answered before the change: ${labels}.`] : [];
}

/** What to do first, as one line. */
export function firstText(plan: readonly ReportStep[]): string | null {
  const [step] = plan;
  if (!step) return null;
  const what = step.kind === 'question' ? `Answer one question: ${step.title}` : step.title;
  return `${what} (${step.effort})`;
}
