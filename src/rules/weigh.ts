/** From a trace to a line of evidence: the weight is computed from the facts at that moment. */
import type { FactId } from '../facts/catalog.js';
import { HOWS, type How } from '../facts/spec.js';
import type { Cause, Deviation, Match, Rule } from './cause.js';
import { type LimitVar, type VarId, variablesOf } from './condition.js';
import type { Evidence, Trace } from './evidence.js';
import { limitValue } from './plain.js';
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

/** `siblings`: causes that the same answer can speak for, where it is open which of them applies. */
export function weigh(rule: Rule, trace: Trace, view: View, siblings = 0): Evidence {
  const item = weighed(rule, trace, view);
  if (item.gateOpen === undefined || siblings === 0 || item.decibans === 0) return item;
  return { ...item, decibans: sharedAmongDb(item.decibans, siblings) };
}

function weighed(rule: Rule, trace: Trace, view: View): Evidence {
  if (trace.outcome !== 'yes' && trace.outcome !== 'no')
    return { ...trace, decibans: 0, facts: NONE, assumed: NONE };
  if (rule.weigh.kind === 'match') return weighMatch(rule.weigh, trace, view);
  return rule.weigh.kind === 'deviation'
    ? weighDeviation(rule.weigh, trace, view)
    : weighAnswer(rule, rule.weigh, trace, view);
}

/** The condition only sees to it that both numbers are known: how far they are apart decides what is said. */
function weighMatch(match: Match, trace: Trace, view: View): Evidence {
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
  const { cause, rule, leaves, open, gateOpen } = trace;
  return {
    cause,
    rule,
    leaves,
    open,
    ...(gateOpen === undefined ? {} : { gateOpen }),
    outcome,
    decibans: isSilent(outcome, match.only) ? 0 : db,
    value,
    threshold,
    ratio: value / threshold,
    unit: told.unit,
    range: byRatio
      ? [threshold / Math.exp(margin), threshold * Math.exp(margin)]
      : [Math.max(0, threshold - margin), threshold + margin],
    facts: factsOf(rests),
    assumed: assumedIn(rests),
  };
}

export function evidenceOf(causes: readonly Cause[], traces: readonly Trace[], view: View): Evidence[] {
  const rules = new Map(
    causes.flatMap((cause) => cause.rules.map((rule) => [`${cause.id}/${rule.id}`, rule])),
  );
  const siblings = siblingsOf(causes);
  return traces.map((trace) => {
    const rule = rules.get(`${trace.cause}/${trace.rule}`) as Rule;
    return weigh(rule, trace, view, siblings.get(rule));
  });
}

function weighDeviation(deviation: Deviation, trace: Trace, view: View): Evidence {
  const reading = view.read(deviation.of);
  const heard = deviation.heard ? view.read(deviation.heard) : undefined;
  if (heard && typeof heard.value !== 'number')
    return { ...trace, outcome: 'unknown', open: heard.missing, decibans: 0, facts: NONE, assumed: NONE };
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
  const threshold = limit.value;
  const [facts, assumed] = [factsOf(rests), assumedIn(rests)];
  const { unit } = reading;
  return { ...trace, outcome, decibans, value, threshold, ratio, unit, facts, assumed };
}

function weighAnswer(rule: Rule, answer: AnswerWeight, trace: Trace, view: View): Evidence {
  const rests = decidingVariables(rule, trace).map((id) => view.read(id));
  const outcome = trace.outcome as 'yes' | 'no';
  const weight = outcome === 'yes' ? givenDb : absentDb;
  const decibans = isSilent(outcome, answer.only) ? 0 : weight(answer.tp, answer.fp, weakest(rests));
  return { ...trace, outcome, decibans, facts: factsOf(rests), assumed: assumedIn(rests) };
}

/** Variables of the condition that are known: an unknown branch of a settled verdict decided nothing. */
function decidingVariables(rule: Rule, trace: Trace): VarId[] {
  const known = new Set(trace.leaves.filter((l) => l.outcome !== 'unknown').map((l) => l.leaf.fact));
  return variablesOf(rule.when).filter((id) => known.has(id));
}

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
