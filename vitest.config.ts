import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const EACH = { setupFiles: ['tests/support/fixedSeed.ts'], testTimeout: 120_000, hookTimeout: 120_000 };
/** These put something in the place of a module or of a table, so each needs modules of its own. */
const ALONE = ['tests/interview/no-terminal.test.ts', 'tests/scripts/rule-mutants.test.ts'];

export default defineConfig({
  test: {
    // The rest share what a worker has loaded: loading the rule base anew for each file was a third of the work.
    projects: [
      { test: { ...EACH, name: 'alone', include: ALONE } },
      { test: { ...EACH, name: 'all', include: ['tests/**/*.test.ts'], exclude: ALONE, isolate: false } },
    ],
    // One fewer is the runner's own choice: on two cores that left one idle.
    maxWorkers: availableParallelism(),
    coverage: {
      provider: 'v8',
      include: ['src/acoustics/**', 'src/reasoning/**', 'src/facts/**', 'src/explain/**'],
      reporter: ['text-summary', 'text'],
      thresholds: { lines: 95, branches: 90 },
    },
  },
});
