/** The short form of the fuzz run; `npm run fuzz` is the long one. */
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { bytesProperty, caseProperty, commandLineProperty, unsoundNumber } from './invariants.js';

const folder = mkdtempSync(join(tmpdir(), 'center-audit-fuzz-'));
const path = (name: string): string => join(folder, name);
copyFileSync(join(import.meta.dirname, '../../cases/demo.json'), path('case.json'));
writeFileSync(path('bad.json'), '{"facts": {"seatDistance": "3 kg"}}');
afterAll(() => rmSync(folder, { recursive: true }));

const PATIENCE_MS = 120_000;

it(
  'any case gives a sound report in every format',
  () => fc.assert(caseProperty, { numRuns: 20 }),
  PATIENCE_MS,
);

it('any bytes give a result or a refusal', () => fc.assert(bytesProperty, { numRuns: 250 }), PATIENCE_MS);

it(
  'any command line ends with a code of the contract or a refusal',
  () =>
    fc.assert(commandLineProperty([path('case.json'), path('bad.json'), folder, path('none.json')]), {
      numRuns: 150,
    }),
  PATIENCE_MS,
);

it('the check for numbers can fail', () => {
  expect(unsoundNumber({ a: [1, { b: Number.NaN }] })).toBe('.a.1.b is NaN');
  expect(unsoundNumber({ a: undefined })).toBe('.a is undefined');
  expect(unsoundNumber({ a: [1, 'x', null] })).toBeUndefined();
});
