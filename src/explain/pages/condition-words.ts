/** Conditions of rules in words, for reference pages. */
import type { UnitSystem } from '../../facts/book.js';
import { isFactId } from '../../facts/catalog.js';
import { type Condition, isLeaf, type Leaf, type VarId } from '../../rules/condition.js';
import { isDerivedId } from '../../rules/derived/table.js';
import { type Grade, type LimitId, limit } from '../../rules/limits.js';
import { named, quantityText, variableLabel, variableText } from '../words.js';

const OPERATORS: Readonly<Record<Leaf['operator'], string>> = {
  equal: 'is',
  notEqual: 'is not',
  in: 'is one of',
  notIn: 'is none of',
  greaterThanInclusive: 'is at least',
  greaterThan: 'is above',
  lessThanInclusive: 'is at most',
  lessThan: 'is below',
};

export function conditionText(condition: Condition, units: UnitSystem = 'metric'): string {
  if (isLeaf(condition)) return leafText(condition, units);
  if ('not' in condition) return `not (${conditionText(condition.not, units)})`;
  const [parts, word] = 'all' in condition ? [condition.all, ' and '] : [condition.any, ' or '];
  return parts.map((part) => bracketed(part, units)).join(word);
}

function bracketed(part: Condition, units: UnitSystem): string {
  const text = conditionText(part, units);
  return isLeaf(part) || 'not' in part ? text : `(${text})`;
}

function leafText(leaf: Leaf, units: UnitSystem): string {
  return `${variableLabel(leaf.fact)} ${OPERATORS[leaf.operator]} ${operandText(leaf, units)}`;
}

function operandText({ fact, value }: Leaf, units: UnitSystem): string {
  if (typeof value === 'string') return `“${variableText(fact, value, units)}”`;
  if (!('fact' in value)) return value.map((each) => `“${variableText(fact, each, units)}”`).join(', ');
  return value.fact.startsWith('limit.')
    ? limitWords(value.fact, units)
    : named(variableLabel(value.fact as VarId));
}

/** `limit.dipDb.clear` as `4 dB (clear)`. */
export function limitWords(id: string, units: UnitSystem): string {
  const [, name, grade] = id.split('.') as [string, LimitId, Grade];
  const { unit } = limit(name);
  return `${quantityText(limit(name)[grade], unit, units)} (${grade} grade)`;
}

/** A template with its braces told as labels in angle quotes. */
export function templateText(template: string): string {
  return template.replace(/\{([A-Za-z0-9.]+)\}/g, (_, name: string) =>
    // The limit, a range or a gain belongs to the rule or remedy itself.
    isFactId(name) || isDerivedId(name) ? `‹${variableLabel(name)}›` : `‹${name}›`,
  );
}
