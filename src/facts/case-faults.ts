/** Faults of the shape of a case file, in words: what, where, what is accepted, an example. */

import type { Json } from '../lib/json-text.js';
import { nearest } from '../lib/nearest.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import { acceptedAnswer } from './answer.js';
import type { UnitSystem } from './book.js';
import { isObject, readFact } from './case-answers.js';
import { type CaseProblem, problem } from './case-error.js';
import { CASE_FORMAT, CASE_LIMITS, CASE_VERSION } from './case-limits.js';
import type { RawCase } from './case-text.js';
import { FACT_IDS, type FactId, factSpec } from './catalog.js';
import { COMPLAINT_IDS } from './complaints.js';
import type { ShapeIssue } from './schema.js';
import { HOWS } from './spec.js';

const TOP_KEYS = [
  'format',
  'version',
  'units',
  'title',
  'words',
  'complaints',
  'absentComplaints',
  'facts',
  'seats',
  'notes',
  'tried',
  'expect',
];
const SEAT_KEYS = ['name', 'xM', 'yM', 'row', 'earHeightM', 'main'];
const EXPECT_KEYS = ['top', 'ruledOut', 'undecided', 'separates'];

function knownKeys(path: ShapeIssue['path']): readonly string[] {
  if (path.length === 0) return TOP_KEYS;
  if (path[0] === 'facts') return path.length === 1 ? FACT_IDS : ['value', 'how'];
  if (path[0] === 'seats') return SEAT_KEYS;
  return path[0] === 'expect' ? EXPECT_KEYS : [];
}

/** Turns what zod found into problems with words, accepted values and an example. */
export function shapeProblems(issue: ShapeIssue, raw: RawCase, units: UnitSystem): CaseProblem[] {
  const path = issue.path.join('.');
  const [top, second] = issue.path;
  const both = top === 'facts' && issue.path.length === 2 && issue.unknownKeys.includes('value');
  if (issue.unknownKeys.length > 0 && !both) return unknownKeyProblems(issue);
  const value = valueAt(raw, issue.path);
  if (top === 'facts' && typeof second === 'string') return [factProblem(second as FactId, raw, units)];
  if (top === 'complaints' || top === 'absentComplaints') {
    if (issue.path.length === 1)
      return [problem(path, 'this is no list of complaints', 'a list', '["dull", "hollow"]')];
    const near = typeof value === 'string' ? nearest(value, COMPLAINT_IDS) : undefined;
    const hint = near === undefined ? '' : `; did you mean ${near}?`;
    return [
      problem(path, `${shown(value)} is no complaint${hint}`, COMPLAINT_IDS.join(', '), near ?? 'dull'),
    ];
  }
  const form = FORMS[issue.path.filter((step) => typeof step === 'string').join('.')];
  const what = issue.code === 'too_big' ? `${shown(value)} is too long` : `${shown(value)} does not fit here`;
  const missing = value === undefined ? 'this key is missing' : what;
  return [problem(path, missing, form?.accepted ?? 'another kind of value', form?.example)];
}

/** Unknown keys for which the nearest known one is looked up; a person mistypes fewer. */
const SUGGESTED = 20;

function unknownKeyProblems(issue: ShapeIssue): CaseProblem[] {
  const known = knownKeys(issue.path);
  return issue.unknownKeys.map((key, index) => {
    const path = [...issue.path, plainLine(key).slice(0, CASE_LIMITS.idLetters)].join('.');
    const near = index < SUGGESTED ? nearest(key, known) : undefined;
    const kind = issue.path.length === 1 && issue.path[0] === 'facts' ? 'fact' : 'key';
    const what = `${quoted(key)} is no ${kind} that is known here${near === undefined ? '' : `; did you mean ${near}?`}`;
    const accepted = known.length > 20 ? 'the facts that "center-audit facts" lists' : known.join(', ');
    return problem(path, what, accepted, near ?? known[0]);
  });
}

function factProblem(id: FactId, raw: RawCase, units: UnitSystem): CaseProblem {
  const path = `facts.${id}`;
  const spec = factSpec(id);
  const entry = isObject(raw.facts) ? raw.facts[id] : undefined;
  if (isObject(entry) && entry.how === 'unknown' && 'value' in entry) {
    return problem(path, 'it has a value and is marked unknown', 'one of the two', '{ "how": "unknown" }');
  }
  if (isObject(entry) && 'how' in entry && !HOWS.some((each) => each === entry.how)) {
    return problem(
      `${path}.how`,
      `${shown(entry.how)} says not how it was obtained`,
      `${HOWS.join(', ')}, unknown`,
      'measured',
    );
  }
  if (isObject(entry) && !('value' in entry)) {
    return problem(
      path,
      'it has neither a value nor how: unknown',
      'a value, or { "value", "how" }',
      '{ "how": "unknown" }',
    );
  }
  const result = readFact(id, entry, units);
  if ('refused' in result) return { path, ...result.refused };
  return { path, what: `${shown(entry)} does not fit here`, ...acceptedAnswer(spec, units) };
}

const FORMS: Readonly<Record<string, { accepted: string; example?: string }>> = {
  format: { accepted: `"${CASE_FORMAT}"` },
  version: { accepted: String(CASE_VERSION) },
  units: { accepted: 'metric, imperial', example: '"imperial"' },
  title: {
    accepted: `a text of at most ${CASE_LIMITS.titleLetters} letters`,
    example: '"Den with a low shelf"',
  },
  words: { accepted: `a text of at most ${CASE_LIMITS.wordsLetters} letters` },
  facts: { accepted: 'an object of facts', example: '{ "seatDistance": "9 ft" }' },
  notes: {
    accepted: `a list of at most ${CASE_LIMITS.notes} texts of at most ${CASE_LIMITS.noteLetters} letters`,
    example: '["calls back on Friday"]',
  },
  tried: { accepted: `a list of at most ${CASE_LIMITS.tried} remedies`, example: '["delay/set-distances"]' },
  seats: {
    accepted: `a list of at most ${CASE_LIMITS.seats} seats`,
    example: '[{ "name": "middle", "xM": 0, "yM": "9 ft", "main": true }]',
  },
  'seats.name': {
    accepted: `a text of at most ${CASE_LIMITS.seatNameLetters} letters`,
    example: '"right end"',
  },
  'seats.xM': {
    accepted: 'meters to the right of the midline, or a text with its unit',
    example: '"3 ft 6 in"',
  },
  'seats.yM': {
    accepted: 'meters back from the line between the mains, or a text with its unit',
    example: '"9 ft"',
  },
  'seats.row': { accepted: 'a whole number from 1 (front) to 10', example: '1' },
  'seats.earHeightM': { accepted: 'meters, or a text with its unit', example: '1.05' },
  'seats.main': { accepted: 'true at one seat, false or nothing at the others', example: 'true' },
  expect: { accepted: `an object with ${EXPECT_KEYS.join(', ')}`, example: '{ "top": ["driver-layout"] }' },
  'expect.top': { accepted: 'a list of causes', example: '["driver-layout"]' },
  'expect.ruledOut': { accepted: 'a list of causes', example: '["level"]' },
  'expect.undecided': { accepted: 'true or false', example: 'true' },
  'expect.separates': { accepted: 'a list of causes', example: '["delay", "level"]' },
};

function valueAt(raw: Json, path: ShapeIssue['path']): Json | undefined {
  let value: Json | undefined = raw;
  for (const step of path) {
    if (Array.isArray(value)) value = value[Number(step)];
    else if (isObject(value)) value = Object.hasOwn(value, step) ? value[String(step)] : undefined;
    else return undefined;
  }
  return value;
}

function shown(value: Json | undefined): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return 'a list';
  return isObject(value) ? 'an object' : String(value);
}
