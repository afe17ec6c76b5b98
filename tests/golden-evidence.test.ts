/** What each rule says in each shipped case has not changed unseen. Meant to change? `npm run golden:evidence`. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadCases } from '../eval/load-cases.js';
import { type CaseGolden, goldenOf } from './support/goldenEvidence.js';

const kept: Record<string, CaseGolden> = JSON.parse(
  readFileSync(new URL('./golden/evidence.json', import.meta.url), 'utf8'),
);
const cases = loadCases();

describe('the evidence of a shipped case is as it was', () => {
  it('for exactly the cases that are shipped', () => {
    expect(Object.keys(kept)).toEqual(cases.map(({ name }) => name));
  });
  it.each(cases)('$name', (shipped) => {
    const now = goldenOf([shipped])[shipped.name];
    expect(now, 'meant to change? npm run golden:evidence').toEqual(kept[shipped.name]);
  });
});
