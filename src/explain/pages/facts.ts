/** Pages of questions, home tests, computed facts, complaints, thresholds and sources. */

import { FACT_IDS, type FactId, factSpec, isFactId } from '../../facts/catalog.js';
import { COMPLAINT_IDS, COMPLAINTS, type ComplaintId } from '../../facts/complaints.js';
import type { FactSpec, NumberSpec } from '../../facts/spec.js';
import { isTest } from '../../reasoning/hypotheses.js';
import { variablesOfRule } from '../../reasoning/rule-index.js';
import type { Cause, Rule } from '../../rules/cause.js';
import { type VarId, variablesOf } from '../../rules/condition.js';
import { DERIVED, DERIVED_IDS, type DerivedId } from '../../rules/derived/table.js';
import { factsBehind } from '../../rules/derived/view.js';
import { ruleId } from '../../rules/evidence.js';
import { CAUSES } from '../../rules/index.js';
import { LIMITS, type LimitId, limit } from '../../rules/limits.js';
import { verdictOf } from '../../rules/plain.js';
import { SOURCES, type SourceId } from '../../rules/sources.js';
import type { View } from '../../rules/view.js';
import { absentDb, givenDb } from '../../rules/weight.js';
import { weightText } from '../confidence.js';
import {
  type Block,
  bullets,
  heading,
  type Item,
  itemList,
  type Line,
  lines,
  numbered,
  pairs,
  paragraph,
  table,
  withoutEmpty,
} from '../document.js';
import { stepCautions } from '../step-cautions.js';
import {
  capital,
  factText,
  howText,
  idText,
  markText,
  minutesText,
  quantityText,
  sentence,
} from '../words.js';
import { linkTo, type Page } from './page.js';
import { limitsOf, sourceLine, variableLink } from './rules.js';

const RULES: readonly (readonly [Cause, Rule])[] = CAUSES.flatMap((cause) =>
  cause.rules.map((rule) => [cause, rule] as const),
);
const ruleLine = ([cause, rule]: readonly [Cause, Rule]): Line => [
  linkTo('rule', ruleId(cause, rule), `${capital(cause.title)}: ${idText(rule.id)}`),
];
/** Facts to the causes that read them, by themselves or through what is computed. */
const READERS = indexed(CAUSES, (cause) =>
  cause.rules
    .flatMap((rule) => variablesOfRule(cause, rule))
    .flatMap((id): readonly FactId[] => (isFactId(id) ? [id] : factsBehind(id))),
);
/** Facts to the rules that read nothing but their answer. */
const ANSWERED = indexed(RULES, ([, { when, weigh }]) => {
  const read = weigh.kind === 'answer' ? variablesOf(when) : [];
  return read.length === 1 ? read.filter(isFactId) : [];
});
const BY_VARIABLE = indexed(RULES, ([cause, rule]) => variablesOfRule(cause, rule));
const BY_LIMIT = indexed(RULES, ([, rule]) => limitsOf(rule));
const BY_SOURCE = indexed(RULES, ([, rule]) => [rule.source]);

export const factPages = (): Page[] => FACT_IDS.map(factPage);

export function factPage(id: FactId): Page {
  const spec = factSpec(id);
  return {
    kind: isTest(id) ? 'test' : 'fact',
    id,
    title: capital(spec.label),
    blocks: withoutEmpty([
      paragraph({ strong: spec.ask }),
      pairs([
        ['Hint', spec.hint],
        ['Why', spec.why],
        ['Takes', sentence(minutesText(spec.minutes))],
        ['Usually', sentence(`the answer is ${howText(spec.usually)}`)],
        ...(spec.askedWhen ? [['Asked', askedText(spec.askedWhen)] as [string, Line]] : []),
        ...assumeRows(id, spec),
        ...stepCautions(id).map((caution): [string, Line] => ['Caution', caution]),
      ]),
      heading(2, 'How to find out'),
      numbered(spec.findOut),
      ...answerBlocks(id, spec),
      heading(2, 'Causes that read it'),
      bullets(readersOf(id)),
    ]),
  };
}

function askedText(askedWhen: Readonly<Record<string, readonly string[]>>): string {
  const parts = Object.entries(askedWhen).map(([parent, accepted]) => {
    if (!isFactId(parent)) return parent;
    const values = accepted.map((value) => `“${factText(parent, value, 'metric')}”`);
    return `${factSpec(parent).label} is ${values.join(' or ')}`;
  });
  return `Only where ${parts.join(' and ')}.`;
}

function assumeRows(id: FactId, spec: FactSpec): [string, Line][] {
  if (!('assume' in spec) || !spec.assume)
    return [['Not known', 'Nothing is assumed; what depends on it stays open.']];
  const { value, note } = spec.assume;
  return [
    [
      'Not known',
      `${capital(factText(id, value, 'metric'))} is assumed: ${note}. It then counts as a guess.`,
    ],
  ];
}

function answerBlocks(id: FactId, spec: FactSpec): Block[] {
  if (spec.kind === 'choice') {
    return [
      heading(2, 'Answers'),
      itemList(Object.entries(spec.choices).map(([value, words]) => choiceItem(id, value, words))),
    ];
  }
  if (spec.kind === 'file') {
    return [
      heading(2, 'Answers'),
      paragraph('The path of a text file: frequency in Hz and level in dB on each line.'),
    ];
  }
  return [heading(2, 'Answers'), pairs(rangeRows(spec))];
}

function rangeRows(spec: NumberSpec): [string, Line][] {
  const span = ([low, high]: readonly [number, number]): string =>
    `${quantityText(low, spec.unit, 'metric')} to ${quantityText(high, spec.unit, 'metric')}`;
  return [
    ['Possible', `${span(spec.possible)}; anything else is refused.`],
    ['Plausible', `${span(spec.plausible)}; anything else is asked again.`],
  ];
}

/** One answer, and for which causes it speaks by itself: rules that read nothing but this question. */
function choiceItem(id: FactId, value: string, words: string): Item {
  const view = viewWith(id, value);
  const said = (ANSWERED.get(id) ?? []).flatMap(([cause, { when, weigh }]): string[] => {
    if (weigh.kind !== 'answer') return [];
    const { tp, fp, only } = weigh;
    const yes = verdictOf(when, view).truth === 'yes';
    if (only === (yes ? 'against' : 'for')) return [];
    const decibans = (yes ? givenDb : absentDb)(tp, fp, factSpec(id).usually);
    return [`${capital(cause.title)}: ${weightText(decibans)}.`];
  });
  const spec = factSpec(id);
  const alsoCalled = spec.kind === 'choice' ? (spec.alsoCalled?.[value] ?? []) : [];
  const known = alsoCalled.length > 0 ? ` (also understood: ${alsoCalled.join(', ')})` : '';
  return { line: [{ strong: value }, `: ${words}${known}`], below: lines(...said) };
}

/** A view that knows one answer and nothing else. */
function viewWith(id: FactId, value: string): View {
  return {
    read: (each: VarId) => ({
      id: each,
      value: each === id ? value : undefined,
      unit: '1',
      assumed: [],
      facts: [],
      missing: [],
      how: 'measured',
      spread: 0,
    }),
  } as unknown as View;
}

const readersOf = (id: FactId): Line[] =>
  (READERS.get(id) ?? []).map((cause) => [linkTo('cause', cause.id, capital(cause.title))]);

export const computedPages = (): Page[] =>
  DERIVED_IDS.map((id: DerivedId) => ({
    kind: 'computed',
    id,
    title: capital(DERIVED[id].label),
    blocks: withoutEmpty([
      paragraph(
        `Computed from the answers; ${DERIVED[id].kind === 'number' ? `unit ${DERIVED[id].unit === '1' ? 'none' : DERIVED[id].unit}` : 'a choice'}.`,
      ),
      heading(2, 'It can rest on'),
      bullets(factsBehind(id).map((each): Line => [variableLink(each)])),
      heading(2, 'Rules that read it'),
      bullets((BY_VARIABLE.get(id) ?? []).map(ruleLine)),
    ]),
  }));

export const complaintPages = (): Page[] =>
  COMPLAINT_IDS.map((id: ComplaintId) => ({
    kind: 'complaint',
    id,
    title: capital(COMPLAINTS[id].title),
    blocks: withoutEmpty([
      paragraph(sentence(COMPLAINTS[id].hint)),
      paragraph(
        `Without any cause listed here it comes up in about ${Math.round(COMPLAINTS[id].leak * 100)}% of systems (our judgment).`,
      ),
      heading(2, 'Causes that make it'),
      bullets(
        CAUSES.filter((cause) => cause.links[id] !== undefined)
          .sort((a, b) => (b.links[id] ?? 0) - (a.links[id] ?? 0))
          .map(
            (cause): Line => [
              linkTo('cause', cause.id, capital(cause.title)),
              `: in about ${Math.round((cause.links[id] ?? 0) * 100)}% of the systems that have it.`,
            ],
          ),
      ),
    ]),
  }));

export const thresholdPages = (): Page[] =>
  (Object.keys(LIMITS) as LimitId[]).map((id) => {
    const table_ = limit(id);
    const text = (value: number): string => quantityText(value, table_.unit, 'metric');
    const direction = table_.lowIsBad ? 'and less' : 'and more';
    return {
      kind: 'threshold',
      id,
      title: capital(table_.label),
      blocks: withoutEmpty([
        table(
          ['grade', 'from'],
          (['noticeable', 'clear', 'severe'] as const).map((grade) => [
            grade,
            `${text(table_[grade])} ${direction}`,
          ]),
        ),
        paragraph(
          `${sentence(table_.note)} A rule weighs nothing at the clear grade: there it is a fair coin.`,
        ),
        heading(2, 'Rules that compare with it'),
        bullets((BY_LIMIT.get(id) ?? []).map(ruleLine)),
        heading(2, 'Source'),
        bullets([sourceLine(table_.source)]),
        heading(2, 'Source of the grades'),
        bullets([sourceLine(table_.grades)]),
      ]),
    };
  });

export const sourcePages = (): Page[] =>
  (Object.keys(SOURCES) as SourceId[]).map((id) => ({
    kind: 'source',
    id,
    title: capital(SOURCES[id].cite),
    blocks: withoutEmpty([
      paragraph(`How far to trust it: ${markText(SOURCES[id].mark)}.`),
      heading(2, 'Thresholds from it'),
      bullets(
        (Object.keys(LIMITS) as LimitId[])
          .filter((each) => [limit(each).source, limit(each).grades].includes(id))
          .map((each): Line => [linkTo('threshold', each, capital(LIMITS[each].label))]),
      ),
      heading(2, 'Rules that rest on it'),
      bullets((BY_SOURCE.get(id) ?? []).map(ruleLine)),
    ]),
  }));

function indexed<T, Id>(items: readonly T[], idsOf: (item: T) => readonly Id[]): ReadonlyMap<Id, T[]> {
  const index = new Map<Id, T[]>();
  for (const item of items)
    for (const id of new Set(idsOf(item))) index.set(id, [...(index.get(id) ?? []), item]);
  return index;
}
