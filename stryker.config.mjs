/** One file of one folder at a time, called by scripts/mutate.mjs: hot loops would crawl with everything instrumented at once. */
const { MUTATE_FOLDER: folder = 'acoustics', MUTATE_FILE: file = 'src/acoustics/phantom.ts' } = process.env;
const report = `reports/mutation/${file.replace(/^src\//, '').replace(/\.ts$/, '')}`;

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  mutate: [file],
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'vitest.mutate.config.ts', related: true },
  coverageAnalysis: 'perTest',
  // Tables of data run once, when the file is loaded: their mutants are static and take for ever.
  ignoreStatic: true,
  // What a sentence says is judged by readers and golden files, not by a mutant that empties it.
  mutator: { excludedMutations: folder === 'explain' ? ['StringLiteral'] : [] },
  reporters: ['json'],
  jsonReporter: { fileName: `${report}.json` },
  ignorePatterns: ['.scratch', 'dist', 'reports', 'coverage', 'bench'],
  tempDirName: '.stryker-tmp',
  concurrency: Number(process.env.MUTATE_WORKERS ?? 1),
  timeoutMS: 10_000,
  dryRunTimeoutMinutes: 15,
  allowConsoleColors: false,
};
