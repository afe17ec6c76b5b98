/** `npm run golden:evidence`: writes anew what each rule says. Read the difference before committing it. */
import { loadCases } from '../eval/load-cases.js';
import { goldenExamples, goldenOf, writeGolden } from '../tests/support/goldenEvidence.js';

const cases = loadCases();
writeGolden('cases', Object.fromEntries(cases.map((each) => [each.name, goldenOf(each)])));
writeGolden('causes', await goldenExamples());
console.log(`tests/golden/evidence: ${cases.length} cases`);
