/**
 * Cross-checks against general-purpose numerical routines (SciPy, version in the table): the table was made once
 * by other means than ours, for example digital filters by bilinear transform of analog prototypes.
 */
import { describe, expect, it } from 'vitest';
import { type BassInput, bassSum } from '../../src/acoustics/bass.js';
import { type Filter, filter } from '../../src/acoustics/filter.js';
import { screen } from '../../src/acoustics/screen.js';
import { erfc, lowerGamma } from '../support/precedence.js';
import table from './data/scipy-time-tone.json' with { type: 'json' };

describe(`SciPy ${table.versions.scipy}`, () => {
  for (const { magnitudeDb, frequenciesHz, ...row } of table.filters) {
    it(`agrees on a ${row.type} filter at ${row.frequencyHz} Hz`, () => {
      filter({ ...(row as Filter), frequenciesHz }).magnitudeDb.forEach((level, i) => {
        expect(level).toBeCloseTo(magnitudeDb[i] ?? Number.NaN, 5);
      });
    });
  }
  for (const { dipDb, dipHz, ...row } of table.bass) {
    it(`agrees on the bass hole: ${row.enclosure} ${row.lowLimitHz}, ${row.highPass} ${row.crossoverHz} Hz`, () => {
      const r = bassSum(row as BassInput);
      expect(r.dipDb).toBeCloseTo(dipDb, 3);
      expect(Math.abs(r.dipHz - dipHz)).toBeLessThan(0.05);
    });
  }
  for (const { lossDb, ...row } of table.sheets) {
    it(`agrees on a sheet with holes of ${row.holeDiameterM * 1000} mm`, () => {
      screen({ kind: 'perforated', ...row }).lossDb.forEach((loss, i) => {
        expect(loss).toBeCloseTo(lossDb[i] ?? Number.NaN, 5);
      });
    });
  }
  it('agrees on the gamma and error functions of the precedence model', () => {
    for (const { x, p } of table.gammaShape01) expect(lowerGamma(x)).toBeCloseTo(p, 10);
    for (const { x, y } of table.erfc) expect(erfc(x)).toBeCloseTo(y, 10);
  });
});
