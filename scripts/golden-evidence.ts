/** `npm run golden:evidence`: writes anew what each rule says. Read the difference before committing it. */
import { writeFileSync } from 'node:fs';
import { loadCases } from '../eval/load-cases.js';
import { goldenExamples, goldenOf, goldenText } from '../tests/support/goldenEvidence.js';

const golden = { cases: goldenOf(loadCases()), examples: await goldenExamples() };
writeFileSync(new URL('../tests/golden/evidence.json', import.meta.url), goldenText(golden));
console.log(`tests/golden/evidence.json: ${Object.keys(golden.cases).length} cases`);
