/** `npm run golden:evidence`: writes anew what each rule says in each shipped case. Read the difference before committing it. */
import { writeFileSync } from 'node:fs';
import { loadCases } from '../eval/load-cases.js';
import { goldenOf, goldenText } from '../tests/support/goldenEvidence.js';

const cases = loadCases();
writeFileSync(new URL('../tests/golden/evidence.json', import.meta.url), goldenText(goldenOf(cases)));
console.log(`tests/golden/evidence.json: ${cases.length} cases`);
