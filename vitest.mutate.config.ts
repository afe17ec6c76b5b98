/** Tests that judge the mutants of one folder: its own and the published checks of it. */
import { defineConfig } from 'vitest/config';

const TESTS = {
  acoustics: ['tests/acoustics/**', 'tests/published/{acoustics,scipy,psycho,standards}*'],
  reasoning: ['tests/reasoning/**', 'tests/published/reasoning*'],
  facts: ['tests/facts/**'],
  explain: ['tests/explain/**', 'tests/commands/**'],
};
const folder = (process.env.MUTATE_FOLDER ?? 'acoustics') as keyof typeof TESTS;

export default defineConfig({
  test: {
    include: TESTS[folder].map((glob) => `${glob}.test.ts`),
    setupFiles: ['tests/support/fixedSeed.ts'],
    testTimeout: 60_000,
  },
});
