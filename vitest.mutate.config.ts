/** Tests that judge the mutants of a file: those named by scripts/mutate.mjs, else all of its folder and the published checks. */
import { defineConfig } from 'vitest/config';

const TESTS = {
  acoustics: ['tests/acoustics/**', 'tests/published/{acoustics,scipy,psycho,standards}*'],
  reasoning: ['tests/reasoning/**', 'tests/published/reasoning*'],
  facts: ['tests/facts/**'],
  explain: ['tests/explain/**', 'tests/commands/**'],
};
const named = (process.env.MUTATE_TESTS ?? '').split(',').filter((name) => name !== '');
const folder = (process.env.MUTATE_FOLDER ?? 'acoustics') as keyof typeof TESTS;

export default defineConfig({
  test: {
    include: named.length > 0 ? named : TESTS[folder].map((glob) => `${glob}.test.ts`),
    setupFiles: ['tests/support/fixedSeed.ts'],
    testTimeout: 60_000,
  },
});
