/**
 * `npm run mutate:rules [cause ...]`: makes every slip in the rules, one at a time and in memory, and shows
 * which ones neither the tests of the causes nor the cases notice. Fails below 90 % noticed.
 */
import { CAUSES, causeOf, isCauseId } from '../src/rules/index.js';
import { type CauseTests, claimsOf } from '../tests/support/causeClaims.js';
import { recordedTests } from '../tests/support/testCause.js';
import { holds, judgeOf, knownCases, WITNESSES, type Witness } from './mutants/judge.js';
import { type Mutant, mutantsOf } from './mutants/mutants.js';

/** Part of the mutants that must be noticed. */
const LEAST_NOTICED = 0.9;

const wanted = process.argv.slice(2).filter(isCauseId);
const causes = wanted.length > 0 ? wanted.map(causeOf) : CAUSES;

const recorded = await recordedTests(causes.map(({ id }) => id));
const known = knownCases();
const judged: { readonly mutant: Mutant; readonly seenBy: readonly Witness[] }[] = [];
for (const cause of causes) {
  const tests = recorded.get(cause.id) as CauseTests;
  const broken = claimsOf(tests).filter((claim) => !holds(claim, cause));
  if (broken.length > 0) {
    console.error(`${cause.id} fails its own tests: ${broken.map(({ name }) => name).join('; ')}`);
    process.exit(1);
  }
  const judge = judgeOf(cause, tests, known);
  judged.push(...mutantsOf(cause).map((mutant) => ({ mutant, seenBy: judge(mutant.cause, mutant.kind) })));
}

const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;
const row = (name: string, all: typeof judged): string => {
  const seen = all.filter(({ seenBy }) => seenBy.length > 0).length;
  const by = WITNESSES.map((w) => all.filter(({ seenBy }) => seenBy.includes(w)).length);
  const cells = [all.length, seen, ...by].map((n) => String(n).padStart(7));
  return `${name.padEnd(22)}${cells.join('')}   ${percent(seen, all.length)}`;
};
const groupedBy = (key: (mutant: Mutant) => string): string[] =>
  [...new Set(judged.map(({ mutant }) => key(mutant)))].map((name) =>
    row(
      name,
      judged.filter(({ mutant }) => key(mutant) === name),
    ),
  );

const survivors = judged.filter(({ seenBy }) => seenBy.length === 0);
console.log('Not noticed:');
for (const { mutant } of survivors) console.log(`  [${mutant.kind}] ${mutant.what}`);
console.log(`\n${'of'.padEnd(22)}mutants   seen ${WITNESSES.join('  ')}`);
console.log(groupedBy(({ kind }) => kind).join('\n'));
console.log(groupedBy(({ cause }) => cause.id).join('\n'));
console.log(row('all', judged));
const weights = judged.filter(({ mutant }) => mutant.kind === 'weight');
const without = weights.filter(({ seenBy }) => seenBy.some((witness) => witness !== 'golden'));
console.log(`weights noticed with golden files left out: ${percent(without.length, weights.length)}`);
const noticed = 1 - survivors.length / judged.length;
process.exitCode = noticed >= LEAST_NOTICED ? 0 : 1;
