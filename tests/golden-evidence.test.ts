/** What each rule says has not changed unseen. Meant to change? `npm run golden:evidence`, and read the difference. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadCases } from '../eval/load-cases.js';
import { CAUSES } from '../src/rules/index.js';
import { type Golden, goldenExamples, goldenOf } from './support/goldenEvidence.js';

const kept: Golden = JSON.parse(readFileSync(new URL('./golden/evidence.json', import.meta.url), 'utf8'));
const HINT = 'meant to change? npm run golden:evidence';
const cases = loadCases();
const examples = await goldenExamples();

describe('the evidence of a shipped case is as it was', () => {
  it('for exactly the cases that are shipped', () => {
    expect(Object.keys(kept.cases)).toEqual(cases.map(({ name }) => name));
  });
  it.each(cases)('$name', (shipped) => {
    expect(goldenOf([shipped])[shipped.name], HINT).toEqual(kept.cases[shipped.name]);
  });
});

describe('the weights in the examples of a cause are as they were', () => {
  it.each(CAUSES)('$id', ({ id }) => {
    expect(examples[id], HINT).toEqual(kept.examples[id]);
  });
});
