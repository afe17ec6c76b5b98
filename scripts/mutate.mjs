// Mutation testing of the functions of a folder, file by file: npm run mutate -- acoustics [part of a file name ...].
// A file is judged by the tests that import it themselves, which is quick and strict; `--all-tests` lets every
// test of the folder judge. Prints the score of each file and what survived; fails below the least score.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';

/** Least part of the mutants that tests must kill, in percent, and the files that hold data and no functions. */
const FOLDERS = {
  acoustics: { least: 85, data: [] },
  reasoning: { least: 85, data: [] },
  facts: { least: 75, data: ['families/', 'catalog.ts', 'complaints.ts'] },
  explain: { least: 75, data: ['glossary.ts'] },
};
const KILLED = ['Killed', 'Timeout'];
const ALIVE = ['Survived', 'NoCoverage'];

const words = process.argv.slice(2);
const allTests = words.includes('--all-tests');
const [folder, ...parts] = words.filter((word) => !word.startsWith('--'));
if (!Object.hasOwn(FOLDERS, folder ?? '')) {
  console.error(`Which folder? One of ${Object.keys(FOLDERS).join(', ')}: npm run mutate -- acoustics`);
  process.exit(2);
}
const { least, data } = FOLDERS[folder];
const files = readdirSync(`src/${folder}`, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !data.some((part) => file.includes(part)))
  .filter((file) => parts.length === 0 || parts.some((part) => file.includes(part)))
  .sort();

const read = (from, end) =>
  readdirSync(from, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(end))
    .map((name) => ({ name: `${from}/${name}`, text: readFileSync(`${from}/${name}`, 'utf8') }));
const sources = read(`src/${folder}`, '.ts');
const tests = [folder, 'published', ...(folder === 'explain' ? ['commands'] : [])].flatMap((part) =>
  read(`tests/${part}`, '.test.ts'),
);

const totals = { killed: 0, alive: 0 };
const survivors = [];
for (const name of files) {
  const file = `src/${folder}/${name}`;
  const report = `reports/mutation/${folder}/${name.replace(/\.ts$/, '')}.json`;
  mkdirSync('reports/mutation', { recursive: true });
  rmSync(report, { force: true });
  const env = { MUTATE_FOLDER: folder, MUTATE_FILE: file, MUTATE_TESTS: testsOf(file).join(',') };
  const { status, stdout, stderr } = spawnSync(
    'npx',
    ['--no-install', 'stryker', 'run', 'stryker.config.mjs'],
    {
      env: { ...process.env, ...env },
      encoding: 'utf8',
    },
  );
  if (status !== 0 && !existsSync(report)) {
    console.log(`${file}: no result\n${`${stdout}${stderr}`.split('\n').slice(-30).join('\n')}`);
    process.exitCode = 1;
    continue;
  }
  score(file, JSON.parse(readFileSync(report, 'utf8')).files[file]);
}

console.log(`\nSurvived:\n${survivors.join('\n')}`);
const whole = (100 * totals.killed) / (totals.killed + totals.alive);
console.log(`\n${folder}: ${totals.killed} of ${totals.killed + totals.alive} killed, ${whole.toFixed(1)} %`);
if (!(whole >= least)) process.exitCode = 1;

/** Tests that import the file themselves, else those of the files that import it; none means all of the folder. */
function testsOf(file, seen = new Set()) {
  if (allTests || seen.has(file)) return [];
  seen.add(file);
  const name = file.split('/').at(-1).replace(/\.ts$/, '.js');
  const own = tests.filter(({ text }) => text.includes(`/${file.replace(/\.ts$/, '.js')}'`));
  if (own.length > 0) return own.map(({ name }) => name);
  const users = sources.filter(({ text }) => text.includes(`/${name}'`));
  return [...new Set(users.flatMap((user) => testsOf(user.name, seen)))];
}

/** Adds one file to the totals and prints its line. */
function score(file, result) {
  const mutants = result?.mutants ?? [];
  const killed = mutants.filter(({ status }) => KILLED.includes(status)).length;
  const alive = mutants.filter(({ status }) => ALIVE.includes(status));
  totals.killed += killed;
  totals.alive += alive.length;
  const of = killed + alive.length;
  console.log(`${file.padEnd(44)} ${killed} of ${of}${of ? `, ${((100 * killed) / of).toFixed(1)} %` : ''}`);
  const lines = (result?.source ?? '').split('\n');
  for (const { location, replacement, mutatorName, status } of alive) {
    const line = lines[location.start.line - 1]?.trim() ?? '';
    const what = (replacement ?? mutatorName).replaceAll(/\s+/g, ' ').slice(0, 90);
    survivors.push(
      `${file}:${location.start.line}:${location.start.column} ${status} ${line}\n    -> ${what}`,
    );
  }
}
