/** Checks of a rule base that types cannot make: double counting, caps, completeness. */
import { COMPLAINT_IDS, COMPLAINTS } from '../facts/complaints.js';
import { type Cause, KINSHIP, type Rule } from '../rules/cause.js';
import { CAUSE_IDS } from '../rules/cause-ids.js';
import { type VarId, variablesOf } from '../rules/condition.js';
import { factsBehind } from '../rules/derived/view.js';
import { ruleId } from '../rules/evidence.js';
import { SOURCES } from '../rules/sources.js';
import { absentDb, CLAMP_DB, givenDb } from '../rules/weight.js';

interface Problem {
  /** Cause, `cause/rule` or complaint. */
  readonly where: string;
  readonly what: string;
}

/** Priors are judgement and stand on a grid, decibans. */
const PRIOR_GRID_DB = 3;

/** Everything wrong with a rule base; empty when it is sound. */
export function lint(causes: readonly Cause[]): Problem[] {
  return [...causes.flatMap(lintCause), ...lintWhole(causes)];
}

function lintWhole(causes: readonly Cause[]): Problem[] {
  const ids = causes.map((cause) => cause.id);
  const missing = CAUSE_IDS.filter((id) => !ids.includes(id));
  const complaints = COMPLAINT_IDS.flatMap((id) => {
    const { leak } = COMPLAINTS[id];
    const linked = causes.some((cause) => (cause.links[id] ?? 0) > 0);
    return [
      ...problem(!(leak > 0 && leak < 1), id, 'the complaint has no leak between 0 and 1'),
      ...problem(!linked, id, 'no cause is linked to this complaint'),
    ];
  });
  return [
    ...missing.map((id) => ({ where: id, what: 'no cause file' })),
    ...repeated(ids).map((id) => ({ where: id, what: 'the cause is listed twice' })),
    ...complaints,
  ];
}

function lintCause(cause: Cause): Problem[] {
  const links = Object.entries(cause.links).filter(([, link]) => !(link > 0 && link < 1));
  const unused = Object.keys(cause.groups).filter((group) => cause.rules.every((r) => r.group !== group));
  return [
    ...problem(
      cause.priorDb % PRIOR_GRID_DB !== 0,
      cause.id,
      `prior ${cause.priorDb} dB is off the 3 dB grid`,
    ),
    ...lintGate(cause),
    ...problem(!cause.rules.some(canLower), cause.id, 'no rule can speak against the cause'),
    ...links.map(([id]) => ({ where: cause.id, what: `link to ${id} is not between 0 and 1` })),
    ...unused.map((group) => ({ where: cause.id, what: `group ${group} has no rule` })),
    ...repeated(cause.rules.map((r) => r.id)).map((id) => ({ where: ruleId(cause, id), what: 'used twice' })),
    ...repeated(cause.remedies.map((r) => r.id)).map((id) => ({
      where: ruleId(cause, id),
      what: 'remedy listed twice',
    })),
    ...lintConfirm(cause),
    ...cause.rules.flatMap((rule) => lintRule(cause, rule)),
    ...lintRemedies(cause),
    ...doubleCounting(cause),
  ];
}

function lintGate({ id, applies, appliesIn }: Cause): Problem[] {
  const share = appliesIn === undefined || (appliesIn > 0 && appliesIn < 1);
  return [
    ...problem(
      (applies === undefined) !== (appliesIn === undefined),
      id,
      'applies and appliesIn go together',
    ),
    ...problem(!share, id, 'appliesIn is not between 0 and 1'),
  ];
}

function lintConfirm(cause: Cause): Problem[] {
  const read = new Set(cause.rules.flatMap((rule) => [...variablesOf(rule.when)]));
  return cause.confirm
    .filter((confirm) => !read.has(confirm.test))
    .map(({ test }) => ({
      where: cause.id,
      what: `the outcome of ${test} confirms it, but no rule reads it`,
    }));
}

function lintRule(cause: Cause, rule: Rule): Problem[] {
  const where = ruleId(cause, rule);
  const { weigh } = rule;
  const share = (value: number): boolean => value > 0 && value < 1;
  return [
    ...problem(!Object.hasOwn(SOURCES, rule.source), where, 'unknown source'),
    ...problem(!Object.hasOwn(cause.groups, rule.group), where, `unknown group ${rule.group}`),
    ...problem(rule.because.trim() === '', where, 'no reason is given'),
    ...problem(
      weigh.kind === 'deviation' && !((weigh.maxDb ?? CLAMP_DB) > 0 && (weigh.maxDb ?? CLAMP_DB) <= CLAMP_DB),
      where,
      `bound is not within ${CLAMP_DB} dB`,
    ),
    ...problem(
      weigh.kind === 'answer' && !(share(weigh.tp) && share(weigh.fp) && weigh.tp !== weigh.fp),
      where,
      'tp and fp must differ and lie between 0 and 1',
    ),
  ];
}

/** Can any outcome of the rule lower the cause? */
function canLower({ weigh }: Rule): boolean {
  if (weigh.kind === 'match') return true;
  if (weigh.kind === 'deviation') return weigh.only !== 'for';
  const given = weigh.only === 'against' ? 0 : givenDb(weigh.tp, weigh.fp, 'measured');
  const absent = weigh.only === 'for' ? 0 : absentDb(weigh.tp, weigh.fp, 'measured');
  return Math.min(given, absent) < 0;
}

function lintRemedies(cause: Cause): Problem[] {
  const free = cause.remedies.map((r) => r.cost === 'free' && !r.final);
  const late = cause.remedies.filter((_, i) => free[i] && free.slice(0, i).includes(false));
  return [
    ...late.map((r) => ({
      where: ruleId(cause, r.id),
      what: 'free and reversible, but listed after one that is not',
    })),
    ...cause.remedies
      .filter((r) => !(r.cures > 0 && r.cures < 1))
      .map((r) => ({ where: ruleId(cause, r.id), what: 'the chance of a cure is not between 0 and 1' })),
  ];
}

/**
 * What a rule scores: the variables of its condition, gates left out. Two rules of a cause may score the
 * same variable, or a computed fact and one of its inputs, only within one group of the same quantity,
 * where the strongest counts once.
 */
function doubleCounting(cause: Cause): Problem[] {
  return cause.rules.flatMap((a, i) =>
    cause.rules.slice(i + 1).flatMap((b) => {
      if (a.group === b.group && KINSHIP[cause.groups[a.group] ?? 'independent'] === 1) return [];
      const [left, right] = [variablesOf(a.when), variablesOf(b.when)];
      const where = `${ruleId(cause, a)} and ${b.id}`;
      const same = left.filter((id) => right.includes(id));
      const inputs = [...inputsAmong(left, right), ...inputsAmong(right, left)];
      return [
        ...same.map((id) => ({
          where,
          what: `${id} is scored twice, outside one group of the same quantity`,
        })),
        ...inputs.map(([id, input]) => ({
          where,
          what: `${id} is scored together with its own input ${input}, outside one group of the same quantity`,
        })),
      ];
    }),
  );
}

/** Pairs of a computed fact on the left and one of its own inputs scored as such on the right. */
function inputsAmong(left: readonly VarId[], right: readonly VarId[]): [VarId, VarId][] {
  return left.flatMap((id) => {
    const behind: readonly VarId[] = factsBehind(id);
    return right
      .filter((other) => other !== id && behind.includes(other))
      .map((other): [VarId, VarId] => [id, other]);
  });
}

function problem(found: boolean, where: string, what: string): Problem[] {
  return found ? [{ where, what }] : [];
}

function repeated(ids: readonly string[]): string[] {
  return [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))];
}
