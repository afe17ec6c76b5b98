/** `npm run lint:rules`: checks the rule base and fails when anything is wrong with it. */
import { lint } from '../src/reasoning/lint.js';
import { CAUSES } from '../src/rules/index.js';

const problems = lint(CAUSES);
for (const { where, what } of problems) console.error(`${where}: ${what}`);
const rules = CAUSES.reduce((sum, cause) => sum + cause.rules.length, 0);
console.log(`${CAUSES.length} causes, ${rules} rules, ${problems.length} problems`);
process.exitCode = problems.length === 0 ? 0 : 1;
