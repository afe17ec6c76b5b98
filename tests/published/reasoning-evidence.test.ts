/**
 * Reference checks of weights of evidence, noisy-OR and small published networks. Every row of the data
 * file carries its source and how it was verified.
 */
import { describe, expect, it } from 'vitest';
import { oddsOf, probabilityOf } from '../../src/reasoning/decibans.js';
import { correlatedSum, groupDb } from '../../src/reasoning/group.js';
import { likelihoods, type NoisyOr, sharedDb } from '../../src/reasoning/noisy-or.js';
import { absentDb, capDb, effectiveSlope, givenDb, psychometricDb } from '../../src/rules/weight.js';
import { decibansOf, enumerateNet, type Node, posteriors } from '../support/bayesNet.js';
import { check, near } from './reasoningChecks.js';

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const db = (ratio: number): number => 10 * Math.log10(ratio);

describe('decibans', () => {
  it('prior and weights add up to the posterior', () => {
    const { input, expected, tolerance } = check('woe-basic');
    const weights = (input.LR as number[]).map(db);
    near(weights, expected.weights_dB, tolerance);
    near(decibansOf(input.prior_p), expected.prior_dB, tolerance);
    const total = decibansOf(input.prior_p) + sum(weights);
    near(total, expected.L_dB, tolerance);
    near(probabilityOf(total), expected.posterior, tolerance);
  });
  it('the table of odds and probabilities', () => {
    const { input, expected, tolerance } = check('woe-table');
    near((input.dB as number[]).map(oddsOf), expected.odds, tolerance);
    near((input.dB as number[]).map(probabilityOf), expected.p, tolerance);
  });
  it('a rare cause stays unlikely after a telling sign', () => {
    const { input, expected, tolerance } = check('woe-base-rate');
    const weight = db(input.tp / input.fp);
    near([decibansOf(input.prior), weight], [expected.prior_dB, expected.W_dB], tolerance);
    near(probabilityOf(decibansOf(input.prior) + weight), expected.posterior, tolerance);
  });
  it('expected weight of a question', () => {
    const { input, expected, tolerance } = check('woe-ewoe');
    const [tp, fp] = [input.P_yes_H, input.P_yes_notH];
    near(tp * db(tp / fp) + (1 - tp) * db((1 - tp) / (1 - fp)), expected.EWOE_dB, tolerance);
  });
  it('stopping thresholds of a sequential test are decibans of 1 - alpha', () => {
    const { input, expected, tolerance } = check('sprt');
    near(
      (input.alpha_beta as number[]).map((a) => decibansOf(1 - a)),
      expected.dB,
      tolerance,
    );
  });
});

describe('weights', () => {
  it('6 dB a doubling, nothing at threshold', () => {
    const { input, expected, tolerance } = check('woe-psychometric');
    near(
      (input.r as number[]).map((r) => psychometricDb(r, 0, input.s)),
      expected.W_dB,
      tolerance,
    );
  });
  it('an uncertain measurement says less, close to the integral', () => {
    const { input, expected, tolerance } = check('woe-measurement-uncertainty');
    const cases = input.cases_s_sigma_r as [number, number, number][];
    near(
      cases.map(([s, sigma, r]) => psychometricDb(r, sigma, s)),
      expected.W_approx_dB,
      tolerance,
    );
    near(
      cases.map(([s, sigma, r]) => integralDb(s, sigma, r)),
      expected.W_exact_dB,
      tolerance,
    );
    expect(effectiveSlope(0)).toBe(2);
  });
  it('an answer that may be wrong is capped at the odds of being right', () => {
    const { input, expected, tolerance } = check('woe-answer-error');
    near(givenDb(input.tp, input.fp, 'read'), expected.W_dB_with_error, tolerance);
    near(db(input.tp / input.fp), expected.W_dB_no_error, tolerance);
    near(
      (['measured', 'read', 'recalled', 'guessed'] as const).map(capDb),
      ['0.02', '0.05', '0.1', '0.2'].map((e) => expected.cap_dB[e]),
      tolerance,
    );
    near([givenDb(1, 0, 'recalled'), absentDb(0, 1, 'recalled')], Array(2).fill(capDb('recalled')), 1e-9);
  });
  it('k equally strong items of a group', () => {
    const { input, expected, tolerance } = check('woe-correlated-group');
    const cases = input.cases_k_rho as [number, number][];
    near(
      cases.map(([k, rho]) => groupDb(Array(k).fill(input.w_dB_each), rho)),
      expected.W_dB,
      tolerance,
    );
  });
  it('correlated Gaussian evidence is the discounted sum of its weights', () => {
    const { input, expected, tolerance } = check('woe-correlated-gaussian');
    const x = input.x as number[];
    const single = x.map((v) => input.d * v - input.d ** 2 / 2);
    near(correlatedSum(sum(single), x.length, input.rho), expected.LLR_nats, tolerance);
  });
  it('certainty factors are likelihood ratios in disguise', () => {
    const pairs = check('cf-combination');
    near(
      (pairs.input.pairs as [number, number][]).map(([a, b]) => combineFactors(a, b)),
      pairs.expected.CF,
      pairs.tolerance,
    );
    const ratios = check('cf-is-log-lr');
    for (const [i, [a, b]] of (ratios.input.lr_pairs as [number, number][]).entries()) {
      near(combineFactors(factor(a), factor(b)), ratios.expected.CF_of_product[i], ratios.tolerance);
      near(factor(oddsOf(db(a) + db(b))), ratios.expected.CF_of_product[i], ratios.tolerance);
    }
  });
});

/** Average of the logistic function over ln r normal with spread sigma, in decibans, by the midpoint rule. */
function integralDb(s: number, sigma: number, r: number): number {
  const steps = 4000;
  let p = 0;
  for (let k = 0; k < steps; k++) {
    const z = -8 + (16 * (k + 0.5)) / steps;
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    p += (density * 16) / steps / (1 + Math.exp(-s * (Math.log(r) + sigma * z)));
  }
  return decibansOf(p);
}
const factor = (lr: number): number => (lr >= 1 ? (lr - 1) / lr : lr - 1);
function combineFactors(a: number, b: number): number {
  if (a * b < 0) return (a + b) / (1 - Math.min(Math.abs(a), Math.abs(b)));
  return Math.sign(a || b) * (Math.abs(a) + Math.abs(b) - Math.abs(a * b));
}

describe('noisy-OR', () => {
  it('reproduces the textbook table of three causes of fever', () => {
    const { input, expected, tolerance } = check('noisy-or-fever');
    const links = ['cold', 'flu', 'malaria'].map((id) => [1 - input.inhibitor[id]]);
    for (const [state, chance] of Object.entries(expected)) {
      const net = { p: [...state].map(Number), links, leaks: [0] };
      near(likelihoods(net, { present: [], absent: [0] }).evidence, 1 - (chance as number), tolerance);
    }
  });
  it('a known cause explains a complaint away', () => {
    const { input, expected, tolerance } = check('noisy-or-explaining-away');
    const net: NoisyOr = {
      p: [input.prior.A, input.prior.B],
      links: [[input.link.A], [input.link.B]],
      leaks: [input.leak],
    };
    const heard = { present: [0], absent: [] };
    near(likelihoods(net, heard).evidence, expected.P_F, tolerance);
    near(posteriors(net, heard), [expected.P_A_F, expected.P_B_F], tolerance);
    near(posteriors({ ...net, p: [0.1, 1] }, heard)[0], expected.P_A_F_B, tolerance);
    near(posteriors({ ...net, p: [0.1, 0] }, heard)[0], expected.P_A_F_notB, tolerance);
    near(posteriors(net, { present: [], absent: [0] }), [expected.P_A_notF, expected.P_B_notF], tolerance);
    near(sharedDb(net, heard)[0], expected.W_A_F_dB, tolerance);
  });
  it('six causes, three complaints present and one absent', () => {
    const { input, expected, tolerance } = check('bn2o-quickscore');
    const ids = ['s1', 's2', 's3', 's4'];
    const net: NoisyOr = {
      p: input.prior,
      links: (input.prior as number[]).map((_, i) => ids.map((id) => input.link[id][i])),
      leaks: ids.map((id) => input.leak[id]),
    };
    const heard = { present: [0, 1, 2], absent: [3] };
    near(likelihoods(net, heard).evidence, expected.P_evidence, 1e-9);
    near(posteriors(net, heard), expected.posterior, tolerance);
  });
});

describe('published networks, by the enumeration the other tests lean on', () => {
  const clinic: Node[] = [
    { name: 'a', p: () => 0.01 },
    { name: 's', p: () => 0.5 },
    { name: 't', p: (v) => (v.a ? 0.05 : 0.01) },
    { name: 'l', p: (v) => (v.s ? 0.1 : 0.01) },
    { name: 'b', p: (v) => (v.s ? 0.6 : 0.3) },
    { name: 'x', p: (v) => (v.t || v.l ? 0.98 : 0.05) },
    { name: 'd', p: (v) => (v.b ? (v.t || v.l ? 0.9 : 0.8) : v.t || v.l ? 0.7 : 0.1) },
  ];
  it.each(['asia-prior', 'asia-asia+dysp', 'asia-asia+dysp+xray', 'asia-smoke+dysp'])('%s', (id) => {
    const { input, expected, tolerance } = check(id);
    const evidence = Object.fromEntries((input.evidence_yes as string[]).map((name) => [name, true]));
    for (const query of ['t', 'l', 'b'])
      near(enumerateNet(clinic, evidence, query).posterior, expected[query], tolerance);
    near(enumerateNet(clinic, evidence, 't').evidence, expected.P_evidence, tolerance);
  });
  it('burglary', () => {
    const { expected, tolerance } = check('burglary');
    const alarm: Node[] = [
      { name: 'burglary', p: () => 0.001 },
      { name: 'quake', p: () => 0.002 },
      {
        name: 'alarm',
        p: (v) => (v.burglary ? (v.quake ? 0.95 : 0.94) : v.quake ? 0.29 : 0.001),
      },
      { name: 'john', p: (v) => (v.alarm ? 0.9 : 0.05) },
      { name: 'mary', p: (v) => (v.alarm ? 0.7 : 0.01) },
    ];
    const burglary = (john: boolean): number =>
      enumerateNet(alarm, { john, mary: true }, 'burglary').posterior;
    near(burglary(true), expected['JohnCalls+MaryCalls'], tolerance);
    near(burglary(false), expected['notJohn+Mary'], tolerance);
  });
});

describe("Dempster's rule, kept as the counterexample to normalizing conflict away", () => {
  type Masses = Record<string, number>;
  const combine = (a: Masses, b: Masses): { masses: Masses; conflict: number } => {
    const masses: Masses = {};
    let conflict = 0;
    for (const [x, mx] of Object.entries(a))
      for (const [y, my] of Object.entries(b)) {
        const both = [...x].filter((letter) => y.includes(letter)).join('');
        if (both === '') conflict += mx * my;
        else masses[both] = (masses[both] ?? 0) + mx * my;
      }
    for (const key of Object.keys(masses)) masses[key] = (masses[key] ?? 0) / (1 - conflict);
    return { masses, conflict };
  };
  it('two sure sources in conflict make a hardly believed third certain', () => {
    const { input, expected, tolerance } = check('ds-zadeh');
    const { masses, conflict } = combine(input.m1, input.m2);
    near([masses.T, conflict], [expected.bel_T, expected.conflict], tolerance);
  });
  it('two sources on a yes/no frame', () => {
    const { input, expected, tolerance } = check('ds-simple');
    const pro = (p: number): Masses => ({ A: p, AB: 1 - p });
    const contra = (p: number): Masses => ({ B: p, AB: 1 - p });
    near(combine(pro(input.same[0]), pro(input.same[1])).masses.A, expected.same, tolerance);
    const opposed = combine(pro(input.opposed_A), contra(input.opposed_notA));
    near(
      [opposed.masses.A, opposed.masses.B, opposed.conflict],
      [expected.bel_A, expected.bel_notA, expected.conflict],
      tolerance,
    );
  });
});
