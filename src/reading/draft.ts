/** From a reading to a draft case, and to a case that an interview has begun. */
import type { Trial } from '../facts/acts.js';
import { type Answer, EMPTY_BOOK, type FactBook } from '../facts/book.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { type FactId, isFactId } from '../facts/catalog.js';
import { COMPLAINT_IDS, type ComplaintId } from '../facts/complaints.js';
import { CONSTRAINT_IDS } from '../facts/constraints.js';
import { plainText } from '../lib/sanitize.js';
import type { Taken } from './candidates.js';
import type { Reading } from './read.js';

/** What a reading tells, as a case of its own. */
export function draftOf(reading: Reading): FactBook {
  const words = plainText(reading.text).slice(0, CASE_LIMITS.wordsLetters);
  const empty: FactBook = {
    ...EMPTY_BOOK,
    units: reading.units ?? 'metric',
    ...(words === '' ? {} : { words }),
  };
  // Whoever writes for advice has it still, unless he says that it is solved or that what cured it stays.
  const isAsking = reading.solved !== true;
  const trials = reading.trials.map((trial) =>
    isAsking && trial.outcome === 'gone' ? { ...trial, stays: trial.stays ?? false } : trial,
  );
  return withReading(empty, { ...reading, trials });
}

/** The book with what was read; what stands there already is kept. */
export function withReading(
  book: FactBook,
  { taken, trials, unsure, constraints, solved }: Reading,
): FactBook {
  const answers = new Map(book.answers);
  const keep = (id: FactId, answer: Answer): void => {
    if (!answers.has(id)) answers.set(id, answer);
  };
  const told = new Set(
    trials.flatMap(({ act, test }) => (act === undefined ? [] : [act as string, test as string])),
  );
  for (const { fact, value, how, negated } of taken) {
    if (isFactId(fact) && !negated && typeof value !== 'boolean' && !told.has(fact))
      keep(fact, { value, how });
  }
  for (const { fact, values } of unsure) {
    if (isFactId(fact) && values !== undefined) keep(fact, { how: 'conflicting', values });
  }
  const heard = idsOf(taken, false);
  return {
    ...book,
    answers,
    complaints: merged(book.complaints, heard, book.absentComplaints),
    absentComplaints: merged(book.absentComplaints, idsOf(taken, true), [...book.complaints, ...heard]),
    constraints: CONSTRAINT_IDS.filter((id) => book.constraints.includes(id) || constraints.includes(id)),
    ...(book.solved === undefined && solved !== undefined ? { solved } : {}),
    trials: [...book.trials, ...trials.flatMap(trialOf)],
  };
}

const idsOf = (taken: readonly Taken[], absent: boolean): ComplaintId[] =>
  taken
    .filter(({ fact, negated, value }) => value === true && negated === absent && fact !== '')
    .map(({ fact }) => fact as ComplaintId);

const merged = (
  before: readonly ComplaintId[],
  more: readonly ComplaintId[],
  not: readonly ComplaintId[],
): ComplaintId[] =>
  COMPLAINT_IDS.filter((id) => (before.includes(id) || more.includes(id)) && !not.includes(id));

function trialOf({ act, outcome, of, stays }: Reading['trials'][number]): Trial[] {
  if (act === undefined || outcome === undefined) return [];
  return [{ act, ...(of === undefined ? {} : { of }), outcome, ...(stays === undefined ? {} : { stays }) }];
}
