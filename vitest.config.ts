import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/fixedSeed.ts'],
    // One fewer is the runner's own choice: on two cores that left one idle.
    maxWorkers: availableParallelism(),
    testTimeout: 120_000,
    hookTimeout: 120_000,
    coverage: {
      provider: 'v8',
      include: ['src/acoustics/**', 'src/reasoning/**', 'src/facts/**', 'src/explain/**'],
      reporter: ['text-summary', 'text'],
      thresholds: { lines: 95, branches: 90 },
    },
  },
});
