/** Pages of calculators: an example to copy, keys with units, formula, validity and source. */
import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../../src/explain/calculators/index.js';
import { calculatorPages } from '../../../src/explain/pages/calculators.js';
import { headings, linesUnder } from './sections.js';

describe('the page of a calculator', () => {
  it('stands once for each, with the question it answers and a command to copy', async () => {
    const pages = await calculatorPages();
    expect(pages.map(({ id }) => id)).toEqual(CALCULATORS.map(({ name }) => name));
    pages.forEach((page, i) => {
      const { answers, name, example, formula } = CALCULATORS[i] as (typeof CALCULATORS)[number];
      expect(linesUnder(page)).toEqual([answers, `center-audit calc ${name} ${example}`.trim()]);
      expect(linesUnder(page, 'Formula')).toEqual([formula]);
      expect(headings(page)).toEqual(['Inputs', 'Results', 'Formula', 'Where it holds', 'Source']);
    });
  });
  it('tells of every input its unit, meaning, what is accepted, and its default or whether it must be given', async () => {
    const pages = await calculatorPages();
    const ends = new Set<string>();
    pages.forEach((page, i) => {
      const { inputs, outputs } = CALCULATORS[i] as (typeof CALCULATORS)[number];
      const rows = linesUnder(page, 'Inputs').map((row) => row.split(' | '));
      Object.entries(inputs).forEach(([key, input], row) => {
        const usual = input.usual === undefined ? undefined : String(input.usual);
        const last = usual ?? (input.required ? 'must be given' : 'may be left out');
        ends.add(usual === undefined ? last : 'usual');
        expect(rows[row]).toEqual([
          key,
          input.unit === '' ? '-' : input.unit,
          input.meaning,
          input.accepted,
          last,
        ]);
      });
      expect(linesUnder(page, 'Results')).toEqual(
        Object.entries(outputs).map(
          ([key, { unit, meaning }]) => `${key} | ${unit === '' ? '-' : unit} | ${meaning}`,
        ),
      );
    });
    expect([...ends].sort()).toEqual(['may be left out', 'must be given', 'usual']);
  });
  it('says where it holds, and cites with a mark', async () => {
    for (const page of await calculatorPages()) {
      expect(linesUnder(page, 'Where it holds')[0]).toMatch(/^[^a-z].*[.!?:]$/s);
      expect(linesUnder(page, 'Source')[0]).toMatch(
        / \[(read in|computed|common practice|from memory).*\]\.$/,
      );
    }
  });
});
