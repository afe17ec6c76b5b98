/**
 * What the outcome of an act says about a cause: one model for all acts, causes and outcomes. Where the act cures the
 * cause (with the chance that the cause file states) the trouble goes or gets better; otherwise the act does what an
 * unrelated act does by chance. Judgement, no source; only the order of magnitude matters.
 */
import { ACTS, type ActId, actSpec, type Outcome, type Trial } from '../facts/acts.js';
import type { FactId } from '../facts/catalog.js';
import type { Cause, Rule, WrittenRemedy } from './cause.js';
import { type Condition, type Leaf, variablesOf } from './condition.js';

type Told = Exclude<Outcome, 'cannot-tell'>;
/** Of an act that hits the cause: it is seldom noticed by nobody. */
const HIT: Readonly<Record<Told, number>> = { gone: 0.62, better: 0.33, same: 0.04, worse: 0.01 };
/** Of an act that has nothing to do with it: hope hears a little, and seldom everything. */
const BY_CHANCE: Readonly<Record<Told, number>> = { gone: 0.02, better: 0.15, same: 0.73, worse: 0.1 };
/** Chance that an act hits the cause when nothing is known of either: owners try what seems likely to help. */
const LUCK = 0.15;

const chance = (outcome: Told, cures: number): number =>
  cures * HIT[outcome] + (1 - cures) * BY_CHANCE[outcome];

/** Decibans for a cause that the act cures with this chance, 0 to 1; 0 where nobody could tell. */
export function outcomeDb(outcome: Outcome, cures: number): number {
  return outcome === 'cannot-tell' ? 0 : 10 * Math.log10(chance(outcome, cures) / chance(outcome, LUCK));
}

/** The subwoofer's entry cures other causes than those of the three fronts. */
export type CuringAct = ActId | 'entry-corrected:subwoofer';
export const actOf = (trial: Trial): CuringAct | Trial['act'] =>
  trial.act === 'entry-corrected' && trial.of === 'subwoofer' ? 'entry-corrected:subwoofer' : trial.act;

type Curable = Pick<Cause, 'id' | 'acts'> & { readonly remedies: readonly WrittenRemedy[] };
/** How surely the act cures the cause, 0 to 1; undefined where its file does not name the act. The one table. */
export function curesOf(cause: Curable, act: string): number | undefined {
  const named = cause.remedies.filter((remedy) => remedy.act === act || `${cause.id}/${remedy.id}` === act);
  const known = [...named.map(({ cures }) => cures), cause.acts?.[act as CuringAct] ?? 0];
  const surest = Math.max(...known);
  return surest > 0 ? surest : undefined;
}

/** Below this an act says too little of a cause to be asked for. */
const ASKED_FROM = 0.3;

/**
 * Rules for the home tests that are acts and that no rule of the cause reads: so a test and the act of the same name
 * say the same, and are asked for where they would tell something.
 */
export function actRules(cause: Curable, rules: readonly Rule[]): Rule[] {
  const read = new Set(rules.flatMap((rule) => variablesOf(rule.when)));
  return (Object.keys(ACTS) as ActId[]).flatMap((act): Rule[] => {
    const { mirror, done } = actSpec(act);
    const cures = curesOf(cause, act) ?? 0;
    if (!mirror || cures < ASKED_FROM || read.has(mirror.fact)) return [];
    const helped = Object.keys(mirror.outcomes).filter((answer) => isHelp(mirror.outcomes[answer]));
    const sum = (share: number): number => chance('gone', share) + chance('better', share);
    return [
      {
        id: `act-${act}`,
        group: `act-${act}`,
        // Answers that are no outcome of the act, such as not tried, say nothing.
        applies: leaf(mirror.fact, Object.keys(mirror.outcomes)),
        when: leaf(mirror.fact, helped),
        weigh: { kind: 'answer', tp: sum(cures), fp: sum(LUCK) },
        says: {
          yes: `It helped: ${done}.`,
          no: `It did not help: ${done}.`,
        },
        because: 'What cures a cause tells of it; by chance alone an act seldom helps.',
        source: 'practice',
        madeFrom: 'act',
      },
    ];
  });
}

const isHelp = (outcome: Outcome | undefined): boolean => outcome === 'gone' || outcome === 'better';
const leaf = (fact: FactId, value: readonly string[]): Condition & Leaf => ({ fact, operator: 'in', value });
