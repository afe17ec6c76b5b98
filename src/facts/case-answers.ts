/** The answers of a case file. */

import type { Json } from '../lib/json-text.js';
import { type AnswerResult, choiceCalled, parseAnswer } from './answer.js';
import type { Answer, UnitSystem } from './book.js';
import type { Findings } from './case-error.js';
import type { RawCase } from './case-text.js';
import { FACT_IDS, type FactId, factSpec, isFactId } from './catalog.js';
import { HOWS } from './spec.js';

/** All answers under `facts`, in the order of the catalog; entries whose shape is wrong are left out. */
export function readAnswers(
  raw: RawCase,
  units: UnitSystem,
  spoiled: ReadonlySet<string>,
  found: Findings,
): ReadonlyMap<FactId, Answer> {
  const answers = new Map<FactId, Answer>();
  if (!isObject(raw.facts)) return answers;
  for (const id of FACT_IDS) {
    const path = `facts.${id}`;
    if (!Object.hasOwn(raw.facts, id) || spoiled.has(path)) continue;
    const result = readFact(id, raw.facts[id], units);
    if ('refused' in result) {
      found.problems.push({ path, ...result.refused });
      continue;
    }
    answers.set(id, result.answer);
    const { bareUnit } = result;
    if (bareUnit !== undefined) {
      const text = `a number without a unit is taken as ${bareUnit}: ${result.echo}`;
      found.warnings.push({ path, text, bareUnit });
    }
    if (result.remark !== undefined) found.warnings.push({ path, text: result.remark });
  }
  return answers;
}

/** The case with words of the trade for a choice (MTM) replaced by the value they stand for. */
export function withChoiceValues(raw: RawCase): RawCase {
  if (!isObject(raw.facts)) return raw;
  const entries = Object.entries(raw.facts).map(([key, entry]): [string, Json] => {
    const word = isObject(entry) ? entry.value : entry;
    const spec = isFactId(key) ? factSpec(key) : undefined;
    const value = spec?.kind === 'choice' && typeof word === 'string' ? choiceCalled(spec, word) : undefined;
    if (value === undefined) return [key, entry];
    return [key, isObject(entry) ? { ...entry, value } : value];
  });
  return { ...raw, facts: Object.fromEntries(entries) };
}

/** One entry under `facts`: a value, `{ value, how }`, or `{ how: 'unknown' }`. */
export function readFact(id: FactId, entry: Json | undefined, units: UnitSystem): AnswerResult {
  if (!isObject(entry)) return parseAnswer(id, entry, { units, strict: true });
  if (entry.how === 'unknown') return { answer: { how: 'unknown' }, echo: 'not known' };
  const how = HOWS.find((each) => each === entry.how);
  return parseAnswer(id, entry.value, { units, strict: true, ...(how === undefined ? {} : { how }) });
}

export function isObject(value: Json | undefined): value is { [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
