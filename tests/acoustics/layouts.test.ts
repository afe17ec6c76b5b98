import { describe, expect, it } from 'vitest';
import { DRIVER_LAYOUTS, LAYOUT_DEFAULTS, layoutDrivers } from '../../src/acoustics/layouts.js';

describe('driver layouts', () => {
  it('are the eleven of the contract', () => {
    expect(DRIVER_LAYOUTS).toHaveLength(11);
  });

  it('every default can be overridden and reaches the drivers', () => {
    const [left, right, dome] = layoutDrivers('nested-mid-tweeter-mid', {
      spacingM: 0.17,
      tweeterSpacingM: 0.09,
      crossoverHz: 2000,
      filter: 'LR2',
      midRadiusM: 0.06,
    });
    const lowPass = { filter: 'LR2', frequencyHz: 2000 };
    expect(left).toEqual({ xM: -0.085, zM: 0, weight: 0.5, radiusM: 0.06, lowPass });
    expect(right).toEqual({ xM: 0.085, zM: 0, weight: 0.5, radiusM: 0.06, lowPass });
    expect(dome).toMatchObject({ xM: 0, zM: 0.09, weight: 1, highPass: lowPass });
  });

  it('the spacing of a box with one mid is that of its domes', () => {
    const [, left, right] = layoutDrivers('tweeter-mid-tweeter', { spacingM: 0.36 });
    expect((right?.xM ?? 0) - (left?.xM ?? 0)).toBeCloseTo(0.36, 12);
    const both = layoutDrivers('tweeter-mid-tweeter', { spacingM: 0.36, tweeterSpacingM: 0.24 });
    expect(both[2]?.xM).toBeCloseTo(0.12, 12);
  });

  it('a second-order Butterworth dome is inverted, or it would cancel the mids', () => {
    const dome = layoutDrivers('mid-tweeter-mid', { filter: 'BW2' })[2];
    expect(dome?.weight).toBe(-1);
  });

  it('the woofers of a three-way share the phase of the crossover above them', () => {
    const [woofer, , mid, dome] = layoutDrivers('woofer-mid-tweeter-woofer');
    expect(woofer?.allPass).toEqual({ filter: 'LR4', frequencyHz: 2500 });
    expect(woofer?.lowPass).toEqual({ filter: 'LR4', frequencyHz: 500 });
    expect(mid?.highPass).toEqual({ filter: 'LR4', frequencyHz: 500 });
    expect(dome?.highPass).toHaveLength(2);
  });

  it('turning a box upright stacks it; turning it upside down and back changes nothing', () => {
    for (const layout of DRIVER_LAYOUTS) {
      const level = layoutDrivers(layout);
      const upright = layoutDrivers(layout, {}, 'upright');
      const down = layoutDrivers(layout, {}, 'upside-down');
      level.forEach((driver, i) => {
        expect(upright[i]?.zM).toBeCloseTo(driver.xM, 12);
        expect(upright[i]?.xM).toBeCloseTo(-driver.zM, 12);
        expect(down[i]?.xM).toBeCloseTo(-driver.xM, 12);
        expect(down[i]?.zM).toBeCloseTo(-driver.zM, 12);
      });
    }
  });

  it('the mids of an in-line box do not overlap with the defaults', () => {
    for (const layout of ['mid-tweeter-mid', 'nested-mid-tweeter-mid', 'tweeter-mid-mid-tweeter'] as const) {
      const { spacingM, midRadiusM } = LAYOUT_DEFAULTS[layout];
      expect(spacingM).toBeGreaterThan(2 * midRadiusM);
    }
  });
});
