/**
 * Case files read into a book of facts. All problems are collected and told together, each with its place.
 * Order of keys never matters: the book holds answers in the order of the catalog.
 */

import type { Json } from '../lib/json-text.js';
import { plainLine, plainText } from '../lib/sanitize.js';
import type { Trial } from './acts.js';
import type { FactBook } from './book.js';
import { isObject, readAnswers, withChoiceValues } from './case-answers.js';
import { CaseError, type CaseProblem, type CaseWarning, type Findings, placed } from './case-error.js';
import { shapeProblems } from './case-faults.js';
import { readRaw } from './case-text.js';
import type { Expectation } from './case-write.js';
import { COMPLAINT_IDS, type ComplaintId, isComplaintId } from './complaints.js';
import { CONSTRAINT_IDS } from './constraints.js';
import { type ReadResponse, unusableFiles, withResponses } from './responses.js';
import { shapeIssues } from './schema.js';
import { readSeats } from './seat-list.js';

export { CaseError, type CaseProblem, type CaseWarning } from './case-error.js';
export { MAX_CASE_BYTES } from './case-limits.js';
export { decodeCase } from './case-text.js';
export { DIFFICULTIES, type Difficulty, type Expectation, writeCase } from './case-write.js';

interface ReadCase {
  readonly book: FactBook;
  readonly expect?: Expectation;
  readonly warnings: readonly CaseWarning[];
}

/**
 * Reads a case. `readResponse` reads the response files that it names; one that cannot be used is told as a warning,
 * for the case is sound without it. Throws CaseError with every problem found.
 */
export function readCase(text: string, options: { readonly readResponse?: ReadResponse } = {}): ReadCase {
  const { raw: asWritten, placeOf } = readRaw(text);
  const raw = withChoiceValues(asWritten);
  const found: Findings = { problems: [], warnings: [] };
  const units = raw.units === 'imperial' ? 'imperial' : 'metric';
  const issues = shapeIssues(raw);
  const spoiled = new Set(
    issues.map((issue) => issue.path.slice(0, issue.path[0] === 'before' ? 3 : 2).join('.')),
  );
  found.problems.push(...issues.flatMap((issue) => shapeProblems(issue, raw, units)));

  const answers = readAnswers(raw.facts, 'facts', units, spoiled, found);
  const before = readAnswers(
    isObject(raw.before) ? raw.before.facts : undefined,
    'before.facts',
    units,
    spoiled,
    found,
  );
  const seats = [
    'seats',
    ...(Array.isArray(raw.seats) ? raw.seats.map((_, index) => `seats.${index}`) : []),
  ].some((path) => spoiled.has(path))
    ? []
    : readSeats(raw.seats, units, found);
  const [first, ...rest] = withPlaces(found.problems, placeOf);
  if (first !== undefined) throw new CaseError(first, ...rest);

  if (raw.units === undefined && found.warnings.some((warning) => warning.bareUnit !== undefined)) {
    found.warnings.push({ path: 'units', text: 'no unit system is given; metric is taken' });
  }
  const title = cleaned(raw.title, 'title', plainLine, found);
  const words = cleaned(raw.words, 'words', plainText, found);
  const written: FactBook = {
    units,
    ...(title ? { title } : {}),
    ...(words ? { words } : {}),
    complaints: complaintIds(raw.complaints),
    absentComplaints: complaintIds(raw.absentComplaints),
    answers,
    seats,
    notes: texts(raw.notes)
      .map((note, index) => cleaned(note, `notes.${index}`, plainText, found) ?? '')
      .filter((note) => note !== ''),
    trials: readTrials(raw.trials, found),
    before,
    constraints: CONSTRAINT_IDS.filter((id) => texts(raw.constraints).includes(id)),
    ...(typeof raw.solved === 'boolean' ? { solved: raw.solved } : {}),
  };
  const book = options.readResponse ? withResponses(written, options.readResponse) : written;
  for (const [id, { what }] of unusableFiles(book)) found.warnings.push({ path: `facts.${id}`, text: what });
  return { book, ...(raw.expect ? { expect: raw.expect as Expectation } : {}), warnings: found.warnings };
}

/** Problems in the order of the file, each with line and column of the nearest value that is there. */
function withPlaces(
  problems: readonly CaseProblem[],
  placeOf: (path: string) => { line: number; column: number } | undefined,
): CaseProblem[] {
  const found = problems.map((each) => {
    let path = each.path;
    let place = placeOf(path);
    while (place === undefined && path !== '') {
      path = path.slice(0, Math.max(0, path.lastIndexOf('.')));
      place = placeOf(path);
    }
    return placed(each, place);
  });
  return found.sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
}

function texts(list: Json | undefined): string[] {
  return Array.isArray(list) ? list.filter((each) => typeof each === 'string') : [];
}

/** Trials whose shape is known to be right. */
function readTrials(list: Json | undefined, found: Findings): Trial[] {
  return (Array.isArray(list) ? list : []).filter(isObject).map((raw, index) => {
    const { note: given, ...rest } = raw;
    const note = cleaned(given, `trials.${index}.note`, plainText, found);
    return { ...rest, ...(note ? { note } : {}) } as unknown as Trial;
  });
}

function complaintIds(list: Json | undefined): ComplaintId[] {
  const given = new Set(texts(list).filter(isComplaintId));
  return COMPLAINT_IDS.filter((each) => given.has(each));
}

function cleaned(
  text: Json | undefined,
  path: string,
  clean: (text: string) => string,
  found: Findings,
): string | undefined {
  if (typeof text !== 'string') return undefined;
  const out = clean(text);
  const lost =
    Array.from(text.replace(/\s/g, '').normalize('NFC')).length - Array.from(out.replace(/\s/g, '')).length;
  if (lost > 0) found.warnings.push({ path, text: `${lost} control characters were taken out` });
  return out;
}
