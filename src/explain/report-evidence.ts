/** Evidence of one cause in words: what each rule says, how telling it is, and where its value lies among the grades. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec } from '../facts/catalog.js';
import type { Unit } from '../facts/spec.js';
import { largestFirst } from '../lib/ties.js';
import type { Cause, Rule } from '../rules/cause.js';
import type { NumberVar } from '../rules/condition.js';
import { DERIVED, isDerivedId } from '../rules/derived/table.js';
import type { Evidence } from '../rules/evidence.js';
import { type Limit, type LimitId, limit } from '../rules/limits.js';
import { SOURCES } from '../rules/sources.js';
import type { View } from '../rules/view.js';
import { weightText } from './confidence.js';
import type { RangeBar, ReportEvidence } from './report-types.js';
import { type Filling, fillKnown, quantityText, sentence, variableLabel } from './words.js';

/** Evidence that bears on the case, most telling first, what is not known yet last. */
export function reportEvidence(
  cause: Cause,
  evidence: readonly Evidence[],
  view: View,
  units: UnitSystem,
  temperature: number,
): ReportEvidence[] {
  const rules = new Map(cause.rules.map((rule) => [rule.id, rule]));
  return evidence
    .flatMap((item) => {
      const rule = rules.get(item.rule);
      return rule && item.outcome !== 'not-applicable' ? [oneItem(rule, item, view, units, temperature)] : [];
    })
    .sort((a, b) => order(a) - order(b) || largestFirst(Math.abs(a.decibans), Math.abs(b.decibans)));
}

const order = (item: ReportEvidence): number =>
  item.outcome === 'unknown' || item.outcome === 'error' ? 1 : 0;

function oneItem(
  rule: Rule,
  item: Evidence,
  view: View,
  units: UnitSystem,
  temperature: number,
): ReportEvidence {
  const source = SOURCES[rule.source];
  const decibans = item.decibans / temperature;
  const { value = null, threshold = null, ratio, unit = null } = item;
  const numbers = numbersOf(rule, item, units);
  return {
    rule: item.rule,
    decibans,
    text: saidBy(rule, item, view, units),
    facts: item.facts,
    value,
    threshold,
    unit,
    source: source.cite,
    assumed: item.assumed.length > 0,
    outcome: item.outcome,
    speaks: decibans === 0 ? 'neither' : decibans > 0 ? 'for' : 'against',
    weightText: item.outcome === 'unknown' ? 'not known yet' : weightText(decibans),
    because: rule.because,
    group: rule.group,
    ratio: ratio !== undefined && Number.isFinite(ratio) ? ratio : null,
    valueLabel: numbers.valueLabel,
    valueText: numbers.valueText,
    thresholdText: numbers.thresholdText,
    sourceId: rule.source,
    mark: source.mark,
    assumedLabels: item.assumed.map((id) => factSpec(id).label),
    open: item.open,
    range: numbers.range,
  };
}

/** What a rule says in its outcome. A rule that failed says so, and the rest of the report stands. */
function saidBy(rule: Rule, item: Evidence, view: View, units: UnitSystem): string {
  if (item.outcome === 'error')
    return `This check failed (${item.error ?? 'no reason given'}) and was left out.`;
  if (item.outcome === 'not-applicable') return 'It does not bear on this case.';
  if (item.outcome === 'unknown')
    return `Not known yet: ${item.open.map((id) => factSpec(id).label).join('; ') || 'what it needs'}.`;
  return sentence(
    fillKnown(rule.says[item.outcome], view, units, sentence(rule.because), fillingOf(rule, item)),
  );
}

/** `{limit}`: the threshold of a deviation, or the first limit of the table that the condition compares with. */
export function fillingOf(
  rule: Rule,
  item: Pick<Evidence, 'threshold' | 'leaves' | 'unit' | 'range'>,
): Filling {
  if (rule.weigh.kind === 'match' && item.range)
    return { range: { ends: item.range, unit: unitOf(rule.weigh.of) } };
  if (rule.weigh.kind === 'deviation' && item.threshold !== undefined) {
    return { limit: { value: item.threshold, unit: unitOf(rule.weigh.of) } };
  }
  for (const { leaf, limit: bound } of item.leaves) {
    if (typeof leaf.value === 'object' && 'fact' in leaf.value && leaf.value.fact.startsWith('limit.')) {
      const id = leaf.value.fact.split('.')[1] as LimitId;
      if (typeof bound === 'number') return { limit: { value: bound, unit: limit(id).unit } };
    }
  }
  return {};
}

function unitOf(id: NumberVar): Unit {
  if (isDerivedId(id)) return DERIVED[id].unit;
  const spec = factSpec(id);
  return spec.kind === 'number' ? spec.unit : '1';
}

type Numbers = Pick<ReportEvidence, 'valueLabel' | 'valueText' | 'thresholdText' | 'range'>;
const NO_NUMBERS: Numbers = { valueLabel: null, valueText: null, thresholdText: null, range: null };

/** The value of a deviation and its limit in words; an answer has no number, nor has what is not known. */
function numbersOf({ weigh }: Rule, { value, threshold }: Evidence, units: UnitSystem): Numbers {
  if (weigh.kind !== 'deviation' || value === undefined || threshold === undefined) return NO_NUMBERS;
  const { of, limit: bound } = weigh;
  const text = (each: number): string =>
    of.endsWith('Pct') ? `${Math.round(each)}%` : quantityText(each, unitOf(of), units);
  return {
    valueLabel: variableLabel(of),
    valueText: text(value),
    thresholdText: text(threshold),
    range: bound.startsWith('limit.') ? rangeBar(bound.split('.')[1] as LimitId, value, text) : null,
  };
}

/** Where a value lies among the grades of a limit. */
export function rangeBar(id: LimitId, value: number, text: (value: number) => string): RangeBar {
  const table: Limit = limit(id);
  const { noticeable, clear, severe, label, unit } = table;
  const lowIsBad = table.lowIsBad ?? false;
  const reaches = (grade: number): boolean => (lowIsBad ? value <= grade : value >= grade);
  return {
    limit: id,
    label,
    unit,
    value,
    noticeable,
    clear,
    severe,
    lowIsBad,
    grade: reaches(clear) ? 'poor' : reaches(noticeable) ? 'borderline' : 'good',
    valueText: text(value),
    noticeableText: text(noticeable),
    clearText: text(clear),
    near: reaches(noticeable) && !reaches(severe),
  };
}
