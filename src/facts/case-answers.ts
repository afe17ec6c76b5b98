/** The answers of a case file. */

import type { Json } from '../lib/json-text.js';
import { type AnswerResult, choiceCalled, parseAnswer } from './answer.js';
import type { Answer, UnitSystem } from './book.js';
import type { Findings } from './case-error.js';
import type { RawCase } from './case-text.js';
import { FACT_IDS, type FactId, factSpec, isFactId } from './catalog.js';
import { HOWS } from './spec.js';

/** All answers under `facts` of a case or of `before`, in the order of the catalog; those of a wrong shape are left out. */
export function readAnswers(
  facts: Json | undefined,
  at: 'facts' | 'before.facts',
  units: UnitSystem,
  spoiled: ReadonlySet<string>,
  found: Findings,
): ReadonlyMap<FactId, Answer> {
  const answers = new Map<FactId, Answer>();
  if (!isObject(facts)) return answers;
  for (const id of FACT_IDS) {
    const path = `${at}.${id}`;
    if (!Object.hasOwn(facts, id) || spoiled.has(path)) continue;
    const result = readFact(id, facts[id], units);
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
  const { facts, before } = raw;
  return {
    ...raw,
    ...(isObject(facts) ? { facts: namedChoices(facts) } : {}),
    ...(isObject(before) && isObject(before.facts)
      ? { before: { ...before, facts: namedChoices(before.facts) } }
      : {}),
  };
}

function namedChoices(facts: { [key: string]: Json }): { [key: string]: Json } {
  const entries = Object.entries(facts).map(([key, entry]): [string, Json] => {
    const spec = isFactId(key) ? factSpec(key) : undefined;
    if (spec?.kind !== 'choice') return [key, entry];
    const named = (word: Json): Json =>
      (typeof word === 'string' ? choiceCalled(spec, word) : undefined) ?? word;
    if (!isObject(entry)) return [key, named(entry)];
    const { value, values } = entry;
    return [
      key,
      {
        ...entry,
        ...(value === undefined ? {} : { value: named(value) }),
        ...(Array.isArray(values) ? { values: values.map(named) } : {}),
      },
    ];
  });
  return Object.fromEntries(entries);
}

/** One entry under `facts`: a value, `{ value, how }`, `{ how: 'unknown' }`, or `{ how: 'conflicting', values }`. */
export function readFact(id: FactId, entry: Json | undefined, units: UnitSystem): AnswerResult {
  if (!isObject(entry)) return parseAnswer(id, entry, { units, strict: true });
  if (entry.how === 'unknown') return { answer: { how: 'unknown' }, echo: 'not known' };
  if (entry.how === 'conflicting') return readConflict(id, entry.values, units);
  const how = HOWS.find((each) => each === entry.how);
  return parseAnswer(id, entry.value, { units, strict: true, ...(how === undefined ? {} : { how }) });
}

/** Each of the values must be a possible one; a single value told twice is no conflict. */
function readConflict(id: FactId, values: Json | undefined, units: UnitSystem): AnswerResult {
  const read = (Array.isArray(values) ? values : []).map((value) =>
    parseAnswer(id, value, { units, strict: true }),
  );
  const refused = read.find((each) => 'refused' in each);
  if (refused) return refused;
  const told = read.flatMap((each) => ('answer' in each && 'value' in each.answer ? [each] : []));
  const distinct = [...new Set(told.map(({ answer }) => ('value' in answer ? answer.value : '')))];
  const [first] = told;
  if (first && distinct.length === 1) return first;
  const echo = told.map((each) => each.echo).join(' or ');
  return { answer: { how: 'conflicting', values: distinct }, echo: `told both ways: ${echo}` };
}

export function isObject(value: Json | undefined): value is { [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
