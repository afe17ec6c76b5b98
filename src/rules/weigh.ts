/** From a trace to a line of evidence: the weight is computed from the facts at that moment. */
import type { FactId } from '../facts/catalog.js';
import { HOWS, type How } from '../facts/spec.js';
import type { Cause, Deviation, Match, Rule } from './cause.js';
import { type Condition, type LimitVar, leavesOf, type VarId, variablesOf } from './condition.js';
import type { Evidence, Trace } from './evidence.js';
import { type Gate, gateOf, limitValue, outcomeOf, truthOf } from './plain.js';
import { siblingsOf } from './siblings.js';
import type { AnswerWeight } from './strength.js';
import type { Reading, View } from './view.js';
import {
  absentDb,
  deviationDb,
  deviationRatio,
  givenDb,
  MATCHING,
  matchDb,
  sharedAmongDb,
} from './weight.js';

const NONE: readonly FactId[] = [];

/** What a settled rule finds: how much it weighs, and on what that rests. */
interface Finding {
  /** Unknown where what it is scaled by is not known. */
  readonly outcome: 'yes' | 'no' | 'unknown';
  readonly decibans: number;
  readonly rests: readonly Reading[];
  readonly numbers?: Pick<Evidence, 'value' | 'threshold' | 'ratio' | 'unit' | 'range'>;
  readonly open?: readonly FactId[];
}

/** `siblings`: causes that the same answer can speak for, where it is open which of them applies. */
export function weigh(rule: Rule, trace: Trace, view: View, siblings = 0): Evidence {
  if (trace.outcome !== 'yes' && trace.outcome !== 'no')
    return { ...trace, decibans: 0, facts: NONE, assumed: NONE };
  const { outcome, decibans, rests, numbers, open = trace.open } = findingOf(rule, trace.outcome, view);
  return {
    ...trace,
    outcome,
    open,
    decibans: sharedDb(decibans, trace.gateOpen, siblings),
    ...numbers,
    facts: factsOf(rests),
    assumed: assumedIn(rests),
  };
}

const sharedDb = (decibans: number, gateOpen: number | undefined, siblings: number): number =>
  gateOpen === undefined || siblings === 0 || decibans === 0 ? decibans : sharedAmongDb(decibans, siblings);

/** What rules say, without their reasons: all that is asked of an answer that is only imagined. */
export type Brief = Pick<Evidence, 'rule' | 'outcome' | 'decibans' | 'gateOpen'>;

/** Rules of a cause in brief, given by place. The same as their evidence says, found much sooner. */
export function briefly(
  cause: Cause,
  places: readonly number[],
  view: View,
  siblings: ReadonlyMap<Rule, number>,
): Map<number, Brief> {
  let gate: Gate | undefined;
  const briefs = new Map<number, Brief>();
  for (const place of places) {
    const rule = cause.rules[place] as Rule;
    try {
      gate ??= gateOf(cause, view);
      briefs.set(place, briefOf(rule, gate, view, siblings.get(rule) ?? 0));
    } catch {
      briefs.set(place, { rule: rule.id, outcome: 'error', decibans: 0 });
    }
  }
  return briefs;
}

function briefOf(rule: Rule, gate: Gate, view: View, siblings: number): Brief {
  const truth = outcomeOf(rule, gate, view);
  const isSettled = truth === 'yes' || truth === 'no';
  const { outcome, decibans } = isSettled ? findingOf(rule, truth, view) : { outcome: truth, decibans: 0 };
  const gateOpen = gate.openPart > 0 && truth !== 'not-applicable' ? gate.openPart : undefined;
  const weight = sharedDb(decibans, gateOpen, siblings);
  const brief = { rule: rule.id, outcome, decibans: weight };
  return gateOpen === undefined ? brief : { ...brief, gateOpen };
}

function findingOf({ when, weigh }: Rule, truth: 'yes' | 'no', view: View): Finding {
  if (weigh.kind === 'match') return matched(weigh, view);
  return weigh.kind === 'deviation' ? deviated(weigh, view) : answered(when, weigh, truth, view);
}

/** The condition only sees to it that both numbers are known: how far they are apart decides what is said. */
function matched(match: Match, view: View): Finding {
  const rests = [view.read(match.of), view.read(match.with)] as const;
  const [told, made] = rests;
  const value = told.value as number;
  const threshold = made.value as number;
  const scale = told.unit === 'dB' ? MATCHING.difference : MATCHING.ratio;
  const byRatio = scale === MATCHING.ratio;
  const off = byRatio ? Math.log(value / threshold) : value - threshold;
  const spread = byRatio ? Math.hypot(told.spread, made.spread) : made.spread * threshold;
  const db = matchDb(Math.abs(off), spread, weakest(rests), scale);
  const outcome = db > 0 ? 'yes' : 'no';
  const margin = (byRatio ? made.spread : spread) + scale.doubt / 2;
  const range = byRatio
    ? ([threshold / Math.exp(margin), threshold * Math.exp(margin)] as const)
    : ([Math.max(0, threshold - margin), threshold + margin] as const);
  return {
    outcome,
    decibans: isSilent(outcome, match.only) ? 0 : db,
    rests,
    numbers: { value, threshold, ratio: value / threshold, unit: told.unit, range },
  };
}

export function evidenceOf(causes: readonly Cause[], traces: readonly Trace[], view: View): Evidence[] {
  const siblings = siblingsOf(causes);
  const rules = causes.flatMap((cause) => cause.rules);
  return traces.map((trace, place) => {
    const rule = rules[place] as Rule;
    return weigh(rule, trace, view, siblings.get(rule));
  });
}

function deviated(deviation: Deviation, view: View): Finding {
  const reading = view.read(deviation.of);
  const heard = deviation.heard ? view.read(deviation.heard) : undefined;
  if (heard && typeof heard.value !== 'number')
    return { outcome: 'unknown', decibans: 0, rests: [], open: heard.missing };
  const limit = limitOf(deviation.limit, view);
  const rests = [reading, ...(heard ? [heard] : []), ...(limit.reading ? [limit.reading] : [])];
  const value = reading.value as number;
  const audible = value * ((heard?.value as number | undefined) ?? 1);
  const ratio = deviationRatio(audible, limit.value, deviation.lowIsBad);
  const outcome = ratio >= 1 ? 'yes' : 'no';
  const decibans = isSilent(outcome, deviation.only)
    ? 0
    : deviationDb(ratio, {
        // Of a computed limit only how it was found counts, as a cap: it rests on much the same facts, and finding
        // out its own spread would cost as much again.
        spread: () => Math.hypot(reading.spread, heard?.spread ?? 0),
        how: weakest(rests),
        ...(deviation.maxDb === undefined ? {} : { maxDb: deviation.maxDb }),
      });
  return { outcome, decibans, rests, numbers: { value, threshold: limit.value, ratio, unit: reading.unit } };
}

function answered(when: Condition, answer: AnswerWeight, outcome: 'yes' | 'no', view: View): Finding {
  const rests = knownVariables(when, view).map((id) => view.read(id));
  const weight = outcome === 'yes' ? givenDb : absentDb;
  const decibans = isSilent(outcome, answer.only) ? 0 : weight(answer.tp, answer.fp, weakest(rests));
  return { outcome, decibans, rests };
}

/** Variables of a condition whose own leaves are known: an unknown branch of a settled verdict decided nothing. */
const knownVariables = (when: Condition, view: View): VarId[] =>
  variablesOf(when).filter((id) =>
    leavesOf(when).some((leaf) => leaf.fact === id && truthOf(leaf, view) !== 'unknown'),
  );

/** `only: 'for'` lets the yes outcome speak and silences the no, and the reverse for 'against'. */
function isSilent(outcome: 'yes' | 'no', only: 'for' | 'against' | undefined): boolean {
  return only !== undefined && (outcome === 'yes') !== (only === 'for');
}

function limitOf(id: Deviation['limit'], view: View): { value: number; reading?: Reading } {
  if (id.startsWith('limit.')) return { value: limitValue(id as LimitVar) };
  const reading = view.read(id as VarId);
  return { value: reading.value as number, reading };
}

function weakest(readings: readonly Reading[]): How {
  return readings.reduce<How>(
    (worst, { how }) => (HOWS.indexOf(how) > HOWS.indexOf(worst) ? how : worst),
    'measured',
  );
}

const factsOf = (readings: readonly Reading[]): readonly FactId[] => eachOnce(readings.map((r) => r.facts));
const assumedIn = (readings: readonly Reading[]): readonly FactId[] =>
  eachOnce(readings.map((r) => r.assumed));

function eachOnce([only, ...others]: readonly (readonly FactId[])[]): readonly FactId[] {
  if (only === undefined) return NONE;
  return others.length === 0 ? only : [...new Set([only, ...others].flat())];
}
