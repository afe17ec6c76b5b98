/** The report for other programs: the keys of the contract and few more, numbers as exact as they mean something. */
import type { Report, ReportCause } from '../report-types.js';

/** Digits that every version of Node computes alike. */
const DIGITS = 12;

/** Whole numbers below this have no more digits. */
const EXACT_BELOW = 10 ** DIGITS;

function rounded<T>(value: T): T;
function rounded(value: unknown): unknown {
  if (typeof value === 'number') {
    const isExact = Number.isInteger(value) && Math.abs(value) < EXACT_BELOW;
    return isExact || !Number.isFinite(value) ? value : Number(value.toPrecision(DIGITS));
  }
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return typeof value[0] === 'string' ? value : value.map(rounded);
  return pick(value, ...(Object.keys(value) as never[]));
}

function pick<T extends object, K extends keyof T>(from: T, ...keys: K[]): Pick<T, K> {
  const picked = {} as Pick<T, K>;
  for (const key of keys) picked[key] = rounded(from[key]);
  return picked;
}

/** One line, for JSON lines, or indented. What is not a finite number is null. */
export function renderJson(
  report: Report,
  { indent = true, caseName }: { readonly indent?: boolean; readonly caseName?: string } = {},
): string {
  const whole = caseName === undefined ? forPrograms(report) : { case: caseName, ...forPrograms(report) };
  return `${JSON.stringify(whole, null, indent ? 2 : 0)}\n`;
}

/** The same as a value, for callers in the same process. */
export const jsonReport = (report: Report): ReturnType<typeof forPrograms> => JSON.parse(renderJson(report));

const forPrograms = (report: Report) => ({
  ...pick(report, 'format', 'version', 'verdict'),
  causes: report.causes.map(causeForPrograms),
  plan: report.plan.map((step) => pick(step, 'kind', 'id', 'cause', 'minutes', 'because', 'title')),
  seats: rounded(report.seats),
  complaints: report.complaints.map((each) => pick(each, 'id', 'leakShare')),
  seamlessSwitch: pick(report.seamlessSwitch, 'passes', 'steps', 'checks'),
  unknown: report.unknown.map((each) => pick(each, 'fact', 'howToFindOut', 'settles')),
  assumed: report.assumed.map((each) => pick(each, 'fact', 'value', 'effect')),
  contradictions: report.contradictions.map((each) => pick(each, 'facts', 'text')),
  cautions: report.cautions,
  title: report.title,
  solvedBy: report.solvedBy,
});

const causeForPrograms = (cause: ReportCause) => ({
  ...pick(cause, 'id', 'title', 'probability', 'decibans', 'verdict', 'severity'),
  evidence: cause.evidence.map((item) =>
    pick(
      item,
      'rule',
      'decibans',
      'text',
      'facts',
      'value',
      'threshold',
      'unit',
      'source',
      'assumed',
      'outcome',
    ),
  ),
  remedies: cause.remedies.map((remedy) =>
    pick(remedy, 'id', 'title', 'steps', 'minutes', 'cost', 'expect', 'verify', 'cautions'),
  ),
});
