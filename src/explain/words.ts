/** One source of words: values, units, minutes, costs and templates as people read them, in every format. */

import type { DerivedMeta } from '../compute/reader.js';
import type { Answer, FactBook, UnitSystem } from '../facts/book.js';
import { type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { aboutMinutesText, formatFact, formatValue, minutesText, plural } from '../facts/format.js';
import type { Unit } from '../facts/spec.js';
import { plainLine } from '../lib/sanitize.js';
import type { Cost } from '../rules/cause.js';
import { type Condition, isLeaf, type VarId } from '../rules/condition.js';
import { DERIVED, isDerivedId } from '../rules/derived/table.js';
import type { Mark } from '../rules/sources.js';
import type { Reading, View } from '../rules/view.js';

export { aboutMinutesText, minutesText, plural };

/** What the braces of one rule mean beyond the facts: the limit it compares with. */
export interface Filling {
  readonly limit?: Quantity;
  /** What a remedy leaves of the value it makes smaller. */
  readonly after?: Quantity;
  /** Where a mechanism puts what was measured. */
  readonly range?: { readonly ends: readonly [low: number, high: number]; readonly unit: Unit };
}
interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

const BRACES = /\{([A-Za-z0-9.]+)\}/g;

/**
 * Fills every `{variable}` with value and unit in the owner's units; undefined where the text names something that
 * is not known, and so must not be shown.
 */
export function fill(
  template: string,
  view: View,
  units: UnitSystem,
  filling: Filling = {},
): string | undefined {
  let hasGap = false;
  const text = filled(template, view, units, filling, () => {
    hasGap = true;
    return '';
  });
  return hasGap ? undefined : text;
}

/** The same for a step that must not be left out: what is not known is named in its place. */
export function fillNaming(template: string, view: View, units: UnitSystem): string {
  return filled(template, view, units, {}, (name) =>
    isVar(name) ? `a value not known yet (${variableLabel(name)})` : 'a value not known yet',
  );
}

function filled(
  template: string,
  view: View,
  units: UnitSystem,
  filling: Filling,
  gap: (name: string) => string,
): string {
  if (!template.includes('{')) return template;
  return template
    .replace(BRACES, (_, name: string) => {
      if (name === 'range') {
        const { ends, unit } = filling.range ?? {};
        if (!ends || !unit) return gap(name);
        return ends[1] === 0 ? 'none here' : ends.map((end) => quantityText(end, unit, units)).join(' to ');
      }
      if (name === 'limit' || name === 'after') {
        const given = filling[name];
        return given ? quantityText(given.value, given.unit, units) : gap(name);
      }
      const reading = isVar(name) ? view.read(name) : undefined;
      return reading?.value === undefined ? gap(name) : readingText(reading, units);
    })
    .replace(DOUBLED, '$1');
}
/** A template may say "about" of a value that says so itself. */
const DOUBLED = /\b(about )about /g;

/** From so much uncertainty on, one standard deviation as a natural logarithm, a value is about; from so much on a range. */
const ABOUT_FROM = 0.1;
const RANGE_FROM = 0.3;

/**
 * A computed value with the precision that its inputs allow: `20 dB or more` where larger ones are not told apart,
 * `about 2 kHz`, or the range of one standard deviation to each side.
 */
function readingText(reading: Reading, units: UnitSystem): string {
  const { id, value, spread } = reading;
  if (value === undefined) return '';
  if (isFactId(id) || typeof value === 'string') return variableText(id, value, units);
  const { atMost } = DERIVED[id] as DerivedMeta;
  if (atMost !== undefined && value >= atMost) return `${variableText(id, atMost, units)} or more`;
  if (spread < ABOUT_FROM || value === 0) return variableText(id, value, units);
  if (spread < RANGE_FROM) return `about ${variableText(id, rounded(value), units)}`;
  const [low, high] = [value * Math.exp(-spread), Math.min(atMost ?? Infinity, value * Math.exp(spread))];
  const [from, to] = [low, high].map((end) => variableText(id, rounded(end), units)) as [string, string];
  return from === to ? `about ${to}` : `${withoutUnit(from, to)} to ${to}`;
}

/** Two digits: more would claim what is not known. */
const rounded = (value: number): number => Number(value.toPrecision(2));

/** The first of two values without the unit that the second one names. */
function withoutUnit(from: string, to: string): string {
  const [, number, unit] = /^(\S+) (.+)$/.exec(from) ?? [];
  return number !== undefined && to.endsWith(` ${unit}`) ? number : from;
}

/** The same, leaving out sentences that speak of what is not known; `otherwise` where none is left. */
export function fillKnown(
  template: string,
  view: View,
  units: UnitSystem,
  otherwise: string,
  filling: Filling = {},
): string {
  if (!template.includes('{')) return template;
  const known = sentencesOf(template).flatMap((sentence) => fill(sentence, view, units, filling) ?? []);
  return known.length === 0 ? otherwise : known.join(' ');
}

/** Sentences of a text: a full stop, question mark or exclamation mark, a space and a capital or brace end one. */
export function sentencesOf(text: string): string[] {
  return text.split(/(?<=[.!?])\s+(?=[A-Z{“"])/);
}

/** Names in braces, each once. */
export function variablesIn(template: string): string[] {
  return [...new Set([...template.matchAll(BRACES)].map((match) => match[1] ?? ''))];
}

const isVar = (name: string): name is VarId => isFactId(name) || isDerivedId(name);

export function variableLabel(id: VarId): string {
  return isFactId(id) ? factSpec(id).label : DERIVED[id].label;
}

/** A value of an asked or computed fact in words: a choice as its plain words, a number with its unit. */
export function variableText(id: VarId, value: number | string, units: UnitSystem): string {
  if (isFactId(id)) return factText(id, value, units);
  if (typeof value === 'string') return value.replaceAll('-', ' ');
  // A percentage or a position on a scale; people read no decimals of a percent.
  if (id.endsWith('Pct')) return String(Math.round(value));
  return quantityText(value, DERIVED[id].unit, units);
}

/** An answer in words, in the owner's units. */
export function factText(id: FactId, value: number | string, units: UnitSystem): string {
  const spec = factSpec(id);
  if (spec.kind === 'choice') return spec.choices[String(value)] ?? String(value);
  if (spec.kind === 'file' || typeof value === 'string') return plainLine(String(value));
  return formatFact(value, spec, units);
}

/** The answer to one fact of a book in words; undefined where it was not told. */
export function answerText(book: FactBook, id: FactId): string | undefined {
  const answer = book.answers.get(id);
  return answer && 'value' in answer ? factText(id, answer.value, book.units) : undefined;
}

export function quantityText(value: number, unit: Unit, units: UnitSystem): string {
  return formatValue(value, unit, { units });
}

const COSTS: Readonly<Record<Cost, string>> = {
  free: 'free',
  low: 'small cost',
  medium: 'medium cost',
  high: 'high cost',
};
const costText = (cost: Cost): string => COSTS[cost];

export function effortText(minutes: number, cost: Cost, final?: true): string {
  // Most steps can be undone: only what cannot changes what the reader does.
  const undo = final ? ['cannot be undone'] : [];
  return [minutesText(minutes), costText(cost), ...undo].join(', ');
}

const HOW_WORDS: Readonly<Record<Answer['how'], string>> = {
  measured: 'measured',
  read: 'read from a menu or sheet',
  seen: 'plain to see',
  recalled: 'from memory',
  guessed: 'a guess',
  unknown: 'not known',
  conflicting: 'told both ways',
};
export const howText = (how: Answer['how']): string => HOW_WORDS[how];

const MARK_WORDS: Readonly<Record<Mark, string>> = {
  read: 'read in the source',
  computed: 'computed here',
  practice: 'common practice, no source',
  memory: 'from memory, not checked',
};
export const markText = (mark: Mark): string => MARK_WORDS[mark];

/** `a`, `a and b`, `a, b and c`. */
export function listText(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A title inside a sentence. */
export const named = (title: string): string => `“${capital(title)}”`;

/** With a full stop, unless it ends a sentence already. */
export const sentence = (text: string): string =>
  /[.!?:]$/.test(text) ? capital(text) : `${capital(text)}.`;

/** An id in words: `where-heard` -> `where heard`, `centerLayout` -> `center layout`. */
export function idText(id: string): string {
  return id
    .replaceAll('-', ' ')
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .toLowerCase();
}

/** The first known part of a settled condition, as `label: “value”`. */
export function gateText(condition: Condition, view: View, units: UnitSystem): string | undefined {
  for (const id of leafVariables(condition)) {
    const value = view.read(id).value;
    if (value !== undefined) return `${variableLabel(id)}: “${variableText(id, value, units)}”`;
  }
  return undefined;
}

function leafVariables(condition: Condition): VarId[] {
  if (isLeaf(condition)) return [condition.fact];
  if ('not' in condition) return leafVariables(condition.not);
  return ('all' in condition ? condition.all : condition.any).flatMap(leafVariables);
}
