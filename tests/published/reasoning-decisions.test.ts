/** Reference checks of troubleshooting costs, the value of questions, and measures of a ranking. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  brier,
  calibrationError,
  logLoss,
  mean,
  meanExcessPercent,
  reciprocalRank,
  topIsTrue,
} from '../../eval/metrics.js';
import {
  checkOrder,
  outlook,
  repairMinutes,
  type Suspect,
  searchMinutes,
} from '../../src/reasoning/troubleshoot.js';
import { CHECKS, check, near } from './reasoningChecks.js';

const suspects = (
  p: readonly number[],
  confirm: readonly number[],
  repair: readonly number[] = [],
  checkMinutes = 0,
): Suspect[] =>
  p.map((value, i) => ({
    p: value,
    confirmMinutes: confirm[i] ?? 0,
    repairMinutes: repair[i] ?? 0,
    checkMinutes,
  }));
function ordersOf(count: number): number[][] {
  if (count === 0) return [[]];
  return ordersOf(count - 1).flatMap((order) =>
    Array.from({ length: count }, (_, at) => [...order.slice(0, at), count - 1, ...order.slice(at)]),
  );
}
const entropyBits = (p: readonly number[]): number =>
  p.reduce((sum, q) => (q > 0 ? sum - q * Math.log2(q) : sum), 0);

describe('troubleshooting costs', () => {
  it('observe before repairing: the published decision tree', () => {
    const { input, expected, tolerance } = check('dtt-heckerman-fig1');
    const cost = (first: 'c1' | 'c2', branch: string): number => {
      const pFix = input.P_fix[branch][first];
      const second = first === 'c1' ? 'c2' : 'c1';
      return searchMinutes(
        [pFix, 1 - pFix],
        [input.repair_cost[first], input.repair_cost[second]],
        0,
        [0, 1],
      );
    };
    for (const branch of ['o_true', 'o_false', 'no_obs'])
      for (const first of ['c1', 'c2'] as const) {
        const observed = branch === 'no_obs' ? 0 : input.observe_cost;
        near(observed + cost(first, branch), expected[branch][first], tolerance);
      }
    const best = (branch: string): number => Math.min(cost('c1', branch), cost('c2', branch));
    const observe =
      input.observe_cost + input.P_o_true * best('o_true') + (1 - input.P_o_true) * best('o_false');
    near(observe, expected.observe_first, tolerance);
    expect(observe).toBeLessThan(best('no_obs'));
  });
  it('actions that share causes: greedy by p/C is not the best order', () => {
    const { input, expected, tolerance } = check('dtt-sacso-greedy-not-optimal');
    /** An action counts for the causes that no earlier one has cured. */
    const cost = (...ids: string[]): number => {
      const open = new Set((input.P_causes as number[]).map((_, i) => i + 1));
      const p = ids.map((id) => {
        const cured = (input.actions[id] as number[]).filter((cause) => open.delete(cause));
        return cured.reduce((sum, cause) => sum + input.P_causes[cause - 1], 0);
      });
      const each = ids.map(() => input.cost_each as number);
      return searchMinutes(p, each, 0, [...ids.keys()]);
    };
    near(cost('A2', 'A1', 'A3'), expected.ECR_A2_A1_A3, tolerance);
    near(cost('A3', 'A1'), expected.ECR_A3_A1, tolerance);
  });
  it('published deviations from the optimum', () => {
    const { input, expected, tolerance } = check('dtt-sacso-table2');
    for (const [name, percent] of Object.entries(expected))
      near(meanExcessPercent(input[name], input.optimal), percent as number, tolerance);
  });
  it('p/C is the best of all 120 orders', () => {
    const { input, expected, tolerance } = check('dtt-pc-order');
    const list = suspects(input.p, input.C_minutes);
    expect(checkOrder(list)).toEqual(expected.optimal_order_0based);
    near(repairMinutes(list), expected.ECR, tolerance);
    const all = ordersOf(5).map((order) => repairMinutes(list, order));
    near(Math.min(...all), expected.ECR, tolerance);
    near(mean(all), expected.mean_over_all_120_orders, tolerance);
    const sorted = (by: (i: number) => number): number[] => [0, 1, 2, 3, 4].sort((a, b) => by(a) - by(b));
    near(
      repairMinutes(
        list,
        sorted((i) => -input.p[i]),
      ),
      expected.ECR_order_by_p,
      tolerance,
    );
    near(
      repairMinutes(
        list,
        sorted((i) => input.C_minutes[i]),
      ),
      expected.ECR_order_by_cost,
      tolerance,
    );
  });
  it('repair time does not change the order of checks', () => {
    const { input, expected, tolerance } = check('dtt-observe-repair');
    const list = suspects(input.p, input.Co, input.Cr, input.Cp);
    expect(checkOrder(list)).toEqual(expected.order_0based);
    near(repairMinutes(list), expected.ECR, tolerance);
    near(Math.min(...ordersOf(3).map((order) => repairMinutes(list, order))), expected.ECR, tolerance);
  });
});

describe('what a question is worth', () => {
  it('a question that costs more than it saves is not asked', () => {
    const { input, expected, tolerance } = check('evoi-question-not-worth-asking');
    const yes = input.P_yes_given_cause as number[];
    const seen = outlook(
      input.p,
      [yes, yes.map((p) => 1 - p)],
      (p) => -repairMinutes(suspects(p, input.C_minutes)),
    );
    near(-seen.now, expected.ECR_without, tolerance);
    for (const [i, name] of ['yes', 'no'].entries()) {
      const { P, posterior, ECR } = expected.answers[name];
      near([seen.answers[i]?.p, -(seen.answers[i]?.value ?? 0)], [P, ECR], tolerance);
      near(seen.answers[i]?.posterior, posterior, tolerance);
    }
    near(seen.gain, expected.EVOI_minutes, tolerance);
    near(-seen.now - seen.gain + input.question_cost_minutes, expected.ECO_with_cost, tolerance);
    expect(seen.gain > input.question_cost_minutes).toBe(expected.ask);
    const after = seen.answers.reduce((sum, a) => sum + a.p * entropyBits(a.posterior), 0);
    near(entropyBits(input.p), expected.entropy_before_bits, tolerance);
    near(after, expected.expected_entropy_after_bits, tolerance);
    near(entropyBits(input.p) - after, expected.entropy_gain_bits, tolerance);
  });
  it('the oil driller', () => {
    const { input, expected, tolerance } = check('evoi-oil-wildcatter');
    const payoff = input.payoff_drill as number[];
    const drill = (p: readonly number[]): number =>
      Math.max(
        0,
        p.reduce((sum, q, i) => sum + q * (payoff[i] ?? 0), 0),
      );
    const seen = outlook(input.P, Object.values(input.P_result_given_state), drill);
    const perfect = outlook(
      input.P,
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      drill,
    );
    near(
      [seen.now, seen.now + seen.gain, seen.gain, seen.now + seen.gain - input.test_cost, perfect.gain],
      [expected.EU_no_test, expected.EU_test_before_cost, expected.EVSI, expected.EU_test_net, expected.EVPI],
      tolerance,
    );
  });
  it('a question that cannot change the decision is worth nothing', () => {
    const { input, expected, tolerance } = check('evoi-zero-used-car');
    const buy = (p: readonly number[]): number =>
      Math.max(0, (p[0] ?? 0) * input.net_gain_good + (p[1] ?? 0) * input.net_gain_bad);
    const pass = [input.P_pass_good, input.P_pass_bad];
    const seen = outlook([input.P_good, 1 - input.P_good], [pass, pass.map((p) => 1 - p)], buy);
    near(
      [seen.answers[0]?.p, seen.answers[0]?.posterior[0], seen.answers[1]?.posterior[0]],
      [expected.P_pass, expected.P_good_pass, expected.P_good_fail],
      tolerance,
    );
    near(
      [seen.now, seen.answers[0]?.value, seen.answers[1]?.value, seen.gain],
      [expected.EU_buy_prior, expected.EU_buy_pass, expected.EU_buy_fail, expected.VOI],
      tolerance,
    );
  });
  it('flips are found from what each answer would move', () => {
    const { input, expected } = check('counterfactual-flip');
    type Question = { now: string | null; dW: Record<string, number> };
    const questions = Object.entries(input.questions_dW_leader_minus_runner_dB as Record<string, Question>);
    const now = (q: Question): number => (q.now === null ? 0 : (q.dW[q.now] ?? 0));
    const margin = questions.reduce((sum, [, q]) => sum + now(q), input.prior_margin_dB as number);
    expect(margin).toBe(expected.margin_now_dB);
    const loss = questions.map(([id, q]) => [id, now(q) - Math.min(...Object.values(q.dW))]);
    expect(Object.fromEntries(loss)).toMatchObject({ ...expected.max_loss_per_question_dB });
    const flips = questions.flatMap(([id, q]) =>
      Object.entries(q.dW).flatMap(([value, w]) => (margin - now(q) + w < 0 ? [`${id}=${value}`] : [])),
    );
    expect(flips).toEqual(expected.flip_by);
  });
});

describe('measures of a ranking', () => {
  it('four cases by hand', () => {
    const { input, expected, tolerance } = check('metrics-small');
    const rows = (input.P as number[][]).map((p, k) => {
      const ranked = p.map((_, i) => i).sort((a, b) => (p[b] ?? 0) - (p[a] ?? 0));
      return { p, ranked, truth: input.truth[k] as number };
    });
    near(mean(rows.map((r) => (topIsTrue(r.ranked, [r.truth]) ? 1 : 0))), expected.top1, tolerance);
    near(mean(rows.map((r) => reciprocalRank(r.ranked, [r.truth]))), expected.mrr, tolerance);
    near(
      mean(rows.map((r) => brier(r.p.map((p, i) => ({ p, hit: i === r.truth }))))),
      expected.brier,
      tolerance,
    );
    near(mean(rows.map((r) => logLoss(r.p[r.truth] ?? 0))), expected.logloss, tolerance);
    const tops = rows.map((r) => ({ p: Math.max(...r.p), hit: r.ranked[0] === r.truth }));
    near(calibrationError(tops, 5, 'equal-width'), expected.ece5, tolerance);
  });
});

it('every reference check that needs no data set is tested', () => {
  const here = ['reasoning-evidence', 'reasoning-decisions'].map((name) =>
    readFileSync(new URL(`${name}.test.ts`, import.meta.url), 'utf8'),
  );
  const untested = CHECKS.map((c) => c.id).filter((id) => !here.some((text) => text.includes(`'${id}'`)));
  // Naive Bayes rows need data sets; the other one prints costs of a simulation whose models are not printed.
  expect(untested.filter((id) => !id.startsWith('nb-'))).toEqual([]);
  expect(check('dtt-planner-costs').expected.car.decision_theoretic).toBeLessThan(
    check('dtt-planner-costs').expected.car.static_order,
  );
});
