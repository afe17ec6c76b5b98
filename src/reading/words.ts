/** A reading in words: sentence by sentence what was taken, from which words, and what was left. */
import { ACTS, isActId, OUTCOMES, type Outcome } from '../facts/acts.js';
import type { UnitSystem } from '../facts/book.js';
import { factSpec, isFactId } from '../facts/catalog.js';
import { COMPLAINTS, isComplaintId } from '../facts/complaints.js';
import { CONSTRAINTS, isConstraintId } from '../facts/constraints.js';
import { formatFact } from '../facts/format.js';
import type { How } from '../facts/spec.js';
import { plainLine } from '../lib/sanitize.js';
import type { Taken } from './candidates.js';
import type { Reading } from './read.js';

const HOW_WORDS: Readonly<Record<How, string>> = {
  measured: 'measured',
  read: 'read off',
  seen: 'plain to see',
  recalled: 'as told',
  guessed: 'a guess',
};

/** One thing taken, as it is read back: "seat distance: 3.05 m (10 ft), a guess". */
export function takenText({ fact, value, how, negated }: Taken, units: UnitSystem): string {
  if (isComplaintId(fact))
    return negated ? `not heard: ${COMPLAINTS[fact].title}` : `heard: ${COMPLAINTS[fact].title}`;
  if (fact === 'solved') return value === true ? 'the trouble is settled' : 'the trouble is not settled';
  if (isConstraintId(fact)) return `must be so: ${CONSTRAINTS[fact]}`;
  if (isActId(fact)) return `tried: ${ACTS[fact].done}; ${OUTCOMES[value as Outcome]}`;
  if (!isFactId(fact)) return fact;
  const spec = factSpec(fact);
  const said =
    spec.kind === 'number'
      ? formatFact(Number(value), spec, units)
      : spec.kind === 'choice'
        ? (spec.choices[String(value)] ?? String(value))
        : String(value);
  return `${spec.label}: ${negated ? 'not ' : ''}${said}, ${HOW_WORDS[how]}`;
}

interface Explained {
  readonly sentence: string;
  readonly taken: readonly string[];
  readonly unsure: readonly string[];
}

/** Every sentence with what was taken from it. */
export function explained(reading: Reading): Explained[] {
  const units = reading.units ?? 'metric';
  return reading.sentences.map(({ start, end }) => {
    const isHere = (each: { readonly start: number }): boolean => each.start >= start && each.start < end;
    return {
      sentence: plainLine(reading.text.slice(start, end)),
      taken: reading.taken
        .filter(isHere)
        .map((each) => `${takenText(each, units)} (“${plainLine(each.phrase)}”)`),
      unsure: reading.unsure.filter(isHere).map((each) => `${each.question} (“${plainLine(each.phrase)}”)`),
    };
  });
}
