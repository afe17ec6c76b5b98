/** `npm run lint:rules`: checks the rule base, and names every place that a cause or a case still lacks. */
import { lint } from '../src/reasoning/lint.js';
import { CAUSES } from '../src/rules/index.js';
import { missingPlaces } from './missing.js';

const problems = lint(CAUSES);
for (const { where, what } of problems) console.error(`${where}: ${what}`);
const missing = missingPlaces();
for (const place of missing) console.error(`missing: ${place}`);
const rules = CAUSES.reduce((sum, cause) => sum + cause.rules.length, 0);
console.log(`${CAUSES.length} causes, ${rules} rules, ${problems.length + missing.length} problems`);
process.exitCode = problems.length + missing.length === 0 ? 0 : 1;
