import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CrossoverFilter } from '../../src/acoustics/crossover.js';
import { lobingAngle, mtmThresholdK, pairNull } from '../../src/acoustics/lobing.js';
import { offAxisCurve } from '../../src/acoustics/offaxis.js';
import { mtmFirstNullRatio, mtmPointDb } from '../support/heldModels.js';

describe('an in-line pair with the tweeter between', () => {
  it('has one threshold constant for each filter and depth', () => {
    // d sin(angle) in wavelengths at the crossover for 3, 6, 10, 20 dB and the first null. Computed, project reference.
    const table: readonly (readonly [CrossoverFilter, readonly (number | null)[]])[] = [
      ['LR4', [0.362, 0.4935, 0.602, 0.73, 0.792]],
      ['LR2', [0.32, 0.469, 0.609, 0.792, 0.889]],
      ['LR8', [0.334, 0.448, 0.539, 0.642, 0.69]],
      ['BW3', [0.364, 0.518, 0.68, 1.069, null]],
    ];
    const depths = [3, 6, 10, 20, Number.POSITIVE_INFINITY];
    for (const [filter, constants] of table) {
      depths.forEach((depth, i) => {
        const k = mtmThresholdK(filter, depth);
        const expected = constants[i];
        if (expected === null || expected === undefined) expect(k).toBeNull();
        else expect(Math.abs((k ?? 0) - expected)).toBeLessThan(0.001);
      });
    }
  });

  it('does not cancel at the textbook null: where that falls on the crossover 6 dB remain', () => {
    expect(mtmPointDb({ filter: 'LR4', frequencyRatio: 1, spacingInWavelengths: 0.5 })).toBeCloseTo(
      -6.0206,
      3,
    );
    expect(mtmFirstNullRatio('LR4', 0.5)).toBeNull();
    expect(mtmFirstNullRatio('BW3', 1.2)).toBeNull();
  });

  it('has its first real null above the textbook one, closer to it the wider the angle', () => {
    // Ratio at fc / f0 = 1.7, 2, 2.5, 3. Computed, project reference.
    for (const [kappa, ratio] of [
      [1.7, 1.12],
      [2, 1.048],
      [2.5, 1.018],
      [3, 1.008],
    ] as const) {
      expect(Math.abs((mtmFirstNullRatio('LR4', kappa / 2) ?? 0) - ratio)).toBeLessThan(0.003);
    }
  });

  it('cancels exactly at that null, where cos(pi x k) + x^n is nothing, and not below it', () => {
    for (const [filter, order, k] of [
      ['LR2', 2, 1],
      ['LR4', 4, 0.85],
      ['LR4', 4, 1.5],
      ['LR8', 8, 0.7],
    ] as const) {
      const x = (mtmFirstNullRatio(filter, k) ?? Number.NaN) / (2 * k);
      expect(Math.cos(Math.PI * x * k) + x ** order).toBeCloseTo(0, 8);
      for (let part = 0.01; part < 0.99; part += 0.01)
        expect(Math.cos(Math.PI * x * part * k) + (x * part) ** order).toBeGreaterThan(0);
    }
  });

  it('of third order is not 80 dB down anywhere, however wide it stands', () => {
    expect(
      lobingAngle({ spacingM: 20, crossoverHz: 3000, filter: 'BW3', targetDipDb: 80 }).angleDeg,
    ).toBeNull();
    const unknown = 'LR6' as CrossoverFilter;
    expect(() => mtmPointDb({ filter: unknown, frequencyRatio: 1, spacingInWavelengths: 1 })).toThrow(
      /filter is LR6; accepted/,
    );
    expect(() => mtmFirstNullRatio(unknown, 1)).toThrow(/filter is LR6; accepted/);
  });

  it('the full model with tiny drivers far away is the closed form', () => {
    const [spacingM, crossoverHz, azimuthDeg] = [0.26, 2500, 20];
    const mid = {
      zM: 0,
      radiusM: 1e-4,
      weight: 0.5,
      lowPass: { filter: 'LR4', frequencyHz: crossoverHz },
    } as const;
    const dome = {
      xM: 0,
      zM: 0,
      radiusM: 1e-4,
      weight: 1,
      highPass: { filter: 'LR4', frequencyHz: crossoverHz },
    } as const;
    const drivers = [{ ...mid, xM: -spacingM / 2 }, { ...mid, xM: spacingM / 2 }, dome];
    const { frequencyHz, levelDb } = offAxisCurve({ drivers, azimuthDeg, distanceM: 1000 });
    const spacingInWavelengths = (spacingM * Math.sin((azimuthDeg * Math.PI) / 180) * crossoverHz) / 343.2;
    frequencyHz.forEach((f, i) => {
      const closed = mtmPointDb({ filter: 'LR4', frequencyRatio: f / crossoverHz, spacingInWavelengths });
      if (closed > -30) expect(levelDb[i]).toBeCloseTo(closed, 2);
    });
  });

  it('a woofer spacing times crossover below 239 m Hz never dips 6 dB inside 45 deg', () => {
    // Computed, project reference.
    expect(lobingAngle({ spacingM: 0.4, crossoverHz: 239 / 0.4 }).angleDeg ?? 0).toBeCloseTo(45, 0);
    expect(lobingAngle({ spacingM: 0.4, crossoverHz: 400 }).angleDeg).toBeNull();
  });

  it('the angle shrinks with spacing and with crossover', () => {
    const size = fc.double({ min: 0.15, max: 0.6, noNaN: true });
    const crossover = fc.double({ min: 1500, max: 4000, noNaN: true });
    fc.assert(
      fc.property(size, crossover, (spacingM, crossoverHz) => {
        const here = lobingAngle({ spacingM, crossoverHz }).angleDeg ?? 90;
        const wider = lobingAngle({ spacingM: spacingM * 1.1, crossoverHz }).angleDeg ?? 90;
        const higher = lobingAngle({ spacingM, crossoverHz: crossoverHz * 1.1 }).angleDeg ?? 90;
        expect(wider).toBeLessThanOrEqual(here);
        expect(higher).toBeCloseTo(wider, 9);
      }),
    );
  });
});

describe('two equal sources', () => {
  it('null at c / (2 d sin angle), the same on both sides, and never on the axis', () => {
    expect(pairNull({ spacingM: 0.26, angleDeg: 30 }).firstNullHz).toBeCloseTo(1320, 6);
    expect(pairNull({ spacingM: 0.26, angleDeg: -30 })).toEqual(pairNull({ spacingM: 0.26, angleDeg: 30 }));
    expect(pairNull({ spacingM: 0.26, angleDeg: 0 }).firstNullHz).toBeNull();
  });

  it('refuses what is no spacing or angle', () => {
    expect(() => pairNull({ spacingM: 0, angleDeg: 30 })).toThrow(/spacingM is 0; accepted/);
    expect(() => pairNull({ spacingM: 0.2, angleDeg: Number.NaN })).toThrow(/angleDeg/);
    expect(() => lobingAngle({ spacingM: 0.2, crossoverHz: 2500, targetDipDb: -6 })).toThrow(/targetDipDb/);
    expect(() => lobingAngle({ spacingM: 0.2, crossoverHz: 2500, filter: 'LR6' as CrossoverFilter })).toThrow(
      /filter/,
    );
  });
});
