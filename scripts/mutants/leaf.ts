/** Slips that could be made in one condition: another operator, limit, fact, choice, or way of joining. */
import { FACT_IDS, type FactId, factSpec, isFactId } from '../../src/facts/catalog.js';
import type { Condition, Leaf, LimitVar, Operator, VarId } from '../../src/rules/condition.js';
import { isLeaf } from '../../src/rules/condition.js';
import { DERIVED, DERIVED_IDS, type DerivedId } from '../../src/rules/derived/table.js';
import { type Grade, LIMITS, type Limit } from '../../src/rules/limits.js';
import { spotsOf } from './spots.js';

export type Kind =
  | 'operator'
  | 'limit'
  | 'fact'
  | 'choice'
  | 'join'
  | 'weight'
  | 'gate'
  | 'removed'
  | 'cause';
export interface Change<T> {
  readonly kind: Kind;
  readonly what: string;
  readonly to: T;
}

/** How far a limit is moved: half as much again, and as far the other way. */
const STRETCH = 1.5;
const OTHER_GRADE: Readonly<Record<Grade, Grade>> = { noticeable: 'clear', clear: 'severe', severe: 'clear' };
const OTHER_OPERATORS: Readonly<Record<Operator, readonly Operator[]>> = {
  equal: ['notEqual'],
  notEqual: ['equal'],
  in: ['notIn'],
  notIn: ['in'],
  greaterThanInclusive: ['greaterThan', 'lessThanInclusive'],
  greaterThan: ['greaterThanInclusive', 'lessThan'],
  lessThanInclusive: ['lessThan', 'greaterThanInclusive'],
  lessThan: ['lessThanInclusive', 'greaterThan'],
};

/** Other limits in the place of one: stretched, shrunk, another grade. Stretched ones join the table under a name of their own. */
export function otherLimits(limit: LimitVar): LimitVar[] {
  const [, name = '', grade] = limit.split('.') as [string, string, Grade];
  const scaled = [STRETCH, 1 / STRETCH].map((factor) => {
    const own = LIMITS[name as keyof typeof LIMITS] as Limit;
    const id = `${name} ${grade} times ${factor.toFixed(2)}`.replaceAll('.', ',');
    Object.assign(LIMITS, { [id]: { ...own, [grade]: own[grade] * factor } });
    return `limit.${id}.${grade}` as LimitVar;
  });
  return [...scaled, `limit.${name}.${OTHER_GRADE[grade]}` as LimitVar];
}

const kindOf = (id: VarId): string => {
  if (!isFactId(id)) return `${DERIVED[id as DerivedId].kind} ${DERIVED[id as DerivedId].unit}`;
  const spec = factSpec(id as FactId);
  return spec.kind === 'number' ? `number ${spec.unit}` : `${spec.kind} 1`;
};
const ALL_VARIABLES: readonly VarId[] = [...FACT_IDS, ...DERIVED_IDS];

/** The next variable of the same kind and unit in the order of the tables, round the end; of any unit where it is alone. */
export function otherVariable(id: VarId): VarId | undefined {
  const place = ALL_VARIABLES.indexOf(id);
  const others = [...ALL_VARIABLES.slice(place + 1), ...ALL_VARIABLES.slice(0, place)];
  const [kind] = kindOf(id).split(' ');
  return (
    others.find((other) => kindOf(other) === kindOf(id)) ??
    others.find((other) => kindOf(other).startsWith(`${kind} `))
  );
}

/** The values a choice may have. */
function choicesOf(id: VarId): readonly string[] {
  if (!isFactId(id)) {
    const derived = DERIVED[id as DerivedId];
    return 'values' in derived ? derived.values : [];
  }
  const spec = factSpec(id as FactId);
  return spec.kind === 'choice' ? Object.keys(spec.choices) : [];
}

export function leafChanges(leaf: Leaf): Change<Leaf>[] {
  return [...operatorChanges(leaf), ...valueChanges(leaf), ...factChanges(leaf)];
}

function operatorChanges(leaf: Leaf): Change<Leaf>[] {
  return OTHER_OPERATORS[leaf.operator].map((operator) => ({
    kind: 'operator',
    what: `${leaf.fact} ${leaf.operator} -> ${operator}`,
    to: { ...leaf, operator },
  }));
}

function factChanges(leaf: Leaf): Change<Leaf>[] {
  const fact = otherVariable(leaf.fact);
  return fact ? [{ kind: 'fact', what: `${leaf.fact} -> ${fact}`, to: { ...leaf, fact } }] : [];
}

function valueChanges(leaf: Leaf): Change<Leaf>[] {
  const { fact, value } = leaf;
  if (typeof value === 'string') {
    const other = choicesOf(fact).find((choice) => choice !== value);
    return other
      ? [{ kind: 'choice', what: `${fact} ${value} -> ${other}`, to: { ...leaf, value: other } }]
      : [];
  }
  if ('fact' in value) {
    const right = value.fact;
    if (!right.startsWith('limit.')) {
      const other = otherVariable(right as VarId);
      const to = { ...leaf, value: { fact: other } } as Leaf;
      return other ? [{ kind: 'limit', what: `${fact} against ${right} -> ${other}`, to }] : [];
    }
    return otherLimits(right as LimitVar).map((limit) => ({
      kind: 'limit',
      what: `${fact} against ${right} -> ${limit}`,
      to: { ...leaf, value: { fact: limit } },
    }));
  }
  return listChanges(leaf, value);
}

/** A list with each value left out, and with one more. */
function listChanges(leaf: Leaf, list: readonly string[]): Change<Leaf>[] {
  const shorter =
    list.length < 2
      ? []
      : list.map((gone) => ({ what: `without ${gone}`, value: list.filter((v) => v !== gone) }));
  const more = choicesOf(leaf.fact).find((choice) => !list.includes(choice));
  const longer = more ? [{ what: `with ${more}`, value: [...list, more] }] : [];
  return [...shorter, ...longer].map(({ what, value }) => ({
    kind: 'choice',
    what: `${leaf.fact} ${what}`,
    to: { ...leaf, value },
  }));
}

/** Every slip in a condition. */
export function conditionChanges(condition: Condition): Change<Condition>[] {
  return spotsOf(condition).flatMap(({ here, put }) =>
    (isLeaf(here) ? leafChanges(here) : joinChanges(here)).map((change) => ({
      ...change,
      to: put(change.to),
    })),
  );
}

function joinChanges(here: Exclude<Condition, Leaf>): Change<Condition>[] {
  if ('not' in here) return [{ kind: 'join', what: 'not taken away', to: here.not }];
  const [parts, word] = 'all' in here ? [here.all, 'all'] : [here.any, 'any'];
  if (parts.length < 2) return [];
  return word === 'all'
    ? [{ kind: 'join', what: 'all -> any', to: { any: parts } }]
    : [{ kind: 'join', what: 'any -> all', to: { all: parts } }];
}
