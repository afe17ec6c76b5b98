// The whole check of the project: tools, lint, types, build, tests. Ends with "N passed, N failed".
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';

const run = (command, args, options = {}) => {
  console.log(`> ${command} ${args.join(' ')}`);
  const since = performance.now();
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', ...options });
  console.log(`  ${((performance.now() - since) / 1000).toFixed(0)} s`);
  if (error) console.error(error.message);
  return status ?? 1;
};
const must = (command, args) => {
  const status = run(command, args);
  if (status !== 0) process.exit(status);
};
const onPath = (tool) => spawnSync('sh', ['-c', `command -v ${tool}`]).status === 0;

installTools({ chromium: 'chromium', tmux: 'tmux', parallel: 'parallel' });
must('npx', ['--no-install', 'biome', 'ci', '.']);
must('npx', ['--no-install', 'tsc', '--noEmit']);
must('npx', ['--no-install', 'tsc', '--noEmit', '-p', 'src/page']);
must('node', ['scripts/build.mjs']);

const summary = 'reports/vitest.json';
mkdirSync('reports', { recursive: true });
const status = run('npx', [
  '--no-install',
  'vitest',
  'run',
  '--reporter=./scripts/progress.mjs',
  '--reporter=json',
  `--outputFile.json=${summary}`,
  ...process.argv.slice(2),
]);
const { numPassedTests = 0, numFailedTests = 0 } = existsSync(summary)
  ? JSON.parse(readFileSync(summary, 'utf8'))
  : {};
console.log(`${numPassedTests} passed, ${numFailedTests} failed`);
process.exit(status === 0 && numPassedTests === 0 ? 1 : status);

/** Browser, terminal and batch engine of the tests: Debian packages, installed where we may, named where we may not. */
function installTools(packages) {
  const missing = Object.keys(packages).filter((tool) => !onPath(tool));
  if (missing.length === 0) return;
  const names = missing.map((tool) => packages[tool]);
  if (process.getuid?.() !== 0 || !onPath('apt-get')) {
    console.error(`The tests need ${missing.join(' and ')}. Install: ${names.join(' ')}`);
    process.exit(1);
  }
  must('apt-get', ['update', '-qq']);
  must('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...names]);
}
