import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupDb } from '../../src/reasoning/group.js';

const weight = fc.double({ min: -20, max: 20, noNaN: true });
const weights = fc.array(weight, { maxLength: 6 });
const positives = fc.array(fc.double({ min: 0.001, max: 20, noNaN: true }), { minLength: 1, maxLength: 6 });
const rho = fc.constantFrom(0, 0.3, 0.7, 1);
const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

describe('a group of evidence', () => {
  it('independent items add', () => {
    fc.assert(
      fc.property(weights, (list) => {
        expect(groupDb(list, 0)).toBeCloseTo(sum(list), 9);
      }),
    );
  });
  it('of the same quantity only the strongest counts', () => {
    fc.assert(
      fc.property(positives, (list) => {
        expect(groupDb(list, 1)).toBeCloseTo(Math.max(...list), 9);
      }),
    );
  });
  it('one more item of the same direction never weakens it, however weak it is', () => {
    fc.assert(
      fc.property(positives, rho, fc.double({ min: 0, max: 20, noNaN: true }), (list, r, extra) => {
        expect(groupDb([...list, extra], r)).toBeGreaterThanOrEqual(groupDb(list, r) - 1e-9);
      }),
    );
  });
  it('turning every sign turns the result', () => {
    fc.assert(
      fc.property(weights, rho, (list, r) => {
        const turned = list.map((w) => -w);
        expect(groupDb(turned, r)).toBeCloseTo(-groupDb(list, r), 9);
      }),
    );
  });
  it('order does not matter', () => {
    fc.assert(
      fc.property(weights, rho, (list, r) => {
        expect(groupDb([...list].reverse(), r)).toBeCloseTo(groupDb(list, r), 9);
      }),
    );
  });
  it('never says more than the plain sum, nor the opposite of it', () => {
    fc.assert(
      fc.property(weights, rho, (list, r) => {
        const [grouped, plain] = [groupDb(list, r), sum(list)];
        expect(Math.abs(grouped)).toBeLessThanOrEqual(Math.abs(plain) + 1e-9);
        expect(grouped * plain).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });
  it('for and against of one quantity are netted', () => {
    expect(groupDb([10, -4], 1)).toBe(6);
    expect(groupDb([6, 6, -6], 0.7)).toBeCloseTo(12 / 1.7 - 6, 9);
    expect(groupDb([10, -9, -9], 1)).toBe(0);
  });
});
