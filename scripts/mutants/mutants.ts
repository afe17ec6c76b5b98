/** Every slip that could be made in the data of a cause, one at a time. The cause itself stays as it is. */

import type { Cause, Deviation, Rule } from '../../src/rules/cause.js';
import { KINSHIP } from '../../src/rules/cause.js';
import type { Condition, Leaf, LimitVar, NumberVar, VarId } from '../../src/rules/condition.js';
import type { AnswerWeight } from '../../src/rules/strength.js';
import { type Change, conditionChanges, type Kind, otherLimits, otherVariable } from './leaf.js';

export interface Mutant {
  readonly kind: Kind;
  /** Cause, rule and slip in words. */
  readonly what: string;
  readonly cause: Cause;
}

/** How far a prior is moved, dB: two steps of its grid. */
const PRIOR_STEP_DB = 6;

export function mutantsOf(cause: Cause): Mutant[] {
  const named = (rule: string, changes: readonly Change<Cause>[]): Mutant[] =>
    changes.map(({ kind, what, to }) => ({ kind, what: `${cause.id}${rule}: ${what}`, cause: to }));
  return [
    ...named('', causeChanges(cause)),
    ...cause.rules.flatMap((rule, place) => {
      // Made for all causes by one table: no slip of this file.
      if (rule.madeFrom === 'act' || rule.madeFrom === 'listening') return [];
      const put = (to: Rule | undefined): Cause => {
        const rules = cause.rules.flatMap((old, i) => (i === place ? (to ?? []) : old));
        return { ...cause, rules: rules as unknown as Cause['rules'] };
      };
      const changes = ruleChanges(rule).map((change) => ({ ...change, to: put(change.to) }));
      return named(`/${rule.id}`, [...changes, { kind: 'removed', what: 'removed', to: put(undefined) }]);
    }),
  ];
}

function causeChanges(cause: Cause): Change<Cause>[] {
  const priors = [PRIOR_STEP_DB, -PRIOR_STEP_DB].map(
    (step): Change<Cause> => ({
      kind: 'cause',
      what: `prior ${step} dB`,
      to: { ...cause, priorDb: cause.priorDb + step },
    }),
  );
  const links = Object.entries(cause.links).map(([id, chance]): Change<Cause> => {
    const rest = Object.fromEntries(Object.entries(cause.links).filter(([other]) => other !== id));
    return { kind: 'cause', what: `link ${id} (${chance}) removed`, to: { ...cause, links: rest } };
  });
  const sizes = (group: string): number => cause.rules.filter((rule) => rule.group === group).length;
  const groups = Object.entries(cause.groups)
    .filter(([group]) => sizes(group) > 1)
    .map(([group, kin]): Change<Cause> => {
      const other = KINSHIP[kin] > 0.5 ? 'independent' : 'same-quantity';
      return {
        kind: 'cause',
        what: `group ${group} ${kin} -> ${other}`,
        to: { ...cause, groups: { ...cause.groups, [group]: other } },
      };
    });
  return [
    ...priors,
    ...links,
    ...groups,
    ...gateChanges(cause.applies).map((change) => ({ ...change, to: gated(cause, change.to) })),
  ];
}

function gated<T extends { readonly applies?: Condition }>(gate: T, applies: Condition | undefined): T {
  const { applies: _, ...rest } = gate;
  return { ...rest, ...(applies ? { applies } : {}) } as T;
}

function gateChanges(applies: Condition | undefined): Change<Condition | undefined>[] {
  if (!applies) return [];
  return [
    { kind: 'gate', what: 'gate removed', to: undefined },
    { kind: 'gate', what: 'gate turned round', to: { not: applies } },
    ...conditionChanges(applies).map((change) => ({ ...change, what: `gate: ${change.what}` })),
  ];
}

function ruleChanges(rule: Rule): Change<Rule>[] {
  const { weigh } = rule;
  const gates = gateChanges(rule.applies).map((change) => ({ ...change, to: gated(rule, change.to) }));
  return [
    ...gates,
    ...(weigh.kind === 'deviation'
      ? deviationChanges(rule, weigh)
      : weigh.kind === 'answer'
        ? answerChanges(rule, weigh)
        : []),
  ];
}

function answerChanges(rule: Rule, weigh: AnswerWeight): Change<Rule>[] {
  const { only, ...both } = weigh;
  const weights: readonly (readonly [string, AnswerWeight])[] = [
    ['tp and fp exchanged', { ...weigh, tp: weigh.fp, fp: weigh.tp }],
    [`tp ${weigh.tp.toFixed(2)} -> 0.5`, { ...weigh, tp: 0.5 }],
    [`fp ${weigh.fp.toFixed(2)} -> 0.5`, { ...weigh, fp: 0.5 }],
    ...(only ? [[`only ${only} removed`, both] as const] : []),
  ];
  return [
    ...conditionChanges(rule.when).map((change) => ({ ...change, to: { ...rule, when: change.to } })),
    ...weights
      .filter(([, to]) => to.tp !== weigh.tp || to.fp !== weigh.fp || to.only !== only)
      .map(([what, to]): Change<Rule> => ({ kind: 'weight', what, to: { ...rule, weigh: to } })),
  ];
}

/**
 * A deviation is one thing in the source, written twice in the data: its condition moves along with its weight.
 * The ratio decides the outcome, so an operator changed alone would change nothing.
 */
function deviationChanges(rule: Rule, weigh: Deviation): Change<Rule>[] {
  const { only, heard, maxDb, ...bare } = weigh;
  const without = (key: 'only' | 'heard' | 'maxDb'): Deviation => {
    const { [key]: _, ...rest } = weigh;
    return rest;
  };
  const limits = weigh.limit.startsWith('limit.')
    ? otherLimits(weigh.limit as LimitVar)
    : [otherVariable(weigh.limit as VarId)].filter((id) => id !== undefined);
  const of = otherVariable(bare.of);
  const weights: readonly (readonly [Kind, string, Deviation])[] = [
    ['weight', 'bad side turned round', { ...weigh, lowIsBad: !weigh.lowIsBad }],
    ...(only ? [['weight', `only ${only} removed`, without('only')] as const] : []),
    ...(heard ? [['weight', `heard ${heard} removed`, without('heard')] as const] : []),
    ...(maxDb === undefined ? [] : [['weight', `bound ${maxDb} dB removed`, without('maxDb')] as const]),
    ...limits.map(
      (limit) =>
        ['limit', `${weigh.limit} -> ${limit}`, { ...weigh, limit: limit as Deviation['limit'] }] as const,
    ),
    ...(of ? [['fact', `${weigh.of} -> ${of}`, { ...weigh, of: of as NumberVar }] as const] : []),
  ];
  return weights.map(
    ([kind, what, to]): Change<Rule> => ({
      kind,
      what,
      to: { ...rule, weigh: to, when: conditionOf(to) },
    }),
  );
}

const conditionOf = ({ of, limit, lowIsBad }: Deviation): Leaf => ({
  fact: of,
  operator: lowIsBad ? 'lessThanInclusive' : 'greaterThanInclusive',
  value: { fact: limit as LimitVar },
});
