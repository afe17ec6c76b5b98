/** Faults of the shape of a case file, in words: what, where, what is accepted, an example. */

import type { Json } from '../lib/json-text.js';
import { didYouMean, nearest } from '../lib/nearest.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import { ACT_IDS, ENTRIES_OF, OUTCOME_IDS } from './acts.js';
import { acceptedAnswer } from './answer.js';
import type { UnitSystem } from './book.js';
import { isObject, readFact } from './case-answers.js';
import { type CaseProblem, problem } from './case-error.js';
import { CASE_FORMAT, CASE_LIMITS, CASE_VERSION } from './case-limits.js';
import type { RawCase } from './case-text.js';
import { DIFFICULTIES } from './case-write.js';
import { FACT_IDS, type FactId, factSpec } from './catalog.js';
import { COMPLAINT_IDS } from './complaints.js';
import { CONSTRAINT_IDS } from './constraints.js';
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
  'trials',
  'before',
  'constraints',
  'solved',
  'expect',
];
const TRIAL_KEYS = ['act', 'of', 'outcome', 'complaint', 'stays', 'note'];
const SEAT_KEYS = ['name', 'xM', 'yM', 'row', 'earHeightM', 'main'];
const EXPECT_KEYS = ['top', 'ruledOut', 'undecided', 'separates', 'difficulty', 'setAside'];

function knownKeys(path: ShapeIssue['path']): readonly string[] {
  if (path.length === 0) return TOP_KEYS;
  if (path[0] === 'before') return path.length === 1 ? ['facts'] : knownKeys(path.slice(1));
  if (path[0] === 'facts') return path.length === 1 ? FACT_IDS : ['value', 'how', 'values'];
  if (path[0] === 'trials') return TRIAL_KEYS;
  if (path[0] === 'seats') return SEAT_KEYS;
  return path[0] === 'expect' ? EXPECT_KEYS : [];
}

/** Turns what zod found into problems with words, accepted values and an example. */
export function shapeProblems(issue: ShapeIssue, raw: RawCase, units: UnitSystem): CaseProblem[] {
  const path = issue.path.join('.');
  const [top] = issue.path;
  const inFacts = top === 'before' ? issue.path.slice(1) : issue.path;
  const fact = inFacts[0] === 'facts' && typeof inFacts[1] === 'string' ? inFacts[1] : undefined;
  const both = fact !== undefined && inFacts.length === 2 && issue.unknownKeys.some(isAnswerKey);
  if (issue.unknownKeys.length > 0 && !both) return unknownKeyProblems(issue);
  const value = valueAt(raw, issue.path);
  if (fact !== undefined) {
    const at = top === 'before' ? 'before.facts' : 'facts';
    return [factProblem(`${at}.${fact}`, fact as FactId, valueAt(raw, [...at.split('.'), fact]), units)];
  }
  if ((top === 'complaints' || top === 'absentComplaints') && issue.path.length === 1)
    return [problem(path, 'this is no list of complaints', 'a list', '["dull", "hollow"]')];
  const keys = issue.path.filter((step) => typeof step === 'string').join('.');
  const word = WORDS[keys];
  if (word !== undefined && value !== undefined && (keys === 'trials.act' || isListed(issue)))
    return [wrongWord(path, value, word)];
  const form = word === undefined ? FORMS[keys] : { accepted: word.known.join(', '), example: word.example };
  const what = issue.code === 'too_big' ? `${shown(value)} is too long` : `${shown(value)} does not fit here`;
  const missing = value === undefined ? 'this key is missing' : what;
  return [problem(path, missing, form?.accepted ?? 'another kind of value', form?.example)];
}

const isAnswerKey = (key: string): boolean => key === 'value' || key === 'values';
/** A word out of a fixed list: an entry of a list, or a key of a trial. */
const isListed = ({ path }: ShapeIssue): boolean => typeof path[1] === 'number';

interface Words {
  readonly what: string;
  readonly known: readonly string[];
  readonly example: string;
}
/** Places where one word out of a fixed list stands. */
const WORDS: Readonly<Record<string, Words>> = {
  complaints: { what: 'complaint', known: COMPLAINT_IDS, example: 'dull' },
  absentComplaints: { what: 'complaint', known: COMPLAINT_IDS, example: 'dull' },
  constraints: { what: 'constraint', known: CONSTRAINT_IDS, example: 'no-purchase' },
  'trials.act': { what: 'act', known: ACT_IDS, example: 'center-tilted' },
  'trials.of': { what: 'entry', known: ENTRIES_OF, example: 'center' },
  'trials.outcome': { what: 'outcome', known: OUTCOME_IDS, example: 'gone' },
  'trials.complaint': { what: 'complaint', known: COMPLAINT_IDS, example: 'dull' },
};

function wrongWord(path: string, value: Json, { what, known, example }: Words): CaseProblem {
  const near = typeof value === 'string' ? nearest(value, known) : undefined;
  return problem(path, `${shown(value)} is no ${what}${didYouMean(near)}`, known.join(', '), near ?? example);
}

/** Unknown keys for which the nearest known one is looked up; a person mistypes fewer. */
const SUGGESTED = 20;

function unknownKeyProblems(issue: ShapeIssue): CaseProblem[] {
  const known = knownKeys(issue.path);
  return issue.unknownKeys.map((key, index) => {
    const path = [...issue.path, plainLine(key).slice(0, CASE_LIMITS.idLetters)].join('.');
    const near = index < SUGGESTED ? nearest(key, known) : undefined;
    const kind = issue.path.length === 1 && issue.path[0] === 'facts' ? 'fact' : 'key';
    const what = `${quoted(key)} is no ${kind} that is known here${didYouMean(near)}`;
    const accepted = known.length > 20 ? 'the facts that "center-audit facts" lists' : known.join(', ');
    return problem(path, what, accepted, near ?? known[0]);
  });
}

const CONFLICT_EXAMPLE = '{ "how": "conflicting", "values": ["on", "off"] }';

function factProblem(path: string, id: FactId, entry: Json | undefined, units: UnitSystem): CaseProblem {
  const spec = factSpec(id);
  if (isObject(entry) && entry.how === 'unknown' && ('value' in entry || 'values' in entry)) {
    return problem(path, 'it has a value and is marked unknown', 'one of the two', '{ "how": "unknown" }');
  }
  const conflict = isObject(entry) && entry.how === 'conflicting';
  if (conflict && (!Array.isArray(entry.values) || entry.values.length < 2 || 'value' in entry)) {
    const accepted = `from 2 to ${CASE_LIMITS.conflicting} values`;
    return problem(path, 'told both ways needs the values that were told', accepted, CONFLICT_EXAMPLE);
  }
  if (isObject(entry) && !conflict && 'values' in entry)
    return problem(path, 'several values stand there', 'value, or how: conflicting', CONFLICT_EXAMPLE);
  if (isObject(entry) && 'how' in entry && !conflict && !HOWS.some((each) => each === entry.how)) {
    return problem(
      `${path}.how`,
      `${shown(entry.how)} says not how it was obtained`,
      `${HOWS.join(', ')}, unknown, conflicting`,
      'measured',
    );
  }
  if (isObject(entry) && !conflict && !('value' in entry)) {
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
  tried: { accepted: `a list of at most ${CASE_LIMITS.trials} remedies`, example: '["delay/set-distances"]' },
  trials: {
    accepted: `a list of at most ${CASE_LIMITS.trials} trials`,
    example: '[{ "act": "center-tilted", "outcome": "better" }]',
  },
  'trials.stays': { accepted: 'true where it still stands as changed, false where not', example: 'true' },
  'trials.note': { accepted: `a text of at most ${CASE_LIMITS.noteLetters} letters` },
  before: { accepted: 'an object with facts', example: '{ "facts": { "enteredCenter": "3.0 m" } }' },
  'before.facts': { accepted: 'an object of facts', example: '{ "enteredCenter": "3.0 m" }' },
  solved: { accepted: 'true or false', example: 'true' },
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
  'expect.difficulty': { accepted: `one of ${DIFFICULTIES.join(', ')}`, example: '"easy"' },
  'expect.setAside': { accepted: 'true or false', example: 'true' },
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
