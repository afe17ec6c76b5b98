/**
 * Tell-tales of all causes: each can be told, moves its cause the way it says, and says nothing where it was not told.
 * How telling they are is judgement (common practice, no source); their direction is a claim of the trade.
 */
import { describe, expect, it } from 'vitest';
import { FACTS, type FactId, isFactId } from '../../src/facts/catalog.js';
import { type Condition, isLeaf } from '../../src/rules/condition.js';
import { isDerivedId } from '../../src/rules/derived/table.js';
import { viewOf } from '../../src/rules/derived/view.js';
import { CAUSES } from '../../src/rules/index.js';
import { traceRule } from '../../src/rules/plain.js';
import { weigh } from '../../src/rules/weigh.js';
import { givenDb } from '../../src/rules/weight.js';
import { bookOf } from '../support/causeClaims.js';

const telltales = CAUSES.flatMap((cause) =>
  cause.rules
    .filter((rule) => rule.madeFrom === 'telltale')
    .map((rule) => ({ id: `${cause.id}/${rule.id}`, cause, rule })),
);

/** Numbers that make a computed remark true, and others that make it false. */
const TOLD: Readonly<Record<string, { yes: object; no: object }>> = {
  loudnessAside: { yes: { centerAgainstMainsSideDb: -6 }, no: { centerAgainstMainsSideDb: 0 } },
  mainsTrims: { yes: { trimLeft: -6, trimRight: 0 }, no: { trimLeft: -1, trimRight: -1 } },
  automaticEntry: {
    yes: { enteredCenter: 3, automaticDistanceCenter: 5 },
    no: { enteredCenter: 5, automaticDistanceCenter: 5 },
  },
  mainsPointed: {
    yes: { mainsBase: 4, seatDistance: 2, toeIn: 0 },
    no: { mainsBase: 2, seatDistance: 4, toeIn: 14 },
  },
};

/** One book in which the condition holds, and one in which it was told and does not. */
function told(condition: Condition): { yes: object; no: object } {
  if (!isLeaf(condition)) throw new Error('a tell-tale is one remark');
  const { fact, value } = condition;
  if (isDerivedId(fact)) return TOLD[fact] as { yes: object; no: object };
  const wanted = Array.isArray(value) ? (value as readonly string[]) : [value as string];
  const spec = FACTS[fact as FactId];
  const choices = 'choices' in spec ? Object.keys(spec.choices) : [];
  const other = choices.find((choice) => !wanted.includes(choice));
  const parents = Object.fromEntries(
    Object.entries('askedWhen' in spec ? spec.askedWhen : {}).flatMap(([id, accepted]) =>
      isFactId(id) ? [[id, (accepted as readonly string[])[0]]] : [],
    ),
  );
  return { yes: { ...parents, [fact]: wanted[0] }, no: { ...parents, [fact]: other } };
}

describe('a tell-tale', () => {
  it.each(telltales)('$id speaks where it is told, and only there', ({ cause, rule }) => {
    const decibans = (facts: object): number => {
      const view = viewOf(bookOf(facts));
      return weigh(rule, traceRule({ ...cause, applies: undefined } as never, rule, view), view).decibans;
    };
    const { yes, no } = told(rule.when);
    const wants = rule.weigh.kind === 'answer' && rule.weigh.tp > rule.weigh.fp ? 1 : -1;
    expect(Math.sign(decibans(yes))).toBe(wants);
    expect(decibans(no)).toBe(0);
    expect(decibans({})).toBe(0);
  });

  it('is slight, a hint, telling or strong: each weighs clearly more than the one before, from memory too', () => {
    const weights = telltales.map(({ rule: { weigh: w } }) =>
      w.kind === 'answer'
        ? ([w.tells?.yes ?? 'none', Math.abs(givenDb(w.tp, w.fp, 'recalled'))] as const)
        : undefined,
    );
    const of = (strength: string): number[] => weights.flatMap((w) => (w?.[0] === strength ? [w[1]] : []));
    for (const [less, more] of [
      ['hint', 'telling'],
      ['telling', 'strong'],
    ] as const)
      expect(Math.min(...of(more))).toBeGreaterThan(Math.max(...of(less)) + 1);
  });
});
