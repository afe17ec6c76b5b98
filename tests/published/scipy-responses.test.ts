/**
 * Whole responses against general-purpose routines (NumPy and SciPy, versions in the table): combs and filters by
 * Fourier transform of impulses, crossovers by analog design, off-axis curves by a second program.
 */
import { describe, expect, it } from 'vitest';
import { comb, sharedCombAtSeat } from '../../src/acoustics/comb.js';
import { levelDb } from '../../src/acoustics/complex.js';
import { type CrossoverFilter, highPass, lowPass } from '../../src/acoustics/crossover.js';
import { type Filter, filter } from '../../src/acoustics/filter.js';
import { type DriverLayout, type LayoutOverrides, layoutDrivers } from '../../src/acoustics/layouts.js';
import { offAxis, offAxisCurve } from '../../src/acoustics/offaxis.js';
import { FINE_GRID } from '../../src/acoustics/radiation.js';
import table from './data/scipy-responses.json' with { type: 'json' };

describe(`NumPy ${table.versions.numpy}: Fourier transform of impulses`, () => {
  for (const { delayMs, relativeLevelDb, ...fft } of table.combs) {
    it(`comb of ${delayMs} ms at ${relativeLevelDb} dB`, () => {
      const r = comb({ delayMs, relativeLevelDb });
      r.nullsHz.forEach((hz, i) => {
        expect(hz / (fft.nullsHz[i] ?? 0)).toBeCloseTo(1, 4);
      });
      r.peaksHz.forEach((hz, i) => {
        expect(hz / (fft.peaksHz[i] ?? 0)).toBeCloseTo(1, 4);
      });
      expect(r.peakDb).toBeCloseTo(fft.peakDb, 3);
      if (fft.dipDb === null) expect(r.dipDb).toBeNull();
      else expect(r.dipDb).toBeCloseTo(fft.dipDb, 3);
    });
  }

  for (const { seat, centerGain, sideGain, delaysMs, firstNotchHz, firstNotchDb } of table.shared) {
    it(`first notch of shared content at seat ${seat.join(', ')}`, () => {
      const [left = 0, center = 0, right = 0] = delaysMs;
      const places = { left: [-1.5, 0], center: [0, 0], right: [1.5, 0] };
      const r = sharedCombAtSeat({
        ...places,
        seat,
        centerGain,
        sideGain,
        delaysMs: { left, center, right },
      });
      // Our curve has steps of 0.42 percent.
      expect((r.firstNotchHz ?? 0) / firstNotchHz).toBeGreaterThan(0.995);
      expect((r.firstNotchHz ?? 0) / firstNotchHz).toBeLessThan(1.005);
      // A nearly complete notch is as deep as the grid happens to meet it: only that it is deep can be claimed.
      if (firstNotchDb < -20) expect(r.firstNotchDb).toBeLessThan(-20);
      else expect(Math.abs((r.firstNotchDb ?? 0) - firstNotchDb)).toBeLessThan(0.02);
    });
  }

  for (const { magnitudeDb, ...input } of table.filters) {
    it(`${input.type} at ${input.frequencyHz} Hz, sampled at ${input.sampleRateHz} Hz`, () => {
      const got = filter({ ...input, type: input.type as Filter['type'] }).magnitudeDb;
      got.forEach((level, i) => {
        expect(Math.abs(level - (magnitudeDb[i] ?? Number.NaN))).toBeLessThan(2e-5);
      });
    });
  }
});

describe(`SciPy ${table.versions.scipy}: analog design and piston sums`, () => {
  for (const { crossoverHz, frequenciesHz, lowPassDb, highPassDb, ...row } of table.crossovers) {
    it(`${row.filter} in magnitude`, () => {
      const kind = row.filter as CrossoverFilter;
      frequenciesHz.forEach((hz, i) => {
        expect(levelDb(lowPass(kind, crossoverHz, hz))).toBeCloseTo(lowPassDb[i] ?? Number.NaN, 4);
        expect(levelDb(highPass(kind, crossoverHz, hz))).toBeCloseTo(highPassDb[i] ?? Number.NaN, 4);
      });
    });
  }

  for (const row of table.offAxis) {
    const { layout, azimuthDeg, elevationDeg, distanceM, dipDb, dipHz, speechLossDb, ...rest } = row;
    const { levelDb: levels, ...overrides } = rest;
    const changed = Object.keys(overrides).length === 0 ? '' : ` ${JSON.stringify(overrides)}`;
    it(`${layout}${changed} at ${azimuthDeg}, ${elevationDeg} degrees, ${distanceM} m`, () => {
      const drivers = layoutDrivers(layout as DriverLayout, overrides as LayoutOverrides);
      const seat = { azimuthDeg, elevationDeg, distanceM };
      const curve = offAxisCurve({ drivers, ...seat }, FINE_GRID);
      table.gridPoints.forEach((point, i) => {
        expect(Math.abs((curve.levelDb[point] ?? Number.NaN) - (levels[i] ?? 0))).toBeLessThan(1e-3);
      });
      const fine = offAxis({ drivers, ...seat }, FINE_GRID);
      expect(fine.dipDb).toBeCloseTo(dipDb, 3);
      expect(fine.speechLossDb).toBeCloseTo(speechLossDb, 4);
      if (fine.dipHz !== null) expect(Math.abs(fine.dipHz / dipHz - 1)).toBeLessThan(0.002);
      // What an audit uses, on the working grid.
      const coarse = offAxis({ drivers, ...seat });
      expect(Math.abs(coarse.dipDb - dipDb)).toBeLessThan(0.1);
      expect(Math.abs(coarse.speechLossDb - speechLossDb)).toBeLessThan(0.01);
    });
  }
});
