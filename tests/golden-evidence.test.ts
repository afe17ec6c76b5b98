/** What each rule says has not changed unseen. Meant to change? `npm run golden:evidence`, and read the difference. */
import { describe, expect, it } from 'vitest';
import { loadCases } from '../eval/load-cases.js';
import { CAUSES } from '../src/rules/index.js';
import { asKept, goldenExamples, goldenNames, goldenOf, readGolden } from './support/goldenEvidence.js';

const HINT = 'meant to change? npm run golden:evidence';
const cases = loadCases();
const examples = await goldenExamples();

describe('the evidence of a shipped case is as it was', () => {
  it('for exactly the cases that are shipped', () => {
    expect(goldenNames('cases').sort(), HINT).toEqual(cases.map(({ name }) => name).sort());
  });
  it.each(cases)('$name', (shipped) => {
    expect(asKept(goldenOf(shipped)), HINT).toEqual(readGolden('cases', shipped.name));
  });
});

describe('the weights in the examples of a cause are as they were', () => {
  it('for exactly the causes there are', () => {
    expect(goldenNames('causes').sort(), HINT).toEqual(CAUSES.map(({ id }) => id).sort());
  });
  it.each(CAUSES)('$id', ({ id }) => {
    expect(asKept(examples[id] ?? {}), HINT).toEqual(readGolden('causes', id));
  });
});
