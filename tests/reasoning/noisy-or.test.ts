import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enumerate } from '../../src/reasoning/enumerate.js';
import {
  type Heard,
  leakShare,
  likelihoods,
  type NoisyOr,
  quickscore,
} from '../../src/reasoning/noisy-or.js';
import { posteriors } from '../support/bayesNet.js';

const chance = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const network = fc
  .record({ causes: fc.integer({ min: 1, max: 8 }), complaints: fc.integer({ min: 1, max: 6 }) })
  .chain(({ causes, complaints }) =>
    fc.record({
      p: fc.array(chance(0.001, 0.95), { minLength: causes, maxLength: causes }),
      links: fc.array(
        fc.array(fc.oneof(fc.constant(0), chance(0.05, 0.95)), {
          minLength: complaints,
          maxLength: complaints,
        }),
        { minLength: causes, maxLength: causes },
      ),
      leaks: fc.array(chance(0.01, 0.3), { minLength: complaints, maxLength: complaints }),
    }),
  );
const heardIn = (net: NoisyOr) =>
  fc
    .array(fc.constantFrom('present', 'absent', 'unasked'), {
      minLength: net.leaks.length,
      maxLength: net.leaks.length,
    })
    .map((states): Heard => {
      const all = states.map((state, j) => ({ state, j }));
      return {
        present: all.filter((s) => s.state === 'present').map((s) => s.j),
        absent: all.filter((s) => s.state === 'absent').map((s) => s.j),
      };
    });
const heardNetwork = network.chain((net) => heardIn(net).map((heard) => ({ net, heard })));

/** Full enumeration of causes and of which link fired is not needed: one sum over the states of the causes. */
function brute(net: NoisyOr, { present, absent }: Heard, silentOn?: number) {
  const count = net.p.length;
  let evidence = 0;
  const yes = new Array<number>(count).fill(0);
  for (let state = 0; state < 2 ** count; state++) {
    const on = (i: number): boolean => (state & (2 ** i)) !== 0;
    let weight = 1;
    net.p.forEach((p, i) => {
      weight *= on(i) ? p : 1 - p;
    });
    const stays = (j: number): number =>
      net.p.reduce((q, _, i) => (on(i) ? q * (1 - (net.links[i]?.[j] ?? 0)) : q), 1);
    for (const j of present) {
      const leak = net.leaks[j] ?? 0;
      weight *= j === silentOn ? stays(j) * leak : 1 - (1 - leak) * stays(j);
    }
    for (const j of absent) weight *= (1 - (net.leaks[j] ?? 0)) * stays(j);
    evidence += weight;
    for (let i = 0; i < count; i++) if (on(i)) yes[i] = (yes[i] ?? 0) + weight;
  }
  return { evidence, posterior: yes.map((v) => v / evidence) };
}

describe('leaky noisy-OR', () => {
  it('agrees with full enumeration to 1e-6', () => {
    fc.assert(
      fc.property(heardNetwork, ({ net, heard }) => {
        const exact = brute(net, heard);
        expect(Math.abs(likelihoods(net, heard).evidence - exact.evidence)).toBeLessThan(1e-9);
        posteriors(net, heard).forEach((p, i) => {
          expect(Math.abs(p - (exact.posterior[i] ?? 0))).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 400 },
    );
  });
  it('the share that nothing listed explains is the chance that only the leak spoke', () => {
    fc.assert(
      fc.property(heardNetwork, ({ net, heard }) => {
        for (const j of heard.present) {
          const exact = brute(net, heard, j).evidence / brute(net, heard).evidence;
          expect(Math.abs(leakShare(net, heard, j) - exact)).toBeLessThan(1e-6);
        }
      }),
    );
  });
  it('an absent complaint multiplies the odds of a cause by 1 - link, exactly', () => {
    fc.assert(
      fc.property(network, (net) => {
        const odds = (p: number): number => p / (1 - p);
        posteriors(net, { present: [], absent: [0] }).forEach((p, i) => {
          const expected = odds(net.p[i] ?? 0) * (1 - (net.links[i]?.[0] ?? 0));
          expect(odds(p) / expected).toBeCloseTo(1, 9);
        });
      }),
    );
  });
  it('enumeration over all causes and inclusion-exclusion are the same sum', () => {
    fc.assert(
      fc.property(heardNetwork, ({ net, heard }) => {
        const all = net.p.map((_, i) => i);
        const [quick, slow] = [quickscore(net, heard.present), enumerate(net, heard.present, all)];
        expect(Math.abs(quick.evidence - slow.evidence)).toBeLessThan(1e-10);
        quick.ifFalse.forEach((v, i) => {
          expect(Math.abs(v - (slow.ifFalse[i] ?? 0))).toBeLessThan(1e-9);
        });
      }),
    );
  });
  it('folding a cause into the leaks keeps the total, and its own posterior, exact when it is the only one', () => {
    const net = { p: [0.3, 0.2], links: [[0.6], [0.5]], leaks: [0.05] };
    const exact = brute(net, { present: [0], absent: [] });
    const folded = enumerate(net, [0], [0]);
    expect(folded.exact).toBe(false);
    expect(folded.evidence).toBeCloseTo(exact.evidence, 12);
    const [yes, no] = [0.2 * (folded.ifTrue[1] ?? 0), 0.8 * (folded.ifFalse[1] ?? 0)];
    expect(yes / (yes + no)).toBeCloseTo(exact.posterior[1] ?? 0, 12);
  });
  it('stays close to the truth where digits would be lost: twelve unlikely complaints at once', () => {
    const complaints = Array.from({ length: 12 }, (_, j) => j);
    const net: NoisyOr = {
      p: Array(10).fill(0.002),
      links: Array.from({ length: 10 }, (_, i) => complaints.map((j) => ((i + j) % 3 === 0 ? 0.7 : 0))),
      leaks: complaints.map(() => 0.002),
    };
    const heard = { present: complaints, absent: [] };
    const exact = brute(net, heard);
    expect(exact.evidence).toBeLessThan(1e-8);
    posteriors(net, heard).forEach((p, i) => {
      expect(Math.abs(p - (exact.posterior[i] ?? 0))).toBeLessThan(1e-6);
    });
  });
  it('is exact for up to ten complaints, and says so where it is a sum over the likeliest causes', () => {
    const wide = (complaints: number, leak: number): NoisyOr => ({
      p: Array(14).fill(0.1),
      links: Array.from({ length: 14 }, () => Array(complaints).fill(0.5)),
      leaks: Array(complaints).fill(leak),
    });
    const exact = (complaints: number, leak: number): boolean =>
      likelihoods(wide(complaints, leak), {
        present: Array.from({ length: complaints }, (_, j) => j),
        absent: [],
      }).exact;
    expect([1, 10, 11].map((complaints) => exact(complaints, 0.1))).toEqual([true, true, false]);
    // Two complaints that hardly anything can make: digits of the alternating sum would be gone.
    const rare: NoisyOr = { p: Array(14).fill(1e-5), links: Array(14).fill([0.5, 0]), leaks: [1e-5, 1e-5] };
    expect(likelihoods(rare, { present: [0, 1], absent: [] }).exact).toBe(false);
    // Likely with the one cause that makes it, out of the question without it.
    const only: NoisyOr = {
      p: [0.5, ...Array(13).fill(1e-13)],
      links: Array(14).fill([0.9]),
      leaks: [1e-13],
    };
    expect(likelihoods(only, { present: [0], absent: [] }).exact).toBe(false);
  });
  it('leaves every cause as it was by what can never be heard', () => {
    const net = { p: [0.3, 0.2], links: [[0], [0]], leaks: [0] };
    expect(posteriors(net, { present: [0], absent: [] })).toEqual([0.3, 0.2]);
  });
  it('a cause that does not take part moves nothing', () => {
    const net = { p: [0.2, 0], links: [[0.6], [0.9]], leaks: [0.05] };
    const alone = { p: [0.2], links: [[0.6]], leaks: [0.05] };
    const heard = { present: [0], absent: [] };
    expect(posteriors(net, heard)[0]).toBeCloseTo(posteriors(alone, heard)[0] ?? 0, 12);
  });
});
