/** A book of facts written as a case file that reads back as exactly the same book, and can be edited by hand. */
import { METERS_PER_FOOT, METERS_PER_INCH } from '../acoustics/practice.js';
import type { Answer, FactBook, UnitSystem } from './book.js';
import { CASE_FORMAT, CASE_VERSION } from './case-limits.js';
import { FACT_IDS, type FactId, factSpec } from './catalog.js';
import { formatValue } from './format.js';
import type { NumberSpec } from './spec.js';
import { parseQuantity } from './units.js';

/** How hard a case is for whoever gives advice. */
export const DIFFICULTIES = ['easy', 'medium', 'hard', 'undecidable'] as const;
export type Difficulty = (typeof DIFFICULTIES)[number];

/** What evaluation expects of a case. Cause ids are checked where causes are known. */
export interface Expectation {
  readonly top?: readonly string[];
  readonly ruledOut?: readonly string[];
  readonly undecided?: boolean;
  readonly separates?: readonly string[];
  readonly difficulty?: Difficulty;
  /** Scored apart: never looked at while weights are tuned. */
  readonly setAside?: boolean;
}

/** Writes a case; keys always stand in the same order, one fact and one seat a line. */
export function writeCase(book: FactBook, options: { readonly expect?: Expectation } = {}): string {
  const facts = factLines(book.answers, book.units, '    ');
  const before = factLines(book.before, book.units, '      ');
  const seats = book.seats.map(
    ({ name, xM, yM, row, earHeightM, main }) =>
      `    ${spaced({ name, xM, yM, row, ...(earHeightM === undefined ? {} : { earHeightM }), ...(main ? { main } : {}) })}`,
  );
  const entries: [string, string][] = [
    ['format', json(CASE_FORMAT)],
    ['version', json(CASE_VERSION)],
    ['units', json(book.units)],
  ];
  if (book.title !== undefined) entries.push(['title', json(book.title)]);
  if (book.words !== undefined) entries.push(['words', json(book.words)]);
  entries.push(['complaints', spaced(book.complaints)]);
  if (book.absentComplaints.length > 0) entries.push(['absentComplaints', spaced(book.absentComplaints)]);
  entries.push(['facts', facts.length === 0 ? '{}' : `{\n${facts.join(',\n')}\n  }`]);
  if (seats.length > 0) entries.push(['seats', `[\n${seats.join(',\n')}\n  ]`]);
  if (book.notes.length > 0) entries.push(['notes', lines(book.notes)]);
  if (book.trials.length > 0)
    entries.push(['trials', `[\n${book.trials.map((trial) => `    ${spaced(trial)}`).join(',\n')}\n  ]`]);
  if (before.length > 0) entries.push(['before', `{\n    "facts": {\n${before.join(',\n')}\n    }\n  }`]);
  if (book.constraints.length > 0) entries.push(['constraints', spaced(book.constraints)]);
  if (book.solved !== undefined) entries.push(['solved', json(book.solved)]);
  if (options.expect !== undefined) entries.push(['expect', spaced(options.expect)]);
  return `{\n${entries.map(([key, value]) => `  ${json(key)}: ${value}`).join(',\n')}\n}\n`;
}

/** One fact a line, in the order of the catalog. */
function factLines(answers: ReadonlyMap<FactId, Answer>, units: UnitSystem, indent: string): string[] {
  return FACT_IDS.flatMap((id) => {
    const answer = answers.get(id);
    return answer === undefined ? [] : [`${indent}${json(id)}: ${answerText(id, answer, units)}`];
  });
}

const json = (value: unknown): string => JSON.stringify(value);

function lines(texts: readonly string[]): string {
  return `[\n${texts.map((text) => `    ${json(text)}`).join(',\n')}\n  ]`;
}

/** JSON in one line with spaces where people put them. */
function spaced(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(spaced).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return json(value);
  return `{ ${Object.entries(value)
    .map(([key, each]) => `${json(key)}: ${spaced(each)}`)
    .join(', ')} }`;
}

function answerText(id: FactId, answer: Answer, units: UnitSystem): string {
  const spec = factSpec(id);
  const exact = (value: number | string): number | string =>
    spec.kind === 'number' && typeof value === 'number' ? exactText(value, spec, units) : value;
  if ('values' in answer) return spaced({ how: answer.how, values: answer.values.map(exact) });
  if (!('value' in answer)) return spaced(answer);
  const value = exact(answer.value);
  return answer.how === spec.usually ? json(value) : spaced({ value, how: answer.how });
}

/** The shortest common way of writing a number that reads back as the very same number. */
function exactText(value: number, spec: NumberSpec, units: UnitSystem): string | number {
  if (spec.unit === '1') return value;
  if (spec.unit !== 'm') return `${value} ${UNIT_TEXT[spec.unit]}`;
  const { written } = spec;
  const metric = [`${short(value * 100)} cm`, `${short(value * 1000)} mm`];
  const imperial = [`${short(value / METERS_PER_INCH)} in`, `${short(value / METERS_PER_FOOT)} ft`];
  const candidates = [
    // A file keeps the minus that is on every keyboard.
    formatValue(value, 'm', { units, written, both: false }).replaceAll('−', '-'),
    ...(units === 'imperial' ? imperial : Math.abs(value) < 1 ? metric : []),
  ];
  const same = candidates.find((text) => {
    const read = parseQuantity(text, { unit: 'm', written, units });
    return 'value' in read && read.value === value;
  });
  return same ?? `${value} m`;
}

const UNIT_TEXT: Readonly<Record<Exclude<NumberSpec['unit'], 'm' | '1'>, string>> = {
  ms: 'ms',
  Hz: 'Hz',
  dB: 'dB',
  deg: 'deg',
  'kg/m2': 'kg/m2',
  'Pa s/m': 'Pa s/m',
  '1/m2': 'per m2',
  W: 'W',
};

/** Eight digits at most: enough for what a tape or a data sheet gives. */
function short(value: number): string {
  return String(Number(value.toPrecision(8)));
}
