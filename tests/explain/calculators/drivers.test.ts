/** A list of drivers: what is taken, and what is refused with its place and what is accepted. */
import { describe, expect, it } from 'vitest';
import { driversInput } from '../../../src/explain/calculators/drivers-input.js';
import { calcJson } from '../../support/calc.js';

const CONE = { xM: 0.1, zM: 0, radiusM: 0.05, weight: 1 };
const LR4 = { filter: 'LR4', frequencyHz: 2500 };
/** Places of what is refused, with what is wrong there. */
const refused = (given: unknown): string[] => {
  const checked = driversInput.value(given);
  return 'refused' in checked ? checked.refused.map(({ at, what }) => `${at}: ${what}`) : [];
};
const driver = (changes: object): string[] => refused([{ ...CONE, ...changes }]);

describe('a list of drivers', () => {
  it('is taken as it is, without what is null', () => {
    const full = { ...CONE, yM: 0.02, lowPass: LR4, highPass: [LR4, LR4] };
    expect(driversInput.value([full, { ...CONE, yM: null, allPass: null }])).toEqual({ value: [full, CONE] });
  });
  it('is a list with one driver at least and sixty-four at most', () => {
    for (const nothing of [[], {}, 'x', null])
      expect(refused(nothing)).toEqual([expect.stringMatching(/^: .*has no driver$/)]);
    expect(refused(Array(64).fill(CONE))).toEqual([]);
    expect(refused(Array(65).fill(CONE))).toEqual([': 65 drivers']);
  });
  it('holds objects that tell place, size and weight within what a loudspeaker has', () => {
    expect(refused([CONE, 3])).toEqual([expect.stringMatching(/^\[1\]: .*is no driver$/)]);
    expect(refused([{}])).toEqual(['xM', 'zM', 'radiusM', 'weight'].map((key) => `[0].${key}: is missing`));
    expect(driver({ xM: -10, zM: 10, radiusM: 1, weight: -1000, yM: -10 })).toEqual([]);
    expect(
      driver({ xM: -10.1, zM: 10.1, radiusM: 1.1, weight: 1001, yM: 11 }).map((text) => text.split(':')[0]),
    ).toEqual(['[0].xM', '[0].zM', '[0].radiusM', '[0].weight', '[0].yM']);
    expect(driver({ radiusM: -0.01 })).toHaveLength(1);
    expect(driver({ weight: 'loud' })).toHaveLength(1);
  });
  it('names what it does not know, and the nearest', () => {
    expect(driver({ radius: 1 })).toEqual([
      expect.stringMatching(/"radius" is not known; did you mean radiusM\?$/),
    ]);
    expect(driver({ qqqqqq: 1 })).toEqual([expect.stringMatching(/"qqqqqq" is not known$/)]);
  });
});

describe('the filters of a driver', () => {
  it('are one or a list of eight at most, each of a known kind above 0 Hz', () => {
    expect(driver({ lowPass: Array(8).fill(LR4) })).toEqual([]);
    expect(driver({ lowPass: Array(9).fill(LR4) })).toEqual(['[0].lowPass: 9 filters']);
    expect(driver({ highPass: [LR4, 'steep'] })).toEqual([
      expect.stringMatching(/^\[0\]\.highPass\[1\]: .*is no filter$/),
    ]);
    expect(driver({ allPass: {} })).toEqual([
      '[0].allPass.filter: is missing',
      '[0].allPass.frequencyHz: is missing',
    ]);
    expect(driver({ lowPass: { ...LR4, filter: 'LR5' } })).toEqual([
      expect.stringMatching(/^\[0\]\.lowPass\.filter: .*LR5.* is not known$/),
    ]);
    expect(driver({ lowPass: { ...LR4, slope: 24 } })).toEqual([
      expect.stringMatching(/^\[0\]\.lowPass: "slope" is not known$/),
    ]);
  });
  it.each([[0], [-5], ['2500'], [Number.POSITIVE_INFINITY], [Number.NaN]])(
    'have a frequency, not %j',
    (frequencyHz) => {
      expect(driver({ lowPass: { ...LR4, frequencyHz } })).toEqual([
        expect.stringMatching(/^\[0\]\.lowPass\.frequencyHz: .*is no frequency above 0 Hz$/),
      ]);
    },
  );
  it('are told in the message of the command with their place', async () => {
    const given = { azimuthDeg: 20, drivers: [{ ...CONE, lowPass: { filter: 'LR4', frequencyHz: 0 } }] };
    await expect(calcJson('off-axis', given)).rejects.toThrow(
      /drivers\[0\]\.lowPass\.frequencyHz[\s\S]*accepted: .*LR4[\s\S]*example/,
    );
  });
});
