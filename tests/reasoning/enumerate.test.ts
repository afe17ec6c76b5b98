/** Which causes are summed one by one, and what happens to the others. */
import { describe, expect, it } from 'vitest';
import { bestCauses, enumerate } from '../../src/reasoning/enumerate.js';

const net = {
  p: [0.1, 0.5, 0.3, 0.2, 0.9],
  links: [
    [0.9, 0.1],
    [0.1, 0.2],
    [0.3, 0],
    [0.5, 0.45],
    [0, 0],
  ],
  leaks: [0.05, 0.1],
};

describe('the causes worth summing one by one', () => {
  it('are those likeliest to make one of the complaints: chance times best link, ties in order', () => {
    // 0.09, 0.1, 0.09, 0.1 and none.
    expect(bestCauses(net, [0, 1], 10)).toEqual([1, 3, 0, 2]);
    expect(bestCauses(net, [0, 1], 2)).toEqual([1, 3]);
    expect(bestCauses(net, [1], 10)).toEqual([1, 3, 0]);
    expect(bestCauses(net, [], 10)).toEqual([]);
  });
});

describe('the sum', () => {
  it('is exact once every cause that can make a complaint is in it; one that cannot may stay out', () => {
    expect(enumerate(net, [0, 1], [0, 1, 2, 3]).exact).toBe(true);
    expect(enumerate(net, [0, 1], [0, 1, 2]).exact).toBe(false);
    expect(enumerate(net, [1], [0, 1, 3]).exact).toBe(true);
  });
  it('leaves a cause without a link as it was', () => {
    const { ifTrue, ifFalse, evidence } = enumerate(net, [0, 1], [0, 1, 2, 3]);
    expect([ifTrue[4], ifFalse[4]]).toEqual([evidence, evidence]);
  });
  it('splits into true and false by their chances for every cause in it', () => {
    const { ifTrue, ifFalse, evidence } = enumerate(net, [0, 1], [0, 1, 2, 3]);
    net.p.forEach((p, i) => {
      expect(p * (ifTrue[i] ?? 0) + (1 - p) * (ifFalse[i] ?? 0)).toBeCloseTo(evidence, 12);
    });
  });
  it('folds in a cause that is linked to one of two complaints only', () => {
    const all = enumerate(net, [0, 1], [0, 1, 2, 3]);
    const folded = enumerate(net, [0, 1], [0, 1, 3]);
    // Cause 2 speaks to one complaint only, so folding it loses nothing.
    expect(folded.evidence).toBeCloseTo(all.evidence, 12);
    expect(folded.ifTrue[2]).toBeCloseTo(all.ifTrue[2] ?? 0, 12);
    expect(folded.ifFalse[2]).toBeCloseTo(all.ifFalse[2] ?? 0, 12);
  });
});
